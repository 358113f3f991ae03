//! The motion plan: which posture when. Joint angles are prescribed; the body as a whole is free.

use std::ops::Range;
use std::sync::LazyLock;

use glam::{DQuat, DVec3};

use crate::body::model::{SEGMENTS, Segment};
use crate::body::posture::{JointAccelerations, JointRates, Posture, STILL};
use crate::math::rotation::log;
use crate::motion::led_tucks::{LedTucks, Limb};
use crate::motion::minimum_jerk::{minimum_jerk, minimum_jerk_acceleration};
use crate::motion::takeoff_landing::{landing_posture, takeoff_posture};
use crate::motion::tight_posture::TightPosture;

/// Which way the jumper turns, seen from above.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Turning {
    Anticlockwise,
    Clockwise,
}

impl Turning {
    /// +1 anticlockwise, -1 clockwise.
    pub const fn sign(self) -> f64 {
        match self {
            Self::Anticlockwise => 1.0,
            Self::Clockwise => -1.0,
        }
    }

    /// The other way round.
    pub const fn opposite(self) -> Self {
        match self {
            Self::Anticlockwise => Self::Clockwise,
            Self::Clockwise => Self::Anticlockwise,
        }
    }
}

/// What the jumper means to do in the air. Described for an anticlockwise jumper, who lands on
/// the right foot; a clockwise one does the mirror image.
#[derive(Debug, Clone, PartialEq)]
pub struct PlanSpec {
    pub turning: Turning,
    /// As tight as this body can get.
    pub tight: TightPosture,
    /// 0: arms and free leg close to the body as the ice is left; 1: wide open.
    pub takeoff_openness: f64,
    /// 0: arms as at take-off; 1: as tight as this body can get.
    pub arm_tuck: f64,
    /// 0: legs as at take-off; 1: as tight as this body can get.
    pub leg_tuck: f64,
    /// Part of the arms' closing that the left arm never makes, 0 to 1.
    pub arm_asymmetry: f64,
    pub close_delay_s: f64,
    pub close_time_s: f64,
    /// How much later than the rest the left arm closes.
    pub arm_lag_s: f64,
    /// How long before touch-down the opening begins.
    pub open_lead_s: f64,
    pub open_time_s: f64,
    /// Led by hand: then tucks, delay and all of the opening are the hand's, and a movement takes the
    /// closing time.
    pub led: Option<LedTucks>,
}

/// One of the two blends, on its own.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Blend {
    Closing,
    Opening,
}

/// Progress of a movement and its rate.
type Progress = (f64, f64);

const NOT_BEGUN: Progress = (0.0, 0.0);
const OVER: Progress = (1.0, 0.0);

/// The postures at the ends of the blends and the rotations between them.
#[derive(Debug, Clone)]
pub struct Plan {
    pub spec: PlanSpec,
    takeoff: Posture,
    pub(super) air: Posture,
    pub(super) blends: [JointBlends; SEGMENTS],
}

/// What one joint does; all at rest is a joint that stays straight.
#[derive(Debug, Clone, Copy)]
pub(super) struct JointBlends {
    /// From take-off to the air position, segment axes.
    pub(super) closing: FixedAxisRotation,
    /// From the air position to landing.
    pub(super) opening: FixedAxisRotation,
    /// Of the arm that closes late.
    pub(super) late: bool,
    pub(super) limb: Limb,
    /// Straight from take-off to landing.
    pub(super) straight: bool,
}

/// A rotation about a fixed axis, to be made part by part.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct FixedAxisRotation {
    axis: DVec3,
    angle_rad: f64,
}

impl FixedAxisRotation {
    fn between(from: DQuat, to: DQuat, share: f64) -> Self {
        let vector = log(from.conjugate() * to) * share;
        Self {
            axis: vector.normalize_or(DVec3::Y),
            angle_rad: vector.length(),
        }
    }

    pub(super) fn vector_rad(&self) -> DVec3 {
        self.axis * self.angle_rad
    }

    /// A part of the rotation; the trigonometry is spared where nothing has moved.
    fn part(&self, part: f64) -> DQuat {
        if part == 0.0 || self.angle_rad == 0.0 {
            return DQuat::IDENTITY;
        }
        let (sin, cos) = libm::sincos(0.5 * part * self.angle_rad);
        let v = self.axis * sin;
        DQuat::from_xyzw(v.x, v.y, v.z, cos)
    }

