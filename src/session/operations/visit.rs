//! Keeping what survives a reload, and restoring it.

use crate::session::Session;
use crate::state::document::Document;
use crate::state::fitted_jumps::FittedJumps;
use crate::state::history::{Change, History};
use crate::state::lesson::{LessonInSight, Played};
use crate::state::measuring::Measuring;
use crate::state::reference::SavedReference;
use crate::state::visit::{Visit, VisitState, jump_of};
use turns_aloft_attempt::Attempt;
use turns_aloft_turntable::Setup;
use turns_aloft_words::text;

impl Session {
    /// All that a reload needs.
    pub fn visit_state(&self) -> VisitState {
        VisitState {
            document: self.document.clone(),
            steps: self.history.steps(),
            reference_name: self.reference().map(|reference| reference.name.clone()),
            preferences: self.preferences,
            uncertainty: self.uncertainty.clone(),
            question: self.question,
            setting_up: self.setting_up,
            trying: self.trying,
            goal: self.goal_settings.clone(),
            map: self.map_levers().clone(),
            measuring: self.attempt().cloned(),
            turntable: self.turntable_setup,
            fitted: self.fitted_jumps.clone(),
            lessons: self.lessons_to_keep(),
            in_lesson: self.lesson().map(LessonInSight::is_begun),
        }
    }

    /// What a reload needs, as text.
    pub fn keep(&self) -> String {
        let lesson = self.lesson.as_ref();
        let before = lesson.map(|lesson| &*lesson.before);
        let (document, history, reference) = match before {
            // A reload comes back to the lesson, and leaving that to what was at hand before.
            Some(before) => (&before.document, &before.history, before.reference.clone()),
            None => (&self.document, &self.history, self.saved_reference()),
        };
        serde_json::to_string(&Visit {
            scenario: document.scenario.to_file(),
            base: document.base.to_file(),
            units: self.preferences.units,
            uncertainty: self.uncertainty.clone(),
            question: self.question,
            goal: self.goal_settings.saved(),
            map: self.map_levers().clone(),
            reference,
            greeted: self.preferences.greeted,
            curves: self.preferences.curves,
            side_by_side: self.preferences.side_by_side,
            setting_up: self.setting_up,
            trying: self.trying,
            measuring: self.attempt().map(Attempt::to_file),
            fitted: self.fitted_jumps.saved(),
            turntable: self.turntable_setup.written(),
            lessons: self.lessons_to_keep().iter().map(Played::saved).collect(),
            in_lesson: lesson.map(LessonInSight::is_begun),
            history: history.saved(),
        })
        .expect("a session holds nothing that JSON cannot say")
    }

    pub(crate) fn saved_reference(&self) -> Option<SavedReference> {
        self.reference().map(SavedReference::of)
    }

    /// Restores an earlier visit. An unreadable one is reported and the usual start stays; where only its
    /// jump can be read, that is restored.
    ///
    /// Its version is reported later ([`Self::report_earlier_body`]): the kept jumps and a link are read
    /// directly after it.
    pub fn restore(&mut self, json: &str) {
        match Visit::read(json) {
            Ok(read) => {
                let visit = read.visit;
                self.preferences.units = visit.units;
                self.question = visit.question;
                self.map_levers = visit.map;
                self.preferences.greeted = visit.greeted;
                self.preferences.curves = visit.curves;
                self.preferences.side_by_side = visit.side_by_side;
                self.earlier_body_unreported |= read.earlier_body;
                let history =
                    (visit.history).and_then(|saved| History::restore(saved, &read.document));
                self.history = history.unwrap_or_default();
                self.replace_document(Change::Opened, read.document);
                self.uncertainty = visit.uncertainty;
                self.goal_settings = read.goal;
                self.setting_up = visit.setting_up;
                self.trying = visit.trying;
                self.take_stock_of_try();
                // Spoilt marks are no reason to lose the jump.
                let read = |text: &String| Attempt::open_file(text).ok();
                let attempt = visit.measuring.as_ref().and_then(read);
                self.measuring = attempt.map(|opened| Measuring::new(opened.read));
                self.fitted_jumps = FittedJumps::restore(&visit.fitted);
                // Nor is a spoilt turntable.
                if let Ok(setup) = Setup::read(&visit.turntable) {
                    self.turntable_setup = setup;
                }
                self.measure_range();
                self.lessons = visit.lessons.iter().filter_map(Played::restore).collect();
                if let (Some(begun), Some(played)) =
                    (visit.in_lesson, self.lessons.first().cloned())
                {
                    self.show_lesson(played, begun);
                }
            }
            Err(_) => match jump_of(json) {
                Some(jump) => {
                    self.earlier_body_unreported |= jump.earlier_body;
                    self.history = History::default();
                    self.replace_document(Change::Opened, Document::opened(jump.read));
                    self.say(text("last-visit-jump-only"));
                }
                None => self.say(text("last-visit-unreadable")),
            },
        }
    }
}
