//! Somebody on a turntable: led, pushed, wound back, set up in another way, and left.

use crate::session::Session;
use crate::state::turntable::{OnTurntable, Slowing};
use turns_aloft_describe::turntable::unit;
use turns_aloft_describe::typed::Admissible;
use turns_aloft_describe::unit::{SECONDS, UnitText};
use turns_aloft_describe::{Label, Sentence};
use turns_aloft_physics::segments::SegmentTable;
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_scenario::units::Unit;
use turns_aloft_turntable::setup::Number;
use turns_aloft_turntable::{Position, Setup, Stand};
use turns_aloft_words::{number, say, text};

/// A number that is typed on the turntable's page.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TypedNumber {
    /// Of who turns on what.
    Of(Number),
    /// The rate that is set at a touch.
    RateToSet,
    /// Of somebody's own chair.
    RateBefore,
    RateAfter,
    TimeBetween,
}

/// Least and most time between the two rates of somebody's own chair, s.
const TIMES_BETWEEN_S: [f64; 2] = [0.1, 600.0];

/// How much faster one push makes it turn, rad/s: gentle (our choice).
const PUSH_RAD_S: f64 = 0.8;

/// The most that a flick does, rad/s (our choice).
const HARDEST_FLICK_RAD_S: f64 = 3.0;

impl TypedNumber {
    pub fn label(self) -> &'static str {
        match self {
            Self::Of(number) => number.label(),
            Self::RateToSet => text("turntable-rate-to-set"),
            Self::RateBefore => text("turntable-rate-before"),
            Self::RateAfter => text("turntable-rate-after"),
            Self::TimeBetween => text("turntable-time-between"),
        }
    }

    /// The kind whose unit is the user's choice; none where there is but one.
    const fn kind(self) -> Option<Kind> {
        match self {
            Self::Of(Number::Stature | Number::HipsForward) => Some(Kind::Length),
            Self::Of(Number::BodyMass | Number::HandMass | Number::BootMass) => Some(Kind::Mass),
            Self::Of(Number::Rate) | Self::RateToSet | Self::RateBefore | Self::RateAfter => {
                Some(Kind::Rate)
            }
            Self::TimeBetween => Some(Kind::Time),
            Self::Of(_) => None,
        }
    }

    const fn range(self) -> [f64; 2] {
        match self {
            Self::Of(number) => number.range(),
            Self::RateToSet | Self::RateBefore | Self::RateAfter => Number::Rate.range(),
            Self::TimeBetween => TIMES_BETWEEN_S,
        }
    }

    fn unit(self, session: &Session) -> Unit {
        match self {
            Self::Of(number) => unit(number, session.units()),
            Self::RateToSet | Self::RateBefore | Self::RateAfter => session.units().of(Kind::Rate),
            Self::TimeBetween => SECONDS,
        }
    }
}

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
        if let Some(on_turntable) = &mut self.turntable {
            let before = on_turntable.shown_or_led();
            let mut position = before;
            change(&mut position);
            let [nearest_m, farthest_m] = on_turntable.reach_m();
            position.hand_distance_m = position.hand_distance_m.clamp(nearest_m, farthest_m);
            if position != before {
                on_turntable.lead(position);
            }
        }
    }

    /// So many pushes by hand, positive anticlockwise seen from above.
    pub fn push_turntable(&mut self, pushes: f64) {
        if let Some(on_turntable) = &mut self.turntable {
            on_turntable.push(pushes * PUSH_RAD_S);
        }
    }

    /// A push by a flick that would turn it so fast, rad/s.
    pub fn flick_turntable(&mut self, rate_rad_s: f64) {
        if let Some(on_turntable) = &mut self.turntable {
            on_turntable.push(rate_rad_s.clamp(-HARDEST_FLICK_RAD_S, HARDEST_FLICK_RAD_S));
        }
    }

    /// Turns at the rate that is to be set.
    pub fn turn_at_rate_to_set(&mut self) {
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
    fn set_turntable_up(&mut self, change: impl FnOnce(&mut Setup)) {
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

    /// What somebody can type, SI.
    pub fn turntable_number(&self, of: TypedNumber) -> Option<f64> {
        let on_turntable = self.turntable()?;
        let slowing = on_turntable.slowing();
        Some(match of {
            TypedNumber::Of(number) => number.get(on_turntable.setup()),
            TypedNumber::RateToSet => on_turntable.rate_to_set_rad_s(),
            TypedNumber::RateBefore => slowing.rates_rad_s[0],
            TypedNumber::RateAfter => slowing.rates_rad_s[1],
            TypedNumber::TimeBetween => slowing.time_s,
        })
    }

    /// The unit in which it is shown.
    pub fn turntable_unit(&self, of: TypedNumber) -> Unit {
        of.unit(self)
    }

    /// Sets a number from what somebody has typed; one that is out of its range is held at its end, and that is
    /// said.
    pub fn set_typed_turntable(&mut self, of: TypedNumber, typed: &str) {
        let [least, most] = of.range();
        let unit = of.unit(self);
        let value = match of.kind() {
            Some(kind) => Admissible {
                kind,
                range: [least, most],
            }
            .typed(typed, self.units()),
            None => number(typed.trim_end_matches(unit.sign())),
        };
        let Some(value) = value.filter(|value| value.is_finite()) else {
            self.say(say!("number-needed", what = of.label()));
            return;
        };
        let held = value.clamp(least, most);
        self.set_turntable_number(of, held);
        if held != value {
            self.say(say!(
                "number-held",
                what = of.label(),
                least = unit.text(least),
                most = unit.text(most),
                held = unit.text(held)
            ));
        }
    }

    fn set_turntable_number(&mut self, of: TypedNumber, value: f64) {
        let slowing = |slowing: &mut Slowing| match of {
            TypedNumber::RateBefore => slowing.rates_rad_s[0] = value,
            TypedNumber::RateAfter => slowing.rates_rad_s[1] = value,
            _ => slowing.time_s = value,
        };
        match of {
            TypedNumber::Of(number) => self.set_turntable_up(|setup| {
                // It is in its range.
                number.set(setup, value).ok();
            }),
            TypedNumber::RateToSet => {
                if let Some(on_turntable) = &mut self.turntable {
                    on_turntable.rate_to_set_rad_s = value;
                    on_turntable.set_rate();
                }
            }
            _ => self.change_slowing(slowing),
        }
    }

    /// Changes what is said of somebody's own chair.
    pub fn change_slowing(&mut self, change: impl FnOnce(&mut Slowing)) {
        if let Some(on_turntable) = &mut self.turntable {
            change(&mut on_turntable.slowing);
        }
    }

    /// Takes the friction over that somebody's own chair has.
    pub fn calibrate_turntable(&mut self) {
        let Some(on_turntable) = &self.turntable else {
            return;
        };
        match on_turntable.calibrated() {
            Ok(friction) => {
                let parts = [
                    (Number::FrictionTorque, friction.torque_n_m),
                    (Number::FrictionViscous, friction.viscous_n_m_s),
                ];
                let [torque, viscous] =
                    parts.map(|(number, value)| unit(number, self.units()).text(value));
                for (number, value) in parts {
                    let [_, most] = number.range();
                    if value > most {
                        let most = unit(number, self.units()).text(most);
                        self.say(say!("turntable-too-much-friction", most = most));
                        return;
                    }
                }
                self.set_turntable_up(|setup| setup.friction = friction);
                self.say(say!(
                    "turntable-calibrated",
                    torque = torque,
                    viscous = viscous
                ));
            }
            Err(why) => self.say(why.sentence()),
        }
    }
}
