//! A sensor on a real chair: recorded or from a file, laid over the run, and turned after.

use std::fmt::Write as _;

use turns_aloft::panel::PageCommand;
use turns_aloft::session::readings::readings;
use turns_aloft::session::turntable::{MeasuredRate, NoSensor};
use turns_aloft::session::{Question, Session};
use turns_aloft::trace::TableReader;
use turns_aloft::turntable::Friction;
use turns_aloft::words::Language;

use crate::harness::*;
use crate::room::check;

const GRAVITY_M_S2: f64 = 9.806_65;

/// Of the chair, rad/s and s: pushed at once, slowing down evenly.
const FIRST_RAD_S: f64 = 3.0;
const SLOWS_RAD_S2: f64 = 0.25;
const PUSHED_S: f64 = 2.0;

fn chair_rad_s(t_s: f64) -> f64 {
    if t_s < PUSHED_S {
        0.0
    } else {
        (FIRST_RAD_S - SLOWS_RAD_S2 * (t_s - PUSHED_S)).max(0.0)
    }
}

/// Readings of a phone held upright, sixty a second.
fn readings_of_chair(until_s: f64) -> impl Iterator<Item = (f64, [f64; 3], [f64; 3])> {
    (0..(60.0 * until_s) as u32).map(|i| {
        let t_s = f64::from(i) / 60.0;
        let rate = [0.0, chair_rad_s(t_s), 0.0];
        (t_s, rate, [0.0, GRAVITY_M_S2, 0.0])
    })
}

fn on_turntable(size: [f32; 2], language: Language) -> Page {
    let mut page = open(size, language, Question::Jump);
    page.state_mut().session.begin_turntable();
    settle(&mut page);
    press_target(&mut page, "fold:A sensor on a real chair");
    page
}

fn record(session: &mut Session, until_s: f64) {
    session.sensor_started();
    for (t_s, rate, acceleration) in readings_of_chair(until_s) {
        session.sensor_read(700.0 + t_s, rate, Some(acceleration));
    }
}

fn measured(session: &Session) -> Option<&MeasuredRate> {
    session.turntable().and_then(|it| it.measured())
}

/// What is said of it, to those who cannot see it as well.
fn line(session: &Session) -> String {
    let lines = readings(session);
    let line = lines
        .into_iter()
        .find(|line| line.quantity == "turntable:measured");
    line.map(|line| line.text).unwrap_or_default()
}

/// The friction that slows the model down like the chair.
fn expected(session: &Session) -> f64 {
    let inertia = session.turntable().expect("a run").shown().inertia_kg_m2;
    SLOWS_RAD_S2 * inertia
}

#[test]
fn the_devices_sensor_is_recorded_shown_and_turned_after() {
    for size in SIZES {
        let mut page = on_turntable(size, Language::English);
        press_target(&mut page, "use sensor");
        assert_eq!(page.state().commands, [PageCommand::UseSensor]);
        page.state_mut().session.sensor_started();
        settle(&mut page);
        let stop = at_target(&page, "stop sensor").expect("it can be stopped");
        stop.scroll_to_me();
        settle(&mut page);
        assert!(
            says(&page, "Nothing has come from the sensor yet"),
            "{size:?}"
        );
        assert!(
            !page.state().session.moves(),
            "nothing comes, nothing is drawn"
        );
        record(&mut page.state_mut().session, 4.0);
        settle(&mut page);
        assert!(page.state().session.moves() && page.state().session.is_recording_sensor());
        // 2.5 rad/s.
        let session = &page.state().session;
        assert!(
            line(session).contains("Measured now: 24 rpm"),
            "{}",
            line(session)
        );
        assert!(says(&page, "About the vertical"), "{size:?}");
        for (t_s, rate, acceleration) in readings_of_chair(12.0).skip(240) {
            page.state_mut()
                .session
                .sensor_read(700.0 + t_s, rate, Some(acceleration));
        }
        settle(&mut page);
        press_target(&mut page, "stop sensor");
        let session = &page.state().session;
        assert!(!session.is_recording_sensor() && !session.moves());
        let of = measured(session).expect("a recording");
        assert!((of.most_rad_s() - FIRST_RAD_S).abs() < 1e-9);
        assert!((of.span_s() - 12.0).abs() < 0.02);
        // What comes after the end is nothing to it.
        page.state_mut().session.sensor_read(900.0, [9.0; 3], None);
        assert!((measured(&page.state().session).expect("it stays").span_s() - 12.0).abs() < 0.02);

        let expected = expected(&page.state().session);
        press_target(&mut page, "turn as measured");
        let session = &page.state().session;
        let own = session.turntable().expect("a run");
        let Friction {
            torque_n_m,
            viscous_n_m_s,
        } = own.setup().friction;
        let braking = torque_n_m + 2.0 * viscous_n_m_s;
        assert!(
            (braking / expected - 1.0).abs() < 0.02,
            "{braking} {expected}"
        );
        // The run and what was measured are one over the other from where it only slows down.
        assert!(own.end_s() == 0.0 && own.moves());
        for _ in 0..300 {
            page.state_mut().session.advance_turntable(1.0 / 60.0);
        }
        let session = &page.state().session;
        let own = session.turntable().expect("a run");
        let of = own.measured().expect("it stays");
        let now = own.shown();
        let at = of.points().min_by(|one, other| {
            let apart = |it: &[f64; 2]| (it[0] - now.t_s).abs();
            apart(one).total_cmp(&apart(other))
        });
        let [_, rate] = at.expect("points");
        assert!((now.rate_rad_s / rate - 1.0).abs() < 0.02, "{now:?} {rate}");
        press_target(&mut page, "drop measured");
        assert!(measured(&page.state().session).is_none());
    }
}

