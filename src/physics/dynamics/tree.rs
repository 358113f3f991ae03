//! A body made ready for summing over postures: its links as the sums see them, the limbs of both
//! sides together.

use std::ops::Range;

use glam::DVec3;
use wide::f64x2;

use crate::body::model::{Body, Link, SEGMENTS, Segment, point_inertia};
use crate::body::posture::{JointRates, Posture};
use crate::dynamics::composite::{Composite, JointRotation};
use crate::dynamics::subtree_mass::StraightTrunk;
use crate::math::simd::{RotationMatrix, Vec3};

/// A segment with all that it carries, seen from its joint, and where its parent has that joint.
#[derive(Debug, Clone, Copy)]
pub(crate) struct TreeLink<T> {
    pub own: Composite<T>,
    pub joint_m: Vec3<T>,
}

/// Three segments from the limb's end inwards, each with the one on the right.
#[derive(Debug, Clone)]
pub(crate) struct Limb {
    pub segments: [[Segment; 2]; 3],
    pub members: [TreeLink<f64x2>; 3],
    /// The first two as one, for a joint between them that is straight and still.
    straight_end: Composite<f64x2>,
}

#[derive(Debug, Clone)]
pub struct Tree {
    pub(crate) arms: Limb,
    pub(crate) legs: Limb,
    /// Head, upper, middle and lower trunk.
    pub(crate) trunk: [TreeLink<f64>; 4],
    /// All four as one, for a trunk that is straight and still.
    straight_trunk: Composite<f64>,
    /// The same as inverse dynamics see it.
    pub(crate) still_trunk: StraightTrunk,
    hand_m: Vec3<f64x2>,
    /// Where something is held, from the wrist.
    pub(crate) grip_m: Vec3<f64x2>,
    /// Heel and toe.
    soles_m: [Vec3<f64x2>; 2],
}

/// The upper or the lower half of a body as the pelvis sees it, and points of its limbs.
#[derive(Debug, Clone, Copy)]
pub struct HalfBody<const N: usize> {
    pub sums: Composite<f64>,
    pub points_m: [Vec3<f64x2>; N],
}

/// The segments of the upper half of a body: trunk, head and arms.
pub const UPPER: Range<usize> = 0..Segment::LeftThigh as usize;

/// Those of the lower half: the legs.
pub const LOWER: Range<usize> = Segment::LeftThigh as usize..SEGMENTS;

pub(crate) const ARMS: [[Segment; 2]; 3] = [
    [Segment::LeftHand, Segment::RightHand],
    [Segment::LeftForearm, Segment::RightForearm],
    [Segment::LeftUpperArm, Segment::RightUpperArm],
];

pub(crate) const LEGS: [[Segment; 2]; 3] = [
    [Segment::LeftFoot, Segment::RightFoot],
    [Segment::LeftShank, Segment::RightShank],
    [Segment::LeftThigh, Segment::RightThigh],
];

pub(crate) const TRUNK: [Segment; 4] = [
    Segment::Head,
    Segment::UpperTrunk,
    Segment::MiddleTrunk,
    Segment::LowerTrunk,
];

impl Tree {
    pub fn new(body: &Body) -> Self {
        let limb = |segments: [[Segment; 2]; 3]| {
            let members = segments.map(|[left, right]| pair(body.link(left), body.link(right)));
            let [end, next, _] = &members;
            Limb {
                segments,
                members,
                straight_end: end.own.through(None, end.joint_m) + next.own,
            }
        };
        let trunk = TRUNK.map(|segment| member(body.link(segment)));
        let straight_trunk = trunk
            .iter()
            .fold(Composite::default(), |sum: Composite<f64>, member| {
                (sum + member.own).through(None, member.joint_m)
            });
        let both = |of: &dyn Fn(Segment) -> DVec3, [left, right]: [Segment; 2]| {
            Vec3::pair(of(left), of(right))
        };
        Self {
            arms: limb(ARMS),
            legs: limb(LEGS),
            still_trunk: StraightTrunk::new(
                trunk.each_ref().map(|member| (&member.own, member.joint_m)),
            ),
            trunk,
            straight_trunk,
            hand_m: both(&|hand| body.link(hand).cm_m, ARMS[0]),
            grip_m: both(&|hand| body.link(hand).end_m, ARMS[0]),
            soles_m: body.sole_m.map(|end| both(&|_| end, LEGS[0])),
        }
    }

    /// The whole body in a posture, seen from the pelvis, which is held still.
    #[inline]
    pub fn sums(&self, posture: &Posture, rates: &JointRates) -> Composite<f64> {
        self.upper(posture, rates).sums + self.lower(posture, rates).sums
    }

    // Both halves are inlined, so that what a caller has no use for is not computed. But not in the
    // browser: there one copy is smaller, and a third faster, than one for every caller.

