//! The edit list (`elst`).

use crate::fault::FilmFault;
use crate::mp4::boxes::find;
use crate::mp4::fields::Fields;
use crate::times::Edit;

/// An entry that shows nothing has this time.
const NOTHING: i64 = -1;

/// A rate of 1, as 16.16 bits.
const USUAL_RATE: u32 = 0x1_0000;

/// What a track's edit list does; `movie_unit_s` is the unit of its durations, `unit_s` that of its times.
pub(crate) fn edit(trak: &[u8], movie_unit_s: f64, unit_s: f64) -> Result<Edit, FilmFault> {
    let list = find(trak, b"edts")?.map(|edts| find(edts, b"elst"));
    let Some(list) = list.transpose()?.flatten() else {
        return Ok(Edit::NONE);
    };
    let mut fields = Fields(list);
    let (version, _) = fields.version()?;
    let count = fields.u32()?;
    let (mut delay, mut edit) = (0, None);
    for _ in 0..count {
        let duration = fields.time(version)?;
        let time = if version == 0 {
            i64::from(fields.i32()?)
        } else {
            fields.i64()?
        };
        let rate = fields.u32()?;
        if time == NOTHING {
            // Behind the film it shows nothing, as if it weren't there.
            delay = if edit.is_none() { duration } else { delay };
        } else if time < 0 {
            return Err(FilmFault::Damaged);
        } else if edit.is_some() || rate != USUAL_RATE {
            return Err(FilmFault::SeveralEdits);
        } else {
            edit = Some((time, duration));
        }
    }
    let Some((time, duration)) = edit else {
        return Ok(Edit::NONE);
    };
    let from_s = time as f64 * unit_s;
    let duration_s = match duration {
        // Written before the length of the film was known.
        0 => f64::INFINITY,
        known => known as f64 * movie_unit_s,
    };
    Ok(Edit {
        offset_s: delay as f64 * movie_unit_s - from_s,
        from_s,
        to_s: from_s + duration_s,
    })
}
