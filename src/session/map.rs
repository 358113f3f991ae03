//! The turn map of the jump at hand: over which two levers, how far it has been flown, and where on
//! it the jump is.

mod describe;
mod levers;
mod picture;
mod span;

pub use levers::Levers;
pub use picture::Picture;

use super::Session;
use crate::analysis::caution::{self, Caution};
use crate::analysis::map::{Axis, TurnMap};
use crate::analysis::weights::OBSERVED;
use crate::scenario::HandsKeep;
use crate::scenario::parameter::Parameter;
use crate::words::text;

/// Nodes along each side of the whole map.
pub const NODES: usize = 61;

/// Nodes flown in one piece of work: the coarsest map has as many, so that the first piece gives a
/// picture.
const PIECE: usize = 25;

/// The picture is drawn again when so many times as many nodes have been flown.
const REDRAWN_EVERY: usize = 2;

/// The map in sight, if one has been asked for.
#[derive(Debug, Default)]
pub struct Map {
    pub(super) levers: Levers,
    made: Option<Made>,
}

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
        &self.map.levers
    }

    /// Puts a number that is [offered](Levers::offered) along a side of the map: 0 across, 1 upwards.
    pub fn choose_map_lever(&mut self, side: usize, parameter: Parameter) {
        self.map.levers.choose(side, parameter);
        self.changes += 1;
    }

    /// Both sides of the map: across, and upwards.
    pub fn map_sides(&self) -> [Axis; 2] {
        self.map.levers.parameters().map(|parameter| {
            let [from, to] = span::of(parameter, &self.document.scenario, &self.jump)
                .expect("what is offered has a span");
            Axis::new(parameter, from, to, NODES).expect("a span is inside its number's range")
        })
    }

    /// What is known of the map so far.
    pub fn map_picture(&self) -> Option<&Picture> {
        self.map.made.as_ref()?.picture.as_ref()
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
        let mut marked = self.map.levers.parameters().into_iter().chain(rate);
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
        if !self.map.levers.weights() {
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

    /// Does the next piece; whether there was one.
    pub(super) fn poll_map(&mut self) -> bool {
        let [across, up] = self.map_sides();
        let fits = |made: &Made| {
            *made.map.x() == across
                && *made.map.y() == up
                && made.map.is_of(&self.document.scenario)
        };
        let made = match self.map.made.take() {
            Some(made) if fits(&made) => made,
            _ => Made {
                map: TurnMap::new(&self.document.scenario, across, up)
                    .expect("levers differ from each other"),
                flown: 0,
                drawn: 0,
                picture: None,
            },
        };
        let owed = self.jump.owed.map(|owed| owed.turns);
        self.map.made.insert(made).piece(owed)
    }
}
