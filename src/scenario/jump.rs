//! The jumps of the sport and the turns their names owe.
//!
//! Toe loop, Salchow, loop, flip and Lutz owe as many turns as the name says, the Axel half a turn
//! more because it is the only one with a forward take-off; all land backwards. (General
//! encyclopaedia and press descriptions, secondary.)

use std::f64::consts::{PI, TAU};

use serde::{Deserialize, Serialize};

use turns_aloft_physics::plan::Turning;

/// Fewest and most turns in a jump's name. Five-turn jumps are listed since ISU Communication
/// 2656 (2024/25), as summarised by a secondary source.
pub const JUMP_TURNS: [u8; 2] = [1, 5];

#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum JumpName {
    ToeLoop,
    Salchow,
    Loop,
    Flip,
    Lutz,
    Axel,
    /// A turn jumped from the floor or a trampoline, facing forward.
    OffIce,
    /// Nothing owed.
    Free,
}

impl JumpName {
    pub const ALL: [Self; 8] = [
        Self::ToeLoop,
        Self::Salchow,
        Self::Loop,
        Self::Flip,
        Self::Lutz,
        Self::Axel,
        Self::OffIce,
        Self::Free,
    ];

    /// The form used in scenario files and on the command line.
    pub const fn key(self) -> &'static str {
        match self {
            Self::ToeLoop => "toe_loop",
            Self::Salchow => "salchow",
            Self::Loop => "loop",
            Self::Flip => "flip",
            Self::Lutz => "lutz",
            Self::Axel => "axel",
            Self::OffIce => "off_ice",
            Self::Free => "free",
        }
    }

    /// The sport's letters (ISU Communication 2168, 2018/19); none off the ice.
    pub const fn letters(self) -> Option<&'static str> {
        match self {
            Self::ToeLoop => Some("T"),
            Self::Salchow => Some("S"),
            Self::Loop => Some("Lo"),
            Self::Flip => Some("F"),
            Self::Lutz => Some("Lz"),
            Self::Axel => Some("A"),
            Self::OffIce | Self::Free => None,
        }
    }

    /// Whether the sport's rule calls it.
    pub const fn is_called(self) -> bool {
        self.letters().is_some()
    }

    /// Turns owed from entry to landing; a free jump owes nothing.
    pub fn turns_owed(self, jump_turns: u8) -> Option<f64> {
        match self {
            Self::Free => None,
            Self::Axel => Some(f64::from(jump_turns) + 0.5),
            _ => Some(f64::from(jump_turns)),
        }
    }

    /// Heading of the entry, before any turning on the ice: forward along the travel for an Axel
    /// and off the ice, backward for the others.
    pub const fn entry_heading_rad(self) -> f64 {
        match self {
            Self::Axel | Self::OffIce | Self::Free => 0.0,
            _ => PI,
        }
    }

    /// Heading that the landing has to face.
    pub fn landing_heading_rad(self, jump_turns: u8, turning: Turning) -> Option<f64> {
        let owed = self.turns_owed(jump_turns)?;
        Some(self.entry_heading_rad() + turning.sign() * TAU * owed)
    }
}
