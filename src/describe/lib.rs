//! Facts in words, in the language spoken: the one layer between what is known and what is said.
//!
//! The layers below know no words, so their types get them here, by the traits of this file.

pub mod attempt;
pub mod beyond;
pub mod budget;
pub mod call;
pub mod caution;
pub mod comparison;
pub mod curve;
mod error;
pub mod film;
pub mod fit;
pub mod goal;
pub mod input;
pub mod joint;
pub mod jump;
pub mod lesson;
pub mod lever;
pub mod measuring_caution;
pub mod name;
pub mod number;
pub mod outcome;
mod overlay;
pub mod quantity;
pub mod range;
pub mod report;
pub mod rounded_budget;
pub mod rounding;
pub mod source;
pub mod spreadsheet;
pub mod start;
mod trace;
pub mod turn_try;
pub mod turns;
pub mod turntable;
pub mod turntable_caution;
pub mod typed;
pub mod unit;
pub mod weights;

/// What something is called.
pub trait Label {
    fn label(self) -> &'static str;
}

/// What something is called inside a sentence.
pub trait Inline {
    fn inline(self) -> &'static str;
}

/// What something is, in a sentence or two.
pub trait About {
    fn about(self) -> &'static str;
}

/// What has one text.
pub trait Text {
    fn text(self) -> &'static str;
}

/// What is told in a sentence with values in it: an answer, or what is wrong.
pub trait Sentence {
    fn sentence(&self) -> String;
}
