//! The colours of the picture: told apart by the colour-blind, strong on pale ice.

use bevy::color::{Color, ColorToComponents, Srgba};

/// A colour as sRGB bytes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Ink(pub u8, pub u8, pub u8);

pub const ICE: Ink = Ink(0xF4, 0xF8, 0xFB);
/// Between ice and air.
pub const HAZE: Ink = Ink(0xD3, 0xE1, 0xEB);
pub const AIR: Ink = Ink(0xCC, 0xDC, 0xE7);
/// Lines drawn into the ice.
pub const SCRATCH: Ink = Ink(0xD3, 0xE0, 0xE9);

pub const NAVY: Ink = Ink(0x12, 0x26, 0x3A);
/// The jumper's suit: navy under the rink's lights.
pub const SUIT: Ink = Ink(0x22, 0x42, 0x66);
pub const LEFT_SIDE: Ink = Ink(0x2F, 0x8F, 0xB3);
pub const RIGHT_SIDE: Ink = SUIT;
pub const SKIN: Ink = Ink(0xD9, 0xA5, 0x7C);
pub const SOLE: Ink = Ink(0xF7, 0xF4, 0xEE);
pub const STEEL: Ink = Ink(0x8E, 0x9C, 0xA8);
pub const HAND_MASS: Ink = Ink(0x5B, 0x66, 0x70);

/// The attempt beside the jumper's (reddish purple, after Okabe & Ito): pale where the jumper is dark.
pub const GHOST: Ink = Ink(0xCC, 0x79, 0xA7);
/// The same, dark enough for thin marks on the ice.
pub const GHOST_MARK: Ink = Ink(0x96, 0x48, 0x7A);

/// The axis of the turning and the angular momentum along it.
pub const MOMENTUM: Ink = Ink(0xD5, 0x5E, 0x00);
pub const LONG_AXIS: Ink = Ink(0x6A, 0x4C, 0x93);

/// The way round that still has to be turned.
pub const TRACK: Ink = Ink(0xC3, 0xD3, 0xDF);
pub const WOUND: Ink = Ink(0xE6, 0x9F, 0x00);
pub const OWED: Ink = Ink(0x00, 0x79, 0x6B);
pub const SHORT: Ink = Ink(0xD5, 0x5E, 0x00);
pub const TICK: Ink = Ink(0x6B, 0x83, 0x96);

impl Ink {
    pub fn color(self) -> Color {
        Color::Srgba(self.srgba())
    }

    /// For vertices, which are linear.
    pub fn linear(self) -> [f32; 4] {
        self.linear_alpha(1.0)
    }

    pub fn linear_alpha(self, alpha: f32) -> [f32; 4] {
        let [r, g, b, _] = bevy::color::LinearRgba::from(self.srgba()).to_f32_array();
        [r, g, b, alpha]
    }

    /// This colour thinned with another; `part` 0 leaves only the other.
    pub fn over(self, ground: Self, part: f32) -> Self {
        let mix =
            |a: u8, b: u8| (f32::from(b) + (f32::from(a) - f32::from(b)) * part).round() as u8;
        Self(
            mix(self.0, ground.0),
            mix(self.1, ground.1),
            mix(self.2, ground.2),
        )
    }

    fn srgba(self) -> Srgba {
        Srgba::rgb_u8(self.0, self.1, self.2)
    }
}
