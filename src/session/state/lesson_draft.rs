//! A lesson that somebody makes: its draft, and what is still missing or wrong in it.

use std::sync::Arc;

use turns_aloft_lesson::fault::Wrong;
use turns_aloft_lesson::{Flights, Lesson, Setup, Step, Unanswerable};

use crate::state::asked::changed_input;

/// A lesson that may be unfinished: texts may be empty. It has one step at least, and one part of its plan.
#[derive(Debug, Clone)]
pub struct LessonDraft {
    pub(crate) lesson: Arc<Lesson>,
    /// Whether it has the screen; otherwise it waits.
    pub(crate) in_sight: bool,
    /// The step that is shown; none while the whole is.
    pub(crate) at: Option<usize>,
    /// Of the step that is shown.
    flights: Option<Arc<Flights>>,
    /// One for each step.
    faults: Vec<Option<DraftFault>>,
}

/// What is missing or wrong.
#[derive(Debug, Clone, PartialEq)]
pub enum DraftFault {
    Wrong(Wrong),
    Unanswerable(Unanswerable),
    /// The input that is changed has the value that it has in the jump.
    NothingChanged,
}

impl LessonDraft {
    pub(crate) fn new(lesson: Lesson) -> Self {
        let faults = lesson
            .steps
            .iter()
            .map(|step| fault(step, &Flights::of(step)));
        Self {
            faults: faults.collect(),
            lesson: Arc::new(lesson),
            in_sight: true,
            at: None,
            flights: None,
        }
    }

    /// A spoilt draft is no reason to lose the rest of a visit.
    pub(crate) fn restore(file: &str, in_sight: bool) -> Option<Self> {
        let lesson = Lesson::open_draft(file).ok()?;
        Some(Self {
            in_sight,
            ..Self::new(lesson)
        })
    }

    /// Takes up what a change has made of the step that is shown, or of all steps.
    pub(crate) fn take_stock(&mut self) {
        let Some((at, step)) = self.at.zip(self.step()) else {
            *self = Self {
                in_sight: self.in_sight,
                ..Self::new(Lesson::clone(&self.lesson))
            };
            return;
        };
        let flights = Flights::of(step);
        let found = fault(step, &flights);
        self.flights = Some(Arc::new(flights));
        if let Some(own) = self.faults.get_mut(at) {
            *own = found;
        }
    }

    pub fn lesson(&self) -> &Lesson {
        &self.lesson
    }

    /// The same as long as nothing has been changed.
    pub const fn version(&self) -> &Arc<Lesson> {
        &self.lesson
    }

    /// The place of the step that is shown; none while the whole is.
    pub const fn at(&self) -> Option<usize> {
        self.at
    }

    /// The step that is shown.
    pub fn step(&self) -> Option<&Step> {
        self.lesson.steps.get(self.at?)
    }

    /// Where the step that is shown comes to stand where it is moved: before the one before it, or after the next
    /// one. None where there is no such step.
    pub fn moved_place(&self, later: bool) -> Option<usize> {
        let at = self.at?;
        let to = if later { at + 1 } else { at.checked_sub(1)? };
        (to < self.lesson.steps.len()).then_some(to)
    }

    /// The flights of the step that is shown.
    pub fn flights(&self) -> Option<&Flights> {
        self.flights.as_deref()
    }

    /// What is missing or wrong in a step.
    pub fn fault_of(&self, step: usize) -> Option<&DraftFault> {
        self.faults.get(step)?.as_ref()
    }

    /// The same of what belongs to no step.
    pub fn own_fault(&self) -> Option<DraftFault> {
        self.lesson.check_own_texts().err().map(DraftFault::Wrong)
    }

    /// Whether it can be played.
    pub fn is_whole(&self) -> bool {
        self.own_fault().is_none() && self.faults.iter().all(Option::is_none)
    }
}

fn fault(step: &Step, flights: &Flights) -> Option<DraftFault> {
    if let Err(why) = step.check() {
        return Some(DraftFault::Wrong(why));
    }
    if let (Some(Setup::Jump(jump)), Some((parameter, value))) = (&step.setup, changed_input(step))
        && parameter.get(jump) == value
    {
        return Some(DraftFault::NothingChanged);
    }
    step.truth(flights).err().map(DraftFault::Unanswerable)
}
