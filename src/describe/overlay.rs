//! A camera and gravity in words.

use crate::Sentence;
use turns_aloft_overlay::{NoCamera, RateCheck};
use turns_aloft_words::{decimal, say, text};

impl Sentence for NoCamera {
    fn sentence(&self) -> String {
        match self {
            Self::NoPair => text("overlay-no-pair").to_owned(),
        }
    }
}

impl Sentence for RateCheck {
    fn sentence(&self) -> String {
        match self {
            Self::Right => text("overlay-rate-right").to_owned(),
            Self::Other { frames_a_second } => {
                say!("overlay-rate-other", rate = decimal(*frames_a_second, 0))
            }
            Self::None => text("overlay-rate-none").to_owned(),
            Self::CannotTell => text("overlay-rate-cannot-tell").to_owned(),
        }
    }
}
