//! The inputs of a jump, numbers and words alike, as a person is told of them.

use crate::scenario::Scenario;
use crate::scenario::keys::{KEYS, Key};
use crate::words::text;

/// An input that is chosen among a few.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Word {
    Jump,
    JumpTurns,
    Table,
    Ground,
    Turning,
    HandsKeep,
}

#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Input {
    Number(&'static Key),
    Word(Word),
}

impl Word {
    pub const ALL: [Self; 6] = [
        Self::Jump,
        Self::JumpTurns,
        Self::Table,
        Self::Ground,
        Self::Turning,
        Self::HandsKeep,
    ];

    /// Its name in a file.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Jump => "jump",
            Self::JumpTurns => "jump_turns",
            Self::Table => "table",
            Self::Ground => "ground",
            Self::Turning => "turning",
            Self::HandsKeep => "hands_keep",
        }
    }

    /// Its name inside a sentence.
    pub fn inline(self) -> &'static str {
        match self {
            Self::Jump => text("word-jump-inline"),
            Self::JumpTurns => text("word-jump-turns-inline"),
            Self::Table => text("word-table-inline"),
            Self::Ground => text("word-ground-inline"),
            Self::Turning => text("word-turning-inline"),
            Self::HandsKeep => text("word-hands-keep-inline"),
        }
    }

    fn differs(self, a: &Scenario, b: &Scenario) -> bool {
        match self {
            Self::Jump => a.jump != b.jump,
            Self::JumpTurns => a.jump_turns != b.jump_turns,
            Self::Table => a.table != b.table,
            Self::Ground => a.ground != b.ground,
            Self::Turning => a.turning != b.turning,
            Self::HandsKeep => a.hands_keep != b.hands_keep,
        }
    }
}

impl Input {
    pub fn all() -> impl Iterator<Item = Self> {
        let words = Word::ALL.into_iter().map(Self::Word);
        words.chain(KEYS.iter().map(Self::Number))
    }

    /// By its name in a file.
    pub fn named(name: &str) -> Option<Self> {
        Self::all().find(|input| input.key() == name)
    }

    /// Its name in a file.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Number(key) => key.key,
            Self::Word(word) => word.key(),
        }
    }

    /// Those in which two jumps differ.
    pub fn differing(a: &Scenario, b: &Scenario) -> impl Iterator<Item = Self> {
        Self::all().filter(move |input| input.differs(a, b))
    }

    fn differs(self, a: &Scenario, b: &Scenario) -> bool {
        match self {
            Self::Number(key) => (key.get)(a) != (key.get)(b),
            Self::Word(word) => word.differs(a, b),
        }
    }

    /// Its name inside a sentence.
    pub fn inline(self) -> &'static str {
        match self {
            Self::Number(key) => key.inline(),
            Self::Word(word) => word.inline(),
        }
    }
}
