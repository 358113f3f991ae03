//! A jump of the user's own, by touch: a coach's first answer about a skater of her own in at most ten
//! touches, and what makes way for another jump comes back at one.

use egui::accesskit::Role;
use egui::{Key, lerp, pos2};

use crate::harness::{
    Page, SIZES, TABLET, control, has, open, pointer, press, press_target, says, settle, targets,
    type_and_press,
};
use turns_aloft::physics::segments::SegmentTable;
use turns_aloft::scenario::jump::JumpName;
use turns_aloft::session::Question;
use turns_aloft::words::Language;

/// Somebody who touches only what is in sight, and how often.
struct Finger<'a> {
    page: &'a mut Page,
    size: [f32; 2],
    touches: usize,
}

impl Finger<'_> {
    /// Touches a target at a part of its width and height; the whole of it has to be in sight.
    fn touch_at(&mut self, target: &str, x: f32, y: f32) {
        let rect = targets()[target];
        assert!(
            rect.left() >= 0.0 && rect.right() <= self.size[0] && rect.bottom() <= self.size[1],
            "{target} is not on the screen: {rect:?}"
        );
        let column = targets()["question:Jump"];
        let in_column = !target.contains("question") && rect.top() > column.top() - 1.0;
        assert!(
            !in_column || rect.top() >= column.bottom(),
            "{target} is under the questions: {rect:?}"
        );
        let at = pos2(lerp(rect.x_range(), x), lerp(rect.y_range(), y));
        for pressed in [true, false] {
            pointer(self.page, at, pressed);
        }
        settle(self.page);
        self.touches += 1;
    }

    fn touch(&mut self, target: &str) {
        self.touch_at(target, 0.5, 0.5);
    }

    /// Touches a field and types into it.
    fn fill(&mut self, target: &str, typed: &str) {
        self.touch(target);
        type_and_press(self.page, typed, Key::Enter);
    }

    /// Touches a slider's track.
    fn slide(&mut self, key: &str, part: f32) {
        self.touch_at(&format!("slider:{key}"), part, 0.85);
    }
}

/// A triple loop by a boy: nothing of it is what a jump begins with.
#[test]
fn a_coach_has_the_first_answer_in_ten_touches() {
    for size in SIZES {
        for language in [Language::English, Language::German] {
            let mut page = open(size, language, Question::Jump);
            let mut finger = Finger {
                page: &mut page,
                size,
                touches: 0,
            };
            finger.touch("begin");
            finger.touch("jump:loop");
            finger.touch("turns:3");
            finger.touch("table:Male");
            finger.fill("value:stature_m", "162");
            finger.fill("value:body_mass_kg", "50");
            finger.fill("value:jump_height_m", "34");
            finger.slide("arm_tuck", 0.7);
            finger.slide("leg_tuck", 0.75);
            finger.touch("question:Why");
            assert!(finger.touches <= 10, "{} touches", finger.touches);

            let session = &page.state().session;
            let scenario = session.scenario();
            assert_eq!((scenario.jump, scenario.jump_turns), (JumpName::Loop, 3));
            assert_eq!(scenario.table, SegmentTable::Male);
            let near = |found: f64, wanted: f64, within: f64| (found - wanted).abs() < within;
            assert!(near(scenario.stature_m, 1.62, 1e-9), "{size:?}");
            assert!(near(scenario.body_mass_kg, 50.0, 1e-9), "{size:?}");
            assert!(near(scenario.jump_height_m, 0.34, 1e-9), "{size:?}");
            assert!(near(scenario.arm_tuck, 0.7, 0.05), "{size:?}");
            assert!(near(scenario.leg_tuck, 0.75, 0.05), "{size:?}");
            assert_eq!(scenario.note, "");
            let answer = session.budget_answer().expect("it stands").budget.clone();
            let jump = scenario.fly();
            let expected = turns_aloft::analysis::budget::Budget::new(scenario, &jump);
            assert_eq!(answer, expected, "the answer is about this jump");
            assert!(targets().contains_key("why:closing"), "{size:?}");
        }
    }
}

/// By the menu it is one touch more; a girl's double flip needs neither turns nor table.
#[test]
fn a_jump_is_begun_from_the_menu_too() {
    for size in SIZES {
        let mut page = open(size, Language::English, Question::Jump);
        let mut finger = Finger {
            page: &mut page,
            size,
            touches: 0,
        };
        finger.touch("starts");
        finger.touch("new jump");
        finger.touch("jump:axel");
        finger.fill("value:stature_m", "148");
        finger.fill("value:body_mass_kg", "38");
        finger.fill("value:hang_time_s", "0.45");
        let hang_time_s = finger.page.state().session.hang_time_s();
        assert!((hang_time_s - 0.45).abs() < 5e-3, "{hang_time_s}");
        finger.slide("arm_tuck", 0.65);
        finger.slide("leg_tuck", 0.7);
        finger.touch("question:Why");
        assert!(finger.touches <= 10);
        assert_eq!(page.state().session.shown_name(), "New jump (2A)");
        press(&mut page, "Jump");
        assert!(!targets().contains_key("set up"), "shown as any other");
    }
}

