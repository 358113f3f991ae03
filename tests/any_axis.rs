//! Flights about any axis, whichever way up: closed forms, an independent integration, and what must not
//! depend on the direction of anything.

#[path = "support/body_sums.rs"]
mod body_sums;
#[path = "support/planned_release.rs"]
mod planned_release;
#[path = "support/space.rs"]
mod space;

use std::f64::consts::{FRAC_PI_2, PI, TAU};

use glam::{DMat3, DQuat, DVec3};
use proptest::prelude::*;

use turns_aloft::physics::body::{Body, SEGMENTS, Segment};
use turns_aloft::physics::flight::FlightSample;
use turns_aloft::physics::joint_motion::{JointMotion, Sampling};
use turns_aloft::physics::led_motion::LedMotion;
use turns_aloft::physics::live_flight::LiveFlight;
use turns_aloft::physics::motion_flight::MotionFlight;
use turns_aloft::physics::plan::Plan;
use turns_aloft::physics::posture::{JointAccelerations, JointRates, Posture, STILL};
use turns_aloft::physics::release::{Release, ReleaseError};
use turns_aloft::physics::rotation::{about, exp, log};
use turns_aloft::scenario::starts;

fn body() -> Body {
    Body::new(starts::all()[0].scenario.body_spec())
}

/// A body of which only these segments have a mass: with it, the CM (own axes) and the principal moments.
fn made_of(parts: &[(Segment, f64, DVec3, DVec3)]) -> Body {
    let mut body = body();
    for link in &mut body.links {
        (link.mass_kg, link.inertia_kg_m2) = (0.0, DMat3::ZERO);
    }
    for &(segment, mass_kg, cm_m, moments_kg_m2) in parts {
        let link = &mut body.links[segment as usize];
        (link.mass_kg, link.cm_m) = (mass_kg, cm_m);
        link.inertia_kg_m2 = DMat3::from_diagonal(moments_kg_m2);
    }
    body.mass_kg = parts.iter().map(|part| part.1).sum();
    body
}

fn rigid(moments_kg_m2: DVec3) -> Body {
    made_of(&[(Segment::LowerTrunk, 60.0, DVec3::ZERO, moments_kg_m2)])
}

/// Let go high enough for a second and a half in the air.
fn high(orientation: DQuat, h: DVec3) -> Release {
    Release {
        orientation,
        angular_momentum_kg_m2_s: h,
        cm_height_m: 8.0,
        speed_m_s: 3.0,
    }
}

fn standing() -> LedMotion {
    LedMotion::at_rest(&Posture::STANDING)
}

fn angle_between(a: DQuat, b: DQuat) -> f64 {
    log(a.conjugate() * b).length()
}

/// Samples at even times, each with the turn about the momentum.
fn flown<M: JointMotion>(
    flight: &mut MotionFlight<M>,
    end_s: f64,
    times: u32,
) -> Vec<(FlightSample, f64)> {
    let samples = (0..=times).map(|i| {
        let t_s = end_s * f64::from(i) / f64::from(times);
        let sample = *flight.step(t_s - flight.sample().t_s);
        (sample, flight.about_momentum_rad())
    });
    let samples = samples.collect();
    assert!(!flight.has_landed());
    samples
}

