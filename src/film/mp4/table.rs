//! The tables of a film that is not fragmented: so many frames, each so long, shown so much later.

use crate::fault::FilmFault;
use crate::limits::MOST_FRAMES;
use crate::mp4::boxes::{expect, find};
use crate::mp4::fields::Fields;
use crate::samples::Samples;

/// A value for every frame, as runs: how often, and which.
struct Runs<'a> {
    fields: Fields<'a>,
    left: u32,
    value: u32,
}

impl<'a> Runs<'a> {
    fn of(table: &'a [u8]) -> Result<Self, FilmFault> {
        let mut fields = Fields(table);
        fields.skip(8)?;
        Ok(Self {
            fields,
            left: 0,
            value: 0,
        })
    }
}

impl Iterator for Runs<'_> {
    type Item = u32;

    fn next(&mut self) -> Option<u32> {
        while self.left == 0 {
            self.left = self.fields.u32().ok()?;
            self.value = self.fields.u32().ok()?;
        }
        self.left -= 1;
        Some(self.value)
    }
}

/// How many frames a track's tables have.
pub(crate) fn count(stbl: &[u8]) -> Result<usize, FilmFault> {
    let sizes = match find(stbl, b"stsz")? {
        Some(sizes) => sizes,
        None => expect(stbl, b"stz2")?,
    };
    let mut fields = Fields(sizes);
    fields.skip(8)?;
    match fields.u32()? as usize {
        count if count > MOST_FRAMES => Err(FilmFault::TooManyFrames),
        count => Ok(count),
    }
}

/// All frames of a track's tables, in a file of this length.
pub(crate) fn samples(stbl: &[u8], length: u64) -> Result<Samples, FilmFault> {
    let mut samples = Samples::new(length);
    let mut durations = Runs::of(expect(stbl, b"stts")?)?;
    let mut delays = find(stbl, b"ctts")?.map(Runs::of).transpose()?;
    let mut keys = find(stbl, b"stss")?.map(Fields);
    if let Some(keys) = &mut keys {
        keys.skip(8)?;
    }
    let mut next_key = next(&mut keys);
    let mut time = 0;
    for number in 1..=count(stbl)? {
        let duration = durations.next().ok_or(FilmFault::Damaged)?;
        // Read as signed whatever the version: QuickTime writes negative ones into version 0.
        let duration = i64::from(duration.cast_signed());
        let delay = delays.as_mut().and_then(Iterator::next).unwrap_or(0);
        let is_key = keys.is_none() || next_key == Some(number);
        if is_key {
            next_key = next(&mut keys);
        }
        samples.add(time + i64::from(delay.cast_signed()), duration, is_key)?;
        if duration < 0 {
            return Err(FilmFault::TimesNotAscending);
        }
        time += duration;
    }
    Ok(samples)
}

/// The number of the next key frame; they are counted from 1.
fn next(keys: &mut Option<Fields>) -> Option<usize> {
    Some(keys.as_mut()?.u32().ok()? as usize)
}

/// Where the last of the pictures begin in the file, if there are any.
pub(crate) fn furthest_chunk(stbl: &[u8]) -> Result<Option<u64>, FilmFault> {
    let (table, is_long) = match find(stbl, b"stco")? {
        Some(table) => (table, false),
        None => (expect(stbl, b"co64")?, true),
    };
    let mut fields = Fields(table);
    fields.skip(8)?;
    let offsets = std::iter::from_fn(|| {
        let offset = if is_long {
            fields.u64()
        } else {
            fields.u32().map(u64::from)
        };
        offset.ok()
    });
    Ok(offsets.max())
}
