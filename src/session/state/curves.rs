//! Which curves the charts show.

use serde::{Deserialize, Serialize};

use turns_aloft_scenario::curve::Curve;

/// The curves shown, one at least, and whether L = I · ω is shown with them.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(from = "Saved", into = "Saved")]
pub struct ShownCurves {
    shown: [bool; Curve::ALL.len()],
    pub equation: bool,
}

/// How a visit keeps them. Names that are not known are passed over.
#[derive(Serialize, Deserialize)]
struct Saved {
    shown: Vec<String>,
    equation: bool,
}

impl Default for ShownCurves {
    fn default() -> Self {
        Self::of([Curve::Rate, Curve::Inertia, Curve::Turns].map(Curve::name))
    }
}

impl ShownCurves {
    fn of<'a>(names: impl IntoIterator<Item = &'a str> + Clone) -> Self {
        let is_named = |curve: Curve| names.clone().into_iter().any(|name| name == curve.name());
        Self {
            shown: Curve::ALL.map(is_named),
            equation: false,
        }
    }

    pub const fn shows(&self, curve: Curve) -> bool {
        self.shown[curve as usize]
    }

    /// Shows or hides a curve; the last one stays.
    pub fn set(&mut self, curve: Curve, shown: bool) {
        if shown || self.all().any(|other| other != curve) {
            self.shown[curve as usize] = shown;
        }
    }

    /// Hides the lowest curve besides this one.
    pub fn make_way_for(&mut self, curve: Curve) {
        let lowest = self.all().filter(|&other| other != curve).last();
        if let Some(lowest) = lowest {
            self.set(lowest, false);
        }
    }

    /// Those shown, in their order.
    pub fn all(&self) -> impl Iterator<Item = Curve> + '_ {
        Curve::ALL.into_iter().filter(|&curve| self.shows(curve))
    }
}

impl From<Saved> for ShownCurves {
    fn from(saved: Saved) -> Self {
        let read = Self {
            equation: saved.equation,
            ..Self::of(saved.shown.iter().map(String::as_str))
        };
        if read.all().next().is_none() {
            return Self {
                equation: saved.equation,
                ..Self::default()
            };
        }
        read
    }
}

impl From<ShownCurves> for Saved {
    fn from(curves: ShownCurves) -> Self {
        Self {
            shown: curves.all().map(|curve| curve.name().to_owned()).collect(),
            equation: curves.equation,
        }
    }
}
