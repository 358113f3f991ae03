//! Where a flown figure stands in the picture of a film: a distant camera fitted to the marks of head, feet
//! and hips, and of a point of the background where it moves. And what the marks say of gravity, by which a
//! wrong rate of slow motion is found out.
//!
//! Times are real seconds on the film's clock, as in the attempt; picture points are in pixels from the
//! left and from the top.

pub mod camera;
pub mod fall;
mod figure;
pub mod line_of_sight;
mod marks;
mod pan;
mod upright;

pub use camera::{Camera, NoCamera};
pub use fall::{Fall, RateCheck};
pub use line_of_sight::LineOfSight;
