//! A flight of any motion about any axis, step by step.
//!
//! Same body, same equations and same steps as a planned flight; only that nothing is tabulated, and the
//! flight ends where any point of the body meets the ground, or where a sole does.

use glam::{DQuat, DVec3};

use crate::body::forward_kinematics::ForwardKinematics;
use crate::body::model::Body;
use crate::body::surface::Surface;
use crate::dynamics::attitude::Attitude;
use crate::dynamics::centroidal::CentroidalState;
use crate::dynamics::integrate;
use crate::dynamics::inverse::Loads;
use crate::dynamics::mass_properties::{MassProperties, RateFromMomentum};
use crate::dynamics::tree::Tree;
use crate::flight::constants::{FlightConstants, TimedProperties};
use crate::flight::pose::Pose;
use crate::flight::release::{Release, ReleaseError};
use crate::flight::sample::FlightSample;
use crate::flight::touchdown::{UNDER_M, contact};
use crate::math::angles::wrapped_rad;
use crate::math::rotation::smallest_rotation;
use crate::motion::joint_motion::JointMotion;

/// A flight as far as it has come.
#[derive(Debug, Clone)]
pub struct MotionFlight<M> {
    body: Body,
    tree: Tree,
    /// None where only a sole or blade ends the flight, as it does a planned one.
    surface: Option<Surface>,
    /// In axes whose Y points along the momentum.
    constants: FlightConstants,
    /// From these axes to the world's; the same where the momentum is vertical, or zero.
    momentum_frame: DQuat,
    pub(crate) motion: M,
    now: Step,
    /// The next step that keeps the error small, s.
    step_s: f64,
    landed: bool,
}

/// How far a flight has come.
#[derive(Debug, Clone, Copy)]
struct Step {
    /// Split about the momentum.
    attitude: Attitude,
    about_momentum_rad: f64,
    sample: FlightSample,
}

/// Most that the body turns in a step, rad; a planned flight keeps within this but for the fastest.
const MOST_TURNED_RAD: f64 = 0.2;

/// Most that the error of a step is estimated at, rad.
const STEP_ERROR_RAD: f64 = 1e-8;

/// How much of the step that would just keep within the error is taken, and how much longer a step may be
/// than the one before.
const CAUTION: f64 = 0.9;
const MOST_GROWTH: f64 = 2.0;

impl<M: JointMotion> MotionFlight<M> {
    /// A body that is let go and moves its joints like that.
    pub fn released(body: Body, motion: M, release: &Release) -> Result<Self, ReleaseError> {
        release.check()?;
        let h = release.angular_momentum_kg_m2_s;
        let momentum_frame = smallest_rotation(DVec3::Y, h.normalize_or(DVec3::Y));
        let constants = FlightConstants {
            h_kg_m2_s: h.length(),
            attitude: Attitude::of(momentum_frame.conjugate() * release.orientation),
            speed_m_s: release.speed_m_s,
            cm_m: release.cm_height_m,
            sign: 1.0,
        };
        let surface = Some(Surface::new(&body));
        Ok(Self::new(body, surface, motion, momentum_frame, |_| {
            constants
        }))
    }

    pub(crate) fn new(
        body: Body,
        surface: Option<Surface>,
        motion: M,
        momentum_frame: DQuat,
        constants: impl FnOnce(&MassProperties) -> FlightConstants,
    ) -> Self {
        let tree = Tree::new(&body);
        let (posture, rates) = motion.at(0.0);
        let takeoff = MassProperties::from(CentroidalState::new(&tree, &posture, &rates));
        let constants = constants(&takeoff);
        let mut flight = Self {
            surface,
            now: Step {
                attitude: constants.attitude,
                about_momentum_rad: 0.0,
                sample: constants.begin(&takeoff),
            },
            body,
            tree,
            constants,
            momentum_frame,
            motion,
            step_s: f64::INFINITY,
            landed: false,
        };
        flight.now.sample = flight.in_world(flight.now.sample, None);
        flight
    }

    /// Where the flight has come to.
    pub const fn sample(&self) -> &FlightSample {
        &self.now.sample
    }

    /// Turned about the momentum since take-off, rad: the integral of the rate, regular whichever way up
    /// the body is. Without any momentum that about the vertical.
    pub const fn about_momentum_rad(&self) -> f64 {
        self.now.about_momentum_rad
    }

    /// What take-off has fixed.
    pub(crate) const fn constants(&self) -> &FlightConstants {
        &self.constants
    }

    /// How the joints move.
    pub const fn motion(&self) -> &M {
        &self.motion
    }

    /// Whether the body has met the ground: nothing moves any more.
    pub const fn has_landed(&self) -> bool {
        self.landed
    }

    /// Angular momentum about the CM, world, kg m²/s; the same all through the flight.
    pub fn h_kg_m2_s(&self) -> DVec3 {
        self.momentum_frame * (DVec3::Y * self.constants.h_kg_m2_s)
    }

