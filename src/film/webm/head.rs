//! What stands before the blocks: the unit of time, and the tracks.

use crate::codec::Codec;
use crate::samples::Track;
use crate::times::Edit;
use crate::webm::element::{each, unsigned};

/// The unit of time where nothing else is said, s.
pub(crate) const USUAL_UNIT_S: f64 = 1e-3;

const UNIT_NS: u32 = 0x2a_d7b1;
const ENTRY: u32 = 0xae;
const NUMBER: u32 = 0xd7;
const KIND: u32 = 0x83;
const CODEC: u32 = 0x86;
const VIDEO: u32 = 0xe0;
const STORED_WIDTH: u32 = 0xb0;
const STORED_HEIGHT: u32 = 0xba;
const SHOWN_WIDTH: u32 = 0x54b0;
const SHOWN_HEIGHT: u32 = 0x54ba;
const SHOWN_UNIT: u32 = 0x54b2;

/// The kind of a track of pictures.
const FILM: u64 = 1;

/// The track of the pictures.
#[derive(Debug, PartialEq)]
pub(crate) struct FilmTrack {
    pub number: u64,
    pub codec: Codec,
    size_px: [u32; 2],
}

impl FilmTrack {
    pub fn into_track(self, unit_s: f64) -> Track {
        let [width_px, height_px] = self.size_px;
        Track {
            codec: self.codec,
            width_px,
            height_px,
            unit_s,
            edit: Edit::NONE,
            capture_rate_hz: None,
        }
    }
}

/// The unit of time, s, out of the segment's information; none where that is damaged.
pub(crate) fn unit_s(info: &[u8]) -> Option<f64> {
    let mut unit_s = Some(USUAL_UNIT_S);
    each(info, |id, content| {
        if id == UNIT_NS {
            let unit_ns = unsigned(content).filter(|&unit_ns| unit_ns > 0);
            unit_s = unit_ns.map(|unit_ns| unit_ns as f64 * 1e-9);
        }
    })?;
    unit_s
}

/// The first track of pictures, if there is one; none at all where the tracks are damaged.
pub(crate) fn film_track(tracks: &[u8]) -> Option<Option<FilmTrack>> {
    let (mut first, mut is_whole) = (None, true);
    each(tracks, |id, content| {
        if id == ENTRY && first.is_none() {
            match entry(content) {
                Some(found) => first = found,
                None => is_whole = false,
            }
        }
    })?;
    is_whole.then_some(first)
}

fn entry(content: &[u8]) -> Option<Option<FilmTrack>> {
    let (mut number, mut kind, mut codec, mut video) = (None, None, &[][..], &[][..]);
    each(content, |id, content| match id {
        NUMBER => number = unsigned(content),
        KIND => kind = unsigned(content),
        CODEC => codec = content,
        VIDEO => video = content,
        _ => {}
    })?;
    if kind? != FILM {
        return Some(None);
    }
    Some(Some(FilmTrack {
        number: number?,
        codec: Codec::of_codec_id(codec),
        size_px: size_px(video)?,
    }))
}

/// As it is shown, where that is said in pixels, else as it is stored.
fn size_px(video: &[u8]) -> Option<[u32; 2]> {
    let (mut stored, mut shown, mut unit) = ([0; 2], [None; 2], 0);
    each(video, |id, content| {
        let value = unsigned(content).unwrap_or(0);
        match id {
            STORED_WIDTH => stored[0] = value,
            STORED_HEIGHT => stored[1] = value,
            SHOWN_WIDTH => shown[0] = Some(value),
            SHOWN_HEIGHT => shown[1] = Some(value),
            SHOWN_UNIT => unit = value,
            _ => {}
        }
    })?;
    let side = |i: usize| {
        let shown: Option<u64> = shown[i].filter(|&px| px > 0 && unit == 0);
        u32::try_from(shown.unwrap_or(stored[i])).ok()
    };
    Some([side(0)?, side(1)?])
}
