//! How sure the turns are: what is uncertain of four inputs, carried through to turns and call.
//!
//! A half-width is the 95 % limit of an error taken as normal and independent of the others. Each
//! input is flown at both its ends; the changes of the turns add up as the root of their squares.

use std::f64::consts::TAU;

use super::Scenario;
use super::fly::Jump;
use super::keys::{self, Kind, Refused, plain, shown};
use super::named::named;
use crate::physics::body::{Body, BodySpec, Segment};
use crate::physics::call::Call;
use crate::physics::momentum::MassState;
use crate::physics::posture::{Posture, STILL};
use crate::physics::tree::Tree;
use crate::say;
use crate::words::Message;

/// Half-widths of what is uncertain about a jump.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Uncertainty {
    pub jump_height_m: f64,
    pub takeoff_rate_rad_s: f64,
    pub close_time_s: f64,
    /// Of the moment of inertia about the long axis, as a share of the standing body's.
    pub inertia_share: f64,
}

/// One of the four: its key, what it may be, and what it is.
#[derive(Debug)]
pub struct HalfWidth {
    pub key: &'static str,
    label: Message,
    inline: Message,
    about: Message,
    pub kind: Kind,
    pub most: f64,
    /// What one touch makes it larger or smaller by.
    pub step: f64,
    pub get: fn(&Uncertainty) -> f64,
    set: fn(&mut Uncertainty, f64),
}

macro_rules! half_width {
    ($field:ident, $name:literal, $kind:ident, $most:literal, $step:expr) => {
        HalfWidth {
            key: stringify!($field),
            label: Message(concat!("key-", $name)),
            inline: Message(concat!("key-", $name, "-inline")),
            about: Message(concat!("half-width-", $name, "-about")),
            kind: Kind::$kind,
            most: $most,
            step: $step,
            get: |of| of.$field,
            set: |of, value| of.$field = value,
        }
    };
}

/// How many inputs carry an uncertainty.
pub const INPUTS: usize = 4;

pub const HALF_WIDTHS: [HalfWidth; INPUTS] = [
    half_width!(jump_height_m, "jump-height-m", Length, 0.25, 0.005),
    half_width!(
        takeoff_rate_rad_s,
        "takeoff-rate-rad-s",
        Rate,
        5.0,
        TAU / 60.0
    ),
    half_width!(close_time_s, "close-time-s", Time, 0.2, 1.0 / 120.0),
    half_width!(inertia_share, "inertia-share", Share, 0.5, 0.05),
];

/// Bodies that are shorter get the child's uncertainty: between the median statures at 12 (1.51 m
/// and 1.49 m, girls and boys) and at 14 (1.60 m and 1.64 m) of the CDC 2000 growth charts. Where
/// between is our choice; a small adult gets it too.
const CHILD_BELOW_M: f64 = 1.55;

/// Half-width of the inertia, as a share. Grown bodies: five sample bodies of another body model
/// have 0.84 to 1.22 of ours standing; three measured men and the mean of 66 more 1.18 to 1.40
/// (`tests/outside/test_human.py`). The half-width about covers the model's. Children: no body was
/// found to compare, so half as much again, our choice.
const GROWN_INERTIA: f64 = 0.20;
const CHILD_INERTIA: f64 = 0.30;

/// Least factor on the trunk's and the head's own moments, our choice: a body has to keep some. It
/// is met at 31 % (female table) or 35 % (male) less of the standing inertia.
const LEAST_CORE: f64 = 0.05;

/// Gravity times half a second of hang time over four, times a sixtieth of a second: 2 cm.
const USUAL_HEIGHT_M: f64 = 0.02;
/// The square root of 2 times 2 degrees over a tenth of a second: 0.49 rad/s.
const USUAL_RATE_RAD_S: f64 = 0.5;
const USUAL_CLOSE_TIME_S: f64 = 1.0 / 60.0;

named!(HalfWidth);

impl HalfWidth {
    /// Sets the half-width, held between nothing and the most it may be.
    pub fn hold(&self, of: &mut Uncertainty, value: f64) {
        (self.set)(of, value.clamp(0.0, self.most));
    }

    fn check(&self, value: f64) -> Result<(), Refused> {
        if (0.0..=self.most).contains(&value) {
            return Ok(());
        }
        Err(Refused::new(say!(
            "half-width-out-of-range",
            key = self.key,
            value = plain(value),
            most = self.kind.si(self.most)
        )))
    }

    fn no_number(&self, text: &str) -> Refused {
        Refused::new(say!(
            "half-width-not-a-number",
            key = self.key,
            value = shown(text),
            most = self.kind.si(self.most)
        ))
    }

    /// What an input's error makes of the turns: by how much the input could be off, because it is
    /// held inside its range, and the turns then.
    fn flown_off(&self, scenario: &Scenario, nominal: &Jump, off: f64) -> (f64, f64) {
        let Some(key) = keys::key(self.key) else {
            // Inertia is the one that is no number of the scenario.
            let (reached, body) = with_inertia_off(scenario, off);
            return (reached, scenario.fly_as(body, Some(nominal)).turns);
        };
        let mut other = scenario.clone();
        key.hold(&mut other, (key.get)(scenario) + off);
        let reached = (key.get)(&other) - (key.get)(scenario);
        if other.turns_like(scenario) {
            return (reached, nominal.turns);
        }
        (reached, other.fly_after(Some(nominal)).turns)
    }

