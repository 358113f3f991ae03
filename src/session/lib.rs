//! What the user is doing. Screens read it and call its methods; it knows no screen.

mod answers;
pub mod compare;
pub mod efforts;
pub mod goal;
pub mod map;
mod operations;
pub mod readings;
mod session;
mod state;
pub mod weights;
pub mod why;

pub use crate::operations::action::Action;
pub use crate::session::Session;
pub use crate::state::document::{Attempt, Document};
pub use crate::state::history::{Change, History, MOST_STEPS};
pub use crate::state::library::Library;
pub use crate::state::playback::{AFTER_S, BEFORE_S, FRAME_S, Playback, SPEEDS};
pub use crate::state::policy::Policy;
pub use crate::state::question::Question;
pub use crate::state::visit::VisitState;