    fn mirrored(self) -> Self {
        // A rotation vector is axial: the mirror turns the parts in its own plane round.
        let axis = DVec3::new(-self.axis.x, -self.axis.y, self.axis.z);
        Self { axis, ..self }
    }
}

/// The landing posture, which is the same in every plan.
static LANDING: LazyLock<Posture> = LazyLock::new(landing_posture);

/// Segments of the arms, which follow the arm tuck; the left one can lag.
const fn is_arm(segment: Segment) -> bool {
    is_left_arm(segment)
        || matches!(
            segment,
            Segment::RightUpperArm | Segment::RightForearm | Segment::RightHand
        )
}

const fn is_left_arm(segment: Segment) -> bool {
    matches!(
        segment,
        Segment::LeftUpperArm | Segment::LeftForearm | Segment::LeftHand
    )
}

/// Trunk and head go with the legs.
const fn limb(segment: Segment) -> Limb {
    if is_arm(segment) {
        Limb::Arms
    } else {
        Limb::Legs
    }
}

impl Plan {
    pub fn new(spec: PlanSpec) -> Self {
        let takeoff = takeoff_posture(spec.takeoff_openness, spec.tight.legs_apart_rad());
        let (tight, landing) = (spec.tight.posture(), &*LANDING);
        let mut air = takeoff;
        let blends = Segment::ALL.map(|segment| {
            let closing =
                FixedAxisRotation::between(takeoff[segment], tight[segment], spec.tuck(segment));
            air[segment] = takeoff[segment] * closing.part(1.0);
            let opening = FixedAxisRotation::between(air[segment], landing[segment], 1.0);
            JointBlends {
                closing,
                opening,
                late: is_left_arm(segment),
                limb: limb(segment),
                straight: takeoff[segment] == DQuat::IDENTITY
                    && [closing, opening].iter().all(|arc| arc.angle_rad == 0.0),
            }
        });
        let turning = spec.turning;
        let plan = Self {
            spec,
            takeoff,
            air,
            blends,
        };
        match turning {
            Turning::Anticlockwise => plan,
            Turning::Clockwise => plan.mirrored(),
        }
    }

    fn mirrored(self) -> Self {
        let blends = Segment::ALL.map(|segment| {
            let JointBlends {
                closing,
                opening,
                late,
                limb,
                straight,
            } = self.blends[segment.mirrored() as usize];
            JointBlends {
                closing: closing.mirrored(),
                opening: opening.mirrored(),
                late,
                limb,
                straight,
            }
        });
        Self {
            takeoff: self.takeoff.mirrored(),
            air: self.air.mirrored(),
            blends,
            ..self
        }
    }

    /// When every joint has closed, s after take-off.
    pub fn closed_s(&self) -> f64 {
        if let Some(led) = &self.spec.led {
            return led
                .last_pull_s()
                .map_or(0.0, |pull_s| pull_s + self.response_s());
        }
        self.spec.close_delay_s + self.spec.close_time_s + self.spec.arm_lag_s
    }

    /// When the closing starts, s after take-off.
    pub fn closes_from_s(&self) -> f64 {
        let led = self.spec.led.as_ref();
        led.map_or(self.spec.close_delay_s, |led| {
            led.first_pull_s().unwrap_or_default()
        })
    }

    /// Whether the body ever opens for the landing.
    pub fn opens(&self) -> bool {
        let led = self.spec.led.as_ref();
        led.map_or(self.spec.open_lead_s > 0.0, |led| led.open_s().is_some())
    }

    /// How long it takes until every joint has done what a hand leads it to, s.
    pub fn response_s(&self) -> f64 {
        self.spec.close_time_s + self.spec.arm_lag_s
    }

    /// How long it takes until nothing moves any more, s: what goes over to the landing takes a movement more.
    pub fn settling_s(&self) -> f64 {
        self.response_s() + self.spec.close_time_s
    }

    /// The shorter of closing and opening, s.
    pub fn shortest_blend_s(&self) -> f64 {
        if self.spec.led.is_some() {
            return self.spec.close_time_s;
        }
        self.spec.close_time_s.min(self.spec.open_time_s)
    }

