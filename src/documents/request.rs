//! What is to be made, of what.

use serde::{Deserialize, Serialize};
use turns_aloft_scenario::units::Units;

/// What can be made.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Document {
    /// The still picture of the jump, as SVG.
    Picture,
    /// Sheets of paper, as HTML: of the lesson,
    Pupil,
    Answers,
    Plan,
    Results,
    /// and of the jump.
    Coach,
}

/// A request for a document.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Request {
    pub document: Document,
    /// The tag of the language.
    pub language: String,
    pub units: Units,
    /// The page's address without a fragment; without one there is no QR code.
    pub address: Option<String>,
    /// The jump's file.
    pub jump: String,
    /// Whether the jump is a try at the turns of its name.
    pub is_try: bool,
    /// The lesson's file, and that of its answers.
    pub lesson: Option<[String; 2]>,
}

impl Request {
    pub fn to_text(&self) -> String {
        serde_json::to_string(self).expect("a request holds nothing that JSON cannot say")
    }
}
