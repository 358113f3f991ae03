//! A jump that is flown slowly, its arms and legs led by hand while it runs.
//!
//! What the hand did is kept as a few knots; with them the jump is flown like any other.

use std::f64::consts::TAU;
use std::sync::Arc;

use glam::DQuat;

use crate::body::model::Body;
use crate::body::posture::{JointAccelerations, JointRates, Posture};
use crate::flight::constants::FlightConstants;
use crate::flight::launch::Launch;
use crate::flight::motion_flight::MotionFlight;
use crate::flight::planned::Flight;
use crate::flight::pose::Pose;
use crate::flight::sample::FlightSample;
use crate::flight::table::PlanTable;
use crate::motion::joint_motion::{JointMotion, Sampling};
use crate::motion::led_tucks::{Knot, LATEST_S, LedTucks, MOST_KNOTS};
use crate::motion::plan::{Plan, PlanSpec};
use crate::motion::resolution::Resolution;

/// A flight that a hand leads.
#[derive(Debug, Clone)]
pub struct LedFlight {
    flight: MotionFlight<HandMotion>,
    body: Body,
    launch: Launch,
    /// When the CM itself would be on the ice, s: a body that lies by then ends its flight so.
    end_s: f64,
    /// Of the time that passes so much passes in the flight.
    pace: f64,
    /// So many knots may be made now.
    spare: f64,
    sign: f64,
}

/// Slowest and fastest pace.
pub const PACE: [f64; 2] = [1.0 / 32.0, 1.0];

/// A frame that took longer counts as long as that, s: a page that was hidden doesn't end the flight.
const LONGEST_FRAME_S: f64 = 0.1;

/// A hand makes a few knots at once, then one in this time of the flight, s: what goes on between is far quicker
/// than joints follow, and there is room for all that is done in the longest flight. The last ones are left for
/// large changes, as a share of the way.
const SPARE: f64 = 8.0;
const LEFT: f64 = 4.0;
const EVERY_S: f64 = 0.008;
const LARGE: f64 = 0.1;

/// The motion of a hand as it was, frame by frame.
#[derive(Debug, Clone)]
struct HandMotion {
    plan: Plan,
    knots: Vec<Knot>,
}

impl JointMotion for HandMotion {
    fn at(&self, t_s: f64) -> (Posture, JointRates) {
        self.plan.led_at(&self.knots, t_s)
    }

    fn accelerations_at(&self, t_s: f64) -> JointAccelerations {
        self.plan.led_accelerations_at(&self.knots, t_s)
    }

    fn sampling_from(&self, t_s: f64) -> Sampling {
        let corners_s = |knot: &Knot| self.plan.corners_of_knot_s(knot.time_s);
        self.plan
            .sampling(t_s, self.knots.iter().flat_map(corners_s))
    }
}

impl LedFlight {
    /// Leaves the ice as the plan would, at a pace that is held between the slowest and the fastest.
    pub fn new(body: Body, plan: PlanSpec, launch: Launch, pace: f64) -> Self {
        let turning = plan.turning;
        let motion = HandMotion {
            plan: Plan::new(PlanSpec {
                led: Some(LedTucks::nothing()),
                ..plan
            }),
            knots: Vec::new(),
        };
        let flight = MotionFlight::new(body.clone(), None, motion, DQuat::IDENTITY, |takeoff| {
            FlightConstants::of(takeoff, &launch, turning)
        });
        Self {
            end_s: flight.constants().falls_to_s(0.0),
            flight,
            body,
            launch,
            pace: if pace.is_nan() {
                PACE[0]
            } else {
                pace.clamp(PACE[0], PACE[1])
            },
            spare: SPARE,
            sign: turning.sign(),
        }
    }

