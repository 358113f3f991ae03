//! A second attempt beside the present one, and the jumps kept to be that other one: as the user's
//! session handles them.

use proptest::prelude::*;

use turns_aloft::analysis::compare::Comparison;
use turns_aloft::describe::comparison::{Compared, rounded};
use turns_aloft::describe::turns::signed_text;
use turns_aloft::scenario::units::{RateUnit, Units};
use turns_aloft::scenario::{Scenario, link, starts};
use turns_aloft::session::compare::Which;
use turns_aloft::session::readings::Reading;
use turns_aloft::session::{AFTER_S, Question, Session};

fn start(name: &str) -> &'static Scenario {
    &starts::named(name).expect("a starting point").scenario
}

fn reference(name: &str) -> Which {
    Which::Start(name.to_owned())
}

/// A session that compares, with its answer complete.
fn comparing(which: Which) -> Session {
    let mut session = Session::default();
    session.ask(Question::Compare);
    session.set_reference(which);
    session.poll(|| true);
    session
}

fn answers(session: &mut Session) -> Vec<Reading> {
    session.poll(|| true);
    session.answers()
}

fn text(session: &mut Session, quantity: &str) -> String {
    let lines = answers(session);
    let line = lines.iter().find(|line| line.quantity == quantity);
    line.unwrap_or_else(|| panic!("no line {quantity} in {lines:?}"))
        .text
        .clone()
}

fn names(session: &Session) -> Vec<String> {
    let entries = session.library().collection().entries();
    entries.iter().map(|it| it.scenario.name.clone()).collect()
}

#[test]
fn nothing_is_beside_until_asked_for() {
    let mut session = Session::default();
    session.ask(Question::Compare);
    assert!(session.reference().is_none());
    assert_eq!(answers(&mut session), []);

    session.set_reference(reference("four-turns"));
    let reference_changes = session.reference().expect("it was asked for");
    assert_eq!(
        reference_changes.jump.turns,
        start("four-turns").fly().turns
    );

    session.clear_reference();
    assert!(session.reference().is_none());
    assert_eq!(answers(&mut session), []);
}

/// What is told is the comparison of the command, from the one beside to the present one.
#[test]
fn differences_are_told_from_the_one_beside() {
    let mut session = comparing(reference("four-turns"));
    let expected = Comparison::new(start("four-turns"), session.scenario());
    let compared = session.compared().expect("time enough").clone();
    assert_eq!(compared.comparison, expected);
    assert!(expected.differences.len() > 3, "there is something to tell");
    let lines = answers(&mut session);
    for difference in &expected.differences {
        let quantity = format!("compare:{}", difference.input.key());
        assert!(
            lines.iter().any(|line| line.quantity == quantity),
            "{quantity}"
        );
    }
}

#[test]
fn the_comparison_follows_the_jump_and_the_units() {
    let mut session = comparing(Which::AsOpened);
    assert_eq!(
        text(&mut session, "compare:sentence"),
        "This jump and “Half a turn short, as opened” are the same."
    );
    session.change(|scenario| scenario.takeoff_rate_rad_s *= 2.0);
    let rate = text(&mut session, "compare:takeoff_rate_rad_s");
    assert!(rate.contains(" rpm to ") && rate.contains(": +"), "{rate}");
    let sentence = text(&mut session, "compare:sentence");
    assert!(
        sentence.contains(" more than ")
            && sentence.ends_with(". All of it comes from take-off rate."),
        "{sentence}"
    );
    session.set_units(Units {
        rate: RateUnit::RadPerS,
        ..*session.units()
    });
    let rate = text(&mut session, "compare:takeoff_rate_rad_s");
    assert!(rate.contains(" rad/s to "), "{rate}");
}

