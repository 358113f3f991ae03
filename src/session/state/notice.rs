//! What the user is told.

/// One sentence for the user, until the next one or until dismissed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Notice {
    pub sentence: String,
    /// It tells of something that undoing the last change brings back.
    pub brings_back: bool,
}

impl From<String> for Notice {
    fn from(sentence: String) -> Self {
        Self {
            sentence,
            brings_back: false,
        }
    }
}
