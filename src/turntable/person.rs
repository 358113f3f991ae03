//! A person on a bearing: from how arms, legs and trunk are held to the joints, and to inertia and momentum
//! about the bearing's axis.
//!
//! Each joint has one way, from in to out, and turns about one axis along it. The pelvis stays upright and
//! where it is over the bearing.

use glam::{DQuat, DVec3};

use turns_aloft_physics::angles::rad;
use turns_aloft_physics::body::{Body, SEGMENTS, Segment};
use turns_aloft_physics::forward_kinematics::ForwardKinematics;
use turns_aloft_physics::posture::{Arm, JointRates, Leg, Posture, STILL};
use turns_aloft_physics::rotation::{exp, log};
use turns_aloft_physics::thickness::{Solid, solids};
use turns_aloft_physics::tree::Tree;

use crate::about_axis::AboutAxis;
use crate::position::{Coordinates, Limbs, Position, TWIST_RAD};
use crate::setup::{Refused, Setup};

/// A person on a bearing, with what turns below.
#[derive(Debug, Clone)]
pub struct Person {
    pub setup: Setup,
    pub body: Body,
    tree: Tree,
    ways: [Way; SEGMENTS],
    /// Nearest and farthest that the hands come, m.
    reach_m: [f64; 2],
}

/// How one joint follows its coordinate: `from`, turned about one axis of its own.
#[derive(Debug, Clone, Copy)]
struct Way {
    from: DQuat,
    /// For one unit of the coordinate, segment axes, rad.
    along_rad: DVec3,
    of: Limbs,
}

/// Arms stretched out to the sides, a little in front and turned outwards, so that the hands pass each other
/// clear on their way. A shape of common practice, no source.
const OUT: Arm = Arm {
    plane_rad: rad(10.0),
    elevation_rad: rad(88.0),
    axial_rad: rad(-30.0),
    elbow_flexion_rad: 0.0,
};

/// Halvings until the arms' coordinate is known for a distance: to the last digit.
const HALVINGS: u32 = 52;

impl Person {
    pub fn new(setup: &Setup) -> Result<Self, Refused> {
        setup.check()?;
        let body = Body::new(setup.body_spec());
        let tight = setup.tight();
        let [legs_in, legs_out] = setup.stand.legs(&tight);
        let arm = tight.arm();
        let posture = |arm: Arm, [left, right]: [Leg; 2]| Posture::new(arm, arm, left, right);
        let (from, to) = (posture(arm, legs_in), posture(OUT, legs_out));
        let ways = Segment::ALL.map(|segment| Way::new(segment, from[segment], to[segment]));
        let mut person = Self {
            setup: *setup,
            tree: Tree::new(&body),
            body,
            ways,
            reach_m: [0.0; 2],
        };
        person.reach_m = [0.0, 1.0].map(|arms| person.hand_distance_m(arms));
        Ok(person)
    }

    /// Nearest and farthest that the hands come to the vertical through the hips, m.
    pub const fn reach_m(&self) -> [f64; 2] {
        self.reach_m
    }

    /// The most that a joint of these limbs turns for one unit of their coordinate, rad.
    pub(crate) fn turn_rad(&self, limbs: Limbs) -> f64 {
        if limbs == Limbs::Trunk {
            return 1.0;
        }
        let turns = self.ways.iter().filter(|way| way.of == limbs);
        turns.map(|way| way.along_rad.length()).fold(0.0, f64::max)
    }

    /// The nearest that can be held to a position.
    pub fn coordinates(&self, position: &Position) -> Coordinates {
        let legs = if self.setup.stand.legs_move() {
            position.legs.clamp(0.0, 1.0)
        } else {
            0.0
        };
        let twist_rad = position.twist_rad.clamp(-TWIST_RAD, TWIST_RAD);
        [self.arms(position.hand_distance_m), legs, twist_rad]
    }

    /// What position these coordinates are.
    pub fn position(&self, coordinates: &Coordinates) -> Position {
        let [arms, legs, twist_rad] = *coordinates;
        Position {
            hand_distance_m: self.hand_distance_m(arms),
            legs,
            twist_rad,
        }
    }

