//! The menu of ways to share the jump, and the reference attempt if there is one.

use egui::Response;
use turns_aloft_session::Saved;

use crate::command::{PageCommand, Sheet};
use crate::controls::{menu, menu_item};
use turns_aloft_words::text;

const WIDTH: f32 = 260.0;

/// Shows the menu of the button with this response while it is open. Returns the command chosen.
pub fn show(
    response: &Response,
    has_reference: bool,
    has_share_sheet: bool,
) -> Option<PageCommand> {
    let link = |one, both| text(if has_reference { both } else { one });
    let of_sheet = [
        (
            PageCommand::SendPicture,
            "Send picture",
            text("panel-send-picture"),
        ),
        (
            PageCommand::SendLink,
            "Send link",
            link("panel-send-link-to-it", "panel-send-link-to-both"),
        ),
    ];
    let of_browser = [
        (PageCommand::Picture, "Picture", text("panel-save-picture")),
        (
            PageCommand::Sheet(Sheet::Coach),
            "Sheet",
            text("panel-sheet"),
        ),
        (
            PageCommand::Link,
            "Link",
            link("panel-link-to-it", "panel-link-to-both"),
        ),
        (PageCommand::Save(Saved::Jump), "Save", text("panel-save")),
        (
            PageCommand::Save(Saved::FlightTable),
            "Table",
            text("panel-save-table"),
        ),
    ];
    let of_sheet = of_sheet.into_iter().filter(|_| has_share_sheet);
    let mut command = None;
    menu(response).width(WIDTH).gap(4.0).show(|ui| {
        for (item, name, label) in of_sheet.chain(of_browser) {
            if menu_item(ui, name, label, WIDTH - 12.0, false).clicked() {
                command = Some(item);
            }
        }
    });
    command
}
