//! A real attempt is measured: by a stop-watch, or by marks in a film.

use turns_aloft::scenario::starts;
use turns_aloft::session::measuring::{Mark, OpenFilm};
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
fn film() -> OpenFilm {
    OpenFilm {
        file_name: "jump.mp4".to_owned(),
        times_s: (0..300).map(|frame| f64::from(frame) / 30.0).collect(),
        size_px: [1280.0, 720.0],
        filmed_hz: Some(240.0),
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
    // The file says how many frames a second were filmed.
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
    let turns = fit.range(turns_aloft::fit::quantity::Quantity::AirTurns);
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
