//! The track of the pictures among all tracks, with its frames as far as they are known.

use crate::fault::FilmFault;
use crate::mp4::boxes::{Boxes, expect};
use crate::mp4::edit::edit;
use crate::mp4::fragment::{Fragments, defaults};
use crate::mp4::table::{count, furthest_chunk, samples};
use crate::mp4::tag::capture_rate_hz;
use crate::mp4::track::{head, is_film, sample_entry, unit_s};
use crate::samples::{Samples, Track};
use crate::times::FilmTimes;

pub(crate) struct Film {
    track: Track,
    samples: Samples,
    fragments: Option<Fragments>,
    /// Where the last pictures that the tables know begin in the file.
    furthest: Option<u64>,
}

impl Film {
    pub fn of(moov: &[u8], length: u64) -> Result<Self, FilmFault> {
        let movie_unit_s = unit_s(expect(moov, b"mvhd")?)?;
        let (mut chosen, mut fault) = (None, FilmFault::NoFilmTrack);
        for found in Boxes(moov) {
            let (kind, trak) = found?;
            if kind != *b"trak" || !is_film(trak)? {
                continue;
            }
            let stbl = expect(expect(expect(trak, b"mdia")?, b"minf")?, b"stbl")?;
            let head = head(trak)?;
            let defaults = defaults(moov, head.id)?;
            // A picture that goes with the sound, or with the film, is no film.
            if defaults.is_none() && count(stbl)? == 1 {
                fault = FilmFault::StillPicture;
                continue;
            }
            // The first one that is shown by itself, else the first.
            if chosen.is_none() || head.is_enabled {
                let is_enabled = head.is_enabled;
                chosen = Some((trak, stbl, head, defaults));
                if is_enabled {
                    break;
                }
            }
        }
        let (trak, stbl, head, defaults) = chosen.ok_or(fault)?;
        let unit_s = unit_s(expect(expect(trak, b"mdia")?, b"mdhd")?)?;
        let (codec, stored_px) = sample_entry(stbl)?;
        let [width_px, height_px] = if head.size_px.contains(&0) {
            stored_px
        } else {
            head.size_px
        };
        let samples = samples(stbl, length)?;
        Ok(Self {
            track: Track {
                codec,
                width_px,
                height_px,
                unit_s,
                edit: edit(trak, movie_unit_s, unit_s)?,
                capture_rate_hz: capture_rate_hz(moov),
            },
            samples,
            fragments: defaults.map(|defaults| Fragments {
                track: head.id,
                defaults,
                next_time: 0,
                last_time: 0,
            }),
            furthest: furthest_chunk(stbl)?,
        })
    }

    pub fn add_fragment(&mut self, moof: &[u8]) -> Result<(), FilmFault> {
        match &mut self.fragments {
            Some(fragments) => fragments.add(moof, &mut self.samples),
            None => Ok(()),
        }
    }

    pub fn into_times(self, length: u64) -> Result<FilmTimes, FilmFault> {
        if self.furthest.is_some_and(|furthest| furthest >= length) {
            return Err(FilmFault::CutOff);
        }
        self.samples.into_times(self.track)
    }
}