#[test]
fn words_are_told_in_words() {
    let mut session = comparing(Which::AsOpened);
    session.change(|scenario| {
        scenario.ground = turns_aloft::scenario::ground::Ground::Trampoline;
        scenario.hands_keep = turns_aloft::scenario::HandsKeep::Energy;
    });
    let ground = text(&mut session, "compare:ground");
    assert!(ground.starts_with("ice to trampoline: "), "{ground}");
    let keep = text(&mut session, "compare:hands_keep");
    assert!(keep.starts_with("rate to energy: "), "{keep}");
}

/// Values that look the same get as many decimals as it takes.
#[test]
fn values_that_differ_are_told_apart() {
    let mut session = comparing(Which::AsOpened);
    session.change(|scenario| scenario.jump_height_m += 0.001);
    let height = text(&mut session, "compare:jump_height_m");
    let (from, rest) = height.split_once(" to ").expect("two values");
    assert!(!rest.starts_with(from), "{height}");
}

/// A difference in height has both hang times beside it.
#[test]
fn a_height_stands_with_its_hang_time() {
    let mut session = comparing(Which::AsOpened);
    let before_s = session.jump().readout.hang_time_s;
    session.change(|scenario| scenario.jump_height_m += 0.03);
    let height = text(&mut session, "compare:jump_height_m");
    let now_s = session.jump().readout.hang_time_s;
    let hang_times = format!("{before_s:.2} to {now_s:.2} s in the air");
    assert!(height.contains(&hang_times), "{height}");
}

/// Until the next answer stands the last one does, whole: nothing jumps on the page.
#[test]
fn an_answer_stands_until_the_next_one() {
    let mut session = comparing(reference("four-turns"));
    let first = session.compared().expect("time enough").clone();
    session.set_reference(reference("senior-triple"));
    assert_eq!(session.compared(), Some(&first));
    session.poll(|| true);
    let second = session.compared().expect("time enough").clone();
    assert_eq!(second.reference, start("senior-triple").name);
    assert_ne!(second.turns, first.turns);
    session.clear_reference();
    assert_eq!(session.compared(), None);
}

/// "as it was opened" is that of the jump that is open.
#[test]
fn as_opened_follows_what_is_opened() {
    let mut session = comparing(Which::AsOpened);
    session.open(start("four-turns").clone());
    let reference_changes = session.reference().expect("it stays");
    assert_eq!(&reference_changes.scenario, start("four-turns"));
    session.open_link("jump.rubbish");
    assert_eq!(
        session.reference().expect("it stays").scenario,
        *start("four-turns")
    );
}

#[test]
fn the_time_goes_on_to_the_later_landing() {
    let mut session = Session::default();
    let own_s = session.flight().touchdown_s;
    session.set_reference(reference("trampoline"));
    let later_s = start("trampoline").fly().flight.touchdown_s;
    assert!(later_s > own_s + 0.1);
    session.scrub(10.0);
    assert_eq!(session.playhead_s(), later_s);
    assert_eq!(session.now().t_s, own_s, "the jumper has landed");
    session.playback.playing = true;
    session.advance(100.0);
    assert_eq!(session.playhead_s(), later_s + AFTER_S);
    session.clear_reference();
    assert_eq!(session.playhead_s(), own_s + AFTER_S);
}

#[test]
fn a_reload_finds_the_attempt_beside_again() {
    let mut session = comparing(reference("senior-triple"));
    let mut later = Session::default();
    later.restore(&session.keep());
    assert_eq!(answers(&mut later), answers(&mut session));
    assert_eq!(
        later.reference().map(|it| &it.which),
        Some(&reference("senior-triple"))
    );

    let spoilt = session.keep().replace("jump_height_m", "jump_heigth_m");
    let mut later = Session::default();
    later.restore(&spoilt);
    assert!(later.notice().is_some() && later.reference().is_none());
}

