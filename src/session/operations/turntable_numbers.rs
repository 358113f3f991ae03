//! Numbers that are typed on the turntable's page.

use crate::session::Session;
use turns_aloft_describe::Label;
use turns_aloft_describe::turntable::unit;
use turns_aloft_describe::typed::Admissible;
use turns_aloft_describe::unit::{SECONDS, UnitText};
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_scenario::units::Unit;
use turns_aloft_turntable::setup::Number;
use turns_aloft_words::{number, say, text};

/// A number that is typed on the turntable's page.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TypedNumber {
    /// Of who turns on what.
    Of(Number),
    /// The rate that is set at a touch.
    RateToSet,
    /// Of somebody's own chair: a rate that was read, the first, second or third.
    ReadRate(usize),
    /// The time from the first to the second, or from that to the third.
    TimeBetween(usize),
}

/// Least and most time between two rates of somebody's own chair, s.
const TIMES_BETWEEN_S: [f64; 2] = [0.1, 600.0];

impl TypedNumber {
    pub fn label(self) -> &'static str {
        match self {
            Self::Of(number) => number.label(),
            Self::RateToSet => text("turntable-rate-to-set"),
            Self::ReadRate(0) => text("turntable-rate-before"),
            Self::ReadRate(1) => text("turntable-rate-after"),
            Self::ReadRate(_) => text("turntable-rate-third"),
            Self::TimeBetween(0) => text("turntable-time-between"),
            Self::TimeBetween(_) => text("turntable-time-to-third"),
        }
    }

    /// The kind whose unit is the user's choice; none where there is but one.
    const fn kind(self) -> Option<Kind> {
        match self {
            Self::Of(Number::Stature | Number::HipsForward) => Some(Kind::Length),
            Self::Of(Number::BodyMass | Number::HandMass | Number::BootMass) => Some(Kind::Mass),
            Self::Of(Number::Rate) | Self::RateToSet | Self::ReadRate(_) => Some(Kind::Rate),
            Self::TimeBetween(_) => Some(Kind::Time),
            Self::Of(_) => None,
        }
    }

    const fn range(self) -> [f64; 2] {
        match self {
            Self::Of(number) => number.range(),
            Self::RateToSet | Self::ReadRate(_) => Number::Rate.range(),
            Self::TimeBetween(_) => TIMES_BETWEEN_S,
        }
    }

    fn unit(self, session: &Session) -> Unit {
        match self {
            Self::Of(number) => unit(number, session.units()),
            Self::RateToSet | Self::ReadRate(_) => session.units().of(Kind::Rate),
            Self::TimeBetween(_) => SECONDS,
        }
    }
}

impl Session {
    /// What somebody can type, SI.
    pub fn turntable_number(&self, of: TypedNumber) -> Option<f64> {
        let on_turntable = self.turntable()?;
        let slowing = on_turntable.slowing();
        Some(match of {
            TypedNumber::Of(number) => number.get(on_turntable.setup()),
            TypedNumber::RateToSet => on_turntable.rate_to_set_rad_s(),
            TypedNumber::ReadRate(which) => slowing.rates_rad_s[which],
            TypedNumber::TimeBetween(which) => slowing.times_s[which],
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
            TypedNumber::ReadRate(which) => {
                self.change_slowing(|slowing| slowing.rates_rad_s[which] = value);
            }
            TypedNumber::TimeBetween(which) => {
                self.change_slowing(|slowing| slowing.times_s[which] = value);
            }
        }
    }
}
