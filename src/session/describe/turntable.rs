//! Somebody on a turntable, as lines of text.

use crate::describe::equation::Equation;
use crate::describe::measured_rate::measured;
use crate::describe::prediction::prediction;
use crate::describe::reading::{Group, Reading, line};
use crate::session::Session;
use crate::state::turntable::OnTurntable;
use turns_aloft_describe::unit::TENTHS_OF_JOULES;
use turns_aloft_describe::unit::{INERTIA, MOMENTUM, SECONDS, TURNS, UnitText};
use turns_aloft_physics::flight::MomentumParts;
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_turntable::{Sample, Stand};
use turns_aloft_words::{say, text};

/// Slower than this, rad/s, is at rest: no unit shows it.
const AT_REST_RAD_S: f64 = 5e-3;

/// Which way round, or that nothing turns.
pub fn sense(rate_rad_s: f64) -> &'static str {
    if rate_rad_s.abs() < AT_REST_RAD_S {
        text("turntable-at-rest")
    } else if rate_rad_s > 0.0 {
        text("turntable-anticlockwise")
    } else {
        text("turntable-clockwise")
    }
}

/// What somebody stands or sits on.
pub fn stand(stand: Stand) -> &'static str {
    text(match stand {
        Stand::Platform => "turntable-on-platform",
        Stand::PlatformSitting => "turntable-on-platform-sitting",
        Stand::Chair => "turntable-on-chair",
        Stand::Ice => "turntable-on-ground-ice",
    })
}

/// L = I · ω at the time shown.
pub fn equation(sample: &Sample) -> Equation {
    Equation::of(&MomentumParts {
        momentum_kg_m2_s: sample.momentum_kg_m2_s,
        inertia_kg_m2: sample.inertia_kg_m2,
        rate_rad_s: sample.rate_rad_s,
        rest_kg_m2_s: sample.momentum_kg_m2_s - sample.inertia_kg_m2 * sample.rate_rad_s,
    })
}

/// The rate as it is shown, without a sign: which way round stands beside it.
pub fn rate(session: &Session, rate_rad_s: f64) -> String {
    session.units().of(Kind::Rate).text(rate_rad_s.abs())
}

/// What is announced while it turns.
pub(crate) fn summary(session: &Session, on_turntable: &OnTurntable) -> String {
    let said = on_turntable.announced();
    let state = say!(
        "turntable-summary",
        rate = rate(session, said.rate_rad_s),
        sense = sense(said.rate_rad_s),
        inertia = INERTIA.text(said.inertia_kg_m2),
        momentum = MOMENTUM.text(said.momentum_kg_m2_s)
    );
    // Once, when it is told.
    let told = (on_turntable.prediction()).filter(|it| {
        it.outcome()
            .is_some_and(|outcome| outcome.to.t_s == said.t_s)
    });
    match told {
        Some(told) => format!("{} {state}", prediction(on_turntable, told)),
        None => state,
    }
}

/// The picture in one sentence.
pub(crate) fn picture(session: &Session, on_turntable: &OnTurntable) -> String {
    let said = on_turntable.announced();
    say!(
        "turntable-picture",
        stand = stand(on_turntable.setup().stand),
        rate = rate(session, said.rate_rad_s),
        sense = sense(said.rate_rad_s),
        hands = session
            .units()
            .of(Kind::Length)
            .text(said.position.hand_distance_m)
    )
}

/// All that is read at the time shown.
pub(crate) fn lines(session: &Session, on_turntable: &OnTurntable) -> Vec<Reading> {
    let shown = on_turntable.shown();
    let length = session.units().of(Kind::Length);
    let said_rate = format!(
        "{}, {}",
        rate(session, shown.rate_rad_s),
        sense(shown.rate_rad_s)
    );
    let all = [
        (Group::Rate, "rate", text("panel-curve-rate"), said_rate),
        (
            Group::Rate,
            "turns",
            text("turntable-turns"),
            TURNS.text(shown.turns()),
        ),
        (
            Group::Inertia,
            "inertia",
            text("panel-curve-inertia"),
            INERTIA.text(shown.inertia_kg_m2),
        ),
        (
            Group::Inertia,
            "momentum",
            text("panel-curve-momentum"),
            MOMENTUM.text(shown.momentum_kg_m2_s),
        ),
        (
            Group::Energy,
            "energy",
            text("panel-curve-energy"),
            TENTHS_OF_JOULES.text(shown.kinetic_j),
        ),
        (
            Group::Energy,
            "work",
            text("turntable-work"),
            TENTHS_OF_JOULES.text(shown.work_j),
        ),
        (
            Group::Energy,
            "heat",
            text("turntable-heat"),
            TENTHS_OF_JOULES.text(shown.heat_j),
        ),
        (
            Group::Energy,
            "pushed",
            text("turntable-pushed"),
            TENTHS_OF_JOULES.text(shown.pushed_j),
        ),
        (
            Group::Hands,
            "hands",
            text("turntable-hands"),
            length.text(shown.position.hand_distance_m),
        ),
        (
            Group::Time,
            "time",
            text("turntable-time"),
            SECONDS.text(shown.t_s),
        ),
        (
            Group::Time,
            "stand",
            text("turntable-what"),
            stand(on_turntable.setup().stand).to_owned(),
        ),
    ];
    let predicted = on_turntable.prediction().map(|predicted| {
        let said = prediction(on_turntable, predicted);
        (Group::Inertia, "predicted", text("turntable-predict"), said)
    });
    let measured = on_turntable.measured().map(|rate| {
        let said = measured(session, rate);
        (Group::Rate, "measured", text("turntable-sensor"), said)
    });
    all.into_iter()
        .chain(predicted)
        .chain(measured)
        .map(|(group, key, label, said)| line(group, format!("turntable:{key}"), label, said, ""))
        .collect()
}
