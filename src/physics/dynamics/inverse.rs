//! Which forces and torques a motion in free flight takes at the joints: inverse dynamics.
//!
//! Newton and Euler's laws for every segment, summed from the limbs' ends inwards (Luh, Walker & Paul
//! 1980, J Dyn Syst Meas Control 102:69), all seen from the pelvis's origin in pelvis axes
//! (Featherstone 2008, Rigid Body Dynamics Algorithms, ch. 5 and 9: a floating base). Nothing holds
//! the pelvis, so its own acceleration is the one with which no force and no moment is left over
//! there. Accelerations are relative to free fall: gravity pulls at every part alike and takes no
//! force between them.

use std::ops::Add;

use glam::{DMat3, DVec3};
use wide::f64x2;

use crate::body::model::Segment;
use crate::body::posture::{JointRates, Posture};
use crate::dynamics::composite::Composite;
use crate::dynamics::subtree_mass::SubtreeMass;
use crate::dynamics::tree::{ARMS, LEGS, Limb, TRUNK, Tree};
use crate::math::simd::{Real, RotationMatrix, Vec3, sum};
use crate::motion::joint_motion::JointState;

/// What the segment on the pelvis's side of a joint does to the one beyond it: net force through the
/// joint (N) and net torque about it (N m), pelvis axes, and the power of that torque (W).
#[derive(Debug, Clone, Copy, Default)]
pub struct JointLoad<T> {
    pub force_n: Vec3<T>,
    pub torque_n_m: Vec3<T>,
    pub power_w: T,
}

/// The loads on all joints at one instant, the left and the right side together.
///
/// The net torque of a joint is what muscles, ligaments and bone give together.
#[derive(Debug, Clone, Copy)]
pub struct Loads {
    /// Wrist, elbow and shoulder.
    pub(crate) arms: [JointLoad<f64x2>; 3],
    /// Ankle, knee and hip.
    pub(crate) legs: [JointLoad<f64x2>; 3],
    /// Neck, chest and waist.
    pub(crate) trunk: [JointLoad<f64>; 3],
    /// Acceleration of what is held, pelvis axes, relative to free fall, m/s².
    pub(crate) grip_m_s2: Vec3<f64x2>,
    /// Angular acceleration of the pelvis, pelvis axes, rad/s².
    pub pelvis_rad_s2: DVec3,
    /// Acceleration of the pelvis's origin relative to free fall, pelvis axes, m/s².
    pub pelvis_m_s2: DVec3,
}

/// A joint that is not straight and still.
struct Joint<T> {
    rotation: RotationMatrix<T>,
    rate_rad_s: Vec3<T>,
    acceleration_rad_s2: Vec3<T>,
}

/// Motion of a segment in pelvis axes, without the acceleration of the pelvis.
#[derive(Clone, Copy)]
struct SegmentMotion<T> {
    /// Segment axes to pelvis axes; none where they are the same.
    rotation: Option<RotationMatrix<T>>,
    rate_rad_s: Vec3<T>,
    acceleration_rad_s2: Vec3<T>,
    /// Joint towards the pelvis.
    joint_m: Vec3<T>,
    joint_m_s2: Vec3<T>,
    /// Rate against the parent.
    joint_rad_s: Vec3<T>,
}

/// What is beyond a joint, and the force and the moment about the pelvis's origin that its motion
/// takes.
#[derive(Clone, Copy, Default)]
struct SubtreeForces<T> {
    masses: SubtreeMass<T>,
    force_n: Vec3<T>,
    moment_n_m: Vec3<T>,
}

/// A joint and what is beyond it.
#[derive(Clone, Copy, Default)]
struct JointSubtree<T> {
    joint_m: Vec3<T>,
    /// Rate of the joint, pelvis axes.
    joint_rad_s: Vec3<T>,
    beyond: SubtreeForces<T>,
}

/// All joints at one instant, as if the pelvis had no acceleration; the order is that of [`Loads`].
#[derive(Clone, Copy)]
pub(crate) struct NewtonEuler {
    arms: [JointSubtree<f64x2>; 3],
    legs: [JointSubtree<f64x2>; 3],
    trunk: [JointSubtree<f64>; 3],
    whole: SubtreeForces<f64>,
    grip_m: Vec3<f64x2>,
    grip_m_s2: Vec3<f64x2>,
}

