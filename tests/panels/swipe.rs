//! Swipes: a finger that moves more upright than level scrolls and changes nothing; one that moves more
//! level on a slider sets it.

use std::f32::consts::{FRAC_PI_2, FRAC_PI_4, PI};

use egui::{Pos2, Rect, TouchPhase, Vec2, lerp, pos2, vec2};
use rand::rngs::StdRng;
use rand::{RngExt, SeedableRng};

use crate::finger::{finger, swipe, swipe_in_a_frame, tap};
use crate::harness::{Page, SIZES, centre, drag, open, panel, settle, targets};
use turns_aloft::scenario::Scenario;
use turns_aloft::scenario::parameter::{Parameter, Section, SliderScale};
use turns_aloft::scenario::units::Units;
use turns_aloft::session::Question;
use turns_aloft::words::Language;

const PHONE: [f32; 2] = SIZES[3];
const SWIPES: usize = 200;

/// A swipe from a place in `panel` that is more upright than level, or else more level than upright.
fn random_way(random: &mut StdRng, upright: bool) -> Vec2 {
    let slant: f32 = random.random_range(-0.97..0.97);
    let middle = if upright { FRAC_PI_2 } else { 0.0 };
    let half_turn = if random.random_bool(0.5) { PI } else { 0.0 };
    let way = Vec2::angled(middle + half_turn + slant * FRAC_PI_4);
    way * random.random_range(40.0..160.0)
}

fn random_place(random: &mut StdRng, area: Rect) -> Pos2 {
    pos2(
        lerp(area.x_range(), random.random_range(0.01..0.99)),
        lerp(area.y_range(), random.random_range(0.01..0.99)),
    )
}

/// How far a column is scrolled is seen by the place of something in it.
fn height_of(target: &str) -> f32 {
    targets()[target].top()
}

/// Waits until the column no longer moves of itself.
fn come_to_rest(page: &mut Page, target: &str) {
    let mut before = f32::NAN;
    while before != height_of(target) {
        before = height_of(target);
        page.run_steps(2);
    }
}

/// The top and the end of what scrolls, as places of `target`.
fn ends(page: &mut Page, area: Rect, target: &str) -> [f32; 2] {
    let top = height_of(target);
    let mut end = f32::NAN;
    while end != height_of(target) {
        end = height_of(target);
        swipe(
            page,
            pos2(area.left() + 1.0, area.bottom() - 1.0),
            vec2(0.0, -3000.0),
        );
        come_to_rest(page, target);
    }
    [top, end]
}

/// In all, and for each question.
#[test]
fn an_upright_swipe_scrolls_and_changes_nothing() {
    let asked = [
        (SIZES[1], Question::Jump, "slider:arm_tuck"),
        (PHONE, Question::Jump, "slider:arm_tuck"),
        (PHONE, Question::Why, "why:ideal"),
        (PHONE, Question::Goal, "+:target"),
        (PHONE, Question::Map, "map"),
        (PHONE, Question::Compare, "reference:none"),
    ];
    let mut random = StdRng::seed_from_u64(44);
    for (i, (size, question, reference)) in asked.into_iter().enumerate() {
        let mut page = open(size, Language::English, question);
        let area = panel(size);
        let [top, end] = ends(&mut page, area, reference);
        assert!(top - end > 100.0, "{question:?}: there is much to scroll");
        let before = done(&page);
        let share = SWIPES / asked.len() + usize::from(i < SWIPES % asked.len());
        for _ in 0..share {
            let way = random_way(&mut random, true);
            let mut from = random_place(&mut random, area);
            // The point on the map is moved upwards and downwards too.
            while question == Question::Map && from.distance(centre("map:point")) < 32.0 {
                from = random_place(&mut random, area);
            }
            let was = height_of(reference);
            swipe(&mut page, from, way);
            come_to_rest(&mut page, reference);
            let state = format!("{size:?} {question:?} from {from:?} by {way:?}");
            assert!(done(&page) == before, "{state} changes something");
            // On as far as the finger has moved, and further by its impetus.
            let now = height_of(reference);
            let expected = (was + way.y).clamp(end, top);
            let as_far = if way.y < 0.0 {
                now <= expected + 1.0
            } else {
                now >= expected - 1.0
            };
            assert!(as_far, "{state}: from {was} to {now} of {top} to {end}");
        }
    }
}

