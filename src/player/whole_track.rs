//! The table of an MP4 or MOV file (`moov`; ISO/IEC 14496-12), changed so that every player shows every
//! frame of the picture.
//!
//! Engines differ in what they make of an edit list (`elst`) that cuts a film: some apply it, others show
//! frames from the beginning but still end where the edit does. And without any list, a frame just
//! before a key frame can't be reached in some where frames are stored in another order than shown. So
//! there is one edit: all of the track. Sound and other tracks, which may shift the clock, are left out.

/// A box: its name, and where it stands in the bytes around it, with its head.
struct Part<'a> {
    name: &'a [u8],
    all: &'a [u8],
    /// Behind the head.
    content: &'a [u8],
}

const HEAD: usize = 8;

/// The boxes that stand one after another in `bytes`; ends where one has no meaningful size.
fn parts(bytes: &[u8]) -> Vec<Part<'_>> {
    let mut found = Vec::new();
    let mut rest = bytes;
    while let Some(size) = u32_at(rest, 0).map(|size| size as usize)
        && size >= HEAD
        && size <= rest.len()
    {
        let (all, behind) = rest.split_at(size);
        found.push(Part {
            name: &all[4..HEAD],
            all,
            content: &all[HEAD..],
        });
        rest = behind;
    }
    found
}

fn u32_at(bytes: &[u8], at: usize) -> Option<u32> {
    let four = bytes.get(at..at + 4)?;
    Some(u32::from_be_bytes(four.try_into().ok()?))
}

fn u64_at(bytes: &[u8], at: usize) -> Option<u64> {
    let eight = bytes.get(at..at + 8)?;
    Some(u64::from_be_bytes(eight.try_into().ok()?))
}

fn write(name: &[u8], content: &[u8]) -> Vec<u8> {
    let size = u32::try_from(HEAD + content.len()).expect("a table is smaller than 4 GB");
    [&size.to_be_bytes(), name, content].concat()
}

fn inside<'a>(bytes: &'a [u8], path: &[&[u8; 4]]) -> Option<&'a [u8]> {
    path.iter().try_fold(bytes, |bytes, name| {
        let found = parts(bytes).into_iter().find(|part| part.name == *name)?;
        Some(found.content)
    })
}

/// Units a second, and duration in them, of `mvhd` and `mdhd`.
fn clock(header: &[u8]) -> Option<(u32, u64)> {
    match header.first()? {
        0 => Some((u32_at(header, 12)?, u32_at(header, 16)?.into())),
        _ => Some((u32_at(header, 20)?, u64_at(header, 24)?)),
    }
}

fn is_picture(track: &[u8]) -> bool {
    inside(track, &[b"mdia", b"hdlr"]).and_then(|handler| handler.get(8..12)) == Some(b"vide")
}

/// Whether the frames' tables stand all over the file instead.
pub fn in_fragments(table: &[u8]) -> bool {
    inside(table, &[b"mvex"]).is_some()
}

/// The table with the picture's track alone, all of it, whose first frame is shown `first_s` after the
/// beginning of its own time line. None where the table has none.
pub fn whole(table: &[u8], first_s: f64) -> Option<Vec<u8>> {
    let head = parts(table).into_iter().find(|part| part.name == b"mvhd")?;
    let track = parts(table)
        .into_iter()
        .find(|part| part.name == b"trak" && is_picture(part.content))?;
    let (film_units, _) = clock(head.content)?;
    let (units, duration) = clock(inside(track.content, &[b"mdia", b"mdhd"])?)?;
    let first = (first_s * f64::from(units)).round() as u64;
    // Rounded up, and with a second that no frame needs.
    let seconds = duration.checked_div(units.into())? + 2;
    let edit = [
        &[1, 0, 0, 0][..],
        &1_u32.to_be_bytes(),
        &(seconds * u64::from(film_units)).to_be_bytes(),
        &first.to_be_bytes(),
        &[0, 1, 0, 0],
    ]
    .concat();
    let mut content = Vec::new();
    for part in parts(track.content) {
        if part.name != b"edts" {
            content.extend_from_slice(part.all);
        }
        if part.name == b"tkhd" {
            content.extend(write(b"edts", &write(b"elst", &edit)));
        }
    }
    Some([head.all, &write(b"trak", &content)].concat())
}

/// Where in the table of a file in fragments the names of edit lists stand: called `free`, they count
/// no more.
pub fn edits(table: &[u8]) -> Vec<usize> {
    let at = |part: &Part| part.all.as_ptr() as usize - table.as_ptr() as usize;
    parts(table)
        .iter()
        .filter(|track| track.name == b"trak")
        .flat_map(|track| parts(track.content))
        .filter(|part| part.name == b"edts")
        .map(|part| at(&part) + 4)
        .collect()
}
