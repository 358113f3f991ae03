//! The panels natively: every control found by role and name, operated, and with room enough, at the
//! sizes that the page is judged at and in both languages.

mod harness;
mod names;
mod operation;
mod room;
