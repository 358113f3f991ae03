//! How a file of columns is written: what stands between them, where the numbers begin, the names above.

use crate::names::is_unit;

/// How a file is written, from its beginning.
#[derive(Debug)]
pub struct Layout {
    pub delimiter: u8,
    /// Bytes before the first row of numbers.
    pub start: usize,
    /// Lines before it.
    pub lines: u64,
    /// Names of the columns; empty where no row of names stands above the numbers.
    pub names: Vec<String>,
    /// Fields of a row.
    pub fields: usize,
}

/// Rows that are looked at to choose the delimiter.
const ROWS: usize = 60;

/// A number as it is written here or there: the decimal sign is a point or a comma.
pub fn number(field: &[u8]) -> Option<f64> {
    let text = std::str::from_utf8(field).ok()?.trim();
    let value: Option<f64> = match text.parse() {
        Ok(value) => Some(value),
        Err(_) if text.contains(',') && !text.contains('.') => text.replace(',', ".").parse().ok(),
        Err(_) => None,
    };
    value.filter(|value| value.is_finite())
}

/// A row of the file's beginning, split without regard to line breaks in quotes: numbers have none.
fn fields(line: &str, delimiter: u8) -> impl Iterator<Item = &str> + Clone {
    line.split(char::from(delimiter))
        .map(|field| field.trim().trim_matches('"').trim())
}

/// How many fields of a line are numbers, and how many have anything in them.
fn filled(line: &str, delimiter: u8) -> (usize, usize) {
    let filled = fields(line, delimiter).filter(|field| !field.is_empty());
    let numbers = filled
        .clone()
        .filter(|field| number(field.as_bytes()).is_some());
    (numbers.count(), filled.count())
}

/// Whether that is a row of numbers: two at least, and no more texts than numbers.
fn is_row(line: &str, delimiter: u8) -> bool {
    let (numbers, filled) = filled(line, delimiter);
    numbers >= 2 && 2 * numbers >= filled
}

/// The lines with the byte at which each begins, without those that are cut off at the end.
fn lines(head: &str, whole: bool) -> Vec<(usize, &str)> {
    let mut at = 0;
    let mut lines = Vec::new();
    for line in head.split_inclusive('\n') {
        if whole || line.ends_with('\n') {
            lines.push((at, line.trim_end_matches(['\r', '\n'])));
        }
        at += line.len();
    }
    lines
}

fn is_comment(line: &str) -> bool {
    let line = line.trim_start();
    line.is_empty() || line.starts_with(['#', '%']) || line.starts_with("//")
}

impl Layout {
    /// Of the beginning of a file; `whole` where that is all of it. None where no row of numbers is.
    pub fn of(head: &str, whole: bool) -> Option<Self> {
        let lines = lines(head, whole);
        let score = |delimiter: u8| -> i64 {
            let rows = lines
                .iter()
                .filter(|(_, line)| !is_comment(line) && is_row(line, delimiter));
            let scored = rows.take(ROWS).map(|(_, line)| {
                let (numbers, filled) = filled(line, delimiter);
                3 * i64::try_from(numbers).unwrap_or(0) - 2 * i64::try_from(filled).unwrap_or(0)
            });
            scored.sum()
        };
        let delimiter = [b';', b'\t', b',']
            .into_iter()
            .max_by_key(|&delimiter| score(delimiter))?;
        let first = lines
            .iter()
            .position(|(_, line)| !is_comment(line) && is_row(line, delimiter))?;
        let (start, row) = lines[first];
        let count = fields(row, delimiter).count();
        Some(Self {
            delimiter,
            start,
            lines: first as u64,
            names: names_above(&lines[..first], delimiter, count),
            fields: count,
        })
    }
}

/// The nearest row of names above the numbers, with the units of a row of units below it.
fn names_above(above: &[(usize, &str)], delimiter: u8, count: usize) -> Vec<String> {
    let mut units = None;
    for (_, line) in above.iter().rev() {
        let line = line.trim_start_matches(|c: char| "#%/".contains(c) || c.is_whitespace());
        let row: Vec<&str> = fields(line, delimiter).collect();
        if row.len() != count || row.iter().all(|field| field.is_empty()) {
            continue;
        }
        if units.is_none() && row.iter().all(|field| field.is_empty() || is_unit(field)) {
            units = Some(row);
            continue;
        }
        let unit = |i: usize| units.as_ref().map_or("", |units| units[i]);
        return (row.iter().enumerate())
            .map(|(i, name)| match unit(i) {
                "" => (*name).to_owned(),
                unit => format!("{name} ({unit})"),
            })
            .collect();
    }
    Vec::new()
}
