//! The landing that is shown after touch-down. It is for looks and is not computed: no force, no
//! balance, and nothing reads it but the picture.
//!
//! It starts as the body is flown at touch-down, with its velocities. On ice and floor the jumper
//! lands on one leg (anticlockwise the right one): the knee gives and comes up, the free leg goes
//! back, the arms stay out, the trunk comes upright, and what is left of the turning dies away; on
//! ice it runs out backwards on an outside edge. On a trampoline both feet sink with the bed. Shapes
//! and times are common practice, no source.

use std::f64::consts::PI;

use glam::{DQuat, DVec3};

use crate::apart::LegForms;
use crate::easing::{dying_away, progress, turned_on};
use crate::ground_motion::{BED_SHARE, bed_after_touchdown_m, sinking_m};
use crate::leg::{LEFT, Leg, RIGHT};
use crate::pose::FigurePose;
use turns_aloft_physics::angles::rad;
use turns_aloft_physics::body::{Body, SEGMENTS, Segment};
use turns_aloft_physics::flight::Flight;
use turns_aloft_physics::joint_motion::JointMotion;
use turns_aloft_physics::minimum_jerk::minimum_jerk;
use turns_aloft_physics::plan::Turning;
use turns_aloft_physics::posture::{Arm, JointRates, Leg as LegAngles, Posture};
use turns_aloft_physics::rotation::{about, exp, heading_rad, log};
use turns_aloft_scenario::ground::Ground;

/// How long the joints' own motion takes to die away, s.
const JOINTS_S: f64 = 0.12;
/// How long arms, trunk, free leg and the way over the foot take, s.
const ARMS_S: f64 = 0.45;
const TRUNK_S: f64 = 0.40;
const FREE_LEG_S: f64 = 0.55;
const OVER_FOOT_S: f64 = 0.35;
/// How far over the ground the free foot is kept, m, and from when, s.
const CLEAR_M: f64 = 0.06;
const CLEAR_S: f64 = 0.25;
/// How far the free ankle is kept to its side of the one that stands, m, unless it comes down nearer.
const LEAST_ASIDE_M: f64 = 0.05;
/// How long a foot takes to come down flat, s.
const FOOT_S: f64 = 0.18;
/// How long the knee gives at most, and how long it then takes to come up, s.
const GIVING_S: f64 = 0.16;
const COMING_UP_S: f64 = 0.40;
/// Longest that the turning goes on, s.
const TURNING_S: f64 = 0.35;
/// How far a landing runs out on ice, the radius of its edge, m, and from when to when, s.
const GLIDE_M: f64 = 0.45;
const EDGE_RADIUS_M: f64 = 2.2;
const GLIDE_FROM_S: f64 = 0.06;
const GLIDE_S: f64 = 0.62;

/// What differs from ground to ground.
struct Style {
    /// Flexion of the standing knee where it has given most, and in the end.
    knee_rad: [f64; 2],
    /// How far the turning goes on at most.
    turning_rad: f64,
    /// Forward lean of the pelvis in the end.
    pelvis_forward_rad: f64,
    both_feet: bool,
    glides: bool,
}

const fn style(ground: Ground) -> Style {
    let on_one_leg = Style {
        knee_rad: [rad(72.0), rad(34.0)],
        turning_rad: 0.25,
        pelvis_forward_rad: rad(18.0),
        both_feet: false,
        glides: false,
    };
    match ground {
        Ground::Ice => Style {
            turning_rad: 0.35,
            glides: true,
            ..on_one_leg
        },
        Ground::Floor => on_one_leg,
        Ground::Trampoline => Style {
            knee_rad: [rad(42.0), rad(18.0)],
            pelvis_forward_rad: rad(5.0),
            both_feet: true,
            ..on_one_leg
        },
    }
}

