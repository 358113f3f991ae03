//! Where the turns went: from the best that this body could have made of its take-off to what it
//! made of it, one shortcoming after the other.

use std::f64::consts::TAU;
use std::sync::Arc;

use serde::Serialize;

use crate::physics::flight::{Launch, Spin};
use crate::physics::plan::{Plan, PlanSpec};
use crate::physics::table::{PlanTable, Resolution};
use crate::physics::timed::{turned_rad, turned_rigid_rad};
use crate::scenario::Scenario;
use crate::scenario::fly::Jump;

/// What costs turns, in the order in which it is counted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Loss {
    /// Closing late, or taking time for it.
    Closing,
    /// Not getting to the tightest posture.
    Tightness,
    /// Opening before touch-down.
    Opening,
    /// Leaning, and one arm that comes in late or not all the way.
    TiltAndAsymmetry,
}

/// The turns in the air, made up of the ideal and what was lost of it.
///
/// All flights have the actual angular momentum and the actual hang time. `ideal_turns` less the
/// four losses is `air_turns`. A loss is negative where the shortcoming gave turns.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Budget {
    /// In the tightest posture from the first instant to touch-down.
    pub ideal_turns: f64,
    pub losses: [(Loss, f64); 4],
    /// What is left: the actual turns in the air.
    pub air_turns: f64,
    pub largest: Loss,
    /// What a smaller largest loss would have given, by a flight of its own.
    pub sentence: String,
}

impl Budget {
    pub fn new(scenario: &Scenario, jump: &Jump) -> Self {
        let flight = &jump.flight;
        let actual = flight.table.plan.spec;
        let launch = Launch {
            spin: Spin::AngularMomentum(flight.h_kg_m2_s.length()),
            lean_rad: 0.0,
            ..flight.launch
        };
        let table = |spec: PlanSpec| {
            let body = flight.table.body.clone();
            Arc::new(PlanTable::new(body, Plan::new(spec), Resolution::STANDARD))
        };
        let even = PlanSpec {
            arm_asymmetry: 0.0,
            arm_lag_s: 0.0,
            ..actual
        };
        let tight = table(PlanSpec {
            arm_tuck: 1.0,
            leg_tuck: 1.0,
            ..even
        });
        let even = table(even);
        let (never_s, end_s) = (f64::INFINITY, flight.touchdown_s);
        let turns = [
            turned_rigid_rad(tight.air(), &launch, actual.turning, end_s) / TAU,
            turned_rad(&tight, &launch, never_s, end_s) / TAU,
            turned_rad(&even, &launch, never_s, end_s) / TAU,
            turned_rad(&even, &launch, flight.open_s, end_s) / TAU,
            jump.readout.air_turns,
        ];
        let losses = [
            Loss::Closing,
            Loss::Tightness,
            Loss::Opening,
            Loss::TiltAndAsymmetry,
        ];
        let losses: [(Loss, f64); 4] =
            std::array::from_fn(|i| (losses[i], turns[i] - turns[i + 1]));
        let largest = losses
            .iter()
            .fold(
                losses[0],
                |most, &next| if next.1 > most.1 { next } else { most },
            )
            .0;
        Self {
            ideal_turns: turns[0],
            losses,
            air_turns: turns[4],
            largest,
            sentence: largest.sentence(scenario, jump),
        }
    }
}

/// How much earlier the closing of the sentence is over, and how much later its opening, s.
const EARLIER_S: f64 = 0.10;
const LATER_S: f64 = 0.05;
/// How much tighter its arms and legs are.
const TIGHTER: f64 = 0.10;
/// No closing of the sentence is shorter; common practice, no source.
const SHORTEST_S: f64 = 0.10;

impl Loss {
    /// What was, and what this jump would have had with less of it.
    fn sentence(self, scenario: &Scenario, jump: &Jump) -> String {
        let mut other = scenario.clone();
        let what = match self {
            Self::Closing => {
                let (time_s, delay_s) = (scenario.close_time_s, scenario.close_delay_s);
                other.close_time_s = (time_s - EARLIER_S).max(SHORTEST_S).min(time_s);
                let left_s = EARLIER_S - (time_s - other.close_time_s);
                other.close_delay_s = (delay_s - left_s).max(0.0);
                let over_s = |s: &Scenario| s.close_delay_s + s.close_time_s;
                format!(
                    "Closing was over {:.2} s after take-off; over after {:.2} s",
                    over_s(scenario),
                    over_s(&other)
                )
            }
            Self::Tightness => {
                other.arm_tuck = (scenario.arm_tuck + TIGHTER).min(1.0);
                other.leg_tuck = (scenario.leg_tuck + TIGHTER).min(1.0);
                format!(
                    "The arms came in to {:.0} % and the legs to {:.0} %; with {:.0} % and {:.0} %",
                    100.0 * scenario.arm_tuck,
                    100.0 * scenario.leg_tuck,
                    100.0 * other.arm_tuck,
                    100.0 * other.leg_tuck
                )
            }
            Self::Opening => {
                other.open_lead_s = (scenario.open_lead_s - LATER_S).max(0.0);
                format!(
                    "Opening began {:.2} s before touch-down; begun {:.2} s before it",
                    scenario.open_lead_s, other.open_lead_s
                )
            }
            Self::TiltAndAsymmetry => {
                (other.lean_rad, other.arm_asymmetry, other.arm_lag_s) = (0.0, 0.0, 0.0);
                "The body leaned or one arm stayed out; upright and even".to_owned()
            }
        };
        let gain = other.fly_after(Some(jump)).turns - jump.turns;
        let (size, way) = (gain.abs(), if gain >= 0.0 { "more" } else { "fewer" });
        format!("{what}, this jump would have {size:.2} turns {way}.")
    }
}
