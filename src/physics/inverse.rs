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

use super::body::Segment;
use super::composite::Composite;
use super::lanes::{Real, Sym3, Turn, Vec3, sum};
use super::posture::{JointAccelerations, JointRates, Posture, STILL};
use super::tree::{ARMS, LEGS, Limb, TRUNK, Tree};

/// How the joints stand, move and change their motion at one instant.
#[derive(Debug, Clone, Copy)]
pub struct JointMotion {
    pub moving: (Posture, JointRates),
    pub accelerations: JointAccelerations,
}

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
    pub(super) arms: [JointLoad<f64x2>; 3],
    /// Ankle, knee and hip.
    pub(super) legs: [JointLoad<f64x2>; 3],
    /// Neck, chest and waist.
    pub(super) trunk: [JointLoad<f64>; 3],
    /// Acceleration of what is held, pelvis axes, relative to free fall, m/s².
    pub(super) grip_m_s2: Vec3<f64x2>,
    /// Angular acceleration of the pelvis, pelvis axes, rad/s².
    pub pelvis_rad_s2: DVec3,
    /// Acceleration of the pelvis's origin relative to free fall, pelvis axes, m/s².
    pub pelvis_m_s2: DVec3,
}

/// A joint that is not straight and still.
struct Joint<T> {
    turn: Turn<T>,
    rate_rad_s: Vec3<T>,
    change_rad_s2: Vec3<T>,
}

/// A segment on its way, in pelvis axes; its accelerations as if the pelvis had none.
#[derive(Clone, Copy)]
struct Placed<T> {
    /// Segment axes to pelvis axes; none where they are the same.
    turn: Option<Turn<T>>,
    rate_rad_s: Vec3<T>,
    change_rad_s2: Vec3<T>,
    /// Joint towards the pelvis.
    joint_m: Vec3<T>,
    joint_m_s2: Vec3<T>,
    /// Rate against the parent.
    joint_rad_s: Vec3<T>,
}

/// Masses that are carried together, seen from the pelvis's origin, pelvis axes.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Masses<T> {
    mass_kg: T,
    first_kg_m: Vec3<T>,
    second_kg_m2: Sym3<T>,
}

/// What is beyond a joint, and the force and the moment about the pelvis's origin that its motion
/// takes.
#[derive(Clone, Copy, Default)]
struct Burden<T> {
    masses: Masses<T>,
    force_n: Vec3<T>,
    moment_n_m: Vec3<T>,
}

/// A joint and what is beyond it.
#[derive(Clone, Copy, Default)]
struct Borne<T> {
    joint_m: Vec3<T>,
    /// Rate of the joint, pelvis axes.
    joint_rad_s: Vec3<T>,
    beyond: Burden<T>,
}

/// All joints at one instant, as if the pelvis had no acceleration; the order is that of [`Loads`].
#[derive(Clone, Copy)]
pub(super) struct Frame {
    arms: [Borne<f64x2>; 3],
    legs: [Borne<f64x2>; 3],
    trunk: [Borne<f64>; 3],
    whole: Burden<f64>,
    grip_m: Vec3<f64x2>,
    grip_m_s2: Vec3<f64x2>,
}

/// A trunk that is straight and still: what is beyond neck, chest and waist, the arms left out, and
/// all of it; and where these joints are.
#[derive(Debug, Clone)]
pub(super) struct StraightTrunk {
    masses: [Masses<f64>; 4],
    joints_m: [Vec3<f64>; 3],
}

impl StraightTrunk {
    /// Of head, upper, middle and lower trunk, each with the place of its joint in its parent.
    pub fn new(members: [(&Composite<f64>, Vec3<f64>); 4]) -> Self {
        let [head, chest, waist, lower] = members;
        let waist_m = waist.1;
        let chest_m = waist_m + chest.1;
        let head_m = chest_m + head.1;
        let head = Masses::at(head_m, head.0);
        let chest = head + Masses::at(chest_m, chest.0);
        let waist = chest + Masses::at(waist_m, waist.0);
        let all = waist + Masses::at(Vec3::default(), lower.0);
        Self {
            masses: [head, chest, waist, all],
            joints_m: [head_m, chest_m, waist_m],
        }
    }
}

