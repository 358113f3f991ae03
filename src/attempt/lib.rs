//! A real attempt: the jump that it was meant to be, and what was measured of it.

pub mod attempt;
mod entries;
pub mod example;
pub mod file;
pub mod film;
pub mod sensor;
pub mod stop_watch;
pub mod unreadable;

pub use attempt::{Attempt, Measured};
