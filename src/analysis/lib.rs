//! Questions answered by many flights. Beside the physics; knows no screen.

pub mod budget;
pub mod caution;
pub mod combination;
pub mod compare;
pub mod contour;
pub mod effort_marks;
pub mod field;
pub mod goal;
pub mod hang_time;
pub mod judge;
pub mod lever;
pub mod limits;
pub mod map;
pub mod one_change;
mod search;
pub mod seen;
pub mod steps;
pub mod turn_try;
pub mod uncertainty;
pub mod weights;