impl NewtonEuler {
    /// Of a body that moves its joints so while its pelvis turns at `rate_rad_s` (pelvis axes).
    #[inline(never)]
    pub fn new(tree: &Tree, motion: &JointState, rate_rad_s: DVec3) -> Self {
        let rate = rate_rad_s.into();
        let pelvis = SegmentMotion::root(rate);
        let joints = [TRUNK[0], TRUNK[1], TRUNK[2]].map(|segment| single(segment, motion));
        let (legs, _) = limb(&tree.legs, &pelvis.on_both_sides(), motion);
        let beyond_legs = legs[2].beyond.sum();
        if let [None, None, None] = joints {
            let trunk = &tree.still_trunk;
            let chest_on = pelvis.child(trunk.joints_m[1], None);
            let (arms, end_on) = limb(&tree.arms, &chest_on.on_both_sides(), motion);
            let beyond_arms = arms[2].beyond.sum();
            let [head, chest, waist, all] = trunk.masses.map(|masses| masses.rotating(rate));
            let still = |i: usize, beyond| JointSubtree {
                joint_m: trunk.joints_m[i],
                joint_rad_s: Vec3::default(),
                beyond,
            };
            let trunk = [
                still(0, head),
                still(1, chest + beyond_arms),
                still(2, waist + beyond_arms),
            ];
            let whole = all + beyond_arms + beyond_legs;
            return Self::of(tree, arms, legs, trunk, whole, &end_on);
        }
        let [head, chest, waist, lower] = &tree.trunk;
        let waist_on = pelvis.child(waist.joint_m, joints[2].as_ref());
        let chest_on = waist_on.child(chest.joint_m, joints[1].as_ref());
        let head_on = chest_on.child(head.joint_m, joints[0].as_ref());
        let (arms, end_on) = limb(&tree.arms, &chest_on.on_both_sides(), motion);
        let head = head_on.own_forces(&head.own);
        let chest = head + chest_on.own_forces(&chest.own) + arms[2].beyond.sum();
        let waist = chest + waist_on.own_forces(&waist.own);
        let whole = waist + pelvis.own_forces(&lower.own) + beyond_legs;
        let trunk = [
            head_on.with_subtree(head),
            chest_on.with_subtree(chest),
            waist_on.with_subtree(waist),
        ];
        Self::of(tree, arms, legs, trunk, whole, &end_on)
    }

    #[inline(always)]
    fn of(
        tree: &Tree,
        arms: [JointSubtree<f64x2>; 3],
        legs: [JointSubtree<f64x2>; 3],
        trunk: [JointSubtree<f64>; 3],
        whole: SubtreeForces<f64>,
        hands_on: &SegmentMotion<f64x2>,
    ) -> Self {
        let grip = hands_on.child(tree.grip_m, None);
        Self {
            arms,
            legs,
            trunk,
            whole,
            grip_m: grip.joint_m,
            grip_m_s2: grip.joint_m_s2,
        }
    }

    /// The same posture, but held, with the pelvis turning at another rate.
    #[inline(never)]
    pub fn held(&self, rate_rad_s: DVec3) -> Self {
        let rate = Vec3::from(rate_rad_s);
        let both = Vec3::both(rate);
        Self {
            arms: self.arms.map(|joint| joint.held(both)),
            legs: self.legs.map(|joint| joint.held(both)),
            trunk: self.trunk.map(|joint| joint.held(rate)),
            whole: self.whole.masses.rotating(rate),
            grip_m: self.grip_m,
            grip_m_s2: both.cross(both.cross(self.grip_m)),
        }
    }

    /// In free flight.
    #[inline(never)]
    pub fn loads(&self) -> Loads {
        let root = self.whole.free_base();
        let both = root.on_both_sides();
        let ([hand, forearm, upper_arm], [foot, shank, thigh]) = (&self.arms, &self.legs);
        let [head, chest, waist] = &self.trunk;
        Loads {
            arms: [both.load(hand), both.load(forearm), both.load(upper_arm)],
            legs: [both.load(foot), both.load(shank), both.load(thigh)],
            trunk: [root.load(head), root.load(chest), root.load(waist)],
            grip_m_s2: self.grip_m_s2 + both.m_s2 + both.rad_s2.cross(self.grip_m),
            pelvis_rad_s2: root.rad_s2.into(),
            pelvis_m_s2: root.m_s2.into(),
        }
    }
}

