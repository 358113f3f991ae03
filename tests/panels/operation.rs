//! The effect of the controls: clicked, dragged, typed into, and set by AccessKit.

use egui::accesskit::{ActionData, Role};
use egui::{Event, Key, Modifiers, lerp, pos2, vec2};
use egui_kittest::kittest::NodeT;
use turns_aloft::session::Saved;

use crate::harness::{
    Page, SIZES, TABLET, at_target, centre, click, control, controls, drag, has, named, open,
    pointer, press, press_target, says, set, settle, targets, type_and_press,
};
use turns_aloft::appearance::view::View;
use turns_aloft::describe::Label;
use turns_aloft::panel::PageCommand;
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::{HandsKeep, starts};
use turns_aloft::session::Question;
use turns_aloft::session::compare::Which;
use turns_aloft::session::goal::GoalTurns;
use turns_aloft::words::{Language, language};

const NARROW: [f32; 2] = SIZES[3];
const TWO_COLUMNS: [f32; 2] = SIZES[2];

fn jump() -> Page {
    open(TABLET, Language::English, Question::Jump)
}

/// Asserts that the jump shown is the flight of the inputs shown.
fn assert_flown(page: &Page) {
    let session = &page.state().session;
    assert_eq!(session.jump().turns, session.scenario().fly().turns);
}

fn text_of(page: &Page, role: Role, name: &str) -> String {
    control(page, role, name).value().unwrap_or_default()
}

#[test]
fn a_question_is_asked() {
    for size in SIZES {
        let mut page = open(size, Language::English, Question::Jump);
        for question in ["Why", "Goal", "Map", "Compare", "Jump"] {
            press(&mut page, question);
            assert_eq!(page.state().session.question().name(), question);
        }
    }
}

#[test]
fn a_slider_is_set_by_accesskit() {
    let mut page = jump();
    let turns = page.state().session.jump().turns;
    set(
        &mut page,
        Role::Slider,
        "Arm tuck",
        ActionData::NumericValue(65.0),
    );
    assert_eq!(text_of(&page, Role::Slider, "Arm tuck"), "65 %");
    assert!((page.state().session.scenario().arm_tuck - 0.65).abs() < 1e-12);
    assert_ne!(page.state().session.jump().turns, turns);
    assert_flown(&page);
}

#[test]
fn a_slider_describes_its_value_in_the_unit_shown() {
    let page = jump();
    assert_eq!(text_of(&page, Role::Slider, "Jump height"), "28 cm");
    assert_eq!(
        text_of(&page, Role::NumberInput, "Jump height as a number"),
        "28 cm"
    );
}

#[test]
fn every_main_slider_is_dragged() {
    for key in [
        "takeoff_rate_rad_s",
        "arm_tuck",
        "leg_tuck",
        "hand_mass_kg",
        "jump_height_m",
    ] {
        let mut page = jump();
        let turns = page.state().session.jump().turns;
        let parameter = Parameter::named(key).expect("a number");
        control(&page, Role::Slider, parameter.label()).scroll_to_me();
        settle(&mut page);
        let area = targets()[&format!("slider:{key}")];
        let y = lerp(area.y_range(), 0.75);
        let at = |part: f32| pos2(lerp(area.x_range(), part), y);
        pointer(&mut page, at(0.3), true);
        page.event(Event::PointerMoved(at(0.45)));
        settle(&mut page);
        assert!(page.state().session.is_dragging(), "{key}");
        pointer(&mut page, at(0.45), false);
        settle(&mut page);
        assert!(!page.state().session.is_dragging(), "{key}");
        assert_ne!(page.state().session.jump().turns, turns, "{key}");
        assert_flown(&page);
    }
}

#[test]
fn a_double_click_resets_a_slider() {
    let mut page = jump();
    let before = page.state().session.scenario().clone();
    let area = targets()["slider:arm_tuck"];
    let y = lerp(area.y_range(), 0.75);
    let at = |part: f32| pos2(lerp(area.x_range(), part), y);
    drag(&mut page, at(0.5), at(0.9));
    assert_ne!(*page.state().session.scenario(), before);
    // So long after the drag that it does not count as the first click.
    page.run_steps(120);
    for _ in 0..2 {
        pointer(&mut page, at(0.3), true);
        pointer(&mut page, at(0.3), false);
    }
    settle(&mut page);
    assert_eq!(*page.state().session.scenario(), before);
}

