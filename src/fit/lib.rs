//! What the marks of a real attempt say of its jump, and how sure that is.
//!
//! The unknowns of an attempt are functions of standard normal variables (`unknown`). Every candidate is
//! flown by the mechanics (`candidate`) and held against the marks (`likelihood`). The likeliest are looked
//! for from several whole-turn counts (`scan`, `solve`), then jumps are drawn around them and weighed
//! (`proposal`, `draws`) and moved on (`walk`). What comes of it is the attempt's jump with a few hundred equally likely ones
//! (`fit`), and what these leave open (`untold`). `fitting` does all that piece by piece.

pub mod candidate;
pub mod conditional;
pub mod contact;
pub mod draws;
pub mod fit;
pub mod fitting;
pub mod likelihood;
pub mod mark;
pub mod problem;
pub mod proposal;
pub mod quantity;
pub mod sample;
pub mod scan;
pub mod solve;
pub mod unknown;
pub mod untold;
pub mod walk;

pub use fit::Fit;
pub use fitting::Fitting;