/// The posture in the end, of an anticlockwise jumper; the standing legs follow from the feet.
fn posture(style: &Style) -> Posture {
    let arm = |plane: f64, elevation: f64| Arm {
        plane_rad: plane,
        elevation_rad: elevation,
        axial_rad: 0.0,
        elbow_flexion_rad: rad(10.0),
    };
    let leg = LegAngles {
        hip_flexion_rad: rad(-20.0),
        hip_abduction_rad: rad(11.0),
        knee_flexion_rad: rad(8.0),
        plantarflexion_rad: rad(38.0),
    };
    let (left, right) = if style.both_feet {
        (arm(rad(35.0), rad(66.0)), arm(rad(35.0), rad(66.0)))
    } else {
        (arm(rad(30.0), rad(76.0)), arm(rad(4.0), rad(74.0)))
    };
    let mut posture = Posture::new(left, right, leg, leg);
    // The back takes the trunk up again over a leaning pelvis, and the head looks ahead.
    posture[Segment::MiddleTrunk] = about(DVec3::Z, 0.30 * style.pelvis_forward_rad);
    posture[Segment::UpperTrunk] = about(DVec3::Z, 0.30 * style.pelvis_forward_rad);
    posture[Segment::Head] = about(DVec3::Z, 0.30 * style.pelvis_forward_rad);
    posture
}

/// A foot that is stood on, from where it is at touch-down to where it stands.
struct Stand {
    leg: Leg,
    rotation: [DQuat; 2],
    toe_m: [DVec3; 2],
    /// Its height over the ground at touch-down, m.
    lifted_m: f64,
    /// Axis of the knee at touch-down.
    hinge: DVec3,
}

/// The landing after one flight.
pub struct Landing<'a> {
    body: &'a Body,
    style: Style,
    ground: Ground,
    /// +1 anticlockwise, -1 clockwise.
    sign: f64,
    /// Everything at touch-down, world frame.
    flown: FigurePose,
    moving: (Posture, JointRates),
    end: Posture,
    fall_m_s: f64,
    /// The turning about the vertical at touch-down, rad/s, and how long it takes to die away, s.
    spin: (f64, f64),
    /// Rate of the pelvis without that, pelvis axes, rad/s.
    tipping_rad_s: DVec3,
    /// Horizontal velocity of the CM seen from the turning foot, m/s.
    drift_m_s: DVec3,
    stands: Vec<Stand>,
    free: Option<Leg>,
    /// The leg that gives way to the one that stands, and the side of the body that it is on.
    other: Leg,
    aside: f64,
    /// How far its ankle is kept to that side of the one that stands, m.
    least_aside_m: f64,
    legs: LegForms,
    /// How deep the legs are inside each other at touch-down, m.
    overlap_m: f64,
}

impl<'a> Landing<'a> {
    pub fn of(flight: &'a Flight, ground: Ground) -> Self {
        let body: &Body = &flight.table.body;
        let turning = flight.table.plan.spec.turning;
        let style = style(ground);
        let pose = flight.pose_at(flight.touchdown_s);
        let flown = FigurePose::flown(&pose);
        let rate_rad_s = pose.sample.rate_rad_s();
        let end = match turning {
            Turning::Anticlockwise => posture(&style),
            Turning::Clockwise => posture(&style).mirrored(),
        };
        let (standing, other) = match turning {
            Turning::Anticlockwise => (RIGHT, LEFT),
            Turning::Clockwise => (LEFT, RIGHT),
        };
        let mut stands = vec![Stand::at(&flown, body, standing)];
        let free = if style.both_feet {
            let beside_m = body.link(other.thigh).joint_m - body.link(standing.thigh).joint_m;
            let first = &stands[0];
            let second = Stand {
                rotation: [flown.rotation[other.foot as usize], first.rotation[1]],
                toe_m: [
                    level(flown.point_m(other.foot, body.sole_m[1])),
                    first.toe_m[1] + first.rotation[1] * beside_m,
                ],
                ..Stand::at(&flown, body, other)
            };
            stands.push(second);
            None
        } else {
            Some(other)
        };
        let (spin_rad_s, tipping) = (rate_rad_s.y, rate_rad_s - DVec3::Y * rate_rad_s.y);
        let turning_s = (2.0 * style.turning_rad / spin_rad_s.abs().max(1e-9)).min(TURNING_S);
        let from_foot_m = level(flown.cm_m) - stands[0].toe_m[0];
        let legs = LegForms::of(body);
        let mut landing = Self {
            least_aside_m: 0.0,
            moving: flight.motion().at(flight.touchdown_s),
            fall_m_s: -pose.cm_velocity_m_s.y,
            spin: (spin_rad_s, turning_s),
            tipping_rad_s: flown.rotation[Segment::LowerTrunk as usize].conjugate() * tipping,
            drift_m_s: -(DVec3::Y * spin_rad_s).cross(from_foot_m),
            sign: turning.sign(),
            overlap_m: legs.overlap_m(&flown, standing, other).max(0.0),
            legs,
            aside: body.link(other.thigh).joint_m.z.signum(),
            other,
            body,
            style,
            ground,
            flown,
            end,
            stands,
            free,
        };
        landing.least_aside_m = landing.aside_m(&landing.flown).min(LEAST_ASIDE_M);
        landing
    }

