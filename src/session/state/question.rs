//! What the user asks about the jump: one question is in sight at a time.

use serde::{Deserialize, Serialize};

use turns_aloft_words::text;

#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Question {
    /// What is it like: the jump's own numbers.
    #[default]
    Jump,
    /// Where did the turns go?
    Why,
    /// What would win the missing ones?
    #[serde(rename = "win")]
    Goal,
    /// What if two numbers were different?
    Map,
    /// How does it differ from another attempt?
    Compare,
}

impl Question {
    pub const ALL: [Self; 5] = [Self::Jump, Self::Why, Self::Goal, Self::Map, Self::Compare];

    /// Tells it from the others, whatever is spoken.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Jump => "Jump",
            Self::Why => "Why",
            Self::Goal => "Goal",
            Self::Map => "Map",
            Self::Compare => "Compare",
        }
    }

    pub fn label(self) -> &'static str {
        match self {
            Self::Jump => text("question-jump"),
            Self::Why => text("question-why"),
            Self::Goal => text("question-goal"),
            Self::Map => text("question-map"),
            Self::Compare => text("question-compare"),
        }
    }
}
