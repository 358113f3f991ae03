//! Flights of the real mechanics, recorded by a sensor on the hips: when they were, and how far they turned.

use glam::{DQuat, DVec3};

use crate::recorder::{Recording, Sensor, record};
use crate::{read, table};
use turns_aloft::physics::plan::Turning;
use turns_aloft::scenario::{Scenario, starts};
use turns_aloft::trace::flight_window::FoundBy;
use turns_aloft::trace::trace::{MOST_ANGLES, Remark};
use turns_aloft::trace::turned::TurnedAbout;
use turns_aloft::trace::{Signals, Survey, Trace, TraceFault, Windows, find_columns};

fn signals(text: &str) -> Signals {
    let table = table(text).expect("a table");
    let columns = find_columns(&table).expect("columns");
    Signals::of(&table, &columns).expect("signals")
}

/// What a file tells where the user has set the flight.
fn read_over(text: &str, flight_s: [f64; 2]) -> Result<Trace, TraceFault> {
    let windows = Windows {
        rest_s: None,
        flight_s: Some(flight_s),
    };
    Survey::of(signals(text)).trace(&windows)
}

fn start(name: &str) -> Scenario {
    starts::named(name).expect("a start").scenario.clone()
}

fn error_deg(trace: &Trace, truth: &Recording) -> f64 {
    (trace.turned_rad() - truth.turned_rad).to_degrees()
}

/// Ends of a flight to 25 ms each, three times what is claimed, and 13 ms in the middle (best of the
/// published ones); the angle within what is claimed of it.
#[test]
fn each_flight_is_found_where_it_was() {
    let mut squares = Vec::new();
    for (seed, start) in starts::all().iter().enumerate() {
        for rate_hz in [60.0, 104.0, 240.0] {
            let sensor = Sensor {
                rate_hz,
                ..Sensor::default()
            };
            let truth = record(&start.scenario, &sensor, seed as u64);
            let trace = read(&truth.csv()).expect("a trace");
            let what = format!("{} at {rate_hz}: {:?}", start.name, trace.flight);
            assert_eq!(trace.flight.found_by, FoundBy::LeverArm, "{what}");
            assert_eq!(trace.about, TurnedAbout::Vertical, "{what}");
            let late_s = [
                trace.flight.from_s - truth.flight_s[0],
                trace.flight.to_s - truth.flight_s[1],
            ];
            assert!(
                late_s.iter().all(|late_s| late_s.abs() < 0.025),
                "{late_s:?} {what}"
            );
            let error_rad = trace.turned_rad() - truth.turned_rad;
            let sigmas = error_rad / trace.turned_sigma_rad;
            assert!(sigmas.abs() < 3.0, "{sigmas} {what}");
            squares.push(sigmas * sigmas);
            let peak = trace.peak_rate_rad_s / truth.peak_rate_rad_s;
            assert!((peak - 1.0).abs() < 0.02, "{peak} {what}");
            assert!(trace.turned.len() <= MOST_ANGLES);
            assert!(trace.turned.is_sorted_by(|one, other| one.t_s < other.t_s));
        }
    }
    // Neither claims too much nor, by more than twice, too little.
    let mean = squares.iter().sum::<f64>() / squares.len() as f64;
    assert!((0.1..1.2).contains(&mean.sqrt()), "{mean}");
}

/// Where take-off and touch-down are known, only the gyroscope counts.
#[test]
fn over_the_true_flight_the_angle_is_right_to_a_degree_a_turn() {
    for (seed, start) in starts::all().iter().enumerate() {
        let truth = record(&start.scenario, &Sensor::default(), seed as u64);
        let trace = read_over(&truth.csv(), truth.flight_s).expect("a trace");
        let turns = truth.turned_rad.abs().to_degrees() / 360.0;
        let error = error_deg(&trace, &truth).abs() / turns;
        // Leaning at rest as at take-off is no part of it: 2 degrees in the crooked one.
        assert!(error < 1.5, "{}: {error}", start.name);
        assert_eq!(trace.flight.found_by, FoundBy::User);
    }
}

