//! Turns Aloft: how many turns a body completes before it comes down.

pub mod physics;
pub mod scenario;
pub mod session;
