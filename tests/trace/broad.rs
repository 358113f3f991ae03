//! A real inertial sensor against optical tracking: an excerpt of BROAD (`tests/data/README.md`).
//!
//! Both clocks of the file are not quite the same, and nor is the gyroscope's scale: a time offset and a
//! factor are found on every other window, and the rest of the windows are held to them.

use std::f64::consts::TAU;
use std::io::Read as _;

use flate2::read::GzDecoder;
use glam::{DQuat, DVec3};

use turns_aloft::physics::angles::wrapped_rad;
use turns_aloft::physics::rotation::{exp, log};
use turns_aloft::trace::rest::Rest;
use turns_aloft::trace::{Signals, Survey, Table, Windows, find_columns, read_table};

const FILE: &[u8] = include_bytes!("../data/broad_07_excerpt.csv.gz");

/// Length of a window, s: that of a flight.
const WINDOW_S: f64 = 0.6;

fn table() -> Table {
    let mut bytes = Vec::new();
    GzDecoder::new(FILE)
        .read_to_end(&mut bytes)
        .expect("a good archive");
    read_table("broad.csv", &bytes[..]).expect("a table")
}

/// What the optical system saw: attitudes, sensor to world, at its times.
struct Optics {
    t_s: Vec<f64>,
    attitude: Vec<DQuat>,
}

impl Optics {
    fn of(table: &Table) -> Self {
        let column = |name: &str| {
            let mut columns = table.columns.iter();
            &columns
                .find(|column| column.name == name)
                .expect("the column")
                .values
        };
        let [w, x, y, z] = ["opt_qw", "opt_qx", "opt_qy", "opt_qz"].map(column);
        let t_s = column("time_s");
        let quaternion = |i: usize| DQuat::from_xyzw(x[i], y[i], z[i], w[i]).normalize();
        Self {
            t_s: t_s.iter().map(|at_s| at_s - t_s[0]).collect(),
            attitude: (0..t_s.len()).map(quaternion).collect(),
        }
    }

    fn at(&self, t_s: f64) -> DQuat {
        let after = self
            .t_s
            .partition_point(|&at| at <= t_s)
            .clamp(1, self.t_s.len() - 1);
        let part = (t_s - self.t_s[after - 1]) / (self.t_s[after] - self.t_s[after - 1]);
        let (before, after) = (self.attitude[after - 1], self.attitude[after]);
        before * exp(log(before.conjugate() * after) * part)
    }

    /// Turned about the mean axis of the turning, rad: by small turns between many attitudes.
    fn turned_rad(&self, [from_s, to_s]: [f64; 2]) -> f64 {
        let steps = 150;
        let at = |i: usize| self.at(from_s + (to_s - from_s) * i as f64 / steps as f64);
        let first = at(0);
        let attitudes: Vec<DQuat> = (0..=steps).map(|i| first.conjugate() * at(i)).collect();
        let turns = attitudes
            .windows(2)
            .map(|pair| pair[0] * log(pair[0].conjugate() * pair[1]));
        let axis = turns.sum::<DVec3>().normalize();
        let twist = |q: &DQuat| 2.0 * libm::atan2(DVec3::new(q.x, q.y, q.z).dot(axis), q.w);
        let twists: Vec<f64> = attitudes.iter().map(twist).collect();
        twists
            .windows(2)
            .map(|pair| wrapped_rad(pair[1] - pair[0]))
            .sum()
    }
}

/// Every so many tenths of a second of the fast stretch a window begins.
fn windows(first: usize, stride: usize) -> Vec<[f64; 2]> {
    let begins = (first..240).step_by(stride).map(|i| 6.5 + 0.1 * i as f64);
    begins.map(|from_s| [from_s, from_s + WINDOW_S]).collect()
}

/// Turned by the trace in a window, rad.
fn traced_rad(survey: &Survey, flight_s: [f64; 2]) -> f64 {
    let windows = Windows {
        rest_s: None,
        flight_s: Some(flight_s),
    };
    let trace = survey.trace(&windows).expect("a window of a trace");
    trace.turned_rad().abs()
}

/// Turned back and forth, in turns: the sensor is swung, not spun, and its error grows with all turning.
fn turns_gone_through(signals: &Signals, window_s: [f64; 2]) -> f64 {
    let rates = &signals.rate_rad_s[signals.range(window_s)];
    rates
        .iter()
        .map(|rate| rate.length() * signals.step_s)
        .sum::<f64>()
        / TAU
}

/// The middle one of some sizes.
fn median(mut values: Vec<f64>) -> f64 {
    values.sort_by(f64::total_cmp);
    values[values.len() / 2]
}

/// What a scale and an offset leave over, in degrees for each window.
fn errors_deg(
    signals: &Signals,
    optics: &Optics,
    scale: f64,
    offset_s: f64,
    windows: &[[f64; 2]],
) -> Vec<f64> {
    let mut scaled = signals.clone();
    for rate in &mut scaled.rate_rad_s {
        *rate *= scale;
    }
    let survey = Survey::of(scaled);
    let error = |window: &[f64; 2]| {
        let seen = optics.turned_rad(window.map(|t_s| t_s + offset_s)).abs();
        (traced_rad(&survey, *window) - seen).to_degrees().abs()
    };
    windows.iter().map(error).collect()
}

#[test]
fn the_turned_angle_is_that_of_optical_tracking() {
    let table = table();
    let columns = find_columns(&table).expect("columns that are found by their names");
    let signals = Signals::of(&table, &columns).expect("signals");
    let optics = Optics::of(&table);

    // What the file itself allows, found on windows of their own.
    let some = windows(0, 4);
    let candidates = [0.996, 0.998, 1.0, 1.002]
        .into_iter()
        .flat_map(|scale| (0..6).map(move |i| (scale, -0.0055 + 0.0005 * f64::from(i))));
    let left = |&(scale, offset_s): &(f64, f64)| {
        median(errors_deg(&signals, &optics, scale, offset_s, &some))
    };
    let (scale, offset_s) = candidates
        .min_by(|one, other| left(one).total_cmp(&left(other)))
        .expect("there are candidates");

    let others = windows(2, 4);
    let errors = errors_deg(&signals, &optics, scale, offset_s, &others);
    let a_turn = errors
        .iter()
        .zip(&others)
        .map(|(error, window)| error / turns_gone_through(&signals, *window));
    let a_turn: Vec<f64> = a_turn.collect();
    let large = a_turn.iter().filter(|error| **error > 2.0).count();
    println!(
        "BROAD: scale {scale}, offset {:.1} ms; {:.2} degrees a turn in the middle, {large} of {} above 2",
        1e3 * offset_s,
        median(a_turn.clone()),
        a_turn.len()
    );
    assert!(median(a_turn.clone()) < 1.0, "{a_turn:?}");
    assert!(10 * large <= a_turn.len(), "{a_turn:?}");

    // Without these corrections it is seen that the clocks differ.
    let raw = median(errors_deg(&signals, &optics, 1.0, 0.0, &others));
    assert!(raw > 1.5, "{raw}");
}

#[test]
fn its_rest_is_found() {
    let table = table();
    let columns = find_columns(&table).expect("columns");
    let signals = Signals::of(&table, &columns).expect("signals");
    let rests = Rest::find_all(&signals);
    // The excerpt's first 4 s are its rest: a column of the file says so.
    assert_eq!(rests.len(), 1);
    assert!(rests[0].from_s < 0.1 && (rests[0].to_s - 4.0).abs() < 0.1);
    assert!((rests[0].acceleration_m_s2.length() - 9.81).abs() < 0.1);
}
