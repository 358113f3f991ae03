//! Somebody on a turntable: led, pushed, wound back, set up in another way, saved, kept and left. What the panels say
//! is what the turntable's own package says.

use egui::accesskit::{ActionData, Role};
use egui::{Pos2, pos2, vec2};
use turns_aloft::session::Saved;

use turns_aloft::panel::{AxisOnPicture, PageCommand};
use turns_aloft::scenario::parameter::Kind;
use turns_aloft::scenario::starts;
use turns_aloft::session::readings::{readings, summary};
use turns_aloft::session::turntable::{
    OnTurntable, Tendency, TypedNumber, equation, rate, tendency,
};
use turns_aloft::session::{Question, Session};
use turns_aloft::turntable::setup::Number;
use turns_aloft::turntable::{Position, Setup, Stand, Turntable};
use turns_aloft::words::Language;

use crate::harness::*;
use crate::room::check;

const HANDS: &str = "Hands from the axis";
const FRAME_S: f64 = 1.0 / 60.0;

/// On a platform without friction, by the menu of jumps.
fn on_turntable(size: [f32; 2]) -> Page {
    let mut page = open(size, Language::English, Question::Jump);
    press_target(&mut page, "starts");
    press_target(&mut page, "turntable");
    page
}

fn without_friction(page: &mut Page) {
    page.state_mut().session.set_without_friction(true);
    settle(page);
}

fn state(page: &Page) -> &OnTurntable {
    let session = &page.state().session;
    session.turntable().expect("somebody is on it")
}

/// Lets so much time go by, a picture sixty times a second.
fn pass(page: &mut Page, time_s: f64) {
    for _ in 0..(time_s / FRAME_S).round() as u32 {
        page.state_mut().session.advance_turntable(FRAME_S);
    }
    settle(page);
}

fn set_slider(page: &mut Page, name: &str, value: f64) {
    set(page, Role::Slider, name, ActionData::NumericValue(value));
}

#[test]
fn the_menu_of_jumps_leads_to_it_and_a_button_back() {
    for size in SIZES {
        let mut page = on_turntable(size);
        assert!(page.state().session.is_on_turntable(), "{size:?}");
        let all = targets();
        for name in [
            "push left",
            "push right",
            "hands",
            "twist",
            "turntable play",
        ] {
            assert!(all.contains_key(name), "{size:?}: {name}");
        }
        // On a platform somebody stands on both legs, and nothing of a jump is in sight.
        for name in ["legs", "question:Jump", "play"] {
            assert!(!all.contains_key(name), "{size:?}: {name}");
        }
        press(&mut page, "Leave the turntable");
        assert!(!page.state().session.is_on_turntable(), "{size:?}");
        assert!(targets().contains_key("question:Jump"), "{size:?}");
    }
}

/// Nothing is pushed, nothing moves: no picture is another one.
#[test]
fn at_rest_nothing_is_drawn() {
    let mut page = on_turntable(TABLET);
    assert!(!page.state().session.moves());
    press(&mut page, "Push to the right");
    assert!(page.state().session.moves());
    press(&mut page, "Pause");
    assert!(!page.state().session.moves());
    press(&mut page, "Play");
    assert!(page.state().session.moves());
    // The friction of the platform brings it to rest.
    pass(&mut page, 60.0);
    assert!(!page.state().session.moves());
    assert!(says(&page, "at rest"));
}

