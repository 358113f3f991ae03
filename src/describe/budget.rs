//! Where the turns went, in words.

use crate::input::remedy;
use crate::rounding::shown_shortfall_deg;
use crate::unit::UnitText;
use crate::{Label, Sentence};
use turns_aloft_analysis::budget::{Budget, Cause};
use turns_aloft_analysis::one_change::OneChange;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::units::Units;
use turns_aloft_words::{decimal, say, text};

impl Label for Cause {
    fn label(self) -> &'static str {
        match self {
            Self::Closing => text("cause-closing"),
            Self::Tightness => text("cause-tightness"),
            Self::Opening => text("cause-opening"),
            Self::Tilt => text("cause-tilt"),
        }
    }
}

/// Whether the jump has all the turns that its name owes, as they are shown. Then no change is told of.
pub fn all_there(scenario: &Scenario, budget: &Budget) -> bool {
    let owed = scenario.jump.turns_owed(scenario.jump_turns);
    owed.is_some_and(|owed| shown_shortfall_deg(360.0 * (owed - budget.turns)) <= 0)
}

/// The largest loss of a scenario's jump in plain words, and, where turns are missing, what one change would
/// do about it.
pub fn budget_sentence(scenario: &Scenario, budget: &Budget) -> String {
    let all_there = all_there(scenario, budget);
    let Some(cause) = budget.largest else {
        return text("why-nothing-lost").to_owned();
    };
    let turns = decimal(budget.loss(cause), 2);
    let cost = match cause {
        Cause::Closing => say!("why-closing-cost", turns = turns),
        Cause::Tightness => say!("why-tightness-cost", turns = turns),
        Cause::Opening => say!("why-opening-cost", turns = turns),
        Cause::Tilt => say!("why-tilt-cost", turns = turns),
    };
    match &budget.one_change {
        _ if all_there => say!("why-all-there", cost = cost),
        Some(change) => say!(
            "why-cost-and-change",
            cost = cost,
            change = change.sentence()
        ),
        None if scenario.led.is_some() && cause != Cause::Tilt => {
            say!("why-cost-led", cost = cost, advice = advice(cause))
        }
        None => say!("why-cost-at-best", cost = cost),
    }
}

/// What a hand that leads the jump again could do about a loss; stands behind a colon.
fn advice(cause: Cause) -> &'static str {
    match cause {
        Cause::Closing => text("why-led-closing"),
        Cause::Tightness => text("why-led-tightness"),
        Cause::Opening | Cause::Tilt => text("why-led-opening"),
    }
}

/// How it was, and what the change would have done to the whole jump; stands behind a colon.
impl Sentence for OneChange {
    fn sentence(&self) -> String {
        // Which way a body leans is not told.
        let values = [self.from, self.to].map(f64::abs);
        // No remedy has a unit of the user's choice; the sentence has the unit.
        let unit = Units::default().of(self.parameter.kind());
        let unit = unit.fine_enough_for(&values);
        let [from, to] = values.map(|value| unit.number(value));
        let turns = more_or_fewer(self.turns_change);
        remedy(self.parameter, [&from, &to], &turns)
    }
}

fn more_or_fewer(turns_change: f64) -> String {
    let turns = decimal(turns_change.abs(), 2);
    if turns == decimal(0.0, 2) {
        text("why-as-many-turns").to_owned()
    } else if turns_change > 0.0 {
        say!("why-turns-more", turns = turns)
    } else {
        say!("why-turns-fewer", turns = turns)
    }
}
