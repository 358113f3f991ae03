//! The turn map of the jump at hand: over which two levers, and where on it the jump is.

use crate::answers::map::picture::Picture;
use crate::answers::map::{Made, sides};
use crate::session::Session;
use crate::state::levers::Levers;
use turns_aloft_analysis::caution::{self, Caution};
use turns_aloft_analysis::map::Axis;
use turns_aloft_analysis::seen;
use turns_aloft_analysis::weights::OBSERVED;
use turns_aloft_describe::Text;
use turns_aloft_scenario::HandsKeep;
use turns_aloft_scenario::parameter::Parameter;
use turns_aloft_words::text;

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

    pub(crate) const fn made(&self) -> Option<&Made> {
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
        let always = Parameter::ALL
            .into_iter()
            .filter(|it| seen::always_counts(*it));
        let mut marked = self.map_levers.parameters().into_iter().chain(always);
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
        let is_without = |side: &Axis| side.check(&self.document.scenario).is_err();
        let no_part = self.map_sides().iter().any(is_without);
        let no_part = no_part.then(|| text("map-no-part"));
        let said = caution::of(&self.document.scenario, &most).into_iter();
        let cautions = no_part.into_iter().chain(said.map(Caution::text));
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
