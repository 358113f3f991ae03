//! A sensor's trace: the readings of a gyroscope on the trunk, with or without an accelerometer, as a
//! file of columns; the flight in them, and how far the trunk turned in it.
//!
//! The way: [`Table`] (numbers in columns) -> [`Columns`] (which is what, in what unit) -> [`Signals`]
//! (readings in SI) -> [`Survey`] (rests and flights) -> [`Trace`] (one flight, the angle turned in it).
//! Each step can be done again with what the user has changed. Knows no screen, no words and no browser.

pub mod about_vertical;
pub mod bridge;
pub mod columns;
pub mod fault;
mod find_columns;
pub mod flight_window;
mod heading;
pub mod lever_arm;
mod names;
mod readings;
pub mod rest;
mod rows;
pub mod saturation;
pub mod signals;
mod sniff;
pub mod table;
pub mod table_reader;
pub mod trace;
pub mod turned;
pub mod units;

pub use about_vertical::{AboutVertical, CountedAbout};
pub use columns::Columns;
pub use fault::TraceFault;
pub use find_columns::find_columns;
pub use signals::Signals;
pub use table::Table;
pub use table_reader::{TableReader, read_table};
pub use trace::{Survey, Trace, Windows};
