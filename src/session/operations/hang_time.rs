//! Hang time in place of jump height.

use crate::operations::stepping::moved;
use crate::session::Session;
use turns_aloft_analysis::hang_time::{self, RefusedHangTime, height_m, range_s};
use turns_aloft_describe::typed::Admissible;
use turns_aloft_describe::unit::UnitText;
use turns_aloft_scenario::parameter::{Kind, Parameter};
use turns_aloft_words::{say, text};

/// What one touch makes the half-width of the hang time larger or smaller by, s.
const HALF_WIDTH_STEP_S: f64 = 0.005;

impl Session {
    /// How long the jump is in the air, s.
    pub fn hang_time_s(&self) -> f64 {
        self.jump.readout.hang_time_s
    }

    /// A number of the jump as it stands, the height with the time in the air.
    pub fn value_text(&self, parameter: Parameter) -> String {
        let unit = self.units().of(parameter.kind());
        let value = unit.set_text(parameter.get(self.scenario()));
        if parameter != hang_time::OF {
            return value;
        }
        let time = self.units().of(Kind::Time).set_text(self.hang_time_s());
        say!("value-and-hang-time", value = value, time = time)
    }

    /// Sets the jump height from a typed hang time: to the one that is in the air so long, by flights.
    pub fn set_typed_hang_time(&mut self, typed: &str) {
        let what = text("reading-hang-time-s");
        let (kind, range_s) = (Kind::Time, range_s(self.scenario(), &self.jump));
        // To be typed in full, an end of the range must be in it as it is shown.
        let admissible = Admissible {
            kind,
            range: [range_s[0] - SHOWN_END_S, range_s[1] + SHOWN_END_S],
        };
        let Some(value_s) = admissible.typed(typed, self.units()) else {
            self.say(say!("number-needed", what = what));
            return;
        };
        if self.asks_back(what, admissible, typed, value_s) {
            return;
        }
        let held_s = value_s.clamp(range_s[0], range_s[1]);
        let (flown_s, height) = match height_m(self.scenario(), &self.jump, held_s) {
            Err(RefusedHangTime::NotFlown { nearest_s, .. }) => (
                nearest_s,
                height_m(self.scenario(), &self.jump, nearest_s).ok(),
            ),
            found => (held_s, found.ok()),
        };
        let Some(height_m) = height else {
            return;
        };
        self.set(hang_time::OF, height_m);
        if (flown_s - value_s).abs() > SHOWN_END_S {
            let unit = self.units().of(kind);
            self.say(say!(
                "number-held",
                what = what,
                least = unit.text(range_s[0]),
                most = unit.text(range_s[1]),
                held = unit.text(flown_s)
            ));
        }
    }

    /// The half-width of the hang time, s, which is that of the height, told otherwise; none while no range
    /// is shown.
    pub const fn hang_time_half_width_s(&self) -> Option<f64> {
        self.answers.range.result().hang_time_half_width_s
    }

    /// Makes the half-width of the hang time larger or smaller by so many steps, and with it that of the
    /// height.
    pub fn step_hang_time_half_width(&mut self, steps: f64) {
        let Some(present_s) = self.hang_time_half_width_s() else {
            return;
        };
        let half_width_s = moved(present_s, HALF_WIDTH_STEP_S, steps).max(0.0);
        let half_width_m =
            hang_time::height_half_width_m(self.scenario(), &self.jump, half_width_s);
        self.hold_half_width(hang_time::UNCERTAIN, half_width_m);
    }
}

/// Half of the last decimal that a time is shown with, s.
const SHOWN_END_S: f64 = 0.005;
