//! What was measured of an attempt, one thing at a time.

/// Something that was measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Mark {
    /// As a camera sees it: any whole turn more is the same.
    Facing {
        t_s: f64,
        angle_rad: f64,
        sigma_rad: f64,
    },
    /// As a sensor says it: every turn counts.
    Turned {
        t_s: f64,
        angle_rad: f64,
        sigma_rad: f64,
    },
    Arms {
        t_s: f64,
        arms: f64,
        sigma: f64,
    },
    Legs {
        t_s: f64,
        legs: f64,
        sigma: f64,
    },
    /// Turns in all.
    TurnsCounted {
        turns: f64,
        sigma: f64,
    },
    /// Turns in all up to any number of whole ones.
    LandingFacing {
        turns: f64,
        sigma: f64,
    },
}

impl Mark {
    pub const fn is_of_facing(&self) -> bool {
        matches!(self, Self::Facing { .. } | Self::Turned { .. })
    }

    pub const fn is_of_turns_in_all(&self) -> bool {
        matches!(self, Self::TurnsCounted { .. } | Self::LandingFacing { .. })
    }
}
