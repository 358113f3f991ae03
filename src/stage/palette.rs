//! The colours of the 3D picture in Bevy's types.

use bevy::color::{Color, ColorToComponents, Srgba};

pub use turns_aloft_appearance::Rgb;
use turns_aloft_appearance::{Stage, colours};

/// The colours of the current theme.
pub fn now() -> &'static Stage {
    &colours().stage
}

/// Conversion of a colour to Bevy's types.
pub trait BevyColour: Copy {
    fn srgba(self) -> Srgba;

    /// Mixes this colour over another in sRGB; `part` 1 is this colour, 0 the other.
    fn over(self, ground: Self, part: f32) -> Self;

    fn color(self) -> Color {
        Color::Srgba(self.srgba())
    }

    /// Linear RGBA, for vertex colours.
    fn linear(self) -> [f32; 4] {
        self.linear_alpha(1.0)
    }

    fn linear_alpha(self, alpha: f32) -> [f32; 4] {
        let [r, g, b, _] = bevy::color::LinearRgba::from(self.srgba()).to_f32_array();
        [r, g, b, alpha]
    }
}

impl BevyColour for Rgb {
    fn srgba(self) -> Srgba {
        Srgba::rgb_u8(self.0, self.1, self.2)
    }

    fn over(self, ground: Self, part: f32) -> Self {
        let mix =
            |a: u8, b: u8| (f32::from(b) + (f32::from(a) - f32::from(b)) * part).round() as u8;
        Self(
            mix(self.0, ground.0),
            mix(self.1, ground.1),
            mix(self.2, ground.2),
        )
    }
}
