//! Files of any layout: the columns are found by name and size, whatever their order, units and signs.

use std::fmt::Write as _;

use glam::DVec3;
use proptest::prelude::*;
use proptest::sample::{Index, select};
use proptest::test_runner::RngSeed;

use crate::recorder::{Recording, Sensor, record};
use crate::table;
use turns_aloft::scenario::starts;
use turns_aloft::trace::units::{AccelerationUnit, RateUnit, TimeUnit};
use turns_aloft::trace::{
    Columns, Signals, Survey, Table, TableReader, Windows, find_columns, read_table,
};

fn recording() -> Recording {
    let sensor = Sensor {
        rate_hz: 100.0,
        ..Sensor::default()
    };
    record(&starts::all()[0].scenario, &sensor, 11)
}

/// How columns are called: time, and the beginnings and ends of an axis of either sensor. The units that
/// some have in their names are not said here: numbers are written in any, and size decides.
const NAMES: [(&str, [&str; 2], [&str; 2]); 7] = [
    ("Time", ["Gyroscope ", ""], ["Acceleration ", ""]),
    ("time", ["gyro_", ""], ["acc_", ""]),
    ("timestamp", ["g", ""], ["a", ""]),
    (
        "t",
        ["rotationRate.", ""],
        ["accelerationIncludingGravity.", ""],
    ),
    ("Zeit", ["Drehrate ", ""], ["Beschleunigung ", ""]),
    ("seconds_elapsed", ["GYR", "_raw"], ["ACC", "_raw"]),
    (
        "Time stamp",
        ["Angular velocity (", ") [body]"],
        ["Specific force ", ""],
    ),
];

#[derive(Debug, Clone)]
struct Layout {
    delimiter: char,
    decimal_comma: bool,
    names: usize,
    time: (TimeUnit, f64),
    rate: RateUnit,
    acceleration: AccelerationUnit,
    /// Where the columns stand.
    order: [Index; 9],
    line_end: &'static str,
    before: &'static str,
    bom: bool,
    quoted: bool,
}

fn layout() -> impl Strategy<Value = Layout> {
    let written = (
        select(vec![',', ';', '\t']),
        any::<bool>(),
        select(vec!["\n", "\r\n"]),
        select(vec![
            "",
            "# made by a sensor\n",
            "Sensor,Trunk\nRate,100\n\n",
            "% a\n% b\n",
        ]),
        any::<bool>(),
        any::<bool>(),
    );
    let meant = (
        // A name with brackets has its axis in them.
        select(vec![0_usize, 1, 2, 3, 4, 5]),
        select(vec![
            (TimeUnit::Seconds, 0.0),
            (TimeUnit::Seconds, 1234.5),
            (TimeUnit::Milliseconds, 0.0),
            (TimeUnit::Milliseconds, 1.7e12),
            (TimeUnit::Microseconds, 5e9),
            (TimeUnit::Nanoseconds, 1.7e18),
        ]),
        select(RateUnit::ALL.to_vec()),
        select(AccelerationUnit::ALL.to_vec()),
        any::<[Index; 9]>(),
    );
    (written, meant).prop_map(
        |(
            (delimiter, comma, line_end, before, bom, quoted),
            (names, time, rate, acceleration, order),
        )| Layout {
            delimiter,
            decimal_comma: comma && delimiter != ',',
            names,
            time,
            // These names mean degrees.
            rate: if names == 3 { RateUnit::DegPerS } else { rate },
            acceleration,
            order,
            line_end,
            before,
            bom,
            quoted,
        },
    )
}

