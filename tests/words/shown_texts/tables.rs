//! Texts of tables, and of what is refused.

use turns_aloft::analysis::budget::Cause;
use turns_aloft::analysis::caution::Caution;
use turns_aloft::analysis::lever::{Lever, Season};
use turns_aloft::analysis::limits::{Limits, Verdict};
use turns_aloft::analysis::map::{Axis, TurnMap};
use turns_aloft::analysis::uncertainty::{UncertainInput, Uncertainty};
use turns_aloft::describe::call::{
    call_text, facing_text, shortfall_range_text, shortfall_text, uncalled_text,
};
use turns_aloft::describe::comparison::ORDER;
use turns_aloft::describe::jump::notation;
use turns_aloft::describe::range::change_text;
use turns_aloft::describe::unit::UnitText;
use turns_aloft::describe::{About, Inline, Label, Sentence, Text};
use turns_aloft::scenario::call::Call;
use turns_aloft::scenario::jump::JumpName;
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::reading::NotText;
use turns_aloft::scenario::starts;
use turns_aloft::scenario::units::{LengthUnit, MassUnit, RateUnit};
use turns_aloft::session::goal::words as goal;
use turns_aloft::session::readings::Group;
use turns_aloft::session::{Question, why};

use super::Collector;

/// Texts of tables, independent of the jump.
pub fn tables(collected: &mut Collector) {
    for key in Parameter::ALL {
        collected.add(key.key(), key.label());
        collected.add(key.key(), key.inline());
        collected.add(key.key(), key.about());
    }
    for row in UncertainInput::ALL {
        collected.add(row.key(), row.label());
        collected.add(row.key(), row.inline());
        collected.add(row.key(), row.about());
    }
    for start in starts::all() {
        collected.add(start.name, start.label());
        let jump = start.scenario.fly();
        for key in Parameter::ALL {
            if let Some(marks) = start.scenario.marks(key, &jump) {
                collected.add(key.key(), marks.source.text());
            }
        }
    }
    for jump in JumpName::ALL {
        collected.add(jump.key(), jump.label());
        for turns in [1, 2] {
            let notation = notation(jump, turns);
            // The sport's own letters.
            if !notation.starts_with(char::is_numeric) || notation.contains(' ') {
                collected.add(jump.key(), notation);
            }
        }
    }
    for question in Question::ALL {
        collected.add(question.name(), question.label());
    }
    for group in Group::ALL {
        collected.add("group", group.label());
    }
    for cause in Cause::ORDER {
        collected.add("cause", cause.label());
    }
    let units = RateUnit::ALL.map(RateUnit::unit).into_iter();
    let units = units.chain(LengthUnit::ALL.map(LengthUnit::unit));
    for unit in units.chain(MassUnit::ALL.map(MassUnit::unit)) {
        collected.add("unit", unit.sign());
    }
    let calls = [
        Call::OverRotated,
        Call::Full,
        Call::Quarter,
        Call::Under,
        Call::Downgraded,
    ];
    for call in calls {
        collected.add("call", call_text(call));
    }
    for ends in [[0.0, 10.0], [-150.0, 10.0], [-200.0, -150.0]] {
        collected.add("no call", uncalled_text(ends));
    }
    for past_deg in [4.0, -92.0, 171.0] {
        collected.add("facing", facing_text(past_deg));
    }
    for degrees in [169.2, -12.0] {
        collected.add("shortfall", shortfall_text(degrees));
    }
    for ends in [[41.0, 148.0], [-12.0, 30.0], [-30.0, -12.0]] {
        collected.add("shortfall", shortfall_range_text(ends));
    }
    collected.add("change", change_text(0.25));
    for verdict in [
        Verdict::AlreadyReached,
        Verdict::WithinReach,
        Verdict::WithinMeasured,
        Verdict::AtEdge,
        Verdict::NotKnown,
        Verdict::BeyondMeasured,
        Verdict::CannotAlone,
        Verdict::NoPart,
    ] {
        collected.add("verdict", verdict.text());
    }
    for caution in [
        Caution::NoSafeNumber,
        Caution::Adults,
        Caution::Hands,
        Caution::Later,
        Caution::Ask,
    ] {
        collected.add("caution", caution.text());
    }
    collected.add("season", Season::SOURCE.text());
    for message in [
        goal::SEASON,
        goal::LIMITS,
        why::words::IDEAL,
        why::words::ICE,
        why::words::TURNS,
        why::words::ORDER,
        why::words::BACK,
        ORDER,
    ] {
        collected.add("table", message.text());
    }
}

/// Error sentences of settings that are refused.
pub fn refusals(collected: &mut Collector) {
    let mut jump = starts::all()[0].scenario.clone();
    for (key, value) in [
        ("jump_height_m", "7.5"),
        ("jump_height_m", "1e300"),
        ("jump_height_m", "high"),
        ("pre_rotation_turns", "1.5"),
        ("arm_tuck", "1.5"),
        ("jump_turns", "9"),
        ("jump_turns", "two"),
        ("jump", "twirl"),
        ("table", "child"),
        ("wind_m_s", "1"),
    ] {
        let why = jump.set(key, value).expect_err("it cannot be");
        collected.add(
            format!("{key} = {value}"),
            why.sentence().replace(value, ""),
        );
    }
    let why = jump.set("note", &"x".repeat(200_000)).expect_err("long");
    collected.add("a long note", why.sentence());
    for why in [NotText::Utf16, NotText::Other] {
        collected.add("no text", why.sentence());
    }
    let mut half_widths = Uncertainty::usual(&jump);
    for (key, value) in [
        ("jump_height_m", "7.5"),
        ("jump_height_m", "high"),
        ("arm_tuck", "1"),
    ] {
        let why = half_widths.set(key, value).expect_err("it cannot be");
        collected.add(key, why.sentence().replace(value, ""));
    }
    let (mut limits, mut season) = (Limits::default(), Season::default());
    let lever = Lever::ALL[0];
    collected.add(
        "limits",
        limits.set(lever, [0.5, 9.5]).expect_err("no").sentence(),
    );
    collected.add(
        "limits",
        Lever::named("wind_m_s").expect_err("no").sentence(),
    );
    collected.add("season", season.set(lever, 9.5).expect_err("no").sentence());
    for (name, ends, nodes) in [
        ("wind_m_s", [0.0, 1.0], 3),
        (lever.key(), [0.5, 9.5], 3),
        (lever.key(), [0.5, 0.5], 3),
        (lever.key(), [0.5, 0.6], 1),
    ] {
        let why = Axis::named(name, ends[0], ends[1], nodes).expect_err("no");
        collected.add("axis", why.sentence());
    }
    let axis = Axis::new(lever.parameter(), 0.5, 0.6, 3).expect("an axis");
    collected.add(
        "axes",
        TurnMap::new(&jump, axis, axis).expect_err("no").sentence(),
    );
}
