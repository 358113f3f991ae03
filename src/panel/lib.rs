//! Everything on the screen that is not the 3D picture: the turns, the sliders, the charts.
//!
//! Panels read the session's finished flight and call the session's methods; they compute nothing.

mod bar;
mod begun_jump;
mod beyond;
mod cautions;
mod charts;
mod columns;
mod command;
mod compare;
mod controls;
mod fitted;
mod folded_charts;
mod folded_inputs;
mod goal;
mod greeting;
mod hang_time;
mod help;
mod jumps_menu;
mod layout;
mod led_by_hand;
mod lesson;
mod map;
mod measure;
mod menu_area;
mod notice;
mod number;
mod number_row;
mod panels;
mod part_slider;
mod picture_text;
mod playback;
mod questions;
mod readouts;
mod round_steps;
mod share_menu;
mod signs;
mod slow_flight;
mod strip;
mod style;
mod text;
mod turn_try;
mod turns;
mod turntable;
mod uncertainty;
mod undo;
mod views;
mod weights;
mod why;

pub use crate::command::{PageCommand, Sheet};
pub use crate::controls::touch_targets;
pub use crate::panels::{Frame, Panels, show};
pub use crate::picture_text::{HandDistance, hand_distances};
pub use crate::turntable::AxisOnPicture;
