//! Why the frames of a film can't be found.

/// Why the frames of a film can't be found.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FilmFault {
    Empty,
    /// It ends before what it says of itself is complete.
    CutOff,
    /// What it says of itself contradicts itself.
    Damaged,
    /// Sound alone, or nothing.
    NoFilmTrack,
    StillPicture,
    /// No MP4, MOV or WebM.
    UnknownContainer,
    /// No frame can be shown without others.
    NoKeyFrame,
    /// A frame's time is not after that of the frame before it.
    TimesNotAscending,
    TooManyFrames,
    TablesTooLarge,
    /// Its edit list puts it together from several pieces, or changes its speed. Players disagree on
    /// what they show then.
    SeveralEdits,
}

impl FilmFault {
    pub const ALL: [Self; 11] = [
        Self::Empty,
        Self::CutOff,
        Self::Damaged,
        Self::NoFilmTrack,
        Self::StillPicture,
        Self::UnknownContainer,
        Self::NoKeyFrame,
        Self::TimesNotAscending,
        Self::TooManyFrames,
        Self::TablesTooLarge,
        Self::SeveralEdits,
    ];
}
