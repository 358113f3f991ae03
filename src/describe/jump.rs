//! The jumps of the sport in words.

use crate::Label;
use turns_aloft_scenario::jump::JumpName;
use turns_aloft_words::{say, text};

impl Label for JumpName {
    fn label(self) -> &'static str {
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
}

/// The jump as the sport writes it, "3T", or in words.
pub fn notation(jump: JumpName, jump_turns: u8) -> String {
    match (jump.letters(), jump) {
        (Some(letters), _) => format!("{jump_turns}{letters}"),
        (None, JumpName::OffIce) => say!("jump-off-ice-turns", turns = jump_turns),
        (None, _) => text("jump-free-in-words").to_owned(),
    }
}
