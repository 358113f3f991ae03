//! Texts of what is done in one's own hands: the turntable, the slow flight, the five-turn try.

use turns_aloft::analysis::turn_try::CAUTIONS;
use turns_aloft::describe::turn_try::KNOWN;
use turns_aloft::describe::turntable_caution::TurntableCaution;
use turns_aloft::describe::{Sentence, Text};
use turns_aloft::scenario::starts;
use turns_aloft::session::readings::{phase, picture, summary};
use turns_aloft::session::slow_flight::how;
use turns_aloft::session::turntable::{
    NoSensor, SlowedBy, Tendency, TypedNumber, measured_about, prediction,
};
use turns_aloft::session::{Question, Session};
use turns_aloft::turntable::planned::Planned;
use turns_aloft::turntable::programme::Programme;
use turns_aloft::turntable::setup::Number;
use turns_aloft::turntable::{Person, Setup, Stand};

use super::Collector;

const FRAME_S: f64 = 1.0 / 60.0;

fn pass(session: &mut Session, time_s: f64) {
    for _ in 0..(time_s / FRAME_S) as u32 {
        session.advance_turntable(FRAME_S);
    }
}

fn at(collected: &mut Collector, place: &str, session: &Session) {
    collected.readings(place, session);
    collected.add(format!("{place}, summary"), summary(session));
    collected.add(format!("{place}, picture"), picture(session));
    if let Some(on_turntable) = session.turntable() {
        if let Some(predicted) = on_turntable.prediction() {
            collected.add(place, prediction(on_turntable, predicted));
        }
        if let Some(measured) = on_turntable.measured() {
            collected.add(place, measured_about(measured));
        }
    }
}

/// On every stand: at rest, turning either way, predicted, measured, calibrated.
pub fn turntable(collected: &mut Collector) {
    for caution in TurntableCaution::ALL {
        collected.add("turntable", caution.text());
    }
    let of = Number::ALL.map(TypedNumber::Of).into_iter();
    let read = (0..3).map(TypedNumber::ReadRate);
    let times = (0..2).map(TypedNumber::TimeBetween);
    for number in of.chain(read).chain(times).chain([TypedNumber::RateToSet]) {
        collected.add("turntable", number.label());
    }
    let mut session = Session::default();
    session.begin_turntable();
    for stand in Stand::ALL {
        session.set_stand(stand);
        at(collected, stand.key(), &session);
    }
    for (without, push, expected) in [
        (false, 1.0, Tendency::Stays),
        (true, -1.0, Tendency::Rises),
        (true, 1.0, Tendency::Stays),
        (false, -1.0, Tendency::Falls),
    ] {
        session.set_without_friction(without);
        session.predict_momentum(Some(expected));
        session.push_turntable(push);
        pass(&mut session, 0.5);
        at(collected, "turning", &session);
        pass(&mut session, 5.5);
        at(collected, "predicted", &session);
    }
    readings_of_a_chair(collected, &mut session);
    sensor(collected, &mut session);
    session.set_typed_turntable(TypedNumber::Of(Number::HandMass), "90 kg");
    collected.notice("too heavy", &mut session);
    session.set_typed_turntable(TypedNumber::RateToSet, "fast");
    collected.notice("no rate", &mut session);
    session.set_without_friction(true);
    session.push_turntable(3.0);
    for _ in 0..=4 * 3600 {
        session.advance_turntable(0.25);
    }
    collected.notice("an hour", &mut session);
}

/// What two or three rates of somebody's own chair give, and what they cannot be.
fn readings_of_a_chair(collected: &mut Collector, session: &mut Session) {
    for (by, rates_rad_s) in [
        (SlowedBy::Torque, [3.0, 2.0, 1.0]),
        (SlowedBy::Viscous, [3.0, 2.0, 1.0]),
        (SlowedBy::Torque, [2.0, 3.0, 1.0]),
        (SlowedBy::Torque, [2.0, 0.0, 0.0]),
        (SlowedBy::Torque, [40.0, -40.0, 0.0]),
        (SlowedBy::Both, [3.0, 2.9, 1.0]),
        (SlowedBy::Both, [3.0, 1.0, 0.9]),
    ] {
        session.change_slowing(|slowing| (slowing.by, slowing.rates_rad_s) = (by, rates_rad_s));
        session.calibrate_turntable();
        collected.notice("a chair", session);
    }
    session.change_slowing(|slowing| {
        (slowing.by, slowing.rates_rad_s, slowing.times_s) =
            (SlowedBy::Torque, [40.0, 1.0, 0.5], [0.1, 0.1]);
    });
    session.calibrate_turntable();
    collected.notice("a rough chair", session);
}