    /// The arms' coordinate at which the hands are so far out, or the nearest to it.
    fn arms(&self, hand_distance_m: f64) -> f64 {
        let [nearest, farthest] = self.reach_m;
        if hand_distance_m <= nearest {
            return 0.0;
        }
        if hand_distance_m >= farthest {
            return 1.0;
        }
        let (mut below, mut above) = (0.0, 1.0);
        for _ in 0..HALVINGS {
            let middle = 0.5 * (below + above);
            if self.hand_distance_m(middle) < hand_distance_m {
                below = middle;
            } else {
                above = middle;
            }
        }
        0.5 * (below + above)
    }

    /// By the right arm alone, since this is asked for again and again; the trunk is straight and upright, and
    /// its twist changes no distance.
    fn hand_distance_m(&self, arms: f64) -> f64 {
        let joint_m = |segment| self.body.link(segment).joint_m;
        let chest = [Segment::MiddleTrunk, Segment::UpperTrunk].map(joint_m);
        let arm = [
            Segment::RightUpperArm,
            Segment::RightForearm,
            Segment::RightHand,
        ];
        let from_joint = |end_m: DVec3, segment: Segment| {
            let way = &self.ways[segment as usize];
            joint_m(segment) + way.at(&[arms, 0.0, 0.0]) * end_m
        };
        let grip_m = self.body.link(Segment::RightHand).end_m;
        let place_m = arm.into_iter().rev().fold(grip_m, from_joint) + chest[0] + chest[1];
        libm::hypot(place_m.x, place_m.z)
    }

    /// How every joint stands.
    pub fn posture(&self, coordinates: &Coordinates) -> Posture {
        Posture {
            joints: self.ways.map(|way| way.at(coordinates)),
        }
    }

    /// How every joint turns while the coordinates change like that, for a second.
    pub fn joint_rates(&self, change: &Coordinates) -> JointRates {
        self.ways.map(|way| way.along_rad * change[way.of as usize])
    }

    /// All that turns, as the bearing's axis sees it.
    pub fn about_axis(&self, coordinates: &Coordinates, change: &Coordinates) -> AboutAxis {
        let (posture, rates) = (self.posture(coordinates), self.joint_rates(change));
        // Seen from mid-hip, which is so far in front of the axis.
        let sums = self.tree.sums(&posture, &rates);
        let forward_m = self.setup.hips_forward_m;
        let moved = forward_m * (2.0 * sums.first_kg_m.x + forward_m * sums.mass_kg);
        AboutAxis {
            inertia_kg_m2: self.setup.bearing_inertia_kg_m2 + sums.second_kg_m2.yy + moved,
            own_momentum_kg_m2_s: sums.angular_kg_m2_s.y - forward_m * sums.linear_kg_m_s.z,
            own_energy_j: 0.5 * sums.twice_energy_j,
        }
    }

    /// How high mid-hip is above what carries the person: the ground under the feet, or the seat.
    pub fn hips_above_support_m(&self) -> f64 {
        if self.setup.stand.sits() {
            let thigh = solids(&self.body)[Segment::LeftThigh as usize];
            return match thigh {
                Solid::Cone { radii_m, .. } => radii_m[0],
                Solid::Board { radius_m, .. } => radius_m,
            };
        }
        let kinematics = ForwardKinematics::new(&self.body, &self.posture(&[0.0; 3]), &STILL);
        let heights = self.body.sole_m.map(|sole_m| {
            let (point_m, _) = kinematics.point(Segment::LeftFoot, sole_m);
            -point_m.y
        });
        heights[0].max(heights[1])
    }
}

impl Way {
    fn new(segment: Segment, from: DQuat, to: DQuat) -> Self {
        let of = match segment {
            Segment::LowerTrunk | Segment::MiddleTrunk | Segment::UpperTrunk | Segment::Head => {
                Limbs::Trunk
            }
            Segment::LeftUpperArm
            | Segment::LeftForearm
            | Segment::LeftHand
            | Segment::RightUpperArm
            | Segment::RightForearm
            | Segment::RightHand => Limbs::Arms,
            _ => Limbs::Legs,
        };
        let along_rad = match segment {
            // The two joints of the trunk share the twist.
            Segment::MiddleTrunk | Segment::UpperTrunk => DVec3::Y * 0.5,
            _ => log(from.conjugate() * to),
        };
        Self {
            from,
            along_rad,
            of,
        }
    }

    fn at(&self, coordinates: &Coordinates) -> DQuat {
        if self.along_rad == DVec3::ZERO {
            return self.from;
        }
        self.from * exp(self.along_rad * coordinates[self.of as usize])
    }
}
