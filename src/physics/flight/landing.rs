//! Estimates of what a landing takes: the load, from the touch-down speed, and the torque that would
//! stop the turning.

use std::f64::consts::FRAC_PI_2;

use serde::{Deserialize, Serialize};

use crate::body::model::Footwear;
use crate::dynamics::gravity::GRAVITY_M_S2;

/// What is jumped from and landed on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Ground {
    Ice,
    Floor,
    Trampoline,
}

impl Ground {
    pub const fn footwear(self) -> Footwear {
        match self {
            Self::Ice => Footwear::Skates,
            Self::Floor => Footwear::Shoes,
            Self::Trampoline => Footwear::Barefoot,
        }
    }

    /// Shortest and longest time in which the landing stops the body, s. Assumed: no source found
    /// for skating, and the bed of a trampoline from memory. The loads they give on ice agree with
    /// common practice (five to eight body weights, no source); measured landings on snow reach
    /// 1.1 to 5.3 body weights a foot (Bessone et al. 2019, Sensors 19:2011).
    pub const fn stopping_time_s(self) -> [f64; 2] {
        match self {
            Self::Ice | Self::Floor => [0.07, 0.12],
            Self::Trampoline => [0.25, 0.40],
        }
    }

    /// Peak load over body weight, lowest and highest, for a touch-down at `speed_m_s` (downwards
    /// positive) stopped by a half-sine push: 1 + (pi/2) v / (g T).
    pub fn load_bw(self, speed_m_s: f64) -> [f64; 2] {
        let [short, long] = self
            .stopping_time_s()
            .map(|time_s| 1.0 + FRAC_PI_2 * speed_m_s / (GRAVITY_M_S2 * time_s));
        [long, short]
    }

    /// Mean torque about the vertical, lowest and highest, N m, that would stop an angular momentum
    /// (size about the vertical, kg m²/s) in the time in which the fall is stopped: |h| / T. In
    /// skating it is less: part of the turning goes on in the edge that is glided out of (common
    /// practice, no source).
    pub fn stopping_torque_n_m(self, momentum_kg_m2_s: f64) -> [f64; 2] {
        let [short, long] = self
            .stopping_time_s()
            .map(|time_s| momentum_kg_m2_s / time_s);
        [long, short]
    }
}
