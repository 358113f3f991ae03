//! The turn map of the jump at hand, as far as it has been flown.

pub mod picture;
mod span;

use crate::answers::basis::{Answer, Basis};
use crate::answers::map::picture::Picture;
use crate::answers::map::span::span;
use crate::state::levers::Levers;
use turns_aloft_analysis::map::{Axis, TurnMap, depends_on};
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::fly::Jump;

/// Nodes along each side of the whole map.
pub const NODES: usize = 61;

/// Nodes flown in one piece of work: the coarsest map has as many, so that the first piece gives a
/// picture.
const PIECE: usize = 25;

/// The picture is drawn again when so many times as many nodes have been flown.
const REDRAWN_EVERY: usize = 2;

/// The map in sight, if one has been asked for.
#[derive(Debug, Default)]
pub(crate) struct MapAnswer(pub Option<Made>);

/// A map on its way, and the picture of it.
#[derive(Debug)]
pub(crate) struct Made {
    pub map: TurnMap,
    pub flown: usize,
    /// How many nodes had been flown when the picture was drawn.
    drawn: usize,
    pub picture: Option<Picture>,
}

impl Made {
    fn piece(&mut self, owed: Option<f64>) -> bool {
        let flown = self.map.refine(PIECE);
        self.flown += flown;
        if flown > 0 && (self.map.is_done() || self.flown >= REDRAWN_EVERY * self.drawn) {
            self.picture = Picture::of(&self.map, owed);
            self.drawn = self.flown;
        }
        flown > 0
    }
}

/// Both sides of a map: across, and upwards.
pub(crate) fn sides(levers: &Levers, scenario: &Scenario, jump: &Jump) -> [Axis; 2] {
    levers.parameters().map(|parameter| {
        let [from, to] = span(parameter, scenario, jump).expect("what is offered has a span");
        Axis::new(parameter, from, to, NODES).expect("a span is inside its number's range")
    })
}

impl Answer for MapAnswer {
    /// Both sides, and the jump but for the two numbers along them and what it is called.
    type Depends = ([Axis; 2], Scenario);

    fn depends(on: &Basis) -> Self::Depends {
        let sides = sides(on.levers, on.scenario, on.jump);
        let scenario = depends_on(on.scenario, &sides);
        (sides, scenario)
    }

    fn ask(&mut self, on: &Basis, _: Option<&Self::Depends>) {
        let [across, up] = sides(on.levers, on.scenario, on.jump);
        self.0 = Some(Made {
            map: TurnMap::new(on.scenario, across, up).expect("levers differ from each other"),
            flown: 0,
            drawn: 0,
            picture: None,
        });
    }

    fn poll(&mut self, on: &Basis) -> bool {
        let owed = on.jump.owed.map(|owed| owed.turns);
        self.0.as_mut().is_some_and(|made| made.piece(owed))
    }
}
