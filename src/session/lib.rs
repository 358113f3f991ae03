//! What the user is doing: the jump at hand, its finished flight, and where the playhead stands.
//!
//! Screens read it and call its methods; it knows no screen.

mod action;
mod answers;
pub mod compare;
mod document;
pub mod efforts;
pub mod goal;
mod history;
mod library;
mod linked;
pub mod map;
mod marks;
mod playback;
mod policy;
mod preferences;
mod question;
pub mod readings;
mod stepping;
mod uncertainty;
mod visit;
pub mod weights;
pub mod why;

use std::mem;
use std::sync::Arc;
use turns_aloft_describe::Label;
use turns_aloft_describe::Sentence;
use turns_aloft_describe::unit::UnitText;

pub use crate::action::Action;
use crate::answers::{Answers, Basis};
use crate::compare::Reference;
pub use crate::document::{Attempt, Document};
use crate::goal::GoalSettings;
pub use crate::history::{Change, History, MOST_STEPS};
pub use crate::library::Library;
pub use crate::playback::{AFTER_S, BEFORE_S, FRAME_S, Playback, SPEEDS};
pub use crate::policy::Policy;
use crate::preferences::Preferences;
pub use crate::question::Question;
use crate::uncertainty::UncertaintyInputs;
pub use crate::visit::VisitState;
use turns_aloft_physics::flight::{Flight, FlightSample};
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::beyond::Respect;
use turns_aloft_scenario::collection::saved::FileKind;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::parameter::Parameter;
use turns_aloft_scenario::starts;
use turns_aloft_words::say;
use turns_aloft_words::text;

