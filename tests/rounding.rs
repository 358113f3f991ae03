//! Rounded numbers that stand together agree: parts add up, differences are those of the numbers shown, and
//! nothing is rounded across a limit that is told beside it. The limits are those of the published rule
//! (more than 90 degrees, 180 or more) and our own band from 75.

use proptest::prelude::*;

use turns_aloft::describe::call::{Standing, shortfall_range_text, shortfall_text};
use turns_aloft::describe::rounding::{
    adding_up, beyond_and_limit, from_to, in_last_decimals, last_decimals_text,
    shown_shortfall_deg, shown_turns,
};
use turns_aloft::describe::unit::UnitText;
use turns_aloft::scenario::call::Call;
use turns_aloft::scenario::parameter::{Kind, Parameter};
use turns_aloft::scenario::starts;
use turns_aloft::scenario::units::{LengthUnit, MassUnit, RateUnit, Unit, Units};
use turns_aloft::session::Session;
use turns_aloft::session::readings::readings;

fn all_units() -> Vec<Units> {
    let mut all = Vec::new();
    for rate in RateUnit::ALL {
        for length in LengthUnit::ALL {
            all.extend(MassUnit::ALL.map(|mass| Units { rate, length, mass }));
        }
    }
    all
}

/// The number that a text begins with.
fn number(text: &str) -> f64 {
    let text = text.replace('−', "-");
    let end = text.find(|c: char| !(c.is_ascii_digit() || "+-.".contains(c)));
    let number = &text[..end.unwrap_or(text.len())];
    number.parse().unwrap_or_else(|_| panic!("{text}"))
}

/// Decimals of such a number.
fn decimals(text: &str) -> usize {
    let digits = text.split_once('.').map_or("", |(_, behind)| behind);
    digits.chars().take_while(char::is_ascii_digit).count()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(4000))]

    /// Turns and degrees: all are there where no degree is missing, and only there; what is called is
    /// called by the degrees that are shown; and neither is off by more than its last place.
    #[test]
    fn turns_and_missing_degrees_agree(
        owed in prop::sample::select(vec![1.0, 1.5, 2.0, 3.0, 3.5, 4.0, 5.0, 5.5]),
        short_deg in prop_oneof![-1.0..1.0_f64, -400.0..400.0_f64, 74.0..76.0_f64, 89.0..91.0_f64,
            179.0..181.0_f64, -91.0..-89.0_f64],
    ) {
        let turns = owed - short_deg / 360.0;
        prop_assume!(turns > 0.0);
        let shortfall_deg = 360.0 * (owed - turns);
        let degrees = shown_shortfall_deg(shortfall_deg);
        prop_assert!((degrees as f64 - shortfall_deg).abs() < 1.0);
        prop_assert_eq!(Call::of(degrees as f64), Call::of(shortfall_deg));
        for places in [1, 2] {
            let scale = 10_f64.powi(places as i32);
            let shown = shown_turns(turns, Some(owed), places);
            let missing = (scale * owed).round() as i64 - shown;
            prop_assert_eq!(missing.signum(), degrees.signum(), "{} {}", turns, degrees);
            prop_assert!((shown as f64 / scale - turns).abs() < 1.0 / scale);
        }
        let said = shortfall_text(shortfall_deg);
        prop_assert_eq!(said == "all there", degrees == 0);
        // Nothing is green beside a missing degree, nor beside a call.
        let standing = Standing::of([shortfall_deg; 2], &[]);
        let all_there = degrees <= 0 && Call::of(shortfall_deg) == Call::Full;
        prop_assert_eq!(standing == Standing::AllThere, all_there);
        prop_assert_eq!(standing == Standing::Wanting, Call::of(shortfall_deg) != Call::Full);
    }

    /// A range tells the same of its ends as one number would.
    #[test]
    fn a_range_of_missing_degrees_has_the_ends_of_single_ones(
        ends in prop::array::uniform2(-200.0..200.0_f64),
    ) {
        let ends = [ends[0].min(ends[1]), ends[0].max(ends[1])];
        let said = shortfall_range_text(ends);
        for end in ends {
            let degrees = shown_shortfall_deg(end).abs();
            prop_assert!(said.contains(&format!("{degrees}°")) || said == "all there", "{}", said);
        }
        prop_assert_eq!(said.contains("short"), shown_shortfall_deg(ends[1]) > 0);
        prop_assert_eq!(said.contains("too far"), shown_shortfall_deg(ends[0]) < 0);
    }

    /// Parts are as near to their exact values as the whole lets them, and add up to it.
    #[test]
    fn parts_add_up(
        exact in prop::collection::vec(-300.0..300.0_f64, 1..8),
        off in -0.5..0.5_f64,
    ) {
        let sum: f64 = exact.iter().sum();
        let whole = (sum + off).round() as i64;
        let shown = adding_up(&exact, whole, |_, _| true);
        prop_assert_eq!(shown.iter().sum::<i64>(), whole);
        for (shown, exact) in shown.iter().zip(&exact) {
            prop_assert!((*shown as f64 - exact).abs() <= 1.0 + 0.5 / shown.abs().max(1) as f64);
        }
    }

    /// What is shown of a change is what the values shown differ by, in every unit.
    #[test]
    fn a_change_is_the_difference_of_what_is_shown(
        parameter in prop::sample::select(Parameter::ALL.to_vec()),
        ends in prop::array::uniform2(0.0..1.0_f64),
        units in prop::sample::select(all_units()),
    ) {
        let [least, most] = parameter.row().range;
        let values = ends.map(|part| least + part * (most - least));
        let shown = from_to(&units.of(parameter.kind()), values);
        let [from, to, change] = [&shown.from, &shown.to, &shown.change].map(|text| number(text));
        prop_assert!((to - from - change).abs() < 1e-9, "{:?}", shown);
        prop_assert_eq!(decimals(&shown.from), decimals(&shown.to));
        prop_assert!(change != 0.0);
        prop_assert_eq!(change > 0.0, values[1] > values[0]);
    }

    /// What is beyond a limit is shown beyond it.
    #[test]
    fn what_is_beyond_a_limit_is_shown_beyond_it(
        limit in 0.3..0.7_f64,
        more in 1e-5..0.05_f64,
        units in prop::sample::select(all_units()),
    ) {
        let unit = units.of(Kind::Length);
        let [value, limit] = beyond_and_limit(&unit, [limit + more, limit]);
        prop_assert!(number(&value) > number(&limit), "{} of {}", value, limit);
    }

    /// What somebody types is shown as it was typed, in every unit; any other value with the unit's own
    /// decimals.
    #[test]
    fn what_is_typed_is_shown_as_typed(
        places in 0..=3_usize,
        digits in 1..9999_i64,
        units in prop::sample::select(all_units()),
        kind in prop::sample::select(vec![Kind::Length, Kind::Mass, Kind::Rate, Kind::Time, Kind::Angle,
            Kind::Turns, Kind::Share]),
    ) {
        let unit = units.of(kind);
        let typed = last_decimals_text(digits, places);
        let value: f64 = typed.parse().expect("a number");
        let shown = unit.set_number(unit.to_si(value));
        prop_assert_eq!(number(&shown), value, "{} as {}", typed, shown);
        prop_assert!(decimals(&shown) <= places.max(unit.decimals), "{} as {}", typed, shown);
        let other = unit.to_si(value + 0.1 * std::f64::consts::E.fract());
        prop_assert_eq!(decimals(&unit.set_number(other)), unit.decimals);
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(60))]

    /// The readouts add up as they stand: turns in the air and on the ice, the energy of take-off and both
    /// works; and an input is the same number on its slider and among them.
    #[test]
    fn the_readouts_add_up(
        start in 0..starts::all().len(),
        height_m in 0.2..0.7_f64,
        on_ice in 0.0..0.5_f64,
    ) {
        let mut session = Session::default();
        session.open(starts::all()[start].scenario.clone());
        session.set(Parameter::JumpHeight, height_m);
        session.set(Parameter::PreRotation, on_ice);
        let lines = readings(&session);
        let said = |quantity: &str| {
            let line = lines.iter().find(|line| line.quantity == quantity);
            line.map(|line| number(&line.text)).unwrap_or_else(|| panic!("{quantity}"))
        };
        let turns = said("air_turns") + said("pre_rotation_turns") - said("turns");
        prop_assert!(turns.abs() < 1e-9, "{}", turns);
        let energy = said("energy_takeoff_j") + said("closing_work_j") + said("opening_work_j");
        prop_assert!((energy - said("energy_touchdown_j")).abs() < 1e-9);
        let missing = said("turns_owed") - said("turns");
        let short = lines.iter().find(|line| line.quantity == "shortfall_deg").expect("a named jump");
        prop_assert_eq!(missing > 0.0, short.text.contains("short"), "{}", short.text);
        let height = Units::default().of(Kind::Length).set_text(height_m);
        let shown = lines.iter().find(|line| line.quantity == "jump_height_m").expect("a line");
        prop_assert_eq!(&shown.text, &height);
    }
}

