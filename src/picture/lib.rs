//! The jump as a still picture (SVG 1.1), to be sent or printed: its turns, the body at equal times of the
//! flight, the numbers behind it, and a QR code that opens it on the page.
//!
//! A picture is always in the colours of the day: it may be printed.

mod card;
pub mod figure;
mod fonts;
mod lettering;
pub mod outline;
mod parts;
mod qr;
mod strip;
mod subject;

pub use card::{HEIGHT_PX, WIDTH_PX};
pub use parts::{code_svg, jump_code_svg, moment_svg, strip_svg};
pub use subject::Picture;

/// The picture as the text of an SVG file, [`WIDTH_PX`] by [`HEIGHT_PX`], in the language spoken. It holds
/// its fonts and refers to no other file.
pub fn to_svg(picture: &Picture<'_>) -> String {
    card::draw(picture).to_string()
}
