//! How each curve of the charts is shown: its colour and its values.

use crate::style::{ACCENT, INERTIA as INERTIA_COLOUR, TEXT, ThemeColour};
use turns_aloft_describe::curve::unit;
use turns_aloft_describe::unit::UnitText;
use turns_aloft_scenario::curve::Curve;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_session::Session;
use turns_aloft_session::readings::turns_so_far_text;

pub const fn colour(curve: Curve) -> ThemeColour {
    match curve {
        Curve::Inertia => INERTIA_COLOUR,
        Curve::Turns => ACCENT,
        _ => TEXT,
    }
}

/// A value of a jump with its unit, as it stands beside the curve; turns have theirs in the curve's name.
pub fn value_text(curve: Curve, session: &Session, jump: &Jump, value: f64) -> String {
    match curve {
        Curve::Turns => turns_so_far_text(jump, value),
        _ => unit(curve, session.units()).text(value),
    }
}

/// A value to draw a horizontal line at: the turns needed.
pub fn mark(curve: Curve, session: &Session) -> Option<f64> {
    let owed = session.jump().owed.map(|owed| owed.turns);
    owed.filter(|_| curve == Curve::Turns)
}
