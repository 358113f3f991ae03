//! What the user is doing. Screens read it and call its methods; it knows no screen.

mod answers;
mod describe;
mod operations;
mod session;
mod state;

pub use crate::operations::action::Action;
pub use crate::operations::saving::Saved;
pub use crate::session::{Moment, Session};
pub use crate::state::curves::ShownCurves;
pub use crate::state::document::{Attempt, Document};
pub use crate::state::history::{Change, History, MOST_STEPS};
pub use crate::state::library::Library;
pub use crate::state::playback::{AFTER_S, BEFORE_S, FRAME_S, Playback, SPEEDS};
pub use crate::state::policy::Policy;
pub use crate::state::question::Question;
pub use crate::state::visit::VisitState;
pub use turns_aloft_scenario::curve::Curve;

/// The jump as lines of text.
pub mod readings {
    pub use crate::describe::equation::Equation;
    pub use crate::describe::moment::{phase, picture, turns_at, turns_so_far_text};
    pub use crate::describe::pace::Pace;
    pub use crate::describe::reading::{Group, Reading};
    pub use crate::describe::readings::readings;
    pub use crate::describe::result::summary;
    pub use crate::describe::uncertainty::fitted_inputs;
}

/// Why the jump has the turns it has.
pub mod why {
    pub use crate::answers::why::BudgetAnswer;
    pub use crate::describe::why_words as words;
}

/// What would win the missing turns.
pub mod goal {
    pub use crate::answers::goal::can;
    pub use crate::describe::goal_words as words;
    pub use crate::state::goal_settings::GoalTurns;
}

/// The turns over two inputs.
pub mod map {
    pub use crate::answers::map::NODES;
    pub use crate::answers::map::picture::Picture;
    pub use crate::state::levers::Levers;
}

/// A lesson that is played.
pub mod lesson {
    pub use crate::describe::lesson::{
        asked, happened, option, place, predicted, scene, shown, stage,
    };
    pub use crate::state::lesson::LessonInSight;
}

/// For the attempt that is being measured.
pub mod measuring {
    pub use crate::describe::measuring::{about, frame, title};
    pub use crate::operations::film_overlay::{FigureLine, LineOf, OverlayState};
    pub use crate::state::measuring::Measuring;
    pub use crate::state::measuring::mark::Mark;
    pub use crate::state::measuring::open_film::OpenFilm;
    pub use crate::state::measuring::trace_file::TraceFile;
}

/// For the jump that is flown slowly by hand.
pub mod slow_flight {
    pub use crate::describe::slow_flight::{against, how, lands_in, percent, rows};
    pub use crate::state::slow_flight::{Landed, PACES, SlowFlight};
}

/// For somebody on a turntable.
pub mod turntable {
    pub use crate::describe::measured_rate::{measured, measured_about};
    pub use crate::describe::prediction::{prediction, tendency};
    pub use crate::describe::turntable::{equation, rate, sense, stand};
    pub use crate::operations::turntable_numbers::TypedNumber;
    pub use crate::operations::turntable_sensor::NoSensor;
    pub use crate::state::measured_rate::MeasuredRate;
    pub use crate::state::prediction::{Prediction, Tendency};
    pub use crate::state::slowing::{SlowedBy, Slowing};
    pub use crate::state::turntable::OnTurntable;
}

/// How the jump differs from another attempt.
pub mod compare {
    pub use crate::answers::kept_results::KeptResult;
    pub use crate::describe::compare::hang_times;
    pub use crate::state::document::Which;
    pub use crate::state::reference::Reference;
}
