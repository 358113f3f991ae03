//! MP4 and MOV: a row of boxes, of which only the tables are read (`moov`, and `moof` of fragmented films).

mod boxes;
mod edit;
mod fields;
mod film;
mod fragment;
mod table;
mod tag;
mod track;

use crate::chunks::{Chunks, Stop};
use crate::fault::FilmFault;
use crate::limits::{MOST_PARTS, MOST_TABLE_BYTES};
use crate::mp4::film::Film;
use crate::times::FilmTimes;

/// What is asked for beyond the head of a box: often the next boxes are in it.
const AHEAD_BYTES: u64 = 65_536;

/// Boxes of the top row that can't be cut off without the film missing something.
const NEEDED: [&[u8; 4]; 4] = [b"ftyp", b"mdat", b"moov", b"moof"];

/// Brands of files that hold pictures (ISO/IEC 23008-12 and AVIF).
const PICTURE_BRANDS: [&[u8]; 5] = [b"heic", b"heix", b"mif1", b"avif", b"avis"];

/// A film's file of which everything up to `at` has been looked at.
#[derive(Default)]
pub(crate) struct Mp4 {
    at: u64,
    parts: u32,
    is_picture: bool,
    film: Option<Film>,
}

/// A box of the top row.
struct Part {
    kind: [u8; 4],
    content: u64,
    end: u64,
}

impl Mp4 {
    pub fn go_on(&mut self, chunks: &mut Chunks) -> Result<FilmTimes, Stop> {
        while self.at < chunks.length() {
            let Some(part) = self.part(chunks)? else {
                break;
            };
            self.look_at(&part, chunks)?;
            self.at = part.end;
            self.parts += 1;
            if self.parts > MOST_PARTS {
                return Err(FilmFault::TablesTooLarge.into());
            }
        }
        chunks.forget();
        match self.film.take() {
            Some(film) => Ok(film.into_times(chunks.length())?),
            None if self.is_picture => Err(FilmFault::StillPicture.into()),
            None => Err(FilmFault::CutOff.into()),
        }
    }

    /// The box at hand; none where what is appended to the film is no box.
    fn part(&self, chunks: &Chunks) -> Result<Option<Part>, Stop> {
        let left = chunks.length() - self.at;
        if left < 8 {
            return Ok(None);
        }
        let head = chunks.bytes(self.at, 16.min(left), AHEAD_BYTES)?;
        let (kind, size, head_bytes) = boxes::head(head)?;
        let size = size.unwrap_or(left);
        if size < head_bytes || size > left {
            if self.film.is_some() && !NEEDED.contains(&&kind) {
                return Ok(None);
            }
            return Err(FilmFault::CutOff.into());
        }
        Ok(Some(Part {
            kind,
            content: self.at + head_bytes,
            end: self.at + size,
        }))
    }

    fn look_at(&mut self, part: &Part, chunks: &Chunks) -> Result<(), Stop> {
        match &part.kind {
            b"ftyp" => {
                let count = (part.end - part.content).min(4);
                let brand = chunks.bytes(part.content, count, AHEAD_BYTES)?;
                self.is_picture = PICTURE_BRANDS.contains(&brand);
            }
            b"moov" if self.film.is_none() => {
                self.film = Film::of(tables(part, chunks)?).map(Some).map_err(|fault| {
                    if self.is_picture && fault == FilmFault::NoFilmTrack {
                        FilmFault::StillPicture
                    } else {
                        fault
                    }
                })?;
            }
            b"moof" => {
                if let Some(film) = &mut self.film {
                    film.add_fragment(tables(part, chunks)?)?;
                }
            }
            _ => {}
        }
        Ok(())
    }
}

/// The content of a box of tables.
fn tables<'a>(part: &Part, chunks: &'a Chunks) -> Result<&'a [u8], Stop> {
    let count = part.end - part.content;
    if count > MOST_TABLE_BYTES {
        return Err(FilmFault::TablesTooLarge.into());
    }
    chunks.bytes(part.content, count, AHEAD_BYTES)
}