    /// From now on arms and legs are to be as far in as that, each held between all out and all in. To be said
    /// at every frame: small changes may have to wait for some. What is no number is passed over, and so is what comes
    /// after the landing.
    pub fn lead(&mut self, arms: f64, legs: f64) {
        let time_s = self.time_s();
        if self.has_landed() || time_s > LATEST_S || arms.is_nan() || legs.is_nan() {
            return;
        }
        let knot = Knot {
            time_s,
            arms: arms.clamp(0.0, 1.0),
            legs: legs.clamp(0.0, 1.0),
        };
        if self.led().time_s == time_s && self.flight.motion.knots.pop().is_some() {
            // Nothing has followed it yet.
            self.spare += 1.0;
        }
        let last = self.led();
        let change = (knot.arms - last.arms).abs();
        let change = change.max((knot.legs - last.legs).abs());
        let left = if change < LARGE { LEFT } else { 0.0 };
        let has_room = self.flight.motion.knots.len() < MOST_KNOTS;
        if change > 0.0 && self.spare >= 1.0 + left && has_room {
            self.spare -= 1.0;
            self.flight.motion.knots.push(knot);
        }
    }

    /// Flies on for a frame, s of the time that passes; returns how much of the flight that was, s.
    pub fn step(&mut self, frame_s: f64) -> f64 {
        let before_s = self.time_s();
        let frame_s = if frame_s > 0.0 {
            frame_s.min(LONGEST_FRAME_S)
        } else {
            0.0
        };
        let left_s = self.end_s - before_s;
        let flown_s = self.flight.step(left_s.min(frame_s * self.pace)).t_s - before_s;
        self.spare = (self.spare + flown_s / EVERY_S).min(SPARE);
        flown_s
    }

    /// What arms and legs are led to now.
    pub fn led(&self) -> Knot {
        let last = self.flight.motion.knots.last();
        last.copied().unwrap_or(Knot::OUT)
    }

    /// How far in arms and legs are by now.
    pub fn tucks(&self) -> [f64; 2] {
        let HandMotion { plan, knots } = &self.flight.motion;
        plan.led_tucks_at(knots, self.time_s())
    }

    /// s since take-off.
    pub const fn time_s(&self) -> f64 {
        self.sample().t_s
    }

    pub const fn sample(&self) -> &FlightSample {
        self.flight.sample()
    }

    /// Where every segment is now, and how it moves.
    pub fn pose(&self) -> Pose {
        self.flight.pose()
    }

    /// Turned in the air so far.
    pub fn air_turns(&self) -> f64 {
        self.sample().turned_rad / TAU
    }

    /// About the vertical, positive in the turning direction, rad/s.
    pub fn rate_rad_s(&self) -> f64 {
        self.sign * self.sample().spin_rad_s
    }

    pub fn has_landed(&self) -> bool {
        self.flight.has_landed() || self.time_s() >= self.end_s
    }

    /// Estimate: in the flight's own time, s, until the ice is met by a body that stays as it is now.
    pub fn landing_in_s(&self) -> f64 {
        if self.has_landed() {
            return 0.0;
        }
        let below_m = self.sample().cm_height_m - self.sample().lowest_m;
        let meets_s = self.flight.constants().falls_to_s(below_m);
        (meets_s.min(self.end_s) - self.time_s()).max(0.0)
    }

    /// What the hand did so far, frame by frame.
    pub(crate) fn all_knots(&self) -> &[Knot] {
        &self.flight.motion.knots
    }

    /// The flight as it would be with these knots alone.
    pub(crate) fn with_knots(&self, led: LedTucks) -> Flight {
        let spec = PlanSpec {
            led: Some(led),
            ..self.flight.motion.plan.spec.clone()
        };
        let table = PlanTable::new(self.body.clone(), Plan::new(spec), Resolution::STANDARD);
        Flight::new(Arc::new(table), self.launch)
    }

    /// The time of a closing or opening, s.
    pub(crate) const fn movement_s(&self) -> f64 {
        self.flight.motion.plan.spec.close_time_s
    }
}
