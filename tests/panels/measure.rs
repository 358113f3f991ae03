//! A real attempt is measured: by a stop-watch, or by marks in a film.

use egui::accesskit::{ActionData, Role};
use serde_json::Value;
use turns_aloft::attempt::film::PointOf;
use turns_aloft::fit::quantity::Quantity;
use turns_aloft::physics::plan::Turning;
use turns_aloft::scenario::starts;
use turns_aloft::session::measuring::{LineOf, Mark, OpenFilm};
use turns_aloft::session::{Question, Session};
use turns_aloft::words::Language;

use crate::harness::*;

/// Works out everything that is asked for.
fn work_out(page: &mut Page) {
    page.state_mut().session.poll(|| true);
    settle(page);
}

/// The hang time and a look at the landing give an answer in five touches, with the range that they allow.
#[test]
fn a_stop_watch_gives_a_range() {
    for size in SIZES {
        let mut page = open(size, Language::English, Question::Jump);
        press_target(&mut page, "starts");
        press_target(&mut page, "measure watch");
        // What the jump was meant to be can be changed; its own turns are not those that are measured.
        let folds = ["fold:Which jump", "fold:The jumper"];
        assert!(folds.iter().all(|fold| targets().contains_key(*fold)));
        assert!(!has(&page, "Why") && !has(&page, "Uncertainty"), "{size:?}");
        press_target(&mut page, "landed:half short");
        work_out(&mut page);
        assert!(has(&page, "Ask why"), "{size:?}");
        press_target(&mut page, "ask why");
        work_out(&mut page);
        let session = &page.state().session;
        assert_eq!(session.question(), Question::Why);
        let range = session.range().expect("it is shown");
        // What the eyes saw: half a turn of two is missing, to a quarter turn.
        assert!((range.low..=range.high).contains(&1.5), "{range:?}");
        assert!(range.high - range.low < 1.0, "{range:?}");
    }
}

/// A film of 240 frames a second, shown eight times slower than life.
pub fn film() -> OpenFilm {
    OpenFilm {
        file_name: "jump.mp4".to_owned(),
        times_s: (0..300).map(|frame| f64::from(frame) / 30.0).collect(),
        size_px: [1280.0, 720.0],
        slow_motion: 8.0,
    }
}

/// Marks a flown jump as somebody would who sees it exactly.
fn mark_all(session: &mut Session, frames: [usize; 2]) -> usize {
    let jump = starts::named("half-a-turn-short")
        .expect("a starting point")
        .scenario
        .fly();
    let takeoff_s = (frames[0] as f64 + 0.5) / 240.0;
    let mut touches = 0;
    while let Some(mark) = session.asked_mark() {
        let t_s = session.measuring().and_then(|it| it.frame_s());
        let since_s = t_s.expect("a film is open") - takeoff_s;
        match mark {
            Mark::TakeOff => session.show_frame(frames[0]),
            Mark::Landing => session.show_frame(frames[1]),
            Mark::Facing(_) => {
                let facing_rad = jump.flight.at(since_s).turned_rad;
                let now_rad = session.measuring().map_or(0.0, |it| it.facing_rad());
                session.turn_figure(facing_rad - now_rad);
            }
            Mark::Point(..) | Mark::Posture(_) => session.skip_mark(),
        }
        if !matches!(mark, Mark::Point(..) | Mark::Posture(_)) {
            session.mark_frame();
            touches += 2;
        }
    }
    touches
}

