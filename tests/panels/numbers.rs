//! Numbers that are typed and shown: hang time beside height, units in sight, what may have been meant,
//! and what stands together agreeing.

use egui::Key;
use egui::accesskit::Role;
use egui::pos2;

use crate::harness::{
    Page, TABLET, click, control, drag, open, press, press_target, says, settle, show, targets,
    texts, type_and_press,
};
use turns_aloft::describe::unit::UnitText;
use turns_aloft::scenario::parameter::{Kind, Parameter};
use turns_aloft::scenario::units::{LengthUnit, Units};
use turns_aloft::scenario::{HandsKeep, starts};
use turns_aloft::session::{Question, Session};
use turns_aloft::words::{Language, set_language};

const HEIGHT: &str = "Jump height as a number";
const HANG_TIME: &str = "Hang time as a number";

fn jump() -> Page {
    open(TABLET, Language::English, Question::Jump)
}

fn value(page: &Page, name: &str) -> String {
    let field = control(page, Role::NumberInput, name);
    field.value().unwrap_or_default()
}

fn type_into(page: &mut Page, name: &str, text: &str) {
    click(page, Role::NumberInput, name);
    type_and_press(page, text, Key::Enter);
}

/// Typed in seconds or milliseconds, with point or comma, it flies and shows what was typed; the height
/// follows, and is followed.
#[test]
fn hang_time_and_height_follow_each_other() {
    let mut page = jump();
    for (typed, shown, hang_s) in [
        ("0.45", "0.45 s", 0.45),
        ("0,5 s", "0.50 s", 0.5),
        ("465 ms", "0.465 s", 0.465),
    ] {
        let height = value(&page, HEIGHT);
        type_into(&mut page, HANG_TIME, typed);
        assert_eq!(value(&page, HANG_TIME), shown, "{typed}");
        let session = &page.state().session;
        assert!((session.jump().readout.hang_time_s - hang_s).abs() < 1e-9);
        assert_eq!(session.notice(), None);
        assert_ne!(value(&page, HEIGHT), height);
    }
    type_into(&mut page, HEIGHT, "30");
    let session = &page.state().session;
    let hang_s = session.jump().readout.hang_time_s;
    let shown = Units::default().of(Kind::Time).text(hang_s);
    assert_eq!(value(&page, HANG_TIME), shown);
    // One step of undo puts both back.
    page.state_mut().session.undo();
    settle(&mut page);
    assert_eq!(value(&page, HANG_TIME), "0.465 s");
}

/// What no height gives changes nothing where it is known what was meant, else the nearest is taken.
#[test]
fn a_hang_time_out_of_range_is_said() {
    let mut page = jump();
    let before = page.state().session.scenario().clone();
    for (typed, meant) in [("450", "0.45 s"), ("45", "0.45 s"), ("4.5", "0.45 s")] {
        type_into(&mut page, HANG_TIME, typed);
        assert!(says(&page, meant), "{typed}");
        assert!(says(&page, "did you mean"), "{typed}");
        assert_eq!(*page.state().session.scenario(), before);
    }
    type_into(&mut page, HANG_TIME, "soon");
    assert!(says(&page, "Hang time needs a number"));
    assert_eq!(*page.state().session.scenario(), before);
    type_into(&mut page, HANG_TIME, "99999");
    assert!(says(&page, "it is held at"));
    assert_eq!(page.state().session.scenario().jump_height_m, 2.5);
}

/// The half-width is one, entered either way.
#[test]
fn the_half_width_of_the_hang_time_is_that_of_the_height() {
    let mut page = jump();
    page.state_mut().session.show_range(true);
    settle(&mut page);
    press_target(&mut page, "fold:Uncertainty of the inputs");
    let session = |page: &Page| page.state().session.hang_time_half_width_s();
    let usual_s = session(&page).expect("a range is shown");
    press_target(&mut page, "+:hang_time_s");
    let more_s = session(&page).expect("a range is shown");
    assert!(more_s > usual_s);
    let steps = more_s / 0.005;
    assert!((steps - steps.round()).abs() < 1e-4, "{more_s}");
    let of_height = |page: &Page| {
        let input = turns_aloft::analysis::hang_time::UNCERTAIN;
        page.state().session.half_widths().get(input)
    };
    let before_m = of_height(&page);
    press_target(&mut page, "−:jump_height_m");
    assert!(of_height(&page) < before_m);
    assert!(session(&page).expect("a range is shown") < more_s);
    for _ in 0..20 {
        press_target(&mut page, "−:hang_time_s");
    }
    assert_eq!(session(&page), Some(0.0));
    assert_eq!(of_height(&page), 0.0);
}

/// The unit stays in sight while a number is typed, and gives way to one that is typed.
#[test]
fn the_unit_is_in_sight_while_typing() {
    let mut page = jump();
    click(&mut page, Role::NumberInput, HEIGHT);
    let field = targets()["value:jump_height_m"];
    let unit = |page: &Page| {
        let inside = |rect: egui::Rect| field.contains(rect.center());
        let all = texts(page).into_iter();
        all.filter(|it| inside(it.letters))
            .any(|it| it.text == "cm")
    };
    assert!(unit(&page));
    page.event(egui::Event::Text("12 in".to_owned()));
    settle(&mut page);
    assert!(!unit(&page));
}

