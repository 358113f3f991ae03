//! The rate as the largest figure, L = I · ω, and where the energy comes from.

use egui::{Align2, CornerRadius, Sense, Ui, vec2};
use turns_aloft_describe::unit::TENTHS_OF_JOULES;

use crate::charts::equation;
use crate::fitted::fitted;
use crate::layout::{LOW_COLUMN, Layout};
use crate::style::{self, CARD, GAP, TEXT, WEAK_TEXT, WIDE_GAP};
use crate::text::small;
use turns_aloft_describe::unit::UnitText;
use turns_aloft_session::Session;
use turns_aloft_session::turntable::{OnTurntable, equation as of_sample, rate, sense};
use turns_aloft_words::text;

/// Font size of the rate: to be read from three metres where there is room (our estimate), else as large as
/// leaves some for the rest.
const FIGURES: f32 = 92.0;
const LINE_FIGURES: f32 = 58.0;
const LOW_FIGURES: f32 = 44.0;

pub fn show(ui: &mut Ui, session: &Session, on_turntable: &OnTurntable, layout: &Layout) {
    let sample = on_turntable.shown();
    let figures = if layout.tall {
        FIGURES
    } else if layout.column.height() >= LOW_COLUMN {
        LINE_FIGURES
    } else {
        LOW_FIGURES
    };
    let width = ui.available_width();
    let number = rate(session, sample.rate_rad_s);
    let size = style::fitting(ui.painter(), &number, figures, width - 2.0 * WIDE_GAP);
    // As high as the largest, so that nothing below moves with the digits.
    let high = 1.12 * figures;
    let font = style::text(15.0);
    let room = width - 2.0 * WIDE_GAP;
    let left = Align2::LEFT_TOP;
    let way = sense(sample.rate_rad_s);
    let way = fitted(ui.painter(), left, way, font, WEAK_TEXT.get(), room);
    let equation_high = equation::height(width);
    // Two lines at most.
    let foot = way.height().max(22.0);
    let whole = vec2(width, high + foot + GAP);
    let (card, _) = ui.allocate_exact_size(whole, Sense::hover());
    let painter = ui.painter();
    painter.rect_filled(card, CornerRadius::same(style::CORNER_RADIUS), CARD.get());
    painter.text(
        card.left_top() + vec2(WIDE_GAP, 0.5 * high),
        Align2::LEFT_CENTER,
        number,
        style::bold(size),
        TEXT.get(),
    );
    way.draw(painter, card.left_top() + vec2(WIDE_GAP, high));
    let (row, _) = ui.allocate_exact_size(vec2(width, equation_high), Sense::hover());
    equation::draw(ui, of_sample(&sample), row);
}

/// Energy, work of the muscles, friction and pushes.
pub fn energies(ui: &mut Ui, on_turntable: &OnTurntable) {
    let sample = on_turntable.shown();
    for (label, energy_j) in [
        (text("panel-curve-energy"), sample.kinetic_j),
        (text("turntable-work"), sample.work_j),
        (text("turntable-heat"), sample.heat_j),
        (text("turntable-pushed"), sample.pushed_j),
    ] {
        let width = ui.available_width();
        let value = TENTHS_OF_JOULES.text(energy_j);
        let painter = ui.painter();
        let bold = style::bold(17.0);
        let value = fitted(painter, Align2::RIGHT_TOP, &value, bold, TEXT.get(), width);
        let room = width - 110.0;
        let font = style::text(16.0);
        let label = fitted(
            painter,
            Align2::LEFT_TOP,
            label,
            font,
            WEAK_TEXT.get(),
            room,
        );
        let high = label.height().max(value.height());
        let (row, _) = ui.allocate_exact_size(vec2(width, high), Sense::hover());
        label.draw(ui.painter(), row.left_top());
        value.draw(ui.painter(), row.right_top());
    }
    small(ui, text("turntable-energy-about"));
}
