//! What a step sets up to be flown, and what a variant of it changes.

use turns_aloft_scenario::{Scenario, setting};
use turns_aloft_turntable::planned::{PlanFault, Planned};
use turns_aloft_turntable::setup as turntable;
use turns_aloft_turntable::{Friction, Given, Person, Programme, Setup as TurntableSetup};

use crate::flown::Flown;
use crate::said::Said;

/// From one sample of a run to the next, s.
const SAMPLE_S: f64 = 0.02;

/// What is flown.
#[derive(Debug, Clone, PartialEq)]
pub enum Setup {
    Jump(Box<Scenario>),
    Turntable(Box<OnTurntable>),
    WorkedExample(WorkedExample),
}

/// Somebody on a turntable.
#[derive(Debug, Clone, PartialEq)]
pub struct OnTurntable {
    pub setup: TurntableSetup,
    /// How they move; without one they are led by hand, and nothing is known beforehand.
    pub programme: Option<Programme>,
}

/// A body that fits the numbers of a worked example.
#[derive(Debug, Clone, PartialEq)]
pub struct WorkedExample {
    /// Where it is printed, with its number.
    pub source: Said,
    pub rate_rad_s: f64,
    /// Times (s), and the moment of inertia then (kg m²); in between it changes smoothly.
    pub inertia: Vec<[f64; 2]>,
    pub friction: Friction,
}

/// The same with some inputs changed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Variant {
    pub name: String,
    pub changes: Changes,
}

/// Keys of inputs, and what they are set to, as on the command line.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Changes(pub Vec<[String; 2]>);

/// Why something cannot be set up so.
#[derive(Debug, Clone, PartialEq)]
pub enum Refused {
    Jump(setting::Refused),
    Turntable(turntable::Refused),
    Plan(PlanFault),
    /// A worked example has its own numbers.
    WorkedExample,
}

impl Setup {
    /// The same with these changes.
    pub fn changed(&self, changes: &Changes) -> Result<Self, Refused> {
        Ok(match self {
            Self::Jump(jump) => Self::Jump(Box::new(changed(jump, changes)?)),
            Self::Turntable(on) => Self::Turntable(Box::new(on.changed(changes)?)),
            Self::WorkedExample(_) if !changes.0.is_empty() => return Err(Refused::WorkedExample),
            Self::WorkedExample(example) => Self::WorkedExample(example.clone()),
        })
    }

    /// Flown; nothing where somebody on a turntable is led by hand.
    pub fn flown(&self) -> Result<Option<Flown>, Refused> {
        Ok(match self {
            Self::Jump(scenario) => Some(Flown::Jump {
                jump: Box::new(scenario.fly()),
                scenario: scenario.clone(),
            }),
            Self::Turntable(on) => on.run()?,
            Self::WorkedExample(example) => example.run(),
        })
    }
}

/// A jump with these changes.
pub fn changed(jump: &Scenario, changes: &Changes) -> Result<Scenario, Refused> {
    let mut then = jump.clone();
    for [key, value] in &changes.0 {
        then.set(key, value).map_err(Refused::Jump)?;
    }
    then.settle_note();
    Ok(then)
}

impl OnTurntable {
    fn changed(&self, changes: &Changes) -> Result<Self, Refused> {
        let mut then = self.clone();
        for [key, value] in &changes.0 {
            then.setup.set(key, value).map_err(Refused::Turntable)?;
        }
        Ok(then)
    }

    /// Whether this person can do what the programme asks.
    pub(crate) fn movable(&self) -> Result<(), Refused> {
        self.planned(|_| ()).map(drop)
    }

    fn run(&self) -> Result<Option<Flown>, Refused> {
        self.planned(|planned| Flown::Run(planned.run(SAMPLE_S)))
    }

    fn planned<T>(&self, then: impl Fn(&Planned<'_>) -> T) -> Result<Option<T>, Refused> {
        let person = Person::new(&self.setup).map_err(Refused::Turntable)?;
        let Some(programme) = &self.programme else {
            return Ok(None);
        };
        let planned = Planned::new(&person, programme).map_err(Refused::Plan)?;
        Ok(Some(then(&planned)))
    }
}

impl WorkedExample {
    /// None where its times do not rise.
    pub fn body(&self) -> Option<Given> {
        let inertia: Vec<(f64, f64)> = self.inertia.iter().map(|&[t_s, it]| (t_s, it)).collect();
        Given::inertia(&inertia)
    }

    fn run(&self) -> Option<Flown> {
        let body = self.body()?;
        Some(Flown::Run(body.run(
            self.rate_rad_s,
            &self.friction,
            SAMPLE_S,
        )))
    }
}
