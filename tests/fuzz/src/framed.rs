//! A link's frame: without it nearly every made-up link would fail by its checksum alone.

use crc::{CRC_32_ISO_HDLC, Crc};
use data_encoding::BASE64URL_NOPAD;

/// The fields of a link of version 1, without frame and checksum.
pub fn fields(link: &[u8]) -> Option<Vec<u8>> {
    let payload = link.strip_prefix(b"jump.")?.strip_suffix(b".1")?;
    let mut bytes = BASE64URL_NOPAD.decode(payload).ok()?;
    bytes.truncate(bytes.len().checked_sub(4)?);
    Some(bytes)
}

/// A link with these fields.
pub fn link(fields: &[u8]) -> String {
    let crc = Crc::<u32>::new(&CRC_32_ISO_HDLC);
    let mut digest = crc.digest();
    digest.update(&1_u64.to_le_bytes());
    digest.update(fields);
    let sum = digest.finalize().to_le_bytes();
    format!(
        "jump.{}.1",
        BASE64URL_NOPAD.encode(&[fields, &sum].concat())
    )
}
