//! A jump that is led by hand: what it is called where it is written down, and which numbers have a part in it.

use crate::parameter::Parameter;
use crate::scenario::Scenario;
use turns_aloft_physics::body::Body;
use turns_aloft_physics::led_flight::LedFlight;

/// Its name in files and on the command line.
pub const KEY: &str = "led";

/// What takes the hand away on the command line: the jump then is as planned.
pub const NONE: &str = "none";

/// Which bit of a link's mask says that the knots follow; never changes.
pub(crate) const LINK_BIT: u32 = 25;

/// Room in a file for the knots, whatever their numbers are.
pub(crate) const BYTES: usize = 40_000;

impl Scenario {
    /// Whether a number has a part in the jump: where it is led by hand, the hand has taken the place of some.
    pub const fn has_part(&self, parameter: Parameter) -> bool {
        self.led.is_none() || parameter.row().in_led
    }

    /// The same jump to be led anew, slowed down to this pace.
    pub fn lead(&self, pace: f64) -> LedFlight {
        let body = Body::new(self.body_spec());
        LedFlight::new(body, self.plan_spec(), self.launch(), pace)
    }
}
