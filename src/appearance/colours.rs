//! The design's colours, in one place: for the panels, for the picture, and in two sets.
//!
//! Calm rink light by day: white cards on pale ice, navy ink. The rink at night: the same hues,
//! light on dark. What carries meaning stays apart for colour-blind eyes (after Okabe & Ito's
//! palette, 2008) and has a contrast of at least 4.5:1 where it is text; `tests/look.rs` holds both
//! sets to it, and the page's own `web/style.css` to them.

use std::cell::Cell;

use serde::{Deserialize, Serialize};

/// A colour as sRGB bytes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Ink(pub u8, pub u8, pub u8);

/// One set of the colours.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Colours {
    /// Ground of the page.
    pub ground: Ink,
    /// Cards.
    pub card: Ink,
    /// What lies on a card, such as a field to type in.
    pub raised: Ink,
    /// Lines and tracks.
    pub line: Ink,
    pub text: Ink,
    /// Second text.
    pub small: Ink,
    /// What can be touched; what is right.
    pub touch: Ink,
    /// Text on it.
    pub on_touch: Ink,
    /// What is short or out of reach.
    pub short: Ink,
    /// The playhead and what has been turned so far.
    pub playhead: Ink,
    /// The attempt beside the present one.
    pub reference: Ink,
    /// Where people have been seen.
    pub seen: Ink,
    /// The curve of the moment of inertia.
    pub inertia: Ink,
    /// The curves of the joint torques: shoulders, elbows, hips, knees, spine.
    pub torques: [Ink; 5],
    /// Spans of the flight behind the charts.
    pub closing: Ink,
    pub tight: Ink,
    pub opening: Ink,
    /// From few turns to many on the map: from yellow to blue, which all eyes tell apart, and never
    /// so near the text's own that it could not be read on them.
    pub map: [Ink; 4],
    pub stage: Stage,
}

/// The colours of the picture.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Stage {
    pub ice: Ink,
    /// Between ice and air.
    pub haze: Ink,
    pub air: Ink,
    /// Lines drawn into the ice.
    pub scratch: Ink,
    /// Marks and pointers.
    pub mark: Ink,
    /// The jumper's shadow and hair, and what darkens leather.
    pub dark: Ink,
    /// The jumper's suit under the rink's lights.
    pub suit: Ink,
    pub left_side: Ink,
    pub skin: Ink,
    pub sole: Ink,
    pub steel: Ink,
    pub hand_mass: Ink,
    /// The attempt beside the jumper's: pale where the jumper is dark.
    pub ghost: Ink,
    /// The same, strong enough for thin marks on the ice.
    pub ghost_mark: Ink,
    /// The axis of the turning and the angular momentum along it.
    pub momentum: Ink,
    pub long_axis: Ink,
    /// The way round that still has to be turned.
    pub track: Ink,
    pub wound: Ink,
    pub owed: Ink,
    pub short: Ink,
    pub tick: Ink,
}

pub const DAY: Colours = Colours {
    ground: Ink(0xE6, 0xEE, 0xF4),
    card: Ink(0xFB, 0xFD, 0xFE),
    raised: Ink(0xFF, 0xFF, 0xFF),
    line: Ink(0xC3, 0xD2, 0xDE),
    text: Ink(0x12, 0x26, 0x3A),
    small: Ink(0x4A, 0x5F, 0x73),
    touch: Ink(0x00, 0x6B, 0x5F),
    on_touch: Ink(0xFF, 0xFF, 0xFF),
    short: Ink(0xB5, 0x45, 0x00),
    playhead: Ink(0xE6, 0x9F, 0x00),
    reference: Ink(0x96, 0x48, 0x7A),
    seen: Ink(0x7F, 0xBF, 0xB4),
    inertia: Ink(0x5B, 0x3F, 0x8C),
    torques: [
        Ink(0x0E, 0x2A, 0x6E),
        Ink(0x0A, 0x85, 0x90),
        Ink(0xC2, 0x45, 0x0E),
        Ink(0x9C, 0x3F, 0xD6),
        Ink(0x4A, 0x0A, 0x12),
    ],
    closing: Ink(0xF6, 0xE3, 0xB5),
    tight: Ink(0xCF, 0xE6, 0xE1),
    opening: Ink(0xD9, 0xDF, 0xF2),
    map: [
        Ink(0xF8, 0xF3, 0xDC),
        Ink(0xC4, 0xDF, 0xCF),
        Ink(0x8E, 0xBB, 0xD6),
        Ink(0x67, 0x96, 0xC4),
    ],
    stage: Stage {
        ice: Ink(0xF4, 0xF8, 0xFB),
        haze: Ink(0xD3, 0xE1, 0xEB),
        air: Ink(0xCC, 0xDC, 0xE7),
        scratch: Ink(0xD3, 0xE0, 0xE9),
        mark: Ink(0x12, 0x26, 0x3A),
        dark: Ink(0x12, 0x26, 0x3A),
        suit: Ink(0x22, 0x42, 0x66),
        left_side: Ink(0x2F, 0x8F, 0xB3),
        skin: Ink(0xD9, 0xA5, 0x7C),
        sole: Ink(0xF7, 0xF4, 0xEE),
        steel: Ink(0x8E, 0x9C, 0xA8),
        hand_mass: Ink(0x5B, 0x66, 0x70),
        ghost: Ink(0xCC, 0x79, 0xA7),
        ghost_mark: Ink(0x96, 0x48, 0x7A),
        momentum: Ink(0xC8, 0x56, 0x00),
        long_axis: Ink(0x6A, 0x4C, 0x93),
        track: Ink(0xC3, 0xD3, 0xDF),
        wound: Ink(0xE6, 0x9F, 0x00),
        owed: Ink(0x00, 0x79, 0x6B),
        short: Ink(0xD5, 0x5E, 0x00),
        tick: Ink(0x6B, 0x83, 0x96),
    },
};

