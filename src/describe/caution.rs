//! Cautions in words.

use serde::{Serialize, Serializer};

use crate::analysis::caution::Caution;
use crate::words::text;

impl Caution {
    pub fn text(self) -> &'static str {
        match self {
            Self::NoSafeNumber => text("caution-no-safe-number"),
            Self::Adults => text("caution-adults"),
            Self::Hands => text("caution-hands"),
            Self::Later => text("caution-later"),
            Self::Ask => text("caution-ask"),
        }
    }
}

/// As its text.
impl Serialize for Caution {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.text())
    }
}
