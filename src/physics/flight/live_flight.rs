//! A flight whose joints are given targets while it runs.

use glam::DQuat;

use crate::body::model::{Body, Segment};
use crate::body::posture::Posture;
use crate::body::surface::Surface;
use crate::flight::constants::FlightConstants;
use crate::flight::launch::Launch;
use crate::flight::motion_flight::MotionFlight;
use crate::motion::led_motion::LedMotion;
use crate::motion::plan::Turning;

pub use crate::motion::led_motion::TargetError;

/// A flight that is led; its motion is the record of how it was.
pub type LiveFlight = MotionFlight<LedMotion>;

impl LiveFlight {
    /// Leaves the ice in a posture, joints at rest.
    pub fn launched(body: Body, posture: &Posture, launch: &Launch, turning: Turning) -> Self {
        let motion = LedMotion::at_rest(posture);
        let surface = Some(Surface::new(&body));
        Self::new(body, surface, motion, DQuat::IDENTITY, |takeoff| {
            FlightConstants::of(takeoff, launch, turning)
        })
    }

    /// From now on this joint goes from where it is, as fast as it moves, to `target` (segment axes
    /// to parent's axes) and comes to rest there `within_s` from now, by a minimum-jerk movement.
    pub fn aim(
        &mut self,
        segment: Segment,
        target: DQuat,
        within_s: f64,
    ) -> Result<(), TargetError> {
        let now_s = self.sample().t_s;
        self.motion.lead(now_s, segment, target, within_s)
    }

    /// Every joint of a posture at once.
    pub fn aim_all(&mut self, posture: &Posture, within_s: f64) -> Result<(), TargetError> {
        Segment::ALL
            .into_iter()
            .try_for_each(|segment| self.aim(segment, posture[segment], within_s))
    }
}
