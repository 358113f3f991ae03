//! Sheets of paper, as complete pages of HTML that a browser prints on A4 or Letter: legible in black and white,
//! with nothing in them that has to be fetched.
//!
//! What is right on them is worked out by the flights of the lesson, as everywhere.

mod answers;
mod chart;
mod coach;
mod html;
mod pictured;
mod plan;
mod pupil;
mod results;

pub use answers::answers;
pub use coach::coach;
pub use plan::plan;
pub use pupil::pupil;
pub use results::results;
