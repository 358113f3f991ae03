//! Cautions in words.

use crate::Text;
use turns_aloft_analysis::caution::Caution;
use turns_aloft_words::text;

impl Text for Caution {
    fn text(self) -> &'static str {
        match self {
            Self::NoSafeNumber => text("caution-no-safe-number"),
            Self::Adults => text("caution-adults"),
            Self::Hands => text("caution-hands"),
            Self::Later => text("caution-later"),
            Self::Ask => text("caution-ask"),
        }
    }
}
