//! The range in the user's session: asked for, changed, kept, and as lines of text.

use turns_aloft::analysis::uncertainty::{Range, UncertainInput, Uncertainty};
use turns_aloft::describe::call::shortfall_range_text;
use turns_aloft::describe::range::range_figures;
use turns_aloft::scenario::starts;
use turns_aloft::session::Session;
use turns_aloft::session::readings::{Group, readings};

fn row(key: &str) -> UncertainInput {
    UncertainInput::named(key).expect("a half-width")
}

fn text(session: &Session, quantity: &str) -> String {
    let lines = readings(session);
    let line = lines.iter().find(|line| line.quantity == quantity);
    line.unwrap_or_else(|| panic!("no line {quantity}"))
        .text
        .clone()
}

#[test]
fn a_range_is_shown_only_when_asked_for() {
    let mut session = Session::default();
    let before = readings(&session);
    assert!(session.range().is_none());
    assert!(
        before
            .iter()
            .all(|line| line.group != Group::UncertaintyInputs)
    );

    session.show_range(true);
    let range = session.range().expect("it was asked for").clone();
    let expected = format!("{:.2} to {:.2}", range.low, range.high);
    assert_eq!(text(&session, "turns"), expected);
    assert_eq!(text(&session, "call"), "may be < or <<");

    session.show_range(false);
    assert_eq!(readings(&session), before);
}

/// The range is that of the jump on the screen, whatever has been done to it.
#[test]
fn the_range_follows_the_jump() {
    let mut session = Session::default();
    session.show_range(true);
    session.change(|scenario| scenario.jump_height_m = 0.4);
    session.open(starts::all()[3].scenario.clone());
    let scenario = session.scenario();
    let usual = Uncertainty::usual(scenario);
    let expected = Range::new(scenario, &scenario.fly(), &usual);
    assert_eq!(session.range(), Some(&expected));
}

/// Steps go to whole numbers of steps and stop at nothing and at the most.
#[test]
fn half_widths_go_in_steps() {
    let mut session = Session::default();
    session.show_range(true);
    let rate = row("takeoff_rate_rad_s");
    let steps = |session: &Session| session.half_widths().get(rate) / rate.step();
    assert!((steps(&session) - 4.77).abs() < 0.01, "0.5 rad/s in rpm");
    session.step_half_width(rate, 1.0);
    assert!((steps(&session) - 5.0).abs() < 1e-9);
    session.step_half_width(rate, 1.0);
    assert!((steps(&session) - 6.0).abs() < 1e-9);
    for _ in 0..10 {
        session.step_half_width(rate, -1.0);
    }
    assert_eq!(steps(&session), 0.0);
    assert_eq!(session.range().map(|range| range.changes[1]), Some(0.0));
    for _ in 0..100 {
        session.step_half_width(rate, 1.0);
    }
    assert_eq!(session.half_widths().get(rate), rate.most());
}

#[test]
fn the_usual_half_widths_come_back() {
    let mut session = Session::default();
    session.show_range(true);
    let usual = session.range().cloned();
    session.step_half_width(row("inertia_ratio_share"), -2.0);
    assert_ne!(session.range().cloned(), usual);
    session.usual_half_widths();
    assert!(!session.has_own_half_widths());
    assert_eq!(session.range().cloned(), usual);
}

/// What the user has not touched stays the jumper's; what he has goes with the jumper.
#[test]
fn own_half_widths_are_about_one_jumper() {
    let mut session = Session::default();
    session.show_range(true);
    session.step_half_width(row("jump_height_m"), 1.0);
    assert!(session.has_own_half_widths());
    let childs = session.half_widths().get(row("inertia_ratio_share"));
    session.change(|scenario| scenario.stature_m = 1.8);
    let grown = session.half_widths().get(row("inertia_ratio_share"));
    assert!((childs / grown - 1.5).abs() < 1e-12, "{childs} {grown}");
    assert_eq!(session.half_widths().get(row("jump_height_m")), 0.025);
    session.open(starts::all()[1].scenario.clone());
    assert_eq!(
        session.half_widths(),
        Uncertainty::usual(session.scenario())
    );
    assert!(session.range().is_some(), "what is shown stays shown");
}

#[test]
fn a_reload_keeps_what_is_shown_and_set() {
    let mut session = Session::default();
    session.show_range(true);
    session.step_half_width(row("close_time_s"), 3.0);
    let mut again = Session::default();
    again.restore(&session.keep());
    assert_eq!(again.notice(), None);
    assert_eq!(again.range(), session.range());
    assert_eq!(again.half_widths(), session.half_widths());
}

/// A visit kept before there was a range opens; half-widths that may not be are refused.
#[test]
fn what_was_kept_is_looked_at() {
    let mut kept: serde_json::Value =
        serde_json::from_str(&Session::default().keep()).expect("it is JSON");
    let object = kept.as_object_mut().expect("an object");
    object.remove("how_sure").expect("it is kept");
    let mut session = Session::default();
    session.restore(&kept.to_string());
    assert_eq!((session.notice(), session.range()), (None, None));

    for own in [r#"{"jump_height_m": 9}"#, r#"{"luck": 0.1}"#] {
        let own: serde_json::Value = serde_json::from_str(own).expect("it is JSON");
        kept["how_sure"] = serde_json::json!({ "shown": true, "own": own });
        let mut session = Session::default();
        session.restore(&kept.to_string());
        assert!(
            session
                .notice()
                .is_some_and(|said| said.contains("could not be read"))
        );
        assert!(session.range().is_none());
    }
}

/// A visit kept when the inertia was uncertain as a share of the standing body's opens: that number
/// means nothing any more, the others stay.
#[test]
fn a_half_width_of_an_earlier_meaning_is_left_out() {
    let mut kept: serde_json::Value =
        serde_json::from_str(&Session::default().keep()).expect("it is JSON");
    let own = serde_json::json!({ "inertia_share": 0.35, "jump_height_m": 0.03 });
    kept["how_sure"] = serde_json::json!({ "shown": true, "own": own });
    let mut session = Session::default();
    session.restore(&kept.to_string());
    assert_eq!(session.notice(), None);
    let mut expected = Uncertainty::usual(session.scenario());
    expected.hold(row("jump_height_m"), 0.03);
    assert_eq!(session.half_widths(), expected);
    assert!(!session.keep().contains("inertia_share"));

    kept["how_sure"]["own"] = serde_json::json!({ "inertia_share": 0.35 });
    session.restore(&kept.to_string());
    assert!(!session.has_own_half_widths());
}

fn between(low: f64, high: f64) -> Range {
    Range {
        low,
        high,
        changes: [0.0; 4],
        shortfall_deg: None,
        calls: None,
    }
}

/// One decimal where it tells the ends apart, more where it does not.
#[test]
fn large_figures_say_as_much_as_they_can() {
    for (low, high, figures) in [
        (3.42, 3.71, "3.4–3.7"),
        (9.96, 11.04, "10.0–11.0"),
        (3.46, 3.51, "3.46–3.51"),
        (3.461, 3.538, "3.46–3.54"),
        (3.5, 3.5, "3.50"),
    ] {
        assert_eq!(range_figures(&between(low, high), None), figures);
    }
}

#[test]
fn missing_rotation_goes_from_the_least_to_the_most() {
    for (ends, says) in [
        ([41.0, 148.0], "41° to 148° short"),
        ([-12.0, 30.0], "12° too far to 30° short"),
        ([-30.0, -12.0], "12° to 30° too far"),
    ] {
        assert_eq!(shortfall_range_text(ends), says);
    }
}