#[test]
fn one_button_resets_everything() {
    let mut page = jump();
    let is_enabled = |page: &Page| {
        let button = control(page, Role::Button, "Reset everything");
        !button.accesskit_node().is_disabled()
    };
    assert!(!is_enabled(&page));
    let before = page.state().session.scenario().clone();
    set(
        &mut page,
        Role::Slider,
        "Leg tuck",
        ActionData::NumericValue(20.0),
    );
    assert!(is_enabled(&page));
    press(&mut page, "Reset everything");
    assert_eq!(*page.state().session.scenario(), before);
    assert!(!is_enabled(&page));
}

const HEIGHT: &str = "Jump height as a number";

#[test]
fn a_number_is_typed() {
    let mut page = jump();
    click(&mut page, Role::NumberInput, HEIGHT);
    // Typing replaces the old number, which is selected.
    type_and_press(&mut page, "31", Key::Enter);
    assert_eq!(page.state().session.scenario().jump_height_m, 0.31);
    assert_eq!(text_of(&page, Role::NumberInput, HEIGHT), "31 cm");
    assert_flown(&page);
}

#[test]
fn escape_cancels_typing() {
    let mut page = jump();
    click(&mut page, Role::NumberInput, HEIGHT);
    type_and_press(&mut page, "1", Key::Escape);
    assert_eq!(text_of(&page, Role::NumberInput, HEIGHT), "28 cm");
    assert_eq!(page.state().session.scenario().jump_height_m, 0.28);
    assert_eq!(page.state().session.notice(), None);
}

#[test]
fn text_that_is_not_a_number_gives_a_notice_and_changes_nothing() {
    let mut page = jump();
    let before = page.state().session.scenario().clone();
    click(&mut page, Role::NumberInput, "Arm tuck as a number");
    type_and_press(&mut page, "tight", Key::Enter);
    assert_eq!(*page.state().session.scenario(), before);
    assert!(says(&page, "needs a number"));
    press(&mut page, "Close the message");
    assert!(!says(&page, "needs a number"));
}

#[test]
fn a_number_out_of_range_is_clamped_with_a_notice() {
    let mut page = jump();
    click(&mut page, Role::NumberInput, HEIGHT);
    type_and_press(&mut page, "99999", Key::Enter);
    assert_eq!(text_of(&page, Role::NumberInput, HEIGHT), "250 cm");
    assert!(says(&page, "held at 250 cm"));
}

#[test]
fn a_number_is_set_by_accesskit() {
    let mut page = jump();
    for (text, value) in [("31", "31 cm"), ("high", "31 cm"), ("32.0 cm", "32 cm")] {
        set(
            &mut page,
            Role::NumberInput,
            HEIGHT,
            ActionData::Value(text.into()),
        );
        assert_eq!(text_of(&page, Role::NumberInput, HEIGHT), value, "{text}");
    }
}

#[test]
fn a_number_is_typed_with_a_comma_or_a_point_in_both_languages() {
    for language in [Language::English, Language::German] {
        let mut page = open(TABLET, language, Question::Jump);
        for (typed, mass_kg) in [("0,65", 0.65), ("0.25", 0.25), ("0,5 kg", 0.5)] {
            press_target(&mut page, "value:hand_mass_kg");
            type_and_press(&mut page, typed, Key::Enter);
            let session = &page.state().session;
            assert_eq!(session.scenario().hand_mass_kg, mass_kg, "{typed}");
            assert_eq!(session.notice(), None, "{typed}");
        }
    }
}

#[test]
fn weights_are_compared_under_each_assumption() {
    let mut page = jump();
    assert!(!says(&page, "bare hands"));
    set(
        &mut page,
        Role::Slider,
        "Added hand mass",
        ActionData::NumericValue(0.25),
    );
    assert_eq!(
        page.state()
            .session
            .weights_held()
            .map(|held| held.outcomes.len()),
        Some(3)
    );
    press(&mut page, "angular momentum");
    assert_eq!(
        page.state().session.scenario().hands_keep,
        HandsKeep::AngularMomentum
    );
    assert_flown(&page);
}

#[test]
fn a_section_opens_and_closes() {
    let mut page = jump();
    assert!(!has(&page, "Anticlockwise"));
    press(&mut page, "The jumper");
    assert!(has(&page, "Anticlockwise"));
    press(&mut page, "The jumper");
    assert!(!has(&page, "Anticlockwise"));
}

