//! The answers as the command prints them: under their published keys (snake case, SI units in the
//! name), with what has to be said in words.

pub mod budget;
pub mod flight;
pub mod goal;
pub mod lesson;
pub mod measured;
pub mod steps;
pub mod turn_try;
pub mod weights;

use serde::Serialize;
use serde::ser::{SerializeMap, Serializer};

use crate::{Label, Text};
use turns_aloft_analysis::caution::Caution;
use turns_aloft_analysis::lever::Lever;
use turns_aloft_scenario::beyond::Respect;
use turns_aloft_scenario::strength;

/// Only the keys, where the values are the flown jump's to say.
fn keys(respects: &[Respect]) -> Vec<&'static str> {
    respects.iter().map(|respect| respect.of.key()).collect()
}

fn texts(cautions: &[Caution]) -> Vec<&'static str> {
    cautions.iter().copied().map(Text::text).collect()
}

/// A lever: its key and what it is called.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeverReport(pub Lever);

impl Serialize for LeverReport {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(Some(2))?;
        map.serialize_entry("key", self.0.key())?;
        map.serialize_entry("label", self.0.parameter().label())?;
        map.end()
    }
}

/// A respect in which a jump is beyond what has been seen.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct RespectReport {
    pub key: &'static str,
    pub value: f64,
    /// Whose torque it is, where it is one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub joint: Option<&'static str>,
    pub seen_up_to: Option<f64>,
    pub source: &'static str,
}

impl RespectReport {
    fn new(respect: &Respect) -> Self {
        Self {
            key: respect.of.key(),
            value: respect.value,
            joint: respect.joint.map(strength::key),
            seen_up_to: respect.seen_up_to,
            source: respect.source.text(),
        }
    }
}
