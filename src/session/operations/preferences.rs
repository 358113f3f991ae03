//! Changing how somebody likes the page.

use crate::session::Session;
use crate::state::curves::ShownCurves;
use turns_aloft_scenario::units::Units;

impl Session {
    pub const fn units(&self) -> &Units {
        &self.preferences.units
    }

    pub fn set_units(&mut self, units: Units) {
        self.preferences.units = units;
    }

    /// Which curves the charts show.
    pub const fn curves(&self) -> &ShownCurves {
        &self.preferences.curves
    }

    pub fn set_curves(&mut self, curves: ShownCurves) {
        self.preferences.curves = curves;
    }

    /// Whether a newcomer has yet to be told what to do here; a flight by hand has no slider to drag.
    pub const fn shows_greeting(&self) -> bool {
        !self.preferences.greeted && self.slow_flight.is_none()
    }

    /// Puts what a newcomer is told away for good.
    pub fn dismiss_greeting(&mut self) {
        self.preferences.greeted = true;
    }

    /// Whether the attempt to compare with stands beside the jumper, not in the same place.
    pub const fn is_side_by_side(&self) -> bool {
        self.preferences.side_by_side
    }

    pub fn set_side_by_side(&mut self, side_by_side: bool) {
        self.preferences.side_by_side = side_by_side;
    }

    /// From now on plays only when asked: an opened jump shows its landing at once.
    pub fn reduce_motion(&mut self) {
        self.preferences.still = true;
        self.show();
    }
}