/// What must stay as it is.
fn done(page: &Page) -> (Scenario, Question, u64, [bool; 2]) {
    let session = &page.state().session;
    let open = ["fold:The jumper", "fold:Which jump"].map(|it| targets().contains_key(it));
    let playhead = session.playhead_s().to_bits();
    (
        session.scenario().clone(),
        session.question(),
        playhead,
        open,
    )
}

/// The value at a place on a slider.
fn value_at(parameter: Parameter, area: Rect, x: f32) -> f64 {
    const KNOB: f32 = 13.0;
    let part = f64::from((x - area.left() - KNOB) / (area.width() - 2.0 * KNOB)).clamp(0.0, 1.0);
    let part = match parameter.row().scale {
        SliderScale::Even => part,
        SliderScale::FinerBelow => part * part,
    };
    parameter.least() + (parameter.most() - parameter.least()) * part
}

/// How near a slider comes to where it is put: to half a step of what is shown, and a little for the
/// place of a finger.
fn near(parameter: Parameter) -> f64 {
    let unit = Units::default().of(parameter.kind());
    let half_step = unit.to_si(0.5 * 10.0_f64.powi(-(unit.decimals as i32)));
    half_step + 1e-3 * (parameter.most() - parameter.least())
}

#[test]
fn a_level_swipe_on_a_slider_sets_it_and_scrolls_nothing() {
    let mut random = StdRng::seed_from_u64(45);
    for size in [SIZES[1], PHONE] {
        let mut page = open(size, Language::English, Question::Jump);
        let mut swipes = 0;
        while swipes < SWIPES / 2 {
            let sliders: Vec<Parameter> = Parameter::of_section(Section::Main).collect();
            let parameter = sliders[random.random_range(0..sliders.len())];
            let name = format!("slider:{}", parameter.key());
            let area = targets()[&name];
            let seen = area.intersect(panel(size));
            if seen.height() < 2.0 {
                // Further down: scrolls to it.
                let way = (panel(size).center().y - area.center().y).clamp(-150.0, 150.0);
                swipe(&mut page, panel(size).center(), vec2(0.0, way));
                come_to_rest(&mut page, &name);
                continue;
            }
            let from = random_place(&mut random, seen);
            let way = random_way(&mut random, false);
            finger(&mut page, TouchPhase::Start, from);
            finger(&mut page, TouchPhase::Move, from + 0.5 * way);
            finger(&mut page, TouchPhase::Move, from + way);
            assert_eq!(targets()[&name], area, "stays under the finger: {name}");
            finger(&mut page, TouchPhase::End, from + way);
            settle(&mut page);
            let expected = value_at(parameter, area, (from + way).x);
            let value = parameter.get(page.state().session.scenario());
            let tolerance = near(parameter);
            assert!(
                (value - expected).abs() <= tolerance,
                "{size:?} {name} from {from:?} by {way:?}: {value}, not {expected}"
            );
            swipes += 1;
        }
    }
}

/// A busy device shows no frame between the events of a swipe.
#[test]
fn a_swipe_faster_than_the_frames_counts_as_any_other() {
    let mut page = open(PHONE, Language::English, Question::Jump);
    let before = done(&page);
    let area = targets()["slider:takeoff_rate_rad_s"];
    let above = targets()["about:takeoff_rate_rad_s"].left_center() + vec2(60.0, 0.0);
    let was = area.top();
    swipe_in_a_frame(&mut page, area.center(), vec2(10.0, -60.0));
    come_to_rest(&mut page, "slider:takeoff_rate_rad_s");
    assert!(done(&page) == before);
    assert!(height_of("slider:takeoff_rate_rad_s") < was - 50.0);
    // It began above the slider and ended on it.
    page.run_steps(60);
    let above = above + vec2(0.0, height_of("slider:takeoff_rate_rad_s") - was);
    swipe_in_a_frame(&mut page, above, vec2(0.0, 44.0));
    come_to_rest(&mut page, "slider:takeoff_rate_rad_s");
    assert!(done(&page) == before);
    let area = targets()["slider:takeoff_rate_rad_s"];
    swipe_in_a_frame(&mut page, area.center(), vec2(60.0, 10.0));
    let rate = page.state().session.scenario().takeoff_rate_rad_s;
    let expected = value_at(Parameter::TakeoffRate, area, area.center().x + 60.0);
    assert!(
        (rate - expected).abs() <= near(Parameter::TakeoffRate),
        "{rate}, not {expected}"
    );
}