/// L = I w, and the work of the arms is what the energy grows by.
#[test]
fn who_pulls_the_arms_in_turns_faster_with_the_same_angular_momentum() {
    let mut page = on_turntable(TABLET);
    without_friction(&mut page);
    press(&mut page, "Push to the right");
    pass(&mut page, 1.0);
    let before = state(&page).shown();
    assert!(before.rate_rad_s > 0.0);
    set_slider(&mut page, HANDS, 0.0);
    pass(&mut page, 2.0);
    let after = state(&page).shown();
    assert!(
        after.inertia_kg_m2 < 0.6 * before.inertia_kg_m2,
        "{after:?}"
    );
    let same = (after.momentum_kg_m2_s / before.momentum_kg_m2_s - 1.0).abs();
    assert!(same < 1e-9, "{same}");
    let ratio = before.inertia_kg_m2 / after.inertia_kg_m2;
    let faster = after.rate_rad_s / before.rate_rad_s;
    assert!((faster / ratio - 1.0).abs() < 1e-9, "{faster} {ratio}");
    let grown_j = after.kinetic_j - before.kinetic_j;
    let worked_j = after.work_j - before.work_j;
    assert!(
        (worked_j / grown_j - 1.0).abs() < 1e-6,
        "{worked_j} {grown_j}"
    );
}

/// Who leads or pushes goes on, also from an earlier time.
#[test]
fn what_is_done_goes_on_from_the_time_shown() {
    let mut page = on_turntable(TABLET);
    press(&mut page, "Push to the right");
    pass(&mut page, 2.0);
    press(&mut page, "Pause");
    set_slider(&mut page, "Time of the run", 1.0);
    press(&mut page, "Push to the right");
    assert!(page.state().session.moves());
    assert!((state(&page).end_s() - 1.0).abs() < 2e-3);
    press(&mut page, "Pause");
    set_slider(&mut page, HANDS, 30.0);
    pass(&mut page, 1.0);
    let hands_m = state(&page).shown().position.hand_distance_m;
    assert!((hands_m - 0.3).abs() < 1e-6, "{hands_m}");
}

/// A run ends after an hour, and says so.
#[test]
fn a_run_of_an_hour_ends() {
    let mut session = Session::default();
    session.begin_turntable();
    session.set_without_friction(true);
    session.push_turntable(1.0);
    // One more, because of rounding.
    for _ in 0..=4 * 3600 {
        session.advance_turntable(0.25);
    }
    assert!(session.notice().is_some_and(|it| it.contains("hour")));
    assert!(!session.moves());
    let turntable = session.turntable().expect("somebody is on it");
    assert_eq!(turntable.end_s(), 3600.0);
}

/// With friction it falls.
#[test]
fn friction_takes_the_angular_momentum() {
    let mut page = on_turntable(TABLET);
    press(&mut page, "Push to the left");
    let before = state(&page).shown().momentum_kg_m2_s;
    assert!(before < 0.0, "to the left is clockwise");
    pass(&mut page, 2.0);
    let after = state(&page).shown().momentum_kg_m2_s;
    assert!(after > before && after < 0.0, "{before} {after}");
}

/// The same led and pushed in the package itself, to the last bit; and the page says just that.
#[test]
fn what_the_panels_say_is_what_the_package_says() {
    for size in SIZES {
        let mut page = on_turntable(size);
        let out = Position {
            hand_distance_m: f64::INFINITY,
            legs: 0.0,
            twist_rad: 0.0,
        };
        let mut same = Turntable::new(&Setup::on(Stand::Platform), &out).expect("usual numbers");
        page.state_mut().session.push_turntable(3.0);
        let push = same.readout().inertia_kg_m2 * state(&page).shown().rate_rad_s;
        same.push(push);
        for half in 0..120 {
            let hand_distance_m = 0.25 + 0.003 * f64::from(half);
            let session = &mut page.state_mut().session;
            session.lead_turntable(|position| position.hand_distance_m = hand_distance_m);
            session.advance_turntable(FRAME_S);
            same.lead(&Position {
                hand_distance_m,
                ..out
            });
            same.step(FRAME_S);
        }
        settle(&mut page);
        let own = state(&page).shown();
        let apart = (own.rate_rad_s / same.readout().rate_rad_s - 1.0).abs();
        assert!(apart < 1e-12, "{own:?} {:?}", same.readout());
        let session = &page.state().session;
        let said = [
            rate(session, own.rate_rad_s),
            // Numbers and units are kept together.
            equation(&own).momentum.replace(' ', "\u{a0}"),
            equation(&own).inertia.replace(' ', "\u{a0}"),
        ];
        for part in said {
            assert!(says(&page, &part), "{size:?}: {part}");
        }
        let lines = readings(session);
        let line = |key: &str| {
            let line = lines.iter().find(|line| line.quantity == key);
            line.map(|line| line.text.clone()).expect("a line")
        };
        assert!(line("turntable:rate").starts_with(&rate(session, own.rate_rad_s)));
        assert_eq!(line("turntable:momentum"), equation(&own).momentum);
        assert!(
            lines
                .iter()
                .all(|line| line.quantity.starts_with("turntable:"))
        );
    }
}

