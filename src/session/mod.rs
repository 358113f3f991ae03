//! What the user is doing: the jump at hand, its finished flight, and where the playhead stands.
//!
//! Screens read it and call its methods; it knows no screen.

pub mod beyond;
pub mod collection;
pub mod compare;
pub mod efforts;
pub mod goal;
mod linked;
pub mod map;
mod marks;
mod question;
pub mod readings;
mod stepping;
mod tried;
mod uncertainty;
pub mod weights;
pub mod why;

use std::mem;
use std::sync::Arc;

use serde::{Deserialize, Serialize};

use crate::physics::flight::{Flight, FlightSample};
use crate::say;
use crate::scenario::Scenario;
use crate::scenario::beyond::Respect;
use crate::scenario::file::Opened;
use crate::scenario::fly::Jump;
use crate::scenario::keys::{KEYS, Key};
use crate::scenario::reading::unmarked;
use crate::scenario::starts;
use crate::scenario::uncertainty::Range;
use crate::scenario::units::Units;
use crate::words::text;
use collection::saved::FileKind;
use compare::{Compare, SavedReference};
use goal::GoalAnswer;
pub use question::Question;
use tried::Tried;
use uncertainty::UncertaintyInputs;
use why::Why;

/// Shown before take-off and after touch-down, s.
pub const BEFORE_S: f64 = 0.25;
pub const AFTER_S: f64 = 0.35;

/// One frame of the playhead's single step, s: video of 60 pictures a second.
pub const FRAME_S: f64 = 1.0 / 60.0;

/// Playing speeds, over real time.
pub const SPEEDS: [f64; 4] = [1.0, 0.5, 0.25, 0.1];

/// The jump on the screen.
#[derive(Debug)]
#[cfg_attr(feature = "page", derive(bevy::prelude::Resource))]
pub struct Session {
    scenario: Scenario,
    /// What the controls go back to: the starting point or file last opened.
    base: Scenario,
    jump: Jump,
    /// In which respects that jump is beyond what has been seen.
    beyond_seen: Vec<Respect>,
    uncertainty: UncertaintyInputs,
    tried: Tried,
    why: Why,
    goal: GoalAnswer,
    held_weights: weights::Held,
    /// Of this very jump; none when not asked for.
    range: Option<Range>,
    compare: Compare,
    revision: u64,
    /// Grows with what a reload has to find again and no flight tells of.
    changes: u64,
    question: Question,
    map: map::Map,
    marks: marks::MarksAnswer,
    computing: bool,
    pub units: Units,
    pub playback: Playback,
    /// A finger or the mouse holds a control: what follows the session at leisure waits.
    pub dragging: bool,
    /// Nothing is to move unasked.
    still: bool,
    /// What a newcomer is told has been put away.
    greeted: bool,
    notice: Option<String>,
    /// What the browser kept is older than the body, and that is still to be said.
    earlier_body_unreported: bool,
}

/// Where the playhead is and how it moves.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Playback {
    /// s after take-off.
    pub t_s: f64,
    pub playing: bool,
    pub speed: f64,
    /// Starts over after the landing.
    pub repeat: bool,
}

/// What survives a reload.
#[derive(Serialize, Deserialize)]
struct Visit {
    scenario: String,
    base: String,
    units: Units,
    /// Visits before there was a range have none.
    #[serde(default, rename = "how_sure")]
    uncertainty: UncertaintyInputs,
    #[serde(default)]
    question: Question,
    #[serde(default, rename = "win")]
    goal: goal::SavedGoal,
    #[serde(default)]
    map: map::Levers,
    #[serde(default, rename = "beside")]
    reference: Option<SavedReference>,
    #[serde(default)]
    greeted: bool,
}

