//! What a pupil may change in a step; all else is locked.

use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::input::Input;
use turns_aloft_turntable::position::Limbs;
use turns_aloft_turntable::setup::{Number, STAND, TABLE};

use crate::setup::Setup;

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Free {
    /// Of a jump.
    Input(Input),
    /// Of who turns on what.
    Number(Number),
    Stand,
    Table,
    /// Led by hand on a turntable.
    Limbs(Limbs),
    /// To push on a turntable, and to set its rate.
    Push,
}

const LIMBS: [(&str, Limbs); 3] = [
    ("arms", Limbs::Arms),
    ("legs", Limbs::Legs),
    ("trunk", Limbs::Trunk),
];

const PUSH: &str = "push";

impl Free {
    /// All that can be free in a setup.
    pub fn all(setup: &Setup) -> Vec<Self> {
        match setup {
            Setup::Jump(jump) => Input::all()
                .filter(|input| match input {
                    Input::Number(parameter) => jump.has_part(*parameter),
                    Input::Choice(_) => true,
                    Input::Led => false,
                })
                .map(Self::Input)
                .collect(),
            Setup::Turntable(_) => {
                let limbs = LIMBS.map(|(_, limbs)| Self::Limbs(limbs)).into_iter();
                let numbers = Number::ALL.map(Self::Number);
                limbs
                    .chain([Self::Push, Self::Stand, Self::Table])
                    .chain(numbers)
                    .collect()
            }
            Setup::WorkedExample(_) => Vec::new(),
        }
    }

    /// Its name in files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Input(input) => input.key(),
            Self::Number(number) => number.key(),
            Self::Stand => STAND,
            Self::Table => TABLE,
            Self::Limbs(limbs) => LIMBS[limbs as usize].0,
            Self::Push => PUSH,
        }
    }

    /// How far somebody may go with this jump: to both ends of the range.
    pub(crate) fn ends(self, jump: &Scenario) -> Vec<Scenario> {
        let Self::Input(Input::Number(parameter)) = self else {
            return Vec::new();
        };
        [parameter.least(), parameter.most()]
            .map(|end| {
                let mut then = jump.clone();
                parameter.hold(&mut then, end);
                then
            })
            .into()
    }
}
