//! What each curve of the charts shows: its name, unit and colour, and its values over a flight.

use crate::style::{ACCENT, INERTIA as INERTIA_COLOUR, TEXT, ThemeColour};
use turns_aloft_describe::unit::{INERTIA, JOULES, MOMENTUM, NEWTON_METRES, TURNS, UnitText};
use turns_aloft_physics::efforts::JointGroup;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_scenario::units::Unit;
use turns_aloft_session::readings::turns_of;
use turns_aloft_session::{Curve, Session};
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

/// A value with its unit, as it stands beside the curve; turns have theirs in the curve's name.
pub fn value_text(curve: Curve, session: &Session, value: f64) -> String {
    let unit = unit(curve, session);
    match curve {
        Curve::Turns => unit.number(value),
        _ => unit.text(value),
    }
}

/// A value to draw a horizontal line at: the turns needed.
pub fn mark(curve: Curve, session: &Session) -> Option<f64> {
    let owed = session.jump().owed.map(|owed| owed.turns);
    owed.filter(|_| curve == Curve::Turns)
}

/// The value at a time, held at the flight's ends.
pub fn value(curve: Curve, scenario: &Scenario, jump: &Jump, t_s: f64) -> f64 {
    let flight = &jump.flight;
    match curve {
        Curve::Rate => scenario.turning.sign() * flight.at(t_s).spin_rad_s,
        Curve::Inertia => flight.at(t_s).inertia_kg_m2,
        Curve::Momentum => flight.momentum_at(t_s).momentum_kg_m2_s,
        Curve::Energy => flight.at(t_s).energy_j,
        Curve::Turns => turns_of(scenario, &flight.at(t_s)),
        Curve::Height => flight.at(t_s).cm_height_m,
        Curve::Torque => {
            let loads = flight.loads_at(t_s);
            largest(|group| loads.largest_torque_n_m(group.segments()))
        }
    }
}

/// Time and value, in SI, over the flight.
pub fn points(curve: Curve, scenario: &Scenario, jump: &Jump) -> Vec<[f64; 2]> {
    if curve == Curve::Torque {
        let samples = jump.efforts().samples.iter();
        return samples
            .map(|at| [at.t_s, largest(|group| at.torque_n_m(group))])
            .collect();
    }
    let samples = jump.flight.samples.iter();
    samples
        .map(|sample| {
            let value = match curve {
                Curve::Rate => scenario.turning.sign() * sample.spin_rad_s,
                Curve::Inertia => sample.inertia_kg_m2,
                Curve::Energy => sample.energy_j,
                Curve::Turns => turns_of(scenario, sample),
                Curve::Height => sample.cm_height_m,
                Curve::Momentum | Curve::Torque => value(curve, scenario, jump, sample.t_s),
            };
            [sample.t_s, value]
        })
        .collect()
}

fn largest(of: impl Fn(JointGroup) -> f64) -> f64 {
    JointGroup::ALL.into_iter().map(of).fold(0.0, f64::max)
}
