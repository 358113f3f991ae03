//! What the user is told.

use std::sync::Arc;

use turns_aloft_lesson::{Lesson, Step};

/// One sentence for the user, until the next one or until dismissed.
#[derive(Debug, Clone)]
pub(crate) struct Notice {
    pub sentence: String,
    /// It tells of something that can be brought back.
    pub brings_back: Option<BroughtBack>,
}

/// What is brought back.
#[derive(Debug, Clone)]
pub(crate) enum BroughtBack {
    /// What undoing the last change brings back.
    LastChange,
    /// A step of the lesson's draft, and where it stood.
    DraftStep(usize, Box<Step>),
    /// A whole draft.
    Draft(Arc<Lesson>),
}

impl From<String> for Notice {
    fn from(sentence: String) -> Self {
        Self {
            sentence,
            brings_back: None,
        }
    }
}
