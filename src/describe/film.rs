//! What is wrong with a film, in one sentence each.

use crate::Sentence;
use turns_aloft_film::limits::MOST_FRAMES;
use turns_aloft_film::{Codec, FilmFault};
use turns_aloft_words::{say, text};

impl Sentence for FilmFault {
    fn sentence(&self) -> String {
        match self {
            Self::Empty => text("film-empty").to_owned(),
            Self::CutOff => text("film-cut-off").to_owned(),
            Self::Damaged => text("film-damaged").to_owned(),
            Self::NoFilmTrack => text("film-no-film-track").to_owned(),
            Self::StillPicture => text("film-still-picture").to_owned(),
            Self::UnknownContainer => text("film-unknown-container").to_owned(),
            Self::NoKeyFrame => text("film-no-key-frame").to_owned(),
            Self::TimesNotAscending => text("film-times-not-ascending").to_owned(),
            Self::TooManyFrames => say!("film-too-many-frames", most = MOST_FRAMES),
            Self::TablesTooLarge => text("film-tables-too-large").to_owned(),
            Self::SeveralEdits => text("film-several-edits").to_owned(),
        }
    }
}

/// What to do where the browser does not play a film.
pub fn not_played(codec: &Codec) -> String {
    say!("film-not-played", codec = codec.name())
}
