//! What a jumper can change, and how much of it is comparable.

use std::ops::{Index, IndexMut};

use crate::search::crossing;
use turns_aloft_physics::body::Body;
use turns_aloft_physics::centroidal::CentroidalState;
use turns_aloft_physics::mass_properties::MassProperties;
use turns_aloft_physics::plan::Plan;
use turns_aloft_physics::tree::Tree;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::parameter::{LeverRow, Parameter, Step};
use turns_aloft_scenario::source::Source;

/// A number of the scenario that training changes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Lever(Parameter);

/// How finely the arm tuck is searched for that step, as a share.
const TUCK_SEARCH: f64 = 0.02;

/// Why a setting of a lever was refused.
#[derive(Debug, Clone, PartialEq)]
pub enum RefusedLever {
    /// There is no such lever.
    Unknown(String),
    /// A season's change that leaves the range.
    Season { lever: Lever, value: f64 },
    /// Limits outside the range, or the higher one first.
    Limits { lever: Lever, limits: [f64; 2] },
}

/// How many there are.
const COUNT: usize = {
    let (mut count, mut i) = (0, 0);
    while i < Parameter::COUNT {
        count += Parameter::ALL[i].row().lever.is_some() as usize;
        i += 1;
    }
    count
};

impl Lever {
    pub const COUNT: usize = COUNT;

    /// All of them, as their table orders them.
    pub const ALL: [Self; COUNT] = {
        let mut all = [None; COUNT];
        let mut i = 0;
        while i < Parameter::COUNT {
            let parameter = Parameter::ALL[i];
            if let Some(row) = &parameter.row().lever {
                assert!(all[row.order].is_none(), "each has a place of its own");
                all[row.order] = Some(parameter);
            }
            i += 1;
        }
        let mut levers = [Self(Parameter::ALL[0]); COUNT];
        let mut i = 0;
        while i < COUNT {
            levers[i] = Self(all[i].expect("every place is taken"));
            i += 1;
        }
        levers
    };

    /// The number as a lever; none where it is none.
    pub fn of(parameter: Parameter) -> Option<Self> {
        parameter.row().lever.map(|_| Self(parameter))
    }

    /// The lever with this key, or that there is none.
    pub fn named(key: &str) -> Result<Self, RefusedLever> {
        let lever = Parameter::named(key).and_then(Self::of);
        lever.ok_or_else(|| RefusedLever::Unknown(key.to_owned()))
    }

    pub const fn parameter(self) -> Parameter {
        self.0
    }

    pub const fn key(self) -> &'static str {
        self.0.key()
    }

    pub const fn row(self) -> &'static LeverRow {
        self.0
            .row()
            .lever
            .as_ref()
            .expect("levers are made of numbers that have the row")
    }

    /// What can be set.
    pub const fn range(self) -> [f64; 2] {
        self.0.row().range
    }

    pub fn value(self, scenario: &Scenario) -> f64 {
        self.0.get(scenario)
    }

    /// The scenario with this lever somewhere else, held inside its admissible range.
    pub fn at(self, scenario: &Scenario, value: f64) -> Scenario {
        let mut other = scenario.clone();
        self.0.hold(&mut other, value);
        other
    }

    /// A step for setting the lever by hand, in the key's own unit.
    pub const fn nudge(self) -> f64 {
        match self.row().step {
            Step::By(step) => step.abs(),
            Step::HandsNearer(_) => 0.05,
        }
    }

    /// The changes that one step forward and one step back would be, in the key's own unit; none
    /// where that leaves the admissible range or the hands get no nearer, and of what has no part in the
    /// jump.
    pub fn steps(self, scenario: &Scenario) -> [Option<f64>; 2] {
        if !scenario.has_part(self.0) {
            return [None, None];
        }
        let now = self.value(scenario);
        match self.row().step {
            Step::By(by) => [by, -by].map(|by| {
                let admissible = (self.0.least()..=self.0.most()).contains(&(now + by));
                admissible.then_some(by)
            }),
            Step::HandsNearer(by_m) => {
                [1.0, -1.0].map(|way| self.hands_nearer(scenario, way * by_m))
            }
        }
    }

    /// The change of the tuck that brings the hands nearer to the axis, or (below zero) farther from
    /// it.
    fn hands_nearer(self, scenario: &Scenario, nearer_m: f64) -> Option<f64> {
        let way = nearer_m.signum();
        let tree = Tree::new(&Body::new(scenario.body_spec()));
        let radius_m = |value: f64| hands_radius_m(&tree, &self.at(scenario, value));
        let now = self.value(scenario);
        let wanted_m = radius_m(now) - nearer_m;
        let short_m = |value: f64| way * (radius_m(value) - wanted_m);
        let end = if way > 0.0 { 1.0 } else { 0.0 };
        let mut near = now;
        while near != end {
            let far = (near + way * TUCK_SEARCH).clamp(0.0, 1.0);
            if short_m(far) <= 0.0 {
                return crossing(near, far, short_m).map(|(value, _)| value - now);
            }
            near = far;
        }
        None
    }
}

/// Mean distance of both hands from the long axis of the closed body, m.
fn hands_radius_m(tree: &Tree, scenario: &Scenario) -> f64 {
    let plan = Plan::new(scenario.plan_spec());
    let (posture, rates) = plan.at(plan.closed_s(), f64::INFINITY);
    let properties = MassProperties::from(CentroidalState::new(tree, &posture, &rates));
    let radii_m = properties
        .state
        .hands_m
        .map(|hand| hand.cross(properties.long_axis).length());
    0.5 * (radii_m[0] + radii_m[1])
}

/// One of something for each lever.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PerLever<T>([T; COUNT]);

impl<T> PerLever<T> {
    pub fn new(of: impl FnMut(Lever) -> T) -> Self {
        Self(Lever::ALL.map(of))
    }

    pub fn iter(&self) -> impl Iterator<Item = (Lever, &T)> {
        Lever::ALL.into_iter().zip(&self.0)
    }
}

impl<T: Default> Default for PerLever<T> {
    fn default() -> Self {
        Self::new(|_| T::default())
    }
}

impl<T> Index<Lever> for PerLever<T> {
    type Output = T;

    fn index(&self, lever: Lever) -> &T {
        &self.0[lever.row().order]
    }
}

impl<T> IndexMut<Lever> for PerLever<T> {
    fn index_mut(&mut self, lever: Lever) -> &mut T {
        &mut self.0[lever.row().order]
    }
}

/// What a season's training might bring, lever by lever; the usual ones can be replaced.
#[derive(Debug, Clone, PartialEq)]
pub struct Season(PerLever<Option<f64>>);

impl Default for Season {
    fn default() -> Self {
        Self(PerLever::new(|lever| Some(lever.row().season)))
    }
}

impl Season {
    /// Where the usual ones come from.
    pub const SOURCE: Source = Source::OurAssumption;

    /// The unit of a lever, in its own unit; none is held as it is.
    pub fn unit(&self, lever: Lever) -> Option<f64> {
        self.0[lever]
    }

    /// Sets a lever's unit; 0 holds it as it is.
    pub fn set(&mut self, lever: Lever, unit: f64) -> Result<(), RefusedLever> {
        let [least, most] = lever.range();
        if !(0.0..=most - least).contains(&unit) {
            return Err(RefusedLever::Season { lever, value: unit });
        }
        self.0[lever] = (unit > 0.0).then_some(unit);
        Ok(())
    }
}