    /// Where every segment is now, and how it moves.
    pub fn pose(&self) -> Pose {
        let (posture, rates) = self.motion.at(self.now.sample.t_s);
        let falling_m_s = self.constants.falling_m_s(self.now.sample.t_s);
        Pose::new(
            &self.body,
            &self.tree,
            (&posture, &rates),
            self.now.sample,
            falling_m_s,
        )
    }

    /// The loads on the joints now.
    pub fn loads(&self) -> Loads {
        let state = self.motion.state_at(self.now.sample.t_s);
        Loads::new(&self.tree, &state, self.now.sample.own_rate_rad_s)
    }

    /// Flies on by `step_s`, in as many steps as the accuracy takes, or to the instant at which the
    /// body meets the ground. Nothing happens for a time that is not positive.
    pub fn step(&mut self, step_s: f64) -> &FlightSample {
        let until_s = self.now.sample.t_s + step_s;
        while !self.landed && self.now.sample.t_s < until_s {
            let from = self.now;
            let t_s = self.next_s(until_s);
            let to = self.advanced_to(&from, t_s);
            let taken_s = t_s - from.sample.t_s;
            let fits = libm::pow(
                STEP_ERROR_RAD / step_error_rad(&from.sample, &to.sample),
                0.2,
            );
            if fits < 1.0 {
                self.step_s = CAUTION * fits * taken_s;
                continue;
            }
            self.step_s = self.step_s.max(taken_s * MOST_GROWTH.min(CAUTION * fits));
            if to.sample.lowest_m < -UNDER_M {
                let at = |t_s| self.advanced_to(&from, t_s);
                self.now = contact([from.sample.t_s, t_s], at, |step| step.sample.lowest_m);
                self.landed = true;
            } else {
                self.now = to;
            }
        }
        &self.now.sample
    }

    /// End of the next step: short enough for the motion and for the turning, and never across a time
    /// at which the motion has a corner.
    fn next_s(&self, until_s: f64) -> f64 {
        let now_s = self.now.sample.t_s;
        let sampling = self.motion.sampling_from(now_s);
        let turning_s = MOST_TURNED_RAD / self.now.sample.own_rate_rad_s.length();
        let longest_s = sampling.longest_step_s.min(turning_s).min(self.step_s);
        let end_s = until_s.min(sampling.smooth_until_s);
        let steps = libm::ceil((end_s - now_s) / longest_s);
        if steps > 1.0 {
            now_s + (end_s - now_s) / steps
        } else {
            end_s
        }
    }

    fn advanced_to(&self, from: &Step, t_s: f64) -> Step {
        let state_at = |t_s: f64| {
            let (posture, rates) = self.motion.at(t_s);
            CentroidalState::new(&self.tree, &posture, &rates)
        };
        let (from_s, step_s) = (from.sample.t_s, t_s - from.sample.t_s);
        let [start, middle] =
            [from_s, from_s + 0.5 * step_s].map(|t_s| RateFromMomentum::from(&state_at(t_s)));
        let end = MassProperties::from(state_at(t_s));
        let (attitude, turned_rad) = integrate::step_and_turn(
            from.attitude,
            self.constants.h_kg_m2_s,
            step_s,
            [&start, &middle, &end.rate_from_momentum],
        );
        let timed = TimedProperties::in_seconds(&end);
        let sample = FlightSample::of(&self.constants, t_s, attitude, timed, None);
        Step {
            attitude,
            about_momentum_rad: from.about_momentum_rad + turned_rad,
            sample: self.in_world(sample, Some(&from.sample)),
        }
    }

    /// A sample whose attitude is split about the momentum, with the attitude in the world, the turns since
    /// the sample before it, and the lowest point that may end the flight.
    fn in_world(&self, sample: FlightSample, before: Option<&FlightSample>) -> FlightSample {
        let attitude = if self.momentum_frame == DQuat::IDENTITY {
            sample.attitude
        } else {
            Attitude::of(self.momentum_frame * sample.attitude.orientation())
        };
        let lowest_m = self.surface.as_ref().map_or(sample.lowest_m, |surface| {
            let (posture, rates) = self.motion.at(sample.t_s);
            let cm_m = CentroidalState::new(&self.tree, &posture, &rates).cm_m;
            let kinematics = ForwardKinematics::new(&self.body, &posture, &rates);
            sample.cm_height_m + surface.lowest_m(&kinematics, attitude.axis, cm_m)
        });
        FlightSample {
            attitude,
            turned_rad: before.map_or(0.0, |before| {
                // Attitudes from another frame know their twist only once round.
                let turned_rad = wrapped_rad(attitude.turned_since(&before.attitude));
                before.turned_rad + self.constants.sign * turned_rad
            }),
            lowest_m,
            ..sample
        }
    }
}

/// The error of a step: a body that goes on turning as it does is carried round exactly, so it grows with
/// the change of the rate, and with the third power of the angle turned.
fn step_error_rad(from: &FlightSample, to: &FlightSample) -> f64 {
    let step_s = to.t_s - from.t_s;
    let rates = [from, to].map(|sample| sample.own_rate_rad_s);
    let turned_rad = step_s * rates[0].length().max(rates[1].length());
    step_s * (rates[1] - rates[0]).length() * turned_rad * turned_rad * turned_rad
}
