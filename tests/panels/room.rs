//! Layout: touch targets are large enough, do not overlap and are on the screen, and no text is cut
//! off.

use egui::Rect;

use crate::harness::{
    LANGUAGES, Page, SIZES, TABLET, control, controls, open, press_target, says, settle, show,
    targets,
};
use crate::letters::faults;
use crate::slow_flight;
use turns_aloft::appearance;
use turns_aloft::describe::beyond;
use turns_aloft::scenario::starts;
use turns_aloft::session::compare::Which;
use turns_aloft::session::{Question, Session};
use turns_aloft::words::{Language, set_language};

/// Least side of a touch target, CSS pixels. Source: Web Content Accessibility Guidelines 2.2, success
/// criterion 2.5.5 (level AAA), target size.
const LEAST: f32 = 44.0;

const ROUNDING: f32 = 0.01;

/// Whether two touch targets belong to one control and may overlap: the point is on the map.
fn is_one_control(a: &str, b: &str) -> bool {
    let on_map = |name: &str| name.starts_with("map");
    on_map(a) && on_map(b)
}

/// `menu`: checks only targets with that prefix, because an open menu covers the others.
pub fn check(page: &Page, size: [f32; 2], state: &str, menu: Option<&str>) {
    let all = targets();
    let own: Vec<(&String, &Rect)> = all
        .iter()
        .filter(|(name, _)| menu.is_none_or(|menu| name.starts_with(menu)))
        .collect();
    for &(name, rect) in &own {
        // A menu has to fit; only the list of starting points may scroll, on a low screen.
        assert!(
            menu.is_none() || menu == Some("start:") || rect.bottom() <= size[1] + 0.5,
            "{state}: {name} is below the screen: {rect:?}"
        );
        assert!(
            rect.width() >= LEAST - ROUNDING && rect.height() >= LEAST - ROUNDING,
            "{state}: {name} is too small: {rect:?}"
        );
        // The point may be at the border of the map.
        let has_to_fit = name != "map:point";
        assert!(
            !has_to_fit || (rect.left() >= -ROUNDING && rect.right() <= size[0] + ROUNDING),
            "{state}: {name} is not on the screen: {rect:?}"
        );
        assert!(
            rect.top() >= -ROUNDING,
            "{state}: {name} is above the screen"
        );
    }
    for (i, &(a, one)) in own.iter().enumerate() {
        for &(b, other) in &own[i + 1..] {
            let common = one.intersect(*other);
            let apart = common.width() <= ROUNDING || common.height() <= ROUNDING;
            assert!(
                apart || is_one_control(a, b),
                "{state}: {a} and {b} overlap: {common:?}"
            );
        }
    }
    check_texts(page, state);
}

fn check_texts(page: &Page, state: &str) {
    let found = faults(page, &[]);
    assert!(found.is_empty(), "{state}: {}", found.join("\n"));
}

fn everywhere(mut check: impl FnMut([f32; 2], Language)) {
    for language in LANGUAGES {
        for size in SIZES {
            set_language(language);
            check(size, language);
        }
    }
}

#[test]
fn every_question_has_room() {
    everywhere(|size, language| {
        for question in Question::ALL {
            let page = open(size, language, question);
            check(
                &page,
                size,
                &format!("{language:?} {size:?} {question:?}"),
                None,
            );
        }
    });
}

/// With all sections and explanations open, and the range shown.
#[test]
fn open_sections_have_room() {
    everywhere(|size, language| {
        for question in Question::ALL {
            let mut page = open(size, language, question);
            page.state_mut().session.show_range(true);
            settle(&mut page);
            let names: Vec<String> = targets().into_keys().collect();
            let opened = ["fold:", "limits:", "verdict:", "why:", "about:"];
            for name in names {
                let is_closed =
                    name != "fold:All readouts" && name != "fold:Charts over the flight";
                if is_closed && opened.iter().any(|kind| name.starts_with(kind)) {
                    press_target(&mut page, &name);
                }
            }
            let limits: Vec<String> = targets().into_keys().collect();
            if let Some(limit) = limits.iter().find(|name| name.starts_with("limits:")) {
                press_target(&mut page, limit);
            }
            let state = format!("{language:?} {size:?} {question:?} unfolded");
            check(&page, size, &state, None);
        }
    });
}

