//! The starting points in words.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use crate::{About, Label};
use turns_aloft_scenario::starts::{self, Start};
use turns_aloft_words::Message;

/// The messages of each, by its name: what it is called, and what is to be known of it.
static MESSAGES: LazyLock<BTreeMap<&str, [Message; 2]>> = LazyLock::new(|| {
    let of = |start: &Start| {
        let message = |end| Message(format!("start-{}-{end}", start.name).leak());
        (start.name, [message("name"), message("note")])
    };
    starts::all().iter().map(of).collect()
});

/// What it is called on the page; in its file it has one name, whatever is spoken.
impl Label for &Start {
    fn label(self) -> &'static str {
        MESSAGES[self.name][0].text()
    }
}

/// What is to be known of it.
impl About for &Start {
    fn about(self) -> &'static str {
        MESSAGES[self.name][1].text()
    }
}

/// A jump's name as it is shown: that of a starting point in the language spoken, any other as it is.
pub fn shown_name(name: &str) -> &str {
    let mut starts = starts::all().iter();
    starts
        .find(|start| start.scenario.name == name)
        .map_or(name, |start| start.label())
}

/// A jump's note as it is shown: that of a starting point in the language spoken, any other as it is.
pub fn shown_note(note: &str) -> &str {
    let mut starts = starts::all().iter();
    starts
        .find(|start| start.scenario.note == note)
        .map_or(note, |start| start.about())
}
