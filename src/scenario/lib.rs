//! A jump as the user says it: the saved form, its admissible ranges, the starting points, and the
//! way from there into the mechanics.

pub mod beyond;
pub mod call;
pub mod collection;
pub mod curve;
pub mod effort_report;
pub mod export;
pub mod facing;
pub mod fault;
pub mod file;
pub mod fly;
pub mod ground;
pub mod input;
pub mod jump;
pub mod jumper;
pub mod led;
pub mod link;
pub mod marks;
pub mod parameter;
pub mod reading;
pub mod scenario;
pub mod seen;
pub mod setting;
pub mod source;
pub mod starts;
pub mod strength;
pub mod units;
mod written;

pub use scenario::{HandsKeep, Scenario};