/// A symmetric top (Goldstein, Classical Mechanics, section 5.6): the long axis goes round h at h / I_t at
/// a constant angle, the body turns about its own axis meanwhile, and its rate about h is constant. Tilted by
/// so much that the body goes head over heels, for momenta of any direction, against the body's own y axis
/// as well.
#[test]
fn a_symmetric_top_tumbles_in_closed_form() {
    let (across, along) = (8.0, 0.6);
    for (tilt, h) in [
        (0.4, DVec3::new(12.0, 20.0, -9.0)),
        (1.5, DVec3::new(0.0, 0.0, 60.0)),
        (2.0, DVec3::new(70.0, 1.0, 0.0)),
        (3.0, DVec3::new(0.0, -25.0, 0.0)),
        (PI, DVec3::new(3.0, 20.0, 5.0)),
    ] {
        let upright = DQuat::from_rotation_arc(DVec3::Y, h.normalize());
        let start = upright * about(DVec3::X, tilt) * about(DVec3::Y, 0.7);
        let mut flight = MotionFlight::released(
            rigid(DVec3::new(across, along, across)),
            standing(),
            &high(start, h),
        )
        .expect("a release");
        let own_rate = (start.conjugate() * h).y * (1.0 / along - 1.0 / across);
        let cos = libm::cos(tilt);
        let about_h = h.length() * ((1.0 - cos * cos) / across + cos * cos / along);
        for (sample, about_momentum_rad) in flown(&mut flight, 1.0, 10) {
            let t_s = sample.t_s;
            let exact = exp(h * (t_s / across)) * start * about(DVec3::Y, own_rate * t_s);
            let off = angle_between(sample.orientation(), exact);
            assert!(off < 1e-5, "tilt {tilt}, {t_s} s: {off:e}");
            let off = about_momentum_rad - about_h * t_s;
            assert!(off.abs() < 1e-5, "tilt {tilt}, {t_s} s: {off:e}");
            assert!((sample.energy_j - flight_energy(about_h, h)).abs() < 1e-6 * sample.energy_j);
        }
    }
}

/// Of a rigid body: h . w / 2.
fn flight_energy(about_h: f64, h: DVec3) -> f64 {
    0.5 * about_h * h.length()
}

/// Euler's equations I w' = I w x w and q' = q (0, w) / 2 in plain components, by the classical
/// Runge-Kutta method in steps of 20 microseconds.
fn asymmetric_top(moments: DVec3, start: DQuat, h: DVec3, t_s: f64) -> DQuat {
    let steps = (t_s / 2e-5).round() as usize;
    let step_s = t_s / steps as f64;
    let slope = |(w, q): (DVec3, [f64; 4])| {
        let m = moments * w;
        let [qw, x, y, z] = q;
        (
            m.cross(w) / moments,
            [
                -0.5 * (x * w.x + y * w.y + z * w.z),
                0.5 * (qw * w.x + y * w.z - z * w.y),
                0.5 * (qw * w.y + z * w.x - x * w.z),
                0.5 * (qw * w.z + x * w.y - y * w.x),
            ],
        )
    };
    let on = |(w, q): (DVec3, [f64; 4]), k: (DVec3, [f64; 4]), s: f64| {
        (w + k.0 * s, std::array::from_fn(|i| q[i] + s * k.1[i]))
    };
    let mut now = (
        (start.conjugate() * h) / moments,
        [start.w, start.x, start.y, start.z],
    );
    for _ in 0..steps {
        let k1 = slope(now);
        let k2 = slope(on(now, k1, 0.5 * step_s));
        let k3 = slope(on(now, k2, 0.5 * step_s));
        let k4 = slope(on(now, k3, step_s));
        for (k, part) in [(k1, 1.0), (k2, 2.0), (k3, 2.0), (k4, 1.0)] {
            now = on(now, k, part * step_s / 6.0);
        }
    }
    let [w, x, y, z] = now.1;
    DQuat::from_xyzw(x, y, z, w).normalize()
}

/// An asymmetric top that starts about its middle axis turns over again and again (Landau & Lifshitz,
/// Mechanics, section 37); against the independent integration above.
#[test]
fn an_asymmetric_top_turns_over() {
    let moments = DVec3::new(9.0, 3.0, 6.0);
    for h in [
        DVec3::new(0.0, 0.0, 60.0),
        DVec3::new(-20.0, 45.0, 30.0),
        DVec3::new(0.0, -70.0, 0.0),
    ] {
        // The middle axis, z, nearly along h.
        let start = DQuat::from_rotation_arc(DVec3::Z, h.normalize()) * about(DVec3::X, 0.02);
        let mut flight =
            MotionFlight::released(rigid(moments), standing(), &high(start, h)).expect("a release");
        let samples = flown(&mut flight, 1.4, 14);
        let middle = |sample: &FlightSample| (sample.orientation() * DVec3::Z).dot(h) / h.length();
        assert!(samples.iter().any(|(sample, _)| middle(sample) < -0.9));
        for (sample, _) in &samples[1..] {
            let exact = asymmetric_top(moments, start, h, sample.t_s);
            let off = angle_between(sample.orientation(), exact);
            assert!(off < 1e-5, "{h}, {} s: {off:e}", sample.t_s);
        }
    }
}

