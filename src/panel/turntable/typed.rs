//! A number that is typed on the turntable's page.

use egui::Ui;

use crate::controls::{NumberEdit, NumberText};
use crate::number_row;
use turns_aloft_describe::unit::UnitText;
use turns_aloft_session::Session;
use turns_aloft_session::turntable::TypedNumber;

/// Its row.
pub fn show(
    ui: &mut Ui,
    session: &mut Session,
    numbers: &mut NumberEdit,
    of: TypedNumber,
    name: &str,
) {
    let Some(value) = session.turntable_number(of) else {
        return;
    };
    let unit = session.turntable_unit(of);
    let shown = NumberText {
        value: unit.set_text(value),
        number: unit.set_number(value),
        sign: unit.sign(),
    };
    if let Some(typed) = number_row::show(ui, numbers, name, of.label(), shown) {
        session.set_typed_turntable(of, &typed);
    }
}
