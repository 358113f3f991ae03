//! Nothing shifts under a finger: whatever a touch opens, changes or takes away, what was touched stays
//! where it is, and an explanation opens in sight.

use egui::{Rect, TouchPhase, pos2, vec2};
use egui_kittest::kittest::NodeT;

use crate::finger::{finger, tap};
use crate::harness::{Page, SIZES, at_target, open, press_target, settle, targets, texts};
use turns_aloft::session::Question;
use turns_aloft::words::Language;

/// Controls whose purpose is to show other ones, and those that go away when they have done their work.
fn changes_the_screen(target: &str) -> bool {
    let kinds = ["question:", "fold:", "limits:", "kept", "map:"];
    let names = [
        "starts", "begin", "Units", "Share", "greeting", "notice", "keep", "undo", "redo",
    ];
    kinds.iter().any(|kind| target.starts_with(kind)) || names.contains(&target)
}

fn same(one: Rect, other: Rect) -> bool {
    one.min.distance(other.min) < 1.0
}

/// Scrolls a control into view.
fn bring(page: &mut Page, target: &str) {
    if let Some(node) = at_target(page, target) {
        node.scroll_to_me();
    }
    page.run_steps(30);
}

/// The description of a control, if it explains something.
fn about(page: &Page, target: &str) -> Option<String> {
    at_target(page, target)?.accesskit_node().description()
}

/// Whether a part of `about` is written, all of it on the screen.
fn is_in_sight(page: &Page, size: [f32; 2], about: &str) -> bool {
    let screen = Rect::from_min_size(pos2(0.0, 0.0), vec2(size[0], size[1]));
    texts(page).iter().any(|text| {
        let is_part = text.text.len() > 15 && about.contains(text.text.as_str());
        is_part
            && text
                .clip
                .intersect(screen)
                .expand(1.0)
                .contains_rect(text.letters)
    })
}

/// Whether it is right below the buttons of the questions: where the warning has come above them, it
/// may have covered a little.
fn is_covered(place: Rect) -> bool {
    place.top() - targets()["question:Jump"].bottom() < 7.0
}

fn touch_everything(size: [f32; 2], question: Question) {
    let mut page = open(size, Language::English, question);
    let names: Vec<String> = targets().into_keys().collect();
    let mut touched = 0;
    for name in names.iter().filter(|name| !changes_the_screen(name)) {
        if !targets().contains_key(name) {
            continue;
        }
        bring(&mut page, name);
        let Some(&place) = targets().get(name) else {
            continue;
        };
        let state = format!("{size:?} {question:?} {name}");
        // Off its middle, so that sliders are moved.
        let at = place.center() + vec2(0.2 * place.width(), 0.0);
        finger(&mut page, TouchPhase::Start, at);
        assert!(same(targets()[name], place), "{state}: pressed");
        finger(&mut page, TouchPhase::End, at);
        for frame in 0..6 {
            page.step();
            let now = targets().get(name).copied();
            assert!(
                now.is_none_or(|now| same(now, place) || is_covered(now)),
                "{state}: from {place:?} to {now:?} in frame {frame}"
            );
        }
        let explains = ["about:", "reading:", "why:", "verdict:", "beyond seen"];
        if explains.iter().any(|kind| name.starts_with(kind)) {
            if let Some(about) = about(&page, name) {
                assert!(is_in_sight(&page, size, &about), "{state}: {about}");
            }
            tap(&mut page, at);
            assert!(same(targets()[name], place), "{state}: closed");
        }
        touched += 1;
    }
    assert!(touched > 8, "{size:?} {question:?}: {touched} controls");
}

#[test]
fn nothing_shifts_under_a_finger_on_a_tablet() {
    for question in Question::ALL {
        touch_everything(SIZES[1], question);
    }
}

#[test]
fn nothing_shifts_under_a_finger_on_a_phone() {
    for question in Question::ALL {
        touch_everything(SIZES[3], question);
    }
}

/// An explanation covers neither what it explains nor its slider, wherever on the screen that is.
#[test]
fn an_explanation_is_beside_what_it_explains() {
    for size in SIZES {
        let mut page = open(size, Language::English, Question::Jump);
        for key in ["takeoff_rate_rad_s", "hand_mass_kg", "jump_height_m"] {
            let name = format!("about:{key}");
            bring(&mut page, &name);
            press_target(&mut page, &name);
            let [label, slider] = [&name, &format!("slider:{key}")].map(|name| targets()[name]);
            let about = about(&page, &name).expect("explained");
            let said = texts(&page);
            let own = said
                .iter()
                .find(|text| text.text.len() > 15 && about.starts_with(text.text.as_str()))
                .unwrap_or_else(|| panic!("{size:?} {name}: no explanation"));
            for area in [label, slider] {
                assert!(
                    !own.letters.intersects(area),
                    "{size:?} {name}: {own:?} {area:?}"
                );
            }
            press_target(&mut page, &name);
            settle(&mut page);
        }
    }
}
