//! Facts in words, in the language spoken: the one layer between what is known and what is said.

pub mod budget;
pub mod caution;
mod error;
pub mod input;
pub mod jump;
pub mod lever;
pub mod number;
pub mod source;
pub mod start;
pub mod unit;
