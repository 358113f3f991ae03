//! Round numbers along an axis: steps of 1, 2 or 5 times a power of ten.

/// A round step and the decimals that its multiples need.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RoundStep {
    pub size: f64,
    pub decimals: usize,
}

const fn step(size: f64, decimals: usize) -> RoundStep {
    RoundStep { size, decimals }
}

const STEPS: [RoundStep; 21] = [
    step(0.01, 2),
    step(0.02, 2),
    step(0.05, 2),
    step(0.1, 1),
    step(0.2, 1),
    step(0.5, 1),
    step(1.0, 0),
    step(2.0, 0),
    step(5.0, 0),
    step(10.0, 0),
    step(20.0, 0),
    step(50.0, 0),
    step(100.0, 0),
    step(200.0, 0),
    step(500.0, 0),
    step(1e3, 0),
    step(2e3, 0),
    step(5e3, 0),
    step(1e4, 0),
    step(2e4, 0),
    step(5e4, 0),
];

/// The smallest round step of which at most `most` fit in a range; the range itself where none does.
pub fn round_step(range: f64, most: f64) -> RoundStep {
    let fits = |step: &RoundStep| range / step.size <= most;
    STEPS.into_iter().find(fits).unwrap_or(step(range, 0))
}
