//! The turn map of the jump at hand: over which two levers, how far it has been flown, and where on
//! it the jump is.

mod describe;
mod picture;
mod span;

pub use crate::map::picture::Picture;
pub use crate::state::levers::Levers;
use turns_aloft_describe::Text;

use crate::answers::{Answer, Basis};
use crate::session::Session;
use turns_aloft_analysis::caution::{self, Caution};
use turns_aloft_analysis::map::{Axis, TurnMap, depends_on};
use turns_aloft_analysis::weights::OBSERVED;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::parameter::Parameter;
use turns_aloft_scenario::{HandsKeep, Scenario};
use turns_aloft_words::text;

/// Nodes along each side of the whole map.
pub const NODES: usize = 61;

/// Nodes flown in one piece of work: the coarsest map has as many, so that the first piece gives a
/// picture.
const PIECE: usize = 25;

/// The picture is drawn again when so many times as many nodes have been flown.
const REDRAWN_EVERY: usize = 2;

/// The map in sight, if one has been asked for.
#[derive(Debug, Default)]
pub(crate) struct MapAnswer(Option<Made>);

/// A map on its way, and the picture of it.
#[derive(Debug)]
struct Made {
    map: TurnMap,
    flown: usize,
    /// How many nodes had been flown when the picture was drawn.
    drawn: usize,
    picture: Option<Picture>,
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

impl Session {
    /// Which levers the map is over: across, and upwards.
    pub const fn map_levers(&self) -> &Levers {
        &self.map_levers
    }

    /// Puts a number that is [offered](Levers::offered) along a side of the map: 0 across, 1 upwards.
    pub fn choose_map_lever(&mut self, side: usize, parameter: Parameter) {
        self.map_levers.choose(side, parameter);
    }

    /// Both sides of the map: across, and upwards.
    pub fn map_sides(&self) -> [Axis; 2] {
        sides(&self.map_levers, &self.document.scenario, &self.jump)
    }

    const fn made(&self) -> Option<&Made> {
        self.answers.map.result().0.as_ref()
    }

    /// What is known of the map so far.
    pub fn map_picture(&self) -> Option<&Picture> {
        self.made()?.picture.as_ref()
    }

    /// Where on the map the jump is: 0 to 1 along both sides, or outside of that where the map
    /// leaves the jump out.
    pub fn map_point(&self) -> [f64; 2] {
        self.map_sides()
            .map(|side| side.part(side.parameter().get(&self.document.scenario)))
    }

    /// Flies the jump at a place of the map, each coordinate held inside 0 to 1.
    pub fn put_on_map(&mut self, place: [f64; 2]) {
        let sides = self.map_sides();
        self.change(|scenario| {
            for (side, part) in sides.iter().zip(place) {
                side.parameter()
                    .hold(scenario, side.at(part.clamp(0.0, 1.0)));
            }
        });
    }

    /// Whether for a jumper of this size it is known what has been seen of all that the map marks.
    pub fn map_marks_known(&self) -> bool {
        let rate = [Parameter::TakeoffRate];
        let mut marked = self.map_levers.parameters().into_iter().chain(rate);
        marked.all(|parameter| {
            let marks = self.document.scenario.marks(parameter, &self.jump);
            marks.is_none_or(|marks| marks.seen.is_some())
        })
    }

    /// What has to be said beside a map that offers more than the jump has.
    pub fn map_cautions(&self) -> Vec<&'static str> {
        let mut most = self.document.scenario.clone();
        for side in self.map_sides() {
            let now = side.parameter().get(&most);
            side.parameter().hold(&mut most, now.max(side.at(1.0)));
        }
        let said = caution::of(&self.document.scenario, &most).into_iter();
        let cautions = said.map(Caution::text);
        if !self.map_levers.weights() {
            return cautions.collect();
        }
        let assumed = match self.document.scenario.hands_keep {
            HandsKeep::Rate => text("map-hands-keep-rate"),
            HandsKeep::AngularMomentum => text("map-hands-keep-momentum"),
            HandsKeep::Energy => text("map-hands-keep-energy"),
        };
        let known = [assumed, OBSERVED.text()];
        known.into_iter().chain(cautions).collect()
    }
}

fn sides(levers: &Levers, scenario: &Scenario, jump: &Jump) -> [Axis; 2] {
    levers.parameters().map(|parameter| {
        let [from, to] = span::of(parameter, scenario, jump).expect("what is offered has a span");
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
