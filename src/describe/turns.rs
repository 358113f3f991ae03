//! Turns in words, rounded just as any other text on the page rounds.

use crate::rounding::{in_last_decimals, last_decimals_text, shown_turns};
use turns_aloft_scenario::fly::Jump;
use turns_aloft_words::with_decimal_sign;

/// Decimals of turns.
const DECIMALS: usize = 2;

/// Turns in hundredths.
pub fn hundredths(turns: f64) -> i64 {
    in_last_decimals(turns, DECIMALS)
}

/// Turns in all beside those owed, where any are, in hundredths.
pub fn hundredths_of(turns: f64, owed: Option<f64>) -> i64 {
    shown_turns(turns, owed, DECIMALS)
}

/// Turns in all of a flown jump, in hundredths: wherever they stand, they are shown so.
pub fn turns_in_all(jump: &Jump) -> i64 {
    hundredths_of(jump.turns, jump.owed.map(|owed| owed.turns))
}

/// The turns that a jump's name asks for as text, without trailing zeros: "2", "2.5".
pub fn owed_text(turns: f64) -> String {
    with_decimal_sign(turns.to_string())
}

/// Hundredths of a turn as text: "1.53", "−0.33".
pub fn turns_text(hundredths: i64) -> String {
    last_decimals_text(hundredths, DECIMALS)
}

/// The same with a sign wherever there is something: "+0.27".
pub fn signed_text(hundredths: i64) -> String {
    let sign = if hundredths > 0 { "+" } else { "" };
    format!("{sign}{}", turns_text(hundredths))
}

/// A change of the turns with its sign, to a thousandth: "+0.062", "−0.003".
pub fn gain_text(turns: f64) -> String {
    let size = format!("{:.3}", turns.abs());
    let sign = match size.as_str() {
        "0.000" => "",
        _ if turns < 0.0 => "−",
        _ => "+",
    };
    with_decimal_sign(format!("{sign}{size}"))
}
