//! All colours of the panels and of the 3D picture, in two themes.
//!
//! Day: white cards on pale ice, navy text. Night: the same hues, light on dark. Colours that carry
//! meaning can be distinguished by colour-blind people (after Okabe & Ito's palette, 2008), and
//! text has a contrast of at least 4.5:1; `tests/appearance.rs` checks both themes, and that
//! `web/style.css` has the same values.

use std::cell::Cell;

use serde::{Deserialize, Serialize};

/// A colour as sRGB bytes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Rgb(pub u8, pub u8, pub u8);

impl Rgb {
    /// As CSS and SVG write it.
    pub fn hex(self) -> String {
        let Self(r, g, b) = self;
        format!("#{r:02x}{g:02x}{b:02x}")
    }
}

/// The colours of one theme.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Colours {
    /// Background of the page.
    pub background: Rgb,
    /// Cards.
    pub card: Rgb,
    /// Fields on a card, such as one to type in.
    pub raised: Rgb,
    /// Lines and tracks.
    pub line: Rgb,
    pub text: Rgb,
    /// Secondary text.
    pub weak_text: Rgb,
    /// Accent: controls, and what is reached.
    pub accent: Rgb,
    /// Text on the accent colour.
    pub on_accent: Rgb,
    /// What is short or out of reach.
    pub warning: Rgb,
    /// The playhead and what has been turned so far.
    pub playhead: Rgb,
    /// The reference attempt.
    pub reference: Rgb,
    /// The range of values seen in people.
    pub seen: Rgb,
    /// The curve of the moment of inertia.
    pub inertia: Rgb,
    /// The curves of the joint torques: shoulders, elbows, hips, knees, spine.
    pub torques: [Rgb; 5],
    /// Spans of the flight behind the charts.
    pub closing: Rgb,
    pub tight: Rgb,
    pub opening: Rgb,
    /// Scale of the map, from few turns to many: from yellow to blue, which colour-blind people
    /// distinguish too, with enough contrast to text on it.
    pub map: [Rgb; 4],
    pub stage: Stage,
}

/// The colours of the picture.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Stage {
    pub ice: Rgb,
    /// Light on the ice.
    pub sheen: Rgb,
    /// Between ice and air.
    pub haze: Rgb,
    pub air: Rgb,
    /// Traces of blades in the ice.
    pub scratch: Rgb,
    /// Wooden floor: its boards, and the joints between them.
    pub floor: Rgb,
    pub joint: Rgb,
    /// Trampoline: bed, marks on it, and the pads over its springs.
    pub bed: Rgb,
    pub bed_mark: Rgb,
    pub pad: Rgb,
    /// Marks and pointers.
    pub mark: Rgb,
    /// The jumper's shadow and hair; mixed into the colour of boots and shoes.
    pub dark: Rgb,
    /// The jumper's suit.
    pub suit: Rgb,
    pub left_side: Rgb,
    pub skin: Rgb,
    pub sole: Rgb,
    pub steel: Rgb,
    pub hand_mass: Rgb,
    /// The figure of the reference attempt: pale where the jumper is dark.
    pub reference: Rgb,
    /// The reference attempt's thin marks on the ice, in a stronger colour.
    pub reference_mark: Rgb,
    /// The angular momentum and the line along it.
    pub momentum: Rgb,
    pub long_axis: Rgb,
    /// The part of the spiral not turned yet.
    pub track: Rgb,
    pub turned: Rgb,
    pub owed: Rgb,
    pub short: Rgb,
    pub tick: Rgb,
}

