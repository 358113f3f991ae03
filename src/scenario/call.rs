//! The call on a jump that came up short, by the sport's own published rule.
//!
//! ISU Communications 2324 (2020) and 2334 (season 2020/21), as quoted from the Technical Panel
//! Handbook, Single Skating (secondary sources): a quarter missing is "landed on the quarter"
//! (q); more than a quarter and less than a half is "under-rotated" (<); a half or more is
//! "downgraded" (<<).
//!
//! The rule has no call for a jump that turned too far. One that did by more than a quarter turn is
//! not called full either, but over-rotated: common practice, no source.

use serde::Serialize;

/// The rule gives q a single value, a quarter turn, which a continuous number never hits. Our own
/// band, not the sport's: q is called from this much missing up to the quarter itself, so that the
/// two published limits (more than 90, 180 or more) stay exact.
pub const QUARTER_BAND_FROM_DEG: f64 = 75.0;

/// Further than this beyond the turns owed is over-rotated.
pub const OVER_ROTATED_FROM_DEG: f64 = 90.0;

/// How far beyond the turns owed a jump went that falls short of them by `shortfall_deg`, where
/// that makes it over-rotated, degrees.
pub fn over_rotated_deg(shortfall_deg: f64) -> Option<f64> {
    (shortfall_deg < -OVER_ROTATED_FROM_DEG).then_some(-shortfall_deg)
}

/// How a jump's rotation is called.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub enum Call {
    /// Too far by more than a quarter turn. Not the rule's own, which has no call for it.
    #[serde(rename = "over-rotated")]
    OverRotated,
    /// Full rotation.
    #[serde(rename = "full")]
    Full,
    #[serde(rename = "q")]
    Quarter,
    #[serde(rename = "<")]
    Under,
    #[serde(rename = "<<")]
    Downgraded,
}

impl Call {
    /// The call for turns that fall short by `shortfall_deg` (negative: turned further).
    pub fn of(shortfall_deg: f64) -> Self {
        if shortfall_deg >= 180.0 {
            Self::Downgraded
        } else if shortfall_deg > 90.0 {
            Self::Under
        } else if shortfall_deg >= QUARTER_BAND_FROM_DEG {
            Self::Quarter
        } else if over_rotated_deg(shortfall_deg).is_some() {
            Self::OverRotated
        } else {
            Self::Full
        }
    }

    /// The sign the panel writes behind the jump; none for a full one, nor for one that is
    /// over-rotated.
    pub const fn sign(self) -> &'static str {
        match self {
            Self::OverRotated | Self::Full => "",
            Self::Quarter => "q",
            Self::Under => "<",
            Self::Downgraded => "<<",
        }
    }
}
