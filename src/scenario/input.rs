//! All that can be set of a jump: the inputs that are one of a few, numbers, and texts.

use serde::{Serialize, Serializer};
use serde_json::{Value, json};

use crate::ground::Ground;
use crate::jump::JumpName;
use crate::led;
use crate::parameter::Parameter;
use crate::scenario::{HandsKeep, Scenario};
use crate::written::{NotAValue, turns_in_name, word};
use turns_aloft_physics::plan::Turning;
use turns_aloft_physics::segments::SegmentTable;

/// An input that is one of a few.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Choice {
    Jump,
    JumpTurns,
    Table,
    Ground,
    Turning,
    HandsKeep,
}

/// All that tells one from another.
struct Row {
    key: &'static str,
    /// Which bit of a link's mask says that it follows; never changes.
    link_bit: u32,
    /// What stands for its value in a link.
    code: fn(&Scenario) -> u8,
    /// None for a code that is no value's.
    set_code: fn(&mut Scenario, u8) -> Option<()>,
    /// As it stands in a file.
    written: fn(&Scenario) -> Value,
    /// From what is written in a file.
    read: fn(&mut Scenario, &Value) -> Result<(), NotAValue>,
    take_over: fn(&mut Scenario, &Scenario),
}

macro_rules! row {
    ($field:ident, $link_bit:literal, $($value:path = $code:literal),+) => {
        Row {
            key: stringify!($field),
            link_bit: $link_bit,
            code: |jump| match jump.$field {
                $($value => $code),+
            },
            set_code: |jump, code| {
                jump.$field = match code {
                    $($code => $value,)+
                    _ => return None,
                };
                Some(())
            },
            written: |jump| json!(jump.$field),
            read: |jump, written| {
                jump.$field = word(written)?;
                Ok(())
            },
            take_over: |to, from| to.$field = from.$field,
        }
    };
}

static ROWS: [Row; 6] = [
    row!(
        jump,
        17,
        JumpName::ToeLoop = 0,
        JumpName::Salchow = 1,
        JumpName::Loop = 2,
        JumpName::Flip = 3,
        JumpName::Lutz = 4,
        JumpName::Axel = 5,
        JumpName::OffIce = 6,
        JumpName::Free = 7
    ),
    Row {
        key: "jump_turns",
        link_bit: 18,
        code: |jump| jump.jump_turns,
        set_code: |jump, turns| {
            jump.jump_turns = turns;
            Some(())
        },
        written: |jump| json!(jump.jump_turns),
        read: |jump, written| {
            jump.jump_turns = turns_in_name(written)?;
            Ok(())
        },
        take_over: |to, from| to.jump_turns = from.jump_turns,
    },
    row!(table, 19, SegmentTable::Female = 0, SegmentTable::Male = 1),
    row!(
        ground,
        20,
        Ground::Ice = 0,
        Ground::Floor = 1,
        Ground::Trampoline = 2
    ),
    row!(
        turning,
        21,
        Turning::Anticlockwise = 0,
        Turning::Clockwise = 1
    ),
    row!(
        hands_keep,
        22,
        HandsKeep::Rate = 0,
        HandsKeep::AngularMomentum = 1,
        HandsKeep::Energy = 2
    ),
];

impl Choice {
    /// All of them, in the order of their table.
    pub const ALL: [Self; 6] = [
        Self::Jump,
        Self::JumpTurns,
        Self::Table,
        Self::Ground,
        Self::Turning,
        Self::HandsKeep,
    ];

    /// The one with this key.
    pub fn named(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|it| it.key() == key)
    }

    const fn row(self) -> &'static Row {
        &ROWS[self as usize]
    }

    /// Its name in files and on the command line.
    pub const fn key(self) -> &'static str {
        self.row().key
    }

    pub(super) const fn link_bit(self) -> u32 {
        self.row().link_bit
    }

    pub(super) fn code(self, jump: &Scenario) -> u8 {
        (self.row().code)(jump)
    }

    pub(super) fn set_code(self, jump: &mut Scenario, code: u8) -> Option<()> {
        (self.row().set_code)(jump, code)
    }

    /// As it stands in a file.
    pub fn written(self, jump: &Scenario) -> Value {
        (self.row().written)(jump)
    }

    /// What a text on the command line would be in a file.
    pub(super) fn written_as(self, text: &str) -> Value {
        match self {
            Self::JumpTurns => text.parse().map_or(text.into(), |turns: u64| turns.into()),
            Self::Jump | Self::Table | Self::Ground | Self::Turning | Self::HandsKeep => {
                text.into()
            }
        }
    }

    /// From what is written in a file.
    pub(super) fn put(self, jump: &mut Scenario, written: &Value) -> Result<(), NotAValue> {
        (self.row().read)(jump, written)
    }

    /// Makes it in one jump what it is in another.
    pub fn take_over(self, to: &mut Scenario, from: &Scenario) {
        (self.row().take_over)(to, from);
    }
}

/// What changes a jump: anything that can be set but its texts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Input {
    Choice(Choice),
    Number(Parameter),
    /// How arms and legs were led by hand.
    Led,
}

impl Input {
    pub fn all() -> impl Iterator<Item = Self> {
        let choices = Choice::ALL.into_iter().map(Self::Choice);
        choices
            .chain(Parameter::ALL.map(Self::Number))
            .chain([Self::Led])
    }

    /// The one with this key.
    pub fn named(key: &str) -> Option<Self> {
        Self::all().find(|it| it.key() == key)
    }

    /// Those in which two jumps differ.
    pub fn differing(one: &Scenario, other: &Scenario) -> impl Iterator<Item = Self> {
        Self::all().filter(move |input| match input {
            Self::Choice(choice) => choice.code(one) != choice.code(other),
            Self::Number(parameter) => parameter.get(one) != parameter.get(other),
            Self::Led => one.led != other.led,
        })
    }

    /// Its name in files and on the command line.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Choice(choice) => choice.key(),
            Self::Number(parameter) => parameter.key(),
            Self::Led => led::KEY,
        }
    }
}

/// As its key.
impl Serialize for Input {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.key())
    }
}

/// A text of a jump, which changes nothing of its flight.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Text {
    Name,
    Note,
}

impl Text {
    pub const ALL: [Self; 2] = [Self::Name, Self::Note];

    /// The one with this key.
    pub fn named(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|it| it.key() == key)
    }

    /// Its name in files and on the command line.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Name => "name",
            Self::Note => "note",
        }
    }

    /// Which bit of a link's mask says that it follows; never changes.
    pub(super) const fn link_bit(self) -> u32 {
        match self {
            Self::Name => 23,
            Self::Note => 24,
        }
    }

    pub fn get(self, jump: &Scenario) -> &str {
        match self {
            Self::Name => &jump.name,
            Self::Note => &jump.note,
        }
    }

    pub(super) fn get_mut(self, jump: &mut Scenario) -> &mut String {
        match self {
            Self::Name => &mut jump.name,
            Self::Note => &mut jump.note,
        }
    }
}
