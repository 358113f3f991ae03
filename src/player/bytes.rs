//! Bytes of a file, without the rest of it.

use std::ops::Range;

use js_sys::Uint8Array;
use web_sys::File;

use crate::fault::PlayerFault;

pub async fn read(file: &File, range: Range<u64>) -> Result<Vec<u8>, PlayerFault> {
    let part = file
        .slice_with_f64_and_f64(range.start as f64, range.end as f64)
        .map_err(|_| PlayerFault::Unreadable)?;
    let buffer = part.array_buffer().await;
    let buffer = buffer.map_err(|_| PlayerFault::Unreadable)?;
    Ok(Uint8Array::new(&buffer).to_vec())
}
