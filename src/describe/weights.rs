//! Weights in the hands in words: what the jump comes to by what the jumper keeps.

use crate::Text;
use crate::turns::{hundredths_of, signed_text, turns_text};
use crate::unit::UnitText;
use turns_aloft_analysis::caution::{Caution, OF_WEIGHTS};
use turns_aloft_analysis::weights::{Needed, OBSERVED, Outcome, Weights};
use turns_aloft_scenario::HandsKeep;
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_scenario::units::Units;
use turns_aloft_words::{decimal, say, text};

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

/// Turns under an assumption, and what they are more than without, both as shown beside the turns owed:
/// "4.33", "+0.30".
pub fn turns_and_gain(outcome: &Outcome, owed: Option<f64>) -> [String; 2] {
    let before = outcome.turns - outcome.turns_gained;
    let [turns, before] = [outcome.turns, before].map(|turns| hundredths_of(turns, owed));
    [turns_text(turns), signed_text(turns - before)]
}

/// What the jump comes to under an assumption: "4.33 turns (+0.30)".
pub fn turns(outcome: &Outcome, owed: Option<f64>) -> String {
    let [turns, gain] = turns_and_gain(outcome, owed);
    say!("weights-turns", turns = turns, gain = gain)
}

/// How much more is compared: "0.10 kg more in each hand".
pub fn more(units: &Units, weights: &Weights) -> String {
    let more_kg = weights.hand_mass_kg - weights.from_kg;
    say!("weights-more", mass = units.of(Kind::Mass).text(more_kg))
}

/// What the hands hold, and what the turns with it are compared with.
pub fn held(units: &Units, weights: &Weights) -> String {
    say!(
        "weights-held",
        mass = units.of(Kind::Mass).text(weights.hand_mass_kg)
    )
}

/// What the wanted turns would take under an assumption.
pub fn needed(units: &Units, needed: &Needed) -> String {
    let mass = |kg: f64| units.of(Kind::Mass).text(kg);
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
