//! How sure the turns are: what is uncertain of four inputs, carried through to turns and call.
//!
//! A half-width is the 95 % limit of an error taken as normal and independent of the others. Each
//! input is flown at both its ends; the changes of the turns add up as the root of their squares.

use std::f64::consts::TAU;

use super::Scenario;
use super::fly::Jump;
use super::jumper::Size;
use super::keys::{self, Kind, Refused, plain, shown};
use super::named::named;
use crate::physics::body::{Body, BodySpec, Segment};
use crate::physics::centroidal::CentroidalState;
use crate::physics::posture::STILL;
use crate::physics::segments::SegmentTable;
use crate::physics::takeoff_landing::takeoff_posture;
use crate::physics::tight_posture::TightPosture;
use crate::physics::tree::Tree;
use crate::say;
use crate::scenario::call::Call;
use crate::words::Message;

/// Half-widths of what is uncertain about a jump.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Uncertainty {
    pub jump_height_m: f64,
    pub takeoff_rate_rad_s: f64,
    pub close_time_s: f64,
    /// Of the ratio of the body's moments of inertia, open as at take-off to tightest, as a share.
    pub inertia_ratio_share: f64,
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
    half_width!(inertia_ratio_share, "inertia-ratio-share", Share, 0.5, 0.01),
];

/// Half-width of the ratio of inertia, as a share: the one that makes of the turns, on average over the
/// starting points of grown jumpers, what nine bodies from outside make of them when they are flown
/// through the same plan with the jumper's stature and mass (1.96 times the root of the mean square of
/// their differences from the jumper's own table: what that table is off by as a whole is in it). They
/// are five measured people, both tables of de Leva and both of Dumas & Wojtusch. `cargo test
/// --no-default-features --test ensemble` computes it again and prints what belongs here. From
/// nine bodies it is itself known to a quarter only (standard error).
const FEMALE_RATIO: f64 = 0.18;
const MALE_RATIO: f64 = 0.14;

/// How much wider it is for a child: no child's body was found to compare, so our choice.
const CHILD_TIMES: f64 = 1.5;

/// The take-off openness at which the ratio is taken: that of most starting points on the ice.
const OPENNESS: f64 = 0.6;

/// Least ratio of inertia, open to tight, our choice: a body is never tightest when open.
const LEAST_RATIO: f64 = 1.05;

/// Least factor on the trunk's and the head's own moments, our choice: a body has to keep some.
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
            // The ratio of inertia is the one that is no number of the scenario.
            let (reached, body) = with_ratio_off(scenario, off);
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

/// Moments of inertia about the long axis, kg m², of a body as open as at take-off and as tight as
/// it can get.
pub fn open_and_tight_kg_m2(body: &Body) -> [f64; 2] {
    let tree = Tree::new(body);
    let spec = &body.spec;
    let tight = TightPosture::of(spec.table, spec.stature_m, spec.body_mass_kg);
    let open = takeoff_posture(OPENNESS, tight.legs_apart_rad());
    [open, tight.posture()].map(|posture| {
        CentroidalState::new(&tree, &posture, &STILL)
            .inertia_kg_m2
            .y_axis
            .y
    })
}

/// The jumper without what is weighed, not read from a table.
pub fn bare(scenario: &Scenario) -> BodySpec {
    BodySpec {
        hand_mass_kg: 0.0,
        boot_mass_kg: 0.0,
        ..scenario.body_spec()
    }
}

/// The jumper's body with a ratio of inertia, open to tight, that is off by a share, and the share
/// that could be reached.
///
/// The take-off rate is given, so a factor common to all postures would change no turns: the ratio
/// is what counts. All of the error is put into the own moments of trunk and head, the same number
/// of kg m² in every posture. The ratio is that of two given postures, not of the jump's own: a jump
/// that opens or closes by half then feels as much less of the error as it must.
pub fn with_ratio_off(scenario: &Scenario, share: f64) -> (f64, BodySpec) {
    let bare = Body::new(bare(scenario));
    let [open, tight] = open_and_tight_kg_m2(&bare);
    let ratio = open / tight;
    let core_kg_m2: f64 = bare
        .parts
        .iter()
        .filter(|part| CORE.contains(&part.segment))
        .map(|part| part.moments_kg_m2.y)
        .sum();
    // What has to be added so that (open + added) / (tight + added) is the ratio that is off: still above
    // 1, which the largest half-width would take it below in a body too stout to get tight.
    let share = share.max(LEAST_RATIO / ratio - 1.0);
    let goal = share * open / (1.0 - ratio * (1.0 + share));
    let core_inertia = (1.0 + goal / core_kg_m2).max(LEAST_CORE);
    let added = (core_inertia - 1.0) * core_kg_m2;
    let reached = (open + added) / (tight + added) / ratio - 1.0;
    let body = BodySpec {
        core_inertia,
        ..scenario.body_spec()
    };
    (reached, body)
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
        let child = scenario.jumper().size != Size::Grown;
        let ratio = match scenario.table {
            SegmentTable::Female => FEMALE_RATIO,
            SegmentTable::Male => MALE_RATIO,
        };
        Self {
            jump_height_m: USUAL_HEIGHT_M,
            takeoff_rate_rad_s: USUAL_RATE_RAD_S,
            close_time_s: USUAL_CLOSE_TIME_S,
            inertia_ratio_share: if child { CHILD_TIMES * ratio } else { ratio },
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
    /// Every call between both ends, that of the most turns first; none where the rule does not
    /// reach.
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
    const MOST_TURNS_FIRST: [Call; 5] = [
        Call::OverRotated,
        Call::Full,
        Call::Quarter,
        Call::Under,
        Call::Downgraded,
    ];
    let [most, fewest] = shortfall_deg.map(Call::of);
    let place = |call| MOST_TURNS_FIRST.iter().position(|&one| one == call);
    match (place(most), place(fewest)) {
        (Some(from), Some(to)) => MOST_TURNS_FIRST[from..=to].to_vec(),
        _ => Vec::new(),
    }
}
