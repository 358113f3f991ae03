//! The value and range of a slider as shown.

use turns_aloft_describe::unit::UnitText;
use turns_aloft_scenario::units::Unit;

/// A slider's value, its ends and the smallest step by keyboard, all in the unit shown, and the
/// value as text.
#[derive(Debug, Clone)]
pub struct Scale {
    pub value: f64,
    pub least: f64,
    pub most: f64,
    pub step: f64,
    pub text: String,
}

impl Scale {
    /// The scale of a value between two ends, given in SI, in the unit shown.
    pub fn of(unit: &Unit, [least, most]: [f64; 2], value: f64) -> Self {
        Self {
            value: unit.from_si(value),
            least: unit.from_si(least),
            most: unit.from_si(most),
            step: 10.0_f64.powi(-(unit.decimals as i32)),
            text: unit.set_text(value),
        }
    }
}
