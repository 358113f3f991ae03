//! A try at so many turns: whether they are there and the hips face the landing, and which limits seen in people
//! the jump passed for it.
//!
//! What counts is that they are there, then how few limits were passed; never how often somebody jumps.

use std::cmp::Ordering;

use crate::caution::Caution;
use turns_aloft_physics::efforts::JointGroup;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::beyond::{Respect, RespectOf};
use turns_aloft_scenario::call::Call;
use turns_aloft_scenario::facing::past_deg;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::parameter::{Evidence, Parameter};
use turns_aloft_scenario::seen::Stand;
use turns_aloft_scenario::source::Source;

/// The turns that can be tried, step by step, up to the most that are listed (`scenario/jump.rs`).
pub const STEPS: [u8; 4] = [2, 3, 4, 5];

/// Hips that face farther than this from where they have to at the landing, degrees, are not there: a quarter
/// turn, our choice.
const FACING_DEG: f64 = 90.0;

/// What has to stand beside a try: it invites to more.
pub const CAUTIONS: [Caution; 3] = [Caution::NoSafeNumber, Caution::Adults, Caution::Ask];

/// A try, flown.
#[derive(Debug, Clone, PartialEq)]
pub struct TurnTry {
    /// Turns in the jump's name.
    pub step: u8,
    /// What that owes; an Axel owes half a turn more.
    pub turns_owed: f64,
    /// In the air and on the ice before it.
    pub turns: f64,
    /// Missing rotation, degrees; negative when turned further.
    pub shortfall_deg: f64,
    /// Heading of the hips at touch-down past the one that the landing owes, degrees in (-180, 180].
    pub landing_facing_deg: f64,
    /// Limits of people that the jump passed.
    pub passed: Vec<Held>,
    /// What can be said neither way: at the edge of what has been measured, or not known for a jumper of this
    /// size.
    pub unknown: Vec<Held>,
}

/// What of a jump is held against people, and how it stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Held {
    pub of: HeldOf,
    pub value: f64,
    /// Whose torque it is, where it is one.
    pub joint: Option<JointGroup>,
    /// From where to where people have been seen; none where no end is known.
    pub seen_from: Option<f64>,
    pub seen_up_to: Option<f64>,
    pub stand: Stand,
    pub source: Source,
}

/// What it is of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum HeldOf {
    /// What comes of the inputs.
    Respect(RespectOf),
    /// An input itself.
    Number(Parameter),
}

impl HeldOf {
    /// Its published key, with its unit.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Respect(of) => of.key(),
            Self::Number(parameter) => parameter.key(),
        }
    }
}

impl TurnTry {
    /// Of a flown jump, whatever turns its own name asks for.
    pub fn new(scenario: &Scenario, jump: &Jump, step: u8) -> Self {
        let free = f64::from(step);
        let turns_owed = scenario.jump.turns_owed(step).unwrap_or(free);
        let entry_rad = scenario.jump.entry_heading_rad();
        let owed_rad = entry_rad + scenario.turning.sign() * std::f64::consts::TAU * turns_owed;
        let (mut passed, mut unknown) = (Vec::new(), Vec::new());
        for held in all(scenario, jump) {
            match held.stand {
                Stand::Seen => {}
                Stand::Beyond => passed.push(held),
                Stand::AtEdge | Stand::NotKnown => unknown.push(held),
            }
        }
        Self {
            step,
            turns_owed,
            turns: jump.turns,
            shortfall_deg: 360.0 * (turns_owed - jump.turns),
            landing_facing_deg: past_deg(jump.flight.touchdown(), owed_rad, scenario.turning),
            passed,
            unknown,
        }
    }

    /// Whether all turns are there, as the sport's rule has it, none too many, and the hips face as they have
    /// to, to a quarter turn.
    pub fn is_full(&self) -> bool {
        Call::of(self.shortfall_deg) == Call::Full && self.landing_facing_deg.abs() <= FACING_DEG
    }

    /// Which of two tries at the same step is the better one, `Greater` for this one: that all turns are there
    /// counts, then how few limits were passed.
    pub fn compared(&self, other: &Self) -> Ordering {
        let full = self.is_full().cmp(&other.is_full());
        full.then(other.passed.len().cmp(&self.passed.len()))
    }
}

/// All that is held against people, however it stands.
fn all(scenario: &Scenario, jump: &Jump) -> Vec<Held> {
    let respects = [
        scenario.beyond_seen(jump),
        scenario.at_edge_of_measured(jump),
        scenario.not_known_for_size(jump),
    ];
    let respects = respects.into_iter().flatten().map(Held::respect);
    let numbers = Parameter::ALL.into_iter();
    respects
        .chain(numbers.filter_map(|parameter| Held::number(parameter, scenario, jump)))
        .collect()
}

impl Held {
    fn respect(respect: Respect) -> Self {
        Self {
            of: HeldOf::Respect(respect.of),
            value: respect.value,
            joint: respect.joint,
            seen_from: None,
            seen_up_to: respect.seen_up_to,
            stand: respect.stand,
            source: respect.source,
        }
    }

    /// Of the numbers whose own marks say how far people go; what the others come to is among the respects.
    fn number(parameter: Parameter, scenario: &Scenario, jump: &Jump) -> Option<Self> {
        let value = match parameter.row().evidence {
            // Empty hands hold nothing.
            Evidence::Grip => Some(parameter.get(scenario)).filter(|held| *held > 0.0)?,
            Evidence::Practice { .. } => as_flown(parameter, scenario, jump)?,
            Evidence::None | Evidence::PeakRate | Evidence::Height | Evidence::Strength { .. } => {
                return None;
            }
        };
        let marks = scenario.marks(parameter, jump)?;
        let end = |end: f64, of: f64| (end != of).then_some(end);
        Some(Self {
            of: HeldOf::Number(parameter),
            value,
            joint: None,
            seen_from: (marks.seen).and_then(|[from, _]| end(from, parameter.least())),
            seen_up_to: match marks.seen {
                Some([_, up_to]) => end(up_to, parameter.most()),
                None => marks.beyond,
            },
            // A hand may do what cannot be set: that alone passes no limit of people.
            stand: marks.stand(value.clamp(parameter.least(), parameter.most())),
            source: marks.source,
        })
    }
}

/// A time of the plan; of a jump that was led by hand, the one that the hand made of it.
fn as_flown(parameter: Parameter, scenario: &Scenario, jump: &Jump) -> Option<f64> {
    if scenario.has_part(parameter) {
        return Some(parameter.get(scenario));
    }
    let flight = &jump.flight;
    match parameter {
        Parameter::OpenLead => Some(flight.touchdown_s - flight.open_s),
        Parameter::CloseDelay => Some(flight.table.plan.closes_from_s()),
        _ => None,
    }
}
