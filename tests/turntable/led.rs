//! Led by hand: whatever a finger does, joints keep within their limits, and the books balance.

use proptest::prelude::*;
use rand::SeedableRng as _;
use rand::rngs::StdRng;

use turns_aloft::physics::body::Segment;
use turns_aloft::physics::posture::Posture;
use turns_aloft::physics::rotation::log;
use turns_aloft::turntable::position::Limbs;
use turns_aloft::turntable::run::STEP_S;
use turns_aloft::turntable::{Friction, Position, Sample, Setup, Stand, Turntable};

use crate::person::sums;

const FRAME_S: f64 = 1.0 / 60.0;

const OUT: Position = Position {
    hand_distance_m: 0.7,
    legs: 0.0,
    twist_rad: 0.0,
};

fn on(stand: Stand, rate_rad_s: f64) -> Setup {
    Setup {
        rate_rad_s,
        ..Setup::on(stand)
    }
}

/// A finger that goes anywhere, now and then stays where it is for a while, and now and then pushes.
struct Finger(StdRng);

impl Finger {
    fn new(seed: u64) -> Self {
        Self(StdRng::seed_from_u64(seed))
    }

    fn drag(&mut self, turntable: &mut Turntable) {
        if self.0.random_bool(0.2) {
            turntable.lead(&Position {
                hand_distance_m: self.0.random_range(0.0..1.0),
                legs: self.0.random_range(0.0..1.0),
                twist_rad: self.0.random_range(-1.0..1.0),
            });
        }
        if self.0.random_bool(0.01) {
            turntable.push(self.0.random_range(-3.0..3.0));
        }
    }
}

/// The energy that is there, and what came in and went out.
fn left_over_j(start: &Sample, now: &Sample) -> f64 {
    now.kinetic_j - start.kinetic_j - now.work_j - now.pushed_j + now.heat_j
}

/// An hour of random dragging, with friction and with pushes: energy is where it came from, to 1e-6 of the
/// most that was there at any time.
#[test]
fn an_hour_of_dragging_loses_no_energy() {
    for stand in [Stand::Platform, Stand::Ice] {
        let mut turntable = Turntable::new(&on(stand, 3.0), &OUT).expect("in range");
        let (start, mut finger) = (turntable.readout(), Finger::new(1));
        let (mut most_j, mut worst_j) = (start.kinetic_j, 0.0_f64);
        for _ in 0..3600 * 60 {
            finger.drag(&mut turntable);
            turntable.step(FRAME_S);
            let now = turntable.readout();
            most_j = most_j.max(now.kinetic_j);
            worst_j = worst_j.max(left_over_j(&start, &now).abs());
        }
        let end = turntable.readout();
        assert!(end.t_s > 3599.9);
        // It has been busy.
        assert!(end.heat_j > most_j && end.pushed_j > most_j, "{end:?}");
        assert!(worst_j <= 1e-6 * most_j, "{worst_j} of {most_j}");
    }
}

/// An hour of it without friction and pushes: the momentum, summed part by part from how every joint turns and
/// the rate that is read, stays.
#[test]
fn an_hour_of_dragging_loses_no_momentum() {
    let setup = Setup {
        friction: Friction::NONE,
        hips_forward_m: 0.1,
        ..on(Stand::Ice, 3.0)
    };
    let mut turntable = Turntable::new(&setup, &OUT).expect("in range");
    let (start, mut finger) = (turntable.readout(), Finger::new(2));
    let mut before = start;
    let (mut worst, mut worst_j, mut most_j) = (0.0_f64, 0.0_f64, 0.0_f64);
    for _ in 0..3600 * 60 {
        finger.0.random_bool(0.2).then(|| {
            turntable.lead(&Position {
                hand_distance_m: finger.0.random_range(0.0..1.0),
                legs: finger.0.random_range(0.0..1.0),
                twist_rad: finger.0.random_range(-1.0..1.0),
            });
        });
        turntable.step(FRAME_S);
        let now = turntable.readout();
        let moving = (turntable.posture(), turntable.joint_rates());
        let (summed, _) = sums(turntable.person(), moving, now.rate_rad_s);
        worst = worst.max((summed - start.momentum_kg_m2_s).abs());
        most_j = most_j.max(now.kinetic_j);
        worst_j = worst_j.max(left_over_j(&start, &now).abs());
        assert!(now.turned_rad != before.turned_rad);
        before = now;
    }
    assert!(worst <= 1e-9 * start.momentum_kg_m2_s, "{worst}");
    assert!(worst_j <= 1e-6 * most_j, "{worst_j} of {most_j}");
}

