//! An attempt timed by hand.

use serde::Serialize;

/// How far off a hang time is that was taken by hand, s, 95 % limit. No published error of a jump timed by
/// hand was found: our choice, and it may be more.
pub const USUAL_HALF_WIDTH_S: f64 = 0.05;

#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct StopWatch {
    pub hang_time_s: f64,
    /// 95 % limit of its error.
    pub half_width_s: f64,
    /// Turns in all, those on the ice included, as somebody counted them: right to a quarter turn.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub turns_counted: Option<f64>,
    /// How far past the heading that the landing owes the hips faced, positive turned further: right to
    /// a quarter turn. 0 is a landing that faces as it has to.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub landing_facing_rad: Option<f64>,
}