fn sensor(collected: &mut Collector, session: &mut Session) {
    for why in [NoSensor::Missing, NoSensor::Refused, NoSensor::TouchAgain] {
        session.sensor_not_started(why);
        collected.notice("no sensor", session);
    }
    for acceleration in [None, Some([0.0, 0.0, 9.81])] {
        session.sensor_started();
        at(collected, "a sensor that is silent", session);
        for i in 0..120 {
            session.sensor_read(f64::from(i) * FRAME_S, [0.0, 0.0, 2.0], acceleration);
        }
        at(collected, "a sensor", session);
        session.stop_sensor();
        at(collected, "measured", session);
    }
    session.turn_as_measured();
    collected.notice("nothing slows down", session);
    session.sensor_started();
    for i in 0..=600 {
        session.sensor_read(f64::from(i), [0.0, 0.0, 2.0], None);
    }
    collected.notice("ten minutes", session);
}

/// Programmes and settings that cannot be.
pub fn refused(collected: &mut Collector) {
    let person = Person::new(&Setup::on(Stand::Platform)).expect("usual numbers");
    for text in [
        "",
        "\u{0}",
        "time_s\n0\n",
        "time_s,hand_distance_m,time_s\n0,0.5,0\n",
        "time_s,hand_distance_m\n0,far\n1,0.5\n",
        "time_s,hand_distance_m\n0,0.5\n",
        "time_s,hand_distance_m\n1,0.5\n0,0.5\n",
        "time_s,hand_distance_m\n0,0.5\n9999,0.5\n",
    ] {
        let why = Programme::of_file(text.as_bytes()).expect_err("it cannot be");
        collected.add("a programme", why.sentence());
    }
    let why = Programme::of_file(b"\xff\xfe").expect_err("it cannot be");
    collected.add("a programme", why.sentence());
    for text in [
        "time_s,hand_distance_m\n0,0.5\n1,3\n",
        "time_s,hand_distance_m,legs\n0,0.5,0\n1,0.5,3\n",
        "time_s,hand_distance_m,legs\n0,0.5,0\n1,0.5,1\n",
        "time_s,hand_distance_m,twist_rad\n0,0.5,0\n1,0.5,3\n",
        "time_s,hand_distance_m,twist_rad\n0,0.5,0\n0.01,0.5,0.5\n",
        "time_s,hand_distance_m\n0,0.7\n0.1,0.3\n",
    ] {
        let programme = Programme::of_file(text.as_bytes()).expect("rows");
        let why = Planned::new(&person, &programme).expect_err("it cannot be");
        collected.add("a programme", why.sentence());
    }
    let mut setup = Setup::on(Stand::Platform);
    for (key, value) in [
        ("wind", "1"),
        ("stand", "sofa"),
        ("table", "child"),
        ("stature_m", "tall"),
        ("stature_m", "9"),
    ] {
        let why = setup.set(key, value).expect_err("it cannot be");
        collected.add(key, why.sentence().replace(value, ""));
    }
}

/// Ready, in the air, landed and taken, led in and not at all.
pub fn slow_flight(collected: &mut Collector) {
    collected.add("slow flight", how());
    for wanted in [0.0, 1.0] {
        let mut session = Session::default();
        session.fly_by_hand();
        at(collected, "ready", &session);
        session.take_off();
        let mut frames = 0;
        while session
            .slow_flight()
            .is_some_and(|it| it.landed().is_none())
        {
            session.lead(if frames < 250 { wanted } else { 0.0 });
            session.advance(FRAME_S);
            frames += 1;
            if frames == 100 {
                at(collected, "in the air", &session);
                collected.add("in the air, phase", phase(&session));
            }
        }
        at(collected, "landed", &session);
        if wanted == 0.0 {
            continue;
        }
        session.take_flown();
        for question in [
            Question::Why,
            Question::Goal,
            Question::Map,
            Question::Compare,
        ] {
            session.ask(question);
            session.poll(|| true);
            at(collected, "led", &session);
        }
    }
}

/// Every step, with few limits passed and with many.
pub fn turn_try(collected: &mut Collector) {
    for message in KNOWN {
        collected.add("try", message.text());
    }
    for caution in CAUTIONS {
        collected.add("try", caution.text());
    }
    for start in starts::all() {
        for step in [2, 5] {
            for faster in [1.0, 2.0] {
                let mut session = Session::default();
                session.open(start.scenario.clone());
                session.change(|scenario| scenario.takeoff_rate_rad_s *= faster);
                session.begin_try();
                session.set_try_step(step);
                at(collected, start.name, &session);
            }
        }
    }
    for wanted in [0.0, 1.0] {
        let mut session = Session::default();
        session.begin_try();
        session.fly_by_hand();
        session.take_off();
        while session
            .slow_flight()
            .is_some_and(|it| it.landed().is_none())
        {
            session.lead(wanted);
            session.advance(FRAME_S);
        }
        at(collected, "a try by hand", &session);
    }
}
