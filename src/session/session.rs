//! What the user is doing: the jump at hand, its finished flight, and where the playhead stands.
//!
//! What is done to it stands in `operations`, what is said of it in `describe`.

use std::mem;
use std::sync::Arc;

use crate::answers::Answers;
use crate::answers::basis::Basis;
use crate::state::document::Document;
use crate::state::fitted_jumps::FittedJumps;
use crate::state::goal_settings::GoalSettings;
use crate::state::history::History;
use crate::state::lesson::{LessonInSight, Played};
use crate::state::levers::Levers;
use crate::state::library::Library;
use crate::state::measuring::Measuring;
use crate::state::notice::Notice;
use crate::state::playback::Playback;
use crate::state::policy::Policy;
use crate::state::preferences::Preferences;
use crate::state::question::Question;
use crate::state::reference::Reference;
use crate::state::slow_flight::SlowFlight;
use crate::state::turntable::OnTurntable;
use crate::state::uncertainty::UncertaintyInputs;
use turns_aloft_analysis::turn_try::TurnTry;
use turns_aloft_fit::Fit;
use turns_aloft_physics::flight::{Flight, FlightSample};
use turns_aloft_scenario::beyond::Respect;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::{Scenario, starts};
use turns_aloft_turntable::{Setup, Stand};
use turns_aloft_words::text;

/// Which moment of which flight is on the screen: what is written of it is compared by this.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Moment {
    generation: u64,
    /// Which flight by hand, where one is in the picture, and whether that has landed.
    by_hand: Option<(u64, bool)>,
    t_s: f64,
}

/// The jump on the screen.
#[derive(Debug)]
pub struct Session {
    pub(crate) document: Document,
    pub(crate) history: History,
    pub(crate) policy: Policy,
    pub(crate) jump: Jump,
    /// In which respects that jump is beyond what has been seen.
    pub(crate) beyond_seen: Vec<Respect>,
    pub(crate) uncertainty: UncertaintyInputs,
    /// Counts the flights: which one the present jump is.
    pub(crate) generation: u64,
    /// Which flight the last try, or the last way back from one, was.
    pub(crate) tried_generation: Option<u64>,
    /// The jump before the last try, as long as that can be gone back on.
    pub(crate) before_try: Option<Scenario>,
    /// The document's attempt to compare with, flown.
    pub(crate) reference: Option<Reference>,
    pub(crate) library: Library,
    pub(crate) answers: Answers,
    pub(crate) goal_settings: GoalSettings,
    pub(crate) question: Question,
    /// The jump has just been begun, and what it is and who jumps is being put in.
    pub(crate) setting_up: bool,
    /// Whether the five-turn try is on.
    pub(crate) trying: bool,
    /// What comes of it.
    pub(crate) turn_try: Option<TurnTry>,
    /// The attempt that is being measured.
    pub(crate) measuring: Option<Measuring>,
    /// The jump at hand is flown slowly by hand.
    pub(crate) slow_flight: Option<SlowFlight>,
    /// The lesson in sight.
    pub(crate) lesson: Option<LessonInSight>,
    /// Lessons that were played before, with what was answered.
    pub(crate) lessons: Vec<Played>,
    /// Who is on a turntable, if somebody is.
    pub(crate) turntable: Option<OnTurntable>,
    /// Who was on it last.
    pub(crate) turntable_setup: Setup,
    /// The jumps that were found from attempts.
    pub(crate) fitted_jumps: FittedJumps,
    /// What the marks say of the jump at hand, where it was found from some and that is worked out.
    pub(crate) present_fit: Option<Arc<Fit>>,
    pub(crate) map_levers: Levers,
    pub(crate) computing: bool,
    pub(crate) preferences: Preferences,
    pub playback: Playback,
    /// A finger or the mouse holds a control: what follows the session at leisure waits.
    pub(crate) dragging: bool,
    pub(crate) notice: Option<Notice>,
    /// What the browser kept is older than the body, and that is still to be said.
    pub(crate) earlier_body_unreported: bool,
}

impl Default for Session {
    /// The first starting point, about to fly at a quarter of its speed.
    fn default() -> Self {
        Self::opened(starts::all()[0].scenario.clone())
    }
}

impl Session {
    fn opened(scenario: Scenario) -> Self {
        let jump = scenario.fly();
        Self {
            beyond_seen: scenario.beyond_seen(&jump),
            document: Document::opened(scenario),
            history: History::default(),
            policy: Policy::default(),
            jump,
            uncertainty: UncertaintyInputs::default(),
            generation: 0,
            tried_generation: None,
            before_try: None,
            reference: None,
            library: Library::default(),
            answers: Answers::default(),
            goal_settings: GoalSettings::default(),
            question: Question::default(),
            setting_up: false,
            trying: false,
            turn_try: None,
            measuring: None,
            slow_flight: None,
            lesson: None,
            lessons: Vec::new(),
            turntable: None,
            turntable_setup: Setup::on(Stand::Platform),
            fitted_jumps: FittedJumps::default(),
            present_fit: None,
            map_levers: Levers::default(),
            computing: false,
            preferences: Preferences::default(),
            playback: Playback::default(),
            dragging: false,
            notice: None,
            earlier_body_unreported: false,
        }
    }

