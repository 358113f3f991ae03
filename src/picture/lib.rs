//! The jump as a still picture (SVG 1.1), to be sent or printed: its turns, the body at equal times of the
//! flight, the numbers behind it, and a QR code that opens it on the page.
//!
//! A picture is always in the colours of the day: it may be printed.

mod card;
mod figure;
mod fonts;
mod lettering;
mod outline;
mod qr;
mod strip;

use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::units::Units;

pub use card::{HEIGHT_PX, WIDTH_PX};

/// What a picture shows.
#[derive(Debug, Clone, Copy)]
pub struct Picture<'a> {
    pub scenario: &'a Scenario,
    /// The scenario, flown.
    pub jump: &'a Jump,
    pub units: &'a Units,
    /// The page's address without a fragment; without one there is no QR code.
    pub address: Option<&'a str>,
}

impl Picture<'_> {
    /// The picture as the text of an SVG file, [`WIDTH_PX`] by [`HEIGHT_PX`], in the language spoken. It holds
    /// its fonts and refers to no other file.
    pub fn to_svg(&self) -> String {
        card::draw(self).to_string()
    }
}