#[test]
fn a_jump_gets_a_name_and_a_note() {
    let mut page = open(TABLET, Language::English, Question::Jump);
    press_target(&mut page, "begin");
    press_target(&mut page, "jump name");
    type_and_press(&mut page, "Lena", Key::Enter);
    assert_eq!(page.state().session.scenario().name, "Lena");
    assert!(has(&page, "Jumps. Open: Lena"));
    press_target(&mut page, "set up");
    press(&mut page, "Name and jump");
    press_target(&mut page, "jump note");
    type_and_press(&mut page, "Left foot sore.", Key::Enter);
    assert!(says(&page, "Left foot sore."));
    press_target(&mut page, "jump name");
    type_and_press(&mut page, "Anna", Key::Escape);
    assert_eq!(page.state().session.scenario().name, "Lena");
}

#[test]
fn a_demos_words_are_not_said_of_a_changed_jump() {
    let mut page = open(TABLET, Language::English, Question::Jump);
    let show_note = |page: &mut Page| {
        control(page, Role::Button, "Name and jump").scroll_to_me();
        settle(page);
    };
    show_note(&mut page);
    assert!(says(&page, "An invented jumper"));
    press_target(&mut page, "value:jump_height_m");
    type_and_press(&mut page, "30", Key::Enter);
    show_note(&mut page);
    assert!(!says(&page, "An invented jumper"));
    assert!(says(&page, "Begun from “Half a turn short”."));
    assert!(says(&page, "Half a turn short (changed)"));
}

/// The sliders stand first, then what the jump is and who jumps, then the readouts.
#[test]
fn the_inputs_come_before_the_readouts() {
    for size in SIZES {
        let page = open(size, Language::English, Question::Jump);
        let top = |target: &str| targets()[target].top();
        assert!(top("slider:jump_height_m") < top("fold:Which jump"));
        assert!(top("fold:Which jump") < top("fold:The jumper"));
        if size[0] > size[1] || size[0] < 600.0 {
            assert!(
                top("fold:The jumper") < top("fold:All readouts"),
                "{size:?}"
            );
        }
        drop(page);
    }
}

#[test]
fn a_changed_jump_that_made_way_comes_back_at_a_touch() {
    for size in SIZES {
        let mut page = open(size, Language::English, Question::Jump);
        press_target(&mut page, "value:arm_tuck");
        type_and_press(&mut page, "70", Key::Enter);
        let before = page.state().session.scenario().clone();
        press_target(&mut page, "starts");
        press_target(&mut page, "start:senior-triple");
        assert_ne!(*page.state().session.scenario(), before);
        assert!(says(&page, "arm tuck 70 %"), "{size:?}: told which");
        let mut finger = Finger {
            page: &mut page,
            size,
            touches: 0,
        };
        finger.touch("bring back");
        assert_eq!(*page.state().session.scenario(), before);
        assert_eq!(page.state().session.notice(), None);
    }
}

#[test]
fn keeping_is_one_touch_under_every_question_and_told() {
    for size in SIZES {
        for question in Question::ALL {
            let mut page = open(size, Language::English, question);
            let mut finger = Finger {
                page: &mut page,
                size,
                touches: 0,
            };
            finger.touch("keep");
            let kept = page.state().session.library().collection().entries().len();
            assert_eq!(kept, 1, "{size:?} {question:?}");
            assert!(says(&page, "Kept on this device as"), "{size:?}");
        }
    }
}

#[test]
fn kept_jumps_are_opened_from_the_menu() {
    for size in SIZES {
        let mut page = open(size, Language::English, Question::Jump);
        press_target(&mut page, "value:arm_tuck");
        type_and_press(&mut page, "70", Key::Enter);
        press_target(&mut page, "keep");
        press_target(&mut page, "starts");
        press_target(&mut page, "start:senior-triple");
        press_target(&mut page, "starts");
        let [kept, first] = ["start kept:1", "start:half-a-turn-short"].map(|it| targets()[it]);
        assert!(kept.bottom() <= first.top(), "above the starting points");
        press_target(&mut page, "start kept:1");
        let scenario = page.state().session.scenario();
        assert_eq!(scenario.name, "Half a turn short, arm tuck 70 %");
    }
}

#[test]
fn the_jump_before_a_change_is_the_first_that_compare_offers() {
    for size in SIZES {
        let mut page = open(size, Language::English, Question::Why);
        let before = page.state().session.scenario().clone();
        press_target(&mut page, "try it");
        press(&mut page, "Compare");
        let offered = targets();
        let first = offered["reference:before try"];
        for (name, rect) in offered
            .iter()
            .filter(|(name, _)| name.starts_with("reference:"))
        {
            assert!(first.top() <= rect.top(), "{name}");
        }
        assert!(!offered.contains_key("figures:beside"), "{size:?}");
        let mut finger = Finger {
            page: &mut page,
            size,
            touches: 0,
        };
        finger.touch("reference:before try");
        let session = &page.state().session;
        assert_eq!(session.reference().expect("chosen").scenario, before);
        press(&mut page, "Side by side");
        assert!(page.state().session.is_side_by_side());
        press(&mut page, "Over one another");
        assert!(!page.state().session.is_side_by_side());
        // A second touch takes it away.
        press_target(&mut page, "reference:before try");
        assert!(page.state().session.reference().is_none());
    }
}

/// On a page too narrow for all buttons a file is opened from the menu.
#[test]
fn a_file_is_opened_at_every_size() {
    for size in SIZES {
        let mut page = open(size, Language::English, Question::Jump);
        if !targets().contains_key("Open") {
            press_target(&mut page, "starts");
        }
        press_target(&mut page, "Open");
        assert_eq!(
            page.state().commands,
            [turns_aloft::panel::PageCommand::Open],
            "{size:?}"
        );
    }
}
