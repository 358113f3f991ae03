//! How each curve of the charts is shown: its name, unit and colour.

use crate::style::{ACCENT, INERTIA as INERTIA_COLOUR, TEXT, ThemeColour};
use turns_aloft_describe::unit::{INERTIA, JOULES, MOMENTUM, NEWTON_METRES, TURNS, UnitText};
use turns_aloft_scenario::curve::Curve;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_scenario::units::Unit;
use turns_aloft_session::Session;
use turns_aloft_session::readings::turns_so_far_text;
use turns_aloft_words::text;

pub fn label(curve: Curve) -> &'static str {
    match curve {
        Curve::Rate => text("panel-curve-rate"),
        Curve::Inertia => text("panel-curve-inertia"),
        Curve::Momentum => text("panel-curve-momentum"),
        Curve::Energy => text("panel-curve-energy"),
        Curve::Turns => text("panel-curve-turns"),
        Curve::Height => text("panel-curve-height"),
        Curve::Torque => text("panel-curve-torque"),
    }
}

pub const fn colour(curve: Curve) -> ThemeColour {
    match curve {
        Curve::Inertia => INERTIA_COLOUR,
        Curve::Turns => ACCENT,
        _ => TEXT,
    }
}

pub fn unit(curve: Curve, session: &Session) -> Unit {
    match curve {
        Curve::Rate => session.units().of(Kind::Rate),
        Curve::Inertia => INERTIA,
        Curve::Momentum => MOMENTUM,
        Curve::Energy => JOULES,
        Curve::Turns => TURNS,
        Curve::Height => session.units().of(Kind::Length),
        Curve::Torque => NEWTON_METRES,
    }
}

/// A value of a jump with its unit, as it stands beside the curve; turns have theirs in the curve's name.
pub fn value_text(curve: Curve, session: &Session, jump: &Jump, value: f64) -> String {
    match curve {
        Curve::Turns => turns_so_far_text(jump, value),
        _ => unit(curve, session).text(value),
    }
}

/// A value to draw a horizontal line at: the turns needed.
pub fn mark(curve: Curve, session: &Session) -> Option<f64> {
    let owed = session.jump().owed.map(|owed| owed.turns);
    owed.filter(|_| curve == Curve::Turns)
}
