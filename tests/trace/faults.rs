//! Files that are no trace: one sentence each, in both languages.

use std::io::Read;

use crate::recorder::{Sensor, record};
use crate::{read, table};
use turns_aloft::describe::Sentence;
use turns_aloft::scenario::starts;
use turns_aloft::trace::table_reader::{LARGEST_BYTES, ReadFault};
use turns_aloft::trace::{Signals, TraceFault, find_columns, read_table};
use turns_aloft::words::{Language, set_language};

fn fault(text: &str) -> TraceFault {
    read(text).expect_err("it is no trace")
}

fn good() -> String {
    record(&starts::all()[0].scenario, &Sensor::default(), 0).csv()
}

/// A made-up trace with a column of one's own for the rates about z, 100 readings a second.
fn made_up(header: &str, row: impl Fn(usize) -> String) -> String {
    let rows = (0..100).map(row);
    format!("{header}\n{}\n", rows.collect::<Vec<_>>().join("\n"))
}

#[test]
fn each_fault_is_told_apart_and_said_in_one_sentence() {
    let swing = |i: usize| libm::sin(0.1 * i as f64);
    let header = "time,gyro x,gyro y,gyro z";
    let faults = [
        (fault(""), "Empty"),
        (fault(" \n\n"), "Empty"),
        (fault("\u{0}\u{1}\u{2}GIF"), "NotText"),
        (fault("Dear diary,\ntoday I jumped.\n"), "NoNumbers"),
        (fault(&made_up("", |i| format!("{i},1,2,3"))), "NoHeader"),
        (
            fault(&made_up("gyro x,gyro y,gyro z", |i| format!("{i},1,2"))),
            "NoTime",
        ),
        (
            fault(&made_up("time,height,speed", |i| {
                format!("{},1,2", 0.01 * i as f64)
            })),
            "NoGyroscope",
        ),
        (
            fault(&made_up(header, |i| {
                if i == 50 {
                    "0.5,1,oops,2".to_owned()
                } else {
                    format!("{},1,2,3", 0.01 * i as f64)
                }
            })),
            "TextInNumbers",
        ),
        (
            fault(&made_up(header, |i| {
                format!("{},0,0,{}", 1e12 * i as f64, swing(i))
            })),
            "TimeUnit",
        ),
        (
            fault(&made_up(header, |i| {
                format!("{},0,0,{}", 0.01 * i as f64, 1e5 * swing(i))
            })),
            "RateUnit",
        ),
        (
            fault(&made_up(header, |i| {
                format!(
                    "{},0,0,{}",
                    0.01 * if i == 60 { 3.0 } else { i as f64 },
                    swing(i)
                )
            })),
            "ClockBackwards",
        ),
        (
            fault("time,gyro x,gyro y,gyro z\n0.00,1,2,3\n0.01,1,2,4\n0.02,1,2,4\n"),
            "TooShort",
        ),
        (
            fault(&made_up(header, |i| {
                format!("{},0,0,{}", 0.1 * i as f64, swing(i))
            })),
            "TooSlow",
        ),
        (
            fault(&made_up(header, |i| format!("{},1,2,3", 0.01 * i as f64))),
            "Constant",
        ),
        (
            fault(&made_up(header, |i| {
                format!("{},0,0,{}", 0.01 * i as f64, 0.1 * swing(i))
            })),
            "NoFlight",
        ),
    ];
    let others = [
        TraceFault::TooLarge,
        TraceFault::NoColumn { column: 99 },
        TraceFault::Gap {
            from_s: 1.25,
            to_s: 1.5,
        },
        TraceFault::Window {
            from_s: 2.0,
            to_s: 1.0,
        },
    ];
    for language in Language::ALL {
        set_language(language);
        let mut said: Vec<String> = faults.iter().map(|(fault, _)| fault.sentence()).collect();
        said.extend(others.iter().map(Sentence::sentence));
        for sentence in &said {
            assert!(sentence.ends_with('.') && sentence.len() > 20, "{sentence}");
            assert!(!sentence.contains('{'), "{sentence}");
        }
        said.sort();
        said.dedup();
        // The empty file and the one of empty lines are alike.
        assert_eq!(said.len(), faults.len() + others.len() - 1);
    }
    set_language(Language::English);
    for (fault, name) in &faults {
        assert!(
            format!("{fault:?}").starts_with(name),
            "{fault:?} is not {name}"
        );
    }
}