/// One that turns the other way is laid over it that way round.
#[test]
fn which_way_round_is_the_figures() {
    let mut session = Session::default();
    session.begin_turntable();
    record(&mut session, 12.0);
    session.stop_sensor();
    session.push_turntable(-1.0);
    session.turn_as_measured();
    let rate = session.turntable().expect("a run").shown().rate_rad_s;
    assert!((-FIRST_RAD_S..-0.8 * FIRST_RAD_S).contains(&rate), "{rate}");
}

#[test]
fn a_file_of_a_sensor_is_laid_over_the_run() {
    let mut text = "time_s,gyro_x_rad_s,gyro_y_rad_s,gyro_z_rad_s,acc_x,acc_y,acc_z\n".to_owned();
    for (t_s, [x, y, z], [a, b, c]) in readings_of_chair(12.0) {
        writeln!(text, "{t_s},{x},{y},{z},{a},{b},{c}").expect("a text");
    }
    let table = |text: &str| {
        let mut reader = TableReader::new("chair.csv");
        reader.push(text.as_bytes()).expect("text");
        reader.finish().expect("a table")
    };
    let mut page = on_turntable(TABLET, Language::English);
    press_target(&mut page, "lay file");
    assert_eq!(page.state().commands, [PageCommand::Open]);
    let session = &mut page.state_mut().session;
    session.trace_opened(table(&text));
    assert!(session.is_on_turntable() && !session.is_measuring());
    let of = measured(session).expect("it is laid over it");
    assert!((of.most_rad_s() - FIRST_RAD_S).abs() < 1e-6);
    session.turn_as_measured();
    let friction = session.turntable().expect("a run").setup().friction;
    let braking = friction.torque_n_m + 2.0 * friction.viscous_n_m_s;
    assert!(
        (braking / expected(session) - 1.0).abs() < 0.02,
        "{friction:?}"
    );
    // One that is no trace is refused in a sentence, and what was there stays.
    session.dismiss();
    session.trace_opened(table("time_s,gyro_x,gyro_y\n0,1,2\n0.01,1,2\n"));
    assert!(session.notice().is_some() && measured(session).is_some());
    // Off the turntable it is what it was: an attempt to measure.
    session.leave_turntable();
    session.trace_opened(table(&text));
    assert!(session.is_measuring());
}

#[test]
fn what_cannot_be_is_said_in_a_sentence() {
    for language in LANGUAGES {
        let mut page = on_turntable(TABLET, language);
        let session = &mut page.state_mut().session;
        for why in [NoSensor::Missing, NoSensor::Refused, NoSensor::TouchAgain] {
            session.dismiss();
            session.sensor_not_started(why);
            assert!(session.notice().is_some_and(|it| it.ends_with('.')));
            assert!(measured(session).is_none());
        }
        // Too short to slow down in.
        session.dismiss();
        record(session, 3.0);
        session.stop_sensor();
        let friction = session.turntable().expect("a run").setup().friction;
        session.turn_as_measured();
        assert!(session.notice().is_some_and(|it| it.contains("3 s")));
        assert_eq!(
            session.turntable().expect("a run").setup().friction,
            friction
        );
        // Nothing came of it.
        session.drop_measured_rate();
        session.sensor_started();
        session.stop_sensor();
        assert!(measured(session).is_none());
        // Ten minutes are the longest.
        session.dismiss();
        session.sensor_started();
        for i in 0..700 {
            session.sensor_read(f64::from(i), [0.0, 1.0, 0.0], None);
        }
        assert!(!session.is_recording_sensor());
        assert!(session.notice().is_some_and(|it| it.contains("10")));
        assert!((measured(session).expect("it stays").span_s() - 600.0).abs() < 1e-9);
        settle(&mut page);
    }
}

/// At four sizes and in both languages: while it is recorded, and afterwards.
#[test]
fn it_has_room() {
    for language in LANGUAGES {
        for size in SIZES {
            let mut page = on_turntable(size, language);
            record(&mut page.state_mut().session, 12.0);
            settle(&mut page);
            check(
                &page,
                size,
                &format!("{language:?} {size:?} recorded"),
                None,
            );
            press_target(&mut page, "stop sensor");
            check(
                &page,
                size,
                &format!("{language:?} {size:?} measured"),
                None,
            );
        }
    }
}
