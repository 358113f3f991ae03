//! A jump that is flown slowly, its arms and legs led by hand: before the take-off, in the air, and landed.

use turns_aloft_analysis::budget::Budget;
use turns_aloft_describe::rounded_budget::Shown;
use turns_aloft_physics::led_flight::LedFlight;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::beyond::Respect;
use turns_aloft_scenario::fly::Jump;

/// Of the time that passes so much passes in the flight.
pub const PACES: [f64; 3] = [1.0 / 4.0, 1.0 / 8.0, 1.0 / 16.0];

/// Where nothing is to move fast.
const SLOWEST: f64 = PACES[2];
const USUAL: f64 = PACES[1];

#[derive(Debug, Clone)]
pub struct SlowFlight {
    pub(crate) pace: f64,
    /// How far in arms and legs are to be: 0 all out, 1 all in.
    pub(crate) wanted: f64,
    pub(crate) phase: Phase,
    /// Counts the flights, those before the take-off as well.
    pub(crate) count: u64,
}

#[derive(Debug, Clone)]
pub(crate) enum Phase {
    /// About to leave the ice.
    Ready(Box<LedFlight>),
    InAir(Box<LedFlight>),
    Landed(Box<Landed>),
}

/// What was flown by hand, kept as knots and flown again by them.
#[derive(Debug, Clone)]
pub struct Landed {
    pub scenario: Scenario,
    pub jump: Jump,
    /// In which respects it is beyond what has been seen.
    pub beyond_seen: Vec<Respect>,
    /// Where the turns went: of the jump at hand, and of the one flown by hand.
    pub budgets: [Shown; 2],
}

impl SlowFlight {
    pub(crate) fn new(scenario: &Scenario, still: bool) -> Self {
        let pace = if still { SLOWEST } else { USUAL };
        Self {
            pace,
            wanted: 0.0,
            phase: Phase::Ready(Box::new(scenario.lead(pace))),
            count: 0,
        }
    }

    /// Stands before the take-off again.
    pub(crate) fn prepare(&mut self, scenario: &Scenario, pace: f64) {
        self.pace = pace;
        self.wanted = 0.0;
        self.phase = Phase::Ready(Box::new(scenario.lead(pace)));
        self.count += 1;
    }

    pub const fn pace(&self) -> f64 {
        self.pace
    }

    /// How far in arms and legs are to be.
    pub const fn wanted(&self) -> f64 {
        self.wanted
    }

    pub const fn is_in_air(&self) -> bool {
        matches!(self.phase, Phase::InAir(_))
    }

    /// The flight that is led, from before its take-off until it lands.
    pub const fn led(&self) -> Option<&LedFlight> {
        match &self.phase {
            Phase::Ready(led) | Phase::InAir(led) => Some(led),
            Phase::Landed(_) => None,
        }
    }

    pub const fn landed(&self) -> Option<&Landed> {
        match &self.phase {
            Phase::Landed(landed) => Some(landed),
            Phase::Ready(_) | Phase::InAir(_) => None,
        }
    }
}

impl Landed {
    /// What a flight was, against the jump that was at hand.
    pub(crate) fn new(led: &LedFlight, scenario: &Scenario, before: &Jump) -> Self {
        let flown = Scenario {
            led: Some(led.knots()),
            ..scenario.clone()
        };
        let jump = flown.fly();
        let shown = |scenario: &Scenario, jump: &Jump| {
            let budget = Budget::without_change(scenario, jump);
            Shown::new(&budget, jump.owed.map(|owed| owed.turns))
        };
        Self {
            beyond_seen: flown.beyond_seen(&jump),
            budgets: [shown(scenario, before), shown(&flown, &jump)],
            scenario: flown,
            jump,
        }
    }
}