    /// Change of the turns as the input grows by its half-width: from the turns at both its ends,
    /// in proportion where an end cannot be reached.
    fn change(&self, scenario: &Scenario, nominal: &Jump, half_width: f64) -> f64 {
        if half_width == 0.0 {
            return 0.0;
        }
        let (less, turns_less) = self.flown_off(scenario, nominal, -half_width);
        let (more, turns_more) = self.flown_off(scenario, nominal, half_width);
        (turns_more - turns_less) / (more - less) * half_width
    }
}

/// The jumper's body with a moment of inertia that is off by a share of the standing body's, and the
/// share that could be reached.
///
/// A factor common to all postures would change no turns, because the take-off rate is given. What
/// counts is what does not change with the posture: all of the error is put there, into the own
/// moments of trunk and head, so that it is the same number of kg m² in every posture. What is
/// carried is weighed, not read from a table: it is left out of the standing body.
pub fn with_inertia_off(scenario: &Scenario, share: f64) -> (f64, BodySpec) {
    let spec = scenario.body_spec();
    let bare = Body::new(BodySpec {
        hand_mass_kg: 0.0,
        boot_mass_kg: 0.0,
        ..spec
    });
    let standing = MassState::new(&Tree::new(&bare), &Posture::STANDING, &STILL);
    let core_kg_m2: f64 = bare
        .parts
        .iter()
        .filter(|part| CORE.contains(&part.segment))
        .map(|part| part.moments_kg_m2.y)
        .sum();
    let per_share = standing.inertia_kg_m2.y_axis.y / core_kg_m2;
    let core_inertia = (1.0 + share * per_share).max(LEAST_CORE);
    let body = BodySpec {
        core_inertia,
        ..spec
    };
    ((core_inertia - 1.0) / per_share, body)
}

const CORE: [Segment; 4] = [
    Segment::LowerTrunk,
    Segment::MiddleTrunk,
    Segment::UpperTrunk,
    Segment::Head,
];

impl Uncertainty {
    /// What is usual for this jumper.
    pub fn usual(scenario: &Scenario) -> Self {
        let child = scenario.stature_m < CHILD_BELOW_M;
        Self {
            jump_height_m: USUAL_HEIGHT_M,
            takeoff_rate_rad_s: USUAL_RATE_RAD_S,
            close_time_s: USUAL_CLOSE_TIME_S,
            inertia_share: if child { CHILD_INERTIA } else { GROWN_INERTIA },
        }
    }

    /// Sets one half-width from text, as on the command line.
    pub fn set(&mut self, name: &str, text: &str) -> Result<(), Refused> {
        let Some(row) = HALF_WIDTHS.iter().find(|row| row.key == name) else {
            return Err(Refused::new(say!(
                "half-width-unknown",
                key = shown(name),
                value = shown(text),
                known = HALF_WIDTHS.map(|row| row.key).join(", ")
            )));
        };
        let number: Option<f64> = text.parse().ok();
        let value = number
            .filter(|value| value.is_finite())
            .ok_or_else(|| row.no_number(text))?;
        row.check(value)?;
        (row.set)(self, value);
        Ok(())
    }
}

/// Where the turns may lie, and what it comes from.
#[derive(Debug, Clone, PartialEq)]
pub struct Range {
    /// 95 % of what is possible lies from `low` to `high`. Turns are never fewer than none.
    pub low: f64,
    pub high: f64,
    /// Change of the turns as each input grows by its half-width, in the order of [`HALF_WIDTHS`].
    pub changes: [f64; INPUTS],
    /// Missing rotation at `high` and at `low`, degrees; none for a free jump.
    pub shortfall_deg: Option<[f64; 2]>,
    /// Every call between both ends, the mildest first; none where the rule does not reach.
    pub calls: Option<Vec<Call>>,
}

impl Range {
    /// The range of a flown jump.
    pub fn new(scenario: &Scenario, jump: &Jump, uncertainty: &Uncertainty) -> Self {
        let changes = HALF_WIDTHS
            .each_ref()
            .map(|row| row.change(scenario, jump, (row.get)(uncertainty)));
        let half_width = libm::sqrt(changes.iter().map(|change| change * change).sum());
        let low = (jump.turns - half_width).max(0.0).min(jump.turns);
        let high = jump.turns + half_width;
        let shortfall_deg = jump
            .owed
            .map(|owed| [high, low].map(|turns| 360.0 * (owed.turns - turns)));
        let called = jump.owed.is_some_and(|owed| owed.call.is_some());
        Self {
            low,
            high,
            changes,
            shortfall_deg,
            calls: shortfall_deg.filter(|_| called).map(calls_between),
        }
    }

    /// The input that matters most, if any does.
    pub fn foremost(&self) -> Option<&'static HalfWidth> {
        HALF_WIDTHS
            .iter()
            .zip(self.changes)
            .filter(|(_, change)| *change != 0.0)
            .max_by(|(_, one), (_, other)| one.abs().total_cmp(&other.abs()))
            .map(|(row, _)| row)
    }
}

/// All calls from the one at the smaller shortfall to the one at the larger.
fn calls_between(shortfall_deg: [f64; 2]) -> Vec<Call> {
    const MILDEST_FIRST: [Call; 4] = [Call::Full, Call::Quarter, Call::Under, Call::Downgraded];
    let [mildest, worst] = shortfall_deg.map(Call::of);
    let place = |call| MILDEST_FIRST.iter().position(|&one| one == call);
    match (place(mildest), place(worst)) {
        (Some(from), Some(to)) => MILDEST_FIRST[from..=to].to_vec(),
        _ => Vec::new(),
    }
}
