//! A lesson that is played: which one, how far it has come, and what was at hand before it.

use std::sync::Arc;

use serde::{Deserialize, Serialize};
use turns_aloft_lesson::{Flights, Flown, Lesson, Progress, Stage, Step, Truth, Unanswerable};
use turns_aloft_scenario::Scenario;

use crate::state::document::Document;
use crate::state::history::History;
use crate::state::own_settings::OwnSettings;
use crate::state::reference::SavedReference;

/// Lessons whose answers are kept, the one played last first. Our choice.
pub const MOST_KEPT: usize = 6;

/// A lesson as it was opened, and what was answered in it so far.
#[derive(Debug, Clone)]
pub struct Played {
    /// The text of its file: the same text is the same lesson.
    pub(crate) file: Arc<str>,
    pub(crate) lesson: Arc<Lesson>,
    pub(crate) progress: Progress,
    /// The jumps as they were left, one for each step; none where nothing was changed.
    pub(crate) left: Vec<Option<Scenario>>,
    /// Played for a class: nothing is typed, and what is right stays hidden until it is shown.
    pub(crate) for_class: bool,
}

/// The lesson in sight. The panels take a copy in every frame: what is large in it is shared.
#[derive(Debug, Clone)]
pub struct LessonInSight {
    pub(crate) played: Played,
    /// Of the step that is shown.
    flights: Arc<Flights>,
    truth: Result<Truth, Unanswerable>,
    /// The first step has been asked for; before, the lesson is introduced.
    pub(crate) begun: bool,
    /// What the answer is about, as far as it can be flown: variants by their places, none for what is set up.
    pub(crate) scenes: Vec<Option<usize>>,
    /// Which of them was set up last.
    pub(crate) scene: usize,
    /// What the step shown sets up has been flown to its end.
    pub(crate) flown: bool,
    /// What is right has been shown to the class.
    pub(crate) truth_shown: bool,
    pub(crate) before: Arc<Before>,
}

/// What was at hand before a lesson.
#[derive(Debug, Clone)]
pub(crate) struct Before {
    pub document: Document,
    pub history: History,
    pub reference: Option<SavedReference>,
    pub own: OwnSettings,
}

/// A lesson that was played, as a visit keeps it.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct SavedLesson {
    file: String,
    answers: String,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    left: Vec<Option<String>>,
    #[serde(default)]
    for_class: bool,
}

/// The same text is the same lesson: that is not compared again.
impl PartialEq for Played {
    fn eq(&self, other: &Self) -> bool {
        (Arc::ptr_eq(&self.file, &other.file) || self.file == other.file)
            && self.progress == other.progress
            && self.left == other.left
            && self.for_class == other.for_class
    }
}

impl Played {
    /// # Errors
    /// What is wrong with the file.
    pub fn open(file: &str) -> Result<Self, turns_aloft_lesson::fault::Unreadable> {
        let lesson = Lesson::open_file(file)?;
        Ok(Self {
            file: file.into(),
            progress: Progress::new(&lesson),
            left: vec![None; lesson.steps.len()],
            lesson: Arc::new(lesson),
            for_class: false,
        })
    }

    pub fn saved(&self) -> SavedLesson {
        SavedLesson {
            file: self.file.to_string(),
            answers: self.progress.to_file(&self.lesson),
            left: if self.left.iter().all(Option::is_none) {
                Vec::new()
            } else {
                let left = self.left.iter();
                left.map(|it| it.as_ref().map(Scenario::to_file)).collect()
            },
            for_class: self.for_class,
        }
    }

    /// None where the lesson cannot be read; spoilt answers are no reason to lose it.
    pub fn restore(saved: &SavedLesson) -> Option<Self> {
        let mut played = Self::open(&saved.file).ok()?;
        if let Ok(progress) = Progress::open_file(&saved.answers, &played.lesson) {
            played.progress = progress;
        }
        for (left, saved) in played.left.iter_mut().zip(&saved.left) {
            let opened = saved.as_ref().and_then(|it| Scenario::open_file(it).ok());
            *left = opened.map(|opened| opened.read);
        }
        played.for_class = saved.for_class;
        Some(played)
    }

    pub fn step(&self) -> &Step {
        &self.lesson.steps[self.progress.at()]
    }
}

impl LessonInSight {
    pub(crate) fn new(played: Played, before: Before) -> Self {
        let flights = Flights::of(played.step());
        Self {
            truth: played.step().truth(&flights),
            scenes: played.step().answer.about(),
            scene: 0,
            flights: Arc::new(flights),
            played,
            begun: false,
            flown: false,
            truth_shown: false,
            before: Arc::new(before),
        }
    }

    /// Called after another step is shown.
    pub(crate) fn take_stock(&mut self) {
        self.flights = Arc::new(Flights::of(self.step()));
        self.truth = self.step().truth(&self.flights);
        self.scenes = self.step().answer.about();
        self.scene = 0;
        self.flown = self.progress().stage() > Stage::Fly;
        self.truth_shown = self.flown && !self.played.for_class;
    }

    pub fn lesson(&self) -> &Lesson {
        &self.played.lesson
    }

    /// The text of its file, and of that of its answers.
    pub fn files(&self) -> [String; 2] {
        let played = &self.played;
        [
            played.file.to_string(),
            played.progress.to_file(&played.lesson),
        ]
    }

    pub const fn progress(&self) -> &Progress {
        &self.played.progress
    }

    pub fn step(&self) -> &Step {
        self.played.step()
    }

    pub fn flights(&self) -> &Flights {
        &self.flights
    }

    /// What is right; nothing where that cannot be said.
    pub fn truth(&self) -> Option<&Truth> {
        self.truth.as_ref().ok()
    }

    /// How many flights the answer is about, and which of them is in the picture.
    pub const fn scenes(&self) -> (usize, usize) {
        (self.scenes.len(), self.scene)
    }

    /// What is flown of it; nothing where somebody is led by hand.
    pub(crate) fn flown_in_scene(&self) -> Option<&Flown> {
        self.flights.one(*self.scenes.get(self.scene)?)
    }

    pub const fn is_begun(&self) -> bool {
        self.begun
    }

    pub const fn is_for_class(&self) -> bool {
        self.played.for_class
    }

    /// Whether what was flown, and what is right, may be seen.
    pub const fn is_flown(&self) -> bool {
        self.flown
    }

    pub const fn is_truth_shown(&self) -> bool {
        self.truth_shown
    }

    /// Whether nothing may be flown yet: it is to be predicted first.
    pub fn withholds_flight(&self) -> bool {
        !self.begun || !self.progress().may_fly()
    }
}