#[test]
fn an_earlier_time_is_shown_and_gone_on_from() {
    for size in SIZES {
        let mut page = on_turntable(size);
        press(&mut page, "Push to the right");
        pass(&mut page, 1.0);
        let then = state(&page).run().at(0.8).expect("a sample");
        set_slider(&mut page, HANDS, 0.0);
        pass(&mut page, 2.0);
        let end_s = state(&page).end_s();
        set_slider(&mut page, "Time of the run", 0.8);
        assert_eq!(state(&page).shown(), then, "{size:?}");
        assert!(state(&page).end_s() == end_s && !page.state().session.moves());
        // Nothing is lost by looking.
        set_slider(&mut page, "Time of the run", end_s);
        assert_eq!(state(&page).shown().t_s, end_s);
        set_slider(&mut page, "Time of the run", 0.8);
        press(&mut page, "Play");
        assert!((state(&page).end_s() - 0.8).abs() < 2e-3, "{size:?}");
        let on = state(&page).shown();
        assert!((on.rate_rad_s - then.rate_rad_s).abs() < 1e-9, "{on:?}");
        // The hands stay where they were then.
        pass(&mut page, 0.5);
        let later = state(&page).shown().position.hand_distance_m;
        assert!((later - then.position.hand_distance_m).abs() < 1e-6);
    }
}

/// A finger on the curves goes back in time.
#[test]
fn the_curves_are_a_line_of_time() {
    let mut page = on_turntable(TABLET);
    press(&mut page, "Push to the right");
    pass(&mut page, 4.0);
    let line = targets()["turntable time"];
    // The first ten seconds are shown.
    let at = |t_s: f32| pos2(line.left() + 0.1 * t_s * line.width(), line.center().y);
    drag(&mut page, at(3.0), at(1.5));
    let shown_s = state(&page).shown().t_s;
    assert!((shown_s - 1.5).abs() < 0.02, "{shown_s}");
}

#[test]
fn the_run_is_saved_as_a_table() {
    let mut page = on_turntable(TABLET);
    press(&mut page, "Push to the right");
    pass(&mut page, 1.0);
    press_target(&mut page, "turntable csv");
    assert_eq!(page.state().commands, [PageCommand::Save(Saved::RunTable)]);
    let session = &page.state().session;
    let [name, written] = session.file_of(Saved::RunTable).expect("a run");
    assert!(name.ends_with(".csv"));
    // 50 samples a second, the first one at the beginning.
    assert_eq!(written.lines().count(), 1 + 1 + 50);
}

#[test]
fn a_run_is_laid_under_the_next() {
    let mut page = on_turntable(TABLET);
    press(&mut page, "Push to the right");
    pass(&mut page, 1.0);
    press(&mut page, "Keep");
    let kept = state(&page).run().clone();
    press(&mut page, "Again");
    let again = state(&page);
    assert_eq!(again.kept(), Some(&kept));
    assert!(again.end_s() == 0.0 && again.shown().rate_rad_s == 0.0);
    press(&mut page, "Keep");
    assert_eq!(state(&page).kept(), None);
}

