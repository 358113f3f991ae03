//! What the user asks about the jump. One question is in sight at a time; its answer is worked out
//! piece by piece, so that no frame waits for it.

use serde::{Deserialize, Serialize};

use crate::Session;
use crate::readings::Reading;
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

impl Session {
    pub const fn question(&self) -> Question {
        self.question
    }

    pub fn ask(&mut self, question: Question) {
        self.question = question;
    }

    /// Works on the answer in sight, on what the hands hold and on the marks as long as there is
    /// something to do and there is `more` time; always a piece of it.
    pub fn poll(&mut self, mut more: impl FnMut() -> bool) {
        self.computing = false;
        let question = self.question;
        loop {
            let (answers, basis) = self.answers_and_basis();
            if !answers.poll(question, &basis) {
                return;
            }
            self.computing = true;
            if !more() {
                return;
            }
        }
    }

    /// Whether the answer in sight has only just changed, and may not be complete yet.
    pub const fn is_computing(&self) -> bool {
        self.computing
    }

    /// The answer in sight as lines of text.
    pub fn answers(&self) -> Vec<Reading> {
        match self.question {
            Question::Jump => Vec::new(),
            Question::Why => self.why_readings(),
            Question::Goal => self.goal_readings(),
            Question::Map => self.map_readings(),
            Question::Compare => self.compare_readings(),
        }
    }
}
