//! The jumper as drawn: the landing that is shown after touch-down, and legs that keep to their own
//! space.

#[path = "support/space.rs"]
mod space;

use glam::{DVec3, Vec3};
use proptest::prelude::*;

use turns_aloft::figure::forms::{Form, Forms, foot, shank};
use turns_aloft::figure::landing::Landing;
use turns_aloft::figure::leg::{LEFT, Leg, RIGHT};
use turns_aloft::figure::pose::FigurePose;
use turns_aloft::figure::shown::{bed_m, lowest_bed_m, shown_pose};
use turns_aloft::physics::body::{Body, Segment};
use turns_aloft::physics::flight::Flight;
use turns_aloft::physics::plan::Turning;
use turns_aloft::physics::rotation::heading_rad;
use turns_aloft::scenario::ground::Ground;
use turns_aloft::scenario::{Scenario, starts};
use turns_aloft::session::{AFTER_S, BEFORE_S};

/// What flesh and leather give way by, m, as in `tests/postures.rs`.
const GIVES_WAY_M: f64 = 0.005;

/// Tilt of a body that does not land but falls: there the legs may touch, or leap out of each other.
const FALLING_RAD: f64 = 0.3;

/// Balls that fill a form, each inside it.
fn balls(form: &Form) -> Vec<(Vec3, f32)> {
    match *form {
        Form::Limb { ends_m, radii_m } => (0..=12)
            .map(|i| {
                let part = i as f32 / 12.0;
                let radius = radii_m[0] + part * (radii_m[1] - radii_m[0]);
                (ends_m[0].lerp(ends_m[1], part), radius)
            })
            .collect(),
        Form::Ball { centre_m, radii_m } => {
            let round = radii_m.x.min(radii_m.z);
            (-4..=4)
                .map(|i| {
                    let part = i as f32 / 4.5;
                    let up = Vec3::Y * radii_m.y * part;
                    (centre_m + up, round * (1.0 - part * part).sqrt())
                })
                .collect()
        }
        Form::Block { centre_m, half_m } => {
            let along = |half: f32| {
                let inner = (half - half_m.z).max(0.0);
                (-8..=8).map(move |i| inner * i as f32 / 8.0)
            };
            along(half_m.x)
                .flat_map(|x| along(half_m.y).map(move |y| Vec3::new(x, y, 0.0)))
                .map(|at| (centre_m + at, half_m.z.min(half_m.y)))
                .collect()
        }
    }
}

/// The balls of a segment's forms in the world.
fn placed(pose: &FigurePose, segment: Segment, forms: &Forms) -> Vec<(DVec3, f64)> {
    forms
        .iter()
        .flat_map(|(form, _)| balls(form))
        .map(|(at, radius)| (pose.point_m(segment, at.as_dvec3()), f64::from(radius)))
        .collect()
}

/// How deep what is drawn of the left shank and foot is inside what is drawn of the right ones, m.
fn deepest_between_legs(body: &Body, pose: &FigurePose) -> f64 {
    let leg = |lower: Segment, end: Segment| {
        let mut all = placed(pose, lower, &shank(body, lower));
        all.extend(placed(pose, end, &foot(body)));
        all
    };
    let left = leg(Segment::LeftShank, Segment::LeftFoot);
    let right = leg(Segment::RightShank, Segment::RightFoot);
    let mut deepest = f64::NEG_INFINITY;
    for &(a, one) in &left {
        for &(b, other) in &right {
            deepest = deepest.max(one + other - a.distance(b));
        }
    }
    deepest
}

/// Times from a little before take-off to the end of the landing.
fn times(flight: &Flight, steps: u32) -> impl Iterator<Item = f64> {
    let (from_s, to_s) = (-BEFORE_S, flight.touchdown_s + AFTER_S);
    (0..=steps).map(move |i| from_s + (to_s - from_s) * f64::from(i) / f64::from(steps))
}

/// A jumper of a build that jumpers have, as in `tests/postures.rs`, who lands as planned, or in the middle of
/// whatever a hand did.
fn jumper() -> impl Strategy<Value = Scenario> {
    let scenario = prop_oneof![space::planned(), space::led_by_hand()];
    (scenario, 1.25..1.95, 7.8..17.6).prop_map(|(scenario, stature_m, build)| Scenario {
        stature_m,
        body_mass_kg: build * stature_m * stature_m * stature_m,
        ..scenario
    })
}

/// The joints of a pose.
fn farthest(one: &FigurePose, other: &FigurePose) -> f64 {
    let apart = Segment::ALL.map(|s| one.joint_m[s as usize].distance(other.joint_m[s as usize]));
    apart.into_iter().fold(0.0, f64::max)
}

/// Height of a foot's lowest point over the ground, m.
fn foot_over_ground_m(body: &Body, pose: &FigurePose, foot: Segment, ground_m: f64) -> f64 {
    let [heel, toe] = body.sole_m.map(|end_m| pose.point_m(foot, end_m).y);
    heel.min(toe) - ground_m
}

