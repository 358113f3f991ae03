//! A film's file as it is being read: which container it is, and who asks for its pieces.

use std::ops::Range;

use crate::chunks::{Chunks, Stop};
use crate::fault::FilmFault;
use crate::mp4::Mp4;
use crate::times::FilmTimes;
use crate::webm::WebM;

/// So many bytes tell one container from another.
const HEAD_BYTES: u64 = 16;

/// What is read at first: most films without many frames have their tables in it, or none.
const FIRST_BYTES: u64 = 65_536;

/// The kinds of boxes of which one is the first in an MP4 or MOV.
const FIRST_BOXES: [&[u8; 4]; 8] = [
    b"ftyp", b"styp", b"moov", b"mdat", b"free", b"skip", b"wide", b"pnot",
];

/// How far a reading has come.
#[derive(Debug, PartialEq)]
pub enum Progress {
    /// It goes on once these bytes of the file are supplied.
    Needs(Range<u64>),
    Read(FilmTimes),
}

/// A film's file as it is being read. `go_on` says which bytes it needs, `supply` gives it those; each
/// piece is forgotten when the next one comes.
pub struct Reading {
    chunks: Chunks,
    container: Option<Container>,
    asked: Option<Range<u64>>,
}

enum Container {
    Mp4(Mp4),
    WebM(WebM),
}

impl Reading {
    pub const fn new(length_bytes: u64) -> Self {
        Self {
            chunks: Chunks::new(length_bytes),
            container: None,
            asked: None,
        }
    }

    /// The bytes of the piece asked for last; fewer where the file has no more.
    pub fn supply(&mut self, bytes: Vec<u8>) {
        if let Some(asked) = self.asked.take() {
            self.chunks.supply(asked, bytes);
        }
    }

    pub fn go_on(&mut self) -> Result<Progress, FilmFault> {
        match self.read() {
            Ok(times) => Ok(Progress::Read(times)),
            Err(Stop::Needs(range)) => {
                self.asked = Some(range.clone());
                Ok(Progress::Needs(range))
            }
            Err(Stop::Fault(fault)) => Err(fault),
        }
    }

    fn read(&mut self) -> Result<FilmTimes, Stop> {
        if self.container.is_none() {
            self.container = Some(container(&self.chunks)?);
        }
        match &mut self.container {
            Some(Container::Mp4(mp4)) => mp4.go_on(&mut self.chunks),
            Some(Container::WebM(webm)) => webm.go_on(&self.chunks),
            None => Err(FilmFault::UnknownContainer.into()),
        }
    }
}

fn container(chunks: &Chunks) -> Result<Container, Stop> {
    if chunks.length() == 0 {
        return Err(FilmFault::Empty.into());
    }
    let head = chunks.bytes(0, HEAD_BYTES.min(chunks.length()), FIRST_BYTES)?;
    // ISO/IEC 14496-12 and QuickTime: the length of a box, then its kind.
    if head
        .get(4..8)
        .is_some_and(|kind| FIRST_BOXES.iter().any(|first| kind == *first))
    {
        Ok(Container::Mp4(Mp4::default()))
    } else if head.starts_with(&[0x1a, 0x45, 0xdf, 0xa3]) {
        Ok(Container::WebM(WebM::new(chunks.length())))
    } else {
        Err(other(head).into())
    }
}

/// What is no container of a film that we read.
fn other(head: &[u8]) -> FilmFault {
    const PICTURES: [&[u8]; 6] = [
        b"\x89PNG",
        b"\xff\xd8\xff",
        b"GIF8",
        b"BM",
        b"II*\0",
        b"MM\0*",
    ];
    const SOUNDS: [&[u8]; 3] = [b"ID3", b"fLaC", b"\xff\xfb"];
    let riff = head.strip_prefix(b"RIFF").and_then(|rest| rest.get(4..8));
    if riff == Some(b"WEBP") || PICTURES.iter().any(|start| head.starts_with(start)) {
        FilmFault::StillPicture
    } else if riff == Some(b"WAVE") || SOUNDS.iter().any(|start| head.starts_with(start)) {
        FilmFault::NoFilmTrack
    } else {
        FilmFault::UnknownContainer
    }
}
