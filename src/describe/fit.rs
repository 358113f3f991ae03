//! What the marks of an attempt say of its jump, in words: how sure it is, and what they cannot tell.

use crate::{Inline, Label, Sentence};
use turns_aloft_analysis::budget::Cause;
use turns_aloft_fit::Fit;
use turns_aloft_fit::problem::Unfit;
use turns_aloft_fit::quantity::{Quantity, Range};
use turns_aloft_fit::untold::{FurtherMark, MarkOf};
use turns_aloft_physics::plan::Turning;
use turns_aloft_words::{decimal, say, text};

impl Sentence for Unfit {
    fn sentence(&self) -> String {
        match self {
            Self::ContactsInDisorder => text("unfit-disorder").to_owned(),
            Self::HangTime { hang_s, range_s } => say!(
                "unfit-hang-time",
                time = decimal(*hang_s, 3),
                least = decimal(range_s[0], 2),
                most = decimal(range_s[1], 2)
            ),
            Self::NoMarks => text("unfit-no-marks").to_owned(),
        }
    }
}

/// What is named inside a sentence as a loss of turns.
impl Inline for Cause {
    fn inline(self) -> &'static str {
        match self {
            Self::Closing => text("cause-closing-inline"),
            Self::Tightness => text("cause-tightness-inline"),
            Self::Opening => text("cause-opening-inline"),
            Self::Tilt => text("cause-tilt-inline"),
        }
    }
}

/// Both ends of a range of turns.
pub fn turns_range(range: Range) -> String {
    let [low, high] = [range.low, range.high].map(|turns| decimal(turns, 2));
    say!("from-to", from = low, to = high)
}

/// How far the jump turned in all.
impl Sentence for Fit {
    fn sentence(&self) -> String {
        let Range { low, middle, high } = self.range(Quantity::Turns);
        let [turns, low, high] = [middle, low, high].map(|turns| decimal(turns, 2));
        say!("measured-turns", turns = turns, low = low, high = high)
    }
}

/// What a cause cost, as a range.
pub fn loss_range(fit: &Fit, cause: Cause) -> String {
    let Range { low, high, .. } = fit.range(Quantity::Lost(cause));
    let [low, high] = [low, high].map(|turns| decimal(turns.max(0.0), 2));
    if low == high {
        return low;
    }
    say!("from-to", from = low, to = high)
}

/// What cost most, or that it cannot be told from the marks.
pub fn largest_loss(fit: &Fit) -> String {
    let likely = fit.untold.may_be_largest();
    let range = |cause: Cause| say!("in-turns", turns = loss_range(fit, cause));
    match likely[..] {
        [] => text("why-nothing-lost").to_owned(),
        [one] => say!("fit-cost-most", what = one.label(), turns = range(one)),
        [one, other, ..] => say!(
            "fit-cannot-tell",
            first = one.inline(),
            first_turns = range(one),
            other = other.inline(),
            other_turns = range(other)
        ),
    }
}

/// The further mark that would tell most; none where all is told.
pub fn further_mark(fit: &Fit) -> Option<String> {
    let FurtherMark { of, .. } = fit.untold.further?;
    Some(match of {
        MarkOf::Facing(t_s) => say!("fit-further-facing", time = decimal(t_s, 3)),
        MarkOf::Arms(t_s) => say!("fit-further-arms", time = decimal(t_s, 3)),
        MarkOf::Legs(t_s) => say!("fit-further-legs", time = decimal(t_s, 3)),
        MarkOf::Contacts => text("fit-further-contacts").to_owned(),
    })
}

/// The numbers of turns that the marks allow besides the likeliest.
pub fn other_answers(fit: &Fit) -> Vec<String> {
    let others = fit.answers.iter().skip(1);
    let other = others.map(|answer| {
        say!(
            "fit-second-answer",
            turns = turns_range(answer.turns),
            percent = decimal(100.0 * answer.chance, 0)
        )
    });
    other.collect()
}

/// That the facings turn the other way than the jump was said to.
pub fn other_turning(fit: &Fit) -> Option<&'static str> {
    Some(match fit.likelier_turning? {
        Turning::Anticlockwise => text("fit-turns-anticlockwise"),
        Turning::Clockwise => text("fit-turns-clockwise"),
    })
}