pub const DAY: Colours = Colours {
    background: Rgb(0xE6, 0xEE, 0xF4),
    card: Rgb(0xFB, 0xFD, 0xFE),
    raised: Rgb(0xFF, 0xFF, 0xFF),
    line: Rgb(0xC3, 0xD2, 0xDE),
    text: Rgb(0x12, 0x26, 0x3A),
    weak_text: Rgb(0x4A, 0x5F, 0x73),
    accent: Rgb(0x00, 0x6B, 0x5F),
    on_accent: Rgb(0xFF, 0xFF, 0xFF),
    warning: Rgb(0xB5, 0x45, 0x00),
    playhead: Rgb(0xE6, 0x9F, 0x00),
    reference: Rgb(0x96, 0x48, 0x7A),
    seen: Rgb(0x7F, 0xBF, 0xB4),
    inertia: Rgb(0x5B, 0x3F, 0x8C),
    torques: [
        Rgb(0x0E, 0x2A, 0x6E),
        Rgb(0x0A, 0x85, 0x90),
        Rgb(0xC2, 0x45, 0x0E),
        Rgb(0x9C, 0x3F, 0xD6),
        Rgb(0x4A, 0x0A, 0x12),
    ],
    closing: Rgb(0xF6, 0xE3, 0xB5),
    tight: Rgb(0xCF, 0xE6, 0xE1),
    opening: Rgb(0xD9, 0xDF, 0xF2),
    map: [
        Rgb(0xF8, 0xF3, 0xDC),
        Rgb(0xC4, 0xDF, 0xCF),
        Rgb(0x8E, 0xBB, 0xD6),
        Rgb(0x67, 0x96, 0xC4),
    ],
    stage: Stage {
        ice: Rgb(0xE6, 0xF1, 0xF8),
        sheen: Rgb(0xFF, 0xFF, 0xFF),
        haze: Rgb(0xD3, 0xE1, 0xEB),
        air: Rgb(0xCC, 0xDC, 0xE7),
        scratch: Rgb(0xAF, 0xC8, 0xDA),
        floor: Rgb(0xF4, 0xE7, 0xD0),
        joint: Rgb(0xB9, 0x97, 0x6A),
        bed: Rgb(0xF1, 0xF0, 0xEA),
        bed_mark: Rgb(0xC9, 0x5B, 0x5B),
        pad: Rgb(0x4E, 0x86, 0xB8),
        mark: Rgb(0x12, 0x26, 0x3A),
        dark: Rgb(0x12, 0x26, 0x3A),
        suit: Rgb(0x22, 0x42, 0x66),
        left_side: Rgb(0x2F, 0x8F, 0xB3),
        skin: Rgb(0xD9, 0xA5, 0x7C),
        sole: Rgb(0xF7, 0xF4, 0xEE),
        steel: Rgb(0x8E, 0x9C, 0xA8),
        hand_mass: Rgb(0x5B, 0x66, 0x70),
        reference: Rgb(0xCC, 0x79, 0xA7),
        reference_mark: Rgb(0x96, 0x48, 0x7A),
        momentum: Rgb(0xC8, 0x56, 0x00),
        long_axis: Rgb(0x6A, 0x4C, 0x93),
        track: Rgb(0xC3, 0xD3, 0xDF),
        turned: Rgb(0xE6, 0x9F, 0x00),
        owed: Rgb(0x00, 0x79, 0x6B),
        short: Rgb(0xD5, 0x5E, 0x00),
        tick: Rgb(0x6B, 0x83, 0x96),
    },
};