fn knee_rad(pose: &FigurePose, thigh: Segment, shank: Segment) -> f64 {
    let [thigh, shank] = [thigh, shank].map(|s| pose.rotation[s as usize] * DVec3::Y);
    thigh.angle_between(shank)
}

proptest! {
    #![proptest_config(space::cases(200))]

    /// Neither in the air nor in a landing: calves, boots and blades are each in a place of their own.
    #[test]
    fn drawn_legs_stay_out_of_each_other(scenario in jumper()) {
        let flight = &scenario.fly().flight;
        for t_s in times(flight, 60) {
            let pose = shown_pose(flight, scenario.ground, t_s);
            let deep_m = deepest_between_legs(&flight.table.body, &pose);
            let falls = t_s > flight.touchdown_s && flight.touchdown().tilt_rad() > FALLING_RAD;
            prop_assert!(deep_m <= GIVES_WAY_M || falls, "{deep_m} m at {t_s} of {}", flight.touchdown_s);
        }
    }

    /// In the air it is the flight that is shown.
    #[test]
    fn what_is_flown_is_shown_as_flown(scenario in space::scenario(), part in 0.0..=1.0) {
        let flight = &scenario.fly().flight;
        let t_s = part * flight.touchdown_s;
        let (shown, flown) = (shown_pose(flight, scenario.ground, t_s), flight.pose_at(t_s));
        for segment in Segment::ALL {
            let at_m = flown.point_m(segment, DVec3::ZERO);
            prop_assert_eq!(shown.point_m(segment, DVec3::ZERO), at_m);
        }
    }

    /// The landing begins where the flight ends and goes on without a leap, and no foot is ever under
    /// the ground.
    #[test]
    fn a_landing_goes_on_from_the_flight(scenario in prop_oneof![space::planned(), jumper()]) {
        let flight = &scenario.fly().flight;
        let body: &Body = &flight.table.body;
        let landing = Landing::of(flight, scenario.ground);
        let touchdown = FigurePose::flown(&flight.pose_at(flight.touchdown_s));
        // Rounding, and rounds in which the pelvis is found.
        prop_assert!(farthest(&landing.pose(0.0), &touchdown) < 1e-7);
        let mut before = touchdown;
        for i in 1..=350 {
            let since_s = 2e-3 * f64::from(i);
            let pose = landing.pose(since_s);
            let bed_m = landing.bed_m(since_s);
            let lowest_m = pose.lowest_m(body) - bed_m;
            prop_assert!(lowest_m > -1e-9, "{lowest_m} m after {since_s} s");
            let step_m = farthest(&pose, &before);
            prop_assert!(step_m < LEAP_M || flight.touchdown().tilt_rad() > FALLING_RAD, "{step_m} m in 2 ms after {since_s} s");
            before = pose;
        }
    }
}

/// Fastest that any joint may move, as its way in 2 ms, m: nothing flown is as fast. A hand 1 m out at 25 rad/s
/// and a fall from 2.5 m alone are 0.064 m.
const LEAP_M: f64 = 0.1;

/// The landings of the starting points, and of the same jumpers on the other grounds and turning the other
/// way.
fn landings() -> Vec<(String, Scenario)> {
    let mut all = Vec::new();
    for start in starts::all() {
        for ground in [Ground::Ice, Ground::Floor, Ground::Trampoline] {
            for turning in [Turning::Anticlockwise, Turning::Clockwise] {
                let scenario = Scenario {
                    ground,
                    turning,
                    ..start.scenario.clone()
                };
                all.push((format!("{} {ground:?} {turning:?}", start.name), scenario));
            }
        }
    }
    all
}