#[test]
fn marks_in_a_film_give_the_turns() {
    let mut session = Session::default();
    let jump = session.jump().clone();
    session.film_opened(film());
    assert_eq!(
        session
            .measuring()
            .and_then(|it| it.marks())
            .map(|it| it.slow_motion),
        Some(8.0)
    );
    let takeoff = 60;
    let landing = takeoff + (jump.readout.hang_time_s * 240.0).floor() as usize;
    mark_all(&mut session, [takeoff, landing]);
    session.poll(|| true);
    let fit = session.fit().expect("it has been worked out").clone();
    let turns = fit.range(Quantity::AirTurns);
    let air = jump.readout.air_turns;
    assert!(turns.low < air && air < turns.high, "{air} in {turns:?}");
    assert!(turns.high - turns.low < 0.35, "{turns:?}");
    session.open_fitted();
    assert!(!session.is_measuring());
    session.poll(|| true);
    assert!(session.present_fit().is_some());
    let shown = session.range().expect("a range");
    assert!((shown.high - shown.low) < 0.6, "{shown:?}");
}

#[test]
fn marks_are_taken_back_and_made_anew() {
    let mut session = Session::default();
    session.film_opened(film());
    assert_eq!(session.asked_mark(), Some(Mark::TakeOff));
    session.show_frame(60);
    session.mark_frame();
    assert_eq!(session.asked_mark(), Some(Mark::Landing));
    session.take_mark_back();
    assert_eq!(session.asked_mark(), Some(Mark::TakeOff));
    session.mark_frame();
    session.show_frame(180);
    session.mark_frame();
    session.choose_mark(Mark::TakeOff);
    assert_eq!(session.measuring().map(|it| it.frame()), Some(60));
    session.step_frames(2);
    session.mark_frame();
    let contacts = session
        .measuring()
        .and_then(|it| it.marks())
        .map(|it| it.contacts);
    let contacts = contacts.expect("marks");
    let off_s = |found: Option<f64>, frame: f64| (found.expect("marked") - frame / 240.0).abs();
    assert!(off_s(contacts.last_on_ice_s, 62.0) < 1e-9);
    assert!(off_s(contacts.first_in_air_s, 63.0) < 1e-9);
}

/// The keyboard marks points, too: the sliders move a cross over the film, which a button marks.
#[test]
fn a_point_is_marked_without_a_finger_on_the_film() {
    let mut page = open(SIZES[0], Language::English, Question::Jump);
    let session = &mut page.state_mut().session;
    session.film_opened(film());
    for frame in [60, 170] {
        session.show_frame(frame);
        session.mark_frame();
    }
    let asked = session.asked_mark();
    assert!(
        matches!(asked, Some(Mark::Point(PointOf::Head, _))),
        "{asked:?}"
    );
    settle(&mut page);
    let cross_px = |page: &Page| page.state().session.measuring().map(|it| it.cross_px());
    assert_eq!(cross_px(&page), Some([640.0, 360.0]), "the film's middle");
    let lines = page.state().session.overlays();
    assert!(lines.iter().any(|(_, lines)| lines.len() == 8), "a cross");
    // What the page's own slider does with a key.
    for (name, to_px) in [
        ("Cross, from the left", 650.0),
        ("Cross, from the top", 210.0),
    ] {
        set(
            &mut page,
            Role::Slider,
            name,
            ActionData::NumericValue(to_px),
        );
    }
    let at_px = cross_px(&page).expect("a cross");
    assert_eq!(at_px, [650.0, 210.0]);
    press_target(&mut page, "mark");
    let marks = page.state().session.measuring().and_then(|it| it.marks());
    let points = marks.map(|film| film.points.clone()).expect("marks");
    assert_eq!(
        points.iter().map(|it| it.at_px).collect::<Vec<_>>(),
        [at_px]
    );
}

