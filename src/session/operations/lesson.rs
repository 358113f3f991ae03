//! A lesson, played: opened, predicted, flown, observed, explained, and left.

use std::mem;
use std::sync::Arc;

use crate::operations::action::Action;
use crate::session::Session;
use crate::state::document::Document;
use crate::state::history::{Change, History};
use crate::state::lesson::{Before, LessonInSight, MOST_KEPT, Played};
use crate::state::playback::BEFORE_S;
use crate::state::policy::Policy;
use crate::state::turntable::OnTurntable;
use turns_aloft_describe::Sentence;
use turns_aloft_lesson::free::Free;
use turns_aloft_lesson::{Flown, Prediction, Progress, Setup, Stage};
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::input::Input;
use turns_aloft_scenario::parameter::Parameter;
use turns_aloft_words::say;

/// Somebody who is led by hand on a turntable has flown a step after so long, s. Our choice.
const LED_S: f64 = 3.0;

impl Session {
    /// The lesson in sight, if one is.
    pub const fn lesson(&self) -> Option<&LessonInSight> {
        self.lesson.as_ref()
    }

    /// Opens a lesson's file, where it was left if it was played before. A bad one is said and leaves everything as
    /// it was.
    pub(crate) fn open_lesson(&mut self, file: &str) {
        let kept = self.lessons.iter().position(|it| &*it.file == file);
        let played = match kept {
            Some(place) => Ok(self.lessons[place].clone()),
            None => Played::open(file),
        };
        match played {
            Ok(played) => {
                self.leave_modes();
                self.show_lesson(played, false);
            }
            Err(why) => self.say(say!("not-opened", why = why.sentence())),
        }
    }

    pub(crate) fn show_lesson(&mut self, played: Played, begun: bool) {
        let before = Before {
            document: self.document.clone(),
            history: mem::take(&mut self.history),
            reference: self.saved_reference(),
            own: self.own_settings(),
        };
        let mut lesson = LessonInSight::new(played, before);
        lesson.begun = begun;
        self.lesson = Some(lesson);
        self.show_step();
    }

    /// Goes from what introduces the lesson to the step where it was left.
    pub fn begin_lesson(&mut self, for_class: bool) {
        if let Some(lesson) = &mut self.lesson {
            lesson.played.for_class = for_class;
            lesson.begun = true;
            self.show_step();
        }
    }

    /// Forgets what was answered, and begins with the first step.
    pub fn begin_lesson_anew(&mut self) {
        if let Some(lesson) = &mut self.lesson {
            let who = lesson.progress().who.clone();
            lesson.played.progress = Progress::new(&lesson.played.lesson);
            lesson.played.progress.set_who(&who);
            lesson.played.left.fill(None);
            self.show_step();
        }
    }

    /// Leaves it: the jump that was at hand before is back, and what was answered is kept.
    pub fn leave_lesson(&mut self) {
        self.keep_step();
        let Some(lesson) = self.lesson.take() else {
            return;
        };
        self.keep_lesson(lesson.played);
        self.policy = Policy::default();
        self.turntable = None;
        let before = Arc::unwrap_or_clone(lesson.before);
        self.history = before.history;
        self.replace_document(Change::Opened, before.document);
        self.take_up(before.own);
    }

    /// The one played last stands first; the oldest ones are forgotten.
    fn keep_lesson(&mut self, played: Played) {
        self.lessons.retain(|it| it.file != played.file);
        self.lessons.insert(0, played);
        self.lessons.truncate(MOST_KEPT);
    }

    /// All lessons whose answers are kept, the one in sight first.
    pub(crate) fn lessons_to_keep(&self) -> Vec<Played> {
        let mut all = self.lessons.clone();
        if let Some(lesson) = &self.lesson {
            all.retain(|it| it.file != lesson.played.file);
            let mut played = lesson.played.clone();
            played.left[lesson.progress().at()] = self.changed_in_step();
            all.insert(0, played);
            all.truncate(MOST_KEPT);
        }
        all
    }

    pub fn predict(&mut self, prediction: Option<Prediction>) {
        if let Some(lesson) = &mut self.lesson {
            lesson.played.progress.predict(prediction);
        }
    }

    pub fn give_reason(&mut self, reason: &str) {
        if let Some(lesson) = &mut self.lesson {
            lesson.played.progress.give_reason(reason);
        }
    }

    pub fn observe(&mut self, observation: &str) {
        if let Some(lesson) = &mut self.lesson {
            lesson.played.progress.observe(observation);
        }
    }

    pub fn set_pupil(&mut self, who: &str) {
        if let Some(lesson) = &mut self.lesson {
            lesson.played.progress.set_who(who);
        }
    }

    /// Whether the lesson can go on from where it is.
    pub fn can_go_on(&self) -> bool {
        let Some(lesson) = &self.lesson else {
            return false;
        };
        let progress = lesson.progress();
        match progress.stage() {
            Stage::Fly if !lesson.flown => false,
            Stage::Explain if lesson.is_for_class() && !lesson.truth_shown => false,
            Stage::Predict | Stage::Observe if lesson.is_for_class() => true,
            _ => progress.can_go_on(lesson.lesson()),
        }
    }

    /// Goes on, where that can be.
    pub fn go_on_in_lesson(&mut self) {
        if !self.can_go_on() {
            return;
        }
        self.keep_step();
        let Some(lesson) = &mut self.lesson else {
            return;
        };
        let before = (lesson.progress().at(), lesson.progress().stage());
        let Played {
            progress,
            lesson: of,
            for_class,
            ..
        } = &mut lesson.played;
        if *for_class {
            progress.pass_on(of);
        } else {
            progress.go_on(of);
        }
        let now = (progress.at(), progress.stage());
        if now.0 != before.0 || now.1 == Stage::Fly {
            self.show_step();
        } else if now.1 == Stage::Explain {
            lesson.truth_shown = !lesson.is_for_class();
        }
    }

