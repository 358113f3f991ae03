//! Numbers that go up and down by steps.

/// A number moved by so many steps, to a whole number of steps.
pub fn moved(value: f64, step: f64, steps: f64) -> f64 {
    let present = value / step;
    // Rounding must not make a whole number of steps look like a little more or less.
    let from = if steps > 0.0 {
        (present + 1e-6).floor()
    } else {
        (present - 1e-6).ceil()
    };
    (from + steps) * step
}
