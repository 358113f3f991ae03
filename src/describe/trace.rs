//! Sensor traces in words: what is wrong with a file, and what is to be known of a flight in it.

use crate::Sentence;
use crate::number::{plain, shown};
use turns_aloft_trace::TraceFault;
use turns_aloft_trace::table_reader::LARGEST_BYTES;
use turns_aloft_trace::trace::Remark;
use turns_aloft_words::{decimal, say, text};

impl Sentence for TraceFault {
    fn sentence(&self) -> String {
        let time = |t_s: f64| decimal(t_s, 2);
        match self {
            Self::Empty => text("trace-empty").to_owned(),
            Self::NotText => text("trace-not-text").to_owned(),
            Self::TooLarge => say!("trace-too-large", most = LARGEST_BYTES / 1_000_000),
            Self::NoNumbers => text("trace-no-numbers").to_owned(),
            Self::NoHeader => text("trace-no-header").to_owned(),
            Self::NoTime => text("trace-no-time").to_owned(),
            Self::NoGyroscope => text("trace-no-gyroscope").to_owned(),
            Self::NoColumn { column } => say!("trace-no-column", column = column + 1),
            Self::TextInNumbers { column, line, text } => say!(
                "trace-text-in-numbers",
                column = shown(column),
                line = *line,
                text = shown(text)
            ),
            Self::TimeUnit { step } => say!("trace-time-unit", step = plain(*step)),
            Self::RateUnit { largest } => say!("trace-rate-unit", largest = plain(*largest)),
            Self::ClockBackwards { line } => say!("trace-clock-backwards", line = *line),
            Self::TooShort { readings } => say!("trace-too-short", readings = *readings),
            Self::TooSlow { readings_a_second } => {
                say!("trace-too-slow", readings = decimal(*readings_a_second, 0))
            }
            Self::Constant => text("trace-constant").to_owned(),
            Self::NoFlight => text("trace-no-flight").to_owned(),
            Self::Gap { from_s, to_s } => {
                say!("trace-gap", from = time(*from_s), to = time(*to_s))
            }
            Self::Window { from_s, to_s } => {
                say!("trace-window", from = time(*from_s), to = time(*to_s))
            }
        }
    }
}

impl Sentence for Remark {
    fn sentence(&self) -> String {
        let degrees = |rate_rad_s: f64, digits| decimal(rate_rad_s.to_degrees(), digits);
        match *self {
            Self::Drift { size_rad_s } => {
                say!("trace-drift", size = degrees(size_rad_s, 1))
            }
            Self::NoRest => text("trace-no-rest").to_owned(),
            Self::NoGravity => text("trace-no-gravity").to_owned(),
            Self::RateOnly => text("trace-rate-only").to_owned(),
            Self::NotRigid => text("trace-not-rigid").to_owned(),
            Self::Bridged {
                end_rad_s,
                readings,
            } => {
                say!(
                    "trace-bridged",
                    end = degrees(end_rad_s, 0),
                    readings = readings
                )
            }
            Self::Beyond {
                end_rad_s,
                readings,
            } => {
                say!(
                    "trace-beyond",
                    end = degrees(end_rad_s, 0),
                    readings = readings
                )
            }
            Self::MeanAxis => text("trace-mean-axis").to_owned(),
            Self::EitherWay => text("trace-either-way").to_owned(),
        }
    }
}
