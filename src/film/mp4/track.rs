//! What a track says of itself: whether it is a film, its units, its size.

use crate::codec::Codec;
use crate::fault::FilmFault;
use crate::mp4::boxes::{Boxes, expect};
use crate::mp4::fields::Fields;

/// Whether a track holds pictures.
pub(crate) fn is_film(trak: &[u8]) -> Result<bool, FilmFault> {
    let handler = expect(expect(trak, b"mdia")?, b"hdlr")?;
    Ok(handler.get(8..12) == Some(b"vide"))
}

/// What a track's head says.
pub(crate) struct Head {
    pub id: u32,
    pub is_enabled: bool,
    /// Width and height as they are shown, px; 0 where that isn't said.
    pub size_px: [u32; 2],
}

pub(crate) fn head(trak: &[u8]) -> Result<Head, FilmFault> {
    let mut fields = Fields(expect(trak, b"tkhd")?);
    let (version, flags) = fields.version()?;
    fields.time(version)?;
    fields.time(version)?;
    let id = fields.u32()?;
    fields.skip(4)?;
    fields.time(version)?;
    fields.skip(16)?;
    let mut matrix = [0; 9];
    for entry in &mut matrix {
        *entry = fields.i32()?;
    }
    let [a, b] = [matrix[0], matrix[1]];
    // 16.16 bits.
    let [width, height] = [fields.u32()? >> 16, fields.u32()? >> 16];
    let is_turned = b.unsigned_abs() > a.unsigned_abs();
    Ok(Head {
        id,
        is_enabled: flags & 1 == 1,
        size_px: if is_turned {
            [height, width]
        } else {
            [width, height]
        },
    })
}

/// The unit of the times of a head of the film (`mvhd`) or of a track's media (`mdhd`), s.
pub(crate) fn unit_s(head: &[u8]) -> Result<f64, FilmFault> {
    let mut fields = Fields(head);
    let (version, _) = fields.version()?;
    fields.time(version)?;
    fields.time(version)?;
    match fields.u32()? {
        0 => Err(FilmFault::Damaged),
        units => Ok(1.0 / f64::from(units)),
    }
}

/// Codec, and size as it is stored, of a track's first sample entry.
pub(crate) fn sample_entry(stbl: &[u8]) -> Result<(Codec, [u32; 2]), FilmFault> {
    let mut fields = Fields(expect(stbl, b"stsd")?);
    fields.skip(8)?;
    let entry = Boxes(fields.0).next().ok_or(FilmFault::Damaged)?;
    let (kind, content) = entry?;
    let mut fields = Fields(content);
    fields.skip(24)?;
    let size_px = [u32::from(fields.u16()?), u32::from(fields.u16()?)];
    Ok((Codec::of_sample_entry(kind), size_px))
}