    /// Trunk, head and arms, and the mass centres of the hands with what they hold.
    #[cfg_attr(not(target_arch = "wasm32"), inline(always))]
    #[cfg_attr(target_arch = "wasm32", inline(never))]
    pub fn upper(&self, posture: &Posture, rates: &JointRates) -> HalfBody<1> {
        let (arms, from_chest_m) = self.arms.gathered(posture, rates, [self.hand_m]);
        let [head, upper, middle, lower] = &self.trunk;
        let neck = single(TRUNK[0], posture, rates);
        let chest = single(TRUNK[1], posture, rates);
        let waist = single(TRUNK[2], posture, rates);
        let arms = arms.sum();
        let sums = if neck.is_none() && chest.is_none() && waist.is_none() {
            arms.through(None, upper.joint_m + middle.joint_m) + self.straight_trunk
        } else {
            let head = head.own.through(neck.as_ref(), head.joint_m);
            let chest_up = (head + arms + upper.own).through(chest.as_ref(), upper.joint_m);
            (chest_up + middle.own).through(waist.as_ref(), middle.joint_m) + lower.own
        };
        let points_m = from_chest_m.map(|pair| {
            let [left, right] = pair.apart().map(|hand| {
                let from_waist = carried(hand, chest.as_ref(), upper.joint_m);
                DVec3::from(carried(from_waist, waist.as_ref(), middle.joint_m))
            });
            Vec3::pair(left, right)
        });
        HalfBody { sums, points_m }
    }

    /// The legs, and the heels and the toes of the soles.
    #[cfg_attr(not(target_arch = "wasm32"), inline(always))]
    #[cfg_attr(target_arch = "wasm32", inline(never))]
    pub fn lower(&self, posture: &Posture, rates: &JointRates) -> HalfBody<2> {
        let (legs, points_m) = self.legs.gathered(posture, rates, self.soles_m);
        HalfBody {
            sums: legs.sum(),
            points_m,
        }
    }
}

impl Limb {
    /// The limb as its parent sees it, and points of its last segment as the parent sees them.
    #[inline(always)]
    fn gathered<const N: usize>(
        &self,
        posture: &Posture,
        rates: &JointRates,
        points: [Vec3<f64x2>; N],
    ) -> (Composite<f64x2>, [Vec3<f64x2>; N]) {
        let [end, next, root] = &self.members;
        let at_end = both(self.segments[0], posture, rates);
        let at_next = both(self.segments[1], posture, rates);
        let at_root = both(self.segments[2], posture, rates);
        let to_next = match &at_end {
            Some(moving) => end.own.through(Some(moving), end.joint_m) + next.own,
            None => self.straight_end,
        };
        let to_root = to_next.through(at_next.as_ref(), next.joint_m) + root.own;
        let points = points.map(|point| {
            let point = carried(point, at_end.as_ref(), end.joint_m);
            let point = carried(point, at_next.as_ref(), next.joint_m);
            carried(point, at_root.as_ref(), root.joint_m)
        });
        (to_root.through(at_root.as_ref(), root.joint_m), points)
    }
}

#[inline(always)]
fn carried<T: crate::math::simd::Real>(
    point: Vec3<T>,
    moving: Option<&JointRotation<T>>,
    joint_m: Vec3<T>,
) -> Vec3<T> {
    match moving {
        Some(joint) => joint.rotation.vector(point) + joint_m,
        None => point + joint_m,
    }
}

/// A joint of the trunk, if it is not straight and still.
#[inline(always)]
fn single(segment: Segment, posture: &Posture, rates: &JointRates) -> Option<JointRotation<f64>> {
    posture.moves(segment, rates).then(|| JointRotation {
        rotation: RotationMatrix::from(posture[segment]),
        rate_rad_s: rates[segment as usize].into(),
    })
}

/// The same joint of both sides, if it is not straight and still on both.
#[inline(always)]
fn both(
    [left, right]: [Segment; 2],
    posture: &Posture,
    rates: &JointRates,
) -> Option<JointRotation<f64x2>> {
    (posture.moves(left, rates) || posture.moves(right, rates)).then(|| JointRotation {
        rotation: RotationMatrix::pair(posture[left], posture[right]),
        rate_rad_s: Vec3::pair(rates[left as usize], rates[right as usize]),
    })
}

fn member(link: &Link) -> TreeLink<f64> {
    let second = link.inertia_kg_m2 + point_inertia(link.mass_kg, link.cm_m);
    TreeLink {
        own: Composite {
            mass_kg: link.mass_kg,
            first_kg_m: (link.cm_m * link.mass_kg).into(),
            second_kg_m2: second.into(),
            ..Composite::default()
        },
        joint_m: link.joint_m.into(),
    }
}

fn pair(left: &Link, right: &Link) -> TreeLink<f64x2> {
    let (left, right) = (member(left), member(right));
    TreeLink {
        own: Composite::pair(&left.own, &right.own),
        joint_m: Vec3::pair(left.joint_m.into(), right.joint_m.into()),
    }
}
