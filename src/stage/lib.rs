//! The picture: the jumper over the ice, read from a finished flight.
//!
//! Everything seen follows from two resources that change only when the session's jump or
//! playhead does; a frame in which nothing changed does no work here and asks for no other.

pub mod current_session;
pub mod palette;

mod axis;
mod camera;
mod dial;
mod feet;
mod figure;
mod framing;
mod gesture;
mod ghost;
mod ice;
mod mannequin;
mod mesh_builder;
mod orbit;
mod order;
mod paint;
mod plugin;
mod shown;
mod theme;
mod trails;

pub use crate::orbit::Orbit;
pub use crate::order::{StageArea, StageSystems};
pub use crate::plugin::StagePlugin;
