//! The turn map.

mod describe;

pub use crate::answers::map::NODES;
pub use crate::answers::map::picture::Picture;
pub use crate::state::levers::Levers;