impl Frame {
    /// Of a body that moves its joints so while its pelvis turns at `rate_rad_s` (pelvis axes).
    #[inline(never)]
    pub fn new(tree: &Tree, motion: &JointMotion, rate_rad_s: DVec3) -> Self {
        let rate = rate_rad_s.into();
        let pelvis = Placed::root(rate);
        let joints = [TRUNK[0], TRUNK[1], TRUNK[2]].map(|segment| single(segment, motion));
        let (legs, _) = limb(&tree.legs, &pelvis.on_both_sides(), motion);
        let beyond_legs = legs[2].beyond.sum();
        if let [None, None, None] = joints {
            let trunk = &tree.still_trunk;
            let chest_on = pelvis.carrying(trunk.joints_m[1], None);
            let (arms, end_on) = limb(&tree.arms, &chest_on.on_both_sides(), motion);
            let beyond_arms = arms[2].beyond.sum();
            let [head, chest, waist, all] = trunk.masses.map(|masses| masses.turning(rate));
            let still = |i: usize, beyond| Borne {
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
        let waist_on = pelvis.carrying(waist.joint_m, joints[2].as_ref());
        let chest_on = waist_on.carrying(chest.joint_m, joints[1].as_ref());
        let head_on = chest_on.carrying(head.joint_m, joints[0].as_ref());
        let (arms, end_on) = limb(&tree.arms, &chest_on.on_both_sides(), motion);
        let head = head_on.burden(&head.own);
        let chest = head + chest_on.burden(&chest.own) + arms[2].beyond.sum();
        let waist = chest + waist_on.burden(&waist.own);
        let whole = waist + pelvis.burden(&lower.own) + beyond_legs;
        let trunk = [
            head_on.bearing(head),
            chest_on.bearing(chest),
            waist_on.bearing(waist),
        ];
        Self::of(tree, arms, legs, trunk, whole, &end_on)
    }

    #[inline(always)]
    fn of(
        tree: &Tree,
        arms: [Borne<f64x2>; 3],
        legs: [Borne<f64x2>; 3],
        trunk: [Borne<f64>; 3],
        whole: Burden<f64>,
        hands_on: &Placed<f64x2>,
    ) -> Self {
        let grip = hands_on.carrying(tree.grip_m, None);
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
            whole: self.whole.masses.turning(rate),
            grip_m: self.grip_m,
            grip_m_s2: both.cross(both.cross(self.grip_m)),
        }
    }

    /// In free flight.
    #[inline(never)]
    pub fn loads(&self) -> Loads {
        let root = self.whole.let_go();
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
    pub fn new(tree: &Tree, motion: &JointMotion, rate_rad_s: DVec3) -> Self {
        Frame::new(tree, motion, rate_rad_s).loads()
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
    parent: &Placed<f64x2>,
    motion: &JointMotion,
) -> ([Borne<f64x2>; 3], Placed<f64x2>) {
    let mut on = *parent;
    let mut joints = [Borne::<f64x2>::default(); 3];
    for i in (0..3).rev() {
        let member = &limb.members[i];
        on.go_on(member.joint_m, both(limb.segments[i], motion).as_ref());
        joints[i] = on.bearing(on.burden(&member.own));
    }
    joints[1].beyond = joints[1].beyond + joints[0].beyond;
    joints[2].beyond = joints[2].beyond + joints[1].beyond;
    (joints, on)
}

impl<T: Real> Placed<T> {
    fn root(rate_rad_s: Vec3<T>) -> Self {
        Self {
            turn: None,
            rate_rad_s,
            change_rad_s2: Vec3::default(),
            joint_m: Vec3::default(),
            joint_m_s2: Vec3::default(),
            joint_rad_s: Vec3::default(),
        }
    }

    /// The segment beyond a joint at `joint_m`.
    #[inline(always)]
    fn carrying(&self, joint_m: Vec3<T>, joint: Option<&Joint<T>>) -> Self {
        let mut next = *self;
        next.go_on(joint_m, joint);
        next
    }

    /// On to the segment beyond a joint at `joint_m`.
    #[inline(always)]
    fn go_on(&mut self, joint_m: Vec3<T>, joint: Option<&Joint<T>>) {
        let arm = match &self.turn {
            Some(turn) => turn.vector(joint_m),
            None => joint_m,
        };
        let whirl = self.rate_rad_s.cross(self.rate_rad_s.cross(arm));
        self.joint_m = self.joint_m + arm;
        self.joint_m_s2 = self.joint_m_s2 + self.change_rad_s2.cross(arm) + whirl;
        self.joint_rad_s = Vec3::default();
        let Some(joint) = joint else {
            return;
        };
        let turn = match &self.turn {
            Some(turn) => turn.after(&joint.turn),
            None => joint.turn,
        };
        self.joint_rad_s = turn.vector(joint.rate_rad_s);
        self.change_rad_s2 = self.change_rad_s2
            + self.rate_rad_s.cross(self.joint_rad_s)
            + turn.vector(joint.change_rad_s2);
        self.rate_rad_s = self.rate_rad_s + self.joint_rad_s;
        self.turn = Some(turn);
    }

    #[inline(always)]
    fn burden(&self, own: &Composite<T>) -> Burden<T> {
        let (first, second) = match &self.turn {
            Some(turn) => (turn.vector(own.first_kg_m), turn.tensor(own.second_kg_m2)),
            None => (own.first_kg_m, own.second_kg_m2),
        };
        let (rate, change) = (self.rate_rad_s, self.change_rad_s2);
        let force_n =
            self.joint_m_s2 * own.mass_kg + change.cross(first) + rate.cross(rate.cross(first));
        let moment_n_m =
            first.cross(self.joint_m_s2) + second.times(change) + rate.cross(second.times(rate));
        let first_kg_m = first + self.joint_m * own.mass_kg;
        Burden {
            masses: Masses {
                mass_kg: own.mass_kg,
                first_kg_m,
                second_kg_m2: second.moved(self.joint_m, first + first_kg_m),
            },
            force_n,
            moment_n_m: moment_n_m + self.joint_m.cross(force_n),
        }
    }

    #[inline(always)]
    fn bearing(&self, beyond: Burden<T>) -> Borne<T> {
        Borne {
            joint_m: self.joint_m,
            joint_rad_s: self.joint_rad_s,
            beyond,
        }
    }
}

impl<T: Real> Masses<T> {
    /// Of a segment whose axes are the pelvis's.
    fn at(joint_m: Vec3<T>, own: &Composite<T>) -> Self {
        let first_kg_m = own.first_kg_m + joint_m * own.mass_kg;
        Self {
            mass_kg: own.mass_kg,
            first_kg_m,
            second_kg_m2: own.second_kg_m2.moved(joint_m, own.first_kg_m + first_kg_m),
        }
    }

    /// Turning with the pelvis, and not moving against it.
    #[inline(always)]
    fn turning(self, rate_rad_s: Vec3<T>) -> Burden<T> {
        Burden {
            masses: self,
            force_n: rate_rad_s.cross(rate_rad_s.cross(self.first_kg_m)),
            moment_n_m: rate_rad_s.cross(self.second_kg_m2.times(rate_rad_s)),
        }
    }
}

impl<T: Real> Borne<T> {
    #[inline(always)]
    fn held(&self, rate_rad_s: Vec3<T>) -> Self {
        Self {
            joint_m: self.joint_m,
            joint_rad_s: Vec3::default(),
            beyond: self.beyond.masses.turning(rate_rad_s),
        }
    }
}

impl Placed<f64> {
    fn on_both_sides(&self) -> Placed<f64x2> {
        Placed {
            turn: self.turn.as_ref().map(Turn::both),
            rate_rad_s: Vec3::both(self.rate_rad_s),
            change_rad_s2: Vec3::both(self.change_rad_s2),
            joint_m: Vec3::both(self.joint_m),
            joint_m_s2: Vec3::both(self.joint_m_s2),
            joint_rad_s: Vec3::both(self.joint_rad_s),
        }
    }
}

/// How the pelvis accelerates.
#[derive(Clone, Copy)]
struct Root<T> {
    rad_s2: Vec3<T>,
    m_s2: Vec3<T>,
}

impl<T: Real> Root<T> {
    /// The load on a joint, with the pelvis's acceleration.
    #[inline(always)]
    fn load(&self, joint: &Borne<T>) -> JointLoad<T> {
        let Burden {
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

impl Root<f64> {
    fn on_both_sides(&self) -> Root<f64x2> {
        Root {
            rad_s2: Vec3::both(self.rad_s2),
            m_s2: Vec3::both(self.m_s2),
        }
    }
}

impl Burden<f64> {
    /// The acceleration of the pelvis with which the whole body takes no force and no moment.
    fn let_go(&self) -> Root<f64> {
        let Masses {
            mass_kg,
            first_kg_m: first,
            second_kg_m2: second,
        } = self.masses;
        let cm = first * (1.0 / mass_kg);
        let inertia = second.moved(cm, first * -1.0);
        let about_cm = self.moment_n_m - cm.cross(self.force_n);
        let rad_s2 = Vec3::from(DMat3::from(inertia).inverse() * -DVec3::from(about_cm));
        Root {
            rad_s2,
            m_s2: (self.force_n + rad_s2.cross(first)) * (-1.0 / mass_kg),
        }
    }
}

impl Burden<f64x2> {
    fn sum(&self) -> Burden<f64> {
        Burden {
            masses: Masses {
                mass_kg: sum(self.masses.mass_kg),
                first_kg_m: self.masses.first_kg_m.sum(),
                second_kg_m2: self.masses.second_kg_m2.sum(),
            },
            force_n: self.force_n.sum(),
            moment_n_m: self.moment_n_m.sum(),
        }
    }
}

impl<T: Real> Add for Masses<T> {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self {
            mass_kg: self.mass_kg + other.mass_kg,
            first_kg_m: self.first_kg_m + other.first_kg_m,
            second_kg_m2: self.second_kg_m2 + other.second_kg_m2,
        }
    }
}

impl<T: Real> Add for Burden<T> {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self {
            masses: self.masses + other.masses,
            force_n: self.force_n + other.force_n,
            moment_n_m: self.moment_n_m + other.moment_n_m,
        }
    }
}

impl JointMotion {
    /// Whether no joint moves nor begins to.
    pub fn is_still(&self) -> bool {
        self.moving.1 == STILL && self.accelerations == STILL
    }

    /// Whether a segment's joint is anything but straight and still.
    fn moves(&self, segment: Segment) -> bool {
        self.moving.0.moves(segment, &self.moving.1)
            || self.accelerations[segment as usize] != DVec3::ZERO
    }
}

/// A joint of the trunk, if it is not straight and still.
fn single(segment: Segment, motion: &JointMotion) -> Option<Joint<f64>> {
    motion.moves(segment).then(|| Joint {
        turn: Turn::from(motion.moving.0[segment]),
        rate_rad_s: motion.moving.1[segment as usize].into(),
        change_rad_s2: motion.accelerations[segment as usize].into(),
    })
}

/// The same joint of both sides, if it is not straight and still on both.
#[inline(always)]
fn both([left, right]: [Segment; 2], motion: &JointMotion) -> Option<Joint<f64x2>> {
    let pair = |of: &JointRates| Vec3::pair(of[left as usize], of[right as usize]);
    (motion.moves(left) || motion.moves(right)).then(|| Joint {
        turn: Turn::pair(motion.moving.0[left], motion.moving.0[right]),
        rate_rad_s: pair(&motion.moving.1),
        change_rad_s2: pair(&motion.accelerations),
    })
}
