//! Fragments (`moof`): some frames each, with what the film says of all of them as the default.

use crate::fault::FilmFault;
use crate::mp4::boxes::{Boxes, expect, find};
use crate::mp4::fields::Fields;
use crate::samples::Samples;

/// Set for a frame that needs others to be shown.
const NO_KEY: u32 = 0x1_0000;

/// What holds for the frames of a track where a fragment says nothing else.
#[derive(Clone, Copy)]
pub(crate) struct Defaults {
    duration: u32,
    flags: u32,
}

/// The defaults of a track, if the film is fragmented.
pub(crate) fn defaults(moov: &[u8], track: u32) -> Result<Option<Defaults>, FilmFault> {
    let Some(mvex) = find(moov, b"mvex")? else {
        return Ok(None);
    };
    for found in Boxes(mvex) {
        let (kind, content) = found?;
        let mut fields = Fields(content);
        if kind != *b"trex" {
            continue;
        }
        fields.skip(4)?;
        if fields.u32()? == track {
            fields.skip(4)?;
            let duration = fields.u32()?;
            fields.skip(4)?;
            let flags = fields.u32()?;
            return Ok(Some(Defaults { duration, flags }));
        }
    }
    Ok(None)
}

/// A track whose fragments are being added.
pub(crate) struct Fragments {
    pub track: u32,
    pub defaults: Defaults,
    /// When the next frame is decoded, in the track's units, if none says otherwise.
    pub next_time: i64,
    /// When the last frame so far is.
    pub last_time: i64,
}

impl Fragments {
    pub fn add(&mut self, moof: &[u8], samples: &mut Samples) -> Result<(), FilmFault> {
        for found in Boxes(moof) {
            let (kind, traf) = found?;
            if kind == *b"traf" {
                self.add_track(traf, samples)?;
            }
        }
        Ok(())
    }

    fn add_track(&mut self, traf: &[u8], samples: &mut Samples) -> Result<(), FilmFault> {
        let mut fields = Fields(expect(traf, b"tfhd")?);
        let (_, has) = fields.version()?;
        if fields.u32()? != self.track {
            return Ok(());
        }
        fields.skip(if has & 0x1 != 0 { 8 } else { 0 })?;
        fields.skip(if has & 0x2 != 0 { 4 } else { 0 })?;
        let mut defaults = self.defaults;
        if has & 0x8 != 0 {
            defaults.duration = fields.u32()?;
        }
        fields.skip(if has & 0x10 != 0 { 4 } else { 0 })?;
        if has & 0x20 != 0 {
            defaults.flags = fields.u32()?;
        }
        if let Some(start) = find(traf, b"tfdt")? {
            let mut fields = Fields(start);
            let (version, _) = fields.version()?;
            let time = i64::try_from(fields.time(version)?).map_err(|_| FilmFault::Damaged)?;
            if time < self.last_time {
                return Err(FilmFault::TimesNotAscending);
            }
            self.next_time = time;
        }
        for found in Boxes(traf) {
            let (kind, run) = found?;
            if kind == *b"trun" {
                self.add_run(run, defaults, samples)?;
            }
        }
        Ok(())
    }

    fn add_run(
        &mut self,
        run: &[u8],
        defaults: Defaults,
        samples: &mut Samples,
    ) -> Result<(), FilmFault> {
        let mut fields = Fields(run);
        let (_, has) = fields.version()?;
        let count = fields.u32()?;
        fields.skip(if has & 0x1 != 0 { 4 } else { 0 })?;
        let mut first_flags = (has & 0x4 != 0).then(|| fields.u32()).transpose()?;
        for _ in 0..count {
            let mut own = |bit, usual| {
                if has & bit != 0 {
                    fields.u32()
                } else {
                    Ok(usual)
                }
            };
            let duration = i64::from(own(0x100, defaults.duration)?);
            own(0x200, 0)?;
            let flags = own(0x400, defaults.flags)?;
            let flags = first_flags.take().unwrap_or(flags);
            // Read as signed whatever the version, as in the other tables.
            let delay = i64::from(own(0x800, 0)?.cast_signed());
            samples.add(
                self.next_time.saturating_add(delay),
                duration,
                flags & NO_KEY == 0,
            )?;
            self.last_time = self.next_time;
            self.next_time += duration;
        }
        Ok(())
    }
}
