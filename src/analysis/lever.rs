//! What a jumper can change, and how much of it is comparable.

use std::f64::consts::TAU;

use serde::{Serialize, Serializer};

use super::search::crossing;
use crate::physics::body::Body;
use crate::physics::centroidal::CentroidalState;
use crate::physics::mass_properties::MassProperties;
use crate::physics::plan::Plan;
use crate::physics::tree::Tree;
use crate::say;
use crate::scenario::Scenario;
use crate::scenario::keys::{self, Key, Kind, plain};
use crate::scenario::units::Units;
use crate::words::Message;

/// One lever: a number of the scenario that training changes.
#[derive(Debug)]
pub struct Lever {
    pub key: &'static str,
    /// What one step of it is, in words, for how large it is.
    said: fn(String) -> String,
    step: Step,
    /// "A change a season's training might bring", in the key's own unit: our assumption, common
    /// practice, no source.
    pub season: f64,
}

/// A small step in the direction that usually gives turns.
#[derive(Debug)]
enum Step {
    /// In the key's own unit.
    By(f64),
    /// As much tighter as brings the hands of the closed body nearer to its long axis by
    /// [`NEARER_M`].
    HandsNearer,
}

/// One step of a lever, by the lever's place; to be said in the user's units.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct StepOf(pub usize);

impl StepOf {
    pub fn text(self, units: &Units) -> String {
        let lever = &LEVERS[self.0];
        let (kind, size) = match lever.step {
            Step::By(by) => (lever.row().kind, by.abs()),
            Step::HandsNearer => (Kind::Length, NEARER_M),
        };
        (lever.said)(units.of(kind).text(size))
    }
}

/// In the usual units.
impl Serialize for StepOf {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.text(&Units::default()))
    }
}

/// What a step of the arms brings the hands nearer to the axis by, m.
const NEARER_M: f64 = 0.01;

/// How finely the arm tuck is searched for that step, as a share.
const TUCK_SEARCH: f64 = 0.02;

/// How many levers there are.
pub const COUNT: usize = 7;

/// All of them. Steps and seasons are our choice. The hand mass is none of them: what it gives hangs
/// on what the jumper is taken to keep ([`super::weights`]), and no training brings it.
pub static LEVERS: [Lever; COUNT] = [
    Lever {
        key: "jump_height_m",
        said: |step| say!("step-jump-height-m", step = step),
        step: Step::By(0.01),
        season: 0.03,
    },
    Lever {
        key: "takeoff_rate_rad_s",
        said: |step| say!("step-takeoff-rate-rad-s", step = step),
        step: Step::By(5.0 * TAU / 60.0),
        season: 10.0 * TAU / 60.0,
    },
    Lever {
        key: "arm_tuck",
        said: |step| say!("step-arm-tuck", step = step),
        step: Step::HandsNearer,
        season: 0.10,
    },
    Lever {
        key: "leg_tuck",
        // About 1 cm at the feet as long as they are apart; crossed, they get no nearer.
        said: |step| say!("step-leg-tuck", step = step),
        step: Step::By(0.05),
        season: 0.10,
    },
    Lever {
        key: "close_delay_s",
        said: |step| say!("step-close-delay-s", step = step),
        step: Step::By(-0.010),
        season: 0.02,
    },
    Lever {
        key: "close_time_s",
        said: |step| say!("step-close-time-s", step = step),
        step: Step::By(-0.010),
        season: 0.02,
    },
    Lever {
        key: "open_lead_s",
        said: |step| say!("step-open-lead-s", step = step),
        step: Step::By(-0.010),
        season: 0.02,
    },
];

/// The lever of a key, by its place in [`LEVERS`].
pub fn place(key: &str) -> Option<usize> {
    LEVERS.iter().position(|lever| lever.key == key)
}

/// That a key is no lever, in a sentence.
pub(super) fn unknown(key: &str) -> String {
    let known: Vec<&str> = LEVERS.iter().map(|lever| lever.key).collect();
    say!("lever-unknown", key = key, known = known.join(", "))
}