#[test]
fn another_stand_or_number_begins_a_new_run_in_the_same_position() {
    let mut page = on_turntable(TABLET);
    let session = &mut page.state_mut().session;
    session.lead_turntable(|position| position.hand_distance_m = 0.4);
    session.push_turntable(1.0);
    pass(&mut page, 2.0);
    press_target(&mut page, "fold:Who, and on what");
    let turning = state(&page).shown().rate_rad_s;
    let field = "value:turntable hand_mass_kg";
    press_target(&mut page, field);
    type_and_press(&mut page, "1", egui::Key::Enter);
    let own = state(&page);
    assert_eq!(own.setup().hand_mass_kg, 1.0);
    assert_eq!(own.end_s(), 0.0);
    let held_m = own.shown().position.hand_distance_m;
    assert!((held_m - 0.4).abs() < 1e-3, "{held_m}");
    assert!((own.shown().rate_rad_s - turning).abs() < 1e-9);

    press_target(&mut page, "stand:chair");
    let own = state(&page);
    assert_eq!(own.setup().stand, Stand::Chair);
    assert_eq!(own.setup().friction, Stand::Chair.friction());
    assert!(own.end_s() == 0.0 && own.shown().rate_rad_s == 0.0);
    assert!(targets().contains_key("legs"), "who sits moves the legs");
    // Who leaves and comes back finds it as it was.
    let session = &mut page.state_mut().session;
    session.leave_turntable();
    session.begin_turntable();
    assert_eq!(state(&page).setup().stand, Stand::Chair);
}

#[test]
fn a_number_out_of_range_is_held_and_said() {
    let mut page = on_turntable(TABLET);
    let session = &mut page.state_mut().session;
    let most = Number::HandMass.range()[1];
    session.set_typed_turntable(TypedNumber::Of(Number::HandMass), "70 kg");
    assert_eq!(
        session.turntable_number(TypedNumber::Of(Number::HandMass)),
        Some(most)
    );
    assert!(session.notice().is_some_and(|it| it.contains("5.00 kg")));
    for typed in ["", "two", "1e999", "NaN"] {
        session.dismiss();
        session.set_typed_turntable(TypedNumber::Of(Number::FrictionTorque), typed);
        assert!(session.notice().is_some(), "{typed:?}");
    }
    let friction = session.turntable_number(TypedNumber::Of(Number::FrictionTorque));
    assert_eq!(friction, Some(Stand::Platform.friction().torque_n_m));
    session.set_typed_turntable(TypedNumber::Of(Number::FrictionTorque), "0.4 N m");
    let friction = session.turntable_number(TypedNumber::Of(Number::FrictionTorque));
    assert_eq!(friction, Some(0.4));
}

/// What was measured of a chair comes out of the run that the friction is for: c = I (w1 - w2) / t.
#[test]
fn two_rates_and_the_time_between_give_the_friction() {
    for (kind, grows) in [("even", false), ("grows", true)] {
        let mut page = on_turntable(TABLET);
        press_target(&mut page, "fold:Your own chair");
        let session = &mut page.state_mut().session;
        session.set_typed_turntable(TypedNumber::ReadRate(0), "30 rpm");
        session.set_typed_turntable(TypedNumber::ReadRate(1), "20 rpm");
        session.set_typed_turntable(TypedNumber::TimeBetween(0), "5");
        settle(&mut page);
        if grows {
            press_target(&mut page, &format!("slowing:{kind}"));
        }
        press_target(&mut page, "calibrate");
        let friction = state(&page).setup().friction;
        assert_eq!(friction.torque_n_m == 0.0, grows, "{friction:?}");
        assert_eq!(friction.viscous_n_m_s == 0.0, !grows, "{friction:?}");
        let session = &mut page.state_mut().session;
        session.dismiss();
        session.set_typed_turntable(TypedNumber::RateToSet, "30 rpm");
        pass(&mut page, 5.0);
        let rpm = page.state().session.units().of(Kind::Rate);
        let after = rpm.from_si(state(&page).shown().rate_rad_s);
        assert!((after - 20.0).abs() < 1e-6, "{kind}: {after}");
        // What cannot be is said, and changes nothing.
        let session = &mut page.state_mut().session;
        session.set_typed_turntable(TypedNumber::ReadRate(1), "40 rpm");
        session.calibrate_turntable();
        assert!(session.notice().is_some());
        assert_eq!(state(&page).setup().friction, friction);
    }
}

