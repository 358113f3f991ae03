//! The ring that the page draws round the element that has the keyboard's focus covers no text.

use std::collections::BTreeSet;

use egui::{Rect, pos2, vec2};

use crate::finger::swipe;
use crate::harness::{LANGUAGES, Page, SIZES, open, panel, targets, texts};
use turns_aloft::session::Question;

/// The distance of the ring from the control, and its width, CSS pixels.
fn ring() -> [f32; 2] {
    let style = include_str!("../../web/style.css");
    let (_, rule) = style
        .split_once("#controls > :focus-visible {")
        .expect("the ring's rule");
    let number = |property: &str| {
        let (_, rest) = rule.split_once(property).expect("the property");
        let (number, _) = rest.trim().split_once("px").expect("in pixels");
        number.trim().parse::<f32>().expect("a number")
    };
    [number("outline-offset:"), number("outline:")]
}

/// `scrolled`: the controls of the column that scrolls, which the page brings into view before the ring
/// is seen.
fn check(page: &Page, size: [f32; 2], scrolled: &BTreeSet<String>, state: &str) {
    let [distance, width] = ring();
    let column = panel(size);
    let screen = Rect::from_min_size(pos2(0.0, 0.0), vec2(size[0], size[1]));
    let texts = texts(page);
    for (name, place) in targets() {
        let is_seen = !scrolled.contains(&name) || column.contains_rect(place);
        if !is_seen || !screen.contains_rect(place) {
            continue;
        }
        let (inner, outer) = (place.expand(distance), place.expand(distance + width));
        for text in &texts {
            let letters = text.letters.intersect(text.clip);
            let is_drawn = letters.width() > 0.0 && letters.height() > 0.0;
            let is_covered = letters.shrink(0.5).intersects(outer) && !inner.contains_rect(letters);
            assert!(
                !(is_drawn && is_covered),
                "{state} {name} {place:?}: {text:?}"
            );
        }
    }
}

#[test]
fn the_ring_of_the_focus_covers_no_text() {
    for language in LANGUAGES {
        for size in SIZES {
            for question in Question::ALL {
                let mut page = open(size, language, question);
                let column = panel(size);
                let mut before = targets();
                let in_column = |place: &Rect| {
                    place.top() >= column.top() - 3.0 && column.x_range().contains(place.center().x)
                };
                let scrolled = before.iter().filter(|(_, place)| in_column(place));
                let scrolled = scrolled.map(|(name, _)| name.clone()).collect();
                for part in 0..40 {
                    let state = format!("{language:?} {size:?} {question:?} part {part}");
                    check(&page, size, &scrolled, &state);
                    let from = pos2(column.left() + 1.0, column.bottom() - 2.0);
                    swipe(&mut page, from, vec2(0.0, -0.5 * column.height()));
                    page.run_steps(90);
                    if targets() == before {
                        break;
                    }
                    before = targets();
                }
            }
        }
    }
}
