//! A sensor's file opened on the page.

use crate::recorder::{Sensor, record};
use crate::table;
use turns_aloft::attempt::Measured;
use turns_aloft::scenario::starts;
use turns_aloft::session::Session;

fn opened(text: &str) -> Session {
    let mut session = Session::default();
    session.trace_opened(table(text).expect("a table"));
    session
}

#[test]
fn a_file_becomes_an_attempt() {
    let truth = record(&starts::all()[0].scenario, &Sensor::default(), 14);
    let session = opened(&truth.csv());
    let measuring = session.measuring().expect("an attempt");
    let Measured::Sensor(sensor) = measuring.measured() else {
        panic!("{:?}", measuring.measured());
    };
    assert!((sensor.takeoff_s - truth.flight_s[0]).abs() < 0.025);
    assert_eq!(session.notice(), None);
}

/// Said, and the file is open, so that the flight can be set.
#[test]
fn a_file_without_a_flight_is_open_all_the_same() {
    let mut csv = String::from("t,gx,gy,gz\n");
    for i in 0..600 {
        let t_s = 0.01 * f64::from(i);
        csv += &format!("{t_s:.2},0.001,0.002,{:.5}\n", 0.1 * libm::sin(t_s));
    }
    let session = opened(&csv);
    let trace = session.measuring().and_then(|measuring| measuring.trace());
    assert!(trace.is_some_and(|file| file.has_found_no_flight()));
    assert!(
        session
            .notice()
            .is_some_and(|said| said.contains("by hand"))
    );
}

#[test]
fn what_is_no_trace_is_said_and_changes_nothing() {
    let session = opened("time,height\n0,1\n1,2\n");
    assert!(session.measuring().is_none());
    assert!(
        session
            .notice()
            .is_some_and(|said| said.contains("gyroscope"))
    );
}