/// The jump on the screen.
#[derive(Debug)]
pub struct Session {
    document: Document,
    history: History,
    policy: Policy,
    jump: Jump,
    /// In which respects that jump is beyond what has been seen.
    beyond_seen: Vec<Respect>,
    uncertainty: UncertaintyInputs,
    /// Counts the flights: which one the present jump is.
    generation: u64,
    /// Which flight the last try, or the last way back from one, was.
    tried_generation: Option<u64>,
    /// The document's attempt to compare with, flown.
    reference: Option<Reference>,
    library: Library,
    answers: Answers,
    goal_settings: GoalSettings,
    question: Question,
    map_levers: map::Levers,
    computing: bool,
    preferences: Preferences,
    pub playback: Playback,
    /// A finger or the mouse holds a control: what follows the session at leisure waits.
    dragging: bool,
    notice: Option<String>,
    /// What the browser kept is older than the body, and that is still to be said.
    earlier_body_unreported: bool,
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
            reference: None,
            library: Library::default(),
            answers: Answers::default(),
            goal_settings: GoalSettings::default(),
            question: Question::default(),
            map_levers: map::Levers::default(),
            computing: false,
            preferences: Preferences::default(),
            playback: Playback::default(),
            dragging: false,
            notice: None,
            earlier_body_unreported: false,
        }
    }

    /// The answers, and all that they can depend on.
    fn answers_and_basis(&mut self) -> (&mut Answers, Basis<'_>) {
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
        };
        (answers, basis)
    }

    pub const fn document(&self) -> &Document {
        &self.document
    }

    pub const fn scenario(&self) -> &Scenario {
        &self.document.scenario
    }

    /// Locks inputs from now on, or frees them.
    pub fn set_policy(&mut self, policy: Policy) {
        self.policy = policy;
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

    /// The flight at the playhead, held at its ends.
    pub fn now(&self) -> FlightSample {
        self.jump.flight.at(self.playback.t_s)
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
        self.notice.as_deref()
    }

    pub fn say(&mut self, sentence: impl Into<String>) {
        self.notice = Some(sentence.into());
    }

    /// Says something after what is said already.
    fn say_too(&mut self, sentence: &str) {
        self.notice = Some(match self.notice.take() {
            Some(said) => format!("{said} {sentence}"),
            None => sentence.to_owned(),
        });
    }

    /// Says once, beside anything else, that what the browser kept is older than the body, where it is.
    pub fn report_earlier_body(&mut self) {
        if mem::take(&mut self.earlier_body_unreported) {
            self.say_too(text("earlier-body-kept"));
        }
    }

    pub fn dismiss(&mut self) {
        self.notice = None;
    }

    /// To be called when another language is spoken: what has been put into words already is put into
    /// words anew.
    pub fn retranslate(&mut self) {
        self.notice = None;
        self.follow_reference();
    }

    /// Sets a number; outside its range it is held at the limit, and that is said.
    pub fn set(&mut self, parameter: Parameter, value: f64) {
        if !value.is_finite() {
            self.say(say!("number-needed", what = parameter.label()));
            return;
        }
        if !self.apply(Action::Set(parameter, value)) {
            return;
        }
        let held = parameter.get(self.scenario());
        self.notice = (held != value).then(|| {
            let unit = self.units().of(parameter.kind());
            say!(
                "number-held",
                what = parameter.label(),
                least = unit.text(parameter.least()),
                most = unit.text(parameter.most()),
                held = unit.text(held)
            )
        });
    }

    /// Puts a number back to what the opened jump had.
    pub fn reset(&mut self, parameter: Parameter) {
        self.apply(Action::Reset(parameter));
    }

    /// Whether any control differs from the opened jump.
    pub fn differs_from_base(&self) -> bool {
        self.document.differs_from_base()
    }

    /// Puts every control back.
    pub fn reset_all(&mut self) {
        self.apply(Action::ResetAll);
    }

    /// Changes what is not a number.
    pub fn change(&mut self, change: impl FnOnce(&mut Scenario)) {
        let mut scenario = self.scenario().clone();
        change(&mut scenario);
        self.apply(Action::Edit(scenario));
    }

    /// Opens a jump and plays it. Half-widths and limits are about one jumper: another one has the
    /// usual ones.
    pub fn open(&mut self, scenario: Scenario) {
        self.apply(Action::Open(scenario, None));
    }

    /// Opens a file's text: a scenario's, or a collection's, whose jumps are kept. A bad one is said
    /// and leaves everything as it was.
    pub fn open_text(&mut self, file: &str) {
        if FileKind::of(file) == FileKind::Collection {
            self.open_collection(file);
            return;
        }
        match Scenario::open_file(file) {
            Ok(opened) => {
                self.open(opened.read);
                if opened.earlier_body {
                    self.say_too(&say!("earlier-body", jumps = 1));
                }
            }
            Err(why) => self.say(say!("not-opened", why = why.sentence())),
        }
    }

    fn fly(&mut self) {
        let rests = self.playback.t_s >= self.jump.flight.touchdown_s;
        let after_s = self.playback.t_s - self.jump.flight.touchdown_s;
        self.jump = self.document.scenario.fly_after(Some(&self.jump));
        self.beyond_seen = self.document.scenario.beyond_seen(&self.jump);
        self.generation += 1;
        self.measure_range();
        if rests {
            // Who looks at the landing goes on looking at the landing.
            self.playback.t_s = self.jump.flight.touchdown_s + after_s;
        }
        self.hold_playhead();
    }

    /// The later landing may be an earlier one now.
    fn hold_playhead(&mut self) {
        self.playback.t_s = self.playback.t_s.min(self.last_s());
    }

    /// Touch-down, or the later one of two, s after take-off.
    pub fn end_s(&self) -> f64 {
        let own_s = self.jump.flight.touchdown_s;
        self.reference().map_or(own_s, |reference| {
            own_s.max(reference.jump.flight.touchdown_s)
        })
    }

    fn last_s(&self) -> f64 {
        self.end_s() + AFTER_S
    }

    /// Moves the playhead on by `passed_s` of real time.
    pub fn advance(&mut self, passed_s: f64) {
        self.playback.advance(passed_s, self.last_s());
    }

    /// Starts or stops; from the end it starts over.
    pub fn play_or_pause(&mut self) {
        self.playback.play_or_pause(self.last_s());
    }

    /// Shows what has been opened.
    fn show(&mut self) {
        self.playback.show(self.preferences.still, self.last_s());
    }

    /// Puts the playhead somewhere inside the flight and stops there.
    pub fn scrub(&mut self, t_s: f64) {
        self.playback.scrub(t_s, self.end_s());
    }

    /// One frame on or back.
    pub fn step(&mut self, frames: f64) {
        self.playback.step(frames, self.end_s());
    }
}