/// Two equal halves, bent by a constant angle against each other about an axis that goes round.
struct Bent {
    half_bend_rad: f64,
    round_rad_s: f64,
}

impl JointMotion for Bent {
    fn at(&self, t_s: f64) -> (Posture, JointRates) {
        let (sin, cos) = libm::sincos(self.round_rad_s * t_s);
        let bend = 2.0 * self.half_bend_rad;
        let axis = DVec3::new(cos, 0.0, sin);
        let mut moving = (Posture::STANDING, STILL);
        moving.0[Segment::MiddleTrunk] = about(axis, bend);
        // For R = exp(b e(t)): w = sin b e' - (1 - cos b) e x e', in the moving axes.
        let turning = DVec3::new(-sin, 0.0, cos) * self.round_rad_s;
        let (sin_bend, cos_bend) = libm::sincos(bend);
        moving.1[Segment::MiddleTrunk as usize] =
            turning * sin_bend - axis.cross(turning) * (1.0 - cos_bend);
        moving
    }

    fn accelerations_at(&self, _: f64) -> JointAccelerations {
        unreachable!("a flight without loads asks for none")
    }

    fn sampling_from(&self, _: f64) -> Sampling {
        Sampling {
            longest_step_s: 0.004,
            smooth_until_s: f64::INFINITY,
        }
    }
}

/// A cat's way: without any angular momentum, a body that bends and lets the bend go round once turns
/// (Kane & Scher 1969, Int J Solids Struct 5:663-670). For two equal halves with moments J along and I across
/// their long axes, bent by 2 g, the plane of the bend goes round the line through both mass centres at P
/// while each half turns by s about its own axis against the plane. Both mass centres lie on that line,
/// so the momentum about it is 2 (I P sin² g + J (P cos g + s) cos g): zero for
/// P = - s J cos g / (I sin² g + J cos² g). After once round the bend is where it was and the body has
/// turned about the line by 2 pi P / s.
#[test]
fn bending_round_turns_a_body_without_momentum() {
    let (mass_kg, along, across) = (30.0, 0.5, 1.6);
    let half = |segment, cm_m| (segment, mass_kg, cm_m, DVec3::new(across, along, across));
    let joint_m = body().link(Segment::MiddleTrunk).joint_m;
    let apart_m = DVec3::Y * 0.25;
    let cat = || {
        made_of(&[
            half(Segment::LowerTrunk, joint_m - apart_m),
            half(Segment::MiddleTrunk, apart_m),
        ])
    };
    for half_bend_rad in [0.3, 0.6, 0.9] {
        for start in [DQuat::IDENTITY, about(DVec3::X, PI), about(DVec3::Z, 2.0)] {
            let round_s = 0.8;
            let motion = Bent {
                half_bend_rad,
                round_rad_s: TAU / round_s,
            };
            let mut flight = MotionFlight::released(cat(), motion, &high(start, DVec3::ZERO))
                .expect("a release");
            let samples = flown(&mut flight, round_s, 8);
            let (sin, cos) = libm::sincos(half_bend_rad);
            let turn = TAU * (1.0 - along * cos / (across * sin * sin + along * cos * cos));
            // The long axis of the lower half is tilted by g from the line, about the first bend axis.
            let line = start * about(DVec3::X, half_bend_rad) * DVec3::Y;
            let off = angle_between(samples[8].0.orientation(), exp(line * turn) * start);
            assert!(off < 1e-6, "{half_bend_rad}: {off:e} of {turn}");
            assert!(turn.abs() > 0.2);
            assert!(samples.iter().all(|(sample, _)| sample.inertia_kg_m2 > 0.0));
        }
    }
}

