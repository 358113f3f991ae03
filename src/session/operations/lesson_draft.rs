//! A lesson that somebody makes: begun from the jump at hand or from a lesson, changed, tried, and given away.

use std::sync::Arc;

use crate::operations::lesson_draft_step::{ask, set_up};
use crate::session::Session;
use crate::state::asked::AnswerKind;
use crate::state::lesson::Played;
use crate::state::lesson_draft::LessonDraft;
use crate::state::notice::BroughtBack;
use turns_aloft_describe::Sentence;
use turns_aloft_lesson::fault::{Unreadable, Wrong};
use turns_aloft_lesson::file::MOST_STEPS;
use turns_aloft_lesson::{Answer, Lesson, Part, Plan, Said, Setup, Step, link};
use turns_aloft_scenario::file::file_stem;
use turns_aloft_words::{say, text};

/// Minutes of a lesson at first: a lesson at school. Common practice, no source.
const USUAL_MINUTES: u64 = 45;

impl Session {
    /// The lesson that is made, whether it is in sight or waits.
    pub const fn lesson_draft(&self) -> Option<&LessonDraft> {
        self.lesson_draft.as_ref()
    }

    /// Whether it has the screen.
    pub fn is_making_lesson(&self) -> bool {
        self.lesson.is_none() && self.lesson_draft.as_ref().is_some_and(|it| it.in_sight)
    }

    pub(crate) fn is_making(&self, lesson: &Lesson) -> bool {
        let draft = self.lesson_draft().filter(|_| self.is_making_lesson());
        draft.is_some_and(|draft| draft.lesson() == lesson)
    }

    /// Makes a lesson: goes on with the one that was begun, or begins one with a step of the jump at hand.
    pub fn make_lesson(&mut self) {
        self.leave_modes();
        self.playback.playing = false;
        match &mut self.lesson_draft {
            Some(draft) => {
                draft.in_sight = true;
                draft.at = None;
            }
            None => {
                let doing = Said::Alike(text("draft-whole-lesson").to_owned());
                self.lesson_draft = Some(LessonDraft::new(Lesson {
                    title: empty(),
                    for_whom: empty(),
                    minutes: USUAL_MINUTES,
                    pictures: false,
                    plan: Plan {
                        parts: vec![Part {
                            minutes: USUAL_MINUTES,
                            doing,
                        }],
                        ..Plan::default()
                    },
                    steps: vec![self.step_of_jump()],
                }));
            }
        }
    }

    /// Changes a copy of the lesson in sight, which has the language spoken alone. A draft that was there before can
    /// be brought back.
    pub fn copy_lesson(&mut self) {
        let Some(lesson) = self.lesson() else {
            return;
        };
        let mut copy = lesson.lesson().clone();
        copy.in_one_language();
        self.take_up_draft(copy);
    }

    /// Opens the file of an unfinished lesson to be changed; whether it is one.
    pub(crate) fn open_unfinished(&mut self, file: &str, why: &Unreadable) -> bool {
        let (Unreadable::Wrong(wrong) | Unreadable::Step { why: wrong, .. }) = why else {
            return false;
        };
        let is_unfinished = matches!(wrong, Wrong::NoText(_));
        let Some(lesson) = Lesson::open_draft(file).ok().filter(|_| is_unfinished) else {
            return false;
        };
        self.take_up_draft(lesson);
        true
    }

    /// Changes this one from now on.
    fn take_up_draft(&mut self, lesson: Lesson) {
        self.leave_modes();
        self.playback.playing = false;
        let before = self.lesson_draft.replace(LessonDraft::new(lesson));
        if let Some(before) = before {
            self.say_that_it_comes_back(
                text("draft-replaced").to_owned(),
                BroughtBack::Draft(before.lesson),
            );
        }
    }

    /// Goes back to the jump at hand; the draft is kept.
    pub fn leave_lesson_draft(&mut self) {
        if let Some(draft) = &mut self.lesson_draft {
            draft.in_sight = false;
        }
    }

    /// Throws the draft away; it can be brought back.
    pub fn discard_lesson_draft(&mut self) {
        if let Some(draft) = self.lesson_draft.take() {
            self.say_that_it_comes_back(
                text("draft-discarded").to_owned(),
                BroughtBack::Draft(draft.lesson),
            );
        }
    }

    /// The one that it has given way to can be brought back in turn.
    pub(crate) fn put_back_draft(&mut self, lesson: Arc<Lesson>) {
        self.take_up_draft(Arc::unwrap_or_clone(lesson));
    }

    /// Shows one of its steps, or the whole.
    pub fn show_draft_step(&mut self, at: Option<usize>) {
        if let Some(draft) = &mut self.lesson_draft {
            draft.at = at.filter(|place| *place < draft.lesson.steps.len());
            draft.take_stock();
        }
    }

