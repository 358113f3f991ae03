//! Weights in the hands, as the page tells of them: what the jump comes to by what the jumper keeps.

use crate::describe::reading::{Group, Reading, line};
use crate::session::Session;
use turns_aloft_analysis::caution::{Caution, OF_WEIGHTS};
use turns_aloft_analysis::weights::{Needed, OBSERVED, Outcome, Weights};
use turns_aloft_describe::Text;
use turns_aloft_describe::turns::gain_text;
use turns_aloft_describe::unit::UnitText;
use turns_aloft_scenario::HandsKeep;
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_words::say;
use turns_aloft_words::{decimal, text};

/// As lines of text, whatever is asked.
pub(crate) fn lines(session: &Session) -> Vec<Reading> {
    let of_one = |weights: &Weights, outcome: &Outcome| {
        line(
            Group::Turns,
            format!("turns_keeping:{}", name(outcome.hands_keep)),
            match outcome.hands_keep {
                HandsKeep::Rate => text("reading-turns-keeping-rate"),
                HandsKeep::Energy => text("reading-turns-keeping-energy"),
                HandsKeep::AngularMomentum => text("reading-turns-keeping-momentum"),
            },
            format!(
                "{} ({})",
                decimal(outcome.turns, 2),
                gain_text(outcome.turns_gained)
            ),
            format!("{} {}", held(session, weights), OBSERVED.text()),
        )
    };
    let weights = session.weights_held().into_iter();
    weights
        .flat_map(|weights| weights.outcomes.iter().map(move |it| of_one(weights, it)))
        .collect()
}

/// Tells an assumption from the others, whatever is spoken.
pub const fn name(keep: HandsKeep) -> &'static str {
    match keep {
        HandsKeep::Rate => "rate",
        HandsKeep::Energy => "energy",
        HandsKeep::AngularMomentum => "angular_momentum",
    }
}

/// The assumption in words.
pub fn keeps(keep: HandsKeep) -> &'static str {
    match keep {
        HandsKeep::Rate => text("weights-keeps-rate"),
        HandsKeep::Energy => text("weights-keeps-energy"),
        HandsKeep::AngularMomentum => text("weights-keeps-momentum"),
    }
}

/// What the jump comes to under an assumption: "4.33 turns (+0.300)".
pub fn turns(outcome: &Outcome) -> String {
    say!(
        "weights-turns",
        turns = decimal(outcome.turns, 2),
        gain = gain_text(outcome.turns_gained)
    )
}

/// How much more is compared: "0.10 kg more in each hand".
pub fn more(session: &Session, weights: &Weights) -> String {
    let more_kg = weights.hand_mass_kg - weights.from_kg;
    say!(
        "weights-more",
        mass = session.units().of(Kind::Mass).text(more_kg)
    )
}

/// What the hands hold, and what the turns with it are compared with.
pub fn held(session: &Session, weights: &Weights) -> String {
    say!(
        "weights-held",
        mass = session.units().of(Kind::Mass).text(weights.hand_mass_kg)
    )
}

/// What the wanted turns would take under an assumption.
pub fn needed(session: &Session, needed: &Needed) -> String {
    let mass = |kg: f64| session.units().of(Kind::Mass).text(kg);
    match (needed.hand_mass_kg, &needed.proof) {
        (Some(kg), _) => say!("weights-needed", mass = mass(kg)),
        (None, Some(proof)) => say!(
            "weights-cannot",
            turns = decimal(proof.most_turns, 2),
            at = mass(proof.most_turns_at)
        ),
        (None, None) => String::new(),
    }
}

/// What has been observed of people, and the cautions of weights.
pub fn to_be_known() -> Vec<&'static str> {
    let cautions = OF_WEIGHTS.map(Caution::text);
    [OBSERVED.text()].into_iter().chain(cautions).collect()
}

/// One line of an answer.
pub(crate) fn answer(label: &str, keep: HandsKeep, text: String, about: &str) -> Reading {
    line(
        Group::Answer,
        format!("weights:{}", name(keep)),
        format!("{label}: {}", keeps(keep)),
        text,
        about,
    )
}

/// The line behind those: what has to be known.
pub(crate) fn answer_known() -> Reading {
    line(
        Group::Answer,
        "caution:weights",
        text("weights-known"),
        to_be_known().join(" "),
        text("weights-known-about"),
    )
}
