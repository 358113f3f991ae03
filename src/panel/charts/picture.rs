//! One chart: spans, scale, the curves of one attempt or two, and the playhead.

use egui::{Painter, Pos2, Rect, Shape, Stroke, Ui, pos2};
use turns_aloft_describe::curve::unit;

use crate::charts::curve;
use crate::charts::scale::VerticalScale;
use crate::charts::time_axis::{spans, x_of};
use crate::style::{CARD, PLAYHEAD, REFERENCE, WEAK_TEXT};
use turns_aloft_session::{Curve, Session};

/// A chart ready to be drawn: everything in the unit shown.
pub struct Chart {
    pub curve: Curve,
    points: Vec<[f64; 2]>,
    reference: Option<Vec<[f64; 2]>>,
    mark: Option<f64>,
    pub scale: VerticalScale,
}

impl Chart {
    pub fn new(session: &Session, curve: Curve, height: f32) -> Self {
        let unit = unit(curve, session.units());
        let shown = |points: Vec<[f64; 2]>| -> Vec<[f64; 2]> {
            let points = points.into_iter();
            points.map(|[t_s, si]| [t_s, unit.from_si(si)]).collect()
        };
        let points = shown(curve.points(session.scenario(), session.jump()));
        let reference = session
            .reference()
            .map(|it| shown(curve.points(&it.scenario, &it.jump)));
        let mark = curve::mark(curve, session).map(|si| unit.from_si(si));
        let values = points.iter().chain(reference.iter().flatten());
        let scale = VerticalScale::of(values.map(|at| at[1]).chain(mark), height);
        Self {
            curve,
            points,
            reference,
            mark,
            scale,
        }
    }

    pub fn draw(&self, ui: &Ui, session: &Session, rect: Rect) {
        frame(ui, session, rect);
        let painter = ui.painter().with_clip_rect(rect.intersect(ui.clip_rect()));
        self.scale.lines(&painter, rect);
        self.scale.numbers(ui.painter(), rect);
        if let Some(mark) = self.mark {
            let stroke = Stroke::new(1.5, WEAK_TEXT.get());
            let y = self.scale.y(rect, mark);
            let ends = [pos2(rect.left(), y), pos2(rect.right(), y)];
            painter.extend(Shape::dashed_line(&ends, stroke, 2.0, 3.0));
        }
        let placed = |points: &[[f64; 2]]| -> Vec<Pos2> {
            let points = points.iter();
            points
                .map(|&[t_s, value]| pos2(x_of(session, rect, t_s), self.scale.y(rect, value)))
                .collect()
        };
        if let Some(reference) = &self.reference {
            let stroke = Stroke::new(2.0, REFERENCE.get());
            painter.extend(Shape::dashed_line(&placed(reference), stroke, 7.0, 5.0));
        }
        let colour = curve::colour(self.curve).get();
        painter.add(Shape::line(placed(&self.points), Stroke::new(2.5, colour)));
        playhead(&painter, session, rect);
        let flown_s = session.now().t_s;
        let now = self
            .curve
            .value(session.scenario(), session.jump(), flown_s);
        let now = unit(self.curve, session.units()).from_si(now);
        let at = pos2(x_of(session, rect, flown_s), self.scale.y(rect, now));
        painter.circle_filled(at, 5.0, colour);
    }
}

/// The background of a chart with the spans of the flight.
pub fn frame(ui: &Ui, session: &Session, rect: Rect) {
    ui.painter().rect_filled(rect, 4.0, CARD.get());
    for span in spans(session) {
        let [from, to] = [span.from_s, span.to_s].map(|t_s| x_of(session, rect, t_s));
        if to > from {
            let own = Rect::from_x_y_ranges(from..=to, rect.y_range());
            ui.painter().rect_filled(own, 0.0, span.colour);
        }
    }
}

pub fn playhead(painter: &Painter, session: &Session, rect: Rect) {
    let stroke = Stroke::new(2.0, PLAYHEAD.get());
    painter.vline(
        x_of(session, rect, session.playhead_s()),
        rect.y_range(),
        stroke,
    );
}
