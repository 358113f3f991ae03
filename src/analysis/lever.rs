//! What a jumper can change, and how much of it is comparable.

use std::f64::consts::TAU;

use crate::physics::body::Body;
use crate::physics::momentum::MassState;
use crate::physics::plan::Plan;
use crate::physics::stance::Stance;
use crate::physics::tree::Tree;
use crate::scenario::Scenario;
use crate::scenario::keys::{self, Key};

/// One lever: a number of the scenario that training changes.
#[derive(Debug)]
pub struct Lever {
    pub key: &'static str,
    /// What one step of it is, in words.
    pub step_label: &'static str,
    step: Step,
    /// "A change a season's training might bring", in the key's own unit: our assumption, common
    /// practice, no source. None: nothing that training brings.
    pub season: Option<f64>,
}

/// A small step in the direction that usually gives turns.
#[derive(Debug)]
enum Step {
    /// In the key's own unit.
    By(f64),
    /// As much tighter as brings these points of the closed body nearer to its long axis by
    /// [`NEARER_M`].
    Nearer(fn(&MassState) -> &[glam::DVec3]),
}

/// What a step of a tuck brings the hands or the feet nearer to the axis by, m.
const NEARER_M: f64 = 0.01;

/// How finely the tuck is searched for that step, as a share.
const TUCK_SEARCH: f64 = 0.02;

/// How many levers there are.
pub const COUNT: usize = 8;

/// All of them. Steps and seasons are our choice.
pub static LEVERS: [Lever; COUNT] = [
    Lever {
        key: "jump_height_m",
        step_label: "1 cm higher",
        step: Step::By(0.01),
        season: Some(0.03),
    },
    Lever {
        key: "takeoff_rate_rad_s",
        step_label: "5 rpm faster at take-off",
        step: Step::By(5.0 * TAU / 60.0),
        season: Some(10.0 * TAU / 60.0),
    },
    Lever {
        key: "arm_tuck",
        step_label: "hands 1 cm nearer to the axis",
        step: Step::Nearer(|state| &state.hands_m),
        season: Some(0.10),
    },
    Lever {
        key: "leg_tuck",
        step_label: "feet 1 cm nearer to the axis",
        step: Step::Nearer(|state| &state.soles_m),
        season: Some(0.10),
    },
    Lever {
        key: "close_delay_s",
        step_label: "closing begins 10 ms earlier",
        step: Step::By(-0.010),
        season: Some(0.02),
    },
    Lever {
        key: "close_time_s",
        step_label: "closing takes 10 ms less",
        step: Step::By(-0.010),
        season: Some(0.02),
    },
    Lever {
        key: "open_lead_s",
        step_label: "opening begins 10 ms later",
        step: Step::By(-0.010),
        season: Some(0.02),
    },
    Lever {
        key: "hand_mass_kg",
        step_label: "0.1 kg more in each hand",
        step: Step::By(0.1),
        season: None,
    },
];

/// The lever of a key, by its place in [`LEVERS`].
pub fn place(key: &str) -> Option<usize> {
    LEVERS.iter().position(|lever| lever.key == key)
}

/// That a key is no lever, in a sentence.
pub(super) fn unknown(key: &str) -> String {
    let known: Vec<&str> = LEVERS.iter().map(|lever| lever.key).collect();
    format!("{key} is no lever; they are {}", known.join(", "))
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

    /// The changes that one step forward and one step back would be, in the key's own unit; none
    /// where that leaves the admissible range or the hands get no nearer.
    pub fn steps(&self, scenario: &Scenario) -> [Option<f64>; 2] {
        let (row, now) = (self.row(), self.value(scenario));
        match self.step {
            Step::By(by) => [by, -by].map(|by| {
                let admissible = (row.least..=row.most).contains(&(now + by));
                admissible.then_some(by)
            }),
            Step::Nearer(points) => [1.0, -1.0].map(|way| self.nearer(scenario, points, way)),
        }
    }

    /// The change of a tuck, in the direction `way`, that brings the points nearer to the long axis
    /// of the closed body, or (backwards) farther from it.
    fn nearer(
        &self,
        scenario: &Scenario,
        points: fn(&MassState) -> &[glam::DVec3],
        way: f64,
    ) -> Option<f64> {
        let tree = Tree::new(&Body::new(scenario.body_spec()));
        let radius_m = |value: f64| radius_m(&tree, &self.at(scenario, value), points);
        let now = self.value(scenario);
        let wanted_m = radius_m(now) - way * NEARER_M;
        let over_m = |value: f64| way * (radius_m(value) - wanted_m);
        let end = if way > 0.0 { 1.0 } else { 0.0 };
        let mut near = now;
        while near != end {
            let far = (near + way * TUCK_SEARCH).clamp(0.0, 1.0);
            if over_m(far) <= 0.0 {
                return super::search::crossing(near, far, &over_m).map(|(value, _)| value - now);
            }
            near = far;
        }
        None
    }
}

/// Mean distance of points from the long axis of the closed body, m.
fn radius_m(tree: &Tree, scenario: &Scenario, points: fn(&MassState) -> &[glam::DVec3]) -> f64 {
    let plan = Plan::new(scenario.plan_spec());
    let (posture, rates) = plan.at(plan.closed_s(), f64::INFINITY);
    let stance = Stance::from(MassState::new(tree, &posture, &rates));
    let points = points(&stance.state);
    let sum_m: f64 = points
        .iter()
        .map(|point| point.cross(stance.long_axis).length())
        .sum();
    sum_m / points.len() as f64
}

/// What a season's training might bring, lever by lever; the usual ones can be replaced.
#[derive(Debug, Clone, PartialEq)]
pub struct Season([Option<f64>; COUNT]);

impl Default for Season {
    fn default() -> Self {
        Self(std::array::from_fn(|i| LEVERS[i].season))
    }
}

impl Season {
    /// Where the usual ones come from.
    pub const SOURCE: &str = "Our assumption, common practice, no source.";

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
            return Err(format!(
                "season of {key} = {unit} is out of range: it goes from 0 to {most}{}",
                row.kind.si()
            ));
        }
        self.0[i] = (unit > 0.0).then_some(unit);
        Ok(())
    }
}
