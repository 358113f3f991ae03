//! In which respects a flown jump is beyond what has been seen of people, or not known of a jumper
//! of this size.

use serde::{Serialize, Serializer};

use super::Scenario;
use super::fly::Jump;
use super::seen::{self, Mark, Stand};
use super::strength::{self, Asked};
use crate::physics::efforts::JointGroup;
use crate::words::Message;

/// One thing that a jump asks of its jumper, against what has been seen.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Respect {
    /// Its published key, with its unit.
    pub key: &'static str,
    pub value: f64,
    /// Whose torque it is, where it is one.
    #[serde(serialize_with = "joint_key", skip_serializing_if = "Option::is_none")]
    pub joint: Option<JointGroup>,
    /// As far as people have been seen to go: jumpers like this one, or where nothing is known of
    /// jumpers of this size, anybody. None where no end was found.
    pub seen_up_to: Option<f64>,
    /// Where that comes from.
    pub source: Message,
    #[serde(skip)]
    pub stand: Stand,
}

pub const PEAK_RATE: &str = "peak_rate_rad_s";
pub const HEIGHT: &str = "jump_height_m";
/// The largest net torques, each of the joint that comes nearest to its strength or goes farthest
/// beyond it.
pub const CLOSING: &str = "closing_torque_n_m_per_kg";
pub const OPENING: &str = "opening_torque_n_m_per_kg";

impl Respect {
    fn new(key: &'static str, value: f64, mark: Mark) -> Self {
        Self {
            key,
            value,
            joint: None,
            seen_up_to: mark.up_to.is_finite().then_some(mark.up_to),
            source: mark.source,
            stand: mark.stand(value),
        }
    }

    fn of_combination(key: &'static str, asked: Asked) -> Self {
        Self {
            joint: Some(asked.group),
            ..Self::new(key, asked.torque_n_m_per_kg, asked.mark)
        }
    }

    /// Whether it is in the way of a jump more than it was before: it was not there, or not as large.
    pub fn is_worse_than(&self, before: &[Self]) -> bool {
        !before
            .iter()
            .any(|other| other.key == self.key && other.value >= self.value)
    }
}

impl Scenario {
    /// All respects of a flown jump, however they stand.
    fn respects(&self, jump: &Jump) -> [Respect; 4] {
        let jumper = self.jumper();
        [
            Respect::new(
                PEAK_RATE,
                jump.readout.peak_rate_rad_s,
                seen::peak_rate_rad_s(jumper),
            ),
            Respect::new(
                HEIGHT,
                self.jump_height_m,
                seen::height_m(jumper, self.ground),
            ),
            self.closing(jump),
            self.opening(jump),
        ]
    }

    /// What closing asks of the joints in a flown jump, however it stands.
    pub fn closing(&self, jump: &Jump) -> Respect {
        let asked = Asked::most(self.jumper(), self.body_mass_kg, &jump.efforts().closing);
        Respect::of_combination(CLOSING, asked)
    }

    /// The same of opening.
    pub fn opening(&self, jump: &Jump) -> Respect {
        let asked = Asked::most(self.jumper(), self.body_mass_kg, &jump.efforts().opening);
        Respect::of_combination(OPENING, asked)
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

fn joint_key<S: Serializer>(joint: &Option<JointGroup>, serializer: S) -> Result<S::Ok, S::Error> {
    joint.map(strength::key).serialize(serializer)
}

/// Only the keys, where the values are the flown jump's to say.
pub fn keys<S: Serializer>(respects: &[Respect], serializer: S) -> Result<S::Ok, S::Error> {
    serializer.collect_seq(respects.iter().map(|respect| respect.key))
}