/// On ice and floor: a knee that gives and comes up, the free leg back and off the ground, arms out, the
/// chest nearly upright, the CM over the foot.
#[test]
fn lands_on_one_leg() {
    for (name, scenario) in landings() {
        if scenario.ground == Ground::Trampoline {
            continue;
        }
        let flight = &scenario.fly().flight;
        let body: &Body = &flight.table.body;
        let landing = Landing::of(flight, scenario.ground);
        let (standing, free) = match scenario.turning {
            Turning::Anticlockwise => (RIGHT, LEFT),
            Turning::Clockwise => (LEFT, RIGHT),
        };
        let end = landing.pose(AFTER_S);
        let over_ground_m = |pose: &FigurePose, foot| foot_over_ground_m(body, pose, foot, 0.0);
        assert!(over_ground_m(&end, standing.foot).abs() < 1e-9, "{name}");
        assert!(over_ground_m(&end, free.foot) > 0.08, "{name}");
        let knee = |since_s: f64| knee_rad(&landing.pose(since_s), standing.thigh, standing.shank);
        let deepest = (1..70)
            .map(|i| knee(0.01 * f64::from(i)))
            .fold(0.0, f64::max);
        assert!(
            deepest > knee(0.0) + 0.5 && deepest > knee(AFTER_S) + 0.3,
            "{name}"
        );
        // Seen along the way the pelvis faces.
        let (ahead, up) = (end.rotation[0] * DVec3::X, DVec3::Y);
        let ahead = ahead.reject_from_normalized(up).normalize();
        let foot_m = |leg: Leg| end.joint_m[leg.foot as usize];
        assert!(
            (foot_m(free) - foot_m(standing)).dot(ahead) < -0.35,
            "{name}"
        );
        let chest = end.rotation[Segment::UpperTrunk as usize] * DVec3::Y;
        assert!(chest.angle_between(up) < 0.2, "{name}");
        for hand in [Segment::LeftHand, Segment::RightHand] {
            let away_m = (end.joint_m[hand as usize] - end.cm_m).reject_from_normalized(up);
            assert!(away_m.length() > 0.25 * scenario.stature_m, "{name}");
        }
        let sole_m = body.sole_m.map(|end_m| end.point_m(standing.foot, end_m));
        let off_m = (end.cm_m - 0.5 * (sole_m[0] + sole_m[1])).reject_from_normalized(up);
        assert!(off_m.length() < 0.02, "{name}: {off_m}");
    }
}

/// Both feet stand on the bed, which has sunk and come back.
#[test]
fn lands_on_both_feet_on_a_trampoline() {
    for (name, scenario) in landings() {
        if scenario.ground != Ground::Trampoline {
            continue;
        }
        let flight = &scenario.fly().flight;
        let landing = Landing::of(flight, scenario.ground);
        let (end, bed_m) = (landing.pose(AFTER_S), landing.bed_m(AFTER_S));
        for foot in [Segment::LeftFoot, Segment::RightFoot] {
            let over_m = foot_over_ground_m(&flight.table.body, &end, foot, bed_m);
            assert!(over_m.abs() < 1e-9, "{name}: {over_m}");
        }
        let deepest_m = (0..70)
            .map(|i| landing.bed_m(0.01 * f64::from(i)))
            .fold(0.0, f64::min);
        assert!(
            deepest_m < bed_m - 0.04 && bed_m < 0.0,
            "{name}: {deepest_m}, {bed_m}"
        );
    }
}

/// What turns clockwise lands as its mirror image.
#[test]
fn lands_mirrored() {
    for (name, scenario) in landings() {
        if scenario.turning == Turning::Clockwise {
            continue;
        }
        let other = Scenario {
            turning: Turning::Clockwise,
            ..scenario.clone()
        };
        let [one, other] = [&scenario, &other].map(|scenario| {
            let flight = scenario.fly().flight;
            let end = Landing::of(&flight, scenario.ground).pose(AFTER_S);
            // Where the jump begins is not mirrored: seen from the way the pelvis faced at touch-down.
            let facing = heading_rad(flight.touchdown().orientation());
            end.turned_about(DVec3::ZERO, -facing)
        });
        for segment in Segment::ALL {
            let at_m = one.joint_m[segment as usize] * DVec3::new(1.0, 1.0, -1.0);
            let off_m = at_m.distance(other.joint_m[segment.mirrored() as usize]);
            assert!(off_m < 1e-6, "{name}: {segment:?} {off_m}");
        }
    }
}

/// Before take-off a trampoline's bed swings up under the feet, and is level as they leave it.
#[test]
fn a_bed_swings_up_before_takeoff() {
    let start = starts::all()
        .iter()
        .find(|start| start.scenario.ground == Ground::Trampoline);
    let scenario = &start.expect("one of the starting points").scenario;
    let flight = &scenario.fly().flight;
    let bed = |t_s: f64| bed_m(flight, Ground::Trampoline, t_s);
    assert!(bed(-BEFORE_S) < -0.2);
    assert!((bed(-1e-6) + 1e-6 * flight.takeoff_speed_m_s).abs() < 1e-9);
    let moments = times(flight, 100).map(bed);
    assert_eq!(
        moments.fold(0.0, f64::min),
        lowest_bed_m(flight, Ground::Trampoline)
    );
    let pose = shown_pose(flight, Ground::Trampoline, -0.1);
    assert!((pose.lowest_m(&flight.table.body) - bed(-0.1)).abs() < 1e-9);
}

/// The checks see what they are for: legs pushed into each other.
#[test]
fn legs_in_one_place_are_seen() {
    let flight = &starts::all()[0].scenario.fly().flight;
    let mut pose = shown_pose(flight, Ground::Ice, 0.2);
    pose.joint_m[Segment::LeftFoot as usize] = pose.joint_m[Segment::RightFoot as usize];
    assert!(deepest_between_legs(&flight.table.body, &pose) > 0.05);
}
