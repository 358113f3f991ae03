//! A link's frame: without it nearly every made-up link would fail by its checksum alone.

use crc::{CRC_32_ISO_HDLC, Crc};
use data_encoding::BASE64URL_NOPAD;
use turns_aloft::scenario::link::VERSION;

/// The fields of a link of either version, without frame and checksum.
pub fn fields(link: &[u8]) -> Option<Vec<u8>> {
    let rest = link.strip_prefix(b"jump.")?;
    let payload =
        (1..=VERSION).find_map(|version| rest.strip_suffix(format!(".{version}").as_bytes()))?;
    let mut bytes = BASE64URL_NOPAD.decode(payload).ok()?;
    bytes.truncate(bytes.len().checked_sub(4)?);
    Some(bytes)
}

/// A link of this version with these fields.
pub fn link(version: u64, fields: &[u8]) -> String {
    let crc = Crc::<u32>::new(&CRC_32_ISO_HDLC);
    let mut digest = crc.digest();
    digest.update(&version.to_le_bytes());
    digest.update(fields);
    let sum = digest.finalize().to_le_bytes();
    format!(
        "jump.{}.{version}",
        BASE64URL_NOPAD.encode(&[fields, &sum].concat())
    )
}
