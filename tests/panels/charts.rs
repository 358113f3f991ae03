//! The charts: scales with zero and round marks, text beside the curves, and curves to choose from.

use egui::accesskit::Role;
use egui::epaint::{ClippedShape, PathShape};
use egui::{Pos2, Rect, Shape};

use crate::harness::{
    Page, SIZES, TABLET, Text, control, named, open, press_target, says, settle, targets, texts,
};
use turns_aloft::appearance;
use turns_aloft::session::compare::Which;
use turns_aloft::session::{Curve, Question, Session};
use turns_aloft::words::{Language, number};

const LANGUAGES: [Language; 2] = [Language::English, Language::German];

/// Shows these curves alone, with or without the equation.
fn choose(page: &mut Page, curves: &[Curve], equation: bool) {
    let session = &mut page.state_mut().session;
    let mut shown = *session.curves();
    for &curve in curves {
        shown.set(curve, true);
    }
    for curve in Curve::ALL {
        shown.set(curve, curves.contains(&curve));
    }
    shown.equation = equation;
    session.set_curves(shown);
    settle(page);
}

/// Where the charts are, in points; touch targets are in CSS pixels.
fn charts(page: &Page) -> Rect {
    targets()["charts"] / page.ctx.zoom_factor()
}

/// The page with charts in sight: on a narrow one they are scrolled to.
fn with_charts(size: [f32; 2], language: Language) -> Page {
    let mut page = open(size, language, Question::Jump);
    let name = match language {
        Language::English => "Time, on the charts",
        Language::German => "Zeit, auf den Kurven",
    };
    if named(&page, name).is_empty() {
        return page;
    }
    control(&page, Role::Slider, name).scroll_to_me();
    settle(&mut page);
    page
}

fn collect(shape: &Shape, lines: &mut Vec<Vec<Pos2>>) {
    match shape {
        Shape::Vec(shapes) => shapes.iter().for_each(|shape| collect(shape, lines)),
        Shape::Path(PathShape { points, closed, .. }) if !closed && points.len() > 20 => {
            lines.push(points.clone());
        }
        _ => (),
    }
}

/// The curves that are drawn inside an area, from the top.
fn curves(page: &Page, area: Rect) -> Vec<Vec<Pos2>> {
    let mut lines: Vec<Vec<Pos2>> = Vec::new();
    for ClippedShape { shape, clip_rect } in &page.output().shapes {
        let mut found = Vec::new();
        collect(shape, &mut found);
        // Where the column scrolls, a part may be scrolled out of sight.
        let seen = |points: Vec<Pos2>| {
            points
                .into_iter()
                .filter(|&at| clip_rect.contains(at))
                .collect()
        };
        lines.extend(found.into_iter().map(seen));
    }
    let inside = |&point: &Pos2| area.expand(1.0).contains(point);
    lines.retain(|points| points.len() > 20 && points.iter().all(inside));
    lines
}

/// The numbers of the scales, from the top: those that end just left of the charts.
fn scale_numbers(page: &Page, area: Rect) -> Vec<(f64, Rect)> {
    let mut found: Vec<(f64, Rect)> = texts(page)
        .into_iter()
        .filter(|text| {
            let right = text.letters.right();
            (area.left() - 8.0..area.left()).contains(&right)
                && area.y_range().contains(text.letters.center().y)
        })
        .filter_map(|text| Some((number(&text.text)?, text.letters)))
        .collect();
    found.sort_by(|a, b| a.1.center().y.total_cmp(&b.1.center().y));
    found
}

/// Whether a number is 1, 2 or 5 times a power of ten, as far as those go here.
fn is_round(step: f64) -> bool {
    let powers = (-2..=4).map(|power| 10.0_f64.powi(power));
    powers
        .flat_map(|power| [1.0, 2.0, 5.0].map(|digit| digit * power))
        .any(|round| (step / round - 1.0).abs() < 1e-9)
}

