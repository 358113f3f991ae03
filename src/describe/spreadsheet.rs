//! Tables that a spreadsheet opens, with numbers as the language spoken writes them.

use turns_aloft_scenario::units::Unit;
use turns_aloft_words::{column_separator, with_decimal_sign};

use crate::unit::UnitText;

/// Says that the text is UTF-8 (Unicode, "Byte order mark"): some spreadsheets take it for something else.
const BEGIN: char = '\u{feff}';

/// Digits of a number: more than anything that is measured has. Our choice.
const DIGITS: usize = 7;

/// What stands in one place of a table.
#[derive(Debug, Clone, Copy)]
pub enum Cell<'a> {
    Text(&'a str),
    /// In its unit, where it has one.
    Number(f64, Option<Unit>),
}

/// A table as CSV (RFC 4180, with the separator of the language).
pub struct Spreadsheet(String);

impl Spreadsheet {
    pub fn with_heading<'a>(heading: impl IntoIterator<Item = &'a str>) -> Self {
        let mut table = Self(BEGIN.to_string());
        table.texts(heading);
        table
    }

    /// Adds a row of texts.
    pub fn texts<'a>(&mut self, cells: impl IntoIterator<Item = &'a str>) {
        let cells: Vec<String> = cells.into_iter().map(quoted).collect();
        self.row(&cells);
    }

    /// Adds a row of numbers, each in its unit.
    pub fn numbers(&mut self, cells: &[(f64, Unit)]) {
        let cells: Vec<String> = cells
            .iter()
            .map(|(number, unit)| rounded(unit.from_si(*number)))
            .collect();
        self.row(&cells);
    }

    /// Adds a row of both.
    pub fn cells<'a>(&mut self, cells: impl IntoIterator<Item = Cell<'a>>) {
        let cells = cells.into_iter().map(|cell| match cell {
            Cell::Text(text) => quoted(text),
            Cell::Number(number, unit) => rounded(unit.map_or(number, |unit| unit.from_si(number))),
        });
        self.row(&cells.collect::<Vec<_>>());
    }

    fn row(&mut self, cells: &[String]) {
        self.0 += &cells.join(column_separator());
        self.0 += "\r\n";
    }

    pub fn into_csv(self) -> String {
        self.0
    }
}

/// What a column is called, with its unit.
pub fn heading(label: &str, unit: Unit) -> String {
    format!("{label} ({})", unit.sign())
}

fn rounded(number: f64) -> String {
    let short = format!("{number:.*e}", DIGITS - 1)
        .parse()
        .unwrap_or(number);
    // No minus before a zero.
    with_decimal_sign((short + 0.0).to_string())
}

/// A text that is one cell, and never a formula.
fn quoted(text: &str) -> String {
    let safe = if text.starts_with(['=', '+', '-', '@', '\t', '\r']) {
        format!("'{text}")
    } else {
        text.to_owned()
    };
    if safe.contains(['"', ',', ';', '\n', '\r']) {
        format!("\"{}\"", safe.replace('"', "\"\""))
    } else {
        safe
    }
}
