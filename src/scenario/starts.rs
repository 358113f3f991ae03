//! The starting points: invented jumpers and situations.

use std::sync::LazyLock;

use super::Scenario;
use crate::words::Message;

/// A starting point: its name on the command line and its scenario.
#[derive(Debug)]
pub struct Start {
    pub name: &'static str,
    label: Message,
    note: Message,
    pub scenario: Scenario,
}

impl Start {
    /// What it is called on the page; in its file it has one name, whatever is spoken.
    pub fn label(&self) -> &'static str {
        self.label.text()
    }

    /// What is to be known of it.
    pub fn note(&self) -> &'static str {
        self.note.text()
    }
}

macro_rules! starts {
    ($($name:literal),* $(,)?) => {
        [$((
            $name,
            Message(concat!("start-", $name, "-name")),
            Message(concat!("start-", $name, "-note")),
            include_str!(concat!("../../assets/starts/", $name, ".aloft.json")),
        )),*]
    };
}

const FILES: [(&str, Message, Message, &str); 10] = starts![
    "half-a-turn-short",
    "child-single",
    "junior-double",
    "senior-triple",
    "four-turns",
    "five-turn-attempt",
    "floor-turn",
    "trampoline",
    "weighted-hands",
    "crooked-takeoff",
];

static STARTS: LazyLock<Vec<Start>> = LazyLock::new(|| {
    FILES
        .iter()
        .map(|&(name, label, note, text)| Start {
            name,
            label,
            note,
            scenario: Scenario::from_file(text).expect("every starting point is tested to open"),
        })
        .collect()
});

/// All starting points, the one the page opens on first.
pub fn all() -> &'static [Start] {
    &STARTS
}

/// The starting point of that name.
pub fn named(name: &str) -> Option<&'static Start> {
    all().iter().find(|start| start.name == name)
}

/// A jump's name as it is shown: that of a starting point in the language spoken, any other as it is.
pub fn shown_name(name: &str) -> &str {
    let mut starts = all().iter();
    starts
        .find(|start| start.scenario.name == name)
        .map_or(name, |start| start.label())
}

/// A jump's note as it is shown: that of a starting point in the language spoken, any other as it is.
pub fn shown_note(note: &str) -> &str {
    let mut starts = all().iter();
    starts
        .find(|start| start.scenario.note == note)
        .map_or(note, |start| start.note())
}