impl Loads {
    /// Of a body that moves its joints so while its pelvis turns at `rate_rad_s` (pelvis axes) in free
    /// flight.
    pub fn new(tree: &Tree, motion: &JointState, rate_rad_s: DVec3) -> Self {
        NewtonEuler::new(tree, motion, rate_rad_s).loads()
    }

    /// The load on a segment's joint towards the pelvis, whose own is none.
    pub fn on(&self, segment: Segment) -> JointLoad<f64> {
        for (limb, loads) in [(ARMS, &self.arms), (LEGS, &self.legs)] {
            for (pair, load) in limb.iter().zip(loads) {
                if let Some(side) = pair.iter().position(|&own| own == segment) {
                    return load.side(side);
                }
            }
        }
        let trunk = TRUNK.iter().zip(&self.trunk);
        trunk
            .into_iter()
            .find(|(own, _)| **own == segment)
            .map_or_else(JointLoad::default, |(_, load)| *load)
    }

    /// The net torque about a segment's joint in the axes of the joint's parent segment, N m.
    pub fn torque_in_parent_n_m(&self, posture: &Posture, segment: Segment) -> DVec3 {
        let mut torque = DVec3::from(self.on(segment).torque_n_m);
        let mut chain = [Segment::LowerTrunk; 5];
        let (mut length, mut parent) = (0, segment.parent());
        while let Some(own) = parent {
            (chain[length], length, parent) = (own, length + 1, own.parent());
        }
        for own in chain[..length].iter().rev() {
            torque = posture[*own].conjugate() * torque;
        }
        torque
    }

    /// The larger net torque about the joints of two segments, N m.
    pub fn largest_torque_n_m(&self, segments: [Segment; 2]) -> f64 {
        let size = |segment| DVec3::from(self.on(segment).torque_n_m).length();
        size(segments[0]).max(size(segments[1]))
    }

    /// Power of all joints together, W.
    pub fn power_w(&self) -> f64 {
        let limbs = self.arms.iter().chain(&self.legs);
        let [left, right] = limbs
            .fold(f64x2::ZERO, |sum, load| sum + load.power_w)
            .to_array();
        left + right + self.trunk.iter().map(|load| load.power_w).sum::<f64>()
    }

    /// Acceleration of what the left and the right hand hold, relative to free fall, m/s².
    pub fn grip_m_s2(&self) -> [f64; 2] {
        self.grip_m_s2.lengths()
    }

    /// Force of the left and the right forearm on its hand with what it holds, N.
    pub fn hand_n(&self) -> [f64; 2] {
        self.arms[0].force_n.lengths()
    }
}

impl JointLoad<f64x2> {
    fn side(&self, side: usize) -> JointLoad<f64> {
        JointLoad {
            force_n: self.force_n.apart()[side],
            torque_n_m: self.torque_n_m.apart()[side],
            power_w: self.power_w.to_array()[side],
        }
    }
}

/// The joints of a limb, end first, and where its last segment is.
///
/// In one copy, and segment by segment: more would not stay in the processor's nearest memory.
#[inline(never)]
fn limb(
    limb: &Limb,
    parent: &SegmentMotion<f64x2>,
    motion: &JointState,
) -> ([JointSubtree<f64x2>; 3], SegmentMotion<f64x2>) {
    let mut on = *parent;
    let mut joints = [JointSubtree::<f64x2>::default(); 3];
    for i in (0..3).rev() {
        let member = &limb.members[i];
        on.advance(member.joint_m, both(limb.segments[i], motion).as_ref());
        joints[i] = on.with_subtree(on.own_forces(&member.own));
    }
    joints[1].beyond = joints[1].beyond + joints[0].beyond;
    joints[2].beyond = joints[2].beyond + joints[1].beyond;
    (joints, on)
}

