//! The jumper as drawn, as plain geometry: where every segment is shown at every moment, the landing
//! that is shown after touch-down, and the forms of legs and feet.
//!
//! A package of its own, because tests reach it natively, which they cannot the 3D picture, and
//! because what is only shown must not be reached by anything that computes: no readout, no session.

pub mod forms;
pub mod landing;
pub mod leg;
pub mod pose;
pub mod shown;

mod apart;
mod easing;
mod ground_motion;
