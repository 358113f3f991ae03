//! Facts in words, in the language spoken.

pub mod input;
pub mod number;
