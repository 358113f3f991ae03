//! A flight stepped by hand: the joints are told where to go while it runs.
//!
//! Same body, same equations, same steps as a planned flight; only that nobody knows beforehand
//! what the joints will do, so nothing is tabulated and the flight ends where a foot meets the ice.

use std::fmt;

use glam::{DQuat, DVec3};

use super::body::{Body, SEGMENTS, Segment};
use super::course::Course;
use super::flight::Pose;
use super::joint::JointReach;
use super::launch::Launch;
use super::moment::Moment;
use super::momentum::MassState;
use super::plan::Turning;
use super::posture::{JointRates, Posture, STILL};
use super::stance::Stance;
use super::table::Resolution;
use super::touchdown::{UNDER_M, contact};
use super::tree::Tree;

/// A flight as far as it has come.
#[derive(Debug, Clone)]
pub struct Stepper {
    body: Body,
    tree: Tree,
    course: Course,
    joints: [JointReach; SEGMENTS],
    moment: Moment,
    landed: bool,
}

/// Why a target is refused; the joint goes on as before.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Refused {
    Target,
    Time,
}

impl fmt::Display for Refused {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Target => "the target is no rotation; give a unit quaternion",
            Self::Time => "the time to get there is out of range; give 0.01 s to 10 s",
        })
    }
}

impl std::error::Error for Refused {}

/// Shortest and longest time in which a joint may be asked to reach its target, s.
const WITHIN_S: [f64; 2] = [0.01, 10.0];

/// Most that the body turns in a step, rad; a planned flight keeps within this but for the fastest.
const MOST_TURNED_RAD: f64 = 0.2;

impl Stepper {
    /// Leaves the ice in a posture, joints at rest.
    pub fn new(body: Body, posture: &Posture, launch: &Launch, turning: Turning) -> Self {
        let tree = Tree::new(&body);
        let takeoff = Stance::from(MassState::new(&tree, posture, &STILL));
        let course = Course::of(&takeoff, launch, turning);
        Self {
            moment: course.begin(&takeoff),
            body,
            tree,
            course,
            joints: posture.joints.map(JointReach::at_rest),
            landed: false,
        }
    }

    /// Where the flight has come to.
    pub const fn moment(&self) -> &Moment {
        &self.moment
    }

    /// Whether a foot has met the ice: nothing moves any more.
    pub const fn has_landed(&self) -> bool {
        self.landed
    }

    /// Angular momentum about the CM, world, kg m²/s; the same all through the flight.
    pub fn h_kg_m2_s(&self) -> DVec3 {
        DVec3::Y * self.course.h_kg_m2_s
    }

    /// Where every segment is now, and how it moves.
    pub fn pose(&self) -> Pose {
        let (posture, rates) = self.moving(self.moment.t_s);
        let falling_m_s = self.course.falling_m_s(self.moment.t_s);
        Pose::new(
            &self.body,
            &self.tree,
            (&posture, &rates),
            self.moment,
            falling_m_s,
        )
    }

    /// From now on this joint goes from where it is, as fast as it moves, to `target` (segment axes
    /// to parent's axes) and comes to rest there `within_s` from now, by a minimum-jerk movement.
    pub fn aim(&mut self, segment: Segment, target: DQuat, within_s: f64) -> Result<(), Refused> {
        if !target.is_normalized() {
            return Err(Refused::Target);
        }
        if !(WITHIN_S[0]..=WITHIN_S[1]).contains(&within_s) {
            return Err(Refused::Time);
        }
        let joint = &mut self.joints[segment as usize];
        *joint = joint.redirected(self.moment.t_s, target, within_s);
        Ok(())
    }

    /// Every joint of a posture at once.
    pub fn aim_all(&mut self, posture: &Posture, within_s: f64) -> Result<(), Refused> {
        Segment::ALL
            .into_iter()
            .try_for_each(|segment| self.aim(segment, posture[segment], within_s))
    }

    /// Flies on by `step_s`, in as many steps as the accuracy takes, or to the moment at which a
    /// foot meets the ice. Nothing happens for a time that is not positive.
    pub fn step(&mut self, step_s: f64) -> &Moment {
        let until_s = self.moment.t_s + step_s;
        while !self.landed && self.moment.t_s < until_s {
            let from = self.moment;
            let t_s = self.next_s(until_s);
            let to = self.on_from(&from, t_s);
            if to.lowest_m < -UNDER_M {
                self.moment = contact(&from, t_s, |t_s| self.on_from(&from, t_s));
                self.landed = true;
            } else {
                self.moment = to;
            }
        }
        &self.moment
    }

    /// End of the next step: short enough for every movement and for the turning, and never across
    /// the end of a movement.
    fn next_s(&self, until_s: f64) -> f64 {
        let now_s = self.moment.t_s;
        let turning_s = MOST_TURNED_RAD / self.moment.own_rate_rad_s.length();
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

    fn on_from(&self, from: &Moment, t_s: f64) -> Moment {
        self.course.on_from(from, t_s, |t_s| {
            let moving = self.moving(t_s);
            MassState::new(&self.tree, &moving.0, &moving.1)
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
