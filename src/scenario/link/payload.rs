//! The fields of versions 1 and 2, as bytes.
//!
//! A jump is written as what differs from the one before it; the first, from a blank one. A mask
//! says which fields do; they follow in this order: the numbers, the words, name and note. Order
//! and codes are those of links already sent: nothing here may ever change.

use super::Unreadable;
use super::bytes::{Reader, Writer};
use crate::physics::plan::Turning;
use crate::physics::segments::SegmentTable;
use crate::scenario::ground::Ground;
use crate::scenario::jump::JumpName;
use crate::scenario::keys::{self, Key};
use crate::scenario::{HandsKeep, Scenario};

const NUMBERS: [&str; 17] = [
    "takeoff_rate_rad_s",
    "arm_tuck",
    "leg_tuck",
    "hand_mass_kg",
    "jump_height_m",
    "stature_m",
    "body_mass_kg",
    "boot_mass_kg",
    "takeoff_openness",
    "lean_rad",
    "pre_rotation_turns",
    "arm_asymmetry",
    "close_delay_s",
    "close_time_s",
    "arm_lag_s",
    "open_lead_s",
    "open_time_s",
];

/// One of a few values, as a code.
struct Word {
    get: fn(&Scenario) -> u8,
    /// None for a code that is no value's.
    set: fn(&mut Scenario, u8) -> Option<()>,
}

macro_rules! word {
    ($field:ident, $($value:path = $code:literal),+) => {
        Word {
            get: |jump| match jump.$field {
                $($value => $code),+
            },
            set: |jump, code| {
                jump.$field = match code {
                    $($code => $value,)+
                    _ => return None,
                };
                Some(())
            },
        }
    };
}

const WORDS: [Word; 6] = [
    word!(
        jump,
        JumpName::ToeLoop = 0,
        JumpName::Salchow = 1,
        JumpName::Loop = 2,
        JumpName::Flip = 3,
        JumpName::Lutz = 4,
        JumpName::Axel = 5,
        JumpName::OffIce = 6,
        JumpName::Free = 7
    ),
    Word {
        get: |jump| jump.jump_turns,
        set: |jump, turns| {
            jump.jump_turns = turns;
            Some(())
        },
    },
    word!(table, SegmentTable::Female = 0, SegmentTable::Male = 1),
    word!(
        ground,
        Ground::Ice = 0,
        Ground::Floor = 1,
        Ground::Trampoline = 2
    ),
    word!(turning, Turning::Anticlockwise = 0, Turning::Clockwise = 1),
    word!(
        hands_keep,
        HandsKeep::Rate = 0,
        HandsKeep::AngularMomentum = 1,
        HandsKeep::Energy = 2
    ),
];

/// What the first jump is written as different from. No jump that flies: it has no height.
const BLANK: Scenario = Scenario {
    name: String::new(),
    note: String::new(),
    jump: JumpName::ToeLoop,
    jump_turns: 1,
    table: SegmentTable::Female,
    stature_m: 0.0,
    body_mass_kg: 0.0,
    ground: Ground::Ice,
    boot_mass_kg: 0.0,
    turning: Turning::Anticlockwise,
    takeoff_rate_rad_s: 0.0,
    takeoff_openness: 0.0,
    jump_height_m: 0.0,
    lean_rad: 0.0,
    pre_rotation_turns: 0.0,
    arm_tuck: 0.0,
    leg_tuck: 0.0,
    arm_asymmetry: 0.0,
    hand_mass_kg: 0.0,
    hands_keep: HandsKeep::Rate,
    close_delay_s: 0.0,
    close_time_s: 0.0,
    arm_lag_s: 0.0,
    open_lead_s: 0.0,
    open_time_s: 0.0,
};

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

/// The keys of the numbers, in their order.
fn numbers() -> impl Iterator<Item = &'static Key> {
    NUMBERS
        .iter()
        .map(|name| keys::key(name).expect("a number that a link may hold stays settable"))
}

/// What has to be said of a jump to somebody who knows the one before.
fn write_difference(bytes: &mut Writer, jump: &Scenario, before: &Scenario) {
    let mut mask = 0;
    let mut fields = Writer::default();
    let mut bit = 1;
    let mut differs = |differs: bool| {
        mask |= if differs { bit } else { 0 };
        bit <<= 1;
        differs
    };
    for key in numbers() {
        let number = (key.get)(jump);
        if differs(number.to_bits() != (key.get)(before).to_bits()) {
            fields.number(number);
        }
    }
    for word in &WORDS {
        let code = (word.get)(jump);
        if differs(code != (word.get)(before)) {
            fields.byte(code);
        }
    }
    for (text, before) in [(&jump.name, &before.name), (&jump.note, &before.note)] {
        if differs(text != before) {
            fields.text(text);
        }
    }
    bytes.count(mask);
    bytes.0.append(&mut fields.0);
}

fn read_difference(bytes: &mut Reader, before: &Scenario) -> Result<Scenario, Unreadable> {
    let mut mask = bytes.count().ok_or(Unreadable::Damaged)?;
    let mut differs = || {
        let differs = mask & 1 == 1;
        mask >>= 1;
        differs
    };
    let mut jump = before.clone();
    for key in numbers() {
        if differs() {
            let number = bytes.number().ok_or(Unreadable::Damaged)?;
            key.set(&mut jump, number).map_err(Unreadable::OutOfRange)?;
        }
    }
    for word in &WORDS {
        if differs() {
            let code = bytes.byte().ok_or(Unreadable::Damaged)?;
            (word.set)(&mut jump, code).ok_or(Unreadable::Damaged)?;
        }
    }
    for text in [&mut jump.name, &mut jump.note] {
        if differs() {
            *text = bytes.text().ok_or(Unreadable::Damaged)?;
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