#[test]
fn the_mounting_changes_nothing() {
    let truth = |mounted: DQuat| {
        let sensor = Sensor {
            mounted,
            noise_rad_s: 0.0,
            noise_m_s2: 0.0,
            ..Sensor::default()
        };
        let truth = record(&start("senior-triple"), &sensor, 1);
        read(&truth.csv()).expect("a trace").turned_rad()
    };
    let one = truth(DQuat::IDENTITY);
    let other = truth(DQuat::from_xyzw(0.5, -0.5, 0.5, 0.5));
    assert!((one - other).abs() < 0.02, "{one} {other}");
}

#[test]
fn drift_at_rest_is_taken_out_and_said() {
    let sensor = Sensor {
        drift_rad_s: DVec3::new(0.08, -0.05, 0.06),
        ..Sensor::default()
    };
    let truth = record(&start("senior-triple"), &sensor, 2);
    let trace = read_over(&truth.csv(), truth.flight_s).expect("a trace");
    let rest = trace.rest.expect("there is one");
    assert!((rest.drift_rad_s - sensor.drift_rad_s).length() < 0.003);
    assert!(
        error_deg(&trace, &truth).abs() < 3.0,
        "{}",
        error_deg(&trace, &truth)
    );
    let said = trace.remarks.iter().any(|remark| matches!(remark, Remark::Drift { size_rad_s } if (size_rad_s - 0.1118).abs() < 0.003));
    assert!(said, "{:?}", trace.remarks);
}

#[test]
fn a_rest_that_the_user_sets_counts() {
    let truth = record(&start("senior-triple"), &Sensor::default(), 3);
    let signals = signals(&truth.csv());
    let last_s = signals.t_s[signals.t_s.len() - 1];
    let windows = Windows {
        rest_s: Some([last_s - 0.6, last_s - 0.1]),
        flight_s: None,
    };
    let trace = Survey::of(signals).trace(&windows).expect("a trace");
    let rest = trace.rest.expect("it was set");
    assert!(rest.from_s >= last_s - 0.6 && rest.to_s <= last_s - 0.1);
    assert!(error_deg(&trace, &truth).to_radians().abs() < 3.0 * trace.turned_sigma_rad);
}

#[test]
fn without_a_rest_the_mean_axis_counts_and_the_side_is_still_known() {
    for turning in [Turning::Anticlockwise, Turning::Clockwise] {
        let scenario = Scenario {
            turning,
            ..start("junior-double")
        };
        let mut truth = record(&scenario, &Sensor::default(), 4);
        let last_s = truth.flight_s[1] + 0.3;
        let first = truth
            .t_s
            .partition_point(|&t_s| t_s < truth.flight_s[0] - 0.3);
        let last = truth.t_s.partition_point(|&t_s| t_s < last_s);
        truth.t_s = truth.t_s[first..last].to_vec();
        truth.rate_rad_s = truth.rate_rad_s[first..last].to_vec();
        truth.acceleration_m_s2 = truth.acceleration_m_s2[first..last].to_vec();
        let trace = read(&truth.csv()).expect("a trace");
        assert_eq!(trace.rest, None);
        assert_eq!(trace.about, TurnedAbout::MeanAxis);
        assert!(
            trace.remarks.contains(&Remark::NoRest) && trace.remarks.contains(&Remark::MeanAxis)
        );
        assert!(error_deg(&trace, &truth).to_radians().abs() < 3.0 * trace.turned_sigma_rad);
    }
}

#[test]
fn the_rate_alone_makes_a_weaker_guess() {
    for (seed, start) in starts::all().iter().enumerate() {
        let truth = record(&start.scenario, &Sensor::default(), seed as u64);
        let whole = read(&truth.csv()).expect("a trace");
        let trace = read(&truth.csv_of_rates()).expect("a trace");
        assert_eq!(trace.flight.found_by, FoundBy::RateCurve, "{}", start.name);
        assert!(trace.remarks.contains(&Remark::RateOnly));
        assert_eq!(trace.about, TurnedAbout::MeanAxisEitherWay);
        assert!(trace.turned_sigma_rad > 2.0 * whole.turned_sigma_rad);
        let error_rad = trace.turned_rad().abs() - truth.turned_rad.abs();
        assert!(
            error_rad.abs() < 3.0 * trace.turned_sigma_rad,
            "{}: {error_rad}",
            start.name
        );
    }
}

