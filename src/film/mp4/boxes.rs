//! Boxes inside of tables: each says how long it is, and of what kind.

use crate::fault::FilmFault;

/// A box inside of others: its kind and its content.
type Found<'a> = ([u8; 4], &'a [u8]);

/// Kind, length with the head, and length of the head, of the box that begins there. Without a length it
/// goes on to the end of what it stands in.
pub(crate) fn head(bytes: &[u8]) -> Result<([u8; 4], Option<u64>, u64), FilmFault> {
    let short = bytes.first_chunk::<8>().ok_or(FilmFault::Damaged)?;
    let [a, b, c, d, kind @ ..] = *short;
    match u32::from_be_bytes([a, b, c, d]) {
        0 => Ok((kind, None, 8)),
        1 => {
            let long = bytes[8..].first_chunk::<8>().ok_or(FilmFault::Damaged)?;
            Ok((kind, Some(u64::from_be_bytes(*long)), 16))
        }
        size => Ok((kind, Some(u64::from(size)), 8)),
    }
}

/// The boxes in a row. What is left behind the last one and too short for another is no box.
pub(crate) struct Boxes<'a>(pub &'a [u8]);

impl<'a> Iterator for Boxes<'a> {
    type Item = Result<Found<'a>, FilmFault>;

    fn next(&mut self) -> Option<Self::Item> {
        (self.0.len() >= 8).then(|| {
            let found = split(self.0);
            self.0 = found.map_or(&[], |(_, rest)| rest);
            found.map(|(first, _)| first)
        })
    }
}

/// The first box, and what follows it.
fn split(bytes: &[u8]) -> Result<(Found<'_>, &[u8]), FilmFault> {
    let (kind, size, head_bytes) = head(bytes)?;
    let size = size.map_or(Ok(bytes.len()), usize::try_from);
    let size = size.map_err(|_| FilmFault::Damaged)?;
    let head_bytes = if head_bytes == 16 { 16 } else { 8 };
    let content = bytes.get(head_bytes..size).ok_or(FilmFault::Damaged)?;
    Ok(((kind, content), &bytes[size..]))
}

/// The content of the first box of this kind.
pub(crate) fn find<'a>(within: &'a [u8], kind: &[u8; 4]) -> Result<Option<&'a [u8]>, FilmFault> {
    for found in Boxes(within) {
        let (of, content) = found?;
        if of == *kind {
            return Ok(Some(content));
        }
    }
    Ok(None)
}

/// As `find`, where there must be one.
pub(crate) fn expect<'a>(within: &'a [u8], kind: &[u8; 4]) -> Result<&'a [u8], FilmFault> {
    find(within, kind)?.ok_or(FilmFault::Damaged)
}
