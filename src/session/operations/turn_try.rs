//! The five-turn try: so many turns with as few limits passed as can be, step by step.

use crate::session::Session;
use crate::state::question::Question;
use turns_aloft_analysis::turn_try::{STEPS, TurnTry};

impl Session {
    /// Begins it with the jump at hand, at the turns of its name or the nearest step.
    pub fn begin_try(&mut self) {
        self.leave_modes();
        self.set_try_step(self.scenario().jump_turns);
        self.ask(Question::Jump);
        self.trying = true;
        self.take_stock_of_try();
    }

    /// Ends it; the jump stays as it is.
    pub fn leave_try(&mut self) {
        self.trying = false;
        self.turn_try = None;
    }

    /// So many turns are tried, the nearest step to it: the jump is called by them.
    pub fn set_try_step(&mut self, turns: u8) {
        let [least, .., most] = STEPS;
        self.change(|scenario| scenario.jump_turns = turns.clamp(least, most));
    }

    /// What comes of the try, while there is one.
    pub const fn turn_try(&self) -> Option<&TurnTry> {
        self.turn_try.as_ref()
    }

    /// Called after each flight.
    pub(crate) fn take_stock_of_try(&mut self) {
        let step = self.scenario().jump_turns;
        self.turn_try = (self.trying).then(|| TurnTry::new(self.scenario(), &self.jump, step));
    }
}