impl Layout {
    fn write(&self, recording: &Recording) -> String {
        let (time, rate, acceleration) = NAMES[self.names];
        let mut names = vec!["note".to_owned(), "battery".to_owned(), time.to_owned()];
        for [begin, end] in [rate, acceleration] {
            names.extend(["x", "y", "z"].map(|axis| format!("{begin}{axis}{end}")));
        }
        // Any order: the columns are drawn one after the other.
        let mut left: Vec<usize> = (0..names.len()).collect();
        let order: Vec<usize> = self
            .order
            .iter()
            .map(|index| left.remove(index.index(left.len())))
            .collect();
        let mut text = String::from(if self.bom { "\u{feff}" } else { "" });
        text += self.before;
        let mut line = |fields: Vec<String>| {
            let fields: Vec<String> = order.iter().map(|&i| fields[i].clone()).collect();
            write!(
                text,
                "{}{}",
                fields.join(&self.delimiter.to_string()),
                self.line_end
            )
            .expect("a text takes all");
        };
        line(
            names
                .into_iter()
                .map(|name| {
                    if self.quoted {
                        format!("\"{name}\"")
                    } else {
                        name
                    }
                })
                .collect(),
        );
        for (i, &t_s) in recording.t_s.iter().enumerate() {
            let rate = recording.rate_rad_s[i] / self.rate.rad_s();
            let acceleration = recording.acceleration_m_s2[i] / self.acceleration.m_s2();
            let number = |value: f64, digits: usize| {
                let number = format!("{value:.digits$}");
                if self.decimal_comma {
                    number.replace('.', ",")
                } else {
                    number
                }
            };
            // Whole numbers where the unit is small.
            let digits = if self.time.0 == TimeUnit::Seconds {
                4
            } else {
                0
            };
            let mut fields = vec![
                "still".to_owned(),
                number(97.0, 1),
                number(self.time.1 + t_s / self.time.0.s(), digits),
            ];
            fields.extend(rate.to_array().map(|value| number(value, 6)));
            fields.extend(acceleration.to_array().map(|value| number(value, 6)));
            line(fields);
        }
        text
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, rng_seed: RngSeed::Fixed(2026), ..ProptestConfig::with_cases(96) })]

    #[test]
    fn any_layout_is_read(layout in layout(), cut in any::<Index>()) {
        let recording = recording();
        let text = layout.write(&recording);
        // In two pieces, cut anywhere.
        let at = cut.index(text.len());
        let mut reader = TableReader::new("data.csv");
        reader.push(&text.as_bytes()[..at]).expect("good");
        reader.push(&text.as_bytes()[at..]).expect("good");
        let table = reader.finish().expect("a table");
        prop_assert_eq!(table.rows(), recording.t_s.len());
        let columns = find_columns(&table).expect("columns");
        prop_assert_eq!(columns.time.unit, layout.time.0);
        let signals = Signals::of(&table, &columns).expect("signals");
        prop_assert_eq!(signals.t_s.len(), recording.t_s.len());
        for (i, &t_s) in recording.t_s.iter().enumerate() {
            // Milliseconds are written whole.
            prop_assert!((signals.t_s[i] - t_s).abs() < 1e-3, "{} {}", signals.t_s[i], t_s);
            let apart = signals.rate_rad_s[i] - recording.rate_rad_s[i];
            prop_assert!(apart.length() < 1e-5, "{apart}");
            let apart = signals.acceleration_m_s2[i] - recording.acceleration_m_s2[i];
            prop_assert!(apart.length() < 3e-5, "{apart}");
        }
    }
}

/// Two files, axes in another order, the time of day in nanoseconds.
fn file_of(recording: &Recording, values: &[DVec3], every: usize) -> String {
    let mut csv = String::from("time,seconds_elapsed,z,y,x\n");
    for (i, &t_s) in recording.t_s.iter().enumerate().step_by(every) {
        let [x, y, z] = values[i].to_array();
        let nanoseconds = 1_700_000_000_000_000_000_i64 + (t_s * 1e9) as i64;
        writeln!(csv, "{nanoseconds},{t_s:.6},{z:.6},{y:.6},{x:.6}").expect("a text takes all");
    }
    csv
}

fn read_as(file_name: &str, text: &str) -> (Table, Columns) {
    let table = read_table(file_name, text.as_bytes()).expect("a table");
    let columns = find_columns(&table).expect("columns");
    (table, columns)
}

#[test]
fn two_files_make_one_trace() {
    let recording = recording();
    let rates = file_of(&recording, &recording.rate_rad_s, 1);
    let accelerations = file_of(&recording, &recording.acceleration_m_s2, 1);
    // The files' names tell which is which, and where they don't, the sizes do.
    for names in [["Gyroscope.csv", "Accelerometer.csv"], ["1.csv", "2.csv"]] {
        let gyroscope = read_as(names[0], &rates);
        let accelerometer = read_as(names[1], &accelerations);
        assert!(gyroscope.1.gyroscope.is_some() && accelerometer.1.accelerometer.is_some());
        let signals = Signals::of_two(
            (&gyroscope.0, &gyroscope.1),
            (&accelerometer.0, &accelerometer.1),
        );
        let signals = signals.expect("signals");
        for i in 0..recording.t_s.len() {
            assert!((signals.rate_rad_s[i] - recording.rate_rad_s[i]).length() < 1e-5);
            assert!(
                (signals.acceleration_m_s2[i] - recording.acceleration_m_s2[i]).length() < 1e-4
            );
        }
        let trace = Survey::of(signals)
            .trace(&Windows::default())
            .expect("a trace");
        assert!((trace.turned_rad() - recording.turned_rad).abs() < 3.0 * trace.turned_sigma_rad);
    }
}