/// Five turns a second and more is beyond the usual end of 2000 degrees a second.
fn beyond_its_end() -> (Sensor, Recording) {
    let sensor = Sensor {
        mounted: DQuat::IDENTITY,
        end_rad_s: 2000.0_f64.to_radians(),
        ..Sensor::default()
    };
    let truth = record(&start("five-turn-attempt"), &sensor, 5);
    (sensor, truth)
}

#[test]
fn readings_at_the_end_are_bridged_by_the_accelerometer() {
    let (sensor, truth) = beyond_its_end();
    let trace = read_over(&truth.csv(), truth.flight_s).expect("a trace");
    let bridged = trace.remarks.iter().find_map(|remark| match remark {
        Remark::Bridged {
            end_rad_s,
            readings,
        } => Some((*end_rad_s, *readings)),
        _ => None,
    });
    let (end_rad_s, readings) = bridged.expect("it is said");
    assert!(
        (end_rad_s - sensor.end_rad_s).abs() < 0.01 && readings > 50,
        "{readings}"
    );
    let error_rad = trace.turned_rad() - truth.turned_rad;
    assert!(
        error_rad.abs() < 2.0 * trace.turned_sigma_rad,
        "{error_rad}"
    );
    let share = (error_rad / truth.turned_rad).abs();
    // Arms that come in move the centre of mass in the trunk, and so the lever arm.
    assert!(share < 0.07, "{share}");
    assert!((trace.peak_rate_rad_s / truth.peak_rate_rad_s - 1.0).abs() < 0.1);
    // As it was read it is far too little.
    let read: f64 = truth
        .rate_rad_s
        .iter()
        .zip(&truth.t_s)
        .filter(|(_, t_s)| (truth.flight_s[0]..truth.flight_s[1]).contains(*t_s))
        .map(|(rate, _)| rate.length() / sensor.rate_hz)
        .sum();
    assert!(read < 0.9 * truth.turned_rad.abs(), "{read}");
}

#[test]
fn without_an_accelerometer_they_widen_the_range() {
    let (_, truth) = beyond_its_end();
    let trace = read_over(&truth.csv_of_rates(), truth.flight_s).expect("a trace");
    assert!(
        trace
            .remarks
            .iter()
            .any(|remark| matches!(remark, Remark::Beyond { readings, .. } if *readings > 50))
    );
    let error_rad = trace.turned_rad().abs() - truth.turned_rad.abs();
    assert!(
        error_rad.abs() < 2.0 * trace.turned_sigma_rad,
        "{error_rad} {}",
        trace.turned_sigma_rad
    );
    let sure = read_over(&truth.csv(), truth.flight_s).expect("a trace");
    assert!(trace.turned_sigma_rad > 1.5 * sure.turned_sigma_rad);
}

/// The same made up for an accelerometer that ends at 16 g, which such a jump goes beyond as well.
#[test]
fn an_accelerometer_at_its_end_bridges_nothing() {
    let (sensor, _) = beyond_its_end();
    let sensor = Sensor {
        end_m_s2: 16.0 * 9.80665,
        ..sensor
    };
    let truth = record(&start("five-turn-attempt"), &sensor, 6);
    let trace = read_over(&truth.csv(), truth.flight_s).expect("a trace");
    assert!(
        trace
            .remarks
            .iter()
            .any(|remark| matches!(remark, Remark::Beyond { .. })),
        "{:?}",
        trace.remarks
    );
    let error_rad = trace.turned_rad() - truth.turned_rad;
    assert!(
        error_rad.abs() < 2.0 * trace.turned_sigma_rad,
        "{error_rad} {}",
        trace.turned_sigma_rad
    );
}

