//! QR codes (ISO/IEC 18004), such as the one that opens the jump on the page.

use qrcode::{Color, EcLevel, QrCode};
use svg::node::element::Path;
use svg::node::element::path::Data;

use crate::subject::Picture;
use turns_aloft_appearance::DAY;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::link::to_fragment;

/// Most modules on a side: more would be too fine for a camera that looks at a telephone's screen.
const MOST_MODULES: usize = 109;

/// Light modules around it, as the standard asks for.
const QUIET_MODULES: usize = 4;

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
    let code = QrCode::with_error_correction_level(address, EcLevel::M).ok()?;
    let modules = code.width();
    if modules > MOST_MODULES {
        return None;
    }
    let module_px = side_px / (modules + 2 * QUIET_MODULES) as f32;
    let mut data = Data::new();
    for (i, colour) in code.to_colors().into_iter().enumerate() {
        if colour == Color::Dark {
            let [x, y] = [i % modules, i / modules].map(|n| (n + QUIET_MODULES) as f32 * module_px);
            data = data
                .move_to((corner_px[0] + x, corner_px[1] + y))
                .horizontal_line_by(module_px)
                .vertical_line_by(module_px)
                .horizontal_line_by(-module_px)
                .close();
        }
    }
    let path = Path::new()
        .set("d", data)
        .set("fill", DAY.text.hex())
        // So that no light lines are left between dark modules.
        .set("shape-rendering", "crispEdges");
    Some(path)
}
