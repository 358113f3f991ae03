//! Measuring an attempt by a stop-watch.

use crate::session::Session;
use turns_aloft_attempt::Measured;
use turns_aloft_attempt::stop_watch::{StopWatch, USUAL_HALF_WIDTH_S};
use turns_aloft_describe::typed::Admissible;
use turns_aloft_describe::unit::UnitText;
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_words::{say, text};

/// What a stop-watch may say of a jump, and its half-width, s: our limits, wider than any jump.
const HANG_TIMES_S: [f64; 2] = [0.1, 3.0];
const HALF_WIDTHS_S: [f64; 2] = [0.01, 0.3];

/// Most turns that can be counted; those in a jump's name are 5 and a half at most.
const MOST_COUNTED: f64 = 7.0;

impl Session {
    /// Begins with the hang time of the jump at hand, to be set to what the watch says.
    pub fn measure_by_stop_watch(&mut self) {
        let hang_time_s = (100.0 * self.jump.readout.hang_time_s).round() / 100.0;
        self.begin_measuring(Measured::StopWatch(StopWatch {
            hang_time_s,
            half_width_s: USUAL_HALF_WIDTH_S,
            turns_counted: None,
            landing_facing_rad: None,
        }));
    }

    /// Changes what the stop-watch says.
    pub fn set_stop_watch(&mut self, change: impl FnOnce(&mut StopWatch)) {
        let Some(measuring) = &mut self.measuring else {
            return;
        };
        measuring.change(|measured, _| {
            if let Measured::StopWatch(watch) = measured {
                change(watch);
            }
        });
    }

    /// Sets the hang time from what somebody has typed.
    pub fn set_typed_watch(&mut self, typed: &str) {
        let what = text("reading-hang-time-s");
        let admissible = Admissible {
            kind: Kind::Time,
            range: HANG_TIMES_S,
        };
        let Some(value_s) = admissible.typed(typed, self.units()) else {
            self.say(say!("number-needed", what = what));
            return;
        };
        let [least_s, most_s] = HANG_TIMES_S;
        let held_s = value_s.clamp(least_s, most_s);
        self.set_stop_watch(|watch| watch.hang_time_s = held_s);
        if held_s != value_s {
            let unit = self.units().of(Kind::Time);
            self.say(say!(
                "number-held",
                what = what,
                least = unit.text(least_s),
                most = unit.text(most_s),
                held = unit.text(held_s)
            ));
        }
    }

    /// Makes the half-width of the hang time larger or smaller.
    pub fn step_watch_half_width(&mut self, by_s: f64) {
        self.set_stop_watch(|watch| {
            let [least_s, most_s] = HALF_WIDTHS_S;
            watch.half_width_s = (watch.half_width_s + by_s).clamp(least_s, most_s);
        });
    }

    /// Counts quarter turns more or fewer; the first time from those that the jump's name asks for.
    pub fn step_turns_counted(&mut self, quarters: f64) {
        let named = self.turns_to_find();
        self.set_stop_watch(|watch| {
            let counted = watch.turns_counted.map_or(named, |it| it + 0.25 * quarters);
            watch.turns_counted = Some(counted.clamp(0.25, MOST_COUNTED));
        });
    }
}
