//! Numbers as people type them. The expected values follow from the definitions of the units: inch
//! 0.0254 m, pound 0.453 592 37 kg (international yard and pound agreement, 1959), a turn 2 pi rad.

use std::f64::consts::TAU;

use turns_aloft::describe::typed::{Admissible, typed};
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::units::{LengthUnit, MassUnit, RateUnit, Units};
use turns_aloft::words::{Language, set_language};

fn units(length: LengthUnit) -> Units {
    Units {
        length,
        ..Units::default()
    }
}

#[track_caller]
fn assert_typed(text: &str, parameter: Parameter, units: &Units, expected: f64) {
    let value = typed(text, parameter, units).expect("it is a number");
    assert!((value - expected).abs() < 1e-9, "{text}: {value}");
}

#[test]
fn a_stature_may_be_written_in_any_unit_of_length() {
    for length in LengthUnit::ALL {
        let units = units(length);
        for text in [
            "1.48", "1,48", "1.48 m", "1.48m", "148", "148 cm", "148CM", "1480 mm",
        ] {
            assert_typed(text, Parameter::Stature, &units, 1.48);
        }
        for text in ["58 in", "58\"", "58 inches"] {
            assert_typed(text, Parameter::Stature, &units, 58.0 * 0.0254);
        }
    }
}

#[test]
fn a_stature_may_be_written_in_feet_and_inches() {
    for text in ["4 ft 10 in", "4ft10", "4'10\"", "4' 10", "4′10″"] {
        assert_typed(text, Parameter::Stature, &Units::default(), 58.0 * 0.0254);
    }
    assert_typed("5 ft", Parameter::Stature, &Units::default(), 60.0 * 0.0254);
}

/// What may have been meant, the likeliest first; nothing where nothing fits.
#[test]
fn what_is_out_of_range_has_its_likely_meanings() {
    let likely = |text, parameter| Admissible::of(parameter).likely_meant(text, &Units::default());
    for (text, parameter, meant) in [
        ("14.8", Parameter::Stature, vec!["148 cm"]),
        ("14.8 cm", Parameter::Stature, vec!["148 cm"]),
        ("5.5", Parameter::Stature, vec!["167.64 cm (5.5 ft)"]),
        ("485", Parameter::BodyMass, vec!["48.50 kg"]),
        ("80", Parameter::CloseTime, vec!["0.08 s (80 ms)", "0.80 s"]),
        (
            "2",
            Parameter::TakeoffRate,
            vec!["120 rpm (2 turns/s)", "19 rpm (2 rad/s)"],
        ),
        ("99999", Parameter::JumpHeight, vec![]),
        ("tall", Parameter::Stature, vec![]),
    ] {
        assert_eq!(likely(text, parameter), meant, "{text}");
    }
}

#[test]
fn a_number_that_is_in_range_in_the_users_unit_is_taken_so() {
    // 0.45 is a height in metres, 45 one in centimetres.
    assert_typed("0.45", Parameter::JumpHeight, &units(LengthUnit::Cm), 0.45);
    assert_typed("45", Parameter::JumpHeight, &units(LengthUnit::M), 0.45);
    // 20 is a height in inches, and one in centimetres.
    assert_typed("20", Parameter::JumpHeight, &units(LengthUnit::Cm), 0.20);
    assert_typed("20", Parameter::JumpHeight, &units(LengthUnit::In), 0.508);
    assert_typed("24.5", Parameter::JumpHeight, &units(LengthUnit::Cm), 0.245);
}

#[test]
fn every_kind_of_number_has_its_units() {
    let usual = Units::default();
    assert_typed(
        "300 rpm",
        Parameter::TakeoffRate,
        &usual,
        10.0 * std::f64::consts::PI,
    );
    assert_typed("2 turns/s", Parameter::TakeoffRate, &usual, 2.0 * TAU);
    assert_typed("360 °/s", Parameter::TakeoffRate, &usual, TAU);
    assert_typed("100 lb", Parameter::BodyMass, &usual, 45.359_237);
    assert_typed("250 g", Parameter::HandMass, &usual, 0.25);
    assert_typed("80 ms", Parameter::CloseTime, &usual, 0.08);
    assert_typed("5°", Parameter::Lean, &usual, 5.0_f64.to_radians());
    assert_typed("70 %", Parameter::ArmTuck, &usual, 0.7);
    set_language(Language::German);
    assert_typed(
        "300 U/min",
        Parameter::TakeoffRate,
        &usual,
        10.0 * std::f64::consts::PI,
    );
    assert_typed("58 Zoll", Parameter::Stature, &usual, 58.0 * 0.0254);
}

#[test]
fn what_is_no_number_of_that_kind_is_refused() {
    let units = Units {
        rate: RateUnit::RadPerS,
        mass: MassUnit::Lb,
        ..Units::default()
    };
    for text in [
        "",
        "tall",
        "1.4.8",
        "1.48 kg",
        "58 apples",
        "NaN",
        "1e3 m",
        "--5",
    ] {
        assert_eq!(typed(text, Parameter::Stature, &units), None, "{text}");
    }
}

#[test]
fn what_is_out_of_range_in_every_unit_stays_in_the_users() {
    // Neither 9 cm nor 9 m is a stature; setting it limits it to the range, with a notice.
    assert_typed("9", Parameter::Stature, &units(LengthUnit::Cm), 0.09);
    assert_typed("999", Parameter::Stature, &units(LengthUnit::M), 999.0);
    // Nobody means degrees a second by that.
    assert_typed(
        "300",
        Parameter::TakeoffRate,
        &Units::default(),
        10.0 * std::f64::consts::PI,
    );
}
