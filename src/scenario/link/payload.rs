//! The fields as bytes.
//!
//! A jump is written as what differs from the one before it; the first, from a blank one. A mask
//! says which fields do; they follow in the order of their bits. Bits and codes are those of links
//! already sent ([`Parameter`], [`Choice`] [`Text`] and [`led`] have them): none of them may ever change.

use crate::input::{Choice, Text};
use crate::led;
use crate::link::bytes::{Reader, Writer};
use crate::link::unreadable::Unreadable;
use crate::parameter::{BLANK, Parameter};
use crate::scenario::Scenario;
use crate::setting::Refused;
use turns_aloft_physics::led_tucks::{Knot, LedTucks};
use turns_aloft_physics::order::by_number;

/// Anything that a link may hold.
#[derive(Debug, Clone, Copy)]
enum Field {
    Number(Parameter),
    Choice(Choice),
    Text(Text),
    Led,
}

impl Field {
    const fn bit(self) -> u32 {
        match self {
            Self::Number(parameter) => parameter.row().link_bit,
            Self::Choice(choice) => choice.link_bit(),
            Self::Text(text) => text.link_bit(),
            Self::Led => led::LINK_BIT,
        }
    }

    /// All of them, in the order of their bits, which is that of the bytes.
    fn all() -> Vec<Self> {
        let numbers = Parameter::ALL.map(Self::Number).into_iter();
        let choices = Choice::ALL.map(Self::Choice);
        let texts = Text::ALL.map(Self::Text);
        let all = (numbers.chain(choices).chain(texts).chain([Self::Led])).collect();
        by_number(all, |field: &Self| f64::from(field.bit()))
    }

    /// Writes it, if it is not what it was before; whether it did.
    fn write(self, bytes: &mut Writer, jump: &Scenario, before: &Scenario) -> bool {
        match self {
            Self::Number(parameter) => {
                let number = parameter.get(jump);
                let differs = number.to_bits() != parameter.get(before).to_bits();
                if differs {
                    bytes.number(number);
                }
                differs
            }
            Self::Choice(choice) => {
                let code = choice.code(jump);
                let differs = code != choice.code(before);
                if differs {
                    bytes.byte(code);
                }
                differs
            }
            Self::Text(text) => {
                let text_of = |jump| text.get(jump);
                let differs = text_of(jump) != text_of(before);
                if differs {
                    bytes.text(text_of(jump));
                }
                differs
            }
            Self::Led => {
                let differs = jump.led != before.led;
                if differs {
                    write_led(bytes, jump.led.as_ref());
                }
                differs
            }
        }
    }

    fn read(self, bytes: &mut Reader, jump: &mut Scenario) -> Result<(), Unreadable> {
        match self {
            Self::Number(parameter) => {
                let number = bytes.number().ok_or(Unreadable::Damaged)?;
                parameter.set(jump, number).map_err(Unreadable::OutOfRange)
            }
            Self::Choice(choice) => {
                let code = bytes.byte().ok_or(Unreadable::Damaged)?;
                choice.set_code(jump, code).ok_or(Unreadable::Damaged)
            }
            Self::Text(text) => {
                *text.get_mut(jump) = bytes.text().ok_or(Unreadable::Damaged)?;
                Ok(())
            }
            Self::Led => {
                jump.led = read_led(bytes)?;
                Ok(())
            }
        }
    }
}

/// The knots, after how many there are; none for a jump as it is planned.
fn write_led(bytes: &mut Writer, led: Option<&LedTucks>) {
    let knots = led.map_or(&[][..], LedTucks::knots);
    bytes.count(knots.len() as u64);
    for knot in knots {
        for number in [knot.time_s, knot.arms, knot.legs] {
            bytes.number(number);
        }
    }
}

fn read_led(bytes: &mut Reader) -> Result<Option<LedTucks>, Unreadable> {
    let count = bytes.count().ok_or(Unreadable::Damaged)?;
    if count == 0 {
        return Ok(None);
    }
    let mut knots = Vec::new();
    for _ in 0..count {
        let mut number = || bytes.number().ok_or(Unreadable::Damaged);
        knots.push(Knot {
            time_s: number()?,
            arms: number()?,
            legs: number()?,
        });
    }
    LedTucks::new(&knots)
        .map(Some)
        .map_err(|why| Unreadable::OutOfRange(Refused::Knots(why)))
}

pub fn write(jump: &Scenario, reference: Option<&Scenario>) -> Vec<u8> {
    let mut bytes = Writer::default();
    write_difference(&mut bytes, jump, &BLANK);
    if let Some(reference) = reference {
        write_difference(&mut bytes, reference, jump);
    }
    bytes.0
}

/// The jump, and the one to compare with.
pub fn read(bytes: &[u8]) -> Result<(Scenario, Option<Scenario>), Unreadable> {
    let mut bytes = Reader(bytes);
    let jump = read_difference(&mut bytes, &BLANK)?;
    let reference = if bytes.0.is_empty() {
        None
    } else {
        Some(read_difference(&mut bytes, &jump)?)
    };
    if bytes.0.is_empty() {
        Ok((jump, reference))
    } else {
        Err(Unreadable::Damaged)
    }
}

/// What has to be said of a jump to somebody who knows the one before.
fn write_difference(bytes: &mut Writer, jump: &Scenario, before: &Scenario) {
    let mut fields = Writer::default();
    let differs = |field: Field| {
        field
            .write(&mut fields, jump, before)
            .then_some(field.bit())
    };
    let bits: Vec<u32> = Field::all().into_iter().filter_map(differs).collect();
    bytes.count(bits.into_iter().map(|bit| 1 << bit).sum());
    bytes.0.append(&mut fields.0);
}

fn read_difference(bytes: &mut Reader, before: &Scenario) -> Result<Scenario, Unreadable> {
    let mut mask = bytes.count().ok_or(Unreadable::Damaged)?;
    let mut jump = before.clone();
    for field in Field::all() {
        let bit = 1 << field.bit();
        if mask & bit != 0 {
            mask &= !bit;
            field.read(bytes, &mut jump)?;
        }
    }
    if mask != 0 {
        return Err(Unreadable::Damaged);
    }
    jump.check().map_err(Unreadable::OutOfRange)?;
    if !jump.fits_a_file() {
        return Err(Unreadable::TooLong);
    }
    Ok(jump)
}
