//! A flight whose joints are given targets while it runs.
//!
//! Same body, same equations, same steps as a planned flight; only that nobody knows beforehand
//! what the joints will do, so nothing is tabulated and the flight ends where a foot meets the ice.

use std::fmt;

use glam::{DQuat, DVec3};

use crate::body::model::{Body, SEGMENTS, Segment};
use crate::body::posture::{JointRates, Posture, STILL};
use crate::dynamics::centroidal::CentroidalState;
use crate::dynamics::mass_properties::MassProperties;
use crate::dynamics::tree::Tree;
use crate::flight::constants::FlightConstants;
use crate::flight::launch::Launch;
use crate::flight::pose::Pose;
use crate::flight::sample::FlightSample;
use crate::flight::touchdown::{UNDER_M, contact};
use crate::motion::joint_trajectory::JointTrajectory;
use crate::motion::plan::Turning;
use crate::motion::resolution::Resolution;

/// A flight as far as it has come.
#[derive(Debug, Clone)]
pub struct LiveFlight {
    body: Body,
    tree: Tree,
    constants: FlightConstants,
    joints: [JointTrajectory; SEGMENTS],
    sample: FlightSample,
    landed: bool,
}

/// Why a target is refused; the joint goes on as before.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TargetError {
    NotARotation,
    TimeOutOfRange,
}

impl fmt::Display for TargetError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::NotARotation => "the target is no rotation; give a unit quaternion",
            Self::TimeOutOfRange => "the time to get there is out of range; give 0.01 s to 10 s",
        })
    }
}

impl std::error::Error for TargetError {}

/// Shortest and longest time in which a joint may be asked to reach its target, s.
const WITHIN_S: [f64; 2] = [0.01, 10.0];

/// Most that the body turns in a step, rad; a planned flight keeps within this but for the fastest.
const MOST_TURNED_RAD: f64 = 0.2;

impl LiveFlight {
    /// Leaves the ice in a posture, joints at rest.
    pub fn new(body: Body, posture: &Posture, launch: &Launch, turning: Turning) -> Self {
        let tree = Tree::new(&body);
        let takeoff = MassProperties::from(CentroidalState::new(&tree, posture, &STILL));
        let constants = FlightConstants::of(&takeoff, launch, turning);
        Self {
            sample: constants.begin(&takeoff),
            body,
            tree,
            constants,
            joints: posture.joints.map(JointTrajectory::at_rest),
            landed: false,
        }
    }

    /// Where the flight has come to.
    pub const fn sample(&self) -> &FlightSample {
        &self.sample
    }

    /// Whether a foot has met the ice: nothing moves any more.
    pub const fn has_landed(&self) -> bool {
        self.landed
    }

    /// Angular momentum about the CM, world, kg m²/s; the same all through the flight.
    pub fn h_kg_m2_s(&self) -> DVec3 {
        DVec3::Y * self.constants.h_kg_m2_s
    }

    /// Where every segment is now, and how it moves.
    pub fn pose(&self) -> Pose {
        let (posture, rates) = self.moving(self.sample.t_s);
        let falling_m_s = self.constants.falling_m_s(self.sample.t_s);
        Pose::new(
            &self.body,
            &self.tree,
            (&posture, &rates),
            self.sample,
            falling_m_s,
        )
    }

    /// From now on this joint goes from where it is, as fast as it moves, to `target` (segment axes
    /// to parent's axes) and comes to rest there `within_s` from now, by a minimum-jerk movement.
    pub fn aim(
        &mut self,
        segment: Segment,
        target: DQuat,
        within_s: f64,
    ) -> Result<(), TargetError> {
        if !target.is_normalized() {
            return Err(TargetError::NotARotation);
        }
        if !(WITHIN_S[0]..=WITHIN_S[1]).contains(&within_s) {
            return Err(TargetError::TimeOutOfRange);
        }
        let joint = &mut self.joints[segment as usize];
        *joint = joint.redirected(self.sample.t_s, target, within_s);
        Ok(())
    }

    /// Every joint of a posture at once.
    pub fn aim_all(&mut self, posture: &Posture, within_s: f64) -> Result<(), TargetError> {
        Segment::ALL
            .into_iter()
            .try_for_each(|segment| self.aim(segment, posture[segment], within_s))
    }

    /// Flies on by `step_s`, in as many steps as the accuracy takes, or to the instant at which a
    /// foot meets the ice. Nothing happens for a time that is not positive.
    pub fn step(&mut self, step_s: f64) -> &FlightSample {
        let until_s = self.sample.t_s + step_s;
        while !self.landed && self.sample.t_s < until_s {
            let from = self.sample;
            let t_s = self.next_s(until_s);
            let to = self.advanced_to(&from, t_s);
            if to.lowest_m < -UNDER_M {
                self.sample = contact(&from, t_s, |t_s| self.advanced_to(&from, t_s));
                self.landed = true;
            } else {
                self.sample = to;
            }
        }
        &self.sample
    }

    /// End of the next step: short enough for every movement and for the turning, and never across
    /// the end of a movement.
    fn next_s(&self, until_s: f64) -> f64 {
        let now_s = self.sample.t_s;
        let turning_s = MOST_TURNED_RAD / self.sample.own_rate_rad_s.length();
        let mut longest_s = Resolution::STANDARD.longest_step_s.min(turning_s);
        let mut end_s = until_s;
        for joint in self.joints.iter().filter(|joint| joint.end_s() > now_s) {
            let steps = Resolution::STANDARD.steps_per_blend as f64;
            longest_s = longest_s.min(joint.time_s() / steps);
            end_s = end_s.min(joint.end_s());
        }
        let steps = libm::ceil((end_s - now_s) / longest_s);
        if steps > 1.0 {
            now_s + (end_s - now_s) / steps
        } else {
            end_s
        }
    }

    fn advanced_to(&self, from: &FlightSample, t_s: f64) -> FlightSample {
        self.constants.advanced_to(from, t_s, |t_s| {
            let moving = self.moving(t_s);
            CentroidalState::new(&self.tree, &moving.0, &moving.1)
        })
    }

    fn moving(&self, t_s: f64) -> (Posture, JointRates) {
        let mut moving = (Posture::STANDING, STILL);
        for (i, joint) in self.joints.iter().enumerate() {
            (moving.0.joints[i], moving.1[i]) = joint.at(t_s);
        }
        moving
    }
}
