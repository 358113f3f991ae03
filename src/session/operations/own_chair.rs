//! The friction of somebody's own chair, from how it slowed down.

use crate::session::Session;
use crate::state::slowing::Slowing;
use turns_aloft_describe::Sentence;
use turns_aloft_describe::turntable::unit;
use turns_aloft_describe::unit::UnitText;
use turns_aloft_turntable::Friction;
use turns_aloft_turntable::setup::Number;
use turns_aloft_words::say;

impl Session {
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
        let rate_rad_s = on_turntable.shown().rate_rad_s;
        match on_turntable.calibrated() {
            Ok(friction) => {
                self.take_friction(friction, rate_rad_s);
            }
            Err(why) => self.say(why.sentence()),
        }
    }

    /// Begins a new run with this friction, where it can be set, at this rate; whether it can.
    pub(crate) fn take_friction(&mut self, friction: Friction, rate_rad_s: f64) -> bool {
        let parts = [
            (Number::FrictionTorque, friction.torque_n_m),
            (Number::FrictionViscous, friction.viscous_n_m_s),
        ];
        let [torque, viscous] = parts.map(|(number, value)| unit(number, self.units()).text(value));
        for (number, value) in parts {
            let [_, most] = number.range();
            if value > most {
                let most = unit(number, self.units()).text(most);
                self.say(say!("turntable-too-much-friction", most = most));
                return false;
            }
        }
        self.set_turntable_up(|setup| (setup.friction, setup.rate_rad_s) = (friction, rate_rad_s));
        self.say(say!(
            "turntable-calibrated",
            torque = torque,
            viscous = viscous
        ));
        true
    }
}
