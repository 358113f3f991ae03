//! The flights of a step: of what it sets up, and of every variant of that.

use crate::figure::Figure;
use crate::flown::Flown;
use crate::step::Step;

/// What a step sets up, flown, and its variants in their order; nothing where there is nothing to fly.
#[derive(Debug, Clone)]
pub struct Flights {
    setup: Option<Flown>,
    variants: Vec<Option<Flown>>,
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
        Self {
            setup: flown,
            variants: variants.collect(),
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
        figure.quantity.of(self.one(figure.variant)?)
    }
}