#[test]
fn changing_the_language_changes_nothing_else() {
    let mut page = jump();
    set(
        &mut page,
        Role::Slider,
        "Arm tuck",
        ActionData::NumericValue(65.0),
    );
    press(&mut page, "Uncertainty");
    press(&mut page, "Uncertainty of the inputs");
    let done = |page: &Page| {
        let session = &page.state().session;
        let range = session.range().map(|range| [range.low, range.high]);
        (session.scenario().clone(), range)
    };
    let done_before = done(&page);
    let before = targets().into_keys().collect::<Vec<_>>();
    for (menu, name, spoken) in [
        ("Settings", "Deutsch", Language::German),
        ("Einstellungen", "English", Language::English),
    ] {
        press(&mut page, menu);
        press(&mut page, name);
        assert_eq!(language(), spoken);
        page.key_press(Key::Escape);
        settle(&mut page);
        assert_eq!(done(&page), done_before);
        assert_eq!(targets().into_keys().collect::<Vec<_>>(), before);
    }
}

#[test]
fn a_choice_changes_the_jump() {
    let mut page = jump();
    press(&mut page, "The jumper");
    let before = page.state().session.scenario().clone();
    for name in ["Clockwise", "Floor", "Male table"] {
        let [name] = &named(&page, name)[..] else {
            continue;
        };
        let name = name.clone();
        press(&mut page, &name);
    }
    assert_ne!(page.state().session.scenario().turning, before.turning);
    assert_ne!(page.state().session.scenario().ground, before.ground);
    assert_flown(&page);
}

#[test]
fn an_explanation_is_shown_until_the_next_click() {
    let mut page = jump();
    let said = "How far the arms come in";
    assert!(!says(&page, said));
    press(&mut page, "What is meant by Arm tuck");
    assert!(says(&page, said));
    press(&mut page, "What is meant by Arm tuck");
    assert!(!says(&page, said));
}

#[test]
fn a_control_has_the_same_id_while_others_appear_and_disappear() {
    let mut page = jump();
    let last = "Take-off, closing, opening";
    let id = |page: &Page| control(page, Role::Button, last).accesskit_node().locate();
    let before = id(&page);
    press(&mut page, "All readouts");
    assert_eq!(id(&page), before);
    press(&mut page, "The jumper");
    assert_eq!(id(&page), before);
}

// Playing

#[test]
fn the_playhead_is_moved_by_its_buttons_and_its_slider() {
    let mut page = jump();
    set(
        &mut page,
        Role::Slider,
        "Time, on the charts",
        ActionData::NumericValue(0.2),
    );
    assert_eq!(page.state().session.playhead_s(), 0.2);
    // A frame of video: 60 are shown in a second.
    press(&mut page, "One frame on");
    assert!((page.state().session.playhead_s() - 0.2 - 1.0 / 60.0).abs() < 1e-12);
    press(&mut page, "One frame back");
    assert!((page.state().session.playhead_s() - 0.2).abs() < 1e-12);
    press(&mut page, "Play");
    assert!(page.state().session.playback.playing);
    press(&mut page, "Pause");
    assert!(!page.state().session.playback.playing);
    press(&mut page, "Repeat");
    assert!(page.state().session.playback.repeat);
    press(&mut page, "Speed 1/10");
    assert_eq!(page.state().session.playback.speed, 0.1);
}

#[test]
fn a_narrow_page_has_one_button_for_all_speeds() {
    let mut page = open(NARROW, Language::English, Question::Jump);
    for (present, next) in [("1/4", 0.1), ("1/10", 1.0), ("1", 0.5), ("1/2", 0.25)] {
        press(&mut page, &format!("Speed {present}"));
        assert_eq!(page.state().session.playback.speed, next);
    }
}

#[test]
fn scrubbing_the_charts_moves_the_playhead_to_the_pointer() {
    let mut page = jump();
    let turns = page.state().session.jump().turns;
    let charts = targets()["charts"];
    for part in [0.02, 0.55] {
        let middle = charts.center();
        drag(
            &mut page,
            middle,
            pos2(lerp(charts.x_range(), part), middle.y),
        );
        let session = &page.state().session;
        let expected_s = f64::from(part) * session.end_s();
        assert!((session.playhead_s() - expected_s).abs() < 1e-3, "{part}");
    }
    assert_eq!(page.state().session.jump().turns, turns);
}

