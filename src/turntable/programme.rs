//! A programme of positions over time, as CSV: read, and what is wrong with one.

use csv::{Reader, ReaderBuilder, StringRecord};

use crate::position::Position;
use crate::run::LONGEST_S;

/// A position at a time, and the line of the file that it stands in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    pub line: u64,
    pub t_s: f64,
    pub position: Position,
}

/// Positions in the order of time, two at least.
#[derive(Debug, Clone, PartialEq)]
pub struct Programme {
    pub rows: Vec<Row>,
}

/// Why a text is no programme.
#[derive(Debug, Clone, PartialEq)]
pub enum ProgrammeFault {
    Empty,
    /// In UTF-8.
    NotText,
    TooLarge,
    /// The first line does not name this column.
    NoColumn {
        column: &'static str,
    },
    /// The first line names this column twice.
    TwiceColumn {
        column: &'static str,
    },
    NotANumber {
        line: u64,
        column: &'static str,
        written: String,
    },
    /// One row or none.
    TooShort,
    /// The time does not go on from the row before.
    OutOfOrder {
        line: u64,
    },
    TooLong,
}

/// Bytes of a file at most: a recorded hour. Our choice.
pub const LARGEST_BYTES: usize = 40_000_000;

const TIME: &str = "time_s";
const HANDS: &str = "hand_distance_m";
const LEGS: &str = "legs";
const TWIST: &str = "twist_rad";

/// Turning with the hands out, then in, then out again.
pub const EXAMPLE: &str = "\
time_s,hand_distance_m,legs,twist_rad
0,0.7,0,0
1,0.7,0,0
1.5,0.25,0,0
4,0.25,0,0
4.5,0.7,0,0
6,0.7,0,0
";

impl Programme {
    /// Reads what stands in a file.
    pub fn of_file(bytes: &[u8]) -> Result<Self, ProgrammeFault> {
        if bytes.len() > LARGEST_BYTES {
            return Err(ProgrammeFault::TooLarge);
        }
        Self::read(std::str::from_utf8(bytes).map_err(|_| ProgrammeFault::NotText)?)
    }

    /// Reads a text whose first line names the columns: `time_s` and `hand_distance_m`, and where they are
    /// wanted `legs` and `twist_rad`, which are 0 otherwise. Others are passed over. Between the columns
    /// stand commas, semicolons or tabs; where it is not commas, these may be the decimal signs.
    pub fn read(text: &str) -> Result<Self, ProgrammeFault> {
        let text = text.strip_prefix('\u{feff}').unwrap_or(text);
        let first = text.lines().find(|line| !is_passed_over(line));
        let first = first.ok_or(ProgrammeFault::Empty)?;
        let delimiters = [b';', b'\t'].into_iter();
        let delimiter = delimiters
            .into_iter()
            .find(|&delimiter| first.contains(char::from(delimiter)))
            .unwrap_or(b',');
        let mut records = Records::new(text, delimiter);
        let (_, header) = records.next().ok_or(ProgrammeFault::Empty)?;
        let columns = Columns::of(&header)?;
        let mut rows: Vec<Row> = Vec::new();
        for (line, record) in records {
            let row = columns.row(line, &record)?;
            if rows.last().is_some_and(|before| row.t_s <= before.t_s) {
                return Err(ProgrammeFault::OutOfOrder { line });
            }
            rows.push(row);
        }
        let [first, .., last] = &rows[..] else {
            return Err(ProgrammeFault::TooShort);
        };
        if last.t_s - first.t_s > LONGEST_S {
            return Err(ProgrammeFault::TooLong);
        }
        Ok(Self { rows })
    }
}

fn is_passed_over(line: &str) -> bool {
    line.trim().is_empty() || line.starts_with('#')
}

/// The records of a text that have anything in them, each with the line that it ends in.
struct Records<'a> {
    text: &'a [u8],
    reader: Reader<&'a [u8]>,
    /// So much has been read, and so many lines have ended in it.
    read: usize,
    ended: u64,
}

impl<'a> Records<'a> {
    fn new(text: &'a str, delimiter: u8) -> Self {
        let mut builder = ReaderBuilder::new();
        builder
            .delimiter(delimiter)
            .comment(Some(b'#'))
            .flexible(true)
            .has_headers(false);
        Self {
            text: text.as_bytes(),
            reader: builder.from_reader(text.as_bytes()),
            read: 0,
            ended: 0,
        }
    }
}

impl Iterator for Records<'_> {
    type Item = (u64, StringRecord);

    fn next(&mut self) -> Option<Self::Item> {
        let mut record = StringRecord::new();
        while self.reader.read_record(&mut record).ok()? {
            let end = self.reader.position().byte() as usize;
            let fresh = &self.text[self.read..end];
            self.ended += fresh.iter().filter(|&&byte| byte == b'\n').count() as u64;
            self.read = end;
            if record.iter().any(|field| !field.trim().is_empty()) {
                // Before a line feed that belongs to it the line has not ended yet.
                let own = u64::from(fresh.last() != Some(&b'\n'));
                return Some((self.ended + own, record));
            }
        }
        None
    }
}

/// Where the columns stand.
struct Columns {
    time: usize,
    hands: usize,
    legs: Option<usize>,
    twist: Option<usize>,
}

impl Columns {
    fn of(header: &StringRecord) -> Result<Self, ProgrammeFault> {
        let find = |column: &'static str| {
            let mut places = header
                .iter()
                .enumerate()
                .filter(|(_, name)| name.trim().eq_ignore_ascii_case(column))
                .map(|(place, _)| place);
            let place = places.next();
            match places.next() {
                Some(_) => Err(ProgrammeFault::TwiceColumn { column }),
                None => Ok(place),
            }
        };
        let needed = |column| find(column)?.ok_or(ProgrammeFault::NoColumn { column });
        Ok(Self {
            time: needed(TIME)?,
            hands: needed(HANDS)?,
            legs: find(LEGS)?,
            twist: find(TWIST)?,
        })
    }

    fn row(&self, line: u64, record: &StringRecord) -> Result<Row, ProgrammeFault> {
        let number = |place: usize, column: &'static str| {
            let written = record.get(place).unwrap_or("");
            number(written).ok_or_else(|| ProgrammeFault::NotANumber {
                line,
                column,
                written: written.trim().to_owned(),
            })
        };
        let or_none = |place: Option<usize>, column| place.map_or(Ok(0.0), |at| number(at, column));
        Ok(Row {
            line,
            t_s: number(self.time, TIME)?,
            position: Position {
                hand_distance_m: number(self.hands, HANDS)?,
                legs: or_none(self.legs, LEGS)?,
                twist_rad: or_none(self.twist, TWIST)?,
            },
        })
    }
}

/// A number as it is written here or there.
fn number(written: &str) -> Option<f64> {
    let written = written.trim().replace(',', ".");
    written.parse().ok().filter(|value: &f64| value.is_finite())
}