#[test]
fn the_jump_outlives_an_attempt_beside_that_cannot_be_read() {
    let mut session = comparing(reference("senior-triple"));
    session.change(|scenario| scenario.arm_tuck = 0.93);
    let mut kept: serde_json::Value = serde_json::from_str(&session.keep()).expect("it is JSON");
    kept["beside"] = serde_json::json!("rubbish");
    let mut later = Session::default();
    later.restore(&kept.to_string());
    assert!(later.notice().is_some() && later.reference().is_none());
    assert_eq!(later.scenario(), session.scenario());
    assert_eq!(later.jump().turns, session.jump().turns);
}

#[test]
fn jumps_are_kept_named_moved_deleted_and_brought_back() {
    let mut session = Session::default();
    session.ask(Question::Compare);
    session.keep_jump();
    session.change(|scenario| scenario.arm_tuck = 1.0);
    session.keep_jump();
    assert_eq!(
        names(&session),
        ["Half a turn short", "Half a turn short, arm tuck 100 %"]
    );
    let turns = session.jump().turns;
    let line = text(&mut session, "kept:2");
    assert!(
        line.starts_with(&format!(
            "Half a turn short, arm tuck 100 %: {turns:.2} turns, "
        )),
        "{line}"
    );

    let ids: Vec<_> = session
        .library()
        .collection()
        .entries()
        .iter()
        .map(|it| it.id)
        .collect();
    session.set_reference(Which::Kept(ids[0]));
    session.rename_kept(ids[0], "  Monday  ");
    assert_eq!(session.reference().expect("it was laid").name, "Monday");
    let sentence = text(&mut session, "compare:sentence");
    assert!(sentence.contains("“Monday”"), "{sentence}");
    session.rename_kept(ids[0], " ");
    assert_eq!(
        session.notice(),
        Some("Not renamed: a kept jump needs a name; give it one.")
    );
    session.move_kept_down(ids[0]);
    assert_eq!(
        names(&session),
        ["Half a turn short, arm tuck 100 %", "Monday"]
    );
    session.move_kept_down(ids[0]);
    assert_eq!(
        names(&session),
        ["Half a turn short, arm tuck 100 %", "Monday"]
    );
    session.move_kept_up(ids[0]);

    let before = session.kept_jumps();
    session.delete_kept(ids[0]);
    assert_ne!(session.kept_jumps(), before, "it has to be kept");
    assert_eq!(names(&session), ["Half a turn short, arm tuck 100 %"]);
    assert!(
        session.reference().is_some(),
        "what is compared stays in sight"
    );
    session.restore_deleted();
    assert_eq!(
        names(&session),
        ["Monday", "Half a turn short, arm tuck 100 %"]
    );

    let mut later = Session::default();
    later
        .restore_kept_jumps(&session.kept_jumps())
        .expect("it was kept");
    assert_eq!(names(&later), names(&session));
}

/// The list follows another page; what was deleted here can still be brought back.
#[test]
fn another_pages_changes_are_followed() {
    let (mut here, mut there) = (Session::default(), Session::default());
    here.keep_jump();
    there.restore_kept_jumps(&here.kept_jumps()).expect("kept");
    let id = here.library().collection().entries()[0].id;
    here.delete_kept(id);
    there.open(start("four-turns").clone());
    there.keep_jump();
    here.restore_kept_jumps(&there.kept_jumps()).expect("kept");
    assert_eq!(names(&here), names(&there));
    let kept = here.kept_jumps();
    assert!(here.restore_kept_jumps("rubbish").is_err());
    assert_eq!(here.kept_jumps(), kept, "what is here stays");
    here.restore_deleted();
    assert_eq!(names(&here)[0], "Half a turn short");
}

#[test]
fn one_file_takes_all_to_another_device() {
    let mut session = Session::default();
    session.keep_jump();
    session.open(start("four-turns").clone());
    session.keep_jump();
    let mut elsewhere = Session::default();
    elsewhere.open_text(&session.kept_file());
    assert_eq!(names(&elsewhere), names(&session));
    assert_eq!(elsewhere.scenario(), Session::default().scenario());
    assert_eq!(
        elsewhere.notice(),
        Some("2 jumps of this file are among the kept ones now.")
    );
    elsewhere.open_text(&session.kept_file().replace("arm_tuck", "arm_tack"));
    assert_eq!(elsewhere.library().collection().entries().len(), 2);
    assert!(
        elsewhere
            .notice()
            .is_some_and(|said| said.starts_with("Not opened: "))
    );
    elsewhere.open_text(&start("senior-triple").to_file());
    assert_eq!(elsewhere.scenario(), start("senior-triple"));
}

