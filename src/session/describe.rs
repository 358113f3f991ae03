//! The session in words.

pub mod compare;
pub mod efforts;
pub mod equation;
pub mod flight;
pub mod goal_lines;
pub mod goal_words;
pub mod lesson;
mod loads;
pub mod map;
pub mod measured_rate;
pub mod measuring;
pub mod moment;
pub mod pace;
pub mod prediction;
pub mod reading;
pub mod readings;
pub mod result;
pub mod slow_flight;
mod turn_try;
pub mod turntable;
pub mod uncertainty;
pub mod weights;
pub mod why_lines;
pub mod why_words;
