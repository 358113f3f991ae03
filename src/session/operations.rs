//! What can be done to the session, by subject.

pub mod action;
mod compare;
pub mod film_overlay;
mod fitting;
mod goal;
mod goal_limits;
mod hang_time;
mod inputs;
mod language;
mod library;
mod link;
mod map;
mod marks;
mod measuring;
mod naming;
mod opening;
mod playback;
mod preferences;
mod question;
mod reference;
mod sensor;
pub mod stepping;
mod uncertainty;
mod visit;
mod weights;
mod why;
