//! Turns in words, rounded just as any other text on the page rounds.

use turns_aloft_words::with_decimal_sign;

/// Turns in hundredths.
pub fn hundredths(turns: f64) -> i64 {
    let text = format!("{turns:.2}").replace('.', "");
    text.parse().unwrap_or_default()
}

/// Hundredths of a turn as text: "1.53", "−0.33".
pub fn turns_text(hundredths: i64) -> String {
    let sign = if hundredths < 0 { "−" } else { "" };
    let size = hundredths.unsigned_abs();
    with_decimal_sign(format!("{sign}{}.{:02}", size / 100, size % 100))
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
