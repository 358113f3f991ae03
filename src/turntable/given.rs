//! A body of a worked example: its moment of inertia is given, over time, and nothing else of it.

use turns_aloft_physics::minimum_jerk::minimum_jerk;

use crate::about_axis::{AboutAxis, OnBearing};
use crate::friction::Friction;
use crate::position::Position;
use crate::run::Run;
use crate::turning::Turning;

/// How the part that moves is at one time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Knot {
    pub t_s: f64,
    /// Its moment of inertia about the axis, kg m².
    pub inertia_kg_m2: f64,
    /// How far it is swung about the axis against the rest, rad.
    pub swung_rad: f64,
}

/// A rest of constant inertia and a part that moves, from knot to knot by minimum-jerk movements. What moving
/// in and out takes besides is not told by an inertia: the energy of the turning and of the swinging counts.
#[derive(Debug, Clone, PartialEq)]
pub struct Given {
    pub rest_kg_m2: f64,
    /// In the order of time, one at least.
    knots: Vec<Knot>,
}

impl Given {
    /// None without knots, or where their times do not rise.
    pub fn new(rest_kg_m2: f64, knots: Vec<Knot>) -> Option<Self> {
        let rises = knots.windows(2).all(|pair| pair[0].t_s < pair[1].t_s);
        (!knots.is_empty() && rises).then_some(Self { rest_kg_m2, knots })
    }

    /// All of it changes its inertia (time in s, kg m²), and nothing is swung.
    pub fn inertia(over_time: &[(f64, f64)]) -> Option<Self> {
        let knots = over_time.iter().map(|&(t_s, inertia_kg_m2)| Knot {
            t_s,
            inertia_kg_m2,
            swung_rad: 0.0,
        });
        Self::new(0.0, knots.collect())
    }

    /// From its first to its last knot, turning at this rate at first, with a sample each so many seconds.
    pub fn run(&self, rate_rad_s: f64, friction: &Friction, sample_s: f64) -> Run {
        let span_s = [self.knots[0].t_s, self.knots[self.knots.len() - 1].t_s];
        let first = Turning::at_rate(span_s[0], &self.at(span_s[0]), rate_rad_s);
        // It has no hands.
        let nowhere = |_| Position {
            hand_distance_m: 0.0,
            legs: 0.0,
            twist_rad: 0.0,
        };
        Run::recorded(first, self, friction, span_s, sample_s, nowhere)
    }
}

impl OnBearing for Given {
    fn at(&self, t_s: f64) -> AboutAxis {
        let begun = self.knots.partition_point(|knot| knot.t_s <= t_s).max(1);
        let from = self.knots[begun - 1];
        let to = self.knots.get(begun).copied().unwrap_or(from);
        let time_s = (to.t_s - from.t_s).max(f64::MIN_POSITIVE);
        let (part, part_rate) = minimum_jerk(t_s, from.t_s, time_s);
        let inertia_kg_m2 = from.inertia_kg_m2 + part * (to.inertia_kg_m2 - from.inertia_kg_m2);
        let swing_rad_s = part_rate * (to.swung_rad - from.swung_rad);
        AboutAxis {
            inertia_kg_m2: self.rest_kg_m2 + inertia_kg_m2,
            own_momentum_kg_m2_s: inertia_kg_m2 * swing_rad_s,
            own_energy_j: 0.5 * inertia_kg_m2 * swing_rad_s * swing_rad_s,
        }
    }
}
