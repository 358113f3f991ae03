//! How the numbers that a jumper can change stand against people: what has been seen, and what is out of reach.

use super::Scenario;
use super::fly::Jump;
use super::keys::Key;
use crate::physics::glance::Glance;
use crate::physics::landing::Ground;
use crate::physics::segments::SegmentTable;
use crate::scenario::units::RateUnit;
use crate::words::Message;

/// Marks on a number.
#[derive(Debug, Clone, PartialEq)]
pub struct Reach {
    /// People have been measured or seen from here to there.
    pub seen: [f64; 2],
    /// From here on, out of reach for people; none where the range itself is the limit.
    pub beyond: Option<f64>,
    /// Where both come from.
    pub source: Message,
}

/// Highest peak rate seen, and the one five turns would ask for, rpm. Common practice, no source.
const PEAK_SEEN_RPM: f64 = 440.0;
const PEAK_BEYOND_RPM: f64 = 500.0;

/// Peak median hand grip of women and men, N: 31 and 51 kg force, Dodds et al. 2014, PLoS One
/// 9(12):e113637.
const GRIP_N: [f64; 2] = [304.0, 500.0];

impl Scenario {
    /// The marks of a number for this jumper's flown jump.
    pub fn reach(&self, key: &Key, jump: &Jump) -> Option<Reach> {
        let grip_m_s2 = || jump.efforts().grip_m_s2;
        self.reach_of(key, &Glance::of(&jump.readout), grip_m_s2)
    }

    /// The same for a flight of which no more is known; `grip_m_s2`, the largest acceleration of what
    /// the hands hold, is only asked for where it is needed.
    pub fn reach_of(
        &self,
        key: &Key,
        glance: &Glance,
        grip_m_s2: impl FnOnce() -> f64,
    ) -> Option<Reach> {
        match key.key {
            "takeoff_rate_rad_s" => Some(rate(glance)),
            "arm_tuck" | "leg_tuck" => Some(Reach {
                seen: [0.0, 1.0],
                beyond: None,
                source: Message("reach-tuck"),
            }),
            "hand_mass_kg" => Some(self.hand_mass(grip_m_s2())),
            "jump_height_m" => Some(self.height()),
            "close_delay_s" => Some(Reach {
                seen: [key.least, key.most],
                beyond: None,
                source: Message("reach-close-delay"),
            }),
            "close_time_s" => Some(Reach {
                seen: [0.15, key.most],
                beyond: None,
                source: Message("reach-close-time"),
            }),
            "open_lead_s" => Some(Reach {
                seen: [0.05, key.most],
                beyond: None,
                source: Message("reach-open-lead"),
            }),
            _ => None,
        }
    }

    /// The mass that takes as much force as the median grip has, moved as in this jump.
    fn hand_mass(&self, grip_m_s2: f64) -> Reach {
        let grip_n = match self.table {
            SegmentTable::Female => GRIP_N[0],
            SegmentTable::Male => GRIP_N[1],
        };
        let beyond = grip_n / grip_m_s2.max(f64::MIN_POSITIVE);
        Reach {
            seen: [0.0, beyond.min(0.25)],
            beyond: Some(beyond),
            source: Message("reach-hand-mass"),
        }
    }

    fn height(&self) -> Reach {
        if self.ground == Ground::Trampoline {
            return Reach {
                seen: [0.2, 2.5],
                beyond: None,
                source: Message("reach-trampoline"),
            };
        }
        Reach {
            seen: [0.20, 0.60],
            beyond: Some(0.90),
            source: Message("reach-jump-height"),
        }
    }
}

/// Take-off rates that lead to the highest peaks seen, on this plan: the peak grows with the
/// take-off rate in proportion.
fn rate(glance: &Glance) -> Reach {
    let rpm = RateUnit::Rpm.unit();
    let per_peak = glance.takeoff_rate_rad_s / glance.peak_rate_rad_s;
    Reach {
        seen: [0.0, per_peak * rpm.to_si(PEAK_SEEN_RPM)],
        beyond: Some(per_peak * rpm.to_si(PEAK_BEYOND_RPM)),
        source: Message("reach-takeoff-rate"),
    }
}
