//! An attempt, whole.

use serde::Serialize;

use crate::film::Film;
use crate::sensor::Sensor;
use crate::stop_watch::StopWatch;
use turns_aloft_scenario::Scenario;

/// A real attempt.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Attempt {
    /// The jump that it was meant to be, and the jumper. What was not measured comes from it.
    pub scenario: Scenario,
    pub measured: Measured,
}

/// How it was measured.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Measured {
    StopWatch(StopWatch),
    Film(Film),
    Sensor(Sensor),
}