pub const NIGHT: Colours = Colours {
    ground: Ink(0x0F, 0x1B, 0x27),
    card: Ink(0x19, 0x2A, 0x3A),
    raised: Ink(0x24, 0x38, 0x4B),
    line: Ink(0x3B, 0x51, 0x65),
    text: Ink(0xEA, 0xF2, 0xF8),
    small: Ink(0xAE, 0xC0, 0xCF),
    touch: Ink(0x5C, 0xCB, 0xB9),
    on_touch: Ink(0x0B, 0x18, 0x22),
    short: Ink(0xFF, 0x9A, 0x5C),
    playhead: Ink(0xF2, 0xB2, 0x3A),
    reference: Ink(0xE5, 0x8C, 0xC4),
    seen: Ink(0x4A, 0x8C, 0x83),
    inertia: Ink(0xB9, 0xA4, 0xE6),
    torques: [
        Ink(0xF2, 0xEA, 0x6A),
        Ink(0x7D, 0xF0, 0xB8),
        Ink(0xB8, 0x86, 0x2A),
        Ink(0x78, 0x94, 0x9A),
        Ink(0xF4, 0x5C, 0xF2),
    ],
    closing: Ink(0x4A, 0x3E, 0x1E),
    tight: Ink(0x1C, 0x46, 0x41),
    opening: Ink(0x2C, 0x35, 0x5C),
    map: [
        Ink(0x40, 0x36, 0x14),
        Ink(0x2F, 0x46, 0x34),
        Ink(0x26, 0x57, 0x6F),
        Ink(0x35, 0x6A, 0x9C),
    ],
    stage: Stage {
        ice: Ink(0x2B, 0x42, 0x57),
        haze: Ink(0x1B, 0x2D, 0x3E),
        air: Ink(0x12, 0x1F, 0x2D),
        scratch: Ink(0x3F, 0x59, 0x6F),
        mark: Ink(0xEA, 0xF2, 0xF8),
        dark: Ink(0x0B, 0x15, 0x20),
        suit: Ink(0xC4, 0xD6, 0xE8),
        left_side: Ink(0x35, 0xA7, 0xD0),
        skin: Ink(0xD9, 0xA5, 0x7C),
        sole: Ink(0xF7, 0xF4, 0xEE),
        steel: Ink(0xB8, 0xC4, 0xCE),
        hand_mass: Ink(0x93, 0x9F, 0xAA),
        ghost: Ink(0xC4, 0x6A, 0xA0),
        ghost_mark: Ink(0xE5, 0x8C, 0xC4),
        momentum: Ink(0xF0, 0x82, 0x2E),
        long_axis: Ink(0xB9, 0xA4, 0xE6),
        track: Ink(0x4A, 0x64, 0x7A),
        wound: Ink(0xF2, 0xB2, 0x3A),
        owed: Ink(0x4F, 0xCB, 0xB8),
        short: Ink(0xF0, 0x82, 0x2E),
        tick: Ink(0x93, 0xA9, 0xBB),
    },
};

/// Which set is shown.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Light {
    #[default]
    Day,
    Night,
}

impl Light {
    pub const ALL: [Self; 2] = [Self::Day, Self::Night];

    /// What the page calls it.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Day => "day",
            Self::Night => "night",
        }
    }

    pub const fn colours(self) -> &'static Colours {
        match self {
            Self::Day => &DAY,
            Self::Night => &NIGHT,
        }
    }
}

/// What the user has chosen of the look.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Choice {
    /// None: as the device is set.
    pub light: Option<Light>,
    /// Type that a class reads from the last row.
    pub large: bool,
}

impl Choice {
    /// How much larger than usual everything on the panels is.
    pub const fn zoom(self) -> f32 {
        if self.large { 1.4 } else { 1.0 }
    }
}

thread_local! {
    /// The page has one thread.
    static SHOWN: Cell<Light> = const { Cell::new(Light::Day) };
    static CHOSEN: Cell<Choice> = const { Cell::new(Choice { light: None, large: false }) };
}

pub fn chosen() -> Choice {
    CHOSEN.get()
}

pub fn choose(choice: Choice) {
    CHOSEN.set(choice);
}

/// The set shown now.
pub fn shown() -> Light {
    SHOWN.get()
}

/// Its colours.
pub fn colours() -> &'static Colours {
    shown().colours()
}

/// Draws with another set from now on.
pub fn show(light: Light) {
    SHOWN.set(light);
}
