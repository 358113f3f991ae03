//! The piece of a file that is at hand; what else is needed has to be asked for.

use std::ops::Range;

use crate::fault::FilmFault;

/// Why reading can't go on.
#[derive(Debug, PartialEq, Eq)]
pub(crate) enum Stop {
    /// These bytes of the file are needed.
    Needs(Range<u64>),
    Fault(FilmFault),
}

impl From<FilmFault> for Stop {
    fn from(fault: FilmFault) -> Self {
        Self::Fault(fault)
    }
}

/// One piece of a file at a time: the next one takes its place.
pub(crate) struct Chunks {
    length: u64,
    start: u64,
    bytes: Vec<u8>,
}

impl Chunks {
    pub const fn new(length: u64) -> Self {
        Self {
            length,
            start: 0,
            bytes: Vec::new(),
        }
    }

    /// Of the whole file, bytes.
    pub const fn length(&self) -> u64 {
        self.length
    }

    /// As many bytes from there. Where they are not at hand, `ahead` bytes are asked for, as far as the
    /// file goes: those behind will be wanted soon.
    pub fn bytes(&self, at: u64, count: u64, ahead: u64) -> Result<&[u8], Stop> {
        let end = (at.checked_add(count)).filter(|&end| end <= self.length);
        let end = end.ok_or(FilmFault::CutOff)?;
        let at_hand = at.checked_sub(self.start).and_then(|from| {
            let from = usize::try_from(from).ok()?;
            let to = from.checked_add(usize::try_from(count).ok()?)?;
            self.bytes.get(from..to)
        });
        at_hand.ok_or_else(|| {
            let further = at.saturating_add(ahead).min(self.length);
            Stop::Needs(at..end.max(further))
        })
    }

    /// The bytes of a piece that was asked for. Fewer of them: the file ends there.
    pub fn supply(&mut self, asked: Range<u64>, mut bytes: Vec<u8>) {
        let wanted = usize::try_from(asked.end - asked.start).unwrap_or(usize::MAX);
        bytes.truncate(wanted);
        if bytes.len() < wanted {
            self.length = asked.start + bytes.len() as u64;
        }
        self.start = asked.start;
        self.bytes = bytes;
    }

    /// Lets go of the piece.
    pub fn forget(&mut self) {
        self.bytes = Vec::new();
    }
}