#[test]
fn a_link_carries_the_comparison() {
    let mut session = comparing(reference("four-turns"));
    session.change(|scenario| scenario.arm_tuck = 0.9);
    let mut elsewhere = Session::default();
    elsewhere.open_link(&session.link());
    assert_eq!(elsewhere.question(), Question::Compare);
    // Whoever opens the link has not seen what the jump was begun from: its name tells what was changed.
    let sent = Scenario {
        name: "Half a turn short, arm tuck 90 %".to_owned(),
        ..session.scenario().clone()
    };
    assert_eq!(*elsewhere.scenario(), sent);
    assert_eq!(answers(&mut elsewhere), answers(&mut session));
    assert_eq!(elsewhere.notice(), None);
    session.clear_reference();
    assert_eq!(session.link(), link::to_fragment(&sent, None));
}

/// Who follows a link does not lose the jump they had changed; it is kept once.
#[test]
fn a_link_does_not_lose_a_changed_jump() {
    let four = link::to_fragment(start("four-turns"), None);
    let mut session = Session::default();
    session.open_link(&four);
    assert_eq!(names(&session), [""; 0], "nothing was changed");

    session.change(|scenario| scenario.arm_tuck = 0.5);
    let changed = Scenario {
        name: "Four turns, arm tuck 50 %".to_owned(),
        ..session.scenario().clone()
    };
    session.open_link(&four);
    assert_eq!(session.scenario(), start("four-turns"));
    assert_eq!(names(&session), [&*changed.name]);
    assert_eq!(
        session.library().collection().entries()[0].scenario,
        changed
    );
    let said = session.notice().expect("it is said");
    assert!(
        said.contains("is kept") && said.contains(&changed.name),
        "{said}"
    );

    session.change(|scenario| scenario.arm_tuck = 0.5);
    session.open_link(&four);
    assert_eq!(names(&session).len(), 1, "it is kept already");
}

#[test]
fn the_largest_part_is_named_even_where_others_work_against_it() {
    let near = start("half-a-turn-short").clone();
    let mut other = near.clone();
    other.takeoff_rate_rad_s *= 1.5;
    other.jump_height_m *= 0.6;
    let compared = Compared::new("X", &near, &other);
    assert!(compared.parts[0] > 0 && compared.parts[1] < 0);
    let said = compared.sentence();
    let (named, way) = if compared.whole() > 0 {
        (
            format!("take-off rate ({})", signed_text(compared.parts[0])),
            "more than",
        )
    } else {
        (
            format!("jump height ({})", signed_text(compared.parts[1])),
            "less than",
        )
    };
    assert!(said.contains(&named) && said.contains(way), "{said}");
}

proptest! {
    /// The parts as shown add up to the whole as shown, each is off by less than a hundredth, and
    /// nothing stays nothing.
    #[test]
    fn shown_parts_add_up(
        exact in prop::collection::vec(prop_oneof![Just(0.0), -300.0..300.0], 1..20),
        from in 0.0..1000.0_f64,
    ) {
        let sum: f64 = exact.iter().sum();
        let whole = (from + sum).round() as i64 - from.round() as i64;
        let parts = rounded(&exact, whole);
        prop_assert_eq!(parts.iter().sum::<i64>(), whole);
        for (part, exact) in parts.iter().zip(&exact) {
            prop_assert!((*part as f64 - exact).abs() <= 1.0, "{} for {}", part, exact);
            prop_assert!(*exact != 0.0 || *part == 0);
        }
    }
}
