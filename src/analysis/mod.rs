//! Questions answered by many flights: beside the physics, they know no screen.

pub mod caution;
pub mod joint;
pub mod lever;
pub mod limits;
mod search;
pub mod steps;
pub mod wanted;
