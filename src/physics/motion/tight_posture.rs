//! The tightest posture of a body: how near to the axis its own thickness lets its limbs come.
//!
//! Fists side by side in front of the throat, elbows low in front of the chest, legs stretched and
//! closed side by side. The shape is common practice, no source; how far it goes is found: the hands
//! as far as they pass each other on their way in, the elbows until the arms touch the trunk or the shoulders' range of
//! motion ends, the legs until they touch. Arms above the head are another shape and are not looked
//! at. By a search over all angles, crossed legs that do not pass through each other on the way in would
//! take another 1 % off the inertia, and elbows pressed together in front of the chest, at the end of the
//! shoulders' range, another 4 %.
//!
//! In the same build (mass over stature cubed) the posture is the same, so it is found for builds in
//! narrow steps, each once, and taken in proportion between two of them.

use std::sync::OnceLock;

use glam::DQuat;

use crate::body::forward_kinematics::ForwardKinematics;
use crate::body::model::{Body, BodySpec, Footwear, SEGMENTS, Segment};
use crate::body::overlap::overlap_m;
use crate::body::posture::{Arm, Leg, Posture, STILL};
use crate::body::segments::SegmentTable;
use crate::body::thickness::{Solid, solids};
use crate::math::angles::rad;
use crate::math::rotation::{exp, log};
use crate::motion::takeoff_landing::takeoff_arm;

/// The angles of the tightest posture, rad.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TightPosture {
    /// Plane of elevation of both shoulders.
    pub arm_plane_rad: f64,
    /// Inward rotation of both shoulders.
    pub arm_axial_rad: f64,
    /// Adduction of both hips.
    pub leg_adduction_rad: f64,
}

const ARM_ELEVATION_RAD: f64 = rad(32.0);
const ELBOW_FLEXION_RAD: f64 = rad(140.0);

/// The shoulder's way across the body ends at 130 degrees in the published ranges of motion (see
/// `tests/postures.rs`), for an arm that only hangs in its joint; an arm that is pulled in with a bent
/// elbow is taken to reach this far. Our choice.
const ARM_PLANE_RAD: [f64; 2] = [rad(0.0), rad(110.0)];
const ARM_AXIAL_RAD: [f64; 2] = [rad(0.0), rad(70.0)];
const LEG_ADDUCTION_RAD: [f64; 2] = [rad(-10.0), rad(10.0)];

/// Overlap that counts as a touch, m: flesh gives way.
const TOUCH_M: f64 = 0.002;

/// Builds, kg^½ m^-3/2: the root of mass over stature cubed, from the first to the last by these steps.
/// Adults of the samples behind the thickness have 3.7.
const BUILD_FIRST: f64 = 2.0;
const BUILD_STEP: f64 = 0.04;
const BUILDS: usize = 101;

/// Halvings of a range of angles until its end is known.
const HALVINGS: u32 = 10;

/// Parts of the arms' way in, from take-off on, at which the hands may meet: they come nearest to each
/// other at about four fifths of it.
const ON_THE_WAY: [f64; 5] = [0.72, 0.78, 0.84, 0.9, 1.0];

const BETWEEN_ARMS: [[Segment; 2]; 3] = [
    [Segment::LeftHand, Segment::RightHand],
    [Segment::LeftForearm, Segment::RightForearm],
    [Segment::LeftHand, Segment::RightForearm],
];

/// Of one arm; the other is its mirror image.
const ARM_AND_BODY: [[Segment; 2]; 11] = [
    [Segment::RightUpperArm, Segment::MiddleTrunk],
    [Segment::RightUpperArm, Segment::LeftForearm],
    [Segment::RightForearm, Segment::UpperTrunk],
    [Segment::RightForearm, Segment::MiddleTrunk],
    [Segment::RightForearm, Segment::LowerTrunk],
    [Segment::RightForearm, Segment::Head],
    [Segment::RightHand, Segment::UpperTrunk],
    [Segment::RightHand, Segment::MiddleTrunk],
    [Segment::RightHand, Segment::Head],
    [Segment::RightHand, Segment::RightUpperArm],
    [Segment::RightHand, Segment::LeftUpperArm],
];

const BETWEEN_LEGS: [[Segment; 2]; 7] = [
    [Segment::LeftThigh, Segment::RightThigh],
    [Segment::LeftShank, Segment::RightShank],
    [Segment::LeftShank, Segment::RightThigh],
    [Segment::LeftThigh, Segment::RightShank],
    [Segment::LeftFoot, Segment::RightFoot],
    [Segment::LeftFoot, Segment::RightShank],
    [Segment::LeftShank, Segment::RightFoot],
];

impl TightPosture {
    /// Of a body by one of the published tables, without boots and empty-handed.
    pub fn of(table: SegmentTable, stature_m: f64, body_mass_kg: f64) -> Self {
        let build = (body_mass_kg / (stature_m * stature_m * stature_m)).sqrt();
        let steps = ((build - BUILD_FIRST) / BUILD_STEP).clamp(0.0, (BUILDS - 1) as f64);
        let below = (steps as usize).min(BUILDS - 2);
        let (from, to) = (Self::known(table, below), Self::known(table, below + 1));
        from.between(to, steps - below as f64)
    }

    /// The posture itself.
    pub fn posture(&self) -> Posture {
        let arm = self.arm();
        let [left, right] = self.legs();
        Posture::new(arm, arm, left, right)
    }