    /// The jumper this long after touch-down.
    pub fn pose(&self, since_s: f64) -> FigurePose {
        let pelvis = self.pelvis_rotation(since_s);
        let rotation = self.rotations(since_s, pelvis);
        let cm_m = self.cm_over_ground_m(since_s);
        let height_m = self.pelvis_height_m(since_s);
        let from = &self.flown;
        let mut pelvis_m = level(from.joint_m[0] + cm_m - from.cm_m) + DVec3::Y * height_m;
        // Where the pelvis has to be for the CM to be there depends on the legs, which hardly weigh
        // on it: a few rounds find it.
        let mut pose = self.standing(since_s, pelvis_m, &rotation);
        for _ in 0..6 {
            pelvis_m += level(cm_m - pose.cm_m);
            pelvis_m.y = height_m;
            pose = self.standing(since_s, pelvis_m, &rotation);
        }
        self.part_legs(since_s, &mut pose);
        // A leg that has been taken aside may not reach down to where its foot was.
        let under_m = -pose.lowest_m(self.body);
        if under_m > 0.0 {
            pose = pose.raised(under_m);
        }
        self.run_out(since_s, pose).raised(self.bed_m(since_s))
    }

    /// Height of a trampoline's bed under the feet, m.
    pub fn bed_m(&self, since_s: f64) -> f64 {
        match self.ground {
            Ground::Trampoline => bed_after_touchdown_m(since_s, self.fall_m_s),
            Ground::Ice | Ground::Floor => 0.0,
        }
    }

    /// The pelvis without the turning about the vertical.
    fn pelvis_rotation(&self, since_s: f64) -> DQuat {
        let from = self.flown.rotation[Segment::LowerTrunk as usize];
        let dying = [dying_away(since_s, JOINTS_S), 0.5 * JOINTS_S];
        let facing_rad = heading_rad(from * exp(self.tipping_rad_s * dying[1]));
        let to = about(DVec3::Y, facing_rad) * about(DVec3::Z, -self.style.pelvis_forward_rad);
        turned_on(
            from,
            self.tipping_rad_s,
            to,
            dying,
            progress(since_s, TRUNK_S),
        )
    }

    /// Segments against the world, as if no foot stood anywhere.
    fn rotations(&self, since_s: f64, pelvis: DQuat) -> [DQuat; SEGMENTS] {
        let (posture, rates) = &self.moving;
        let dying = [dying_away(since_s, JOINTS_S), 0.5 * JOINTS_S];
        let mut rotation = [pelvis; SEGMENTS];
        for segment in Segment::ALL {
            let Some(parent) = segment.parent() else {
                continue;
            };
            let time_s = match segment {
                Segment::MiddleTrunk | Segment::UpperTrunk | Segment::Head => TRUNK_S,
                _ if (segment as usize) < Segment::LeftThigh as usize => ARMS_S,
                _ => FREE_LEG_S,
            };
            let i = segment as usize;
            let joint = turned_on(
                posture[segment],
                rates[i],
                self.end[segment],
                dying,
                progress(since_s, time_s),
            );
            rotation[i] = rotation[parent as usize] * joint;
        }
        rotation
    }

    /// Where the CM is over the ground, without the turning, m: on its way over what is stood on.
    fn cm_over_ground_m(&self, since_s: f64) -> DVec3 {
        // It drifts only as long as the foot turns under it.
        let turning_s = self.spin.1;
        let from_m = level(self.flown.cm_m);
        let drift_m = self.drift_m_s * dying_away(since_s, turning_s);
        let way_m = self.middle_m() - from_m - self.drift_m_s * (0.5 * turning_s);
        from_m + drift_m + way_m * progress(since_s, OVER_FOOT_S)
    }

    /// Middle of what is stood on in the end, m.
    fn middle_m(&self) -> DVec3 {
        let half = 0.5 * (self.body.sole_m[0] - self.body.sole_m[1]);
        let middles = self
            .stands
            .iter()
            .map(|foot| foot.toe_m[1] + foot.rotation[1] * half);
        middles.sum::<DVec3>() / self.stands.len() as f64
    }

