//! How finely a motion is sampled and its flight integrated.

/// How finely a flight is computed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Resolution {
    /// No step is longer than this, s.
    pub longest_step_s: f64,
    /// Every blend gets at least this many steps.
    pub steps_per_blend: usize,
}

impl Resolution {
    /// Halving these steps changes the turns of any admissible flight by less than 1e-5.
    pub const STANDARD: Self = Self {
        longest_step_s: 0.008,
        steps_per_blend: 28,
    };

    /// The same with steps half as long.
    pub fn halved(self) -> Self {
        Self {
            longest_step_s: 0.5 * self.longest_step_s,
            steps_per_blend: 2 * self.steps_per_blend,
        }
    }

    /// Steps of a span in which joints move: as many as keep a blend of `blend_s` well resolved.
    pub fn moving_steps(&self, blend_s: f64, span_s: f64) -> usize {
        let blend = self.steps_per_blend.max(self.plain_steps(blend_s));
        // In fours, so that blends of nearly the same time have as many and share their samples.
        let blend = blend.next_multiple_of(4);
        let per_blend = span_s / blend_s * blend as f64;
        self.plain_steps(span_s)
            .max(libm::ceil(per_blend) as usize)
            .max(1)
    }

    /// Steps of a span in which no joint moves.
    pub fn plain_steps(&self, span_s: f64) -> usize {
        libm::ceil(span_s / self.longest_step_s) as usize
    }
}
