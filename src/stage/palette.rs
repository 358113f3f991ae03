//! The colours of the picture as Bevy takes them.

use bevy::color::{Color, ColorToComponents, Srgba};

pub use turns_aloft_appearance::Ink;
use turns_aloft_appearance::{Stage, colours};

/// The set to be drawn with.
pub fn now() -> &'static Stage {
    &colours().stage
}

/// A colour as Bevy takes it.
pub trait BevyColour: Copy {
    fn srgba(self) -> Srgba;

    /// This colour thinned with another; `part` 0 leaves only the other.
    fn over(self, ground: Self, part: f32) -> Self;

    fn color(self) -> Color {
        Color::Srgba(self.srgba())
    }

    /// For vertices, which are linear.
    fn linear(self) -> [f32; 4] {
        self.linear_alpha(1.0)
    }

    fn linear_alpha(self, alpha: f32) -> [f32; 4] {
        let [r, g, b, _] = bevy::color::LinearRgba::from(self.srgba()).to_f32_array();
        [r, g, b, alpha]
    }
}

impl BevyColour for Ink {
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
