//! A flight from take-off to touch-down, and what it says.

pub mod constants;
pub mod efforts;
pub mod fixed_time;
pub mod flight_summary;
pub mod knot_search;
pub mod landing;
pub mod launch;
pub mod led_flight;
pub mod live_flight;
mod momentum;
pub mod motion_flight;
pub mod motion_table;
pub(crate) mod planned;
pub(crate) mod pose;
pub mod readout;
pub mod release;
pub mod sample;
pub mod sample_table;
pub mod step_record;
pub mod stepping;
pub mod table;
pub mod tabulated;
pub mod touchdown;

pub use launch::{Launch, Spin};
pub use momentum::MomentumParts;
pub use planned::*;
pub use pose::Pose;
pub use sample::FlightSample;