#[test]
fn a_view_button_sets_the_view() {
    let mut page = jump();
    for (name, view) in [
        ("Above", View::Above),
        ("Side", View::Side),
        ("Front", View::Front),
    ] {
        press(&mut page, name);
        assert_eq!(page.state().view, Some(view));
    }
}

#[test]
fn the_greeting_is_dismissed() {
    let mut page = jump();
    press(&mut page, "Close this line");
    assert!(!has(&page, "Close this line"));
    assert!(!page.state().session.shows_greeting());
}

// The bar

#[test]
fn every_starting_point_opens() {
    let mut page = jump();
    for start in starts::all() {
        let [button] = &named(&page, "Jumps. Open: ")[..] else {
            panic!("one button for the menu of jumps");
        };
        let button = button.clone();
        press(&mut page, &button);
        press(&mut page, start.label());
        assert_eq!(
            *page.state().session.scenario(),
            start.scenario,
            "{}",
            start.name
        );
        assert!(
            !targets().contains_key("start:half-a-turn-short"),
            "the list closes"
        );
    }
}

#[test]
fn buttons_send_commands_to_the_page() {
    let mut page = jump();
    press(&mut page, "Open");
    press(&mut page, "Share");
    press(&mut page, "Save it as a file");
    press(&mut page, "Share");
    press(&mut page, "Copy a link to it");
    press(&mut page, "Share");
    press(&mut page, "Save it as a picture");
    let expected = [
        PageCommand::Open,
        PageCommand::Save(Saved::Jump),
        PageCommand::Link,
        PageCommand::Picture,
    ];
    assert_eq!(page.state().commands, expected);
}

#[test]
fn a_sheet_for_sharing_is_offered_where_the_device_has_one() {
    let mut page = jump();
    press(&mut page, "Share");
    assert!(!targets().contains_key("Send link"));
    press(&mut page, "Share");
    page.state_mut().panels.has_share_sheet = true;
    settle(&mut page);
    for item in ["Send a picture of it", "Send a link to it"] {
        press(&mut page, "Share");
        press(&mut page, item);
    }
    let expected = [PageCommand::SendPicture, PageCommand::SendLink];
    assert_eq!(page.state().commands, expected);
}

#[test]
fn units_change_what_is_shown_and_not_the_jump() {
    let mut page = jump();
    let before = page.state().session.scenario().clone();
    press(&mut page, "Settings");
    for name in ["in", "deg/s", "lb"] {
        press(&mut page, name);
    }
    assert_eq!(text_of(&page, Role::Slider, "Jump height"), "11.0 in");
    let rate_deg_s = before.takeoff_rate_rad_s.to_degrees();
    let rate = text_of(&page, Role::Slider, "Take-off rate");
    assert_eq!(rate, format!("{rate_deg_s:.0} deg/s"));
    assert_eq!(*page.state().session.scenario(), before);
}

#[test]
fn a_change_is_undone_and_redone_by_button_and_key() {
    for size in SIZES {
        let mut page = open(size, Language::English, Question::Jump);
        let before = page.state().session.scenario().clone();
        set(
            &mut page,
            Role::Slider,
            "Leg tuck",
            ActionData::NumericValue(20.0),
        );
        let after = page.state().session.scenario().clone();
        let [button] = &named(&page, "Undo")[..] else {
            panic!("one button that undoes");
        };
        let button = button.clone();
        press(&mut page, &button);
        assert_eq!(*page.state().session.scenario(), before);
        page.key_press_modifiers(Modifiers::COMMAND | Modifiers::SHIFT, Key::Z);
        settle(&mut page);
        assert_eq!(*page.state().session.scenario(), after);
        page.key_press_modifiers(Modifiers::COMMAND, Key::Z);
        settle(&mut page);
        assert_eq!(*page.state().session.scenario(), before);
    }
}

// The other questions

#[test]
fn a_change_is_tried_and_undone() {
    for size in SIZES {
        let mut page = open(size, Language::English, Question::Why);
        let before = page.state().session.scenario().clone();
        assert!(!has(&page, "Go back"));
        press(&mut page, "Try it");
        assert_ne!(*page.state().session.scenario(), before);
        assert_flown(&page);
        press_target(&mut page, "go back");
        assert_eq!(*page.state().session.scenario(), before);
        assert!(!has(&page, "Go back"));
    }
}