/// The jump alone of it.
#[derive(Deserialize)]
struct SavedJump {
    scenario: String,
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
            base: scenario.clone(),
            beyond_seen: scenario.beyond_seen(&jump),
            scenario,
            jump,
            uncertainty: UncertaintyInputs::default(),
            tried: Tried::default(),
            why: Why::default(),
            goal: GoalAnswer::default(),
            held_weights: weights::Held::default(),
            range: None,
            compare: Compare::default(),
            revision: 0,
            changes: 0,
            question: Question::default(),
            map: map::Map::default(),
            marks: marks::MarksAnswer::default(),
            computing: false,
            units: Units::default(),
            playback: Playback {
                t_s: -BEFORE_S,
                playing: true,
                speed: 0.25,
                repeat: false,
            },
            dragging: false,
            still: false,
            greeted: false,
            notice: None,
            earlier_body_unreported: false,
        }
    }

    pub const fn scenario(&self) -> &Scenario {
        &self.scenario
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

    /// Grows with every flight, and with what is asked about it.
    pub const fn revision(&self) -> u64 {
        self.revision
    }

    /// Grows with what a reload has to find again and no flight tells of.
    pub const fn changes(&self) -> u64 {
        self.changes
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
        let scenario = &self.scenario;
        scenario
            .jump
            .landing_heading_rad(scenario.jump_turns, scenario.turning)
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
        self.name_reference();
        self.measure_range();
    }

    /// Whether a newcomer has yet to be told what to do here.
    pub const fn greets(&self) -> bool {
        !self.greeted
    }

    /// Puts what a newcomer is told away for good.
    pub fn greet_no_more(&mut self) {
        self.greeted = true;
        self.changes += 1;
    }

    /// Sets a number; outside its range it is held at the limit, and that is said.
    pub fn set(&mut self, key: &Key, value: f64) {
        if !value.is_finite() {
            self.say(say!("number-needed", what = key.label()));
            return;
        }
        let held = key.hold(&mut self.scenario, value);
        self.notice = held.map(|held| {
            let unit = self.units.of(key.kind);
            say!(
                "number-held",
                what = key.label(),
                least = unit.text(key.least),
                most = unit.text(key.most),
                held = unit.text(held)
            )
        });
        self.fly();
    }

    /// Puts a number back to what the opened jump had.
    pub fn reset(&mut self, key: &Key) {
        self.set(key, (key.get)(&self.base));
    }

    /// Whether any control differs from the opened jump.
    pub fn differs_from_base(&self) -> bool {
        self.scenario != self.base
    }

    /// Puts every control back.
    pub fn reset_all(&mut self) {
        self.scenario = self.base.clone();
        self.tried.forget();
        self.fly();
    }

    /// Changes what is not a number.
    pub fn change(&mut self, change: impl FnOnce(&mut Scenario)) {
        change(&mut self.scenario);
        self.fly();
    }

    /// Opens a jump and plays it. Half-widths and limits are about one jumper: another one has the
    /// usual ones.
    pub fn open(&mut self, scenario: Scenario) {
        self.uncertainty.forget_own();
        self.tried.forget();
        self.goal.forget_limits();
        self.base = scenario.clone();
        self.scenario = scenario;
        self.notice = None;
        self.fly();
        self.renew_as_opened();
        self.show();
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
            Err(why) => self.say(say!("not-opened", why = why.to_string())),
        }
    }

    fn fly(&mut self) {
        let rests = self.playback.t_s >= self.jump.flight.touchdown_s;
        let after_s = self.playback.t_s - self.jump.flight.touchdown_s;
        self.jump = self.scenario.fly_after(Some(&self.jump));
        self.beyond_seen = self.scenario.beyond_seen(&self.jump);
        self.measure_range();
        if rests {
            // Who looks at the landing goes on looking at the landing.
            self.playback.t_s = self.jump.flight.touchdown_s + after_s;
        }
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
        if !self.playback.playing {
            return;
        }
        self.playback.t_s += passed_s * self.playback.speed;
        if self.playback.t_s < self.last_s() {
            return;
        }
        if self.playback.repeat {
            self.playback.t_s = -BEFORE_S;
        } else {
            self.playback.t_s = self.last_s();
            self.playback.playing = false;
        }
    }

    /// Starts or stops; from the end it starts over.
    pub fn play_or_pause(&mut self) {
        if !self.playback.playing && self.playback.t_s >= self.last_s() {
            self.playback.t_s = -BEFORE_S;
        }
        self.playback.playing = !self.playback.playing;
    }

    /// From now on plays only when asked: an opened jump shows its landing at once.
    pub fn keep_still(&mut self) {
        self.still = true;
        self.show();
    }

    /// Shows what has been opened.
    fn show(&mut self) {
        self.playback.playing = !self.still;
        self.playback.t_s = if self.still { self.last_s() } else { -BEFORE_S };
    }

    /// Puts the playhead somewhere inside the flight and stops there.
    pub fn scrub(&mut self, t_s: f64) {
        self.playback.playing = false;
        self.playback.t_s = t_s.clamp(0.0, self.end_s());
    }

    /// One frame on or back.
    pub fn step(&mut self, frames: f64) {
        let inside_s = self.playback.t_s.clamp(0.0, self.end_s());
        self.scrub(inside_s + frames * FRAME_S);
    }

    /// What a reload needs, as text.
    pub fn keep(&self) -> String {
        serde_json::to_string(&Visit {
            scenario: self.scenario.to_file(),
            base: self.base.to_file(),
            units: self.units,
            uncertainty: self.uncertainty.clone(),
            question: self.question,
            goal: self.goal.saved(),
            map: self.map_levers().clone(),
            reference: self.reference().map(compare::Reference::keep),
            greeted: self.greeted,
        })
        .expect("a session holds nothing that JSON cannot say")
    }

    /// Restores an earlier visit. An unreadable one is reported and the usual start stays; where only its
    /// jump can be read, that is restored.
    ///
    /// Its version is reported later ([`Self::report_earlier_body`]): the kept jumps and a link are read
    /// directly after it.
    pub fn restore(&mut self, json: &str) {
        let whole: Result<Visit, _> = serde_json::from_str(unmarked(json));
        let opened = whole.map_err(|why| why.to_string()).and_then(|mut visit| {
            let read = |text: &str| Scenario::open_file(text).map_err(|why| why.to_string());
            let (scenario, base) = (read(&visit.scenario)?, read(&visit.base)?);
            visit
                .uncertainty
                .check(&scenario.read)
                .map_err(|why| why.to_string())?;
            let goal = GoalAnswer::restore(&visit.goal)?;
            let reference = visit
                .reference
                .take()
                .map(SavedReference::restore)
                .transpose()?;
            Ok((scenario, base, goal, reference, visit))
        });
        match opened {
            Ok((scenario, base, goal, reference, visit)) => {
                self.units = visit.units;
                self.question = visit.question;
                self.map.levers = visit.map;
                self.earlier_body_unreported |= scenario.earlier_body
                    || base.earlier_body
                    || reference
                        .as_ref()
                        .is_some_and(|reference| reference.earlier_body);
                self.compare.reference = reference.map(|reference| reference.read);
                self.greeted = visit.greeted;
                self.open(scenario.read);
                self.base = base.read;
                self.renew_as_opened();
                // Another language may have been spoken then.
                self.name_reference();
                self.uncertainty = visit.uncertainty;
                self.goal = goal;
                self.measure_range();
            }
            Err(_) => match jump_of(json) {
                Some(jump) => {
                    self.earlier_body_unreported |= jump.earlier_body;
                    self.open(jump.read);
                    self.say(text("last-visit-jump-only"));
                }
                None => self.say(text("last-visit-unreadable")),
            },
        }
    }
}

/// The jump of a visit, whatever else stands there.
fn jump_of(json: &str) -> Option<Opened<Scenario>> {
    let visit: SavedJump = serde_json::from_str(unmarked(json)).ok()?;
    Scenario::open_file(&visit.scenario).ok()
}

/// The rows of the five numbers always in sight.
pub fn main_keys() -> impl Iterator<Item = &'static Key> {
    KEYS.iter().take(crate::scenario::keys::MAIN)
}
