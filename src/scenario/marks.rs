//! How the numbers that a jumper can change stand against people: what has been seen of jumpers like
//! this one, what isn't known of them, and what is out of reach.

use crate::fly::Jump;
use crate::ground::Ground;
use crate::jumper::{Jumper, Size};
use crate::parameter::{Evidence, Parameter};
use crate::scenario::Scenario;
use crate::seen::{self, Mark, Stand};
use crate::source::Source;
use crate::units::RateUnit;
use turns_aloft_physics::flight_summary::FlightSummary;
use turns_aloft_physics::segments::SegmentTable;

/// Marks on a number.
#[derive(Debug, Clone, PartialEq)]
pub struct Marks {
    /// Jumpers like this one have been measured or seen from here to there; none where that is not
    /// known for a jumper of this size.
    pub seen: Option<[f64; 2]>,
    /// From here on, out of reach for people; none where the range itself is the limit.
    pub beyond: Option<f64>,
    /// Down from here, out of reach for people; none where the range itself is the limit.
    pub beyond_below: Option<f64>,
    /// Where they come from, or why they are not known.
    pub source: Source,
}

/// Nobody has been seen to leave the ground from the feet alone for such a height, m. From memory.
const NOBODY_HIGHER_M: f64 = 0.90;

/// The peak rate that five turns would ask for, rpm. Common practice, no source.
const NOBODY_FASTER_RPM: f64 = 500.0;

/// Peak median hand grip of women and men, N: 31 and 51 kg force, Dodds et al. 2014, PLoS One
/// 9(12):e113637.
const GRIP_N: [f64; 2] = [304.0, 500.0];

/// The most that training gloves weigh, kg. Common practice, no source.
const GLOVES_KG: f64 = 0.25;

impl Marks {
    /// How a value of the number stands against people.
    pub fn stand(&self, value: f64) -> Stand {
        match self.seen {
            Some([least, most]) if (least..=most).contains(&value) => Stand::Seen,
            Some(_) => Stand::Beyond,
            None if self.beyond.is_some_and(|beyond| value > beyond) => Stand::Beyond,
            None => Stand::NotKnown,
        }
    }

    /// The same marks for a jumper of whose size nothing is known.
    fn not_known(beyond: Option<f64>, source: Source) -> Self {
        Self {
            seen: None,
            beyond,
            beyond_below: None,
            source,
        }
    }
}

impl Scenario {
    /// The marks of a number for this jumper's flown jump.
    pub fn marks(&self, parameter: Parameter, jump: &Jump) -> Option<Marks> {
        let grip_m_s2 = || jump.efforts().grip_m_s2;
        self.marks_of(parameter, &FlightSummary::of(&jump.readout), grip_m_s2)
    }

    /// The same for a flight of which no more is known; `grip_m_s2`, the largest acceleration of what
    /// the hands hold, is only asked for where it is needed.
    pub fn marks_of(
        &self,
        parameter: Parameter,
        summary: &FlightSummary,
        grip_m_s2: impl FnOnce() -> f64,
    ) -> Option<Marks> {
        let jumper = self.jumper();
        Some(match parameter.row().evidence {
            Evidence::None => return None,
            Evidence::PeakRate => rate(jumper, summary),
            // Where they end is for the body's shape and the strength of its joints to say
            // ([`crate::beyond`]).
            Evidence::Strength { source, .. } => whole(parameter, source),
            Evidence::Grip => self.hand_mass(grip_m_s2()),
            Evidence::Height => self.height(parameter),
            Evidence::Practice { seen_from, sources } => {
                practice(jumper, [seen_from, parameter.most()], sources)
            }
        })
    }

    /// The mass that takes as much force as the median grip has, moved as in this jump.
    fn hand_mass(&self, grip_m_s2: f64) -> Marks {
        let grip_n = match self.table {
            SegmentTable::Female => GRIP_N[0],
            SegmentTable::Male => GRIP_N[1],
        };
        let beyond = grip_n / grip_m_s2.max(f64::MIN_POSITIVE);
        if self.jumper().size != Size::Grown {
            // What a grown hand doesn't hold no child's does.
            return Marks::not_known(Some(beyond), Source::MarksHandMassNotKnown);
        }
        Marks {
            seen: Some([0.0, beyond.min(GLOVES_KG)]),
            beyond: Some(beyond),
            beyond_below: None,
            source: Source::MarksHandMass,
        }
    }

    fn height(&self, parameter: Parameter) -> Marks {
        let Mark {
            up_to,
            known,
            source,
            ..
        } = seen::height_m(self.jumper(), self.ground);
        // Everybody can jump lower.
        let seen = known.then(|| [parameter.least(), up_to.min(parameter.most())]);
        let nobody = match (self.ground, known) {
            (Ground::Trampoline, _) => None,
            (_, true) => Some(NOBODY_HIGHER_M),
            (_, false) => Some(up_to),
        };
        Marks {
            seen,
            beyond: nobody,
            beyond_below: None,
            source,
        }
    }
}

/// No mark of its own.
const fn whole(parameter: Parameter, source: Source) -> Marks {
    Marks {
        seen: Some(parameter.row().range),
        beyond: None,
        beyond_below: None,
        source,
    }
}

/// What is common practice of grown jumpers; sources are the one of theirs, and why there is none for
/// a child.
fn practice(jumper: Jumper, seen: [f64; 2], [source, not_known]: [Source; 2]) -> Marks {
    if jumper.size != Size::Grown {
        return Marks::not_known(None, not_known);
    }
    Marks {
        seen: Some(seen),
        beyond: None,
        beyond_below: None,
        source,
    }
}

/// Take-off rates that lead to the highest peaks seen, on this plan: the peak grows with the
/// take-off rate in proportion.
fn rate(jumper: Jumper, summary: &FlightSummary) -> Marks {
    let per_peak = summary.takeoff_rate_rad_s / summary.peak_rate_rad_s;
    let Mark { up_to, known, .. } = seen::peak_rate_rad_s(jumper);
    let most = per_peak * up_to;
    if !known {
        return Marks::not_known(Some(most), Source::MarksTakeoffRateNotKnown);
    }
    Marks {
        seen: Some([0.0, most]),
        beyond: Some(per_peak * RateUnit::Rpm.unit().to_si(NOBODY_FASTER_RPM)),
        beyond_below: None,
        source: Source::MarksTakeoffRate,
    }
}