    /// Height of the hips over the ground, m: the knee gives as the fall is stopped, and comes up.
    fn pelvis_height_m(&self, since_s: f64) -> f64 {
        let leg = self.stands[0].leg;
        let ankle_m = -self.body.sole_m[0].y;
        let [lowest_m, end_m] = self
            .style
            .knee_rad
            .map(|knee| ankle_m + leg.reach_m(self.body, knee));
        let from_m = self.flown.joint_m[0].y;
        let share = if self.style.both_feet {
            1.0 - BED_SHARE
        } else {
            1.0
        };
        let speed_m_s = share * self.fall_m_s.max(0.0);
        let most_m = (from_m - lowest_m).max(0.02);
        let given_m = (0.5 * GIVING_S * speed_m_s).min(most_m);
        let giving_s = if speed_m_s > 0.0 {
            2.0 * given_m / speed_m_s
        } else {
            GIVING_S
        };
        let bottom_m = from_m - given_m;
        from_m - sinking_m(since_s, speed_m_s, giving_s)
            + (end_m - bottom_m) * minimum_jerk(since_s, giving_s, COMING_UP_S).0
    }

    /// The body with its pelvis there, its feet on the ground.
    fn standing(&self, since_s: f64, pelvis_m: DVec3, rotation: &[DQuat; SEGMENTS]) -> FigurePose {
        let feet: Vec<_> = self
            .stands
            .iter()
            .map(|foot| foot.at_s(since_s, self.body))
            .collect();
        let hip_m = |leg: Leg| rotation[0] * self.body.link(leg.thigh).joint_m;
        // Never higher than the legs reach.
        let too_high = |(foot, &(ankle_m, _)): (&Stand, &(DVec3, DQuat))| {
            let way = pelvis_m + hip_m(foot.leg) - ankle_m;
            let longest_m = foot.leg.reach_m(self.body, KNEE_LEAST_RAD);
            let upright_m = (longest_m * longest_m - level(way).length_squared())
                .max(0.0)
                .sqrt();
            (way.y - upright_m).max(0.0)
        };
        let lowered_m = self
            .stands
            .iter()
            .zip(&feet)
            .map(too_high)
            .fold(0.0, f64::max);
        let pelvis_m = pelvis_m - DVec3::Y * lowered_m;
        let mut rotation = *rotation;
        for (foot, &(ankle_m, foot_rotation)) in self.stands.iter().zip(&feet) {
            let part = progress(since_s, TRUNK_S);
            let hinge = foot.hinge.lerp(rotation[0] * DVec3::Z, part);
            foot.leg.set(
                &mut rotation,
                foot.leg
                    .reaching(self.body, pelvis_m + hip_m(foot.leg), ankle_m, hinge),
                foot_rotation,
            );
        }
        let mut pose = FigurePose::of(self.body, pelvis_m, rotation);
        if let Some(free) = self.free {
            self.lift(free, CLEAR_M * progress(since_s, CLEAR_S), &mut pose);
        }
        pose
    }

    /// Takes the other leg aside where it would be inside the one that stands, or past it: from there it would have
    /// to come back through it.
    fn part_legs(&self, since_s: f64, pose: &mut FigurePose) {
        const ROUNDS: u32 = 24;
        const ROUNDING_M: f64 = 1e-9;
        let allowed_m = self.overlap_m * (1.0 - progress(since_s, CLEAR_S));
        let past_m = self.least_aside_m - self.aside_m(pose);
        if past_m > 0.0 {
            self.take_aside(past_m, pose);
        }
        for _ in 0..ROUNDS {
            let by_m = self.legs.overlap_m(pose, self.stands[0].leg, self.other) - allowed_m;
            if by_m <= ROUNDING_M {
                return;
            }
            self.take_aside(1.5 * by_m, pose);
        }
    }

    /// To the other leg's side, level.
    fn outwards(&self, pose: &FigurePose) -> DVec3 {
        level(pose.rotation[0] * DVec3::Z * self.aside).normalize_or(DVec3::Z)
    }

    /// How far the other ankle is to its side of the one that stands, m.
    fn aside_m(&self, pose: &FigurePose) -> f64 {
        let [stands_m, other_m] =
            [self.stands[0].leg, self.other].map(|leg| pose.joint_m[leg.foot as usize]);
        (other_m - stands_m).dot(self.outwards(pose))
    }

