//! The jumps of the sport in words.

use serde::{Serialize, Serializer};

use crate::say;
use crate::scenario::jump::{JumpName, Notation};
use crate::words::text;

impl JumpName {
    pub fn label(self) -> &'static str {
        match self {
            Self::ToeLoop => text("jump-toe-loop"),
            Self::Salchow => text("jump-salchow"),
            Self::Loop => text("jump-loop"),
            Self::Flip => text("jump-flip"),
            Self::Lutz => text("jump-lutz"),
            Self::Axel => text("jump-axel"),
            Self::OffIce => text("jump-off-ice"),
            Self::Free => text("jump-free"),
        }
    }

    /// The jump as the sport writes it, "3T", or in words.
    pub fn notation(self, jump_turns: u8) -> String {
        match (self.letters(), self) {
            (Some(letters), _) => format!("{jump_turns}{letters}"),
            (None, Self::OffIce) => say!("jump-off-ice-turns", turns = jump_turns),
            (None, _) => text("jump-free-in-words").to_owned(),
        }
    }
}

/// As its text.
impl Serialize for Notation {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.jump.notation(self.jump_turns))
    }
}