    /// When a joint's closing starts, s after take-off.
    pub fn close_start_s(&self, segment: Segment) -> f64 {
        let late = self.blends[segment as usize].late;
        self.closes_from_s() + if late { self.spec.arm_lag_s } else { 0.0 }
    }

    /// The rotation of a joint at take-off, then the rotation vectors of closing and opening, rad.
    pub fn blend_rotations(&self, segment: Segment) -> (DQuat, DVec3, DVec3) {
        let joint = &self.blends[segment as usize];
        let vectors = (joint.closing.vector_rad(), joint.opening.vector_rad());
        (self.takeoff[segment], vectors.0, vectors.1)
    }

    /// Posture and joint rates at `t_s` after take-off when the opening begins at `open_s`.
    ///
    /// A plan that cannot fit closes and opens at the same time: each joint's rotation is the product
    /// of both blends, so angle and rate stay continuous whatever the times are.
    ///
    /// What is led by hand has its opening in it: no other time counts.
    pub fn at(&self, t_s: f64, open_s: f64) -> (Posture, JointRates) {
        if let Some(led) = &self.spec.led {
            return self.led_at(led.knots(), t_s);
        }
        let spec = &self.spec;
        let on_time = minimum_jerk(t_s, spec.close_delay_s, spec.close_time_s);
        let late = if spec.arm_lag_s == 0.0 {
            on_time
        } else {
            minimum_jerk(t_s, spec.close_delay_s + spec.arm_lag_s, spec.close_time_s)
        };
        let opening = minimum_jerk(t_s, open_s, spec.open_time_s);
        // One value from the start: it is large, and would be copied.
        let mut moving = (Posture::STANDING, STILL);
        self.set_joints(0..SEGMENTS, [on_time, late, opening], &mut moving);
        moving
    }

    /// How far in arms and legs are at `t_s` after take-off when the opening begins at `open_s`: 0 as at take-off
    /// or landing, 1 as tight as this body can get. What is done to one arm only is not in it.
    pub fn tucks_at(&self, t_s: f64, open_s: f64) -> [f64; 2] {
        if let Some(led) = &self.spec.led {
            return self.led_tucks_at(led.knots(), t_s);
        }
        let spec = &self.spec;
        let closed = minimum_jerk(t_s, spec.close_delay_s, spec.close_time_s).0;
        let opened = minimum_jerk(t_s, open_s, spec.open_time_s).0;
        [spec.arm_tuck, spec.leg_tuck].map(|tuck| tuck * closed * (1.0 - opened))
    }

    /// How the joint rates of [`Self::at`] change.
    ///
    /// Where both blends run, the rate is `Oᵀ c + o` with the opening's rotation O and the rates c and
    /// o of closing and opening; it changes by `Oᵀ c' - o x (Oᵀ c) + o'`.
    pub fn accelerations_at(&self, t_s: f64, open_s: f64) -> JointAccelerations {
        if let Some(led) = &self.spec.led {
            return self.led_accelerations_at(led.knots(), t_s);
        }
        let spec = &self.spec;
        let moving = |start_s, time_s| {
            (
                minimum_jerk(t_s, start_s, time_s).1,
                minimum_jerk_acceleration(t_s, start_s, time_s),
            )
        };
        let on_time = moving(spec.close_delay_s, spec.close_time_s);
        let late = if spec.arm_lag_s == 0.0 {
            on_time
        } else {
            moving(spec.close_delay_s + spec.arm_lag_s, spec.close_time_s)
        };
        let opened = minimum_jerk(t_s, open_s, spec.open_time_s).0;
        let opening = moving(open_s, spec.open_time_s);
        let mut accelerations = STILL;
        for (joint, acceleration) in self.blends.iter().zip(&mut accelerations) {
            let closing = if joint.late { late } else { on_time };
            let [closing_rate, closing_change] =
                [closing.0, closing.1].map(|part| joint.closing.vector_rad() * part);
            if opened == 0.0 {
                *acceleration = closing_change;
                continue;
            }
            let [opening_rate, opening_change] =
                [opening.0, opening.1].map(|part| joint.opening.vector_rad() * part);
            *acceleration = opening_change;
            if closing.0 != 0.0 {
                let back = joint.opening.part(opened).conjugate();
                *acceleration += back * closing_change - opening_rate.cross(back * closing_rate);
            }
        }
        accelerations
    }

