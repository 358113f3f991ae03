//! The flights that are timed, the same natively and in the browser. Each call varies one input, so
//! that no result can be reused from the call before.

use turns_aloft::scenario::fly::Jump;
use turns_aloft::scenario::{Scenario, starts};

/// Number of different values before they repeat.
const VALUES: u32 = 64;

/// The kinds of call; all include every readout.
#[derive(Clone, Copy)]
pub enum Call {
    /// A whole jump from its scenario. The stature varies.
    Whole,
    /// The same body and plan at another take-off rate.
    AtAnotherRate,
    /// The same body and plan at another jump height.
    AtAnotherHeight,
}

impl Call {
    pub const ALL: [Self; 3] = [Self::Whole, Self::AtAnotherRate, Self::AtAnotherHeight];
}

/// One scenario, flown over and over.
pub struct Work {
    given: Scenario,
    varied: Scenario,
    flown: Jump,
    calls: u32,
}

impl Work {
    /// From a starting point; None if there is none of that name.
    pub fn new(name: &str) -> Option<Self> {
        let start = starts::named(name)?;
        Some(Self {
            given: start.scenario.clone(),
            varied: start.scenario.clone(),
            flown: start.scenario.fly(),
            calls: 0,
        })
    }

    /// Flies once and returns the turns.
    pub fn call(&mut self, call: Call) -> f64 {
        self.calls = (self.calls + 1) % VALUES;
        // From 2 % less to 2 % more.
        let factor = 0.98 + 0.04 * f64::from(self.calls) / f64::from(VALUES);
        let (mut stature, mut rate, mut height) = (1.0, 1.0, 1.0);
        let last = match call {
            Call::Whole => {
                stature = factor;
                None
            }
            Call::AtAnotherRate => {
                rate = factor;
                Some(&self.flown)
            }
            Call::AtAnotherHeight => {
                height = factor;
                Some(&self.flown)
            }
        };
        let (given, varied) = (&self.given, &mut self.varied);
        // Sets all three, because the call before may have varied another one.
        varied.stature_m = stature * given.stature_m;
        varied.takeoff_rate_rad_s = rate * given.takeoff_rate_rad_s;
        varied.jump_height_m = height * given.jump_height_m;
        varied.fly_after(last).turns
    }
}