/// Who has no fingers on the film looks closer by a button: at the cross, else where the jumper was marked last.
#[test]
fn the_film_is_looked_at_closer() {
    for size in SIZES {
        let mut page = open(size, Language::English, Question::Jump);
        let session = &mut page.state_mut().session;
        session.film_opened(film());
        for frame in [60, 170] {
            session.show_frame(frame);
            session.mark_frame();
        }
        session.mark_point([600.0, 200.0]);
        session.move_cross([500.0, 700.0]);
        settle(&mut page);
        for times in [2.0, 4.0, 1.0] {
            press_target(&mut page, "look closer");
            let session = &page.state().session;
            assert_eq!(session.measuring().map(|it| it.closer()), Some(times));
            assert_eq!(session.looked_at_px(), Some([500.0, 700.0]));
        }
        while let Some(Mark::Point(..)) = page.state().session.asked_mark() {
            page.state_mut().session.skip_mark();
        }
        assert_eq!(page.state().session.looked_at_px(), Some([600.0, 200.0]));
    }
}

/// A jumper who turns the other way than the jump at hand is told of, and one touch turns the jump round.
#[test]
fn a_jump_is_turned_round() {
    let mut page = open(SIZES[0], Language::English, Question::Jump);
    let session = &mut page.state_mut().session;
    session.change(|scenario| scenario.turning = Turning::Clockwise);
    let landing = 60 + (session.jump().readout.hang_time_s * 240.0).floor() as usize;
    session.film_opened(film());
    // As somebody does who turns anticlockwise.
    mark_all(session, [60, landing]);
    work_out(&mut page);
    press_target(&mut page, "turn round");
    work_out(&mut page);
    let session = &page.state().session;
    assert_eq!(session.scenario().turning, Turning::Anticlockwise);
    let attempt = session.attempt().expect("it is still measured");
    assert_eq!(attempt.scenario.turning, Turning::Anticlockwise);
    let fit = session.fit().expect("it has been worked out");
    assert_eq!(fit.likelier_turning, None);
    assert!(!has(&page, "Turn the jump round"));
}

/// Before a film is open there is no attempt to save; a jump that was found keeps its attempt when it is kept
/// under another name.
#[test]
fn an_attempt_stays_with_its_jump() {
    let mut session = Session::default();
    session.measure_in_film();
    assert_eq!(session.attempt_file(), None);
    session.stop_measuring();
    session.measure_by_stop_watch();
    session.poll(|| true);
    session.open_fitted();
    let attempt = session.attempt_at_hand().cloned().expect("an attempt");
    session.keep_jump();
    let kept = session.library().collection().entries()[0].id;
    session.rename_kept(kept, "Monday, third try");
    session.open(
        starts::named("senior-triple")
            .expect("a start")
            .scenario
            .clone(),
    );
    assert_eq!(session.attempt_at_hand(), None);
    session.open_kept(kept);
    assert_eq!(session.attempt_at_hand(), Some(&attempt));
    session.poll(|| true);
    assert!(session.present_fit().is_some(), "its range");
}

/// What is true of the invented film that comes with the page (`tests/films/attempt.rs` made both).
fn truth() -> Value {
    serde_json::from_str(include_str!("../films/attempt.json")).expect("JSON")
}

fn number(value: &Value) -> f64 {
    value.as_f64().expect("a number")
}

fn place(value: &Value) -> [f64; 2] {
    [number(&value[0]), number(&value[1])]
}

fn apart(one: [f64; 2], other: [f64; 2]) -> f64 {
    (one[0] - other[0]).hypot(one[1] - other[1])
}

/// Reading errors of somebody's eyes and fingers, in turn: facings by up to 20 degrees, points by 3 px.
const OFF: [f64; 5] = [0.4, -0.9, 0.1, 1.0, -0.6];

