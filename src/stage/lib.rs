//! The 3D picture: the jumper over the ice, drawn from a finished flight, or somebody on a turntable.
//!
//! Everything drawn follows from resources that change only when the session's jump, reference
//! attempt or playhead does. In a frame without such a change these systems do nothing and request
//! no further frame.

pub mod current_session;
pub mod palette;

mod axis;
mod beside;
mod boards;
mod camera;
mod dial;
mod drawn;
mod figure;
mod framing;
mod gesture;
mod ground;
mod hand_distance;
mod layers;
mod level;
mod mannequin;
mod material;
mod mesh_builder;
mod orbit;
mod order;
mod plugin;
mod reference;
mod seat;
mod shown;
mod shown_turntable;
mod sticks;
mod theme;
mod traces;
mod trails;
mod trampoline;
mod turntable;

pub use crate::hand_distance::{HandDistance, HandDistances};
pub use crate::orbit::Orbit;
pub use crate::order::{StageArea, StageSystems};
pub use crate::plugin::StagePlugin;
pub use crate::turntable::{AxisOnWindow, TurntableAxis};