    /// Either arm.
    pub const fn arm(&self) -> Arm {
        Arm {
            plane_rad: self.arm_plane_rad,
            elevation_rad: ARM_ELEVATION_RAD,
            axial_rad: self.arm_axial_rad,
            elbow_flexion_rad: ELBOW_FLEXION_RAD,
        }
    }

    /// The left leg, a little in front, and the right one.
    pub const fn legs(&self) -> [Leg; 2] {
        let leg = Leg {
            hip_flexion_rad: 0.0,
            hip_abduction_rad: -self.leg_adduction_rad,
            knee_flexion_rad: rad(5.0),
            plantarflexion_rad: rad(25.0),
        };
        let left = Leg {
            hip_flexion_rad: rad(2.0),
            ..leg
        };
        [left, leg]
    }

    /// How far both hips have to be abducted for the legs not to press, rad.
    pub const fn legs_apart_rad(&self) -> f64 {
        (-self.leg_adduction_rad).max(0.0)
    }

    fn between(&self, to: &Self, part: f64) -> Self {
        let at = |from: f64, to: f64| from + part * (to - from);
        Self {
            arm_plane_rad: at(self.arm_plane_rad, to.arm_plane_rad),
            arm_axial_rad: at(self.arm_axial_rad, to.arm_axial_rad),
            leg_adduction_rad: at(self.leg_adduction_rad, to.leg_adduction_rad),
        }
    }

    /// Of one of the builds, found when it is first asked for.
    fn known(table: SegmentTable, build: usize) -> &'static Self {
        static FOUND: [[OnceLock<TightPosture>; BUILDS]; 2] =
            [const { [const { OnceLock::new() }; BUILDS] }; 2];
        let of_table = &FOUND[match table {
            SegmentTable::Female => 0,
            SegmentTable::Male => 1,
        }];
        of_table[build].get_or_init(|| Search::new(table, build).tightest())
    }
}

/// A body of one build, and how thick it is.
struct Search {
    body: Body,
    solids: [Solid; SEGMENTS],
}

impl Search {
    fn new(table: SegmentTable, build: usize) -> Self {
        const STATURE_M: f64 = 1.7;
        let root = BUILD_FIRST + BUILD_STEP * build as f64;
        let body = Body::new(BodySpec {
            table,
            stature_m: STATURE_M,
            body_mass_kg: root * root * STATURE_M * STATURE_M * STATURE_M,
            hand_mass_kg: 0.0,
            boot_mass_kg: 0.0,
            footwear: Footwear::BAREFOOT,
            core_inertia: 1.0,
        });
        let solids = solids(&body);
        Self { body, solids }
    }

    fn tightest(&self) -> TightPosture {
        let apart = TightPosture {
            arm_plane_rad: ARM_PLANE_RAD[0],
            arm_axial_rad: ARM_AXIAL_RAD[0],
            leg_adduction_rad: LEG_ADDUCTION_RAD[0],
        };
        let leg_adduction_rad = farthest(LEG_ADDUCTION_RAD, |leg_adduction_rad| {
            let tight = TightPosture {
                leg_adduction_rad,
                ..apart
            };
            self.is_clear(&tight, &BETWEEN_LEGS)
        });
        let hands_together = |arm_plane_rad| {
            let arm_axial_rad = farthest(ARM_AXIAL_RAD, |arm_axial_rad| {
                let tight = TightPosture {
                    arm_plane_rad,
                    arm_axial_rad,
                    ..apart
                };
                self.passes_clear(&tight)
            });
            TightPosture {
                arm_plane_rad,
                arm_axial_rad,
                leg_adduction_rad,
            }
        };
        hands_together(farthest(ARM_PLANE_RAD, |arm_plane_rad| {
            self.is_clear(&hands_together(arm_plane_rad), &ARM_AND_BODY)
        }))
    }

    /// Whether the arms pass each other on their way in.
    fn passes_clear(&self, tight: &TightPosture) -> bool {
        let (wide, [left, right]) = (takeoff_arm(1.0), tight.legs());
        let (from, to) = (Posture::new(wide, wide, left, right), tight.posture());
        ON_THE_WAY.iter().all(|&part| {
            let posture = Posture {
                joints: from_to(&from, &to, part),
            };
            self.is_clear_in(&posture, &BETWEEN_ARMS)
        })
    }

    fn is_clear(&self, tight: &TightPosture, pairs: &[[Segment; 2]]) -> bool {
        self.is_clear_in(&tight.posture(), pairs)
    }

    fn is_clear_in(&self, posture: &Posture, pairs: &[[Segment; 2]]) -> bool {
        let kinematics = ForwardKinematics::new(&self.body, posture, &STILL);
        pairs
            .iter()
            .all(|&[one, other]| overlap_m(&kinematics, &self.solids, one, other) <= TOUCH_M)
    }
}

/// Every joint a part of its shortest way from one posture to another.
fn from_to(from: &Posture, to: &Posture, part: f64) -> [DQuat; SEGMENTS] {
    std::array::from_fn(|i| {
        let start = from.joints[i];
        start * exp(log(start.conjugate() * to.joints[i]) * part)
    })
}

/// The end of a range up to which something is clear: the far end if that is, else where it ceases to
/// be, to within the halvings.
fn farthest([from, to]: [f64; 2], is_clear: impl Fn(f64) -> bool) -> f64 {
    if is_clear(to) {
        return to;
    }
    let (mut clear, mut blocked) = (from, to);
    for _ in 0..HALVINGS {
        let middle = 0.5 * (clear + blocked);
        if is_clear(middle) {
            clear = middle;
        } else {
            blocked = middle;
        }
    }
    clear
}
