//! The rate at which a film was taken, as Android's cameras write it.
//!
//! Name and value stand in `meta` (QuickTime File Format, "Metadata"): names in `keys`, values in `ilst`.
//! Phones write it into `moov`, in a `meta` without a version; ffmpeg into `moov/udta`, with one.

use crate::fault::FilmFault;
use crate::mp4::boxes::{Boxes, expect, find};
use crate::mp4::fields::Fields;

const NAME: &[u8] = b"com.android.capture.fps";

/// Rates that a film may be taken at, frames a second. Our own limits: others are taken for no rate.
const RATES_HZ: std::ops::RangeInclusive<f64> = 1.0..=10_000.0;

/// Frames a second. What can't be read is as if it weren't there: the rate is shown and can be changed.
pub(crate) fn capture_rate_hz(moov: &[u8]) -> Option<f64> {
    let udta = find(moov, b"udta").ok().flatten().unwrap_or_default();
    [moov, udta].into_iter().find_map(|within| {
        let meta = find(within, b"meta").ok()??;
        let rate_hz = tagged(meta).ok()??;
        RATES_HZ.contains(&rate_hz).then_some(rate_hz)
    })
}

fn tagged(meta: &[u8]) -> Result<Option<f64>, FilmFault> {
    let has_version = meta.get(4..8) != Some(b"hdlr");
    let meta = meta.get(if has_version { 4.. } else { 0.. });
    let meta = meta.ok_or(FilmFault::Damaged)?;
    let names = expect(meta, b"keys")?.get(8..).unwrap_or_default();
    let Some(place) = Boxes(names).position(|name| name.is_ok_and(|(_, name)| name == NAME)) else {
        return Ok(None);
    };
    // Values have the place of their name for a kind, counted from 1.
    let kind = u32::try_from(place + 1).map_err(|_| FilmFault::Damaged)?;
    let value = expect(expect(meta, b"ilst")?, &kind.to_be_bytes())?;
    let mut fields = Fields(expect(value, b"data")?);
    let coded = fields.u32()?;
    fields.skip(4)?;
    number(coded, fields)
}

/// A number, by the way in which it is coded ("Well-known types" of the QuickTime File Format).
fn number(coded: u32, mut fields: Fields) -> Result<Option<f64>, FilmFault> {
    Ok(match (coded, fields.0.len()) {
        (1, _) => (std::str::from_utf8(fields.0).ok()).and_then(|text| text.trim().parse().ok()),
        (21 | 22 | 65 | 75, 1) => Some(f64::from(fields.u8()?)),
        (21 | 22 | 66 | 76, 2) => Some(f64::from(fields.u16()?)),
        (21 | 22 | 67 | 77, 4) => Some(f64::from(fields.u32()?)),
        (23, 4) => Some(f64::from(f32::from_bits(fields.u32()?))),
        (24, 8) => Some(f64::from_bits(fields.u64()?)),
        _ => None,
    })
}