/// A jump that has all its turns is told what cost most; nobody is pushed to a change.
#[test]
fn a_full_jump_is_offered_no_change() {
    let mut page = open(TABLET, Language::English, Question::Why);
    assert!(has(&page, "Try it"));
    page.state_mut()
        .session
        .change(|scenario| scenario.jump_turns = 1);
    settle(&mut page);
    assert!(says(&page, "All turns are there."));
    assert!(!has(&page, "Try it"));
}

#[test]
fn a_step_does_not_move_while_it_is_tried() {
    let mut page = open(NARROW, Language::English, Question::Why);
    let [step] = &named(&page, "Try: 1 cm higher, ")[..] else {
        panic!("one step of the jump height");
    };
    control(&page, Role::Button, step).scroll_to_me();
    settle(&mut page);
    let at = centre("step:jump_height_m");
    for height_m in [0.29, 0.30, 0.31] {
        for pressed in [true, false] {
            pointer(&mut page, at, pressed);
        }
        settle(&mut page);
        let scenario = page.state().session.scenario();
        assert!((scenario.jump_height_m - height_m).abs() < 1e-12);
        assert!(centre("step:jump_height_m").distance(at) < 1.0);
    }
    for height_m in [0.30, 0.29, 0.28] {
        press_target(&mut page, "go back:steps");
        let scenario = page.state().session.scenario();
        assert!((scenario.jump_height_m - height_m).abs() < 1e-12);
    }
}

#[test]
fn a_click_on_a_bar_explains_it() {
    let mut page = open(NARROW, Language::English, Question::Why);
    let about = at_target(&page, "why:closing")
        .and_then(|bar| bar.accesskit_node().description())
        .expect("an explanation");
    for opened in [true, false] {
        press_target(&mut page, "why:closing");
        assert_eq!(says(&page, &about), opened);
    }
}

#[test]
fn the_goal_is_changed_and_its_proposals_are_tried() {
    let mut page = open(TABLET, Language::English, Question::Goal);
    press(&mut page, "No q, < or <<");
    assert_eq!(page.state().session.target(), GoalTurns::NotCalled);
    press(&mut page, "Full turns");
    let wanted = page.state().session.goal_turns();
    for apply in ["apply:takeoff_rate_rad_s", "apply:joint"] {
        let before = page.state().session.scenario().clone();
        press_target(&mut page, apply);
        let turns = page.state().session.jump().turns;
        assert!(
            (turns - wanted).abs() < 5e-3,
            "{apply}: {turns} of {wanted}"
        );
        press_target(&mut page, "go back");
        assert_eq!(*page.state().session.scenario(), before);
    }
    press_target(&mut page, "+:target");
    assert!(page.state().session.goal_turns() > wanted);
}

#[test]
fn limits_are_changed_and_reset() {
    let mut page = open(TABLET, Language::English, Question::Goal);
    press(&mut page, "This jumper's limits");
    press_target(&mut page, "limits:jump_height_m");
    press_target(&mut page, "+:most:jump_height_m");
    assert!(page.state().session.has_own_limits());
    press_target(&mut page, "forget limits");
    assert!(!page.state().session.has_own_limits());
}

#[test]
fn the_range_is_shown_and_its_half_widths_are_changed() {
    let mut page = jump();
    press(&mut page, "Uncertainty");
    press(&mut page, "Uncertainty of the inputs");
    let width = |page: &Page| {
        let range = page.state().session.range().expect("asked for");
        range.high - range.low
    };
    let before = width(&page);
    for _ in 0..3 {
        press_target(&mut page, "+:close_time_s");
    }
    assert!(width(&page) > before);
    press_target(&mut page, "usual half-widths");
    assert_eq!(width(&page), before);
    press(&mut page, "Uncertainty");
    assert!(page.state().session.range().is_none());
}

#[test]
fn the_point_is_moved_on_the_map() {
    let mut page = open(TABLET, Language::English, Question::Map);
    let map = targets()["map"];
    let place = |page: &Page| page.state().session.map_point();
    let target = pos2(lerp(map.x_range(), 0.7), lerp(map.y_range(), 0.4));
    drag(&mut page, centre("map:point"), target);
    let [u, v] = place(&page);
    assert!((u - 0.7).abs() < 0.01 && (v - 0.6).abs() < 0.01, "{u} {v}");
    assert_flown(&page);
    // A press near the point drags it from where it is: it moves by as much as the pointer.
    let at = centre("map:point");
    drag(&mut page, at + vec2(15.0, 10.0), at + vec2(-25.0, 10.0));
    let moved = place(&page)[0] - u;
    assert!(
        (moved + f64::from(40.0 / map.width())).abs() < 0.01,
        "{moved}"
    );
    // For AccessKit it has a slider for each axis.
    let sliders = named(&page, "On the map: ");
    assert_eq!(sliders.len(), 2);
    let before = page.state().session.jump().turns;
    set(
        &mut page,
        Role::Slider,
        &sliders[1],
        ActionData::NumericValue(40.0),
    );
    assert_ne!(page.state().session.jump().turns, before);
}

