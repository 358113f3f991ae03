//! Rows of a file's numbers, field by field.

use csv_core::{ReadFieldResult, Reader, ReaderBuilder};

use crate::fault::TraceFault;
use crate::sniff::number;
use crate::table::Table;

/// Numbers at most, so that the memory is bounded: as many as a file of that size has with eight
/// characters for each.
const MOST_NUMBERS: usize = 25_000_000;

/// Bytes of a field at most; what is longer is no number.
const LONGEST_FIELD: usize = 64;

/// Reads the rows of a file that arrives in pieces.
#[derive(Debug)]
pub struct Rows {
    reader: Box<Reader>,
    field: [u8; LONGEST_FIELD],
    length: usize,
    /// The field goes on beyond that.
    too_long: bool,
    /// Of the row that is being read.
    row: Vec<f64>,
    /// What is no number in it, by column.
    texts: Vec<(usize, String)>,
    /// On which it stands.
    line: u64,
    /// Lines above the first row.
    above: u64,
}

impl Rows {
    /// From a file's first row of numbers on, with so many lines above it.
    pub fn new(delimiter: u8, above: u64) -> Self {
        let mut reader = ReaderBuilder::new();
        reader.delimiter(delimiter).comment(Some(b'#'));
        Self {
            reader: Box::new(reader.build()),
            field: [0; LONGEST_FIELD],
            length: 0,
            too_long: false,
            row: Vec::new(),
            texts: Vec::new(),
            line: 0,
            above,
        }
    }

    /// The next piece.
    pub fn push(&mut self, mut piece: &[u8], table: &mut Table) -> Result<(), TraceFault> {
        while !piece.is_empty() {
            let (_, read) = self.step(piece, table)?;
            piece = &piece[read..];
        }
        Ok(())
    }

    /// After the last piece.
    pub fn finish(&mut self, table: &mut Table) -> Result<(), TraceFault> {
        while self.step(&[], table)?.0 {}
        Ok(())
    }

    /// Reads one field or less; whether there may be more, and how many bytes were read.
    fn step(&mut self, piece: &[u8], table: &mut Table) -> Result<(bool, usize), TraceFault> {
        // Of a field that is too long the rest is written over its end.
        let room = if self.too_long { 0 } else { self.length };
        let (result, read, written) = self.reader.read_field(piece, &mut self.field[room..]);
        self.length = room + written;
        match result {
            ReadFieldResult::InputEmpty => {}
            ReadFieldResult::OutputFull => self.too_long = true,
            ReadFieldResult::Field { record_end } => {
                self.end_field(table)?;
                // The last row of a file that was cut off is left out.
                let is_cut = piece.is_empty()
                    && (self.row.len() < table.columns.len() || !self.texts.is_empty());
                if record_end && is_cut {
                    self.row.clear();
                    self.texts.clear();
                } else if record_end {
                    self.end_row(table);
                }
            }
            ReadFieldResult::End => return Ok((false, read)),
        }
        Ok((true, read))
    }

    fn end_field(&mut self, table: &Table) -> Result<(), TraceFault> {
        if table.columns.len() * table.lines.len() > MOST_NUMBERS {
            return Err(TraceFault::TooLarge);
        }
        let i = self.row.len();
        if i == 0 {
            self.line = self.above + self.reader.line();
        }
        if i < table.columns.len() {
            let field = &self.field[..self.length];
            let value = number(field).filter(|_| !self.too_long);
            let text = String::from_utf8_lossy(field);
            if value.is_none() && !is_missing(text.trim()) {
                self.texts.push((i, text.trim().to_owned()));
            }
            self.row.push(value.unwrap_or(f64::NAN));
        }
        self.length = 0;
        self.too_long = false;
        Ok(())
    }

    /// A row without any number is none: people write below their tables.
    fn end_row(&mut self, table: &mut Table) {
        if self.row.iter().any(|value| value.is_finite()) {
            self.row.resize(table.columns.len(), f64::NAN);
            for (column, value) in table.columns.iter_mut().zip(&self.row) {
                column.values.push(*value);
            }
            for (i, text) in self.texts.drain(..) {
                let first = (self.line, text);
                table.columns[i].text.get_or_insert(first);
            }
            table.lines.push(self.line);
        }
        self.texts.clear();
        self.row.clear();
    }
}

/// What stands where a reading is missing.
fn is_missing(text: &str) -> bool {
    let missing = ["", "nan", "null", "na", "n/a", "-", "none", "undefined"];
    missing.iter().any(|word| text.eq_ignore_ascii_case(word))
}
