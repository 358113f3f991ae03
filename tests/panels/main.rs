//! The panels, run natively: every control is found by role and name, operated, and checked for
//! room, at four sizes and in both languages.

mod charts;
mod finger;
mod harness;
mod help;
mod legible;
mod lesson;
mod letters;
mod measure;
mod names;
mod numbers;
mod operation;
mod own_jump;
mod picture;
mod picture_text;
mod ring;
mod room;
mod slow_flight;
mod steady;
mod swipe;
mod turn_try;
mod turntable;
mod turntable_sensor;
