//! How far jumpers have been seen to go, by who they are.

use crate::ground::Ground;
use crate::jumper::{Jumper, Size};
use crate::source::Source;
use crate::units::RateUnit;
use turns_aloft_physics::segments::SegmentTable;

/// How a value stands against people.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Stand {
    /// Jumpers like this one have been seen there.
    Seen,
    /// Neither can be said.
    AtEdge,
    /// Not known for a jumper of this size; others have been seen there.
    NotKnown,
    /// No jumper like this one has been seen there, or nobody at all.
    Beyond,
}

/// How far jumpers have been seen to go in something.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Mark {
    /// From here on it is at the edge of what has been seen.
    pub edge_from: f64,
    /// As far as that; infinite where no end was found.
    pub up_to: f64,
    /// Whether these were jumpers of this size; if not, they are the ones who went farthest of all.
    pub known: bool,
    pub source: Source,
}

impl Mark {
    pub fn stand(&self, value: f64) -> Stand {
        if value > self.up_to {
            Stand::Beyond
        } else if !self.known {
            Stand::NotKnown
        } else if value > self.edge_from {
            Stand::AtEdge
        } else {
            Stand::Seen
        }
    }
}

/// 29.1 cm and twice 4.8 cm: mean and two deviations of 19 girls of 10 to 16 who skate, off the ice
/// (Myklebust & Kjellstadli, congress abstract; read).
const GIRLS_M: f64 = 0.387;
/// The largest of the yearly means of boys of 12 to 15, 30.8 to 39.9 cm (Tian et al. 2023, abstract;
/// read). No deviation could be read: single boys jump higher.
const BOYS_M: f64 = 0.399;
/// 38.3 cm and twice 2.6 cm: mean and two deviations of off-ice double Axels of women that were
/// landed (congress abstract, European College of Sport Science; read).
const WOMEN_M: f64 = 0.435;
/// 0.7 s in the air, quoted for four turns (press, secondary).
const MEN_M: f64 = 0.60;

/// The highest peaks seen, rpm: common practice, no source. On-ice spins of 342 rpm are on record.
const PEAK_RPM: f64 = 440.0;

/// The rise of the centre of mass.
pub fn height_m(jumper: Jumper, ground: Ground) -> Mark {
    let mark = |up_to, source| Mark {
        edge_from: up_to,
        up_to,
        known: true,
        source,
    };
    let not_known = |up_to, source| Mark {
        known: false,
        ..mark(up_to, source)
    };
    match (ground, jumper.size, jumper.table) {
        (Ground::Trampoline, Size::Grown, _) => mark(f64::INFINITY, Source::MarksTrampoline),
        (Ground::Trampoline, ..) => not_known(f64::INFINITY, Source::MarksTrampolineNotKnown),
        (_, Size::Small, _) => not_known(MEN_M, Source::MarksJumpHeightNotKnown),
        (_, Size::Child, SegmentTable::Female) => mark(GIRLS_M, Source::MarksJumpHeightGirl),
        (_, Size::Child, SegmentTable::Male) => mark(BOYS_M, Source::MarksJumpHeightBoy),
        (_, Size::Grown, SegmentTable::Female) => mark(WOMEN_M, Source::MarksJumpHeightWoman),
        (_, Size::Grown, SegmentTable::Male) => mark(MEN_M, Source::MarksJumpHeightMan),
    }
}

/// The fastest that a body turns in its flight.
pub fn peak_rate_rad_s(jumper: Jumper) -> Mark {
    let known = jumper.size == Size::Grown;
    let up_to = RateUnit::Rpm.unit().to_si(PEAK_RPM);
    Mark {
        edge_from: up_to,
        up_to,
        known,
        source: if known {
            Source::SeenPeakRate
        } else {
            Source::SeenPeakRateNotKnown
        },
    }
}
