//! The two levers that a map is over.

use serde::{Deserialize, Serialize};

use crate::analysis::lever::{LEVERS, place};

/// Two different levers, by their places in [`LEVERS`]: across, and upwards. Kept by their keys.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "[String; 2]", into = "[String; 2]")]
pub struct Levers([usize; 2]);

impl Default for Levers {
    /// How the ice is left.
    fn default() -> Self {
        let usual = ["takeoff_rate_rad_s", "jump_height_m"].map(str::to_owned);
        Self::try_from(usual).expect("both are levers")
    }
}

impl Levers {
    pub const fn places(&self) -> [usize; 2] {
        self.0
    }

    /// Puts a lever along a side; if the other side has it, they change places.
    pub fn choose(&mut self, side: usize, lever: usize) {
        if self.0[1 - side] == lever {
            self.0.swap(0, 1);
        }
        self.0[side] = lever;
    }
}

impl TryFrom<[String; 2]> for Levers {
    type Error = String;

    fn try_from(keys: [String; 2]) -> Result<Self, String> {
        match keys.each_ref().map(|key| place(key)) {
            [Some(across), Some(up)] if across != up => Ok(Self([across, up])),
            _ => Err(format!("{keys:?} are not two different levers")),
        }
    }
}

impl From<Levers> for [String; 2] {
    fn from(levers: Levers) -> Self {
        levers.0.map(|place| LEVERS[place].key.to_owned())
    }
}
