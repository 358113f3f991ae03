//! Questions answered by many flights. Beside the physics; knows no screen.

pub mod budget;
pub mod caution;
pub mod compare;
pub mod joint;
pub mod lever;
pub mod limits;
pub mod map;
pub mod one_change;
mod search;
pub mod steps;
pub mod wanted;
