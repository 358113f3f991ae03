//! A device held to the chest of somebody who turns on the spot.

use glam::{DQuat, DVec3};

use turns_aloft::physics::GRAVITY_M_S2;
use turns_aloft::physics::rotation::about;
use turns_aloft::trace::{AboutVertical, CountedAbout};

/// How the device is held: from its axes to those of the chest, x to the front and z up.
fn held() -> [DQuat; 3] {
    [
        DQuat::IDENTITY,
        about(DVec3::X, 1.3),
        about(DVec3::new(2.0, -1.0, 2.0) / 3.0, 2.2),
    ]
}

/// From the axis, m.
const AWAY_M: f64 = 0.2;

/// At rest, turned to 4 rad/s within a second, and slower again.
fn turning_rad_s(t_s: f64) -> f64 {
    match t_s {
        ..2.0 => 0.0,
        ..3.0 => 4.0 * (t_s - 2.0),
        _ => 4.0 - 0.3 * (t_s - 3.0),
    }
}

/// What the device reads at a time, its chest swaying: rates in its axes, and the acceleration with gravity.
fn read(t_s: f64, held: DQuat) -> (DVec3, DVec3) {
    let rate = turning_rad_s(t_s);
    let sway = 0.1 * DVec3::new(libm::sin(7.0 * t_s), libm::sin(5.0 * t_s), 0.0);
    let rates = DVec3::new(0.0, 0.0, rate) + sway;
    let acceleration = DVec3::new(-AWAY_M * rate * rate, 0.0, GRAVITY_M_S2);
    (held.conjugate() * rates, held.conjugate() * acceleration)
}

fn recorded(
    mut change: impl FnMut(DVec3, DVec3) -> (DVec3, Option<DVec3>),
    held: DQuat,
) -> AboutVertical {
    let mut all = AboutVertical::default();
    for i in 0..600 {
        let t_s = f64::from(i) / 60.0;
        let (rate, acceleration) = read(t_s, held);
        let (rate, acceleration) = change(rate, acceleration);
        all.push(100.0 + t_s, rate, acceleration);
    }
    all
}

/// The largest error, rad/s.
fn error_rad_s(all: &AboutVertical) -> f64 {
    let rate = all.rates_rad_s();
    let errors =
        (0..all.t_s().len()).map(|i| (rate(i) - turning_rad_s(all.t_s()[i] - 100.0)).abs());
    errors.fold(0.0, f64::max)
}

#[test]
fn the_rate_is_that_about_the_vertical_however_it_is_held() {
    for held in held() {
        let all = recorded(|rate, acceleration| (rate, Some(acceleration)), held);
        assert_eq!(all.counted_about(), CountedAbout::Vertical);
        // The sway is a tenth of a radian a second, and about other axes.
        assert!(error_rad_s(&all) < 0.01, "{held}: {}", error_rad_s(&all));
        // As others have the signs: of gravity, and of the order of the axes.
        let all = recorded(|rate, acceleration| (rate, Some(-acceleration)), held);
        assert!(error_rad_s(&all) < 0.01, "{held}");
        let all = recorded(
            |rate, acceleration| (DVec3::new(rate.z, rate.x, rate.y), Some(acceleration)),
            held,
        );
        assert!(error_rad_s(&all) < 0.01, "{held}: {}", error_rad_s(&all));
    }
}

/// Without an accelerometer, or with one that gravity has been taken out of, the size of the rate is all there is.
#[test]
fn without_gravity_the_size_is_taken() {
    for held in held() {
        let up = held.conjugate() * DVec3::new(0.0, 0.0, GRAVITY_M_S2);
        let none = recorded(|rate, _| (rate, None), held);
        let without = recorded(|rate, acceleration| (rate, Some(acceleration - up)), held);
        for all in [none, without] {
            assert_eq!(all.counted_about(), CountedAbout::AnyAxis);
            let error = error_rad_s(&all);
            assert!((0.05..0.2).contains(&error), "the sway counts: {error}");
        }
    }
}

#[test]
fn what_is_no_reading_is_left_out() {
    let mut all = AboutVertical::default();
    assert_eq!(all.counted_about(), CountedAbout::AnyAxis);
    for (t_s, rate) in [
        (1.0, 1.0),
        (1.0, 2.0),
        (0.5, 2.0),
        (f64::NAN, 2.0),
        (2.0, f64::INFINITY),
        (3.0, 3.0),
    ] {
        all.push(t_s, DVec3::new(0.0, 0.0, rate), Some(DVec3::NAN));
    }
    assert_eq!(all.t_s(), [1.0, 3.0]);
    let rate = all.rates_rad_s();
    assert_eq!([rate(0), rate(1)], [1.0, 3.0]);
}