fn rotation() -> impl Strategy<Value = DQuat> {
    prop::array::uniform4(-1.0..1.0_f64).prop_filter_map("no direction", |[x, y, z, w]| {
        let q = DQuat::from_xyzw(x, y, z, w);
        (q.length() > 0.1).then(|| q.normalize())
    })
}

fn vector(most: f64) -> impl Strategy<Value = DVec3> {
    prop::array::uniform3(-most..most).prop_map(DVec3::from_array)
}

/// Targets for all joints, one posture after the other.
fn led() -> impl Strategy<Value = LedMotion> {
    let target = (1..SEGMENTS, rotation(), 0.0..0.8_f64, 0.05..0.4_f64);
    prop::collection::vec(target, 1..20).prop_map(|mut targets| {
        targets.sort_by(|a, b| a.2.total_cmp(&b.2));
        let mut motion = standing();
        for (segment, target, now_s, within_s) in targets {
            let target = exp(log(target) * 0.5);
            motion
                .lead(now_s, Segment::ALL[segment], target, within_s)
                .expect("a rotation and a fair time");
        }
        motion
    })
}

proptest! {
    #![proptest_config(space::cases(64))]

    /// Nothing of the turning knows which way is up: the same flight turned as a whole is the flight of
    /// what is let go so turned, also without momentum, and summed from the parts' own motion the angular
    /// momentum stays what it was.
    #[test]
    fn turned_as_a_whole(
        motion in led(),
        start in rotation(),
        h in prop_oneof![Just(DVec3::ZERO), vector(40.0)],
        turned in rotation(),
    ) {
        let fly = |turned: DQuat| {
            let release = high(turned * start, turned * h);
            let mut flight = MotionFlight::released(body(), motion.clone(), &release)
                .expect("a release");
            let samples = flown(&mut flight, 1.2, 6);
            (samples, flight.pose())
        };
        let ((plain, _), (other, pose)) = (fly(DQuat::IDENTITY), fly(turned));
        for ((a, about_a), (b, about_b)) in plain.iter().zip(&other) {
            let off = angle_between(turned * a.orientation(), b.orientation());
            prop_assert!(off < 1e-4, "{off:e} at {} s", a.t_s);
            if h != DVec3::ZERO {
                let off = about_a - about_b;
                prop_assert!(off.abs() < 1e-4, "{off:e} at {} s", a.t_s);
            }
        }
        let body = body();
        let moving = body_sums::cm_velocity(&body, &pose);
        let sum: DVec3 = body_sums::angular_momentum(
            &body,
            &pose,
            |i, _| pose.velocity_m_s(body.parts[i].segment, body.parts[i].cm_m) - moving,
            |i| pose.segment_rate_rad_s(body.parts[i].segment),
        );
        prop_assert!((sum - turned * h).length() < 1e-9 * (1.0 + h.length()), "{sum}");
    }

    /// A planned flight through the same interface is the planned flight: its turns, its touch-down, and
    /// that nothing but a sole meets the ice first.
    #[test]
    fn a_plan_is_a_motion_too(scenario in space::scenario()) {
        let planned = scenario.fly().flight;
        let mut flight = planned_release::released(&planned, planned.motion());
        let (end, expected) = (*flight.step(10.0), planned.touchdown());
        prop_assert!(flight.has_landed());
        prop_assert!((end.t_s - expected.t_s).abs() < 1e-5, "{} {}", end.t_s, expected.t_s);
        let off = angle_between(end.orientation(), expected.orientation());
        prop_assert!(off < 1e-4, "{off:e}");
        let turns = scenario.turning.sign() * end.air_turns();
        prop_assert!((turns - expected.air_turns()).abs() < 2e-5);
    }

    /// A flight that was led live, replayed from the record of its motion, is the same flight.
    #[test]
    fn a_replay_is_the_live_flight(scenario in space::scenario(), frames in 1..20_u32) {
        let (takeoff, _) = Plan::new(scenario.plan_spec()).at(0.0, f64::INFINITY);
        let body = Body::new(scenario.body_spec());
        let mut live =
            LiveFlight::launched(body.clone(), &takeoff, &scenario.launch(), scenario.turning);
        let release = Release {
            orientation: live.sample().orientation(),
            angular_momentum_kg_m2_s: live.h_kg_m2_s(),
            cm_height_m: live.sample().cm_height_m,
            speed_m_s: scenario.launch().speed_m_s(),
        };
        for (posture, within_s) in [(Posture::STANDING, 0.3), (takeoff, 0.2)] {
            live.aim_all(&posture, within_s).expect("a posture");
            for _ in 0..frames {
                live.step(0.06 / f64::from(frames));
            }
        }
        let expected = *live.step(10.0);
        let mut replay = MotionFlight::released(body, live.motion().clone(), &release)
            .expect("a release");
        let end = *replay.step(10.0);
        prop_assert!((end.t_s - expected.t_s).abs() < 1e-5);
        let off = angle_between(end.orientation(), expected.orientation());
        prop_assert!(off < 1e-4, "{off:e}");
    }
}