/// The scale of each chart: its numbers from the top, zero last.
fn check_scales(page: &Page, state: &str) -> usize {
    let area = charts(page);
    let numbers = scale_numbers(page, area);
    let scales: Vec<_> = numbers
        .split_inclusive(|(value, _)| *value == 0.0)
        .collect();
    for marks in &scales {
        let (values, places): (Vec<f64>, Vec<f32>) = marks
            .iter()
            .map(|(value, rect)| (*value, rect.center().y))
            .unzip();
        assert_eq!(values.last(), Some(&0.0), "{state}: {values:?}");
        assert!((2..=4).contains(&values.len()), "{state}: {values:?}");
        let least = values[values.len() - 2];
        // The step, or a few of them where not all have room.
        let rounds = [1.0, 2.0, 3.0, 4.0, 5.0].map(|stride| least / stride);
        assert!(rounds.into_iter().any(is_round), "{state}: {values:?}");
        for (i, (value, y)) in values.iter().rev().zip(places.iter().rev()).enumerate() {
            let even = least * i as f64;
            assert!((value - even).abs() < 1e-9, "{state}: {values:?}");
            let height = places[places.len() - 1] - y;
            let even = (places[places.len() - 1] - places[places.len() - 2]) * i as f32;
            assert!((height - even).abs() < 1.0, "{state}: {places:?}");
        }
    }
    scales.len()
}

/// No two texts of the charts overlap, and none is on a curve. That none is cut off is checked with all
/// texts in `room.rs`.
fn check_texts(page: &Page, state: &str) {
    let area = charts(page);
    let near = Rect::from_x_y_ranges(0.0..=area.right() + 1.0, area.y_range());
    let own: Vec<Text> = texts(page)
        .into_iter()
        // Where the column scrolls, some may be scrolled out of sight.
        .filter(|text| {
            near.contains(text.letters.center()) && text.clip.contains_rect(text.letters)
        })
        .collect();
    assert!(own.len() > 4, "{state}");
    let lines = curves(page, area);
    assert!(!lines.is_empty(), "{state}");
    for (i, one) in own.iter().enumerate() {
        for other in &own[i + 1..] {
            let common = one.letters.intersect(other.letters);
            assert!(
                common.width() <= 0.5 || common.height() <= 0.5,
                "{state}: {:?} and {:?} overlap",
                one.text,
                other.text
            );
        }
        for point in lines.iter().flatten() {
            assert!(
                !one.letters.contains(*point),
                "{state}: {:?} is on a curve",
                one.text
            );
        }
    }
}

#[test]
fn every_chart_has_zero_and_round_marks() {
    for large in [false, true] {
        for language in LANGUAGES {
            for size in SIZES {
                let mut choice = appearance::chosen();
                choice.large = large;
                appearance::choose(choice);
                let mut page = with_charts(size, language);
                if !targets().contains_key("charts") {
                    // A time line is all that there is room for.
                    continue;
                }
                for shown in [
                    &[Curve::Rate, Curve::Inertia, Curve::Turns][..],
                    &[Curve::Momentum, Curve::Energy],
                    &[Curve::Height, Curve::Torque],
                ] {
                    choose(&mut page, shown, false);
                    let state = format!("{language:?} {size:?} large {large} {shown:?}");
                    assert_eq!(check_scales(&page, &state), shown.len(), "{state}");
                    check_texts(&page, &state);
                }
            }
        }
    }
}

/// With a second attempt there are two values to each curve, and a dashed curve beside each.
#[test]
fn two_attempts_have_room_in_the_charts() {
    for language in LANGUAGES {
        for size in SIZES {
            let mut page = with_charts(size, language);
            let session = &mut page.state_mut().session;
            session.set_reference(Which::Start("four-turns".to_owned()));
            settle(&mut page);
            for shown in [
                &[Curve::Rate, Curve::Inertia, Curve::Turns][..],
                &[Curve::Momentum, Curve::Height],
            ] {
                choose(&mut page, shown, false);
                let state = format!("{language:?} {size:?} {shown:?} two");
                assert_eq!(check_scales(&page, &state), shown.len(), "{state}");
                check_texts(&page, &state);
            }
        }
    }
}

/// Angular momentum is drawn as it comes out of the motion of the parts: level, and above zero.
#[test]
fn the_angular_momentum_is_drawn_level_above_zero() {
    let mut page = open(TABLET, Language::English, Question::Jump);
    choose(&mut page, &[Curve::Momentum], false);
    let area = charts(&page);
    let lines = curves(&page, area);
    let [line] = &lines[..] else {
        panic!("one curve: {}", lines.len())
    };
    assert!(line.len() > 40);
    let y = line[0].y;
    assert!(line.iter().all(|point| (point.y - y).abs() < 0.01));
    let zero = scale_numbers(&page, area).last().expect("zero").1;
    assert!(zero.center().y - y > 0.5 * area.height() - 40.0);
    // The others are not level.
    choose(&mut page, &[Curve::Inertia], false);
    let lines = curves(&page, charts(&page));
    let ys = lines[0].iter().map(|point| point.y);
    assert!(ys.clone().fold(0.0, f32::max) - ys.fold(f32::INFINITY, f32::min) > 20.0);
}

