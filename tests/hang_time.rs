//! Hang time in place of jump height. The closed form is that of a thrown body (any mechanics text): up to
//! the top in sqrt(2 h/g), down from there in sqrt(2 (h + d)/g), where the centre of mass comes down
//! by d lower than it left.

#[path = "support/aloft.rs"]
mod command;

use command::aloft;
use proptest::prelude::*;
use serde_json::Value;

use turns_aloft::analysis::hang_time::{
    self, RefusedHangTime, half_width_s, height_half_width_m, height_m, range_s,
};
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::{Scenario, starts};
use turns_aloft::session::Session;

const G_M_S2: f64 = 9.806_65;

fn at_height(scenario: &Scenario, height_m: f64) -> Scenario {
    let mut other = scenario.clone();
    Parameter::JumpHeight.hold(&mut other, height_m);
    other
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(40))]

    /// The height found hangs for just that long, by a flight of its own and by the closed form.
    #[test]
    fn the_height_found_is_in_the_air_so_long(
        start in 0..starts::all().len(),
        part in 0.0..1.0_f64,
        openness in 0.0..1.0_f64,
        lead_s in 0.0..0.4_f64,
    ) {
        let mut scenario = starts::all()[start].scenario.clone();
        Parameter::TakeoffOpenness.hold(&mut scenario, openness);
        Parameter::OpenLead.hold(&mut scenario, lead_s);
        let jump = scenario.fly();
        let [least_s, most_s] = range_s(&scenario, &jump);
        let wanted_s = least_s + part * (most_s - least_s);
        let height_m = height_m(&scenario, &jump, wanted_s).expect("it is between the ends");
        let flown = at_height(&scenario, height_m).fly();
        prop_assert!((flown.readout.hang_time_s - wanted_s).abs() < 1e-9);
        let [left, down] = [0.0, wanted_s].map(|t_s| flown.flight.at(t_s).cm_height_m);
        let fall_m = height_m + left - down;
        let closed_s = (2.0 * height_m / G_M_S2).sqrt() + (2.0 * fall_m / G_M_S2).sqrt();
        prop_assert!((closed_s - wanted_s).abs() < 1e-9, "{closed_s} against {wanted_s}");
    }

    /// A half-width is the same one, entered either way.
    #[test]
    fn a_half_width_is_entered_either_way(
        start in 0..starts::all().len(),
        half_width_m in 0.001..0.15_f64,
    ) {
        let scenario = &starts::all()[start].scenario;
        let jump = scenario.fly();
        let made_s = half_width_s(scenario, &jump, half_width_m);
        let back_m = height_half_width_m(scenario, &jump, made_s);
        prop_assert!((back_m - half_width_m).abs() < 1e-6, "{half_width_m} became {back_m}");
    }
}

/// The legs are bent otherwise at landing than at take-off, so the plain g t²/8 of a measured hang time is
/// near the height, and not it.
#[test]
fn a_ball_in_the_air_so_long_would_rise_a_little_otherwise() {
    for start in starts::all() {
        let jump = start.scenario.fly();
        let ball_m = G_M_S2 * jump.readout.hang_time_s.powi(2) / 8.0;
        let off_m = (ball_m - start.scenario.jump_height_m).abs();
        assert!((1e-4..0.02).contains(&off_m), "{}: {off_m}", start.name);
    }
}

/// Where there is room it stands with the height; any other number stands alone.
#[test]
fn it_is_told_with_the_height() {
    let session = Session::default();
    let told = |parameter| session.value_text(parameter);
    assert_eq!(told(Parameter::JumpHeight), "28 cm, 0.48 s in the air");
    assert_eq!(told(Parameter::ArmTuck), "60 %");
}

#[test]
fn what_no_height_gives_is_refused() {
    let scenario = &starts::all()[0].scenario;
    let jump = scenario.fly();
    let ends_s = range_s(scenario, &jump);
    for wanted_s in [0.0, -1.0, 5.0, f64::INFINITY] {
        assert_eq!(
            height_m(scenario, &jump, wanted_s),
            Err(RefusedHangTime::OutOfRange {
                value_s: wanted_s,
                range_s: ends_s
            })
        );
    }
    assert!(height_m(scenario, &jump, f64::NAN).is_err());
}

fn report(arguments: &[&str]) -> Value {
    let output = aloft(arguments);
    assert!(output.status.success(), "{arguments:?}");
    serde_json::from_slice(&output.stdout).expect("it prints JSON")
}

fn refused(arguments: &[&str]) -> String {
    let output = aloft(arguments);
    assert_eq!(output.status.code(), Some(2), "{arguments:?}");
    String::from_utf8_lossy(&output.stderr).trim().to_owned()
}

#[test]
fn the_command_takes_a_hang_time_in_place_of_a_height() {
    let fly = |settings: &[&str]| report(&[&["fly", "four-turns", "--set"], settings].concat());
    let flown = fly(&["hang_time_s=0.65", "open_lead_s=0.2"]);
    let hang_s = flown[hang_time::KEY].as_f64().expect("a number");
    assert!((hang_s - 0.65).abs() < 1e-9, "{hang_s}");
    // It follows from the others wherever it stands.
    assert_eq!(flown, fly(&["open_lead_s=0.2", "hang_time_s=0.65"]));
    let height = format!("jump_height_m={}", flown["jump_height_m"]);
    assert_eq!(flown, fly(&["open_lead_s=0.2", &height]));
    // Of both the last one counts.
    assert_eq!(
        fly(&["hang_time_s=0.65", "jump_height_m=0.5"]),
        fly(&["jump_height_m=0.5"])
    );
    let both = fly(&["jump_height_m=0.5", "hang_time_s=0.65"]);
    assert_eq!(both, fly(&["hang_time_s=0.65"]));
}

#[test]
fn the_command_says_what_hang_time_may_be() {
    let set = |setting| refused(&["fly", "four-turns", "--set", setting]);
    assert!(set("hang_time_s=9").contains("hang_time_s = 9 is out of range"));
    assert!(set("hang_time_s=long").contains("hang_time_s = long is not a number"));
    assert!(set("hung_time_s=1").contains("hang_time_s"));
    let half_width = |setting| refused(&["fly", "four-turns", "--half-width", setting]);
    for setting in ["hang_time_s=9", "hang_time_s=-1", "hang_time_s=wide"] {
        assert!(
            half_width(setting).contains("half-width of hang_time_s"),
            "{setting}"
        );
    }
}

/// The range is that of the height's half-width that makes the hang time's.
#[test]
fn the_command_takes_the_half_width_of_a_hang_time() {
    let ranged = report(&["fly", "four-turns", "--half-width", "hang_time_s=0.05"]);
    let scenario = &starts::named("four-turns")
        .expect("a starting point")
        .scenario;
    let height_m = height_half_width_m(scenario, &scenario.fly(), 0.05);
    let setting = format!("jump_height_m={height_m}");
    let same = report(&["fly", "four-turns", "--half-width", &setting]);
    assert_eq!(ranged, same);
    // By hand it is less sure than by a video of 60 pictures a second.
    let usual = report(&["fly", "four-turns", "--range"]);
    let high = |report: &Value| report["turns_high"].as_f64().expect("a number");
    assert!(high(&ranged) > high(&usual));
}