/// Gravity tells whether alpha is about x or about z: descriptions of the W3C's `rotationRate` disagree.
#[test]
fn alpha_is_about_whichever_axis_carries_gravity() {
    let recording = recording();
    let files = ["beta,gamma,alpha", "alpha,beta,gamma"].map(|order| {
        let names: Vec<String> = order.split(',').map(|axis| format!("rotationRate.{axis}")).collect();
        let mut csv = format!(
            "interval,{},accelerationIncludingGravity.x,accelerationIncludingGravity.y,accelerationIncludingGravity.z,acceleration.x,acceleration.y,acceleration.z\n",
            names.join(",")
        );
        for i in 0..recording.t_s.len() {
            let [a, b, c] = (recording.rate_rad_s[i] * 1.0_f64.to_degrees()).to_array();
            let [d, e, f] = recording.acceleration_m_s2[i].to_array();
            writeln!(csv, "10,{a:.4},{b:.4},{c:.4},{d:.4},{e:.4},{f:.4},0,0,0").expect("a text takes all");
        }
        csv
    });
    for csv in files {
        let (table, columns) = read_as("motion.csv", &csv);
        assert!(columns.time.intervals);
        let signals = Signals::of(&table, &columns).expect("signals");
        for i in 0..recording.t_s.len() {
            let [read, meant] = [signals.rate_rad_s[i], recording.rate_rad_s[i]];
            assert!(
                (read - meant).length() < 1e-4,
                "{i}: {read} {meant} {columns:?}"
            );
            assert!(
                (signals.acceleration_m_s2[i] - recording.acceleration_m_s2[i]).length() < 1e-3
            );
        }
    }
}

#[test]
fn units_may_stand_below_the_names() {
    let csv = "time,gyro_x,gyro_y,gyro_z\n[s],[deg/s],[deg/s],[deg/s]\n".to_owned();
    let rows = (0..50).map(|i| {
        format!(
            "{},0,0,{}\n",
            0.01 * f64::from(i),
            30.0 * libm::sin(0.1 * f64::from(i))
        )
    });
    let (_, columns) = read_as("a.csv", &(csv + &rows.collect::<String>()));
    assert_eq!(
        columns.gyroscope.map(|axes| axes.unit),
        Some(RateUnit::DegPerS)
    );
}

/// The user knows better: other units are applied again.
#[test]
fn what_the_user_changes_is_applied() {
    let recording = recording();
    let table = table(&recording.csv()).expect("a table");
    let mut columns = find_columns(&table).expect("columns");
    let axes = columns.gyroscope.as_mut().expect("a gyroscope");
    axes.unit = RateUnit::DegPerS;
    axes.columns.reverse();
    let signals = Signals::of(&table, &columns).expect("signals");
    let read = recording.rate_rad_s[300];
    let expected = DVec3::new(read.z, read.y, read.x) * 1.0_f64.to_radians();
    assert!((signals.rate_rad_s[300] - expected).length() < 1e-6);
}

/// Each sensor writes rows of its own, the other's fields are empty.
#[test]
fn sensors_may_take_turns() {
    let recording = recording();
    let mut csv = String::from("time,gx,gy,gz,ax,ay,az\n");
    for (i, t_s) in recording.t_s.iter().enumerate() {
        let ([a, b, c], [d, e, f]) = (
            recording.rate_rad_s[i].to_array(),
            recording.acceleration_m_s2[i].to_array(),
        );
        writeln!(
            csv,
            "{t_s:.4},{a:.5},{b:.5},{c:.5},,,\n{:.4},,,,{d:.4},{e:.4},{f:.4}",
            t_s + 0.001
        )
        .expect("a text takes all");
    }
    let (table, columns) = read_as("a.csv", &csv);
    let signals = Signals::of(&table, &columns).expect("signals");
    let trace = Survey::of(signals)
        .trace(&Windows::default())
        .expect("a trace");
    assert!((trace.turned_rad() - recording.turned_rad).abs() < 3.0 * trace.turned_sigma_rad);
}