    /// Shows the step before, or what introduces the lesson.
    pub fn go_back_in_lesson(&mut self) {
        self.keep_step();
        if let Some(lesson) = &mut self.lesson {
            if lesson.progress().at() == 0 {
                lesson.begun = false;
            }
            lesson.played.progress.go_back();
            self.show_step();
        }
    }

    /// Shows a step that has been reached.
    pub fn show_lesson_step(&mut self, place: usize) {
        self.keep_step();
        if let Some(lesson) = &mut self.lesson {
            lesson.played.progress.show(place);
            self.show_step();
        }
    }

    /// Shows the class what is right.
    pub fn show_truth(&mut self) {
        if let Some(lesson) = &mut self.lesson {
            lesson.truth_shown = true;
        }
    }

    /// Whether nothing may be flown, nor told of a flight: it is to be predicted first.
    pub fn withholds_flight(&self) -> bool {
        (self.lesson.as_ref()).is_some_and(LessonInSight::withholds_flight)
    }

    /// Whether that may be changed: in a lesson what the step leaves free, once it has been predicted.
    pub fn is_free(&self, free: Free) -> bool {
        self.lesson
            .as_ref()
            .is_none_or(|lesson| !lesson.withholds_flight() && lesson.step().is_free(free))
    }

    /// The numbers of the jump that the step leaves free.
    pub fn free_numbers(&self) -> Vec<Parameter> {
        let Some(lesson) = &self.lesson else {
            return Vec::new();
        };
        let free = lesson.step().free.iter();
        free.filter_map(|free| match free {
            Free::Input(Input::Number(parameter)) => Some(*parameter),
            _ => None,
        })
        .collect()
    }

    /// To be called in every frame: what must not be seen yet stands still, and what was flown to its end has been
    /// flown.
    pub fn watch_lesson(&mut self) {
        if self.withholds_flight() {
            self.playback.playing = false;
            self.playback.t_s = -BEFORE_S;
            return;
        }
        let Some(lesson) = &self.lesson else {
            return;
        };
        let flown = match (&lesson.step().setup, &self.turntable) {
            (Some(Setup::Turntable(_)), Some(on)) => on.has_played() || on.end_s() > LED_S,
            (Some(Setup::Jump(_)), _) => self.playback.t_s >= self.jump.flight.touchdown_s,
            _ => true,
        };
        if let Some(lesson) = &mut self.lesson {
            lesson.flown |= flown;
        }
    }

    /// The jump of the step shown, where the pupil has changed it.
    fn changed_in_step(&self) -> Option<Scenario> {
        let lesson = self.lesson.as_ref()?;
        let is_own = match lesson.flown_in_scene() {
            Some(Flown::Jump { scenario, .. }) => **scenario != *self.scenario(),
            _ => false,
        };
        (lesson.begun && is_own).then(|| self.scenario().clone())
    }

    fn keep_step(&mut self) {
        let left = self.changed_in_step();
        if let Some(lesson) = &mut self.lesson {
            let at = lesson.progress().at();
            lesson.played.left[at] = left;
        }
    }

    /// Sets up what the step in sight flies, as it was left, with all locked that is not the step's.
    fn show_step(&mut self) {
        let Some(lesson) = &mut self.lesson else {
            return;
        };
        lesson.take_stock();
        let at = lesson.progress().at();
        let left = lesson.played.left[at].clone();
        let step = lesson.step();
        let free = step.free.clone();
        let withheld = lesson.withholds_flight();
        self.policy = Policy::default();
        self.history = History::default();
        self.set_up_scene();
        if let Some(left) = left {
            let base = self.document.base.clone();
            let document = Document {
                scenario: left,
                ..Document::opened(base)
            };
            self.replace_document(Change::Inputs, document);
        }
        let may_change = |input: &Input| !withheld && free.contains(&Free::Input(*input));
        self.policy = Policy::locking(Input::all().filter(|input| !may_change(input)));
        self.watch_lesson();
    }
}

impl Session {
    /// Sets up and flies one of the flights that the answer is about.
    pub fn fly_lesson_scene(&mut self, place: usize) {
        let may = !self.withholds_flight();
        if let Some(lesson) = self
            .lesson
            .as_mut()
            .filter(|it| may && place < it.scenes.len())
        {
            lesson.scene = place;
            self.history = History::default();
            self.set_up_scene();
        }
    }

    fn set_up_scene(&mut self) {
        let Some(lesson) = &self.lesson else {
            return;
        };
        let flown = lesson.flown_in_scene().cloned();
        let setup = lesson.step().setup.clone();
        self.turntable = None;
        match (setup, flown) {
            (Some(Setup::Jump(_)), Some(Flown::Jump { scenario, .. })) => {
                self.replace_document(Change::Opened, Document::opened(*scenario));
            }
            (Some(Setup::Turntable(on)), flown) => match (OnTurntable::begun(&on.setup), flown) {
                (Ok(mut begun), Some(Flown::Run(run))) => {
                    begun.play_back(run);
                    self.turntable = Some(begun);
                }
                (Ok(begun), _) => self.turntable = Some(begun),
                (Err(why), _) => self.say(why.sentence()),
            },
            _ => {}
        }
    }

    /// Opening another jump leaves the lesson.
    pub(crate) fn leave_lesson_for(&mut self, action: &Action) {
        if matches!(action, Action::Open(..)) && self.lesson.is_some() {
            self.leave_lesson();
        }
    }
}
