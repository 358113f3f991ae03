//! What a map is over.

use serde::{Deserialize, Serialize};

use turns_aloft_analysis::lever::Lever;
use turns_aloft_scenario::parameter::{MapSpan, Parameter};

/// Two different numbers: across, and upwards. Kept by their keys.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(try_from = "[String; 2]", into = "[String; 2]")]
pub struct Levers([Parameter; 2]);

impl Default for Levers {
    /// How the ice is left.
    fn default() -> Self {
        Self([Parameter::TakeoffRate, Parameter::JumpHeight])
    }
}

impl Levers {
    /// All that can lie along a side: the levers, then what is no lever but has a span.
    pub fn offered() -> impl Iterator<Item = Parameter> {
        let levers = Lever::ALL.map(Lever::parameter).into_iter();
        let all = Parameter::ALL.into_iter();
        let besides = all.filter(|it| Lever::of(*it).is_none());
        let offered = levers.chain(besides);
        offered.filter(|it| it.row().map != MapSpan::None)
    }

    pub const fn parameters(&self) -> [Parameter; 2] {
        self.0
    }

    /// Whether what the jumper keeps with heavier hands matters to the map.
    pub fn weights(&self) -> bool {
        self.0.contains(&Parameter::HandMass)
    }

    /// Puts a number along a side; if the other side has it, they change places.
    pub fn choose(&mut self, side: usize, parameter: Parameter) {
        if self.0[1 - side] == parameter {
            self.0.swap(0, 1);
        }
        self.0[side] = parameter;
    }
}

impl TryFrom<[String; 2]> for Levers {
    type Error = String;

    fn try_from(keys: [String; 2]) -> Result<Self, String> {
        let named = |name: &String| Self::offered().find(|it| it.key() == name);
        match keys.each_ref().map(named) {
            [Some(across), Some(up)] if across != up => Ok(Self([across, up])),
            _ => Err(format!("{keys:?} are not two different levers")),
        }
    }
}

impl From<Levers> for [String; 2] {
    fn from(levers: Levers) -> Self {
        levers.0.map(|it| it.key().to_owned())
    }
}
