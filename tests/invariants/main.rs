//! What must hold on any admissible input: property tests over the whole input space.

mod accuracy;
#[path = "../support/body_sums.rs"]
mod body_sums;
mod live_flight;
mod mirror;
mod momentum;
mod motion;
mod pose;
mod scaling;
#[path = "../support/space.rs"]
mod space;
mod sums;
mod touchdown;
mod turns;
mod work;
