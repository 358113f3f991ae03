//! The starting points: invented jumpers and situations.

use std::sync::LazyLock;

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