impl<T: Real> SegmentMotion<T> {
    fn root(rate_rad_s: Vec3<T>) -> Self {
        Self {
            rotation: None,
            rate_rad_s,
            acceleration_rad_s2: Vec3::default(),
            joint_m: Vec3::default(),
            joint_m_s2: Vec3::default(),
            joint_rad_s: Vec3::default(),
        }
    }

    /// The segment beyond a joint at `joint_m`.
    #[inline(always)]
    fn child(&self, joint_m: Vec3<T>, joint: Option<&Joint<T>>) -> Self {
        let mut next = *self;
        next.advance(joint_m, joint);
        next
    }

    /// On to the segment beyond a joint at `joint_m`.
    #[inline(always)]
    fn advance(&mut self, joint_m: Vec3<T>, joint: Option<&Joint<T>>) {
        let arm = match &self.rotation {
            Some(rotation) => rotation.vector(joint_m),
            None => joint_m,
        };
        let centripetal_m_s2 = self.rate_rad_s.cross(self.rate_rad_s.cross(arm));
        self.joint_m = self.joint_m + arm;
        self.joint_m_s2 = self.joint_m_s2 + self.acceleration_rad_s2.cross(arm) + centripetal_m_s2;
        self.joint_rad_s = Vec3::default();
        let Some(joint) = joint else {
            return;
        };
        let rotation = match &self.rotation {
            Some(rotation) => rotation.after(&joint.rotation),
            None => joint.rotation,
        };
        self.joint_rad_s = rotation.vector(joint.rate_rad_s);
        self.acceleration_rad_s2 = self.acceleration_rad_s2
            + self.rate_rad_s.cross(self.joint_rad_s)
            + rotation.vector(joint.acceleration_rad_s2);
        self.rate_rad_s = self.rate_rad_s + self.joint_rad_s;
        self.rotation = Some(rotation);
    }

    #[inline(always)]
    fn own_forces(&self, own: &Composite<T>) -> SubtreeForces<T> {
        let (first, second) = match &self.rotation {
            Some(rotation) => (
                rotation.vector(own.first_kg_m),
                rotation.tensor(own.second_kg_m2),
            ),
            None => (own.first_kg_m, own.second_kg_m2),
        };
        let (rate, acceleration) = (self.rate_rad_s, self.acceleration_rad_s2);
        let force_n = self.joint_m_s2 * own.mass_kg
            + acceleration.cross(first)
            + rate.cross(rate.cross(first));
        let moment_n_m = first.cross(self.joint_m_s2)
            + second.times(acceleration)
            + rate.cross(second.times(rate));
        let first_kg_m = first + self.joint_m * own.mass_kg;
        SubtreeForces {
            masses: SubtreeMass {
                mass_kg: own.mass_kg,
                first_kg_m,
                second_kg_m2: second.moved(self.joint_m, first + first_kg_m),
            },
            force_n,
            moment_n_m: moment_n_m + self.joint_m.cross(force_n),
        }
    }

    #[inline(always)]
    fn with_subtree(&self, beyond: SubtreeForces<T>) -> JointSubtree<T> {
        JointSubtree {
            joint_m: self.joint_m,
            joint_rad_s: self.joint_rad_s,
            beyond,
        }
    }
}

impl<T: Real> SubtreeMass<T> {
    /// Turning with the pelvis, and not moving against it.
    #[inline(always)]
    fn rotating(self, rate_rad_s: Vec3<T>) -> SubtreeForces<T> {
        SubtreeForces {
            masses: self,
            force_n: rate_rad_s.cross(rate_rad_s.cross(self.first_kg_m)),
            moment_n_m: rate_rad_s.cross(self.second_kg_m2.times(rate_rad_s)),
        }
    }
}

impl<T: Real> JointSubtree<T> {
    #[inline(always)]
    fn held(&self, rate_rad_s: Vec3<T>) -> Self {
        Self {
            joint_m: self.joint_m,
            joint_rad_s: Vec3::default(),
            beyond: self.beyond.masses.rotating(rate_rad_s),
        }
    }
}

