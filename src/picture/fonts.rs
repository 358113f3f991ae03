//! The fonts, as the picture holds them.

use base64ct::{Base64, Encoding as _};
use svg::node::element::Style;

/// The family of both weights in the picture.
pub const FAMILY: &str = "Barlow, system-ui, sans-serif";

/// Usual weight, and heavier.
pub const USUAL: &[u8] = include_bytes!("../../assets/fonts/barlow-500.ttf");
pub const BOLD: &[u8] = include_bytes!("../../assets/fonts/barlow-600.ttf");

/// A style sheet with both. A picture that a browser draws has no access to the fonts of the page.
pub fn style() -> Style {
    let face = |weight: u16, bytes: &[u8]| {
        let font = Base64::encode_string(bytes);
        format!(
            "@font-face{{font-family:Barlow;font-weight:{weight};src:url(data:font/ttf;base64,{font})}}"
        )
    };
    Style::new(face(500, USUAL) + &face(600, BOLD))
}