#[test]
fn a_steady_rate_below_the_end_is_no_end() {
    let truth = record(&start("senior-triple"), &Sensor::default(), 7);
    let trace = read(&truth.csv()).expect("a trace");
    assert!(
        !trace
            .remarks
            .iter()
            .any(|remark| matches!(remark, Remark::Bridged { .. } | Remark::Beyond { .. }))
    );
}

/// Turning on the ice reads gravity along the axis all the time.
#[test]
fn a_spin_on_the_ice_is_no_flight() {
    let mut csv = String::from("t,gx,gy,gz,ax,ay,az\n");
    for i in 0..600 {
        let (t_s, noise) = (
            0.01 * f64::from(i),
            0.05 * libm::sin(1.7 * f64::from(i * i)),
        );
        let rate = if (200..400).contains(&i) { 20.0 } else { 0.0 };
        let inwards = noise - 0.1 * rate * rate;
        csv += &format!(
            "{t_s},0.001,0.002,{},{inwards},0.1,9.81\n",
            rate + 0.1 * noise
        );
    }
    assert_eq!(read(&csv).expect_err("no flight"), TraceFault::NoFlight);
}

#[test]
fn of_two_flights_the_one_with_more_turning_is_taken_and_the_other_kept() {
    let [one, other] =
        ["child-single", "senior-triple"].map(|name| record(&start(name), &Sensor::default(), 8));
    let later_s = one.t_s[one.t_s.len() - 1] + 1.0 / 240.0;
    let mut both = one.clone();
    both.t_s.extend(other.t_s.iter().map(|t_s| t_s + later_s));
    both.rate_rad_s.extend(&other.rate_rad_s);
    both.acceleration_m_s2.extend(&other.acceleration_m_s2);
    let survey = Survey::of(signals(&both.csv()));
    let begins_s: Vec<f64> = survey.flights.iter().map(|flight| flight.from_s).collect();
    assert_eq!(begins_s.len(), 2);
    assert!((begins_s[0] - later_s - other.flight_s[0]).abs() < 0.025);
    assert!((begins_s[1] - one.flight_s[0]).abs() < 0.025);
    let trace = survey.trace(&Windows::default()).expect("a trace");
    assert_eq!(trace.flight, survey.flights[0]);
}

#[test]
fn a_gap_in_the_flight_is_a_fault_and_one_beside_it_is_not() {
    let mut truth = record(&start("senior-triple"), &Sensor::default(), 9);
    let without = |truth: &mut Recording, from_s: f64, to_s: f64| {
        let keep: Vec<bool> = truth
            .t_s
            .iter()
            .map(|t_s| !(from_s..to_s).contains(t_s))
            .collect();
        let mut kept = keep.iter();
        truth.t_s.retain(|_| *kept.next().expect("as many"));
        let mut kept = keep.iter();
        truth.rate_rad_s.retain(|_| *kept.next().expect("as many"));
        let mut kept = keep.iter();
        truth
            .acceleration_m_s2
            .retain(|_| *kept.next().expect("as many"));
    };
    without(&mut truth, 1.0, 1.2);
    let trace = read(&truth.csv()).expect("a trace");
    assert!(error_deg(&trace, &truth).to_radians().abs() < 3.0 * trace.turned_sigma_rad);
    let begins_s = truth.flight_s[0];
    without(&mut truth, begins_s + 0.2, begins_s + 0.3);
    let why = read_over(&truth.csv(), truth.flight_s).expect_err("a gap");
    assert!(matches!(why, TraceFault::Gap { .. }), "{why:?}");
}

/// Programs that take gravity out of an accelerometer's readings leave nothing by which a flight is told.
#[test]
fn an_accelerometer_without_gravity_is_left_out() {
    let mut truth = record(&start("senior-triple"), &Sensor::default(), 10);
    // At rest the sensor's axes have gravity where the mean of its first second is; it goes along with
    // them only so far, but nobody looks at the rest.
    let rest = truth.acceleration_m_s2[..240].iter().sum::<DVec3>() / 240.0;
    for acceleration in &mut truth.acceleration_m_s2 {
        *acceleration -= rest;
    }
    let trace = read(&truth.csv()).expect("a trace");
    assert!(trace.remarks.contains(&Remark::NoGravity));
    assert_eq!(trace.flight.found_by, FoundBy::RateCurve);
    assert_eq!(trace.flight.lever_arm, None);
}

