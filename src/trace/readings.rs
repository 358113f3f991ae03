//! Readings of one sensor over time.

use glam::DVec3;

/// What one sensor read, in SI; the times rise.
#[derive(Debug, Clone, Default)]
pub struct Readings {
    pub t_s: Vec<f64>,
    pub value: Vec<DVec3>,
}

impl Readings {
    /// Between the readings on a straight line, and the first and last beyond them. There has to be one.
    pub fn at(&self, t_s: f64) -> DVec3 {
        let after = self.t_s.partition_point(|&at| at <= t_s);
        if after == 0 || after == self.t_s.len() {
            return self.value[after.saturating_sub(1)];
        }
        let (from_s, to_s) = (self.t_s[after - 1], self.t_s[after]);
        self.value[after - 1].lerp(self.value[after], (t_s - from_s) / (to_s - from_s))
    }

    /// The middle time between readings, s; there have to be two.
    pub fn step_s(&self) -> f64 {
        let mut steps: Vec<f64> = self.t_s.windows(2).map(|pair| pair[1] - pair[0]).collect();
        let middle = steps.len() / 2;
        *steps.select_nth_unstable_by(middle, f64::total_cmp).1
    }
}
