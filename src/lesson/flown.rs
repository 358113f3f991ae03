//! Something that has been flown.

use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::curve::Curve;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_turntable::{Run, RunCurve};

/// Something that has been flown.
#[derive(Debug, Clone)]
pub enum Flown {
    Jump {
        scenario: Box<Scenario>,
        jump: Box<Jump>,
    },
    Run(Run),
}

impl Flown {
    /// Times and values of a curve, in SI; nothing where what was flown has no such curve.
    pub fn points(&self, name: &str) -> Option<Vec<[f64; 2]>> {
        match self {
            Self::Jump { scenario, jump } => {
                Curve::named(name).map(|curve| curve.points(scenario, jump))
            }
            Self::Run(run) => {
                let curve = RunCurve::named(name)?;
                let samples = run.samples.iter();
                Some(samples.map(|it| [it.t_s, curve.value(it)]).collect())
            }
        }
    }
}