/// A body that falls head first lands on its crown, one that lies on its face, one that is upside down on
/// its hands if they are stretched out: by the height of the CM over that point.
#[test]
fn any_point_of_the_body_can_meet_the_ground() {
    let body = body();
    let above = |orientation: DQuat, posture: &Posture| {
        let release = Release {
            orientation,
            angular_momentum_kg_m2_s: DVec3::ZERO,
            cm_height_m: 2.0,
            speed_m_s: 0.0,
        };
        let motion = LedMotion::at_rest(posture);
        let mut flight = MotionFlight::released(body.clone(), motion, &release).expect("a release");
        flight.step(10.0);
        assert!(flight.has_landed() && flight.sample().lowest_m.abs() < 1e-9);
        (flight.sample().cm_height_m, flight.pose())
    };
    let crown_m = |pose: &turns_aloft::physics::flight::Pose| {
        let end_m = body.link(Segment::Head).end_m;
        pose.point_m(Segment::Head, end_m).y
    };
    let over = about(DVec3::X, PI);
    let (_, pose) = above(over, &Posture::STANDING);
    assert!(crown_m(&pose).abs() < 1e-9, "{}", crown_m(&pose));
    let mut handstand = Posture::STANDING;
    for arm in [Segment::LeftUpperArm, Segment::RightUpperArm] {
        handstand[arm] = about(DVec3::Z, PI);
    }
    let (_, pose) = above(over, &handstand);
    assert!(crown_m(&pose) > 0.2);
    // Lying: the trunk is the thickest but for the toes of a foot that points forward.
    let mut lying = Posture::STANDING;
    for foot in [Segment::LeftFoot, Segment::RightFoot] {
        lying[foot] = about(DVec3::Z, -FRAC_PI_2);
    }
    let (height_m, _) = above(about(DVec3::Z, -FRAC_PI_2), &lying);
    assert!((0.05..0.25).contains(&height_m), "{height_m}");
}

#[test]
fn what_cannot_be_let_go_is_refused() {
    let good = high(DQuat::IDENTITY, DVec3::Y);
    let refused = |release: Release| {
        MotionFlight::released(body(), standing(), &release).expect_err("it is refused")
    };
    let orientation = DQuat::from_xyzw(1.0, 1.0, 0.0, 0.0);
    assert_eq!(
        refused(Release {
            orientation,
            ..good
        }),
        ReleaseError::NotARotation
    );
    for release in [
        Release {
            angular_momentum_kg_m2_s: DVec3::splat(f64::NAN),
            ..good
        },
        Release {
            cm_height_m: f64::INFINITY,
            ..good
        },
        Release {
            speed_m_s: f64::NAN,
            ..good
        },
    ] {
        assert_eq!(refused(release), ReleaseError::OutOfRange);
    }
}