impl SegmentMotion<f64> {
    fn on_both_sides(&self) -> SegmentMotion<f64x2> {
        SegmentMotion {
            rotation: self.rotation.as_ref().map(RotationMatrix::both),
            rate_rad_s: Vec3::both(self.rate_rad_s),
            acceleration_rad_s2: Vec3::both(self.acceleration_rad_s2),
            joint_m: Vec3::both(self.joint_m),
            joint_m_s2: Vec3::both(self.joint_m_s2),
            joint_rad_s: Vec3::both(self.joint_rad_s),
        }
    }
}

/// How the pelvis accelerates.
#[derive(Clone, Copy)]
struct PelvisAcceleration<T> {
    rad_s2: Vec3<T>,
    m_s2: Vec3<T>,
}

impl<T: Real> PelvisAcceleration<T> {
    /// The load on a joint, with the pelvis's acceleration.
    #[inline(always)]
    fn load(&self, joint: &JointSubtree<T>) -> JointLoad<T> {
        let SubtreeForces {
            masses,
            force_n,
            moment_n_m,
        } = &joint.beyond;
        let force_n = *force_n + self.m_s2 * masses.mass_kg + self.rad_s2.cross(masses.first_kg_m);
        let moment_n_m = *moment_n_m
            + masses.first_kg_m.cross(self.m_s2)
            + masses.second_kg_m2.times(self.rad_s2);
        let torque_n_m = moment_n_m - joint.joint_m.cross(force_n);
        JointLoad {
            force_n,
            torque_n_m,
            power_w: torque_n_m.dot(joint.joint_rad_s),
        }
    }
}

impl PelvisAcceleration<f64> {
    fn on_both_sides(&self) -> PelvisAcceleration<f64x2> {
        PelvisAcceleration {
            rad_s2: Vec3::both(self.rad_s2),
            m_s2: Vec3::both(self.m_s2),
        }
    }
}

impl SubtreeForces<f64> {
    /// The acceleration of the pelvis with which the whole body takes no force and no moment.
    fn free_base(&self) -> PelvisAcceleration<f64> {
        let SubtreeMass {
            mass_kg,
            first_kg_m: first,
            second_kg_m2: second,
        } = self.masses;
        let cm = first * (1.0 / mass_kg);
        let inertia = second.moved(cm, first * -1.0);
        let about_cm = self.moment_n_m - cm.cross(self.force_n);
        let rad_s2 = Vec3::from(DMat3::from(inertia).inverse() * -DVec3::from(about_cm));
        PelvisAcceleration {
            rad_s2,
            m_s2: (self.force_n + rad_s2.cross(first)) * (-1.0 / mass_kg),
        }
    }
}

impl SubtreeForces<f64x2> {
    fn sum(&self) -> SubtreeForces<f64> {
        SubtreeForces {
            masses: SubtreeMass {
                mass_kg: sum(self.masses.mass_kg),
                first_kg_m: self.masses.first_kg_m.sum(),
                second_kg_m2: self.masses.second_kg_m2.sum(),
            },
            force_n: self.force_n.sum(),
            moment_n_m: self.moment_n_m.sum(),
        }
    }
}

impl<T: Real> Add for SubtreeForces<T> {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self {
            masses: self.masses + other.masses,
            force_n: self.force_n + other.force_n,
            moment_n_m: self.moment_n_m + other.moment_n_m,
        }
    }
}

/// A joint of the trunk, if it is not straight and still.
fn single(segment: Segment, motion: &JointState) -> Option<Joint<f64>> {
    motion.moves(segment).then(|| Joint {
        rotation: RotationMatrix::from(motion.moving.0[segment]),
        rate_rad_s: motion.moving.1[segment as usize].into(),
        acceleration_rad_s2: motion.accelerations[segment as usize].into(),
    })
}

/// The same joint of both sides, if it is not straight and still on both.
#[inline(always)]
fn both([left, right]: [Segment; 2], motion: &JointState) -> Option<Joint<f64x2>> {
    let pair = |of: &JointRates| Vec3::pair(of[left as usize], of[right as usize]);
    (motion.moves(left) || motion.moves(right)).then(|| Joint {
        rotation: RotationMatrix::pair(motion.moving.0[left], motion.moving.0[right]),
        rate_rad_s: pair(&motion.moving.1),
        acceleration_rad_s2: pair(&motion.accelerations),
    })
}