/// It is read in pieces, and given up as soon as too much has come.
#[test]
fn a_file_that_is_too_large_is_given_up() {
    let endless = b"time,x,y,z\n".chain(std::io::repeat(b'1').take(LARGEST_BYTES * 2));
    let why = read_table("gyroscope.csv", endless).expect_err("it is too large");
    assert!(
        matches!(
            why,
            ReadFault::Trace(TraceFault::NoNumbers | TraceFault::TooLarge)
        ),
        "{why:?}"
    );
    let row = "1.0,2,3,4\n".repeat(100_000);
    let mut rows = row.as_bytes().repeat(2);
    rows.splice(0..0, *b"time,x,y,z\n");
    let repeated = Repeated { piece: rows, at: 0 };
    let why = read_table("gyroscope.csv", repeated).expect_err("it is too large");
    assert!(
        matches!(why, ReadFault::Trace(TraceFault::TooLarge)),
        "{why:?}"
    );
}

/// One piece again and again.
struct Repeated {
    piece: Vec<u8>,
    at: usize,
}

impl Read for Repeated {
    fn read(&mut self, buffer: &mut [u8]) -> std::io::Result<usize> {
        let length = buffer.len().min(self.piece.len() - self.at);
        buffer[..length].copy_from_slice(&self.piece[self.at..self.at + length]);
        self.at = (self.at + length) % self.piece.len();
        Ok(length)
    }
}

#[test]
fn a_cut_off_file_is_read_as_far_as_it_goes() {
    let good = good();
    let whole = table(&good).expect("a table");
    let cut = table(&good[..good.len() - 20]).expect("a table");
    assert_eq!(cut.rows(), whole.rows() - 1);
    let lines = good.lines().count() as u64;
    assert_eq!((whole.lines[0], whole.lines[whole.rows() - 1]), (2, lines));
}

#[test]
fn the_line_of_a_text_is_told() {
    let mut lines: Vec<String> = good().lines().map(str::to_owned).collect();
    lines[99] = lines[99].replacen(',', ",n0 ", 1);
    let why = fault(&lines.join("\n"));
    let TraceFault::TextInNumbers { column, line, text } = &why else {
        panic!("{why:?}");
    };
    assert_eq!((column.as_str(), *line), ("Gyroscope x (rad/s)", 100));
    assert!(text.starts_with("n0 "));
}

#[test]
fn columns_that_the_user_chose_wrongly_are_a_fault() {
    let table = table(&good()).expect("a table");
    let columns = find_columns(&table).expect("columns");
    let mut wrong = columns;
    wrong.time.column = 99;
    assert_eq!(
        Signals::of(&table, &wrong).expect_err("no such"),
        TraceFault::NoColumn { column: 99 }
    );
    let mut wrong = columns;
    wrong.gyroscope = None;
    assert_eq!(
        Signals::of(&table, &wrong).expect_err("none"),
        TraceFault::NoGyroscope
    );
}

/// A time that no clock shows is none, and nothing that is said has hundreds of digits.
#[test]
fn a_time_beyond_all_clocks_is_left_out() {
    let csv = made_up("interval,gyro x,gyro y,gyro z", |i| {
        let interval = if i == 60 { 1e300 } else { 20.0 };
        format!(
            "{interval:e},0.01,0.02,{}",
            20.0 * libm::sin(0.02 * i as f64)
        )
    });
    let table = table(&csv).expect("a table");
    let columns = find_columns(&table).expect("columns");
    let signals = Signals::of(&table, &columns).expect("signals");
    assert_eq!(signals.t_s.len(), 60);
    assert!(signals.t_s.iter().all(|t_s| *t_s < 2.0));
}
