//! A lesson: steps that ask, one after the other, and let fly only what has been predicted.
//!
//! Nothing that is right is written down: it is worked out by flying what a step sets up ([`truth`]).

pub mod answer;
mod answer_file;
mod entries;
pub mod fault;
pub mod figure;
pub mod file;
pub mod flights;
pub mod flown;
pub mod free;
pub mod lesson;
pub mod names;
pub mod progress;
pub mod progress_file;
pub mod quantity;
pub mod said;
pub mod setup;
mod setup_file;
pub mod step;
mod step_file;
pub mod truth;

pub use answer::{Answer, Choice, Meaning};
pub use flights::Flights;
pub use flown::Flown;
pub use lesson::{ClassroomAnswer, Lesson, Part, Plan};
pub use progress::{Prediction, Progress, Record, Stage};
pub use quantity::Quantity;
pub use said::Said;
pub use setup::{Changes, Setup, Variant};
pub use step::Step;
pub use truth::{Truth, Unanswerable};
