//! QR codes (ISO/IEC 18004), such as the one that opens the jump on the page.

use qrcode::{Color, EcLevel, QrCode};
use svg::node::element::Path;
use svg::node::element::path::Data;

use crate::subject::Picture;
use turns_aloft_appearance::DAY;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::link::to_fragment;

/// Most modules on a side in print: more would be too fine for a camera that looks at a telephone's screen.
const MOST_MODULES: usize = 109;

/// Light modules around it, as the standard asks for.
const QUIET_MODULES: usize = 4;

/// How much of a code may be spoilt.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Where {
    /// On paper, or in a picture that is passed on: 15 %.
    InPrint,
    /// On a screen, which has no stains: 7 %.
    OnScreen,
}

/// A code without its quiet zone.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Code {
    modules: usize,
    dark: Vec<bool>,
}

impl Code {
    /// The code of an address; none where it would have more than `most` modules on a side.
    pub fn of(address: &str, shown: Where, most: usize) -> Option<Self> {
        let level = match shown {
            Where::InPrint => EcLevel::M,
            Where::OnScreen => EcLevel::L,
        };
        let code = QrCode::with_error_correction_level(address, level).ok()?;
        let modules = code.width();
        let dark = code.to_colors().into_iter();
        (modules <= most).then(|| Self {
            modules,
            dark: dark.map(|colour| colour == Color::Dark).collect(),
        })
    }

    /// Modules on a side.
    pub const fn modules(&self) -> usize {
        self.modules
    }

    /// Columns and rows of the dark modules, from the top left.
    pub fn dark(&self) -> impl Iterator<Item = [usize; 2]> {
        let all = self.dark.iter().enumerate();
        all.filter_map(|(i, dark)| dark.then_some([i % self.modules, i / self.modules]))
    }
}

/// The address that opens the jump on the page; its note stays behind, as it would make the code too fine.
pub fn address(picture: &Picture<'_>) -> Option<String> {
    let jump = Scenario {
        note: String::new(),
        ..picture.scenario.clone()
    };
    let page = picture.address?.split('#').next()?;
    Some(format!("{page}#{}", to_fragment(&jump, None)))
}

/// The code of an address in a square of `side_px`, its quiet zone included. None where the address is too
/// long for a code that can be read.
pub fn draw(address: &str, corner_px: [f32; 2], side_px: f32) -> Option<Path> {
    let code = Code::of(address, Where::InPrint, MOST_MODULES)?;
    let module_px = side_px / (code.modules() + 2 * QUIET_MODULES) as f32;
    let mut data = Data::new();
    for at in code.dark() {
        let [x, y] = at.map(|n| (n + QUIET_MODULES) as f32 * module_px);
        data = data
            .move_to((corner_px[0] + x, corner_px[1] + y))
            .horizontal_line_by(module_px)
            .vertical_line_by(module_px)
            .horizontal_line_by(-module_px)
            .close();
    }
    let path = Path::new()
        .set("d", data)
        .set("fill", DAY.text.hex())
        // So that no light lines are left between dark modules.
        .set("shape-rendering", "crispEdges");
    Some(path)
}
