//! The starting points: invented jumpers and situations.

use std::sync::LazyLock;

use crate::input::Input;
use crate::scenario::Scenario;

/// A starting point: its name on the command line and its scenario.
#[derive(Debug)]
pub struct Start {
    pub name: &'static str,
    pub scenario: Scenario,
}

macro_rules! starts {
    ($($name:literal),* $(,)?) => {
        [$((
            $name,
            include_str!(concat!("../../assets/starts/", $name, ".aloft.json")),
        )),*]
    };
}

const FILES: [(&str, &str); 10] = starts![
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
        .map(|&(name, text)| Start {
            name,
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

impl Scenario {
    /// The starting point that this jump is: by its name, and in every input.
    fn start(&self) -> Option<&'static Start> {
        let same = |start: &&Start| {
            start.scenario.name == self.name
                && Input::differing(&start.scenario, self).next().is_none()
        };
        all().iter().find(same)
    }

    /// Makes the note one that may stand with this jump: what a starting point says of its invented
    /// jumper describes that starting point and no other jump. A note of the user's own stays.
    pub fn settle_note(&mut self) {
        let is_own = !self.note.is_empty() && all().iter().all(|it| it.scenario.note != self.note);
        if is_own {
            return;
        }
        let said = self.start().map_or("", |start| &start.scenario.note);
        if self.note != said {
            said.clone_into(&mut self.note);
        }
    }

    /// A jump of the user's own to begin with, which nobody has named yet: a double flip of somebody of
    /// fourteen, with which every number is one to start from.
    pub fn begun() -> Self {
        let double = named("junior-double").expect("it is one of the starting points");
        Self {
            name: String::new(),
            note: String::new(),
            ..double.scenario.clone()
        }
    }
}
