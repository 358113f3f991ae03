//! Which column is what, and in what unit: found (`find_columns.rs`), and changed by the user.

use crate::units::{AccelerationUnit, RateUnit, TimeUnit};

/// The column that tells the time.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct TimeColumn {
    pub column: usize,
    pub unit: TimeUnit,
    /// It has the time since the reading before instead of a clock's.
    pub intervals: bool,
}

/// Three columns along axes at right angles, a right-handed set in this order.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Axes<U> {
    pub columns: [usize; 3],
    pub unit: U,
}

/// Which column is what. A file may have one of the two sensors alone.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Columns {
    pub time: TimeColumn,
    pub gyroscope: Option<Axes<RateUnit>>,
    pub accelerometer: Option<Axes<AccelerationUnit>>,
}