#[test]
fn menus_have_room() {
    everywhere(|size, language| {
        for (button, question, item, prefix) in [
            (
                "starts",
                Question::Jump,
                "start:half-a-turn-short",
                "start:",
            ),
            ("Units", Question::Jump, "language:de", "language:"),
            ("map:x", Question::Map, "map:x:arm_tuck", "map:x:"),
            ("map:y", Question::Map, "map:y:arm_tuck", "map:y:"),
        ] {
            let mut page = open(size, language, question);
            press_target(&mut page, button);
            assert!(targets().contains_key(item), "{size:?} {button} opens");
            check(
                &page,
                size,
                &format!("{language:?} {size:?} {button}"),
                Some(prefix),
            );
        }
    });
}

/// The whole map with both axis buttons is on the screen, and high enough to be read.
/// Before the take-off, in the air and after the landing; in the air the whole pad is in sight.
#[test]
fn a_flight_by_hand_has_room() {
    everywhere(|size, language| {
        let mut page = slow_flight::begin(size, language, true);
        let state = format!("{language:?} {size:?} about to be flown by hand");
        check(&page, size, &state, None);
        press_target(&mut page, "take off");
        let state = format!("{language:?} {size:?} flown by hand");
        check(&page, size, &state, None);
        let pad = targets()["pad"];
        assert!(pad.bottom() <= size[1], "{state}: {pad:?}");
        assert!(pad.width() > 250.0 && pad.height() >= 150.0, "{pad:?}");
        slow_flight::land(&mut page);
        let state = format!("{language:?} {size:?} landed by hand");
        check(&page, size, &state, None);
    });
}

#[test]
fn the_whole_map_is_on_the_screen() {
    everywhere(|size, language| {
        let page = open(size, language, Question::Map);
        for name in ["map", "map:x", "map:y"] {
            let rect = targets()[name];
            assert!(
                rect.bottom() <= size[1] + 0.5,
                "{language:?} {size:?} {name}: {rect:?}"
            );
        }
        let map = targets()["map"];
        assert!(
            (0.55..=1.0).contains(&(map.height() / map.width())),
            "{map:?}"
        );
        drop(page);
    });
}

/// After a change was tried, the buttons that undo it are shown.
#[test]
fn a_change_that_is_tried_has_room() {
    everywhere(|size, language| {
        for question in [Question::Why, Question::Goal] {
            let mut page = open(size, language, Question::Why);
            press_target(&mut page, "try it");
            page.state_mut().session.ask(question);
            settle(&mut page);
            assert!(targets().contains_key("go back"));
            check(
                &page,
                size,
                &format!("{language:?} {size:?} {question:?} tried"),
                None,
            );
        }
    });
}

/// Two jumps are kept, one of them is the reference; a third is deleted and can be restored.
#[test]
fn kept_jumps_have_room() {
    everywhere(|size, language| {
        let mut session = Session::default();
        session.reduce_motion();
        session.ask(Question::Compare);
        for _ in 0..3 {
            session.keep_jump();
        }
        let ids: Vec<_> = session
            .library()
            .collection()
            .entries()
            .iter()
            .map(|entry| entry.id)
            .collect();
        session.delete_kept(ids[2]);
        session.set_reference(Which::Kept(ids[0]));
        let mut page = show(size, session);
        for name in ["kept Open", "kept Undo", "save all"] {
            assert!(targets().contains_key(name), "{name}");
        }
        let state = format!("{language:?} {size:?} kept");
        check(&page, size, &state, None);
        press_target(&mut page, "kept Rename");
        assert!(targets().contains_key("kept name"));
        check(&page, size, &state, None);
    });
}

/// Everything that is asked of a jump that has been begun is on the screen at once.
#[test]
fn a_jump_that_is_begun_has_room() {
    everywhere(|size, language| {
        let mut page = open(size, language, Question::Jump);
        press_target(&mut page, "begin");
        let state = format!("{language:?} {size:?} begun");
        check(&page, size, &state, None);
        for name in [
            "jump:axel",
            "turns:5",
            "table:Male",
            "value:stature_m",
            "value:body_mass_kg",
            "value:jump_height_m",
            "value:hang_time_s",
            "slider:arm_tuck",
            "slider:leg_tuck",
        ] {
            let rect = targets()[name];
            assert!(rect.bottom() <= size[1] + 0.5, "{state}: {name} {rect:?}");
        }
        page.state_mut().session.finish_setting_up();
        settle(&mut page);
        press_target(&mut page, "fold:Which jump");
        check(&page, size, &state, None);
    });
}