    /// Changes what belongs to no step.
    pub fn edit_draft(&mut self, edit: impl FnOnce(&mut Lesson)) {
        if let Some(draft) = &mut self.lesson_draft {
            edit(Arc::make_mut(&mut draft.lesson));
        }
    }

    /// Changes the step that is shown.
    pub fn edit_draft_step(&mut self, edit: impl FnOnce(&mut Step)) {
        let Some(draft) = &mut self.lesson_draft else {
            return;
        };
        let steps = &mut Arc::make_mut(&mut draft.lesson).steps;
        if let Some(step) = draft.at.and_then(|at| steps.get_mut(at)) {
            edit(step);
            draft.take_stock();
        }
    }

    fn step_of_jump(&self) -> Step {
        let mut step = step_without_setup();
        step.setup = Some(Setup::Jump(Box::new(self.scenario().clone())));
        ask(&mut step, AnswerKind::Number);
        step
    }

    /// Whether one more step has room.
    pub fn has_room_in_draft(&self) -> bool {
        (self.lesson_draft.as_ref()).is_some_and(|it| it.lesson.steps.len() < MOST_STEPS)
    }

    /// Adds a step at the end and shows it: of the jump at hand, or one that only asks.
    pub fn add_draft_step(&mut self, of_jump: bool) {
        let step = if of_jump {
            self.step_of_jump()
        } else {
            step_without_setup()
        };
        if let Some(draft) = self
            .lesson_draft
            .as_ref()
            .filter(|_| self.has_room_in_draft())
        {
            self.insert_draft_step(draft.lesson.steps.len(), step);
        }
    }

    fn insert_draft_step(&mut self, place: usize, step: Step) {
        if let Some(draft) = &mut self.lesson_draft {
            let steps = &mut Arc::make_mut(&mut draft.lesson).steps;
            steps.insert(place.min(steps.len()), step);
            draft.at = None;
            draft.take_stock();
            self.show_draft_step(Some(place));
        }
    }

    /// Takes the jump at hand as what the step that is shown flies.
    pub fn set_up_draft_step(&mut self) {
        let jump = Setup::Jump(Box::new(self.scenario().clone()));
        self.edit_draft_step(|step| set_up(step, jump));
    }

    /// Moves the step that is shown to before the one before it, or to after the next one.
    pub fn move_draft_step(&mut self, later: bool) {
        if let Some(draft) = &mut self.lesson_draft
            && let Some((at, to)) = draft.at.zip(draft.moved_place(later))
        {
            Arc::make_mut(&mut draft.lesson).steps.swap(at, to);
            draft.at = None;
            draft.take_stock();
            self.show_draft_step(Some(to));
        }
    }

    /// Removes the step that is shown, unless it is the only one; it can be brought back.
    pub fn remove_draft_step(&mut self) {
        let Some(draft) = &mut self.lesson_draft else {
            return;
        };
        let steps = &mut Arc::make_mut(&mut draft.lesson).steps;
        let Some(at) = draft
            .at
            .take()
            .filter(|at| *at < steps.len() && steps.len() > 1)
        else {
            return;
        };
        let step = steps.remove(at);
        draft.take_stock();
        self.say_that_it_comes_back(
            say!("draft-step-removed", number = at + 1),
            BroughtBack::DraftStep(at, Box::new(step)),
        );
    }

    pub(crate) fn put_back_draft_step(&mut self, place: usize, step: Step) {
        if self.has_room_in_draft() {
            self.insert_draft_step(place, step);
        }
    }

    /// Plays the draft as a pupil does; nothing of that is kept. What keeps it from being played is said.
    pub fn try_lesson_draft(&mut self) {
        let Some(file) = self.draft_text() else {
            return;
        };
        match Played::open(&file) {
            Ok(played) => {
                self.show_lesson(played, false);
                if let Some(lesson) = &mut self.lesson {
                    lesson.is_tried = true;
                }
            }
            Err(why) => self.say(why.sentence()),
        }
    }

    fn draft_text(&self) -> Option<String> {
        Some(self.lesson_draft.as_ref()?.lesson.to_file())
    }

    /// The file of the draft, whole or not: its name, and its text.
    pub(crate) fn draft_file(&self) -> Option<[String; 2]> {
        let title = self.lesson_draft.as_ref()?.lesson.title.text();
        let stem = file_stem(title, "lesson");
        Some([format!("{stem}.lesson.json"), self.draft_text()?])
    }

    /// The draft as a link's text behind the `#`; none where it is unfinished or too long for one.
    pub fn draft_link(&self) -> Option<String> {
        let draft = self.lesson_draft.as_ref()?;
        draft
            .is_whole()
            .then(|| link::to_fragment(&draft.lesson))
            .flatten()
    }
}

fn empty() -> Said {
    Said::Alike(String::new())
}

fn step_without_setup() -> Step {
    Step {
        title: empty(),
        setup: None,
        variants: Vec::new(),
        free: Vec::new(),
        question: empty(),
        answer: Answer::Words,
        reason: true,
        observe: None,
        explanation: empty(),
    }
}
