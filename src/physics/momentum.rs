//! Inertia, joint-motion momentum and shape of a body in a posture, about the CM in pelvis axes.

use glam::{DMat3, DQuat, DVec3};

use super::body::{Body, SEGMENTS, Segment, point_inertia};
use super::posture::Posture;

/// Rate of every joint, rad/s: the segment's rotation against its parent, in the segment's axes.
pub type JointRates = [DVec3; SEGMENTS];

/// No joint moves.
pub const STILL: JointRates = [DVec3::ZERO; SEGMENTS];

/// Where each segment is while the pelvis is held still at the origin.
#[derive(Debug, Clone, Copy)]
pub struct Shape {
    /// Joint towards the pelvis, pelvis frame, m.
    pub joint_m: [DVec3; SEGMENTS],
    /// Segment axes to pelvis axes.
    pub rotation: [DQuat; SEGMENTS],
    /// Velocity of that joint, pelvis frame, m/s.
    pub velocity_m_s: [DVec3; SEGMENTS],
    /// Angular velocity of the segment, pelvis frame, rad/s.
    pub rate_rad_s: [DVec3; SEGMENTS],
}

impl Shape {
    /// Forward kinematics from the pelvis outwards.
    pub fn new(body: &Body, posture: &Posture, rates: &JointRates) -> Self {
        let mut shape = Self {
            joint_m: [DVec3::ZERO; SEGMENTS],
            rotation: [DQuat::IDENTITY; SEGMENTS],
            velocity_m_s: [DVec3::ZERO; SEGMENTS],
            rate_rad_s: [DVec3::ZERO; SEGMENTS],
        };
        for segment in Segment::ALL {
            let i = segment as usize;
            let Some(parent) = body.links[i].parent else {
                continue;
            };
            let p = parent as usize;
            let arm = shape.rotation[p] * body.links[i].joint_m;
            shape.joint_m[i] = shape.joint_m[p] + arm;
            shape.velocity_m_s[i] = shape.velocity_m_s[p] + shape.rate_rad_s[p].cross(arm);
            shape.rotation[i] = shape.rotation[p] * posture.joints[i];
            shape.rate_rad_s[i] = shape.rate_rad_s[p] + shape.rotation[i] * rates[i];
        }
        shape
    }

    /// A point fixed to a segment: position (m) and velocity (m/s) in the pelvis frame.
    pub fn point(&self, segment: Segment, own_m: DVec3) -> (DVec3, DVec3) {
        let i = segment as usize;
        let arm = self.rotation[i] * own_m;
        (
            self.joint_m[i] + arm,
            self.velocity_m_s[i] + self.rate_rad_s[i].cross(arm),
        )
    }
}

/// What the flight needs to know of a moving posture. About the CM, in pelvis axes.
#[derive(Debug, Clone, Copy)]
pub struct MassState {
    /// Inertia tensor I(q), kg m².
    pub inertia_kg_m2: DMat3,
    /// Its inverse.
    pub inverse: DMat3,
    /// Angular momentum k(q, q') of the joint motion alone (pelvis held), kg m²/s.
    pub joint_momentum_kg_m2_s: DVec3,
    /// Kinetic energy of the joint motion alone, relative to the CM, J.
    pub joint_energy_j: f64,
    /// CM as seen from the pelvis's origin (mid-hip), m.
    pub cm_m: DVec3,
    /// Its velocity while the pelvis is held, m/s.
    pub cm_velocity_m_s: DVec3,
    /// Heel and toe of the left, then of the right sole, from the CM, m.
    pub soles_m: [DVec3; 4],
    /// Mass centre of the left and the right hand with what it holds, from the CM, m.
    pub hands_m: [DVec3; 2],
    /// Mass of one hand with what it holds, kg.
    pub hand_kg: f64,
}

