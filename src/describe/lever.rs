//! Levers and their steps in words.

use serde::ser::SerializeMap;
use serde::{Serialize, Serializer};

use super::input::step;
use crate::analysis::lever::{Lever, StepOf};
use crate::scenario::parameter::{Kind, Step};
use crate::scenario::units::Units;

impl StepOf {
    /// What it is, in the user's units.
    pub fn text(self, units: &Units) -> String {
        let parameter = self.0.parameter();
        let (kind, size) = match self.0.row().step {
            Step::By(by) => (parameter.kind(), by.abs()),
            Step::HandsNearer(by_m) => (Kind::Length, by_m),
        };
        step(parameter, &units.of(kind).text(size))
    }
}

/// In the usual units.
impl Serialize for StepOf {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.text(&Units::default()))
    }
}

/// As its key and what it is called.
impl Serialize for Lever {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(Some(2))?;
        map.serialize_entry("key", self.key())?;
        map.serialize_entry("label", self.parameter().label())?;
        map.end()
    }
}
