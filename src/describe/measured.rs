//! What the marks of an attempt say, and what they leave open, in sentences.

use crate::{Label, Sentence, Text};
use turns_aloft_analysis::budget::Cause;
use turns_aloft_fit::Fit;
use turns_aloft_fit::quantity::Quantity;
use turns_aloft_fit::untold::{FurtherMark, MarkOf, Untold};
use turns_aloft_words::{decimal, say, text};

/// What has to be known of whatever is measured of somebody.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum MeasuringCaution {
    /// Filming needs consent.
    Consent,
    /// The film stays where it is.
    Stays,
    /// It is an estimate and no verdict.
    NoVerdict,
}

impl MeasuringCaution {
    pub const ALL: [Self; 3] = [Self::Consent, Self::Stays, Self::NoVerdict];
}

impl Text for MeasuringCaution {
    fn text(self) -> &'static str {
        match self {
            Self::Consent => text("caution-consent"),
            Self::Stays => text("caution-film-stays"),
            Self::NoVerdict => text("caution-no-verdict"),
        }
    }
}

/// How far it turned, and how likely another count of turns is.
impl Sentence for Fit {
    fn sentence(&self) -> String {
        let range = self.range(Quantity::Turns);
        let Some([first, second]) = self.answers.first_chunk() else {
            return say!(
                "measured-turns",
                turns = decimal(range.middle, 2),
                low = decimal(range.low, 2),
                high = decimal(range.high, 2)
            );
        };
        say!(
            "measured-turns-or",
            turns = decimal(first.turns.middle, 2),
            other = decimal(second.turns.middle, 2),
            percent = decimal(100.0 * second.chance, 0)
        )
    }
}

/// What cannot be told, and what would tell most; what lost most, where that is told.
impl Sentence for Untold {
    fn sentence(&self) -> String {
        let causes = self.may_be_largest();
        let told = match causes[..] {
            [cause] => say!("measured-largest", cause = cause.label()),
            _ => say!("measured-cannot-tell-largest", causes = listed(&causes)),
        };
        let trade = self.trade.first().filter(|_| causes.len() == 1);
        let traded = trade.map(|(one, other, _)| {
            say!(
                "measured-cannot-tell-apart",
                causes = listed(&[*one, *other])
            )
        });
        let further = self.further.map(|further| further.sentence());
        let all: Vec<String> = [Some(told), traded, further]
            .into_iter()
            .flatten()
            .collect();
        all.join(" ")
    }
}

fn listed(causes: &[Cause]) -> String {
    let labels: Vec<&str> = causes.iter().map(|cause| cause.label()).collect();
    labels.join(" / ")
}

impl Sentence for FurtherMark {
    fn sentence(&self) -> String {
        let at = |t_s: f64| decimal(t_s, 2);
        match self.of {
            MarkOf::Facing(t_s) => say!("measured-further-facing", time = at(t_s)),
            MarkOf::Arms(t_s) => say!("measured-further-arms", time = at(t_s)),
            MarkOf::Legs(t_s) => say!("measured-further-legs", time = at(t_s)),
            MarkOf::Contacts => text("measured-further-contacts").to_owned(),
        }
    }
}
