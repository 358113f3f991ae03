//! Hang time beside the jump height: typed, it sets the height, and it follows the height.

use std::borrow::Cow;

use egui::{Align2, Rect, Sense, Ui, pos2, vec2};

use crate::controls::{
    EXPLANATION_MARK_RADIUS, NumberEdit, NumberText, StepperRow, explained, explanation_area,
    explanation_mark, number_field, stepper,
};
use crate::number::VALUE_WIDTH;
use crate::style::{self, GAP, TEXT, TOUCH_SIZE, WIDE_GAP};
use crate::text::small;
use turns_aloft_analysis::hang_time::KEY;
use turns_aloft_describe::unit::UnitText;
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_session::Session;
use turns_aloft_words::{say, text};

/// Below the slider of the height: how long the jump is in the air, to be typed.
pub fn show(
    ui: &mut Ui,
    session: &mut Session,
    edit: &mut NumberEdit,
    about: &mut Option<Cow<'static, str>>,
) {
    let (row, _) = ui.allocate_exact_size(vec2(ui.available_width(), TOUCH_SIZE), Sense::hover());
    let value = Rect::from_min_max(pos2(row.right() - VALUE_WIDTH, row.top()), row.max);
    let label = Rect::from_min_max(row.min, pos2(value.left() - GAP, row.bottom()));
    let name = "about:set:hang_time_s";
    let open = about.as_deref() == Some(name);
    let what = || text("reading-hang-time-s").to_owned();
    let meaning = || text("hang-time-set-about").to_owned();
    let response = explanation_area(ui, name, label, open, what, meaning);
    let written = ui.painter().text(
        label.left_center(),
        Align2::LEFT_CENTER,
        text("reading-hang-time-s"),
        style::text(17.0),
        TEXT.get(),
    );
    let mark = written.right_center() + vec2(GAP + EXPLANATION_MARK_RADIUS, 0.0);
    explanation_mark(ui.painter(), mark, open);
    if response.clicked() {
        *about = (!open).then_some(Cow::Borrowed(name));
    }
    field(ui, session, edit, value);
    if open && explained(ui, name, row, |ui| small(ui, text("hang-time-set-about"))) {
        *about = None;
    }
}

/// The field alone.
pub fn field(ui: &mut Ui, session: &mut Session, edit: &mut NumberEdit, rect: Rect) {
    let unit = session.units().of(Kind::Time);
    let shown = NumberText {
        value: unit.set_text(session.hang_time_s()),
        number: unit.set_number(session.hang_time_s()),
        sign: unit.sign(),
    };
    let accessible_name = || say!("panel-typed", what = text("reading-hang-time-s"));
    let name = format!("value:{KEY}");
    if let Some(typed) = number_field(ui, edit, &name, rect, accessible_name, shown) {
        session.set_typed_hang_time(&typed);
    }
}

/// Below the half-width of the height: the same, as one of the hang time.
pub fn half_width(ui: &mut Ui, session: &mut Session) {
    let Some(half_width_s) = session.hang_time_half_width_s() else {
        return;
    };
    let value = format!("± {}", session.hang_time_half_width_text(half_width_s));
    let of_row = StepperRow {
        name: KEY,
        label: text("reading-hang-time-s"),
        note: "",
        value: &value,
        value_name: Some("half-width:hang_time_s"),
    };
    if let Some(steps) = stepper(ui, &of_row) {
        session.step_hang_time_half_width(steps);
    }
    small(ui, text("half-width-hang-time-s-about"));
    ui.add_space(WIDE_GAP);
}
