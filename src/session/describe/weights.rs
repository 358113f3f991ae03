//! What the jump comes to with weights in the hands, as lines of text.

use crate::describe::reading::{Group, Reading, line};
use crate::session::Session;
use turns_aloft_analysis::weights::{OBSERVED, Outcome, Weights};
use turns_aloft_describe::Text;
use turns_aloft_describe::turns::gain_text;
use turns_aloft_describe::weights::{held, keeps, name, to_be_known};
use turns_aloft_scenario::HandsKeep;
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
            format!("{} {}", held(session.units(), weights), OBSERVED.text()),
        )
    };
    let weights = session.weights_held().into_iter();
    weights
        .flat_map(|weights| weights.outcomes.iter().map(move |it| of_one(weights, it)))
        .collect()
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
