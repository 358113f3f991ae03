//! What a map is over.

use serde::{Deserialize, Serialize};

use crate::analysis::lever::LEVERS;
use crate::scenario::keys::{self, Key};

/// No lever, but a map may look at it.
const BESIDES: &str = "hand_mass_kg";

/// Two different numbers: across, and upwards. Kept by their keys.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(try_from = "[String; 2]", into = "[String; 2]")]
pub struct Levers([&'static Key; 2]);

impl Default for Levers {
    /// How the ice is left.
    fn default() -> Self {
        let usual = ["takeoff_rate_rad_s", "jump_height_m"].map(str::to_owned);
        Self::try_from(usual).expect("both are levers")
    }
}

impl Levers {
    /// All that can lie along a side: every lever, and the hand mass.
    pub fn offered() -> impl Iterator<Item = &'static Key> {
        let besides = keys::key(BESIDES);
        LEVERS.iter().map(|lever| lever.row()).chain(besides)
    }

    pub const fn keys(&self) -> [&'static Key; 2] {
        self.0
    }

    /// Whether what the jumper keeps with heavier hands matters to the map.
    pub fn weights(&self) -> bool {
        self.0.iter().any(|key| key.key == BESIDES)
    }

    /// Puts a number along a side; if the other side has it, they change places.
    pub fn choose(&mut self, side: usize, key: &'static Key) {
        if self.0[1 - side] == key {
            self.0.swap(0, 1);
        }
        self.0[side] = key;
    }
}

impl TryFrom<[String; 2]> for Levers {
    type Error = String;

    fn try_from(keys: [String; 2]) -> Result<Self, String> {
        let named = |name: &String| Self::offered().find(|key| key.key == name);
        match keys.each_ref().map(named) {
            [Some(across), Some(up)] if across != up => Ok(Self([across, up])),
            _ => Err(format!("{keys:?} are not two different levers")),
        }
    }
}

impl From<Levers> for [String; 2] {
    fn from(levers: Levers) -> Self {
        levers.0.map(|key| key.key.to_owned())
    }
}