    fn take_aside(&self, by_m: f64, pose: &mut FigurePose) {
        let other = self.other;
        let [hip_m, ankle_m] = [other.thigh, other.foot].map(|s| pose.joint_m[s as usize]);
        let hinge = pose.rotation[other.shank as usize] * DVec3::Z;
        let ankle_m = ankle_m + self.outwards(pose) * by_m;
        self.place(other, hip_m, ankle_m, hinge, pose);
    }

    /// Puts an ankle elsewhere; the foot keeps its rotation.
    fn place(&self, leg: Leg, hip_m: DVec3, ankle_m: DVec3, hinge: DVec3, pose: &mut FigurePose) {
        let mut rotation = pose.rotation;
        let foot = rotation[leg.foot as usize];
        let reached = leg.reaching(self.body, hip_m, ankle_m, hinge);
        leg.set(&mut rotation, reached, foot);
        *pose = FigurePose::of(self.body, pose.joint_m[0], rotation);
    }

    /// Draws a foot that would be lower than this over the ground up to there.
    fn lift(&self, leg: Leg, least_m: f64, pose: &mut FigurePose) {
        let under_m = least_m
            - self
                .body
                .sole_m
                .map(|end_m| pose.point_m(leg.foot, end_m).y)
                .into_iter()
                .fold(f64::INFINITY, f64::min);
        if under_m <= 0.0 {
            return;
        }
        let [hip_m, ankle_m] = [leg.thigh, leg.foot].map(|s| pose.joint_m[s as usize]);
        let hinge = pose.rotation[leg.shank as usize] * DVec3::Z;
        self.place(leg, hip_m, ankle_m + DVec3::Y * under_m, hinge, pose);
    }

    /// Turned on about the toe that stands, and glided backwards.
    fn run_out(&self, since_s: f64, pose: FigurePose) -> FigurePose {
        let (rate_rad_s, time_s) = self.spin;
        let toe_m = self.stands[0].toe_m[0];
        let pose = pose.turned_about(toe_m, rate_rad_s * dying_away(since_s, time_s));
        if !self.style.glides {
            return pose;
        }
        // About the middle of the edge's circle, on the side of the standing foot.
        let run_m = GLIDE_M * minimum_jerk(since_s, GLIDE_FROM_S, GLIDE_S).0;
        let turned = about(DVec3::Y, rate_rad_s * 0.5 * time_s);
        let middle_m = toe_m + turned * (self.middle_m() - toe_m);
        let outside = turned * self.stands[0].rotation[1] * DVec3::Z * self.sign;
        let centre_m = middle_m + outside * EDGE_RADIUS_M;
        pose.turned_about(centre_m, self.sign * run_m / EDGE_RADIUS_M)
    }
}

/// Flexion of a knee that is as straight as it gets: joints never lock.
const KNEE_LEAST_RAD: f64 = PI / 90.0;

impl Stand {
    /// A foot that stays where its toe is at touch-down, and comes down flat.
    fn at(flown: &FigurePose, body: &Body, leg: Leg) -> Self {
        let rotation = flown.rotation[leg.foot as usize];
        let toe_m = level(flown.point_m(leg.foot, body.sole_m[1]));
        let ends_m = body.sole_m.map(|end_m| flown.point_m(leg.foot, end_m).y);
        Self {
            leg,
            rotation: [rotation, about(DVec3::Y, heading_rad(rotation))],
            toe_m: [toe_m, toe_m],
            lifted_m: ends_m[0].min(ends_m[1]),
            hinge: flown.rotation[leg.shank as usize] * DVec3::Z,
        }
    }

    /// Its ankle (m) and its rotation.
    fn at_s(&self, since_s: f64, body: &Body) -> (DVec3, DQuat) {
        let part = progress(since_s, FOOT_S);
        let [from, to] = self.rotation;
        let rotation = from * exp(log(from.conjugate() * to) * part);
        let toe_m = self.toe_m[0].lerp(self.toe_m[1], part);
        let [heel, toe] = body.sole_m.map(|end_m| rotation * end_m);
        let mut ankle_m = toe_m - level(toe);
        ankle_m.y = (1.0 - part) * self.lifted_m - heel.y.min(toe.y);
        (ankle_m, rotation)
    }
}

/// The point of the ground under a point.
fn level(at_m: DVec3) -> DVec3 {
    DVec3::new(at_m.x, 0.0, at_m.z)
}
