//! Uncertainty: the button that shows the turns as a range, and the half-widths of the inputs.

use egui::{Align2, Rect, RichText, Sense, Ui, vec2};

use crate::controls::{Button, StepperRow, stepper};
use crate::fitted::fitted;
use crate::hang_time;
use crate::style::{self, GAP, WEAK_TEXT, WIDE_GAP};
use crate::text::small;
use turns_aloft_analysis::hang_time::UNCERTAIN;
use turns_aloft_analysis::uncertainty::UncertainInput;
use turns_aloft_describe::range::change_text;
use turns_aloft_describe::{About, Inline, Label};
use turns_aloft_session::Session;
use turns_aloft_session::readings::fitted_inputs;
use turns_aloft_words::{say, text};

/// Width of the button.
pub const BUTTON: f32 = 104.0;

/// The button that switches between a range and a single number.
pub fn button(ui: &Ui, session: &mut Session, rect: Rect) {
    let shown = session.range().is_some();
    let button = Button::labelled("uncertainty", text("panel-uncertainty")).chosen(shown);
    if button.show(ui, rect).clicked() {
        session.show_range(!shown);
    }
}

/// The half-widths, each with the range of turns that it causes alone.
pub fn inputs(ui: &mut Ui, session: &mut Session) {
    let Some(range) = session.range().cloned() else {
        return;
    };
    if let Some(inputs) = fitted_inputs(session) {
        small(ui, text("fitted-input-about"));
        ui.add_space(GAP);
        for (parameter, value) in inputs {
            let size = vec2(ui.available_width(), style::TOUCH_SIZE);
            let (row, _) = ui.allocate_exact_size(size, Sense::hover());
            let (painter, colour) = (ui.painter(), style::TEXT.get());
            let font = style::text(16.0);
            let room = 0.6 * row.width();
            let right = Align2::RIGHT_CENTER;
            let value = fitted(painter, right, &value, font.clone(), colour, room);
            let value = value.draw(painter, row.right_center());
            let room = value.left() - GAP - row.left();
            let left = Align2::LEFT_CENTER;
            fitted(painter, left, parameter.label(), font, colour, room)
                .draw(painter, row.left_center());
        }
        return;
    }
    let most = range.foremost().map_or_else(
        || text("panel-nothing-uncertain").to_owned(),
        |input| say!("panel-matters-most", what = input.inline()),
    );
    ui.label(RichText::new(most).font(style::bold(16.0)));
    ui.label(
        RichText::new(text("panel-uncertainty-meaning"))
            .size(14.5)
            .color(WEAK_TEXT.get()),
    );
    ui.add_space(GAP);
    for (input, change) in UncertainInput::ALL.into_iter().zip(range.changes) {
        half_width(ui, session, input, &change_text(change));
        ui.label(
            RichText::new(input.about())
                .size(14.5)
                .color(WEAK_TEXT.get()),
        );
        ui.add_space(WIDE_GAP);
        if input == UNCERTAIN {
            hang_time::half_width(ui, session);
        }
    }
    if session.has_own_half_widths() {
        let usual = Button::labelled("usual half-widths", text("panel-back-to-usual"));
        if usual.show_in_row(ui).clicked() {
            session.usual_half_widths();
        }
        ui.add_space(GAP);
    }
}

/// A stepper for one half-width.
fn half_width(ui: &mut Ui, session: &mut Session, input: UncertainInput, change: &str) {
    let value = format!("± {}", session.half_width_text(input));
    let of_row = StepperRow {
        name: input.key(),
        label: input.label(),
        note: change,
        value: &value,
        value_name: Some(&format!("half-width:{}", input.key())),
    };
    if let Some(steps) = stepper(ui, &of_row) {
        session.step_half_width(input, steps);
    }
}
