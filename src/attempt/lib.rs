//! A real attempt: the jump that it was meant to be, and what was measured of it.

pub mod attempt;
pub mod film;
pub mod sensor;
pub mod stop_watch;

pub use attempt::{Attempt, Measured};