/// What was guessed of the angular momentum is told some seconds after the last push, with why; nothing waits for it.
#[test]
fn a_guess_at_the_angular_momentum_is_answered() {
    for (without, guess, came, why) in [
        (true, "stays", Tendency::Stays, "without friction"),
        (true, "rises", Tendency::Stays, "without friction"),
        (false, "falls", Tendency::Falls, "friction brakes"),
        (false, "stays", Tendency::Falls, "friction brakes"),
    ] {
        let mut page = on_turntable(TABLET);
        page.state_mut().session.set_without_friction(without);
        settle(&mut page);
        press_target(&mut page, &format!("predict:{guess}"));
        assert!(says(&page, "Your guess: "));
        let told = |page: &Page| state(page).prediction().expect("a guess").outcome();
        // At rest there is nothing to watch.
        pass(&mut page, 6.0);
        assert_eq!(told(&page), None);
        press(&mut page, "Push to the right");
        pass(&mut page, 3.0);
        press(&mut page, "Push to the right");
        set_slider(&mut page, HANDS, 30.0);
        pass(&mut page, 4.0);
        assert_eq!(told(&page), None, "a push begins it anew");
        let session = &page.state().session;
        assert!(!summary(session).contains(why));
        pass(&mut page, 1.1);
        let outcome = told(&page).expect("it is told");
        assert_eq!(outcome.tendency, came, "{guess}");
        let as_guessed = says(&page, "As you guessed.");
        assert_eq!(as_guessed, tendency(came) == tendency_of(guess), "{guess}");
        assert!(says(&page, why) && says(&page, "not the angular momentum"));
        // It is read aloud, once.
        assert!(summary(&page.state().session).contains(why));
        press(&mut page, "Push to the right");
        pass(&mut page, 2.0);
        assert!(!summary(&page.state().session).contains(why));
        assert_eq!(told(&page), Some(outcome), "what is told stays");
        press_target(&mut page, "predict again");
        assert!(says(&page, "What will the angular momentum do?"));
    }
}

fn tendency_of(name: &str) -> &'static str {
    tendency(match name {
        "falls" => Tendency::Falls,
        "stays" => Tendency::Stays,
        _ => Tendency::Rises,
    })
}

/// A bearing with some of both kinds of friction, read three times as it slows down, gets them back.
#[test]
fn three_rates_give_both_parts_of_the_friction() {
    let mut page = on_turntable(TABLET);
    press_target(&mut page, "fold:Your own chair");
    assert!(!targets().contains_key("value:rate third"));
    press_target(&mut page, "slowing:both");
    let session = &mut page.state_mut().session;
    for (part, typed) in [
        (Number::FrictionTorque, "0.12"),
        (Number::FrictionViscous, "0.03"),
    ] {
        session.set_typed_turntable(TypedNumber::Of(part), typed);
    }
    session.set_typed_turntable(TypedNumber::RateToSet, "40 rpm");
    for (which, time_s) in [(0, 0.0), (1, 5.0), (2, 7.0)] {
        pass(&mut page, time_s);
        let read_rad_s = state(&page).shown().rate_rad_s;
        let session = &mut page.state_mut().session;
        session.change_slowing(|slowing| slowing.rates_rad_s[which] = read_rad_s);
    }
    for (name, typed) in [("value:time between", "5"), ("value:time to third", "7")] {
        press_target(&mut page, name);
        type_and_press(&mut page, typed, egui::Key::Enter);
    }
    page.state_mut().session.set_without_friction(true);
    press_target(&mut page, "calibrate");
    let friction = state(&page).setup().friction;
    // Frames of the page are no whole number of its steps.
    assert!((friction.torque_n_m - 0.12).abs() < 1e-3, "{friction:?}");
    assert!((friction.viscous_n_m_s - 0.03).abs() < 1e-3, "{friction:?}");
    // A rate that rises is refused in words, and changes nothing.
    let session = &mut page.state_mut().session;
    session.dismiss();
    session.set_typed_turntable(TypedNumber::ReadRate(2), "39 rpm");
    session.calibrate_turntable();
    assert!(session.notice().is_some_and(|it| it.contains("lower")));
    assert_eq!(state(&page).setup().friction, friction);
    let session = &mut page.state_mut().session;
    session.set_typed_turntable(TypedNumber::TimeBetween(1), "0");
    assert!(session.notice().is_some_and(|it| it.contains("0.1")));
}

