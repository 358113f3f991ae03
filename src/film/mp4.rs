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
    start: u64,
    head_bytes: u64,
    end: u64,
}

impl Part {
    const fn content_bytes(&self) -> u64 {
        self.end - self.start - self.head_bytes
    }

    /// So many bytes of its content. They are asked for together with its head, which is read again when
    /// they are at hand.
    fn content<'a>(&self, count: u64, chunks: &'a Chunks) -> Result<&'a [u8], Stop> {
        let bytes = chunks.bytes(self.start, self.head_bytes + count, AHEAD_BYTES)?;
        Ok(&bytes[bytes.len() - count as usize..])
    }

    /// All of its content, which are tables.
    fn tables<'a>(&self, chunks: &'a Chunks) -> Result<&'a [u8], Stop> {
        if self.content_bytes() > MOST_TABLE_BYTES {
            return Err(FilmFault::TablesTooLarge.into());
        }
        self.content(self.content_bytes(), chunks)
    }
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
            start: self.at,
            head_bytes,
            end: self.at + size,
        }))
    }

    fn look_at(&mut self, part: &Part, chunks: &Chunks) -> Result<(), Stop> {
        match &part.kind {
            b"ftyp" => {
                let brand = part.content(part.content_bytes().min(4), chunks)?;
                self.is_picture = PICTURE_BRANDS.contains(&brand);
            }
            b"moov" if self.film.is_none() => {
                self.film = Film::of(part.tables(chunks)?, chunks.length())
                    .map(Some)
                    .map_err(|fault| {
                        if self.is_picture && fault == FilmFault::NoFilmTrack {
                            FilmFault::StillPicture
                        } else {
                            fault
                        }
                    })?;
            }
            b"moof" => {
                if let Some(film) = &mut self.film {
                    film.add_fragment(part.tables(chunks)?)?;
                }
            }
            _ => {}
        }
        Ok(())
    }
}