/// The posture turns as the joint rates say, and the readout's angle as its rate does: by differences over a
/// step.
#[test]
fn the_rates_are_those_that_the_pictures_show() {
    let setup = on(Stand::Chair, 2.0);
    let mut turntable = Turntable::new(&setup, &OUT).expect("in range");
    let mut finger = Finger::new(3);
    for _ in 0..300 {
        finger.drag(&mut turntable);
        for _ in 0..20 {
            let before = (
                turntable.readout(),
                turntable.posture(),
                turntable.joint_rates(),
            );
            turntable.step(STEP_S);
            let now = turntable.readout();
            let time_s = now.t_s - before.0.t_s;
            if time_s == 0.0 {
                continue;
            }
            let mean = (now.turned_rad - before.0.turned_rad) / time_s;
            assert!((mean - 0.5 * (now.rate_rad_s + before.0.rate_rad_s)).abs() < 2e-3);
            let (posture, rates) = (turntable.posture(), turntable.joint_rates());
            for segment in Segment::ALL {
                let turned = log(before.1[segment].conjugate() * posture[segment]) / time_s;
                let i = segment as usize;
                assert!((turned - (rates[i] + before.2[i]) * 0.5).length() < 1e-9);
            }
        }
    }
}

fn fastest(before: &Posture, after: &Posture, time_s: f64) -> [f64; 3] {
    let mut fastest = [0.0_f64; 3];
    for segment in Segment::ALL {
        let turned = log(before[segment].conjugate() * after[segment]).length() / time_s;
        let name = segment.name();
        let of = if ["arm", "hand"].iter().any(|part| name.contains(part)) {
            Limbs::Arms
        } else if ["thigh", "shank", "foot"]
            .iter()
            .any(|part| name.contains(part))
        {
            Limbs::Legs
        } else {
            Limbs::Trunk
        };
        fastest[of as usize] = fastest[of as usize].max(turned);
    }
    fastest
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(60))]

    /// However wild a finger is, no joint turns faster than its limit, and nothing is a number that is none.
    #[test]
    fn no_finger_moves_a_joint_faster_than_its_limit(
        stand in crate::person::stand(),
        finger in prop::collection::vec(
            (prop::num::f64::ANY, prop::num::f64::ANY, prop::num::f64::ANY, prop::num::f64::ANY, prop::num::f64::ANY),
            1..40,
        ),
        near in prop::collection::vec((0.0..0.9, 0.0..1.0, -0.8..0.8, -50.0..50.0, 0.0..0.1), 1..40),
    ) {
        let mut turntable = Turntable::new(&on(stand, 1.0), &OUT).expect("in range");
        for (hand_distance_m, legs, twist_rad, push, passed_s) in finger.into_iter().chain(near) {
            turntable.lead(&Position { hand_distance_m, legs, twist_rad });
            turntable.push(push);
            turntable.step(passed_s);
            for _ in 0..5 {
                let before = (turntable.posture(), turntable.readout().t_s);
                turntable.step(STEP_S);
                let now = turntable.readout();
                if now.t_s > before.1 {
                    let found = fastest(&before.0, &turntable.posture(), now.t_s - before.1);
                    for limbs in Limbs::ALL {
                        let most = limbs.fastest_rad_s() * (1.0 + 1e-9);
                        prop_assert!(found[limbs as usize] <= most, "{limbs:?} {found:?}");
                    }
                }
                let numbers = [
                    now.t_s, now.rate_rad_s, now.turned_rad, now.inertia_kg_m2, now.momentum_kg_m2_s,
                    now.kinetic_j, now.work_j, now.heat_j, now.pushed_j, now.position.hand_distance_m,
                    now.position.legs, now.position.twist_rad,
                ];
                prop_assert!(numbers.iter().all(|number| number.is_finite()), "{now:?}");
            }
        }
    }

    /// The same leading gives the same run whatever pieces the time comes in, and winding back forgets what came
    /// later, to the last bit.
    #[test]
    fn a_run_is_the_same_whatever_the_pictures_and_after_winding_back(
        leads in prop::collection::vec((0.0..0.9, 0.0..1.0, -0.7..0.7, -1.0..1.0), 8..30),
        back in 0.1..0.9,
    ) {
        let led_on = |turntable: &mut Turntable, pieces: u32, leads: &[(f64, f64, f64, f64)]| {
            for &(hand_distance_m, legs, twist_rad, push) in leads {
                turntable.lead(&Position { hand_distance_m, legs, twist_rad });
                turntable.push(push);
                for _ in 0..pieces {
                    turntable.step(0.2 / f64::from(pieces) + 1e-9);
                }
            }
        };
        let run = |pieces: u32, leads: &[(f64, f64, f64, f64)]| {
            let mut turntable = Turntable::new(&on(Stand::Ice, 2.0), &OUT).expect("in range");
            led_on(&mut turntable, pieces, leads);
            turntable
        };
        let kept = ((leads.len() as f64 * back) as usize).max(1);
        let (coarse, fine) = (run(1, &leads), run(10, &leads));
        prop_assert_eq!(coarse.readout(), fine.readout());
        prop_assert_eq!(coarse.run(), fine.run());
        let mut back = coarse.clone();
        back.wind_back(0.2 * kept as f64);
        let mut short = run(1, &leads[..kept]);
        prop_assert_eq!(back.readout(), short.readout());
        prop_assert_eq!(back.run(), short.run());
        // And goes on as if nothing else had been.
        for turntable in [&mut back, &mut short] {
            led_on(turntable, 1, &leads[..2]);
            turntable.wind_back(0.2 * kept as f64 + 0.1);
        }
        prop_assert_eq!(back.readout(), short.readout());
        prop_assert_eq!(back.run(), short.run());
    }
}

