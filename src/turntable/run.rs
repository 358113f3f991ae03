//! What has been recorded of a turntable: samples at even times, as a table, as CSV.

use std::f64::consts::TAU;
use std::fmt::Write as _;

use crate::about_axis::{AboutAxis, OnBearing};
use crate::friction::Friction;
use crate::position::Position;
use crate::turning::Turning;

/// Longest step, s. Halving it changes the energy's balance by less than a hundredth of what is asked of it.
pub const STEP_S: f64 = 0.002;

/// Longest run, s.
pub const LONGEST_S: f64 = 3600.0;

/// All that is read at one time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sample {
    pub t_s: f64,
    pub position: Position,
    pub rate_rad_s: f64,
    /// Since the beginning.
    pub turned_rad: f64,
    /// About the bearing's axis.
    pub inertia_kg_m2: f64,
    /// About the bearing's axis, that of the moving limbs included.
    pub momentum_kg_m2_s: f64,
    pub kinetic_j: f64,
    /// Of the muscles, without the lift of the limbs.
    pub work_j: f64,
    /// From friction.
    pub heat_j: f64,
    /// From pushes.
    pub pushed_j: f64,
}

/// A run as it was recorded.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Run {
    /// In the order of time.
    pub samples: Vec<Sample>,
}

/// The columns of a run as CSV. The names of the first four are those of a programme: a run can be run again.
pub const HEADER: &str = "time_s,hand_distance_m,legs,twist_rad,rate_rad_s,turns,moment_of_inertia_kg_m2,\
angular_momentum_kg_m2_s,kinetic_energy_j,muscle_work_j,friction_heat_j,push_work_j";

/// Turned on to a time by even steps, no longer than [`STEP_S`].
pub fn turned_to(
    mut turning: Turning,
    on: &impl OnBearing,
    friction: &Friction,
    until_s: f64,
) -> Turning {
    let from_s = turning.t_s;
    let steps = libm::ceil((until_s - from_s) / STEP_S - 1e-9).max(1.0);
    for i in 1..=steps as usize {
        let end_s = from_s + (until_s - from_s) * (i as f64 / steps);
        turning = turning.advanced(on, friction, end_s - turning.t_s);
    }
    turning
}

impl Sample {
    pub fn of(turning: &Turning, at: &AboutAxis, position: Position) -> Self {
        let rate_rad_s = turning.rate_rad_s(at);
        Self {
            t_s: turning.t_s,
            position,
            rate_rad_s,
            turned_rad: turning.turned_rad,
            inertia_kg_m2: at.inertia_kg_m2,
            momentum_kg_m2_s: turning.momentum_kg_m2_s,
            kinetic_j: at.kinetic_j(rate_rad_s),
            work_j: turning.work_j,
            heat_j: turning.heat_j,
            pushed_j: turning.pushed_j,
        }
    }

    pub fn turns(&self) -> f64 {
        self.turned_rad / TAU
    }

    fn numbers(&self) -> [f64; 12] {
        [
            self.t_s,
            self.position.hand_distance_m,
            self.position.legs,
            self.position.twist_rad,
            self.rate_rad_s,
            self.turns(),
            self.inertia_kg_m2,
            self.momentum_kg_m2_s,
            self.kinetic_j,
            self.work_j,
            self.heat_j,
            self.pushed_j,
        ]
    }

    /// In proportion between this sample and a later one.
    fn towards(&self, later: &Self, part: f64) -> Self {
        let between = |of: fn(&Self) -> f64| of(self) + part * (of(later) - of(self));
        Self {
            t_s: between(|sample| sample.t_s),
            position: Position {
                hand_distance_m: between(|sample| sample.position.hand_distance_m),
                legs: between(|sample| sample.position.legs),
                twist_rad: between(|sample| sample.position.twist_rad),
            },
            rate_rad_s: between(|sample| sample.rate_rad_s),
            turned_rad: between(|sample| sample.turned_rad),
            inertia_kg_m2: between(|sample| sample.inertia_kg_m2),
            momentum_kg_m2_s: between(|sample| sample.momentum_kg_m2_s),
            kinetic_j: between(|sample| sample.kinetic_j),
            work_j: between(|sample| sample.work_j),
            heat_j: between(|sample| sample.heat_j),
            pushed_j: between(|sample| sample.pushed_j),
        }
    }
}

impl Run {
    /// From the first to the last of two times, with a sample each so many seconds and one at the end; where the
    /// hands are then is for `position` to say.
    pub fn recorded(
        first: Turning,
        on: &impl OnBearing,
        friction: &Friction,
        [from_s, to_s]: [f64; 2],
        sample_s: f64,
        position: impl Fn(f64) -> Position,
    ) -> Self {
        let sample =
            |turning: &Turning| Sample::of(turning, &on.at(turning.t_s), position(turning.t_s));
        let mut turning = first;
        let mut samples = vec![sample(&turning)];
        let count = libm::ceil((to_s - from_s) / sample_s - 1e-9).max(1.0) as usize;
        for i in 1..=count {
            let until_s = if i == count {
                to_s
            } else {
                from_s + sample_s * i as f64
            };
            turning = turned_to(turning, on, friction, until_s);
            samples.push(sample(&turning));
        }
        Self { samples }
    }

    /// What was read at a time, in proportion between two samples; the first or the last outside of the run.
    pub fn at(&self, t_s: f64) -> Option<Sample> {
        let later = self.samples.partition_point(|sample| sample.t_s < t_s);
        let Some(to) = self.samples.get(later) else {
            return self.samples.last().copied();
        };
        let Some(from) = later.checked_sub(1).map(|before| &self.samples[before]) else {
            return Some(*to);
        };
        Some(from.towards(to, (t_s - from.t_s) / (to.t_s - from.t_s)))
    }

    pub fn to_csv(&self) -> String {
        let mut text = format!("{HEADER}\n");
        for sample in &self.samples {
            for (i, number) in sample.numbers().into_iter().enumerate() {
                let before = if i == 0 { "" } else { "," };
                // No minus before a zero.
                write!(text, "{before}{}", number + 0.0)
                    .expect("writing to a string does not fail");
            }
            text.push('\n');
        }
        text
    }
}
