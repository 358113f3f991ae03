//! Weights in the hands: a comparison of what the jumper may keep, not a technique.
//!
//! The same mass gives turns or costs them by that assumption alone, and people do not keep their arms
//! where they were. So all assumptions stand side by side, and nothing of it is ranked among the
//! levers.

use serde::Serialize;

use crate::caution::{self, Caution};
use crate::goal::{Goal, MET_TURNS, Proof};
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::parameter::Parameter;
use turns_aloft_scenario::source::Source;
use turns_aloft_scenario::{HandsKeep, Scenario};

/// What may be kept, as it always stands side by side.
pub const KEEPS: [HandsKeep; 3] = [
    HandsKeep::Rate,
    HandsKeep::Energy,
    HandsKeep::AngularMomentum,
];

/// What has been observed of people, thirteen skaters on the ice: after a week of training with
/// weighted gloves the wrists were 13.6 % and 12.1 % farther from the axis with them on than in the two
/// conditions compared, which negated the gloves' effect in jumps performed well already; without them
/// no significant difference was found between before and after that week. Ridge, McLean, Bruening and
/// Richards, "Up in the air: the efficacy of weighted gloves in figure skating jumps", Sports
/// Biomechanics 2022, abstract.
pub const OBSERVED: Source = Source::WeightedGloves;

/// How much more in each hand is compared, kg: our choice.
const MORE_KG: f64 = 0.1;

/// The jump with so much in each hand, under one assumption.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Outcome {
    pub hands_keep: HandsKeep,
    /// In all.
    pub turns: f64,
    /// Against the mass compared with, under the same assumption.
    pub turns_gained: f64,
}

/// A jump with two masses in each hand, compared under every assumption.
#[derive(Debug, Clone, PartialEq)]
pub struct Weights {
    /// In each hand, kg: what the gains count from.
    pub from_kg: f64,
    /// In each hand, kg.
    pub hand_mass_kg: f64,
    /// In the order of [`KEEPS`].
    pub outcomes: [Outcome; 3],
    pub observed: Source,
    pub cautions: [Caution; 4],
}

/// What the hands would have to hold for the wanted turns, under one assumption.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Needed {
    pub hands_keep: HandsKeep,
    /// The least in each hand, kg, from bare hands on; none where no admissible mass does it.
    pub hand_mass_kg: Option<f64>,
    /// In all, flown with it.
    pub turns: Option<f64>,
    /// Where none does it.
    pub proof: Option<Proof>,
}

/// The same under every assumption.
#[derive(Debug, Clone, PartialEq)]
pub struct WeightsNeeded {
    /// In the order of [`KEEPS`].
    pub outcomes: [Needed; 3],
    pub observed: Source,
    pub cautions: [Caution; 4],
}

const HANDS: Parameter = Parameter::HandMass;

/// The scenario with so much in each hand, held inside the admissible range.
fn with(scenario: &Scenario, hand_mass_kg: f64, hands_keep: HandsKeep) -> Scenario {
    let mut other = Scenario {
        hands_keep,
        ..scenario.clone()
    };
    HANDS.hold(&mut other, hand_mass_kg);
    other
}

/// Turns under every assumption; what is kept matters to the launch alone, so the flights share a
/// table.
fn turns(scenario: &Scenario, now: &Jump, hand_mass_kg: f64) -> [f64; 3] {
    let mut last = now.clone();
    KEEPS.map(|keep| {
        last = with(scenario, hand_mass_kg, keep).fly_after(Some(&last));
        last.turns
    })
}

impl Weights {
    /// A little more in each hand than now, less where the range ends; none at its end. `now` is the
    /// scenario, flown.
    pub fn more(scenario: &Scenario, now: &Jump) -> Option<Self> {
        let from_kg = scenario.hand_mass_kg;
        let to_kg = (from_kg + MORE_KG).min(HANDS.most());
        (to_kg > from_kg).then(|| Self::of(scenario, now, from_kg, to_kg))
    }

    /// What the hands hold now against nothing in them; none where they are bare.
    pub fn held(scenario: &Scenario, now: &Jump) -> Option<Self> {
        let held_kg = scenario.hand_mass_kg;
        (held_kg > 0.0).then(|| Self::of(scenario, now, 0.0, held_kg))
    }

    fn of(scenario: &Scenario, now: &Jump, from_kg: f64, hand_mass_kg: f64) -> Self {
        let before = turns(scenario, now, from_kg);
        let then = turns(scenario, now, hand_mass_kg);
        Self {
            from_kg,
            hand_mass_kg,
            outcomes: std::array::from_fn(|i| Outcome {
                hands_keep: KEEPS[i],
                turns: then[i],
                turns_gained: then[i] - before[i],
            }),
            observed: OBSERVED,
            cautions: caution::OF_WEIGHTS,
        }
    }
}

impl Needed {
    /// Under one assumption, by its place in [`KEEPS`].
    pub fn of(place: usize, goal: &Goal<'_>) -> Self {
        let hands_keep = KEEPS[place];
        let turns = |kg: f64| goal.fly(&with(goal.scenario, kg, hands_keep)).turns;
        let bare = turns(0.0);
        let least = if bare >= goal.goal_turns - MET_TURNS {
            Ok(0.0)
        } else {
            goal.nearest(HANDS, (0.0, bare), turns)
        };
        Self {
            hands_keep,
            hand_mass_kg: least.as_ref().ok().copied(),
            turns: least.as_ref().ok().map(|&kg| turns(kg)),
            proof: least.err(),
        }
    }
}

impl WeightsNeeded {
    pub fn new(goal: &Goal<'_>) -> Self {
        Self {
            outcomes: std::array::from_fn(|place| Needed::of(place, goal)),
            observed: OBSERVED,
            cautions: caution::OF_WEIGHTS,
        }
    }
}