impl MassState {
    pub fn new(body: &Body, posture: &Posture, rates: &JointRates) -> Self {
        let shape = Shape::new(body, posture, rates);
        let mut inertia = DMat3::ZERO;
        let mut momentum = DVec3::ZERO;
        let mut energy = 0.0;
        let mut first_moment = DVec3::ZERO;
        let mut linear = DVec3::ZERO;
        for (i, segment) in Segment::ALL.into_iter().enumerate() {
            let link = &body.links[i];
            let (c, v) = shape.point(segment, link.cm_m);
            let rotation = DMat3::from_quat(shape.rotation[i]);
            let own = rotation * link.inertia_kg_m2 * rotation.transpose();
            let spin = own * shape.rate_rad_s[i];
            inertia += own + point_inertia(link.mass_kg, c);
            momentum += spin + c.cross(v) * link.mass_kg;
            energy += 0.5 * (spin.dot(shape.rate_rad_s[i]) + link.mass_kg * v.length_squared());
            first_moment += c * link.mass_kg;
            linear += v * link.mass_kg;
        }
        let cm_m = first_moment / body.mass_kg;
        let cm_velocity_m_s = linear / body.mass_kg;
        let inertia_kg_m2 = inertia - point_inertia(body.mass_kg, cm_m);
        let place = |segment, own| shape.point(segment, own).0 - cm_m;
        let [heel, toe] = body.sole_m;
        let hand = |segment| place(segment, body.link(segment).cm_m);
        Self {
            inertia_kg_m2,
            inverse: inertia_kg_m2.inverse(),
            joint_momentum_kg_m2_s: momentum - cm_m.cross(linear),
            joint_energy_j: energy - 0.5 * linear.dot(cm_velocity_m_s),
            cm_m,
            cm_velocity_m_s,
            soles_m: [
                place(Segment::LeftFoot, heel),
                place(Segment::LeftFoot, toe),
                place(Segment::RightFoot, heel),
                place(Segment::RightFoot, toe),
            ],
            hands_m: [hand(Segment::LeftHand), hand(Segment::RightHand)],
            hand_kg: body.link(Segment::LeftHand).mass_kg,
        }
    }

    /// Body-axes rate of the pelvis for angular momentum `h` (body axes): I⁻¹ (h - k), rad/s.
    pub fn rate_rad_s(&self, h_body: DVec3) -> DVec3 {
        self.inverse * (h_body - self.joint_momentum_kg_m2_s)
    }

    /// Kinetic energy relative to the CM for a pelvis that turns at `rate` (body axes), J.
    pub fn energy_j(&self, rate_rad_s: DVec3) -> f64 {
        0.5 * rate_rad_s.dot(self.inertia_kg_m2 * rate_rad_s)
            + rate_rad_s.dot(self.joint_momentum_kg_m2_s)
            + self.joint_energy_j
    }

    /// Lowest sole point relative to the CM for a body in this attitude, m.
    pub fn lowest_m(&self, orientation: DQuat) -> f64 {
        self.soles_m
            .iter()
            .map(|&sole| (orientation * sole).y)
            .fold(f64::INFINITY, f64::min)
    }

    /// Pull m w² r that keeps the left and the right hand, with what it holds, on its circle
    /// about the axis `axis` (unit, pelvis axes) through the CM, N.
    pub fn hand_pull_n(&self, axis: DVec3, rate_rad_s: f64) -> [f64; 2] {
        self.hands_m.map(|hand| {
            let radius_m = hand.reject_from_normalized(axis).length();
            self.hand_kg * rate_rad_s * rate_rad_s * radius_m
        })
    }

    /// The body's long axis: the unit principal axis of least inertia, upwards in the body.
    pub fn long_axis(&self) -> DVec3 {
        // Power iteration on the inverse, squared six times: the least principal moment of a
        // human body is well apart from the other two in every posture of the plan.
        let mut m = self.inverse * (1.0 / self.inverse.y_axis.y.abs());
        for _ in 0..6 {
            m = m * m;
            m = m * (1.0 / (m.x_axis.x + m.y_axis.y + m.z_axis.z));
        }
        let axis = (m * DVec3::Y).normalize();
        if axis.y < 0.0 { -axis } else { axis }
    }
}