/// What is typed is shown as typed, in the user's unit, also after a reload; what is dragged stays on the
/// steps of the unit, so that what is shown is what flies.
#[test]
fn what_is_typed_is_shown_as_typed() {
    let mut page = jump();
    type_into(&mut page, HEIGHT, "24.5");
    assert_eq!(value(&page, HEIGHT), "24.5 cm");
    assert_eq!(page.state().session.scenario().jump_height_m, 0.245);
    let kept = page.state().session.keep();
    let mut session = Session::default();
    session.restore(&kept);
    let mut page = show(TABLET, session);
    assert_eq!(value(&page, HEIGHT), "24.5 cm");

    let rect = targets()["slider:jump_height_m"];
    let y = rect.bottom() - 10.0;
    for part in [0.31_f32, 0.37, 0.44, 0.61] {
        let from = pos2(rect.left() + 0.3 * rect.width(), y);
        drag(&mut page, from, pos2(rect.left() + part * rect.width(), y));
        let height_m = page.state().session.scenario().jump_height_m;
        let shown = LengthUnit::Cm.unit().from_si(height_m);
        assert!((shown - shown.round()).abs() < 1e-9, "{shown}");
        assert_eq!(value(&page, HEIGHT), format!("{shown:.0} cm"));
    }
}

/// A number out of range says what may have been meant, and changes nothing.
#[test]
fn what_may_have_been_meant_is_asked() {
    let mut page = jump();
    press_target(&mut page, "fold:The jumper");
    let before = page.state().session.scenario().clone();
    for (typed, meant) in [
        ("14.8", "did you mean 148 cm?"),
        ("5", "did you mean 152.4 cm (5 ft)?"),
        ("65", "did you mean 165.1 cm (65 in)?"),
    ] {
        type_into(&mut page, "Stature as a number", typed);
        assert!(
            says(&page, meant),
            "{typed}: {:?}",
            page.state().session.notice()
        );
        assert!(says(&page, "out of range, 100 to 210 cm"), "{typed}");
        assert_eq!(*page.state().session.scenario(), before);
    }
    type_into(&mut page, "Body mass as a number", "485");
    assert!(says(&page, "did you mean 48.50 kg"));
    assert_eq!(*page.state().session.scenario(), before);
}

/// With the angular momentum or the energy kept, the slider's rate is that of empty hands: what it becomes
/// stands beside it, as the readouts have it.
#[test]
fn the_rate_with_weights_stands_beside_the_slider() {
    for (keep, differs) in [
        (HandsKeep::Rate, false),
        (HandsKeep::AngularMomentum, true),
        (HandsKeep::Energy, true),
    ] {
        let mut page = jump();
        let session = &mut page.state_mut().session;
        session.change(|scenario| {
            scenario.hands_keep = keep;
            scenario.hand_mass_kg = 1.0;
        });
        settle(&mut page);
        let session = &page.state().session;
        let rpm = session.units().of(Kind::Rate);
        let set = rpm.text(session.scenario().takeoff_rate_rad_s);
        let flown = rpm.text(session.jump().readout.takeoff_rate_rad_s);
        assert_eq!(set != flown, differs, "{keep:?}");
        let said = format!("with empty hands; {flown} with what they hold");
        assert_eq!(says(&page, &said), differs, "{keep:?}");
    }
}

/// The turns, what is missing of them and the call, in their large figures: not a full jump with a degree
/// missing, nor green beside one.
#[test]
fn the_figures_and_the_degrees_agree() {
    set_language(Language::English);
    let jump = |short_deg: f64| {
        // What is turned on the ice adds to the turns as it is.
        let mut session = Session::default();
        session.open(
            starts::named("junior-double")
                .expect("a start")
                .scenario
                .clone(),
        );
        let owed = session.jump().owed.expect("a named jump");
        let on_ice = session.scenario().pre_rotation_turns;
        let more = (owed.shortfall_deg - short_deg) / 360.0;
        session.set(Parameter::PreRotation, on_ice + more);
        show(TABLET, session)
    };
    for (short_deg, figures, missing, call) in [
        (0.2, "2.00", "all there", "full rotation"),
        (1.0, "1.99", "1° short", "full below 75°"),
        (74.8, "1.79", "74° short", "full below 75°"),
        (75.2, "1.79", "75° short", "on the quarter"),
        (-1.0, "2.01", "1° too far", "full rotation"),
    ] {
        let page = jump(short_deg);
        for part in [figures, missing, call] {
            assert!(says(&page, part), "{short_deg}: {part}");
        }
    }
}

/// A change that the goal needs is the difference of the numbers beside it.
#[test]
fn the_changes_of_the_goal_add_up() {
    let mut page = open(TABLET, Language::English, Question::Goal);
    page.run_steps(200);
    press(&mut page, "Full turns");
    page.run_steps(200);
    let number = |text: &str| -> f64 {
        let digits = text.replace('−', "-");
        let end = digits.find(|c: char| !(c.is_ascii_digit() || "+-.".contains(c)));
        digits[..end.unwrap_or(digits.len())]
            .parse()
            .expect("a number")
    };
    let mut seen = 0;
    for text in texts(&page) {
        let Some((values, change)) = text.text.split_once("  (") else {
            continue;
        };
        let Some((from, to)) = values.split_once(" to ") else {
            continue;
        };
        let off = number(to) - number(from) - number(change);
        assert!(off.abs() < 1e-9, "{}", text.text);
        seen += 1;
    }
    assert!(seen > 1, "{seen}");
}
