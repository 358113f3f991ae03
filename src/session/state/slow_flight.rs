//! A jump that is flown slowly, its arms and legs led by hand: before the take-off, in the air, and landed.

use turns_aloft_analysis::budget::{Budget, LossSearch, Losses};
use turns_aloft_analysis::turn_try::TurnTry;
use turns_aloft_describe::rounded_budget::Shown;
use turns_aloft_physics::knot_search::KnotSearch;
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
    /// Down, and what came of it is being worked out.
    Landing(Box<Landing>),
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
    /// What came of it as a try, while the five-turn try is on.
    pub tried: Option<TurnTry>,
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

    /// Whether it is led, until what came of it is known.
    pub const fn is_in_air(&self) -> bool {
        matches!(self.phase, Phase::InAir(_) | Phase::Landing(_))
    }

    /// The flight that is led, from before its take-off until it lands.
    pub const fn led(&self) -> Option<&LedFlight> {
        match &self.phase {
            Phase::Ready(led) | Phase::InAir(led) => Some(led),
            Phase::Landing(landing) => Some(&landing.led),
            Phase::Landed(_) => None,
        }
    }

    pub const fn landed(&self) -> Option<&Landed> {
        match &self.phase {
            Phase::Landed(landed) => Some(landed),
            Phase::Ready(_) | Phase::InAir(_) | Phase::Landing(_) => None,
        }
    }
}

/// What a flight by hand comes to, worked out piece by piece, so that no frame waits for it.
#[derive(Debug, Clone)]
pub(crate) struct Landing {
    led: LedFlight,
    search: KnotSearch,
    /// Once its knots are found.
    scenario: Option<Scenario>,
    /// Once that is flown.
    jump: Option<Jump>,
    beyond_seen: Option<Vec<Respect>>,
    losses: [OfLosses; 2],
    /// The turns that are tried, while the five-turn try is on.
    step: Option<u8>,
    tried: Option<TurnTry>,
}

/// What the causes lost.
#[derive(Debug, Clone, Default)]
enum OfLosses {
    #[default]
    None,
    Searched(Box<LossSearch>),
    Known(Losses),
}

impl OfLosses {
    /// The next piece; what they lost, where that is known.
    fn advance(&mut self, scenario: &Scenario, jump: &Jump) -> Option<Losses> {
        match self {
            Self::None => *self = Self::Searched(Box::new(LossSearch::of(&jump.flight))),
            Self::Searched(search) => {
                if let Some(losses) = search.advance(scenario, &jump.flight) {
                    *self = Self::Known(losses);
                }
            }
            Self::Known(losses) => return Some(*losses),
        }
        None
    }
}

impl Landing {
    pub(crate) fn of(led: LedFlight, step: Option<u8>) -> Self {
        Self {
            led,
            step,
            tried: None,
            search: KnotSearch::default(),
            scenario: None,
            jump: None,
            beyond_seen: None,
            losses: Default::default(),
        }
    }

    /// The next piece, against the jump that was at hand; what it came to, once all is known.
    pub(crate) fn advance(&mut self, scenario: &Scenario, before: &Jump) -> Option<Landed> {
        let Some(flown) = &self.scenario else {
            let led = self.search.advance(&self.led)?;
            self.scenario = Some(Scenario {
                led: Some(led),
                ..scenario.clone()
            });
            return None;
        };
        let Some(jump) = &self.jump else {
            self.jump = Some(flown.fly());
            return None;
        };
        let Some(beyond_seen) = &self.beyond_seen else {
            self.beyond_seen = Some(flown.beyond_seen(jump));
            return None;
        };
        if let Some(step) = self.step.take() {
            self.tried = Some(TurnTry::new(flown, jump, step));
            return None;
        }
        let [of_before, of_flown] = &mut self.losses;
        let budgets = [
            shown(scenario, before, of_before.advance(scenario, before)?),
            shown(flown, jump, of_flown.advance(flown, jump)?),
        ];
        Some(Landed {
            budgets,
            tried: self.tried.take(),
            beyond_seen: beyond_seen.clone(),
            scenario: flown.clone(),
            jump: jump.clone(),
        })
    }
}

/// Where the turns went.
fn shown(scenario: &Scenario, jump: &Jump, losses: Losses) -> Shown {
    let budget = Budget::of_losses(scenario, jump, losses);
    Shown::new(&budget, jump.owed.map(|owed| owed.turns))
}
