//! How the pictures of a film are encoded.

/// How the pictures of a film are encoded.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Codec {
    H264,
    Hevc,
    Vp8,
    Vp9,
    Av1,
    /// What the file calls it, in printable ASCII.
    Other(String),
}

/// Which browsers are known to play a codec. A browser's own word on a film counts more.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Played {
    /// Chromium and Firefox played it, as Debian has them (measured; `tests/MEASUREMENTS.md`).
    Widely,
    /// Firefox played it, Debian's Chromium did not: it depends on the system as well.
    BySome,
    Unknown,
}

impl Codec {
    /// By the four letters of an MP4's or MOV's sample entry.
    pub(crate) fn of_sample_entry(kind: [u8; 4]) -> Self {
        match &kind {
            b"avc1" | b"avc3" => Self::H264,
            b"hvc1" | b"hev1" | b"dvh1" | b"dvhe" => Self::Hevc,
            b"vp08" => Self::Vp8,
            b"vp09" => Self::Vp9,
            b"av01" => Self::Av1,
            _ => Self::other(&kind),
        }
    }

    /// By a WebM's or Matroska's name of it.
    pub(crate) fn of_codec_id(id: &[u8]) -> Self {
        match id {
            b"V_MPEG4/ISO/AVC" => Self::H264,
            b"V_MPEGH/ISO/HEVC" => Self::Hevc,
            b"V_VP8" => Self::Vp8,
            b"V_VP9" => Self::Vp9,
            b"V_AV1" => Self::Av1,
            _ => Self::other(id),
        }
    }

    fn other(name: &[u8]) -> Self {
        /// As much as a sentence has room for. Our choice.
        const LONGEST: usize = 32;
        let printable = name.iter().filter(|byte| byte.is_ascii_graphic());
        Self::Other(
            printable
                .take(LONGEST)
                .map(|&byte| char::from(byte))
                .collect(),
        )
    }

    /// The same in every language.
    pub fn name(&self) -> &str {
        match self {
            Self::H264 => "H.264",
            Self::Hevc => "HEVC (H.265)",
            Self::Vp8 => "VP8",
            Self::Vp9 => "VP9",
            Self::Av1 => "AV1",
            Self::Other(name) => name,
        }
    }

    pub const fn played(&self) -> Played {
        match self {
            Self::H264 | Self::Vp8 | Self::Vp9 | Self::Av1 => Played::Widely,
            Self::Hevc => Played::BySome,
            Self::Other(_) => Played::Unknown,
        }
    }

    /// Whether frames stand in the file in the order in which they are shown, always.
    pub(crate) const fn is_in_order(&self) -> bool {
        matches!(self, Self::Vp8 | Self::Vp9 | Self::Av1)
    }
}