    /// The answers, and all that they can depend on.
    pub(crate) fn answers_and_basis(&mut self) -> (&mut Answers, Basis<'_>) {
        self.present_fit = self.fit_of_present_jump();
        let Self {
            document,
            jump,
            generation,
            tried_generation,
            dragging,
            reference,
            library,
            goal_settings,
            map_levers,
            uncertainty,
            measuring,
            fitted_jumps,
            present_fit,
            answers,
            ..
        } = self;
        let basis = Basis {
            scenario: &document.scenario,
            jump,
            generation: *generation,
            is_tried: *tried_generation == Some(*generation),
            dragging: *dragging,
            reference: reference.as_ref(),
            kept: library.collection(),
            goal: goal_settings,
            levers: map_levers,
            uncertainty,
            attempt: match measuring {
                Some(measuring) => Some(&measuring.attempt),
                None => fitted_jumps.attempt_of(&document.base),
            },
            fit: present_fit.as_ref(),
        };
        (answers, basis)
    }

    pub const fn document(&self) -> &Document {
        &self.document
    }

    pub const fn scenario(&self) -> &Scenario {
        &self.document.scenario
    }

    pub const fn jump(&self) -> &Jump {
        &self.jump
    }

    /// In which respects the jump is beyond what has been seen; empty in none.
    pub fn beyond_seen(&self) -> &[Respect] {
        &self.beyond_seen
    }

    pub const fn flight(&self) -> &Arc<Flight> {
        &self.jump.flight
    }

    /// Which flight the present jump is, counted from the start.
    pub const fn generation(&self) -> u64 {
        self.generation
    }

    /// Time shown, s after take-off; from a little before take-off to a little after touch-down.
    pub const fn playhead_s(&self) -> f64 {
        self.playback.t_s
    }

    pub fn moment(&self) -> Moment {
        let slow = self.slow_flight.as_ref();
        let on_turntable_s = self.turntable.as_ref().map(|it| it.shown().t_s);
        Moment {
            generation: self.generation,
            by_hand: slow.map(|slow| (slow.count, slow.landed().is_some())),
            t_s: on_turntable_s.unwrap_or(self.playback.t_s),
        }
    }

    /// Whether the next picture is another one of itself.
    pub fn moves(&self) -> bool {
        let is_led = self.slow_flight.as_ref().is_some_and(SlowFlight::is_in_air);
        match &self.turntable {
            Some(on_turntable) => on_turntable.moves(),
            None => self.playback.playing || is_led,
        }
    }

    /// The flight in the picture at the playhead, held at its ends.
    pub fn now(&self) -> FlightSample {
        match self.slow_flight.as_ref().and_then(SlowFlight::led) {
            Some(led) => *led.sample(),
            None => self.pictured().flight.at(self.playback.t_s),
        }
    }

    /// Heading of the pelvis that the named jump's landing owes; none for a free jump.
    pub fn owed_heading_rad(&self) -> Option<f64> {
        let scenario = &self.document.scenario;
        scenario
            .jump
            .landing_heading_rad(scenario.jump_turns, scenario.turning)
    }

    /// Whether a finger or the mouse holds a control: what follows the session at leisure waits.
    pub const fn is_dragging(&self) -> bool {
        self.dragging
    }

    /// To be called in every frame. What a control does from when it is held until it is let go is undone
    /// in one step.
    pub fn set_dragging(&mut self, dragging: bool) {
        self.dragging = dragging;
        if !dragging {
            self.history.close_step();
        }
    }

    /// One sentence for the user, until the next one or until dismissed.
    pub fn notice(&self) -> Option<&str> {
        self.notice.as_ref().map(|notice| &*notice.sentence)
    }

    /// Whether it tells of something that undoing the last change brings back.
    pub fn notice_brings_back(&self) -> bool {
        self.notice.as_ref().is_some_and(|it| it.brings_back)
    }

    pub fn say(&mut self, sentence: impl Into<String>) {
        self.notice = Some(sentence.into().into());
    }

    /// Says something of what undoing the last change brings back.
    pub(crate) fn say_that_it_comes_back(&mut self, sentence: String) {
        self.notice = Some(Notice {
            sentence,
            brings_back: true,
        });
    }

    /// Says something after what is said already.
    pub(crate) fn append_notice(&mut self, sentence: &str) {
        match &mut self.notice {
            Some(said) => {
                said.sentence.push(' ');
                said.sentence.push_str(sentence);
            }
            None => self.say(sentence),
        }
    }

    /// Says once, beside anything else, that what the browser kept is older than the body, where it is.
    pub fn report_earlier_body(&mut self) {
        if mem::take(&mut self.earlier_body_unreported) {
            self.append_notice(text("earlier-body-kept"));
        }
    }

    pub fn dismiss(&mut self) {
        self.notice = None;
    }
}