/// Where another jump has taken the place of a changed one, and beside kept jumps in the menu.
#[test]
fn a_jump_that_made_way_and_kept_ones_have_room() {
    everywhere(|size, language| {
        let mut session = Session::default();
        session.reduce_motion();
        session.try_on(|scenario| scenario.arm_tuck = 0.7);
        session.keep_jump();
        session.try_on(|scenario| scenario.leg_tuck = 0.8);
        session.open(starts::all()[3].scenario.clone());
        let mut page = show(size, session);
        assert!(targets().contains_key("bring back"));
        let state = format!("{language:?} {size:?} made way");
        check(&page, size, &state, None);
        press_target(&mut page, "starts");
        assert!(targets().contains_key("start kept:1"));
        check(&page, size, &state, Some("start:"));
    });
}

/// The jump before a change is offered, and the second figure's place.
#[test]
fn before_and_after_have_room() {
    everywhere(|size, language| {
        let mut page = open(size, language, Question::Compare);
        page.state_mut().session.try_on(|scenario| {
            scenario.jump_height_m += 0.02;
            scenario.arm_tuck = 0.75;
        });
        settle(&mut page);
        press_target(&mut page, "reference:before try");
        assert!(targets().contains_key("figures:beside"));
        let state = format!("{language:?} {size:?} before and after");
        check(&page, size, &state, None);
    });
}

/// A jump beyond what has been seen in people has a warning with its turns, under every question; a
/// click on it says what has been seen.
#[test]
fn a_jump_beyond_what_has_been_seen_says_so_under_every_question() {
    let five = starts::named("five-turn-attempt").expect("a starting point");
    everywhere(|size, language| {
        for question in Question::ALL {
            let mut page = open(size, language, question);
            let state = format!("{language:?} {size:?} {question:?} beyond seen");
            assert!(!targets().contains_key("beyond seen"), "{state}");
            page.state_mut().session.open(five.scenario.clone());
            settle(&mut page);
            assert!(targets().contains_key("beyond seen"), "{state}");
            check(&page, size, &state, None);
            let session = &page.state().session;
            let meaning = beyond::meaning(session.beyond_seen(), session.units());
            assert!(!says(&page, &meaning), "{state}");
            press_target(&mut page, "beyond seen");
            assert!(says(&page, &meaning), "{state}: what it means");
            check(&page, size, &state, None);
        }
    });
}

/// With large type everything is still on the screen.
#[test]
fn large_type_has_room() {
    for size in SIZES {
        set_language(Language::English);
        let mut choice = appearance::chosen();
        choice.large = true;
        appearance::choose(choice);
        let page = open(size, Language::English, Question::Jump);
        let all = targets();
        for name in [
            "Units",
            "Share",
            "keep",
            "play",
            "on",
            "back",
            "view Front",
            "view Side",
        ] {
            let rect = all[name];
            assert!(rect.min.x >= 0.0 && rect.min.y >= 0.0, "{size:?} {name}");
            assert!(
                rect.max.x <= size[0] + 1.0 && rect.max.y <= size[1] + 1.0,
                "{size:?} {name}: {rect:?}"
            );
            assert!(
                rect.width() >= LEAST && rect.height() >= LEAST,
                "{size:?} {name}"
            );
        }
        assert!(all["play"].height() >= 1.35 * LEAST, "{size:?}: larger");
        drop(page);
    }
}

/// Controls below the screen's edge are scrolled into view when AccessKit requests it.
#[test]
fn every_control_can_be_scrolled_into_view() {
    let mut page = open(TABLET, Language::English, Question::Jump);
    let names: Vec<String> = controls(&page)
        .into_iter()
        .filter(|control| control.rect.bottom() > TABLET[1])
        .map(|control| control.name)
        .collect();
    assert!(names.len() > 10, "some are out of sight");
    for name in names {
        let all = controls(&page);
        let role = all
            .iter()
            .find(|control| control.name == name)
            .expect("stays")
            .role;
        control(&page, role, &name).scroll_to_me();
        settle(&mut page);
        let rect = control(&page, role, &name).rect();
        assert!(
            rect.top() >= 0.0 && rect.bottom() <= TABLET[1] + 1.0,
            "{name}: {rect:?}"
        );
    }
}
