//! The turntable in words: its numbers, and what is wrong with a programme, a number or readings.

use crate::error::in_backticks;
use crate::number::{plain, shown};
use crate::unit::fixed;
use crate::{Label, Sentence};
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_scenario::units::{Unit, UnitSign, Units};
use turns_aloft_turntable::calibrate::CalibrationFault;
use turns_aloft_turntable::planned::PlanFault;
use turns_aloft_turntable::position::{Limbs, TWIST_RAD};
use turns_aloft_turntable::programme::{LARGEST_BYTES, ProgrammeFault};
use turns_aloft_turntable::run::LONGEST_S;
use turns_aloft_turntable::setup::{Number, Refused, STAND, TABLE};
use turns_aloft_words::{decimal, say, text};

impl Label for Number {
    fn label(self) -> &'static str {
        if let Some(parameter) = self.of_jump() {
            return parameter.label();
        }
        text(match self {
            Self::HipsForward => "turntable-hips-forward",
            Self::BearingInertia => "turntable-bearing-inertia",
            Self::FrictionTorque => "turntable-friction-torque",
            Self::FrictionViscous => "turntable-friction-viscous",
            _ => "turntable-rate",
        })
    }
}

/// The unit in which a number is shown.
pub const fn unit(number: Number, units: &Units) -> Unit {
    match number {
        Number::BearingInertia => fixed(UnitSign::KgM2, 2),
        Number::FrictionTorque => fixed(UnitSign::NM, 2),
        Number::FrictionViscous => fixed(UnitSign::NMS, 3),
        Number::Rate => units.of(Kind::Rate),
        Number::BodyMass | Number::HandMass | Number::BootMass => units.of(Kind::Mass),
        Number::Stature | Number::HipsForward => units.of(Kind::Length),
    }
}

impl Sentence for ProgrammeFault {
    fn sentence(&self) -> String {
        match self {
            Self::Empty => text("turntable-empty").to_owned(),
            Self::NotText => text("turntable-not-text").to_owned(),
            Self::TooLarge => say!("turntable-too-large", most = LARGEST_BYTES / 1_000_000),
            Self::NoColumn { column } => say!("turntable-no-column", column = *column),
            Self::TwiceColumn { column } => say!("turntable-twice-column", column = *column),
            Self::NotANumber {
                line,
                column,
                written,
            } => say!(
                "turntable-not-a-number",
                line = *line,
                written = shown(written),
                column = *column
            ),
            Self::TooShort => text("turntable-too-short").to_owned(),
            Self::OutOfOrder { line } => say!("turntable-out-of-order", line = *line),
            Self::TooLong => say!("turntable-too-long", most = plain(LONGEST_S)),
        }
    }
}

impl Sentence for PlanFault {
    fn sentence(&self) -> String {
        match self {
            Self::Reach {
                line,
                asked_m,
                reach_m,
            } => say!(
                "turntable-reach",
                line = *line,
                asked = plain(*asked_m),
                least = decimal(reach_m[0], 3),
                most = decimal(reach_m[1], 3)
            ),
            Self::Legs { line, asked } => {
                say!("turntable-legs", line = *line, asked = plain(*asked))
            }
            Self::LegsStand { line } => say!("turntable-legs-stand", line = *line),
            Self::Twist { line, asked_rad } => say!(
                "turntable-twist",
                line = *line,
                asked = plain(*asked_rad),
                least = plain(-TWIST_RAD),
                most = plain(TWIST_RAD)
            ),
            Self::TooFast {
                line,
                limbs,
                rate_rad_s,
            } => {
                let (rate, most) = (decimal(*rate_rad_s, 1), plain(limbs.fastest_rad_s()));
                match limbs {
                    Limbs::Arms => say!(
                        "turntable-too-fast-arms",
                        line = *line,
                        rate = rate,
                        most = most
                    ),
                    Limbs::Legs => say!(
                        "turntable-too-fast-legs",
                        line = *line,
                        rate = rate,
                        most = most
                    ),
                    Limbs::Trunk => say!(
                        "turntable-too-fast-trunk",
                        line = *line,
                        rate = rate,
                        most = most
                    ),
                }
            }
        }
    }
}

impl Sentence for Refused {
    fn sentence(&self) -> String {
        match self {
            Self::UnknownKey { key } => {
                let words = [STAND, TABLE].into_iter();
                let known: Vec<&str> = words.chain(Number::ALL.map(Number::key)).collect();
                say!(
                    "turntable-unknown-key",
                    key = shown(key),
                    known = known.join(", ")
                )
            }
            Self::UnknownWord {
                key,
                written,
                known,
            } => say!(
                "turntable-unknown-word",
                key = *key,
                value = shown(written),
                known = in_backticks(known)
            ),
            Self::NotANumber { number, written } => {
                let [least, most] = number.range();
                say!(
                    "turntable-no-number",
                    key = number.key(),
                    value = shown(written),
                    least = plain(least),
                    most = plain(most)
                )
            }
            Self::OutOfRange { number, value } => {
                let [least, most] = number.range();
                say!(
                    "turntable-out-of-range",
                    key = number.key(),
                    value = plain(*value),
                    least = plain(least),
                    most = plain(most)
                )
            }
        }
    }
}

impl Sentence for CalibrationFault {
    fn sentence(&self) -> String {
        match self {
            Self::NotNumbers => text("turntable-readings-no-numbers"),
            Self::OutOfOrder => text("turntable-readings-out-of-order"),
            Self::NotSlower => text("turntable-readings-not-slower"),
            Self::AtRest => text("turntable-readings-at-rest"),
            Self::HarderAtEnd => text("turntable-readings-harder-at-end"),
            Self::HarderAtBeginning => text("turntable-readings-harder-at-beginning"),
        }
        .to_owned()
    }
}
