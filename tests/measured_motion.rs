//! Splines through measured rotations: they go through them, are smooth, and where a joint turns about
//! one axis they are the cubic spline of its angle.

#[path = "support/planned_release.rs"]
mod planned_release;

use glam::{DQuat, DVec3};
use proptest::prelude::*;
use proptest::test_runner::RngSeed;

use turns_aloft::physics::body::Segment;
use turns_aloft::physics::joint_motion::JointMotion;
use turns_aloft::physics::measured_motion::{MeasuredMotion, SamplesError};
use turns_aloft::physics::posture::Posture;
use turns_aloft::physics::rotation::{about, exp, log};
use turns_aloft::scenario::starts;

const ARM: Segment = Segment::RightUpperArm;

fn posture(rotation: DQuat) -> Posture {
    let mut posture = Posture::STANDING;
    posture[ARM] = rotation;
    posture
}

/// The clamped cubic spline through (0, 0), (1, 1), (2, 0) whose slope at both ends is that of the chord,
/// 1 and -1: by hand, its slope in the middle is 0, and between the first two it is x + x² - x³.
#[test]
fn about_one_axis_it_is_a_cubic_spline() {
    let axis = DVec3::new(2.0, -1.0, 2.0) / 3.0;
    let postures = [0.0, 1.0, 0.0].map(|angle_rad| posture(about(axis, angle_rad)));
    let motion = MeasuredMotion::new(vec![0.0, 1.0, 2.0], &postures).expect("good samples");
    for x in [0.0, 0.2, 0.5, 0.9, 0.999_999] {
        let (found, rates) = motion.at(x);
        let angle = x + x * x - x * x * x;
        assert!((log(found[ARM]) - axis * angle).length() < 1e-12);
        let rate = 1.0 + 2.0 * x - 3.0 * x * x;
        assert!((rates[ARM as usize] - axis * rate).length() < 1e-11);
        let change = motion.accelerations_at(x)[ARM as usize];
        assert!((change - axis * (2.0 - 6.0 * x)).length() < 1e-10);
    }
}

fn rotations() -> impl Strategy<Value = (Vec<f64>, Vec<Posture>)> {
    let step = (0.01..0.1_f64, prop::array::uniform3(-0.9..0.9_f64));
    prop::collection::vec(step, 2..12).prop_map(|steps| {
        let (mut t_s, mut rotation) = (0.0, DQuat::IDENTITY);
        let mut samples = (Vec::new(), Vec::new());
        for (step_s, turn) in steps {
            t_s += step_s;
            rotation = (rotation * exp(DVec3::from_array(turn))).normalize();
            samples.0.push(t_s);
            samples.1.push(posture(rotation));
        }
        samples
    })
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, rng_seed: RngSeed::Fixed(1997), ..ProptestConfig::with_cases(128) })]

    /// Through every sample; rate and acceleration are those of the rotations (central differences),
    /// and neither jumps at a sample.
    #[test]
    fn through_the_samples_and_smooth((times_s, postures) in rotations()) {
        let motion = MeasuredMotion::new(times_s.clone(), &postures).expect("good samples");
        let tiny_s = 1e-9;
        for (i, (&t_s, expected)) in times_s.iter().zip(&postures).enumerate() {
            let (found, rate) = motion.at(t_s);
            let off = log(found[ARM].conjugate() * expected[ARM]).length();
            prop_assert!(off < 1e-12, "{off:e}");
            if i == 0 || i + 1 == times_s.len() {
                continue;
            }
            let (_, before) = motion.at(t_s - tiny_s);
            let jump = (rate[ARM as usize] - before[ARM as usize]).length();
            let changes = [t_s - tiny_s, t_s].map(|t_s| motion.accelerations_at(t_s)[ARM as usize]);
            let size = 1.0 + changes[0].length();
            prop_assert!(jump < 1e-8 * size, "{jump:e}");
            let jump = (changes[1] - changes[0]).length();
            prop_assert!(jump < 1e-5 * size, "{jump:e} of {size}");
        }
        for pair in times_s.windows(2) {
            let (t_s, step_s) = (0.7 * pair[0] + 0.3 * pair[1], 1e-4 * (pair[1] - pair[0]));
            let [before, after] = [t_s - step_s, t_s + step_s].map(|t_s| motion.at(t_s));
            let (_, rates) = motion.at(t_s);
            let turned = log(before.0[ARM].conjugate() * after.0[ARM]) / (2.0 * step_s);
            let off = (turned - rates[ARM as usize]).length();
            prop_assert!(off < 1e-4 * (1.0 + turned.length()), "{off:e}");
            let change = (after.1[ARM as usize] - before.1[ARM as usize]) / (2.0 * step_s);
            let off = (change - motion.accelerations_at(t_s)[ARM as usize]).length();
            prop_assert!(off < 1e-4 * (1.0 + change.length()), "{off:e}");
        }
    }
}

/// A planned flight measured 200 times a second turns as far as the plan itself, to a thousandth of a turn.
#[test]
fn a_measured_plan_flies_as_the_plan() {
    for start in starts::all() {
        let planned = start.scenario.fly().flight;
        let motion = planned.motion();
        let times_s: Vec<f64> = (0..400).map(|i| 0.005 * f64::from(i)).collect();
        let postures: Vec<Posture> = times_s.iter().map(|&t_s| motion.at(t_s).0).collect();
        let measured = MeasuredMotion::new(times_s, &postures).expect("good samples");
        let mut flight = planned_release::released(&planned, measured);
        let turns = start.scenario.turning.sign() * flight.step(10.0).air_turns();
        let off = turns - planned.touchdown().air_turns();
        assert!(off.abs() < 1e-3, "{}: {off:e}", start.name);
    }
}

#[test]
fn bad_samples_are_refused() {
    let still = |count: usize| vec![Posture::STANDING; count];
    let refused = |times_s: Vec<f64>, postures: &[Posture]| {
        MeasuredMotion::new(times_s, postures).expect_err("it is refused")
    };
    assert_eq!(refused(vec![], &still(0)), SamplesError::Count);
    assert_eq!(refused(vec![0.0], &still(1)), SamplesError::Count);
    assert_eq!(refused(vec![0.0, 1.0], &still(3)), SamplesError::Count);
    assert_eq!(refused(vec![0.0, 0.0], &still(2)), SamplesError::Times);
    assert_eq!(refused(vec![0.0, 1e-9], &still(2)), SamplesError::Times);
    assert_eq!(refused(vec![0.0, f64::NAN], &still(2)), SamplesError::Times);
    assert_eq!(
        refused(vec![f64::NEG_INFINITY, 0.0], &still(2)),
        SamplesError::Times
    );
    let bad = [
        posture(DQuat::from_xyzw(1.0, 1.0, 0.0, 0.0)),
        Posture::STANDING,
    ];
    assert_eq!(refused(vec![0.0, 1.0], &bad), SamplesError::NotARotation);
    let far = [posture(about(DVec3::X, 2.5)), Posture::STANDING];
    assert_eq!(refused(vec![0.0, 1.0], &far), SamplesError::TooFarApart);
}