/// Marks the invented film by what is true of it, with errors, and everything that is asked for.
fn mark_invented_film(session: &mut Session) -> usize {
    let truth = truth();
    let frames = truth["frames"].as_array().expect("frames");
    let rate = number(&truth["rate"]);
    session.film_opened(OpenFilm {
        file_name: "invented.mp4".to_owned(),
        times_s: (0..frames.len()).map(|frame| frame as f64 / rate).collect(),
        size_px: [640.0, 360.0],
        slow_motion: 1.0,
    });
    let in_air = |frame: &Value| frame["in_air"].as_bool() == Some(true);
    let first = frames.iter().position(in_air).expect("a flight");
    let last = frames.iter().rposition(in_air).expect("a flight");
    let mut marks = 0;
    while let Some(mark) = session.asked_mark() {
        let off = OFF[marks % OFF.len()];
        let frame = &frames[session.measuring().map_or(0, |it| it.frame())];
        match mark {
            Mark::TakeOff => {
                session.show_frame(first - 1);
                session.mark_frame();
            }
            Mark::Landing => {
                session.show_frame(last);
                session.mark_frame();
            }
            Mark::Point(of, _) => {
                let key = format!("{}_px", of.key());
                let [x_px, y_px] = place(&frame[key.as_str()]);
                session.mark_point([x_px + 3.0 * off, y_px - 3.0 * off]);
            }
            Mark::Facing(_) => {
                let facing_rad = number(&frame["facing_rad"]) + off * 20_f64.to_radians();
                let now_rad = session.measuring().map_or(0.0, |it| it.facing_rad());
                session.turn_figure(facing_rad - now_rad);
                session.mark_frame();
            }
            Mark::Posture(_) => session.skip_mark(),
        }
        marks += 1;
    }
    session.poll(|| true);
    marks
}

/// Turns, peak rate and hang time of the invented film lie in the ranges that its marks give.
#[test]
fn the_invented_film_is_measured() {
    let mut session = Session::default();
    mark_invented_film(&mut session);
    let truth = truth();
    let fit = session.fit().expect("it has been worked out").clone();
    for (quantity, true_value) in [
        (Quantity::AirTurns, number(&truth["air_turns"])),
        (Quantity::PeakRate, number(&truth["peak_rate_rad_s"])),
        (
            Quantity::HangTime,
            number(&truth["landing_s"]) - number(&truth["takeoff_s"]),
        ),
    ] {
        let range = fit.range(quantity);
        assert!(
            range.low < true_value && true_value < range.high,
            "{quantity:?}: {true_value} in {range:?}"
        );
    }
    let turns = fit.range(Quantity::AirTurns);
    assert!(turns.high - turns.low < 0.4, "{turns:?}");
}

/// The fitted figure lies over the jumper of the invented film at head, hips and feet, to 3 % of stature, in
/// every frame of the flight; the camera moves, and five points were marked.
#[test]
fn the_figure_lies_over_the_jumper() {
    let mut session = Session::default();
    mark_invented_film(&mut session);
    let truth = truth();
    let most_px = 0.03 * number(&truth["stature_px"]);
    let mut seen = 0;
    for (frame, lines) in session.overlays() {
        let true_frame = &truth["frames"][frame];
        if true_frame["in_air"].as_bool() != Some(true) {
            continue;
        }
        let fitted: Vec<_> = (lines.iter())
            .filter(|line| line.of == LineOf::Fitted)
            .collect();
        let [left, right, _, _, _, head, arrow] = fitted[..] else {
            panic!("the figure has seven lines: {}", fitted.len());
        };
        // Of two feet that are as low, either may be the lower one.
        let true_feet = place(&true_frame["feet_px"]);
        let ends = [left, right].map(|leg| leg.through_px.as_slice()).concat();
        let nearest = |one: &[f64; 2], other: &[f64; 2]| {
            apart(*one, true_feet).total_cmp(&apart(*other, true_feet))
        };
        let feet = ends.into_iter().min_by(nearest).expect("two legs");
        for (what, at_px) in [
            ("head_px", head.through_px[1]),
            ("hips_px", arrow.through_px[0]),
            ("feet_px", feet),
        ] {
            let off_px = apart(at_px, place(&true_frame[what]));
            assert!(
                off_px < most_px,
                "{what} of frame {frame}: {off_px} px, at most {most_px}"
            );
        }
        seen += 1;
    }
    assert!(seen > 20, "{seen} frames");
}
