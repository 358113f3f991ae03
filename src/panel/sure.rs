//! How sure the answer is: the button that asks, and the half-widths behind the range.

use bevy_egui::egui::{Align2, Rect, RichText, Sense, Ui, pos2, vec2};

use super::look::{self, APART, INK, NEAR, SLATE, TOUCH};
use super::{spoken, targets, transport};
use crate::scenario::uncertainty::{HALF_WIDTHS, HalfWidth};
use crate::session::Session;
use crate::session::readings::change_text;

const MEANING: &str = "Each input is taken to lie within its ± in 95 of 100 cases, whatever the \
others do; so do the turns within their range.";

/// Width of the button that asks.
pub const BUTTON: f32 = 104.0;

/// Shows the turns as a range, or as a single number again.
pub fn button(ui: &Ui, session: &mut Session, rect: Rect) {
    let shown = session.range().is_some();
    if transport::labelled(ui, "how sure", "How sure?", rect, shown).clicked() {
        session.show_range(!shown);
    }
}

/// The half-widths, each with what it alone makes of the turns.
pub fn inputs(ui: &mut Ui, session: &mut Session) {
    let Some(range) = session.range().cloned() else {
        return;
    };
    let most = range.foremost().map_or_else(
        || "Nothing is taken to be uncertain.".to_owned(),
        |row| format!("The {} matters most.", row.label.to_lowercase()),
    );
    ui.label(RichText::new(most).font(look::bold(16.0)));
    ui.label(RichText::new(MEANING).size(14.5).color(SLATE));
    ui.add_space(NEAR);
    for (row, change) in HALF_WIDTHS.iter().zip(range.changes) {
        half_width(ui, session, row, &change_text(change));
        ui.label(RichText::new(row.about).size(14.5).color(SLATE));
        ui.add_space(APART);
    }
    if session.has_own_half_widths() {
        let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width(), TOUCH), Sense::hover());
        if transport::labelled(ui, "usual half-widths", "Back to the usual", rect, false).clicked()
        {
            session.usual_half_widths();
        }
        ui.add_space(NEAR);
    }
}

/// One row: what it is and makes, then less, the value, more.
fn half_width(ui: &mut Ui, session: &mut Session, row: &HalfWidth, makes: &str) {
    const VALUE: f32 = 96.0;
    let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width(), TOUCH), Sense::hover());
    let button = |left: f32| Rect::from_min_size(pos2(left, rect.top()), vec2(TOUCH, TOUCH));
    let more = button(rect.right() - TOUCH);
    let less = button(more.left() - VALUE - TOUCH);
    let value = Rect::from_min_max(less.right_top(), more.left_bottom());

    let room = less.left() - rect.left() - NEAR;
    let label = look::bold(look::fitting(ui, row.label, 16.0, room));
    let left = rect.left_center();
    let painter = ui.painter();
    painter.text(
        left - vec2(0.0, 10.0),
        Align2::LEFT_CENTER,
        row.label,
        label,
        INK,
    );
    painter.text(
        left + vec2(0.0, 11.0),
        Align2::LEFT_CENTER,
        makes,
        look::text(14.5),
        SLATE,
    );
    let text = format!("± {}", session.half_width_text(row));
    let size = look::fitting(ui, &text, 17.0, VALUE - 2.0 * NEAR);
    painter.text(
        value.center(),
        Align2::CENTER_CENTER,
        &text,
        look::bold(size),
        INK,
    );
    targets::note(&format!("half-width:{}", row.key), value);
    for (sign, own, steps, way) in [("−", less, -1.0, "less"), ("+", more, 1.0, "more")] {
        let response = transport::button(ui, &format!("{sign}:{}", row.key), own, false);
        spoken::button(&response, &format!("{}, {text}: {way}", row.label));
        ui.painter().text(
            own.center(),
            Align2::CENTER_CENTER,
            sign,
            look::bold(24.0),
            INK,
        );
        if response.clicked() {
            session.step_half_width(row, steps);
        }
    }
}
