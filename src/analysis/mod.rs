//! Questions answered by many flights. Beside the physics; knows no screen.

pub mod map;