#[test]
fn curves_are_chosen_and_remembered() {
    let mut page = open(TABLET, Language::English, Question::Jump);
    let shown = |page: &Page| -> Vec<Curve> { page.state().session.curves().all().collect() };
    assert_eq!(shown(&page), [Curve::Rate, Curve::Inertia, Curve::Turns]);
    press_target(&mut page, "curves");
    // All that have room are shown: another one takes the place of the lowest.
    press_target(&mut page, "curve:momentum");
    assert_eq!(shown(&page), [Curve::Rate, Curve::Inertia, Curve::Momentum]);
    press_target(&mut page, "curve:inertia");
    press_target(&mut page, "curve:energy");
    press_target(&mut page, "curve:height");
    assert_eq!(shown(&page), [Curve::Rate, Curve::Momentum, Curve::Height]);
    assert!(says(&page, "There is room for no more curves here."));
    press_target(&mut page, "curve:equation");
    assert!(page.state().session.curves().equation);
    let kept = page.state().session.keep();
    let mut later = Session::default();
    later.restore(&kept);
    assert_eq!(later.curves(), page.state().session.curves());
    // What an earlier visit kept has no curves, and a later one may have others.
    let mut visit: serde_json::Value = serde_json::from_str(&kept).expect("JSON");
    visit["curves"]["shown"] = serde_json::json!(["wind", "energy"]);
    later.restore(&visit.to_string());
    assert_eq!(later.curves().all().collect::<Vec<_>>(), [Curve::Energy]);
    visit.as_object_mut().expect("an object").remove("curves");
    let mut later = Session::default();
    later.restore(&visit.to_string());
    assert_eq!(later.curves(), Session::default().curves());
}

/// The last curve stays.
#[test]
fn one_curve_at_least_is_shown() {
    let mut page = open(TABLET, Language::English, Question::Jump);
    press_target(&mut page, "curves");
    for name in ["curve:rate", "curve:inertia", "curve:turns"] {
        press_target(&mut page, name);
    }
    let left: Vec<Curve> = page.state().session.curves().all().collect();
    assert_eq!(left, [Curve::Turns]);
}

/// The list of curves is on the screen, below or above its button.
#[test]
fn the_list_of_curves_has_room() {
    for language in LANGUAGES {
        for size in SIZES {
            let mut page = with_charts(size, language);
            press_target(&mut page, "curves");
            let items: Vec<(String, Rect)> = targets()
                .into_iter()
                .filter(|(name, _)| name.starts_with("curve:"))
                .collect();
            assert_eq!(items.len(), Curve::ALL.len() + 1, "{size:?}");
            for (name, rect) in items {
                assert!(rect.width() >= 44.0 && rect.height() >= 43.9, "{name}");
                assert!(
                    rect.left() >= 0.0
                        && rect.top() >= 0.0
                        && rect.right() <= size[0] + 0.5
                        && rect.bottom() <= size[1] + 0.5,
                    "{language:?} {size:?} {name}: {rect:?}"
                );
            }
        }
    }
}

/// L = I · ω stands below the charts with its three numbers, which follow the playhead.
#[test]
fn the_equation_is_shown_where_it_is_chosen() {
    for size in SIZES {
        let mut page = with_charts(size, Language::English);
        assert!(!says(&page, "L\u{a0}=\u{a0}I\u{a0}·\u{a0}ω"), "{size:?}");
        choose(&mut page, &[Curve::Rate], true);
        let line = |page: &Page| {
            let all = texts(page).into_iter();
            all.map(|text| text.text.replace('\u{a0}', " "))
                .find(|text| text.starts_with("L = I · ω"))
        };
        let at_the_end = line(&page).expect("it is shown");
        page.state_mut().session.scrub(0.1);
        settle(&mut page);
        let early = line(&page).expect("it is shown");
        assert_ne!(at_the_end, early, "{size:?}");
        for unit in ["kg m²/s", "kg m²", "rad/s"] {
            assert!(early.contains(unit), "{size:?}: {early}");
        }
        check_texts(&page, &format!("{size:?} equation"));
    }
}
