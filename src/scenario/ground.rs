//! What is jumped from and landed on, and what is worn there.

use serde::{Deserialize, Serialize};

use turns_aloft_physics::body::Footwear;

/// Boots on blades. The sole is about 85 mm above the ice for an adult (common practice, no source);
/// the boot ends a hand's breadth above the ankle.
pub const SKATES: Footwear = Footwear {
    drop_per_stature: 0.049,
    top_per_stature: 0.05,
};

/// Soles of about 25 mm for an adult. Common practice, no source.
pub const SHOES: Footwear = Footwear {
    drop_per_stature: 0.014,
    top_per_stature: 0.0,
};

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
            Self::Ice => SKATES,
            Self::Floor => SHOES,
            Self::Trampoline => Footwear::BAREFOOT,
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
}