pub const NIGHT: Colours = Colours {
    background: Rgb(0x0F, 0x1B, 0x27),
    card: Rgb(0x19, 0x2A, 0x3A),
    raised: Rgb(0x24, 0x38, 0x4B),
    line: Rgb(0x3B, 0x51, 0x65),
    text: Rgb(0xEA, 0xF2, 0xF8),
    weak_text: Rgb(0xAE, 0xC0, 0xCF),
    accent: Rgb(0x5C, 0xCB, 0xB9),
    on_accent: Rgb(0x0B, 0x18, 0x22),
    warning: Rgb(0xFF, 0x9A, 0x5C),
    playhead: Rgb(0xF2, 0xB2, 0x3A),
    reference: Rgb(0xE5, 0x8C, 0xC4),
    seen: Rgb(0x4A, 0x8C, 0x83),
    inertia: Rgb(0xB9, 0xA4, 0xE6),
    torques: [
        Rgb(0xF2, 0xEA, 0x6A),
        Rgb(0x7D, 0xF0, 0xB8),
        Rgb(0xB8, 0x86, 0x2A),
        Rgb(0x78, 0x94, 0x9A),
        Rgb(0xF4, 0x5C, 0xF2),
    ],
    closing: Rgb(0x4A, 0x3E, 0x1E),
    tight: Rgb(0x1C, 0x46, 0x41),
    opening: Rgb(0x2C, 0x35, 0x5C),
    map: [
        Rgb(0x40, 0x36, 0x14),
        Rgb(0x2F, 0x46, 0x34),
        Rgb(0x26, 0x57, 0x6F),
        Rgb(0x35, 0x6A, 0x9C),
    ],
    stage: Stage {
        ice: Rgb(0x26, 0x3D, 0x53),
        sheen: Rgb(0x3B, 0x57, 0x70),
        haze: Rgb(0x1B, 0x2D, 0x3E),
        air: Rgb(0x12, 0x1F, 0x2D),
        scratch: Rgb(0x5C, 0x7A, 0x93),
        floor: Rgb(0x4C, 0x3C, 0x2A),
        joint: Rgb(0x2E, 0x23, 0x17),
        bed: Rgb(0x3A, 0x45, 0x50),
        bed_mark: Rgb(0xA8, 0x55, 0x5E),
        pad: Rgb(0x2D, 0x56, 0x80),
        mark: Rgb(0xEA, 0xF2, 0xF8),
        dark: Rgb(0x0B, 0x15, 0x20),
        suit: Rgb(0xC4, 0xD6, 0xE8),
        left_side: Rgb(0x35, 0xA7, 0xD0),
        skin: Rgb(0xD9, 0xA5, 0x7C),
        sole: Rgb(0xF7, 0xF4, 0xEE),
        steel: Rgb(0xB8, 0xC4, 0xCE),
        hand_mass: Rgb(0x93, 0x9F, 0xAA),
        reference: Rgb(0xC4, 0x6A, 0xA0),
        reference_mark: Rgb(0xE5, 0x8C, 0xC4),
        momentum: Rgb(0xF0, 0x82, 0x2E),
        long_axis: Rgb(0xB9, 0xA4, 0xE6),
        track: Rgb(0x4A, 0x64, 0x7A),
        turned: Rgb(0xF2, 0xB2, 0x3A),
        owed: Rgb(0x4F, 0xCB, 0xB8),
        short: Rgb(0xF0, 0x82, 0x2E),
        tick: Rgb(0x93, 0xA9, 0xBB),
    },
};

/// Which colours are shown.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Theme {
    #[default]
    Day,
    Night,
}

impl Theme {
    pub const ALL: [Self; 2] = [Self::Day, Self::Night];

    /// Its name in the page's attribute `data-light` and in the storage.
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

/// How the jumper is drawn.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub enum Figure {
    /// As thick as a body.
    #[default]
    Body,
    /// As sticks and joints, as teachers draw it, with the hands' distances from the axis.
    Sticks,
}

/// What the user has chosen of the appearance.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Choice {
    /// None: the device's setting.
    pub theme: Option<Theme>,
    /// Large type, legible from the back of a classroom.
    pub large: bool,
    pub figure: Figure,
}

impl Choice {
    /// Scale factor of everything on the panels.
    pub const fn zoom(self) -> f32 {
        if self.large { 1.4 } else { 1.0 }
    }
}

thread_local! {
    /// The page has one thread.
    static SHOWN: Cell<Theme> = const { Cell::new(Theme::Day) };
    static CHOSEN: Cell<Choice> = const {
        Cell::new(Choice { theme: None, large: false, figure: Figure::Body })
    };
}

pub fn chosen() -> Choice {
    CHOSEN.get()
}

pub fn choose(choice: Choice) {
    CHOSEN.set(choice);
}

/// The current theme.
pub fn shown() -> Theme {
    SHOWN.get()
}

/// The colours of the current theme.
pub fn colours() -> &'static Colours {
    shown().colours()
}

/// Sets the current theme.
pub fn show(theme: Theme) {
    SHOWN.set(theme);
}
