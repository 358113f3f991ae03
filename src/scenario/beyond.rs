//! In which respects a flown jump is beyond what has been seen of people, or not known of a jumper
//! of this size.

use crate::fly::Jump;
use crate::parameter::{Movement, Parameter};
use crate::scenario::Scenario;
use crate::seen::{self, Mark, Stand};
use crate::source::Source;
use crate::strength::Asked;
use turns_aloft_physics::efforts::JointGroup;

/// One thing that a jump asks of its jumper, against what has been seen.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Respect {
    pub of: RespectOf,
    pub value: f64,
    /// Whose torque it is, where it is one.
    pub joint: Option<JointGroup>,
    /// As far as people have been seen to go: jumpers like this one, or where nothing is known of
    /// jumpers of this size, anybody. None where no end was found.
    pub seen_up_to: Option<f64>,
    /// Where that comes from.
    pub source: Source,
    pub stand: Stand,
}

/// What it is of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RespectOf {
    PeakRate,
    Height,
    /// The largest net torque of a movement, of the joint that comes nearest to its strength or goes
    /// farthest beyond it.
    Torque(Movement),
}

impl RespectOf {
    /// Its published key, with its unit.
    pub const fn key(self) -> &'static str {
        match self {
            Self::PeakRate => "peak_rate_rad_s",
            Self::Height => Parameter::JumpHeight.key(),
            Self::Torque(Movement::Closing) => "closing_torque_n_m_per_kg",
            Self::Torque(Movement::Opening) => "opening_torque_n_m_per_kg",
        }
    }

    /// The number of the scenario whose marks say how far people go.
    pub const fn parameter(self) -> Option<Parameter> {
        match self {
            // The mark of the peak is that of the take-off rate on this plan.
            Self::PeakRate => Some(Parameter::TakeoffRate),
            Self::Height => Some(Parameter::JumpHeight),
            Self::Torque(_) => None,
        }
    }
}

impl Respect {
    fn new(of: RespectOf, value: f64, mark: Mark) -> Self {
        Self {
            of,
            value,
            joint: None,
            seen_up_to: mark.up_to.is_finite().then_some(mark.up_to),
            source: mark.source,
            stand: mark.stand(value),
        }
    }

    fn of_joint(movement: Movement, asked: Asked) -> Self {
        Self {
            joint: Some(asked.group),
            ..Self::new(
                RespectOf::Torque(movement),
                asked.torque_n_m_per_kg,
                asked.mark,
            )
        }
    }

    /// Whether it is in the way of a jump more than it was before: it was not there, or not as large.
    pub fn is_worse_than(&self, before: &[Self]) -> bool {
        !before
            .iter()
            .any(|other| other.of == self.of && other.value >= self.value)
    }
}

impl Scenario {
    /// All respects of a flown jump, however they stand.
    fn respects(&self, jump: &Jump) -> [Respect; 4] {
        let jumper = self.jumper();
        [
            Respect::new(
                RespectOf::PeakRate,
                jump.readout.peak_rate_rad_s,
                seen::peak_rate_rad_s(jumper),
            ),
            Respect::new(
                RespectOf::Height,
                self.jump_height_m,
                seen::height_m(jumper, self.ground),
            ),
            self.torque(Movement::Closing, jump),
            self.torque(Movement::Opening, jump),
        ]
    }

    /// What a movement asks of the joints in a flown jump, however it stands.
    pub fn torque(&self, movement: Movement, jump: &Jump) -> Respect {
        let demands = movement.demands(jump.efforts());
        let asked = Asked::most(self.jumper(), self.body_mass_kg, demands);
        Respect::of_joint(movement, asked)
    }

    /// Those in which a flown jump of this scenario is beyond what has been seen.
    pub fn beyond_seen(&self, jump: &Jump) -> Vec<Respect> {
        self.standing(jump, Stand::Beyond)
    }

    /// Those of which nothing is known for a jumper of this size, and in which others have been seen to
    /// go as far.
    pub fn not_known_for_size(&self, jump: &Jump) -> Vec<Respect> {
        self.standing(jump, Stand::NotKnown)
    }

    /// Those that are at the edge of what has been measured, where neither can be said.
    pub fn at_edge_of_measured(&self, jump: &Jump) -> Vec<Respect> {
        self.standing(jump, Stand::AtEdge)
    }

    fn standing(&self, jump: &Jump, stand: Stand) -> Vec<Respect> {
        let all = self.respects(jump).into_iter();
        all.filter(|respect| respect.stand == stand).collect()
    }
}