/// Where the picture has the axis in these tests: in the middle, the hips a little below.
fn with_axis(page: &mut Page) -> AxisOnPicture {
    let stage = page.state().frame.expect("a frame").stage;
    let axis = AxisOnPicture {
        hips: stage.center() + vec2(0.0, 20.0),
        points_per_m: 150.0,
    };
    page.state_mut().panels.axis = Some(axis);
    settle(page);
    axis
}

#[test]
fn a_finger_leads_the_hands_by_its_distance_from_the_axis() {
    let mut page = on_turntable(SIZES[0]);
    let axis = with_axis(&mut page);
    let at = |distance_m: f32| -> Pos2 { axis.hips + vec2(distance_m * axis.points_per_m, -60.0) };
    let led_m = |page: &Page| state(page).led().hand_distance_m;
    pointer(&mut page, at(0.5), true);
    // In the frame of the touch.
    assert!((led_m(&page) - 0.5).abs() < 1e-6, "{}", led_m(&page));
    page.event(egui::Event::PointerMoved(at(-0.4)));
    page.step();
    assert!((led_m(&page) - 0.4).abs() < 1e-6, "{}", led_m(&page));
    pass(&mut page, 1.0);
    let hands_m = state(&page).shown().position.hand_distance_m;
    assert!((hands_m - 0.4).abs() < 1e-6, "{hands_m}");
    pointer(&mut page, at(-0.4), false);
    // Nearer than the hands can come is as near as they can.
    pointer(&mut page, at(0.0), true);
    assert_eq!(led_m(&page), state(&page).reach_m()[0]);
    pointer(&mut page, at(0.0), false);
    // Beside the figure the picture is turned, and nothing led.
    let beside = at(2.0 * state(&page).reach_m()[1] as f32);
    let before = led_m(&page);
    pointer(&mut page, beside, true);
    pointer(&mut page, beside, false);
    assert_eq!(led_m(&page), before);
}

#[test]
fn a_flick_below_the_hips_pushes() {
    for (way, sign) in [(90.0_f32, 1.0), (-90.0, -1.0)] {
        let mut page = on_turntable(SIZES[0]);
        let axis = with_axis(&mut page);
        let from = axis.hips + vec2(-0.5 * way, 70.0);
        drag(&mut page, from, from + vec2(way, 0.0));
        let rate_rad_s = state(&page).shown().rate_rad_s;
        assert!(sign * rate_rad_s > 0.3, "{rate_rad_s}");
        // However fast: no harder than a push by hand.
        assert!(rate_rad_s.abs() <= 3.0 + 1e-9, "{rate_rad_s}");
        assert_eq!(state(&page).led(), &state(&page).shown().position);
    }
    // A finger that rests is none.
    let mut page = on_turntable(SIZES[0]);
    let axis = with_axis(&mut page);
    let from = axis.hips + vec2(-40.0, 70.0);
    pointer(&mut page, from, true);
    page.run_steps(60);
    pointer(&mut page, from + vec2(80.0, 0.0), false);
    assert_eq!(state(&page).shown().rate_rad_s, 0.0);
}

