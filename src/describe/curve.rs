//! What the curves over a flight and over a run on the turntable are called, and their units.

use crate::Label;
use crate::unit::{INERTIA, JOULES, MOMENTUM, NEWTON_METRES, TENTHS_OF_JOULES, TURNS};
use turns_aloft_scenario::curve::Curve;
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_scenario::units::{Unit, Units};
use turns_aloft_turntable::RunCurve;
use turns_aloft_words::text;

impl Label for Curve {
    fn label(self) -> &'static str {
        match self {
            Self::Rate => text("panel-curve-rate"),
            Self::Inertia => text("panel-curve-inertia"),
            Self::Momentum => text("panel-curve-momentum"),
            Self::Energy => text("panel-curve-energy"),
            Self::Turns => text("panel-curve-turns"),
            Self::Height => text("panel-curve-height"),
            Self::Torque => text("panel-curve-torque"),
        }
    }
}

impl Label for RunCurve {
    fn label(self) -> &'static str {
        match self {
            Self::Rate => Curve::Rate.label(),
            Self::Inertia => Curve::Inertia.label(),
            Self::Momentum => Curve::Momentum.label(),
            Self::Energy => Curve::Energy.label(),
        }
    }
}

/// The unit in which a curve over a flight is shown.
pub const fn unit(curve: Curve, units: &Units) -> Unit {
    match curve {
        Curve::Rate => units.of(Kind::Rate),
        Curve::Inertia => INERTIA,
        Curve::Momentum => MOMENTUM,
        Curve::Energy => JOULES,
        Curve::Turns => TURNS,
        Curve::Height => units.of(Kind::Length),
        Curve::Torque => NEWTON_METRES,
    }
}

/// The unit in which a curve over a run is shown.
pub const fn run_unit(curve: RunCurve, units: &Units) -> Unit {
    match curve {
        RunCurve::Rate => units.of(Kind::Rate),
        RunCurve::Inertia => INERTIA,
        RunCurve::Momentum => MOMENTUM,
        RunCurve::Energy => TENTHS_OF_JOULES,
    }
}
