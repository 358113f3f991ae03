//! The address of a film for the `<video>` element.

use js_sys::{Array, Uint8Array};
use wasm_bindgen::JsValue;
use web_sys::{Blob, BlobPropertyBag, File, Url};

use crate::bytes::read;
use crate::fault::PlayerFault;
use crate::whole_track::{edits, in_fragments, whole};

const WEBM: &[u8] = &[0x1A, 0x45, 0xDF, 0xA3];
/// What stands in front of a box: its size, its name, and its size again where it is 4 GB or more.
const HEAD: u64 = 16;
const FREE: &[u8] = b"free";

/// An object URL, which ends with this.
pub struct Source(String);

impl Source {
    /// Of the file as it is. Its kind is told by its beginning: the name of a film may say another, by
    /// which engines refuse it.
    pub async fn of(file: &File) -> Result<Self, PlayerFault> {
        let kind = match read(file, 0..4).await?.as_slice() {
            WEBM => "video/webm",
            _ => "video/mp4",
        };
        file.slice_with_f64_and_f64_and_content_type(0.0, file.size(), kind)
            .and_then(|film| Self::new(&film))
            .map_err(|_| PlayerFault::Unreadable)
    }

    /// Of a file whose edit list leaves out some of its frames, with all of them; the first starts at
    /// `first_s` by the file. Put together from parts of the file and a few bytes of ours: nothing is
    /// copied, but Firefox reads all that stands before the tables.
    pub async fn of_all_frames(file: &File, first_s: f64) -> Result<Self, PlayerFault> {
        let parts = Array::new();
        add_parts(file, first_s, &parts).await?;
        let options = BlobPropertyBag::new();
        options.set_type("video/mp4");
        Blob::new_with_blob_sequence_and_options(&parts, &options)
            .and_then(|film| Self::new(&film))
            .map_err(|_| PlayerFault::Unreadable)
    }

    fn new(film: &Blob) -> Result<Self, JsValue> {
        Url::create_object_url_with_blob(film).map(Self)
    }

    pub fn address(&self) -> &str {
        &self.0
    }
}

impl Drop for Source {
    fn drop(&mut self) {
        Url::revoke_object_url(&self.0).ok();
    }
}

/// The file with its table as `whole_track` has it: behind everything else, where it moves nothing, or
/// changed in its place where fragments have to follow it.
async fn add_parts(file: &File, first_s: f64, parts: &Array) -> Result<(), PlayerFault> {
    let end = file.size() as u64;
    let Some((start, content, behind)) = find_table(file, end).await? else {
        parts.push(file);
        return Ok(());
    };
    let table = read(file, content..behind).await?;
    if in_fragments(&table) {
        let mut from = 0;
        for at in edits(&table) {
            let at = content + at as u64;
            parts.push(&slice(file, from, at)?);
            parts.push(&Uint8Array::from(FREE));
            from = at + FREE.len() as u64;
        }
        parts.push(&slice(file, from, end)?);
        return Ok(());
    }
    match whole(&table, first_s) {
        Some(table) => {
            parts.push(&slice(file, 0, start + 4)?);
            parts.push(&Uint8Array::from(FREE));
            parts.push(&slice(file, start + 8, end)?);
            let size = u32::try_from(table.len() + 8).map_err(|_| PlayerFault::Unplayable)?;
            parts.push(&Uint8Array::from(&size.to_be_bytes()[..]));
            parts.push(&Uint8Array::from(&b"moov"[..]));
            parts.push(&Uint8Array::from(&table[..]));
        }
        None => {
            parts.push(file);
        }
    }
    Ok(())
}

/// Where the table's box, its content and what follows it start.
async fn find_table(file: &File, end: u64) -> Result<Option<(u64, u64, u64)>, PlayerFault> {
    let mut start = 0;
    while start + 8 <= end {
        let head = read(file, start..(start + HEAD).min(end)).await?;
        let (size, rest) = head.split_at(4);
        let size = size
            .iter()
            .fold(0, |size, &byte| size << 8 | u64::from(byte));
        let (size, content) = match size {
            0 => (end - start, 8),
            1 if rest.len() == 12 => {
                let large = rest[4..].iter();
                (
                    large.fold(0, |size, &byte| size << 8 | u64::from(byte)),
                    HEAD,
                )
            }
            size => (size, 8),
        };
        let behind = start.saturating_add(size);
        if size < content || behind > end {
            break;
        }
        if rest.starts_with(b"moov") {
            return Ok(Some((start, start + content, behind)));
        }
        start = behind;
    }
    Ok(None)
}

fn slice(file: &File, start: u64, end: u64) -> Result<JsValue, PlayerFault> {
    file.slice_with_f64_and_f64(start as f64, end as f64)
        .map(JsValue::from)
        .map_err(|_| PlayerFault::Unreadable)
}