/// What is read aloud changes once a second at most, and not by trifles.
#[test]
fn the_rate_is_announced_in_steps() {
    let mut session = Session::default();
    session.begin_turntable();
    session.set_without_friction(true);
    session.push_turntable(4.0);
    let mut said = vec![(0.0, summary(&session))];
    let mut moved = 0;
    for i in 0..1200 {
        let t_s = f64::from(i) * FRAME_S;
        let part = 0.5 - 0.5 * libm::cos(0.8 * t_s);
        session.lead_turntable(|position| position.hand_distance_m = 0.25 + 0.5 * part);
        session.advance_turntable(FRAME_S);
        let now = summary(&session);
        if said[said.len() - 1].1 != now {
            said.push((t_s, now));
        }
        moved += 1;
    }
    assert!((5..=20).contains(&said.len()), "{} of {moved}", said.len());
    let apart_s = said[1..].windows(2).map(|pair| pair[1].0 - pair[0].0);
    assert!(apart_s.clone().all(|apart_s| apart_s > 0.99), "{said:?}");
    // Turning evenly there is nothing more to say.
    for _ in 0..120 {
        session.advance_turntable(FRAME_S);
    }
    let even = summary(&session);
    for _ in 0..600 {
        session.advance_turntable(FRAME_S);
        assert_eq!(summary(&session), even);
    }
}

/// Who was on it, and on what, is there again after a reload; what is spoilt is left out.
#[test]
fn who_was_on_it_survives_a_reload() {
    let mut session = Session::default();
    session.begin_turntable();
    session.set_stand(Stand::Ice);
    session.set_typed_turntable(TypedNumber::Of(Number::Stature), "1.5 m");
    let kept = session.keep();
    let mut again = Session::default();
    again.restore(&kept);
    assert!(!again.is_on_turntable());
    again.begin_turntable();
    let setup = again.turntable().map(|it| *it.setup());
    let expected = Setup {
        stature_m: 1.5,
        ..Setup::on(Stand::Ice)
    };
    assert_eq!(setup, Some(expected));
    let spoilt = kept.replace("\"ice\"", "\"moon\"");
    assert_ne!(spoilt, kept);
    let mut again = Session::default();
    again.restore(&spoilt);
    again.begin_turntable();
    let setup = again.turntable().map(|it| *it.setup());
    assert_eq!(setup, Some(Setup::on(Stand::Platform)));
}

#[test]
fn another_jump_or_a_measurement_leaves_it() {
    let mut session = Session::default();
    session.begin_turntable();
    session.open(starts::all()[2].scenario.clone());
    assert!(!session.is_on_turntable());
    session.begin_turntable();
    session.measure_by_stop_watch();
    assert!(!session.is_on_turntable() && session.is_measuring());
    session.begin_turntable();
    assert!(session.is_on_turntable() && !session.is_measuring());
}

/// At four sizes and in both languages, with everything open, after a run with another one under it.
#[test]
fn it_has_room() {
    for language in LANGUAGES {
        for size in SIZES {
            let mut page = open(size, language, Question::Jump);
            let session = &mut page.state_mut().session;
            session.begin_turntable();
            session.set_stand(Stand::Ice);
            session.push_turntable(2.0);
            settle(&mut page);
            pass(&mut page, 3.0);
            let session = &mut page.state_mut().session;
            session.keep_or_drop_run();
            session.predict_momentum(Some(Tendency::Rises));
            session.push_turntable(1.0);
            pass(&mut page, 6.0);
            with_axis(&mut page);
            for fold in ["fold:Who, and on what", "fold:Your own chair"] {
                press_target(&mut page, fold);
            }
            check(
                &page,
                size,
                &format!("{language:?} {size:?} turntable"),
                None,
            );
        }
    }
}