#[test]
fn the_inputs_of_the_map_are_chosen() {
    let mut page = open(TABLET, Language::English, Question::Map);
    let [across] = &named(&page, "Across: ")[..] else {
        panic!("one button for what lies across");
    };
    let across = across.clone();
    press(&mut page, &across);
    press_target(&mut page, "map:x:arm_tuck");
    assert!(has(&page, "Across: Arm tuck"));
}

// Kept jumps

fn names(page: &Page) -> Vec<String> {
    let entries = page.state().session.library().collection().entries();
    entries
        .iter()
        .map(|entry| entry.scenario.name.clone())
        .collect()
}

/// Keeps "Half a turn short" and "Four turns"; the second is the present jump and its own
/// reference.
fn with_two_kept() -> Page {
    let mut page = open(TABLET, Language::English, Question::Compare);
    press(&mut page, "Keep this jump");
    let four = starts::named("four-turns").expect("a starting point");
    page.state_mut().session.open(four.scenario.clone());
    settle(&mut page);
    press(&mut page, "Keep this jump");
    press_target(&mut page, "kept:2");
    assert_eq!(names(&page), ["Half a turn short", "Four turns"]);
    page
}

#[test]
fn a_kept_jump_is_renamed_moved_deleted_and_restored() {
    let mut page = with_two_kept();
    press(&mut page, "Rename: Four turns");
    assert!(control(&page, Role::TextInput, "Name").is_focused());
    type_and_press(&mut page, "Monday", Key::Enter);
    assert_eq!(names(&page), ["Half a turn short", "Monday"]);
    press(&mut page, "Up: Monday");
    assert_eq!(names(&page), ["Monday", "Half a turn short"]);
    assert!(!has(&page, "Up: Monday"), "the first does not go up");
    press(&mut page, "Down: Monday");
    assert_eq!(names(&page), ["Half a turn short", "Monday"]);
    press(&mut page, "Delete: Monday");
    assert_eq!(names(&page), ["Half a turn short"]);
    press(&mut page, "Undo: “Monday” is deleted.");
    assert_eq!(names(&page), ["Half a turn short", "Monday"]);
}

#[test]
fn a_new_name_is_set_by_accesskit_or_cancelled() {
    let mut page = with_two_kept();
    press(&mut page, "Rename: Four turns");
    set(
        &mut page,
        Role::TextInput,
        "Name",
        ActionData::Value("Thursday".into()),
    );
    assert_eq!(names(&page), ["Half a turn short", "Thursday"]);
    press(&mut page, "Rename: Thursday");
    type_and_press(&mut page, "Friday", Key::Escape);
    assert_eq!(names(&page), ["Half a turn short", "Thursday"]);
}

#[test]
fn a_kept_jump_opens() {
    let mut page = with_two_kept();
    press_target(&mut page, "kept:1");
    press(&mut page, "Open: Half a turn short");
    let half = starts::named("half-a-turn-short").expect("a starting point");
    assert_eq!(page.state().session.jump().turns, half.scenario.fly().turns);
    press(&mut page, "Save all as a file");
    assert_eq!(page.state().commands, [PageCommand::Save(Saved::KeptJumps)]);
}

#[test]
fn a_reference_is_chosen_and_cleared() {
    let mut page = open(TWO_COLUMNS, Language::English, Question::Compare);
    let reference = |page: &Page| page.state().session.reference().map(|it| it.which.clone());
    press_target(&mut page, "reference:as opened");
    assert_eq!(reference(&page), Some(Which::AsOpened));
    press_target(&mut page, "fold:Starting points");
    press_target(&mut page, "reference:four-turns");
    assert_eq!(
        reference(&page),
        Some(Which::Start("four-turns".to_owned()))
    );
    press_target(&mut page, "reference:none");
    assert_eq!(reference(&page), None);
    assert!(controls(&page).len() > 20);
}
