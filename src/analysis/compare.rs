//! Two attempts side by side: which inputs differ, and what each difference is worth in turns.

use serde::Serialize;
use serde_json::{Value, json};

use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::input::{Choice, Input};
use turns_aloft_scenario::parameter::Parameter;

/// One input that differs.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Difference {
    #[serde(rename = "key")]
    pub input: Input,
    /// In the first attempt; numbers in SI units.
    pub from: Value,
    /// In the second.
    pub to: Value,
    /// Change of the turns in all, with what stands above changed already.
    pub turns: f64,
}

/// From the first attempt to the second, one input after the other: the words first, then the
/// numbers, in the order of their table, last how it was led by hand. The differences' turns add up to the whole difference (to the
/// flights' own error where one differs that turns nobody); what each is worth depends on the order.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Comparison {
    /// Turns in all of both.
    pub turns: [f64; 2],
    pub differences: Vec<Difference>,
}

impl Comparison {
    pub fn new(first: &Scenario, second: &Scenario) -> Self {
        let mut walk = Walk {
            scenario: first.clone(),
            jump: first.fly(),
            differences: Vec::new(),
        };
        let before = walk.jump.turns;
        for choice in Choice::ALL {
            let (from, to) = (choice.written(first), choice.written(second));
            if from != to {
                let mut then = walk.scenario.clone();
                choice.take_over(&mut then, second);
                walk.go_on(Input::Choice(choice), from, to, then);
            }
        }
        // What a hand has taken the place of in either goes over with what the hand did.
        let (numbers, by_hand): (Vec<_>, Vec<_>) = (Parameter::ALL.into_iter())
            .partition(|it| first.has_part(*it) && second.has_part(*it));
        for parameter in numbers {
            let (from, to) = (parameter.get(first), parameter.get(second));
            if from != to {
                let mut then = walk.scenario.clone();
                parameter.hold(&mut then, to);
                walk.go_on(Input::Number(parameter), from.into(), to.into(), then);
            }
        }
        if first.led != second.led {
            let mut then = Scenario {
                led: second.led.clone(),
                ..walk.scenario.clone()
            };
            for parameter in by_hand {
                parameter.hold(&mut then, parameter.get(second));
            }
            let [from, to] = [first, second].map(|it| json!(it.led));
            walk.go_on(Input::Led, from, to, then);
        }
        Self {
            turns: [before, walk.jump.turns],
            differences: walk.differences,
        }
    }
}

/// On the way from one attempt to the other.
struct Walk {
    scenario: Scenario,
    jump: Jump,
    differences: Vec<Difference>,
}

impl Walk {
    /// Flies what has just been changed.
    fn go_on(&mut self, input: Input, from: Value, to: Value, then: Scenario) {
        let jump = then.fly_after(Some(&self.jump));
        let turns = if then.turns_like(&self.scenario) {
            0.0
        } else {
            jump.turns - self.jump.turns
        };
        (self.scenario, self.jump) = (then, jump);
        self.differences.push(Difference {
            input,
            from,
            to,
            turns,
        });
    }
}
