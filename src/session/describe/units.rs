//! Units that are no choice of the user's.

use turns_aloft_describe::unit::fixed;
use turns_aloft_scenario::units::{Unit, UnitSign};

pub(crate) const SECONDS: Unit = fixed(UnitSign::S, 2);
pub const INERTIA: Unit = fixed(UnitSign::KgM2, 2);
pub const MOMENTUM: Unit = fixed(UnitSign::KgM2PerS, 1);
pub const JOULES: Unit = fixed(UnitSign::J, 0);
pub(crate) const WATTS: Unit = fixed(UnitSign::W, 0);
pub(crate) const NEWTONS: Unit = fixed(UnitSign::N, 0);
