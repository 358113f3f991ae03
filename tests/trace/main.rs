//! Sensor traces: files of any layout, flights made up by the real mechanics, and a real sensor against
//! optical tracking.

mod about_vertical;
mod broad;
mod faults;
mod fitted;
mod flights;
mod layouts;
mod opened;
mod recorder;

use turns_aloft::trace::{
    Signals, Survey, Table, TableReader, Trace, TraceFault, Windows, find_columns,
};

/// The table of a text.
fn table(text: &str) -> Result<Table, TraceFault> {
    let mut reader = TableReader::new("trace.csv");
    reader.push(text.as_bytes())?;
    reader.finish()
}

/// What a file tells on its own.
fn read(text: &str) -> Result<Trace, TraceFault> {
    let table = table(text)?;
    let columns = find_columns(&table)?;
    Survey::of(Signals::of(&table, &columns)?).trace(&Windows::default())
}
