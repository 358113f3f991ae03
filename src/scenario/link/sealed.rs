//! Bytes as a text of an address: `PAYLOAD.VERSION`, the payload in base64 with a checksum at its end.

use base64ct::{Base64UrlUnpadded, Encoding};
use crc::{CRC_32_ISO_HDLC, Crc, NoTable};

use crate::link::unreadable::Unreadable;

const CHECKSUM_BYTES: usize = 4;

/// No table: a link is short, and the page is downloaded.
const CHECKSUM: Crc<u32, NoTable> = Crc::<u32, NoTable>::new(&CRC_32_ISO_HDLC);

/// A link that begins with `mark`.
pub fn seal(mark: &str, mut bytes: Vec<u8>, version: u64) -> String {
    bytes.extend(checksum(&bytes, version).to_le_bytes());
    let payload = Base64UrlUnpadded::encode_string(&bytes);
    format!("{mark}{payload}.{version}")
}

/// The bytes and the version of a link without its mark, of `longest` characters at most and of no version
/// after the `newest`.
pub fn unseal(rest: &str, longest: usize, newest: u64) -> Result<(Vec<u8>, u64), Unreadable> {
    if rest.len() > longest {
        return Err(Unreadable::TooLong);
    }
    let (payload, version) = rest.split_once('.').ok_or(Unreadable::Damaged)?;
    let version = version_of(version).ok_or(Unreadable::Damaged)?;
    if version > newest {
        let known = newest;
        return Err(Unreadable::Newer { version, known });
    }
    let mut bytes = Base64UrlUnpadded::decode_vec(payload).map_err(|_| Unreadable::Damaged)?;
    let sum = bytes
        .split_last_chunk::<CHECKSUM_BYTES>()
        .map(|(bytes, sum)| u32::from_le_bytes(*sum) == checksum(bytes, version));
    if sum != Some(true) {
        return Err(Unreadable::Damaged);
    }
    bytes.truncate(bytes.len() - CHECKSUM_BYTES);
    Ok((bytes, version))
}

/// Digits and nothing else, as they are written.
fn version_of(text: &str) -> Option<u64> {
    let plain = text.bytes().all(|byte| byte.is_ascii_digit()) && !text.starts_with('0');
    text.parse().ok().filter(|_| plain)
}

/// Over the version too: the digit behind the payload may be what was damaged.
fn checksum(payload: &[u8], version: u64) -> u32 {
    let mut digest = CHECKSUM.digest();
    digest.update(&version.to_le_bytes());
    digest.update(payload);
    digest.finalize()
}
