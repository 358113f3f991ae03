//! The flights of a step: of what it sets up, and of every variant of that.

use std::sync::OnceLock;

use crate::figure::Figure;
use crate::flown::Flown;
use crate::quantity::Quantity;
use crate::step::Step;

/// What a step sets up, flown, and its variants in their order; nothing where there is nothing to fly.
#[derive(Debug, Clone)]
pub struct Flights {
    setup: Option<Flown>,
    variants: Vec<Option<Flown>>,
    /// The values that somebody has asked for: some take many flights. Those of the setup first, then those of
    /// each variant.
    values: Vec<OnceLock<Option<f64>>>,
}

impl Flights {
    pub fn of(step: &Step) -> Self {
        let setup = step.setup.as_ref();
        // That all of it can be flown has been found when it was read.
        let flown = setup.and_then(|setup| setup.flown().ok().flatten());
        let variants = step.variants.iter().map(|variant| {
            let changed = setup?.changed(&variant.changes).ok()?;
            changed.flown().ok().flatten()
        });
        let variants: Vec<Option<Flown>> = variants.collect();
        let each = Quantity::all().count();
        Self {
            setup: flown,
            values: vec![OnceLock::new(); each * (1 + variants.len())],
            variants,
        }
    }

    /// What the step sets up, flown.
    pub const fn setup(&self) -> Option<&Flown> {
        self.setup.as_ref()
    }

    /// A variant of it, by its place.
    pub fn variant(&self, place: usize) -> Option<&Flown> {
        self.variants.get(place)?.as_ref()
    }

    /// The one that is meant.
    pub fn one(&self, variant: Option<usize>) -> Option<&Flown> {
        match variant {
            None => self.setup(),
            Some(place) => self.variant(place),
        }
    }

    /// The value of a figure, in SI.
    pub fn value(&self, figure: &Figure) -> Option<f64> {
        let value = || figure.quantity.of(self.one(figure.variant)?);
        let before = figure.variant.map_or(0, |place| place + 1);
        let place = Quantity::all().count() * before + figure.quantity.place();
        match self.values.get(place) {
            Some(known) => *known.get_or_init(value),
            None => value(),
        }
    }
}
