//! The comparison as it is told: in the user's units and words, and in hundredths of a turn that
//! add up as they stand.

use std::borrow::Cow;

use crate::rounding::{adding_up, from_to};
use crate::turns::{hundredths_of, signed_text, turns_text};
use crate::unit::UnitText;
use crate::{Inline, Label};
use turns_aloft_analysis::compare::Comparison;
use turns_aloft_physics::plan::Turning;
use turns_aloft_physics::segments::SegmentTable;
use turns_aloft_scenario::ground::Ground;
use turns_aloft_scenario::input::{Choice, Input};
use turns_aloft_scenario::units::Units;
use turns_aloft_scenario::{HandsKeep, Scenario};
use turns_aloft_words::{Message, say, text};

pub const ORDER: Message = Message("compare-order");

/// From the attempt beside to the present one.
#[derive(Debug, Clone, PartialEq)]
pub struct Compared {
    pub comparison: Comparison,
    /// What the attempt beside is called.
    pub reference: String,
    scenarios: [Scenario; 2],
    /// Hundredths of a turn of each difference, in the comparison's order.
    pub parts: Vec<i64>,
    /// Turns in all of both, in hundredths; the parts add up to their difference.
    pub turns: [i64; 2],
}

impl Compared {
    pub fn new(name: &str, reference: &Scenario, present: &Scenario) -> Self {
        let comparison = Comparison::new(reference, present);
        let owed = |it: &Scenario| it.jump.turns_owed(it.jump_turns);
        let [first, second] = comparison.turns;
        let turns = [
            hundredths_of(first, owed(reference)),
            hundredths_of(second, owed(present)),
        ];
        let exact: Vec<f64> = comparison
            .differences
            .iter()
            .map(|difference| 100.0 * difference.turns)
            .collect();
        Self {
            reference: name.to_owned(),
            parts: rounded(&exact, turns[1] - turns[0]),
            scenarios: [reference.clone(), present.clone()],
            comparison,
            turns,
        }
    }

    /// Hundredths of a turn, as the parts add up to.
    pub const fn whole(&self) -> i64 {
        self.turns[1] - self.turns[0]
    }

    /// What a difference is called.
    pub fn label(&self, place: usize) -> &'static str {
        self.comparison.differences[place].input.label()
    }

    fn inline(&self, place: usize) -> &'static str {
        self.comparison.differences[place].input.inline()
    }

    /// What it was and what it is.
    pub fn change(&self, place: usize, units: &Units) -> [String; 2] {
        match self.comparison.differences[place].input {
            Input::Number(parameter) => {
                let unit = units.of(parameter.kind());
                let values = self.scenarios.each_ref().map(|it| parameter.get(it));
                let unit = from_to(&unit, values).unit;
                values.map(|value| unit.text(value))
            }
            Input::Led => self.scenarios.each_ref().map(|it| led(it).to_owned()),
            Input::Choice(choice) => self
                .scenarios
                .each_ref()
                .map(|scenario| word(choice, scenario).into_owned()),
        }
    }

    /// What it comes down to, in one sentence.
    pub fn sentence(&self) -> String {
        let reference = self.reference.as_str();
        if self.parts.is_empty() {
            return say!("compare-nothing-differs", reference = reference);
        }
        let whole = self.whole();
        let size = turns_text(whole.abs());
        let said = match whole {
            0 => say!("compare-as-much", reference = reference),
            1.. => say!("compare-more", reference = reference, turns = size),
            _ => say!("compare-less", reference = reference, turns = size),
        };
        // What works the other way explains nothing.
        let with = |part: i64| {
            if whole == 0 {
                part
            } else {
                part * whole.signum()
            }
        };
        let largest = (0..self.parts.len()).rev().max_by_key(|&i| {
            if whole == 0 {
                self.parts[i].abs()
            } else {
                with(self.parts[i])
            }
        });
        let Some(largest) =
            largest.filter(|&i| self.parts[i] != 0 && (whole == 0 || with(self.parts[i]) > 0))
        else {
            return say!("compare-no-largest", said = said);
        };
        let what = self.inline(largest);
        let turns = signed_text(self.parts[largest]);
        let part = with(self.parts[largest]);
        if whole == 0 {
            say!("compare-cancels", said = said, what = what, turns = turns)
        } else if self.parts.len() == 1 {
            say!("compare-all-by", said = said, what = what)
        } else if 2 * part > whole.abs() && part <= whole.abs() {
            say!("compare-most-by", said = said, what = what, turns = turns)
        } else {
            say!("compare-largest", said = said, what = what, turns = turns)
        }
    }
}

/// Hundredths near the exact ones that add up to the whole difference; what is nothing stays nothing.
pub fn rounded(exact: &[f64], whole: i64) -> Vec<i64> {
    adding_up(exact, whole, |i, _| exact[i] != 0.0)
}

/// Whether arms and legs do what is planned, or what a hand did.
pub(crate) fn led(scenario: &Scenario) -> &'static str {
    if scenario.led.is_some() {
        text("word-led-by-hand")
    } else {
        text("word-led-as-planned")
    }
}

pub(crate) fn word(choice: Choice, scenario: &Scenario) -> Cow<'static, str> {
    match choice {
        Choice::Jump => scenario.jump.label().into(),
        Choice::JumpTurns => scenario.jump_turns.to_string().into(),
        Choice::Table => match scenario.table {
            SegmentTable::Female => text("word-table-female"),
            SegmentTable::Male => text("word-table-male"),
        }
        .into(),
        Choice::Ground => match scenario.ground {
            Ground::Ice => text("word-ground-ice"),
            Ground::Floor => text("word-ground-floor"),
            Ground::Trampoline => text("word-ground-trampoline"),
        }
        .into(),
        Choice::Turning => match scenario.turning {
            Turning::Anticlockwise => text("word-turning-anticlockwise"),
            Turning::Clockwise => text("word-turning-clockwise"),
        }
        .into(),
        Choice::HandsKeep => match scenario.hands_keep {
            HandsKeep::Rate => text("word-hands-keep-rate"),
            HandsKeep::AngularMomentum => text("word-hands-keep-momentum"),
            HandsKeep::Energy => text("word-hands-keep-energy"),
        }
        .into(),
    }
}
