//! The name of a chart and the values at the playhead, of both attempts if there are two.

use egui::{Align2, Rect, Ui, pos2, vec2};
use turns_aloft_describe::Label;

use crate::charts::curve;
use crate::fitted::fitted;
use crate::style::{self, GAP, REFERENCE, WEAK_TEXT};
use turns_aloft_session::{Curve, Session};

/// In lower rows the second value stands behind the first.
pub const LOW: f32 = 60.0;

/// What is said of a curve at the playhead.
struct Head {
    label: &'static str,
    own: String,
    reference: Option<String>,
}

impl Head {
    fn of(session: &Session, curve: Curve) -> Self {
        let t_s = session.playhead_s();
        let own = curve.value(session.scenario(), session.jump(), t_s);
        let reference = session.reference();
        let other = reference.map(|it| {
            let value = curve.value(&it.scenario, &it.jump, t_s);
            curve::value_text(curve, session, &it.jump, value)
        });
        Self {
            label: curve.label(),
            own: curve::value_text(curve, session, session.jump(), own),
            reference: other,
        }
    }
}

/// Beside the chart.
pub fn beside(ui: &Ui, session: &Session, curve: Curve, rect: Rect) {
    let head = Head::of(session, curve);
    let painter = ui.painter();
    let across = rect.height() < LOW;
    let below = head.reference.is_some() && !across;
    let middle = rect.left_center() - vec2(0.0, if below { 9.0 } else { 0.0 });
    painter.text(
        middle - vec2(0.0, 2.0),
        Align2::LEFT_BOTTOM,
        head.label,
        style::text(style::fitting_text(
            painter,
            head.label,
            14.0,
            rect.width() - GAP,
        )),
        WEAK_TEXT.get(),
    );
    let own = painter.text(
        middle - vec2(0.0, 3.0),
        Align2::LEFT_TOP,
        head.own,
        style::bold(18.0),
        curve::colour(curve).get(),
    );
    if let Some(reference) = head.reference {
        let at = if across {
            pos2(own.right() + GAP + 2.0, own.top() + 4.0)
        } else {
            middle + vec2(0.0, 16.0)
        };
        let font = style::bold(14.0);
        painter.text(at, Align2::LEFT_TOP, reference, font, REFERENCE.get());
    }
}

/// Above the chart, in one line.
pub fn above(ui: &Ui, session: &Session, curve: Curve, row: Rect) {
    let head = Head::of(session, curve);
    let painter = ui.painter();
    let right = match head.reference {
        Some(reference) => {
            let font = style::bold(14.0);
            let at = row.right_center();
            let drawn = painter.text(at, Align2::RIGHT_CENTER, reference, font, REFERENCE.get());
            drawn.left() - 2.0 * GAP
        }
        None => row.right(),
    };
    let own = painter.text(
        pos2(right, row.center().y),
        Align2::RIGHT_CENTER,
        head.own,
        style::bold(17.0),
        curve::colour(curve).get(),
    );
    let font = style::text(14.0);
    let room = own.left() - GAP - row.left();
    let left = Align2::LEFT_CENTER;
    let label = fitted(painter, left, head.label, font, WEAK_TEXT.get(), room);
    label.draw(painter, row.left_center());
}