#[test]
fn a_tap_sets_a_slider_where_it_is() {
    let mut page = open(PHONE, Language::English, Question::Jump);
    let area = targets()["slider:takeoff_rate_rad_s"];
    for (part, down) in [(0.2, 1.0), (0.9, 43.0)] {
        let at = pos2(lerp(area.x_range(), part), area.top() + down);
        tap(&mut page, at);
        let rate = page.state().session.scenario().takeoff_rate_rad_s;
        let expected = value_at(Parameter::TakeoffRate, area, at.x);
        assert!(
            (rate - expected).abs() <= near(Parameter::TakeoffRate),
            "{rate}, not {expected}"
        );
        assert_eq!(targets()["slider:takeoff_rate_rad_s"], area);
    }
}

/// A finger that the device takes away (for a gesture of its own) has let go.
#[test]
fn a_touch_taken_away_lets_go() {
    let mut page = open(PHONE, Language::English, Question::Jump);
    let at = centre("slider:takeoff_rate_rad_s");
    finger(&mut page, TouchPhase::Start, at);
    finger(&mut page, TouchPhase::Move, at + vec2(30.0, 0.0));
    assert!(page.state().session.is_dragging());
    finger(&mut page, TouchPhase::Cancel, at);
    settle(&mut page);
    assert!(!page.state().session.is_dragging());
}

#[test]
fn the_mouse_drags_a_slider_in_every_direction() {
    let mut page = open(PHONE, Language::English, Question::Jump);
    let area = targets()["slider:takeoff_rate_rad_s"];
    let to = area.center() + vec2(30.0, -60.0);
    drag(&mut page, area.center(), to);
    let rate = page.state().session.scenario().takeoff_rate_rad_s;
    let expected = value_at(Parameter::TakeoffRate, area, to.x);
    assert!(
        (rate - expected).abs() <= near(Parameter::TakeoffRate),
        "{rate}, not {expected}"
    );
    assert_eq!(targets()["slider:takeoff_rate_rad_s"], area);
}

/// On the map a finger scrolls upwards, puts the point where it taps or moves sideways, and drags the
/// point itself everywhere.
#[test]
fn the_map_scrolls_but_for_its_point() {
    let mut page = open(PHONE, Language::English, Question::Map);
    let place = |page: &Page| page.state().session.map_point();
    let before = place(&page);
    let map = targets()["map"];
    let away = map.left_top() + vec2(20.0, 20.0);
    swipe(&mut page, away + vec2(0.0, 60.0), vec2(5.0, -60.0));
    come_to_rest(&mut page, "map");
    assert_eq!(place(&page), before);
    assert!(targets()["map"].top() < map.top() - 50.0);

    let mut page = open(PHONE, Language::English, Question::Map);
    for way in [Vec2::ZERO, vec2(40.0, 10.0)] {
        let map = targets()["map"];
        let from = map.left_top() + vec2(30.0, 30.0);
        swipe(&mut page, from, way);
        let [u, v] = place(&page);
        let to = from + way;
        let expected = [
            (to.x - map.left()) / map.width(),
            (map.bottom() - to.y) / map.height(),
        ];
        assert!(
            (u - f64::from(expected[0])).abs() < 0.01,
            "{u} {expected:?}"
        );
        assert!(
            (v - f64::from(expected[1])).abs() < 0.01,
            "{v} {expected:?}"
        );
        // The warning that comes above may cover a little.
        assert!((targets()["map"].top() - map.top()).abs() < 4.0);
    }
    let (map, at) = (targets()["map"], centre("map:point"));
    let before = place(&page);
    swipe(&mut page, at, vec2(0.0, 50.0));
    let moved = place(&page)[1] - before[1];
    assert!(
        (moved + f64::from(50.0 / map.height())).abs() < 0.01,
        "{moved}"
    );
    assert_eq!(targets()["map"], map);
}
