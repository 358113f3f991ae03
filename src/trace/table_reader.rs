//! Reads a table piece by piece: a file may be far larger than a piece.

use std::io::Read;

use crate::fault::TraceFault;
use crate::rows::Rows;
use crate::sniff::Layout;
use crate::table::{Column, Table};

/// Bytes of a file at most: two hours of 250 readings a second with ten columns. Our choice.
pub const LARGEST_BYTES: u64 = 200_000_000;

/// Columns at most; our choice.
const MOST_COLUMNS: usize = 256;

/// Bytes by which is told how the file is written.
const HEAD_BYTES: usize = 1 << 16;

/// Reads all of a file.
pub fn read_table(file_name: &str, mut file: impl Read) -> Result<Table, ReadFault> {
    let mut reader = TableReader::new(file_name);
    let mut piece = vec![0; HEAD_BYTES];
    loop {
        match file.read(&mut piece) {
            Ok(0) => return Ok(reader.finish()?),
            Ok(length) => reader.push(&piece[..length])?,
            Err(why) if why.kind() == std::io::ErrorKind::Interrupted => {}
            Err(why) => return Err(ReadFault::Io(why)),
        }
    }
}

/// Why a file could not be read: the device fails, or what stands in it is of no use.
#[derive(Debug)]
pub enum ReadFault {
    Io(std::io::Error),
    Trace(TraceFault),
}

impl From<TraceFault> for ReadFault {
    fn from(why: TraceFault) -> Self {
        Self::Trace(why)
    }
}

/// Reads a file that arrives in pieces.
#[derive(Debug)]
pub struct TableReader {
    table: Table,
    bytes: u64,
    stage: Stage,
}

#[derive(Debug)]
enum Stage {
    /// The beginning, as much of it as is there.
    Head(Vec<u8>),
    Rows(Rows),
}

impl TableReader {
    pub fn new(file_name: &str) -> Self {
        Self {
            table: Table {
                file_name: file_name.to_owned(),
                ..Table::default()
            },
            bytes: 0,
            stage: Stage::Head(Vec::new()),
        }
    }

    /// The next piece of the file.
    pub fn push(&mut self, piece: &[u8]) -> Result<(), TraceFault> {
        self.bytes += piece.len() as u64;
        if self.bytes > LARGEST_BYTES {
            return Err(TraceFault::TooLarge);
        }
        match &mut self.stage {
            Stage::Head(head) => {
                head.extend_from_slice(piece);
                if head.len() >= HEAD_BYTES {
                    self.begin(false)?;
                }
                Ok(())
            }
            Stage::Rows(rows) => rows.push(piece, &mut self.table),
        }
    }

    /// After the last piece.
    pub fn finish(mut self) -> Result<Table, TraceFault> {
        if matches!(self.stage, Stage::Head(_)) {
            self.begin(true)?;
        }
        if let Stage::Rows(rows) = &mut self.stage {
            rows.finish(&mut self.table)?;
        }
        Ok(self.table)
    }

    /// Tells how the file is written, and goes on to its rows.
    fn begin(&mut self, whole: bool) -> Result<(), TraceFault> {
        let Stage::Head(head) = &self.stage else {
            return Ok(());
        };
        let bytes = head.strip_prefix("\u{feff}".as_bytes()).unwrap_or(head);
        if bytes.iter().all(u8::is_ascii_whitespace) {
            return Err(if whole {
                TraceFault::Empty
            } else {
                TraceFault::NoNumbers
            });
        }
        if bytes
            .iter()
            .any(|&byte| byte < b' ' && !byte.is_ascii_whitespace())
        {
            return Err(TraceFault::NotText);
        }
        let text = as_text(bytes);
        let layout = Layout::of(&text, whole).ok_or(TraceFault::NoNumbers)?;
        if layout.fields > MOST_COLUMNS {
            return Err(TraceFault::TooLarge);
        }
        let names = layout
            .names
            .into_iter()
            .chain(std::iter::repeat(String::new()));
        self.table.columns = names
            .take(layout.fields)
            .map(|name| Column {
                name,
                ..Column::default()
            })
            .collect();
        let mut rows = Rows::new(layout.delimiter, layout.lines);
        rows.push(&bytes[layout.start..], &mut self.table)?;
        self.stage = Stage::Rows(rows);
        Ok(())
    }
}

/// The beginning of a file as a text of as many bytes. Signs of units in another encoding are no fault, and
/// nor is one that is cut at the end.
fn as_text(bytes: &[u8]) -> String {
    match std::str::from_utf8(bytes) {
        Ok(text) => text.to_owned(),
        Err(why) if why.error_len().is_none() => as_text(&bytes[..why.valid_up_to()]),
        Err(_) => {
            let ascii = |&byte: &u8| {
                if byte.is_ascii() {
                    char::from(byte)
                } else {
                    '?'
                }
            };
            bytes.iter().map(ascii).collect()
        }
    }
}
