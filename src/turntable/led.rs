//! A coordinate that follows where it is led: at a limited rate, which changes by a limited acceleration.

/// The fastest, for a second, and by how much that changes at most, for a second².
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limit {
    pub rate: f64,
    pub acceleration: f64,
}

/// Where a coordinate is, and how fast it moves.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Led {
    pub at: f64,
    pub rate: f64,
}

/// Nearer than from where it brakes evenly, the rate goes down with the distance: so many times it for a
/// second, at steps of 2 ms a sixth of it in each. Our choice.
const CLOSING_PER_S: f64 = 80.0;

/// The part of the acceleration that braking is planned with; the rest takes up what a step is late.
const BRAKING: f64 = 0.75;

impl Led {
    pub const fn at_rest(at: f64) -> Self {
        Self { at, rate: 0.0 }
    }

    /// The acceleration of the next step: towards the target, in time to come to rest there.
    pub fn acceleration(&self, target: f64, limit: &Limit, step_s: f64) -> f64 {
        let braking = BRAKING * limit.acceleration;
        let distance = target - self.at;
        let near = braking / (CLOSING_PER_S * CLOSING_PER_S);
        let speed = if distance.abs() <= near {
            CLOSING_PER_S * distance.abs()
        } else {
            (2.0 * braking * (distance.abs() - 0.5 * near)).sqrt()
        };
        let wanted = speed.min(limit.rate).copysign(distance);
        ((wanted - self.rate) / step_s).clamp(-limit.acceleration, limit.acceleration)
    }

    /// A while later at that acceleration.
    pub fn after(&self, acceleration: f64, time_s: f64) -> Self {
        Self {
            at: self.at + (self.rate + 0.5 * acceleration * time_s) * time_s,
            rate: self.rate + acceleration * time_s,
        }
    }
}
