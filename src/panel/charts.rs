//! Charts over the flight, each with its scale, on one time axis; and the joint torques.

mod choice;
mod curve;
pub mod equation;
mod head;
mod legend;
mod picture;
pub mod scale;
mod time_axis;
mod torques;

use egui::{Rect, Stroke, Ui, pos2, vec2};

use crate::charts::picture::Chart;
use crate::charts::time_axis::{SPANS, TICKS, scrub, span_names, ticks, x_of};
use crate::style::{CARD, GAP, PLAYHEAD, TOUCH_SIZE};
use turns_aloft_session::{Curve, Session};
use turns_aloft_words::text;

pub use crate::charts::torques::torques;

/// Least height of a chart, with the distance to the next.
const LEAST: f32 = 40.0;
const APART: f32 = 3.0;

/// Width of names and values beside the charts, and where two values stand beside each other.
const NAMES: f32 = 128.0;
const TWO_ACROSS: f32 = 188.0;

/// In less width names and values stand above each chart, in a row of this height.
const BESIDE: f32 = 400.0;
const ABOVE: f32 = 22.0;

/// Height of a chart where the column scrolls.
const IN_COLUMN: f32 = 64.0;

/// What takes height besides the charts.
fn besides(session: &Session, width: f32) -> f32 {
    let mut height = SPANS + TICKS;
    if session.reference().is_some() {
        height += legend::HEIGHT;
    }
    if session.curves().equation {
        height += equation::height(width);
    }
    height
}

/// Height of the row above a chart in so much width.
fn above(width: f32) -> f32 {
    if width < BESIDE { ABOVE } else { 0.0 }
}

/// How many charts an area has room for, one at least.
fn room(session: &Session, area: Rect) -> usize {
    let height = area.height() - besides(session, area.width());
    ((height / (LEAST + above(area.width()))) as usize).max(1)
}

/// Draws the charts below the picture; dragging anywhere on them moves the playhead.
pub fn show(ui: &mut Ui, session: &mut Session, area: Rect) {
    let shown: Vec<Curve> = session.curves().all().take(room(session, area)).collect();
    draw(ui, session, area, &shown);
}

/// The button that chooses the curves for charts in an area; returns the row's rest.
pub fn choice_button(ui: &Ui, session: &mut Session, row: Rect, area: Rect) -> Rect {
    let left = row.right() - choice::WIDTH;
    let button = Rect::from_min_size(pos2(left, row.top()), vec2(choice::WIDTH, TOUCH_SIZE));
    let room = room(session, area);
    choice::show(ui, session, button, room);
    Rect::from_min_max(row.min, pos2(left - GAP, row.bottom()))
}

/// The charts in a column that scrolls, as high as the curves chosen need, below their button.
pub fn in_column(ui: &mut Ui, session: &mut Session) {
    let width = ui.available_width();
    let hover = egui::Sense::hover();
    let (row, _) = ui.allocate_exact_size(vec2(width, TOUCH_SIZE), hover);
    choice::show(ui, session, row, Curve::ALL.len());
    let shown: Vec<Curve> = session.curves().all().collect();
    let each = IN_COLUMN + above(width);
    let height = besides(session, width) + each * shown.len() as f32;
    let (area, _) = ui.allocate_exact_size(vec2(width, height), hover);
    draw(ui, session, area, &shown);
}

fn draw(ui: &mut Ui, session: &mut Session, area: Rect, shown: &[Curve]) {
    let area = match session.reference() {
        Some(reference) => legend::show(ui, reference, area),
        None => area,
    };
    let equation = if session.curves().equation {
        equation::height(area.width())
    } else {
        0.0
    };
    let (area, foot) = area.split_top_bottom_at_y(area.bottom() - equation);
    let each = (area.height() - SPANS - TICKS) / shown.len() as f32;
    let head = above(area.width());
    let is_beside = head == 0.0;
    let height = each - head - APART;
    let charts: Vec<Chart> = (shown.iter())
        .map(|&curve| Chart::new(session, curve, height))
        .collect();
    let names = match is_beside {
        true if session.reference().is_some() && height < head::LOW => TWO_ACROSS,
        true => NAMES,
        false => 0.0,
    };
    let numbers = charts.iter().map(|chart| chart.scale.width(ui));
    let left = area.left() + names + numbers.fold(0.0, f32::max);
    let line = Rect::from_min_max(pos2(left, area.top()), area.max);
    let (row, _) = line.split_top_bottom_at_y(line.top() + SPANS - APART);
    span_names(ui, session, row);
    for (i, chart) in charts.iter().enumerate() {
        let top = area.top() + SPANS + each * i as f32;
        let own = |left: f32, right: f32, top: f32, height: f32| {
            Rect::from_min_max(pos2(left, top), pos2(right, top + height))
        };
        if is_beside {
            let name = own(area.left(), area.left() + names, top, height);
            head::beside(ui, session, chart.curve, name);
        } else {
            let name = own(area.left(), area.right(), top, head);
            head::above(ui, session, chart.curve, name);
        }
        chart.draw(ui, session, own(left, area.right(), top + head, height));
    }
    ticks(ui, session, line);
    if equation > 0.0 {
        equation::show(ui, session, foot);
    }
    scrub(ui, session, "charts", line, text("panel-time-on-charts"));
}

/// A time line to scrub on, where there is no room for charts.
pub fn time_line(ui: &mut Ui, session: &mut Session, rect: Rect) {
    let band = rect.shrink2(vec2(0.0, 10.0));
    ui.painter().rect_filled(band, 4.0, CARD.get());
    // Its parts are those of a plan.
    if !session.is_flown_by_hand() {
        span_names(ui, session, band);
    }
    ui.painter().vline(
        x_of(session, rect, session.playhead_s()),
        rect.y_range(),
        Stroke::new(3.0, PLAYHEAD.get()),
    );
    scrub(ui, session, "time line", rect, text("panel-time-in-flight"));
}