impl Lever {
    /// Its row in the table of numbers.
    pub fn row(&self) -> &'static Key {
        keys::key(self.key).expect("every lever is one of the numbers")
    }

    pub fn value(&self, scenario: &Scenario) -> f64 {
        (self.row().get)(scenario)
    }

    /// The scenario with this lever somewhere else, held inside its admissible range.
    pub fn at(&self, scenario: &Scenario, value: f64) -> Scenario {
        let mut other = scenario.clone();
        self.row().hold(&mut other, value);
        other
    }

    /// A step for setting the lever by hand, in the key's own unit.
    pub const fn nudge(&self) -> f64 {
        match self.step {
            Step::By(step) => step.abs(),
            Step::HandsNearer => 0.05,
        }
    }

    /// The changes that one step forward and one step back would be, in the key's own unit; none
    /// where that leaves the admissible range or the hands get no nearer.
    pub fn steps(&self, scenario: &Scenario) -> [Option<f64>; 2] {
        let (row, now) = (self.row(), self.value(scenario));
        match self.step {
            Step::By(by) => [by, -by].map(|by| {
                let admissible = (row.least..=row.most).contains(&(now + by));
                admissible.then_some(by)
            }),
            Step::HandsNearer => [1.0, -1.0].map(|way| self.hands_nearer(scenario, way)),
        }
    }

    /// The change of the tuck, in the direction `way`, that brings the hands nearer to the axis, or
    /// (backwards) farther from it.
    fn hands_nearer(&self, scenario: &Scenario, way: f64) -> Option<f64> {
        let tree = Tree::new(&Body::new(scenario.body_spec()));
        let radius_m = |value: f64| hands_radius_m(&tree, &self.at(scenario, value));
        let now = self.value(scenario);
        let wanted_m = radius_m(now) - way * NEARER_M;
        let short_m = |value: f64| way * (radius_m(value) - wanted_m);
        let end = if way > 0.0 { 1.0 } else { 0.0 };
        let mut near = now;
        while near != end {
            let far = (near + way * TUCK_SEARCH).clamp(0.0, 1.0);
            if short_m(far) <= 0.0 {
                return crossing(near, far, short_m).map(|(value, _)| value - now);
            }
            near = far;
        }
        None
    }
}

/// Mean distance of both hands from the long axis of the closed body, m.
fn hands_radius_m(tree: &Tree, scenario: &Scenario) -> f64 {
    let plan = Plan::new(scenario.plan_spec());
    let (posture, rates) = plan.at(plan.closed_s(), f64::INFINITY);
    let properties = MassProperties::from(CentroidalState::new(tree, &posture, &rates));
    let radii_m = properties
        .state
        .hands_m
        .map(|hand| hand.cross(properties.long_axis).length());
    0.5 * (radii_m[0] + radii_m[1])
}

/// What a season's training might bring, lever by lever; the usual ones can be replaced.
#[derive(Debug, Clone, PartialEq)]
pub struct Season([Option<f64>; COUNT]);

impl Default for Season {
    fn default() -> Self {
        Self(std::array::from_fn(|i| Some(LEVERS[i].season)))
    }
}

impl Season {
    /// Where the usual ones come from.
    pub const SOURCE: Message = Message("season-source");

    /// The unit of a lever, in its key's own unit; none is held as it is.
    pub fn unit(&self, place: usize) -> Option<f64> {
        self.0[place]
    }

    /// Sets a lever's unit; 0 holds it as it is.
    pub fn set(&mut self, key: &str, unit: f64) -> Result<(), String> {
        let i = place(key).ok_or_else(|| unknown(key))?;
        let row = LEVERS[i].row();
        let most = row.most - row.least;
        if !(0.0..=most).contains(&unit) {
            return Err(say!(
                "season-out-of-range",
                key = key,
                value = plain(unit),
                most = row.kind.si(most)
            ));
        }
        self.0[i] = (unit > 0.0).then_some(unit);
        Ok(())
    }
}
