//! A body made ready for summing over postures: its links as the sums see them, the limbs of both
//! sides together.

use glam::DVec3;
use wide::f64x2;

use super::body::{Body, Link, Segment, point_inertia};
use super::composite::{Composite, Moving};
use super::lanes::{Turn, Vec3};
use super::posture::{JointRates, Posture};

/// A segment with all that it carries, seen from its joint, and where its parent has that joint.
#[derive(Debug, Clone, Copy)]
struct Member<T> {
    own: Composite<T>,
    joint_m: Vec3<T>,
}

/// Three segments from the limb's end inwards, each with the one on the right.
#[derive(Debug, Clone)]
struct Limb {
    segments: [[Segment; 2]; 3],
    members: [Member<f64x2>; 3],
}

#[derive(Debug, Clone)]
pub struct Tree {
    arms: Limb,
    legs: Limb,
    /// Head, upper, middle and lower trunk.
    trunk: [Member<f64>; 4],
    hand_m: Vec3<f64x2>,
    /// Heel and toe.
    soles_m: [Vec3<f64x2>; 2],
    hand_kg: f64,
}

/// Points of both sides that the flight looks at, pelvis axes, from the pelvis's origin.
pub struct Points {
    /// Mass centre of the hands with what they hold.
    pub hands_m: Vec3<f64x2>,
    /// Heels and toes of the soles.
    pub soles_m: [Vec3<f64x2>; 2],
}

const ARMS: [[Segment; 2]; 3] = [
    [Segment::LeftHand, Segment::RightHand],
    [Segment::LeftForearm, Segment::RightForearm],
    [Segment::LeftUpperArm, Segment::RightUpperArm],
];

const LEGS: [[Segment; 2]; 3] = [
    [Segment::LeftFoot, Segment::RightFoot],
    [Segment::LeftShank, Segment::RightShank],
    [Segment::LeftThigh, Segment::RightThigh],
];

const TRUNK: [Segment; 4] = [
    Segment::Head,
    Segment::UpperTrunk,
    Segment::MiddleTrunk,
    Segment::LowerTrunk,
];

impl Tree {
    pub fn new(body: &Body) -> Self {
        let limb = |segments: [[Segment; 2]; 3]| Limb {
            segments,
            members: segments.map(|[left, right]| pair(body.link(left), body.link(right))),
        };
        let both = |of: &dyn Fn(Segment) -> DVec3, [left, right]: [Segment; 2]| {
            Vec3::pair(of(left), of(right))
        };
        Self {
            arms: limb(ARMS),
            legs: limb(LEGS),
            trunk: TRUNK.map(|segment| member(body.link(segment))),
            hand_m: both(&|hand| body.link(hand).cm_m, ARMS[0]),
            soles_m: body.sole_m.map(|end| both(&|_| end, LEGS[0])),
            hand_kg: body.link(Segment::LeftHand).mass_kg,
        }
    }

    pub const fn hand_kg(&self) -> f64 {
        self.hand_kg
    }

    /// The whole body in a posture, seen from the pelvis, which is held still.
    pub fn gathered(&self, posture: &Posture, rates: &JointRates) -> (Composite<f64>, Points) {
        let (arms, [hands]) = self.arms.gathered(posture, rates, [self.hand_m]);
        let (legs, soles_m) = self.legs.gathered(posture, rates, self.soles_m);
        let [head, upper, middle, lower] = &self.trunk;
        let [neck, chest, waist] =
            [TRUNK[0], TRUNK[1], TRUNK[2]].map(|segment| single(segment, posture, rates));
        let arms = arms.sum();
        let head = head.own.through(neck.as_ref(), head.joint_m);
        let chest_up = (head + arms + upper.own).through(chest.as_ref(), upper.joint_m);
        let waist_up = (chest_up + middle.own).through(waist.as_ref(), middle.joint_m);
        let [left, right] = hands.apart().map(|hand| {
            let from_waist = carried(hand, chest.as_ref(), upper.joint_m);
            DVec3::from(carried(from_waist, waist.as_ref(), middle.joint_m))
        });
        let points = Points {
            hands_m: Vec3::pair(left, right),
            soles_m,
        };
        (waist_up + legs.sum() + lower.own, points)
    }
}

impl Limb {
    /// The limb as its parent sees it, and points of its last segment as the parent sees them.
    fn gathered<const N: usize>(
        &self,
        posture: &Posture,
        rates: &JointRates,
        points: [Vec3<f64x2>; N],
    ) -> (Composite<f64x2>, [Vec3<f64x2>; N]) {
        let mut sum = Composite::default();
        let mut points = points;
        for (member, segments) in self.members.iter().zip(self.segments) {
            let moving = both(segments, posture, rates);
            sum = (sum + member.own).through(moving.as_ref(), member.joint_m);
            points = points.map(|point| carried(point, moving.as_ref(), member.joint_m));
        }
        (sum, points)
    }
}

fn carried<T: super::lanes::Real>(
    point: Vec3<T>,
    moving: Option<&Moving<T>>,
    joint_m: Vec3<T>,
) -> Vec3<T> {
    match moving {
        Some(joint) => joint.turn.vector(point) + joint_m,
        None => point + joint_m,
    }
}

/// A joint of the trunk, if it is not straight and still.
fn single(segment: Segment, posture: &Posture, rates: &JointRates) -> Option<Moving<f64>> {
    posture.moves(segment, rates).then(|| Moving {
        turn: Turn::from(posture[segment]),
        rate_rad_s: rates[segment as usize].into(),
    })
}

/// The same joint of both sides, if it is not straight and still on both.
fn both(
    [left, right]: [Segment; 2],
    posture: &Posture,
    rates: &JointRates,
) -> Option<Moving<f64x2>> {
    (posture.moves(left, rates) || posture.moves(right, rates)).then(|| Moving {
        turn: Turn::pair(posture[left], posture[right]),
        rate_rad_s: Vec3::pair(rates[left as usize], rates[right as usize]),
    })
}

fn member(link: &Link) -> Member<f64> {
    let second = link.inertia_kg_m2 + point_inertia(link.mass_kg, link.cm_m);
    Member {
        own: Composite {
            mass_kg: link.mass_kg,
            first_kg_m: (link.cm_m * link.mass_kg).into(),
            second_kg_m2: second.into(),
            ..Composite::default()
        },
        joint_m: link.joint_m.into(),
    }
}

fn pair(left: &Link, right: &Link) -> Member<f64x2> {
    let (left, right) = (member(left), member(right));
    Member {
        own: Composite::pair(&left.own, &right.own),
        joint_m: Vec3::pair(left.joint_m.into(), right.joint_m.into()),
    }
}
