//! A jump, and if wanted a second one beside it, as the text behind the `#` of an address.
//!
//! `jump.PAYLOAD.2`: the jumps' fields and a checksum in base64, then the version. Only characters
//! that no program writes differently in an address (RFC 3986, unreserved); the version stands last
//! because some programs cut punctuation off an address's end, and a payload may end in it.
//!
//! A link is kept for years in other people's messages, so every version is read for ever. Version 1
//! has the same fields; it was made before the body was refined. A scenario with something new in it needs a
//! version of its own: version 3 is written where a jump was led by hand, version 2 for all others.

mod bytes;
mod payload;
mod unreadable;

use base64ct::{Base64UrlUnpadded, Encoding};
use crc::{CRC_32_ISO_HDLC, Crc, NoTable};

use crate::file;
pub use crate::link::unreadable::Unreadable;
use crate::scenario::Scenario;

/// Newest version that is read.
pub const VERSION: u64 = 3;

/// First version whose jumps were flown with the body as it is now.
const PRESENT_BODY: u64 = 2;

/// Room for two scenarios that each fill a file, in base64.
pub const LONGEST: usize = 2 * file::LARGEST_BYTES / 3 * 4;

/// What every link begins with.
const OURS: &str = "jump.";

const CHECKSUM_BYTES: usize = 4;

/// No table: a link is short, and the page is downloaded.
const CHECKSUM: Crc<u32, NoTable> = Crc::<u32, NoTable>::new(&CRC_32_ISO_HDLC);

/// What a link holds, and how old it is.
#[derive(Debug, Clone, PartialEq)]
pub struct Link {
    pub jump: Scenario,
    /// The one to compare with.
    pub reference: Option<Scenario>,
    /// Made before the body was refined: the turns may have been others then.
    pub earlier_body: bool,
}

/// The text for behind the `#`, without it.
pub fn to_fragment(jump: &Scenario, reference: Option<&Scenario>) -> String {
    let is_led = |jump: &Scenario| jump.led.is_some();
    let version = if is_led(jump) || reference.is_some_and(is_led) {
        VERSION
    } else {
        PRESENT_BODY
    };
    let mut bytes = payload::write(jump, reference);
    bytes.extend(checksum(&bytes, version).to_le_bytes());
    let payload = Base64UrlUnpadded::encode_string(&bytes);
    format!("{OURS}{payload}.{version}")
}

/// Reads what stands behind the `#`; none if that is no link of ours at all.
pub fn from_fragment(fragment: &str) -> Option<Result<Link, Unreadable>> {
    fragment.strip_prefix(OURS).map(read)
}

fn read(rest: &str) -> Result<Link, Unreadable> {
    if rest.len() > LONGEST {
        return Err(Unreadable::TooLong);
    }
    let (payload, version) = rest.split_once('.').ok_or(Unreadable::Damaged)?;
    let version = version_of(version).ok_or(Unreadable::Damaged)?;
    if version > VERSION {
        return Err(Unreadable::Newer(version));
    }
    let bytes = Base64UrlUnpadded::decode_vec(payload).map_err(|_| Unreadable::Damaged)?;
    let (bytes, sum) = bytes
        .split_last_chunk::<CHECKSUM_BYTES>()
        .ok_or(Unreadable::Damaged)?;
    if u32::from_le_bytes(*sum) != checksum(bytes, version) {
        return Err(Unreadable::Damaged);
    }
    let (jump, reference) = payload::read(bytes)?;
    Ok(Link {
        jump,
        reference,
        earlier_body: version < PRESENT_BODY,
    })
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
