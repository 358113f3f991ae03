//! The surface of the map and its contour lines with their labels.

use egui::layers::ShapeIdx;
use egui::{Color32, CornerRadius, Pos2, Rect, Shape, Stroke, StrokeKind, Ui, pos2, vec2};

use crate::map::{point, shading};
use crate::style::{self, ACCENT, CARD, LINE, ON_ACCENT, SEEN, TEXT, WEAK_TEXT};
use turns_aloft_analysis::contour::Line;
use turns_aloft_session::Session;
use turns_aloft_words::{say, with_decimal_sign};

pub fn whole() -> Stroke {
    Stroke::new(2.5, TEXT.get())
}

pub fn owed() -> Stroke {
    Stroke::new(4.5, ACCENT.get())
}

pub fn outline() -> Stroke {
    Stroke::new(2.0, WEAK_TEXT.get())
}

/// Distance of a label from the borders.
const INSIDE: f32 = 4.0;

/// Draws surface and lines; returns the areas of the labels, and a place in the picture below them for the
/// lines that show where the jump is.
pub fn draw(ui: &mut Ui, session: &Session, rect: Rect) -> (Vec<Rect>, ShapeIdx) {
    let clip = ui.clip_rect();
    ui.painter().rect_filled(rect, 0.0, CARD.get());
    ui.set_clip_rect(rect.intersect(clip));
    let mut taken = vec![point::ringed(session, rect)];
    let mut below = ui.painter().add(Shape::Noop);
    if let Some(picture) = session.map_picture() {
        shading::draw(ui, &picture.turns, &picture.seen, rect);
        let lines = |lines: &[Line], stroke: Stroke, around: Color32| {
            for line in lines {
                stroke_along(ui, &on(rect, line), stroke, around);
            }
        };
        lines(&picture.outline, outline(), SEEN.get());
        lines(&picture.whole, whole(), Color32::TRANSPARENT);
        lines(&picture.owed, owed(), CARD.get());
        below = ui.painter().add(Shape::Noop);
        let level = |line: &Line| with_decimal_sign(line.level.to_string());
        for line in &picture.owed {
            let said = say!("panel-map-line-owed", turns = level(line));
            number(ui, &on(rect, line), &said, true, rect, &mut taken);
        }
        for line in &picture.whole {
            let points = on(rect, line);
            number(ui, &points, &level(line), false, rect, &mut taken);
        }
    }
    ui.set_clip_rect(clip);
    ui.painter().rect_stroke(
        rect,
        CornerRadius::ZERO,
        Stroke::new(1.0, LINE.get()),
        StrokeKind::Outside,
    );
    // Those of the lines.
    (taken.split_off(1), below)
}

fn stroke_along(ui: &Ui, points: &[Pos2], stroke: Stroke, around: Color32) {
    let wider = Stroke::new(stroke.width + 3.0, around);
    if around != Color32::TRANSPARENT {
        ui.painter().add(Shape::line(points.to_vec(), wider));
    }
    ui.painter().add(Shape::line(points.to_vec(), stroke));
}

/// A line's points on the screen.
fn on(rect: Rect, line: &Line) -> Vec<Pos2> {
    let at = |[u, v]: [f64; 2]| {
        pos2(
            rect.left() + rect.width() * u as f32,
            rect.bottom() - rect.height() * v as f32,
        )
    };
    line.points.iter().copied().map(at).collect()
}

/// Labels a line at its middle, or as near to it as there is room.
fn number(ui: &Ui, points: &[Pos2], text: &str, owed: bool, rect: Rect, taken: &mut Vec<Rect>) {
    let colour = if owed { ON_ACCENT.get() } else { TEXT.get() };
    let galley = ui
        .painter()
        .layout_no_wrap(text.to_owned(), style::bold(15.0), colour);
    let size = galley.size() + vec2(9.0, 2.0);
    let steps = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9];
    let places = steps.map(|part| Rect::from_center_size(along(points, part), size));
    let free = places.into_iter().find(|place| {
        rect.shrink(INSIDE).contains_rect(*place)
            && taken.iter().all(|other| !other.intersects(*place))
    });
    let Some(place) = free else {
        return;
    };
    let fill = if owed { ACCENT.get() } else { CARD.get() };
    ui.painter().rect_filled(place, CornerRadius::same(5), fill);
    let at = place.center() - 0.5 * galley.size();
    ui.painter().galley(at, galley, colour);
    taken.push(place);
}

/// The point at a fraction of the line's length.
fn along(points: &[Pos2], part: f32) -> Pos2 {
    let steps = || points.windows(2).map(|pair| pair[0].distance(pair[1]));
    let mut left = part * steps().sum::<f32>();
    for (pair, step) in points.windows(2).zip(steps()) {
        if left <= step {
            return pair[0].lerp(pair[1], left / step.max(f32::MIN_POSITIVE));
        }
        left -= step;
    }
    points[points.len() - 1]
}