/// A finger that jumps is followed at once, and without passing it.
#[test]
fn the_hands_follow_quickly_and_do_not_overshoot() {
    for stand in Stand::ALL {
        let mut turntable = Turntable::new(&on(stand, 1.0), &OUT).expect("in range");
        let [nearest, farthest] = turntable.person().reach_m();
        for target_m in [nearest + 0.05, farthest - 0.05, 0.4, 0.41] {
            let from_m = turntable.readout().position.hand_distance_m;
            turntable.lead(&Position {
                hand_distance_m: target_m,
                ..OUT
            });
            let mut reached_s = None;
            for i in 1..=60 {
                turntable.step(FRAME_S);
                let hands_m = turntable.readout().position.hand_distance_m;
                let passed_m = (hands_m - target_m) * (target_m - from_m).signum();
                assert!(passed_m < 1e-4, "{stand:?}: {passed_m}");
                if passed_m > -0.005 && reached_s.is_none() {
                    reached_s = Some(f64::from(i) * FRAME_S);
                }
            }
            assert!(
                reached_s.is_some_and(|s| s < 0.45),
                "{stand:?}: {reached_s:?}"
            );
            let hands_m = turntable.readout().position.hand_distance_m;
            assert!((hands_m - target_m).abs() < 1e-9);
        }
    }
}

/// A rate that is set is turned at, and what it took is told.
#[test]
fn a_rate_can_be_set() {
    let mut turntable = Turntable::new(&on(Stand::Chair, 0.0), &OUT).expect("in range");
    assert!(turntable.is_still());
    turntable.set_rate(2.0);
    let now = turntable.readout();
    assert!((now.rate_rad_s - 2.0).abs() < 1e-12 && !turntable.is_still());
    assert!((now.pushed_j - 0.5 * now.inertia_kg_m2 * 4.0).abs() < 1e-9);
    turntable.set_rate(1e9);
    assert!((turntable.readout().rate_rad_s - 40.0).abs() < 1e-9);
    turntable.set_rate(f64::NAN);
    assert!((turntable.readout().rate_rad_s - 40.0).abs() < 1e-9);
    turntable.set_rate(0.5);
    // Friction brings it to rest, and there it stays.
    for _ in 0..120 {
        turntable.step(0.25);
    }
    assert!(turntable.is_still());
    assert!(turntable.run().samples.len() > 1000);
}

/// After an hour it goes on no further, and says so.
#[test]
fn an_hour_is_the_end() {
    let mut turntable = Turntable::new(&on(Stand::Platform, 1.0), &OUT).expect("in range");
    for _ in 0..3600 * 5 {
        turntable.step(0.25);
    }
    assert!(turntable.is_full());
    assert_eq!(turntable.readout().t_s, 3600.0);
    turntable.wind_back(10.0);
    assert!(!turntable.is_full() && turntable.readout().t_s == 10.0);
}
