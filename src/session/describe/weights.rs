//! What the jump comes to with weights in the hands, as lines of text.

use crate::describe::reading::{Group, Reading, line};
use crate::session::Session;
use turns_aloft_analysis::weights::{OBSERVED, Outcome, Weights};
use turns_aloft_describe::Text;
use turns_aloft_describe::unit::UnitText;
use turns_aloft_describe::weights::{held, keeps, name, to_be_known, turns_and_gain};
use turns_aloft_scenario::HandsKeep;
use turns_aloft_scenario::parameter::{Kind, Parameter};
use turns_aloft_words::{say, text};

impl Session {
    /// What a number that is set is the number of, where another one is flown: the take-off rate is that of
    /// empty hands where heavier ones keep the angular momentum or the energy.
    pub fn beside_text(&self, parameter: Parameter) -> Option<String> {
        let scenario = self.scenario();
        let keeps_it = scenario.hand_mass_kg == 0.0 || scenario.hands_keep == HandsKeep::Rate;
        if parameter != Parameter::TakeoffRate || keeps_it {
            return None;
        }
        let unit = self.units().of(Kind::Rate);
        let flown = unit.text(self.jump().readout.takeoff_rate_rad_s);
        Some(say!("rate-with-weights", flown = flown))
    }
}

/// As lines of text, whatever is asked.
pub(crate) fn lines(session: &Session) -> Vec<Reading> {
    let owed = session.jump().owed.map(|owed| owed.turns);
    let of_one = |weights: &Weights, outcome: &Outcome| {
        let [turns, gain] = turns_and_gain(outcome, owed);
        line(
            Group::Turns,
            format!("turns_keeping:{}", name(outcome.hands_keep)),
            match outcome.hands_keep {
                HandsKeep::Rate => text("reading-turns-keeping-rate"),
                HandsKeep::Energy => text("reading-turns-keeping-energy"),
                HandsKeep::AngularMomentum => text("reading-turns-keeping-momentum"),
            },
            format!("{turns} ({gain})"),
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
