//! Somebody on a turntable: led, pushed, wound back, set up in another way, and left.

use crate::session::Session;
use crate::state::prediction::{Prediction, Tendency};
use crate::state::turntable::OnTurntable;
use turns_aloft_describe::Sentence;
use turns_aloft_lesson::free::Free;
use turns_aloft_physics::segments::SegmentTable;
use turns_aloft_turntable::position::Limbs;
use turns_aloft_turntable::{Position, Setup, Stand};
use turns_aloft_words::text;

/// How much faster one push makes it turn, rad/s: gentle (our choice).
const PUSH_RAD_S: f64 = 0.8;

/// The most that a flick does, rad/s (our choice).
const HARDEST_FLICK_RAD_S: f64 = 3.0;

impl Session {
    /// Who is on a turntable, if somebody is.
    pub const fn turntable(&self) -> Option<&OnTurntable> {
        self.turntable.as_ref()
    }

    pub const fn is_on_turntable(&self) -> bool {
        self.turntable.is_some()
    }

    /// Begins with who was on it last, at rest.
    pub fn begin_turntable(&mut self) {
        let setup = Setup {
            rate_rad_s: 0.0,
            ..self.turntable_setup
        };
        match OnTurntable::begun(&setup) {
            Ok(on_turntable) => {
                self.playback.playing = false;
                self.leave_modes();
                self.turntable = Some(on_turntable);
            }
            Err(why) => self.say(why.sentence()),
        }
    }

    pub fn leave_turntable(&mut self) {
        self.turntable = None;
    }

    /// Goes on by so much real time, until a run is as long as can be.
    pub fn advance_turntable(&mut self, passed_s: f64) {
        let Some(on_turntable) = &mut self.turntable else {
            return;
        };
        let was_full = on_turntable.turntable().is_full();
        on_turntable.advance(passed_s);
        if on_turntable.turntable().is_full() && !was_full {
            self.say(text("turntable-hour-over"));
        }
    }

    /// Leads arms, legs or trunk.
    pub fn lead_turntable(&mut self, change: impl FnOnce(&mut Position)) {
        let [arms_free, legs_free, trunk_free] =
            [Limbs::Arms, Limbs::Legs, Limbs::Trunk].map(|limbs| self.is_free(Free::Limbs(limbs)));
        if let Some(on_turntable) = &mut self.turntable {
            let before = on_turntable.shown_or_led();
            let mut position = before;
            change(&mut position);
            // A finger in the picture leads all at once, what a lesson locks as well.
            if !arms_free {
                position.hand_distance_m = before.hand_distance_m;
            }
            if !legs_free {
                position.legs = before.legs;
            }
            if !trunk_free {
                position.twist_rad = before.twist_rad;
            }
            let [nearest_m, farthest_m] = on_turntable.reach_m();
            position.hand_distance_m = position.hand_distance_m.clamp(nearest_m, farthest_m);
            if position != before {
                on_turntable.lead(position);
            }
        }
    }

    /// So many pushes by hand, positive anticlockwise seen from above.
    pub fn push_turntable(&mut self, pushes: f64) {
        if !self.is_free(Free::Push) {
            return;
        }
        if let Some(on_turntable) = &mut self.turntable {
            on_turntable.push(pushes * PUSH_RAD_S);
        }
    }

    /// A push by a flick that would turn it so fast, rad/s.
    pub fn flick_turntable(&mut self, rate_rad_s: f64) {
        if !self.is_free(Free::Push) {
            return;
        }
        if let Some(on_turntable) = &mut self.turntable {
            on_turntable.push(rate_rad_s.clamp(-HARDEST_FLICK_RAD_S, HARDEST_FLICK_RAD_S));
        }
    }

    /// Turns at the rate that is to be set.
    pub fn turn_at_rate_to_set(&mut self) {
        if !self.is_free(Free::Push) {
            return;
        }
        if let Some(on_turntable) = &mut self.turntable {
            on_turntable.set_rate();
        }
    }

    pub fn play_or_pause_turntable(&mut self) {
        if let Some(on_turntable) = &mut self.turntable {
            on_turntable.play_or_pause();
        }
    }

    /// Shows the run at an earlier time.
    pub fn show_turntable_at(&mut self, t_s: f64) {
        if let Some(on_turntable) = &mut self.turntable {
            on_turntable.show(t_s);
        }
    }

    /// The same from the beginning.
    pub fn turn_again(&mut self) {
        let again = self.turntable.as_mut().map(OnTurntable::again);
        if let Some(Err(why)) = again {
            self.say(why.sentence());
        }
    }

    /// What the angular momentum is expected to do; none takes it back.
    pub fn predict_momentum(&mut self, expected: Option<Tendency>) {
        if let Some(on_turntable) = &mut self.turntable {
            on_turntable.prediction = expected.map(Prediction::of);
        }
    }

    /// Lays the run under the next ones, or takes away the one that is.
    pub fn keep_or_drop_run(&mut self) {
        if let Some(on_turntable) = &mut self.turntable {
            on_turntable.keep_or_drop_run();
        }
    }

    /// Another stand brings its bearing along, and begins at rest.
    pub fn set_stand(&mut self, stand: Stand) {
        self.set_turntable_up(|setup| *setup = setup.moved_to(stand));
    }

    /// Whose masses the body's parts have.
    pub fn set_turntable_table(&mut self, table: SegmentTable) {
        self.set_turntable_up(|setup| setup.table = table);
    }

    /// Leaves the friction out, or brings it back.
    pub fn set_without_friction(&mut self, without: bool) {
        let Some(on_turntable) = &mut self.turntable else {
            return;
        };
        let friction = on_turntable.friction(without);
        self.set_turntable_up(|setup| setup.friction = friction);
    }

    /// Begins a new run in which it turns as fast as now.
    pub(crate) fn set_turntable_up(&mut self, change: impl FnOnce(&mut Setup)) {
        let Some(on_turntable) = &mut self.turntable else {
            return;
        };
        let mut setup = *on_turntable.setup();
        setup.rate_rad_s = on_turntable.shown().rate_rad_s;
        change(&mut setup);
        if setup == *on_turntable.setup() {
            return;
        }
        match on_turntable.set_up(&setup) {
            Ok(()) => self.turntable_setup = setup,
            Err(why) => self.say(why.sentence()),
        }
    }
}