/// The ground goes on pushing: half of gravity is left in what should be the flight.
#[test]
fn what_is_no_flight_is_a_guess_and_said() {
    let mut truth = record(&start("senior-triple"), &Sensor::default(), 11);
    let up = truth.acceleration_m_s2[..240].iter().sum::<DVec3>() / 240.0;
    let flight_s = truth.flight_s;
    for (acceleration, t_s) in truth.acceleration_m_s2.iter_mut().zip(&truth.t_s) {
        if (flight_s[0]..flight_s[1]).contains(t_s) {
            *acceleration += up;
        }
    }
    let trace = read(&truth.csv()).expect("a trace");
    assert!(
        trace.remarks.contains(&Remark::NotRigid),
        "{:?}",
        trace.remarks
    );
}

#[test]
fn an_attempt_keeps_the_flight_and_the_angles() {
    let truth = record(&start("senior-triple"), &Sensor::default(), 12);
    let trace = read(&truth.csv()).expect("a trace");
    let kept = trace.sensor("jump.csv", Turning::Anticlockwise);
    assert_eq!(
        [kept.takeoff_s, kept.landing_s],
        [trace.flight.from_s, trace.flight.to_s]
    );
    let last = kept.turned.last().expect("angles");
    assert_eq!(
        (last.t_s, last.angle_rad),
        (trace.flight.to_s, trace.turned_rad())
    );
    assert!(kept.scale_sigma >= 0.005 && kept.turned[0].sigma_rad > 0.0);
    assert!(
        kept.turned
            .is_sorted_by(|one, other| one.sigma_rad < other.sigma_rad)
    );
}

/// Which way a jumper turns the trace tells; where it doesn't, the attempt's jump does.
#[test]
fn an_attempt_turns_the_way_its_jumper_does() {
    for turning in [Turning::Anticlockwise, Turning::Clockwise] {
        let scenario = Scenario {
            turning,
            ..start("junior-double")
        };
        let truth = record(&scenario, &Sensor::default(), 13);
        let turned = |trace: &Trace, meant: Turning| {
            let kept = trace.sensor("jump.csv", meant);
            kept.turned.last().expect("angles").angle_rad
        };
        let told = read(&truth.csv()).expect("a trace");
        assert_eq!(told.turning(), Some(turning));
        let untold = read(&truth.csv_of_rates()).expect("a trace");
        assert_eq!(untold.turning(), None);
        for meant in [Turning::Anticlockwise, Turning::Clockwise] {
            assert!(turned(&told, meant) * turning.sign() > 5.0);
            assert!(turned(&untold, meant) * meant.sign() > 5.0);
        }
    }
}

/// Then it is where the turning is fastest, for the user to move.
#[test]
fn a_flight_that_is_not_found_is_looked_for_by_hand() {
    let mut csv = String::from("t,gx,gy,gz\n");
    for i in 0..600 {
        let t_s = 0.01 * f64::from(i);
        let rate = 1.2 * libm::exp(-2.0 * (t_s - 4.0) * (t_s - 4.0));
        csv += &format!(
            "{t_s:.2},0.001,{:.5},{rate:.5}\n",
            1e-4 * libm::sin(f64::from(i))
        );
    }
    let survey = Survey::of(signals(&csv));
    assert_eq!(
        survey.trace(&Windows::default()).expect_err("none"),
        TraceFault::NoFlight
    );
    let [from_s, to_s] = survey.around_peak_s();
    assert!(from_s < 4.0 && 4.0 < to_s && to_s - from_s > 0.4);
    let windows = Windows {
        rest_s: None,
        flight_s: Some([from_s, to_s]),
    };
    assert!(survey.trace(&windows).is_ok());
}
