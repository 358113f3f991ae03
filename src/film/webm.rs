//! WebM and Matroska (RFC 9559): elements, of which only the heads of the blocks are read, one for each
//! picture. Blocks stand between the pictures, so that small films are read whole, piece by piece.

mod element;
mod head;

use crate::chunks::{Chunks, Stop};
use crate::codec::Codec;
use crate::fault::FilmFault;
use crate::limits::{MOST_PARTS, MOST_TABLE_BYTES};
use crate::samples::Samples;
use crate::times::FilmTimes;
use crate::webm::element::{Element, element, number, unsigned};
use crate::webm::head::{FilmTrack, film_track, unit_s};

/// What is asked for beyond the head of an element. Heads of blocks stand as far apart as pictures are
/// large: in larger pieces they take fewer requests.
const AHEAD_BYTES: u64 = 1_048_576;

/// Most that an element's head, and that of a block, takes.
const HEAD_BYTES: u64 = 12;
const BLOCK_HEAD_BYTES: u64 = 12;

const SEGMENT: u32 = 0x1853_8067;
const INFO: u32 = 0x1549_a966;
const TRACKS: u32 = 0x1654_ae6b;
const CLUSTER: u32 = 0x1f43_b675;
const CLUSTER_TIME: u32 = 0xe7;
const SIMPLE_BLOCK: u32 = 0xa3;
const BLOCK_GROUP: u32 = 0xa0;
const BLOCK: u32 = 0xa1;
const REFERENCE: u32 = 0xfb;

/// Flags of a block: in a simple one, whether it is a key frame; whether it is not to be shown; and
/// whether it holds several frames.
const KEY: u8 = 0x80;
const INVISIBLE: u8 = 0x08;
const LACED: u8 = 0x06;

/// A film's file of which everything up to `at` has been looked at.
pub(crate) struct WebM {
    at: u64,
    parts: u32,
    /// Where the segment ends, if it says so.
    segment_end: Option<u64>,
    unit_s: Option<f64>,
    track: Option<FilmTrack>,
    cluster_time: i64,
    /// Whether the last block was a frame of the film.
    last_counted: bool,
    samples: Samples,
}

impl WebM {
    /// In a file of this length.
    pub const fn new(length: u64) -> Self {
        Self {
            at: 0,
            parts: 0,
            segment_end: None,
            unit_s: None,
            track: None,
            cluster_time: 0,
            last_counted: false,
            samples: Samples::new(length),
        }
    }

    pub fn go_on(&mut self, chunks: &Chunks) -> Result<FilmTimes, Stop> {
        while self.at < self.segment_end.unwrap_or(chunks.length()) {
            let part = self.part(chunks)?;
            self.at = self.look_at(&part, chunks)?;
            self.parts += 1;
            if self.parts > MOST_PARTS {
                return Err(FilmFault::TablesTooLarge.into());
            }
        }
        let track = self.track.take();
        let track = track.ok_or(match self.segment_end {
            None => FilmFault::CutOff,
            Some(_) => FilmFault::NoFilmTrack,
        })?;
        let unit_s = self.unit_s.unwrap_or(head::USUAL_UNIT_S);
        let samples = std::mem::replace(&mut self.samples, Samples::new(0));
        Ok(samples.into_times(track.into_track(unit_s))?)
    }

    fn part(&self, chunks: &Chunks) -> Result<Element, Stop> {
        let left = chunks.length() - self.at;
        let head = chunks.bytes(self.at, HEAD_BYTES.min(left), AHEAD_BYTES)?;
        let short = if left < HEAD_BYTES {
            FilmFault::CutOff
        } else {
            FilmFault::Damaged
        };
        let found = element(head).ok_or(short)?;
        let content = self.at + found.head_bytes as u64;
        let end = found.size.map(|size| content.saturating_add(size));
        if end.is_some_and(|end| end > chunks.length()) {
            return Err(FilmFault::CutOff.into());
        }
        Ok(Element {
            id: found.id,
            content,
            end,
        })
    }

    /// Takes what it says, and answers where the next element begins.
    fn look_at(&mut self, part: &Element, chunks: &Chunks) -> Result<u64, Stop> {
        // What these hold is looked at as if it stood beside them: so it doesn't matter where those of
        // unknown size end.
        match part.id {
            SEGMENT => {
                self.segment_end = part.end;
                return Ok(part.content);
            }
            CLUSTER | BLOCK_GROUP => return Ok(part.content),
            _ => {}
        }
        let end = part.end.ok_or(FilmFault::Damaged)?;
        // Asked for together with the element's head, which is read again when they are at hand.
        let content = |count: u64| {
            let bytes = chunks.bytes(self.at, part.content - self.at + count, AHEAD_BYTES)?;
            Ok::<_, Stop>(&bytes[bytes.len() - count as usize..])
        };
        let size = end - part.content;
        let whole = || {
            if size > MOST_TABLE_BYTES {
                return Err(FilmFault::TablesTooLarge.into());
            }
            content(size)
        };
        match part.id {
            INFO => self.unit_s = Some(unit_s(whole()?).ok_or(FilmFault::Damaged)?),
            TRACKS if self.track.is_none() => {
                let track = film_track(whole()?).ok_or(FilmFault::Damaged)?;
                self.track = Some(track.ok_or(FilmFault::NoFilmTrack)?);
            }
            CLUSTER_TIME => {
                let time = unsigned(whole()?).and_then(|time| i64::try_from(time).ok());
                self.cluster_time = time.ok_or(FilmFault::Damaged)?;
            }
            SIMPLE_BLOCK | BLOCK => {
                let head = content(BLOCK_HEAD_BYTES.min(size))?;
                self.block(head, part.id == SIMPLE_BLOCK)?;
            }
            // It follows its block in the group.
            REFERENCE if self.last_counted => self.samples.last_is_no_key(),
            _ => {}
        }
        Ok(end)
    }

    fn block(&mut self, head: &[u8], is_simple: bool) -> Result<(), FilmFault> {
        self.last_counted = false;
        let (number, rest) = number(head).ok_or(FilmFault::Damaged)?;
        let Some(track) = self.track.as_ref().filter(|track| track.number == number) else {
            return Ok(());
        };
        let [high, low, flags, frame @ ..] = rest else {
            return Err(FilmFault::Damaged);
        };
        if flags & LACED != 0 {
            return Err(FilmFault::Damaged);
        }
        // VP8 says it itself (RFC 6386, section 9.1), and not every writer says it again.
        let is_hidden =
            track.codec == Codec::Vp8 && frame.first().is_some_and(|tag| tag & 0x10 == 0);
        if flags & INVISIBLE != 0 || is_hidden {
            return Ok(());
        }
        let time = self
            .cluster_time
            .saturating_add(i64::from(i16::from_be_bytes([*high, *low])));
        self.samples.add(time, 0, !is_simple || flags & KEY != 0)?;
        self.last_counted = true;
        Ok(())
    }
}
