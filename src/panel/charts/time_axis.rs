//! The time axis that all charts share: spans of the flight, ticks, and dragging the playhead.

use egui::{Align2, Color32, Rect, Stroke, Ui, pos2};

use crate::controls::{Scale, slider};
use crate::style::{self, CLOSING, GAP, LINE, OPENING, TIGHT, WEAK_TEXT};
use turns_aloft_session::readings::phase;
use turns_aloft_session::{FRAME_S, Session};
use turns_aloft_words::{decimal, say, text};

/// Height of the ticks below the charts.
pub const TICKS: f32 = 20.0;
/// Height of the names of the spans above them.
pub const SPANS: f32 = 17.0;

/// The position of a time; the axis includes the touch-downs of both attempts.
pub fn x_of(session: &Session, rect: Rect, t_s: f64) -> f32 {
    rect.left() + rect.width() * (t_s / session.end_s()).clamp(0.0, 1.0) as f32
}

/// A span of the flight.
pub struct FlightSpan {
    pub from_s: f64,
    pub to_s: f64,
    pub colour: Color32,
    /// The message with its name.
    name: &'static str,
}

/// Closing, tight and opening.
pub fn spans(session: &Session) -> [FlightSpan; 3] {
    let flight = session.flight();
    let end_s = flight.touchdown_s;
    let plan = &flight.table.plan;
    let open_s = if plan.opens() { flight.open_s } else { end_s };
    let delay_s = plan.closes_from_s().min(end_s);
    let closed_s = plan.closed_s().min(open_s).max(delay_s);
    let open_s = open_s.max(closed_s);
    [
        (delay_s, closed_s, CLOSING.get(), "panel-span-closing"),
        (closed_s, open_s, TIGHT.get(), "panel-span-tight"),
        (open_s, end_s, OPENING.get(), "panel-span-opening"),
    ]
    .map(|(from_s, to_s, colour, name)| FlightSpan {
        from_s,
        to_s,
        colour,
        name,
    })
}

/// The spans with their names, where they fit, in a row.
pub fn span_names(ui: &Ui, session: &Session, row: Rect) {
    for span in spans(session) {
        let [from, to] = [span.from_s, span.to_s].map(|t_s| x_of(session, row, t_s));
        let own = Rect::from_x_y_ranges(from..=to, row.y_range());
        ui.painter().rect_filled(own, 0.0, span.colour);
        let name = text(span.name).to_owned();
        let name = ui
            .painter()
            .layout_no_wrap(name, style::text(13.0), WEAK_TEXT.get());
        if to - from > name.size().x + GAP {
            let at = own.center() - 0.5 * name.size();
            ui.painter().galley(at, name, WEAK_TEXT.get());
        }
    }
}

/// Take-off, touch-down, and as many round times between as fit.
pub fn ticks(ui: &Ui, session: &Session, rect: Rect) {
    let end_s = session.end_s();
    let down_s = session.flight().touchdown_s;
    let down = say!("panel-down-at", time = decimal(down_s, 2));
    let down = ui
        .painter()
        .layout_no_wrap(down, style::text(13.0), WEAK_TEXT.get());
    // Ends where the flight ends, as far as there is room.
    let down_x = x_of(session, rect, down_s).max(rect.left() + 76.0 + down.size().x);
    let down_from = down_x - down.size().x;
    // As many as fit without touching each other.
    let most = f64::from(rect.width()) / 56.0;
    let step_s = [0.1, 0.2, 0.5, 1.0]
        .into_iter()
        .find(|step_s| end_s / step_s <= most)
        .unwrap_or(1.0);
    for i in 0..=(end_s / step_s) as u32 {
        let t_s = f64::from(i) * step_s;
        let x = x_of(session, rect, t_s);
        let (align, said) = if i == 0 {
            (Align2::LEFT_BOTTOM, text("panel-take-off").to_owned())
        } else {
            (Align2::CENTER_BOTTOM, format!("{} s", decimal(t_s, 1)))
        };
        let clear = x < down_from - 20.0 || x > down_x + 20.0;
        if i > 0 && (x < rect.left() + 76.0 || x > rect.right() - 16.0 || !clear) {
            continue;
        }
        ui.painter().text(
            pos2(x, rect.bottom()),
            align,
            said,
            style::text(13.0),
            WEAK_TEXT.get(),
        );
    }
    let at = pos2(down_from, rect.bottom() - down.size().y);
    ui.painter().galley(at, down, WEAK_TEXT.get());
    ui.painter().hline(
        rect.x_range(),
        rect.bottom() - TICKS + 1.0,
        Stroke::new(1.0, LINE.get()),
    );
}

/// The slider of the playhead, over the whole of the charts or time line.
pub fn scrub(ui: &Ui, session: &mut Session, name: &str, rect: Rect, accessible_name: &str) {
    let response = slider(
        ui,
        name,
        rect,
        accessible_name,
        session,
        Session::scrub,
        |session| {
            let most = session.end_s();
            let value = session.playhead_s().clamp(0.0, most);
            Scale {
                value,
                least: 0.0,
                most,
                step: FRAME_S,
                text: format!("{} s, {}", decimal(value, 2), phase(session)),
            }
        },
    );
    if (response.dragged() || response.clicked())
        && let Some(at) = response.interact_pointer_pos()
    {
        let share = f64::from((at.x - rect.left()) / rect.width());
        session.scrub(share * session.end_s());
    }
}
