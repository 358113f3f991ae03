//! A text of a lesson: one for all languages, or one for each.

use turns_aloft_words::{Language, language};

/// Characters of a text at most: a long paragraph. Our choice.
pub const LONGEST: usize = 2_000;

/// A text of a lesson.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Said {
    /// The same, whatever is spoken.
    Alike(String),
    /// By [`Language::ALL`]; one at least.
    Each([Option<String>; Language::ALL.len()]),
}

impl Said {
    /// In the language spoken; where there is none in that, in another one.
    pub fn text(&self) -> &str {
        match self {
            Self::Alike(text) => text,
            Self::Each(texts) => {
                let spoken = texts[language() as usize].as_deref();
                let any = || texts.iter().flatten().next().map(String::as_str);
                spoken.or_else(any).unwrap_or_default()
            }
        }
    }

    /// In every language in which there is one.
    pub fn all(&self) -> impl Iterator<Item = &str> {
        let (alike, each) = match self {
            Self::Alike(text) => (Some(text), None),
            Self::Each(texts) => (None, Some(texts.iter().flatten())),
        };
        alike
            .into_iter()
            .chain(each.into_iter().flatten())
            .map(String::as_str)
    }
}
