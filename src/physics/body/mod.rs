//! The body: segments, what they weigh and measure, postures and where these put every segment.

pub mod forward_kinematics;
pub(crate) mod model;
pub mod overlap;
pub mod posture;
pub mod segments;
pub mod surface;
pub mod thickness;

pub use model::*;
