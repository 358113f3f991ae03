//! How the curves of a run are shown: names, units and colours.

use crate::style::{INERTIA as INERTIA_COLOUR, TEXT, ThemeColour};
use turns_aloft_describe::unit::{INERTIA, MOMENTUM};
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_scenario::units::Unit;
use turns_aloft_session::Session;
use turns_aloft_session::turntable::ENERGY;
use turns_aloft_turntable::RunCurve;
use turns_aloft_words::text;

pub fn label(curve: RunCurve) -> &'static str {
    match curve {
        RunCurve::Rate => text("panel-curve-rate"),
        RunCurve::Inertia => text("panel-curve-inertia"),
        RunCurve::Momentum => text("panel-curve-momentum"),
        RunCurve::Energy => text("panel-curve-energy"),
    }
}

pub const fn unit(curve: RunCurve, session: &Session) -> Unit {
    match curve {
        RunCurve::Rate => session.units().of(Kind::Rate),
        RunCurve::Inertia => INERTIA,
        RunCurve::Momentum => MOMENTUM,
        RunCurve::Energy => ENERGY,
    }
}

pub const fn colour(curve: RunCurve) -> ThemeColour {
    match curve {
        RunCurve::Inertia => INERTIA_COLOUR,
        _ => TEXT,
    }
}