#[test]
fn whole_numbers_of_last_decimals_are_written_out() {
    for (shown, decimals, text) in [
        (153, 2, "1.53"),
        (-5, 2, "−0.05"),
        (0, 1, "0.0"),
        (7, 0, "7"),
        (1000, 3, "1.000"),
    ] {
        assert_eq!(last_decimals_text(shown, decimals), text);
        let value: f64 = text.replace('−', "-").parse().expect("a number");
        assert_eq!(in_last_decimals(value, decimals), shown);
    }
}

/// The pairs that stood beside each other and did not agree.
#[test]
fn the_pairs_of_old_agree() {
    let turns = |turns: f64| last_decimals_text(shown_turns(turns, Some(3.0), 2), 2);
    let short = |turns: f64| shortfall_text(360.0 * (3.0 - turns));
    for (exact, shown, missing) in [
        (2.9972, "2.99", "1° short"),
        (2.999, "3.00", "all there"),
        (3.004, "3.01", "1° too far"),
        (2.7925, "2.79", "74° short"),
        (2.7915, "2.79", "75° short"),
    ] {
        assert_eq!(
            (turns(exact).as_str(), short(exact).as_str()),
            (shown, missing)
        );
    }
    let rpm = |rpm: f64| RateUnit::Rpm.unit().to_si(rpm);
    let change = from_to(&RateUnit::Rpm.unit(), [rpm(98.412_345), rpm(115.616_543)]);
    assert_eq!(
        [change.from, change.to, change.change],
        ["98", "116 rpm", "+18 rpm"]
    );
    let little = from_to(&LengthUnit::Cm.unit(), [0.379_123_4, 0.383_432_1]);
    assert_eq!(
        [little.from, little.to, little.change],
        ["37.9", "38.3 cm", "+0.4 cm"]
    );
    let unit: Unit = LengthUnit::Cm.unit();
    assert_eq!(unit.set_text(0.245), "24.5 cm");
    assert_eq!(unit.set_text(0.24), "24 cm");
    assert_eq!(
        beyond_and_limit(&RateUnit::Rpm.unit(), [rpm(440.2), rpm(440.0)]),
        ["440.2 rpm", "440.0 rpm"]
    );
}