    /// The time that a blend takes, s: its own unit of time.
    pub const fn blend_s(&self, blend: Blend) -> f64 {
        match blend {
            Blend::Closing => self.spec.close_time_s,
            Blend::Opening => self.spec.open_time_s,
        }
    }

    /// How long a blend is followed when it comes alone, in its own unit: the closing to its end, the
    /// opening to the planned touch-down.
    pub fn span(&self, blend: Blend) -> f64 {
        match blend {
            Blend::Closing => 1.0 + self.lag(),
            Blend::Opening => self.spec.open_lead_s / self.spec.open_time_s,
        }
    }

    /// How much later than the rest the left arm closes, in closing times.
    fn lag(&self) -> f64 {
        self.spec.arm_lag_s / self.spec.close_time_s
    }

    /// Sets the joints of these segments as one blend alone has them when it has gone on for `x` of the time
    /// that it takes; rates count in that time.
    pub fn set_joints_in_blend(
        &self,
        blend: Blend,
        x: f64,
        segments: Range<usize>,
        moving: &mut (Posture, JointRates),
    ) {
        let since = |start| minimum_jerk(x, start, 1.0);
        let progress = match blend {
            Blend::Closing => [since(0.0), since(self.lag()), NOT_BEGUN],
            Blend::Opening => [OVER, OVER, since(0.0)],
        };
        self.set_joints(segments, progress, moving);
    }

    /// Whether these segments do the same as in another plan in one blend alone, whatever time that
    /// takes.
    pub fn moves_like(&self, other: &Self, blend: Blend, segments: Range<usize>) -> bool {
        fn begin(plan: &Plan, blend: Blend) -> &Posture {
            match blend {
                Blend::Closing => &plan.takeoff,
                Blend::Opening => &plan.air,
            }
        }
        let lag = |plan: &Self, i: usize| if plan.blends[i].late { plan.lag() } else { 0.0 };
        segments.into_iter().all(|i| {
            let (joint, other_joint) = (&self.blends[i], &other.blends[i]);
            begin(self, blend).joints[i] == begin(other, blend).joints[i]
                && match blend {
                    Blend::Closing => {
                        joint.closing == other_joint.closing && lag(self, i) == lag(other, i)
                    }
                    Blend::Opening => joint.opening == other_joint.opening,
                }
        })
    }

    /// Sets the joints of these segments as they are at this progress of the closing, the closing that comes
    /// late and the opening.
    fn set_joints(
        &self,
        segments: Range<usize>,
        [on_time, late, opening]: [Progress; 3],
        moving: &mut (Posture, JointRates),
    ) {
        let (posture, rates) = moving;
        for i in segments {
            let joint = &self.blends[i];
            if joint.straight {
                (posture.joints[i], rates[i]) = (DQuat::IDENTITY, DVec3::ZERO);
                continue;
            }
            let closing = if joint.late { late } else { on_time };
            // The ends of the closing are known: trigonometry only in between.
            let closed = if closing.0 == 0.0 || joint.closing.angle_rad == 0.0 {
                self.takeoff.joints[i]
            } else if closing.0 == 1.0 {
                self.air.joints[i]
            } else {
                self.takeoff.joints[i] * joint.closing.part(closing.0)
            };
            let closing_rate = joint.closing.axis * (joint.closing.angle_rad * closing.1);
            if opening.0 == 0.0 {
                posture.joints[i] = closed;
                rates[i] = closing_rate;
            } else {
                let opened = joint.opening.part(opening.0);
                posture.joints[i] = closed * opened;
                rates[i] = joint.opening.axis * (joint.opening.angle_rad * opening.1);
                if closing.1 != 0.0 {
                    rates[i] += opened.conjugate() * closing_rate;
                }
            }
        }
    }
}

impl PlanSpec {
    /// How far towards the tightest posture a joint goes.
    fn tuck(&self, segment: Segment) -> f64 {
        // A hand may lead all the way in.
        let (arm_tuck, leg_tuck) = match self.led {
            Some(_) => (1.0, 1.0),
            None => (self.arm_tuck, self.leg_tuck),
        };
        if is_left_arm(segment) {
            arm_tuck * (1.0 - self.arm_asymmetry)
        } else if is_arm(segment) {
            arm_tuck
        } else {
            leg_tuck
        }
    }
}
