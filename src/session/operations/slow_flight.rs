//! Flying a jump slowly by hand: begun, led, landed, taken or left.

use std::sync::Arc;

use crate::operations::action::Action;
use crate::session::Session;
use crate::state::playback::AFTER_S;
use crate::state::slow_flight::{Landed, Landing, Phase, SlowFlight};
use turns_aloft_physics::flight::Flight;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::ground::Ground;

impl Session {
    /// The slow flight, if the jump at hand is flown by hand.
    pub const fn slow_flight(&self) -> Option<&SlowFlight> {
        self.slow_flight.as_ref()
    }

    pub const fn is_flown_by_hand(&self) -> bool {
        self.slow_flight.is_some()
    }

    /// Stands before the take-off of the jump at hand, to fly it by hand.
    pub fn fly_by_hand(&mut self) {
        self.leave_modes();
        let still = self.preferences.still;
        self.slow_flight = Some(SlowFlight::new(&self.document.scenario, still));
        self.stand_at_takeoff();
    }

    fn stand_at_takeoff(&mut self) {
        self.playback.playing = false;
        self.playback.t_s = 0.0;
    }

    /// How slow the next flight is; in the air it stays as it is.
    pub fn set_pace(&mut self, pace: f64) {
        if let Some(slow) = self.slow_flight.as_mut().filter(|it| !it.is_in_air()) {
            slow.prepare(&self.document.scenario, pace);
            self.stand_at_takeoff();
        }
    }

    /// Stands before the take-off again; what was flown is gone.
    pub fn fly_again(&mut self) {
        if let Some(slow) = &mut self.slow_flight {
            slow.prepare(&self.document.scenario, slow.pace);
            self.stand_at_takeoff();
        }
    }

    /// Leaves the ice. What holds the pad by then leads from the start.
    pub fn take_off(&mut self) {
        if let Some(slow) = &mut self.slow_flight
            && let Phase::Ready(led) = &slow.phase
        {
            slow.phase = Phase::InAir(led.clone());
        }
    }

    /// From now on arms and legs are to be as far in as that: 0 all out, 1 all in.
    pub fn lead(&mut self, wanted: f64) {
        if let Some(slow) = &mut self.slow_flight
            && !wanted.is_nan()
        {
            slow.wanted = wanted.clamp(0.0, 1.0);
        }
    }

    /// Flies on by `passed_s` of real time, or works out the next piece of what it came to; whether a flight is led
    /// at all.
    pub(crate) fn fly_on(&mut self, passed_s: f64) -> bool {
        let step = self.trying.then_some(self.document.scenario.jump_turns);
        let Some(slow) = &mut self.slow_flight else {
            return false;
        };
        match &mut slow.phase {
            Phase::InAir(led) => {
                led.lead(slow.wanted, slow.wanted);
                led.step(passed_s);
                self.playback.t_s = led.time_s();
                if led.has_landed() {
                    slow.phase = Phase::Landing(Box::new(Landing::of((**led).clone(), step)));
                }
            }
            Phase::Landing(landing) => {
                if let Some(landed) = landing.advance(&self.document.scenario, &self.jump) {
                    self.land(landed);
                }
            }
            Phase::Ready(_) | Phase::Landed(_) => return false,
        }
        true
    }

    fn land(&mut self, landed: Landed) {
        let still = self.preferences.still;
        let down_s = landed.jump.flight.touchdown_s;
        if let Some(slow) = &mut self.slow_flight {
            slow.wanted = 0.0;
            slow.phase = Phase::Landed(Box::new(landed));
        }
        self.playback.playing = !still;
        self.playback.t_s = if still {
            self.end_s() + AFTER_S
        } else {
            down_s
        };
    }

    /// Makes what was flown by hand the jump at hand, a change like any other.
    pub fn take_flown(&mut self) {
        let landed = self.slow_flight.as_ref().and_then(SlowFlight::landed);
        if let Some(scenario) = landed.map(|landed| landed.scenario.clone())
            && self.apply(Action::Edit(scenario))
        {
            self.stop_flying_by_hand();
        }
    }

    /// Leaves what was flown; the jump at hand stays as it was.
    pub fn stop_flying_by_hand(&mut self) {
        if self.slow_flight.take().is_some() {
            self.hold_playhead();
        }
    }

    /// The jump in the picture: what was flown by hand once that has landed, else the one at hand.
    pub fn pictured(&self) -> &Jump {
        let landed = self.slow_flight.as_ref().and_then(SlowFlight::landed);
        landed.map_or(&self.jump, |landed| &landed.jump)
    }

    /// The second jump in the picture: the one at hand beside what was flown by hand, else the one that is
    /// compared with.
    pub fn pictured_beside(&self) -> Option<(&Arc<Flight>, Ground)> {
        if let Some(slow) = &self.slow_flight {
            let beside = || (&self.jump.flight, self.document.scenario.ground);
            return slow.landed().map(|_| beside());
        }
        let reference = self.reference.as_ref()?;
        Some((&reference.jump.flight, reference.scenario.ground))
    }
}
