//! Who jumps, as far as figures about people tell jumpers apart: by sex and by size.

use crate::scenario::Scenario;
use turns_aloft_physics::segments::SegmentTable;

/// Jumpers that are shorter are taken for children: between the median statures at 12 (1.51 m and
/// 1.49 m, girls and boys) and at 14 (1.60 m and 1.64 m) of the CDC 2000 growth charts. Where between
/// is our choice; a small adult is taken for a child, too.
pub const CHILD_BELOW_M: f64 = 1.55;

/// Of jumpers that are shorter nothing was found: the youngest that were measured are 10. The limit is
/// our choice.
pub const KNOWN_FROM_M: f64 = 1.25;

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Size {
    Grown,
    Child,
    /// So small that no figures were found.
    Small,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Jumper {
    /// The sex, as the mass table says it.
    pub table: SegmentTable,
    pub size: Size,
}

impl Scenario {
    pub fn jumper(&self) -> Jumper {
        Jumper {
            table: self.table,
            size: Size::of(self.stature_m),
        }
    }
}

impl Size {
    pub fn of(stature_m: f64) -> Self {
        if stature_m < KNOWN_FROM_M {
            Self::Small
        } else if stature_m < CHILD_BELOW_M {
            Self::Child
        } else {
            Self::Grown
        }
    }
}
