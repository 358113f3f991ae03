//! What somebody expects of the angular momentum, and what became of it, in words.

use crate::state::prediction::{Outcome, Prediction, Tendency, WATCHED_S};
use crate::state::turntable::OnTurntable;
use turns_aloft_describe::number::plain;
use turns_aloft_describe::unit::{UnitText, fixed};
use turns_aloft_scenario::units::{Unit, UnitSign};
use turns_aloft_turntable::Sample;
use turns_aloft_words::{say, text};

/// Finer than in the equation: in some seconds it changes by little.
const MOMENTUM: Unit = fixed(UnitSign::KgM2PerS, 2);

pub fn tendency(of: Tendency) -> &'static str {
    text(match of {
        Tendency::Falls => "turntable-falls",
        Tendency::Stays => "turntable-stays",
        Tendency::Rises => "turntable-rises",
    })
}

/// What became of it, and why; until then what is waited for.
pub fn prediction(on_turntable: &OnTurntable, prediction: &Prediction) -> String {
    let expected = tendency(prediction.expected);
    let Some(outcome) = prediction.outcome() else {
        let seconds = plain(WATCHED_S);
        return say!(
            "turntable-predicted",
            expected = expected,
            seconds = seconds
        );
    };
    let came = came(&outcome, on_turntable.is_without_friction());
    if outcome.tendency == prediction.expected {
        say!("turntable-as-predicted", came = came)
    } else {
        say!(
            "turntable-not-as-predicted",
            expected = expected,
            came = came
        )
    }
}

fn came(outcome: &Outcome, is_without_friction: bool) -> String {
    let size = |sample: &Sample| MOMENTUM.text(sample.momentum_kg_m2_s.abs());
    let [from, to] = [&outcome.from, &outcome.to].map(size);
    match outcome.tendency {
        Tendency::Falls => say!("turntable-momentum-fell", from = from, to = to),
        Tendency::Stays if is_without_friction => say!("turntable-momentum-stayed", at = to),
        Tendency::Stays => say!("turntable-momentum-nearly-stayed", at = to),
        Tendency::Rises => say!("turntable-momentum-rose", from = from, to = to),
    }
}
