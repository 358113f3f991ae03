//! Why a file of readings cannot be used.

/// Why a file, or what was chosen of it, holds no trace of a jump.
#[derive(Debug, Clone, PartialEq)]
pub enum TraceFault {
    /// Nothing stands in it.
    Empty,
    /// It is no text, or none in UTF-8.
    NotText,
    /// More bytes or numbers than are read.
    TooLarge,
    /// No rows of numbers between commas, semicolons or tabs.
    NoNumbers,
    /// No row of names stands above the numbers.
    NoHeader,
    /// No column is a clock.
    NoTime,
    /// No three columns are a gyroscope.
    NoGyroscope,
    /// A chosen column is not there.
    NoColumn { column: usize },
    /// A column that is needed has a text where a number should be.
    TextInNumbers {
        column: String,
        line: u64,
        text: String,
    },
    /// No unit makes the steps of the clock those of a sensor.
    TimeUnit { step: f64 },
    /// No unit makes the readings of the gyroscope those of a jump.
    RateUnit { largest: f64 },
    /// The clock goes back at this line.
    ClockBackwards { line: u64 },
    /// Too few readings.
    TooShort { readings: usize },
    /// Too few readings a second.
    TooSlow { readings_a_second: f64 },
    /// The gyroscope says the same all along.
    Constant,
    /// Nothing in it looks like a flight with turning.
    NoFlight,
    /// Readings are missing in the flight.
    Gap { from_s: f64, to_s: f64 },
    /// A chosen stretch of time has too few readings in it.
    Window { from_s: f64, to_s: f64 },
}
