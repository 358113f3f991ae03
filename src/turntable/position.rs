//! How arms, legs and trunk are held: what the user leads, and what the joints make of it.

/// How a person on a bearing holds arms, legs and trunk.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Position {
    /// Of either hand, where it holds something, from the vertical through the hips, m: the bearing's axis
    /// where the hips are above it.
    pub hand_distance_m: f64,
    /// How far the legs that can move are out, from 0 to 1.
    pub legs: f64,
    /// Of the shoulders against the hips, positive anticlockwise seen from above, rad.
    pub twist_rad: f64,
}

/// What moves together.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Limbs {
    Arms,
    Legs,
    Trunk,
}

/// One number for each of [`Limbs::ALL`]: how far the arms are out, from 0 to 1; the legs likewise; the twist, rad.
pub type Coordinates = [f64; 3];

impl Limbs {
    pub const ALL: [Self; 3] = [Self::Arms, Self::Legs, Self::Trunk];

    /// The fastest that any joint of them turns, rad/s; in the trunk all of the twist. Our choice: brisk, and
    /// far below what people reach who throw or kick.
    pub const fn fastest_rad_s(self) -> f64 {
        match self {
            Self::Arms => 12.0,
            Self::Legs => 8.0,
            Self::Trunk => 4.0,
        }
    }

    /// The most by which such a joint gains or loses rate when it is led by hand, rad/s²: to its fastest in a
    /// tenth of a second. Our choice.
    pub const fn hardest_rad_s2(self) -> f64 {
        10.0 * self.fastest_rad_s()
    }
}

/// How far the shoulders twist against the hips to either side, rad: within the 45 degrees that are commonly
/// given for the trunk (value from memory).
pub const TWIST_RAD: f64 = 0.75;
