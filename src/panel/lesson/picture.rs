//! Options as pictures, for those who hardly read: the jumper as each option has it, an arrow for more or less, or
//! so many circles.

use egui::{Align2, Color32, Painter, Pos2, Rect, Sense, Stroke, Ui, pos2, vec2};

use crate::controls::Button;
use crate::style::{self, GAP};
use turns_aloft_lesson::{Choice, Flown, Meaning};
use turns_aloft_physics::body::Segment;
use turns_aloft_session::lesson::LessonInSight;

/// Size of a picture, and of the text below it.
const HEIGHT: f32 = 128.0;
const TEXT: f32 = 26.0;

/// Height that a picture shows, in statures of the jumper: the jumper in the air above the ground.
const STATURES: f64 = 1.75;

/// What is in a picture.
enum Drawn<'a> {
    Jumper(Option<&'a Flown>),
    Sign(Meaning),
    Count(f64),
}

/// Shows the options side by side. Returns the place of the one that was clicked.
pub fn show(
    ui: &mut Ui,
    lesson: &LessonInSight,
    choice: &Choice,
    chosen: Option<usize>,
) -> Option<usize> {
    let texts = choice.texts();
    let count = texts.len() as f32;
    let width = (ui.available_width() - (count - 1.0) * GAP) / count;
    let size = vec2(ui.available_width(), HEIGHT + TEXT);
    let (row, _) = ui.allocate_exact_size(size, Sense::hover());
    let mut clicked = None;
    for (place, said) in texts.into_iter().enumerate() {
        let left = row.left() + place as f32 * (width + GAP);
        let own = Rect::from_min_size(pos2(left, row.top()), vec2(width, size.y));
        let drawn = drawn(lesson, choice, place);
        let label = said.text();
        let name = format!("lesson option:{}", place + 1);
        let button = Button::drawn(&name, label, move |painter, rect, colour| {
            let (picture, below) = rect.split_top_bottom_at_y(rect.bottom() - TEXT);
            draw(painter, picture.shrink(8.0), &drawn, colour);
            let size = style::fitting(painter, label, 16.0, below.width() - 8.0);
            let middle = Align2::CENTER_CENTER;
            painter.text(
                below.center() - vec2(0.0, 4.0),
                middle,
                label,
                style::bold(size),
                colour,
            );
        });
        if button.chosen(chosen == Some(place)).show(ui, own).clicked() {
            clicked = Some(place);
        }
    }
    clicked
}

fn drawn<'a>(lesson: &'a LessonInSight, choice: &Choice, place: usize) -> Drawn<'a> {
    match choice {
        Choice::Best { options, .. } => {
            let variant = options.get(place).and_then(|option| option.1);
            Drawn::Jumper(lesson.flights().one(variant))
        }
        Choice::Change { options, .. } => {
            Drawn::Sign(options.get(place).map_or(Meaning::Stays, |option| option.1))
        }
        Choice::Nearest { options, .. } => {
            Drawn::Count(options.get(place).map_or(0.0, |option| option.1))
        }
        Choice::Open { .. } => Drawn::Jumper(None),
    }
}

fn draw(painter: &Painter, rect: Rect, drawn: &Drawn<'_>, colour: Color32) {
    match drawn {
        Drawn::Jumper(Some(flown)) => jumper(painter, rect, flown, colour),
        Drawn::Jumper(None) => {}
        Drawn::Sign(meaning) => sign(painter, rect, *meaning, colour),
        Drawn::Count(count) => circles(painter, rect, *count, colour),
    }
}

/// Seen from in front in the middle of the flight, above the ground.
fn jumper(painter: &Painter, rect: Rect, flown: &Flown, colour: Color32) {
    let Flown::Jump { jump, .. } = flown else {
        return;
    };
    let flight = &jump.flight;
    let body = &flight.table.body;
    let pose = flight.pose_at(0.5 * flight.touchdown_s);
    let joint = |of: Segment, trunk: Segment| pose.point_m(trunk, body.link(of).joint_m);
    let [left, right] =
        [Segment::LeftUpperArm, Segment::RightUpperArm].map(|arm| joint(arm, Segment::UpperTrunk));
    let mut across = left - right;
    across.y = 0.0;
    let across = across.normalize_or(across);
    let scale = f64::from(rect.height()) / (STATURES * body.spec.stature_m);
    let middle = pose.point_m(Segment::LowerTrunk, body.link(Segment::LowerTrunk).cm_m);
    let place = |segment: Segment, own| {
        let at = pose.point_m(segment, own);
        let aside = (at - middle).dot(across);
        pos2(
            rect.center().x + (scale * aside) as f32,
            rect.bottom() - (scale * at.y) as f32,
        )
    };
    let stroke = Stroke::new(5.0, colour);
    for segment in Segment::ALL {
        let link = body.link(segment);
        let from = place(segment, Default::default());
        let to = place(segment, link.end_m);
        if segment == Segment::Head {
            painter.circle_filled(to + 0.5 * (from - to), 0.055 * rect.height(), colour);
        } else {
            painter.line_segment([from, to], stroke);
            painter.circle_filled(from, 2.5, colour);
        }
    }
    for (trunk, pair) in [
        (
            Segment::UpperTrunk,
            [Segment::LeftUpperArm, Segment::RightUpperArm],
        ),
        (
            Segment::LowerTrunk,
            [Segment::LeftThigh, Segment::RightThigh],
        ),
    ] {
        let ends = pair.map(|limb| place(trunk, body.link(limb).joint_m));
        painter.line_segment(ends, stroke);
    }
    painter.hline(rect.x_range(), rect.bottom(), Stroke::new(2.0, colour));
}

/// An arrow upwards or downwards, or two lines for what stays the same.
fn sign(painter: &Painter, rect: Rect, meaning: Meaning, colour: Color32) {
    let stroke = Stroke::new(8.0, colour);
    let (middle, half) = (rect.center(), 0.3 * rect.height());
    let up = match meaning {
        Meaning::Rises => -1.0,
        Meaning::Falls => 1.0,
        Meaning::Stays => {
            for aside in [-12.0, 12.0] {
                let y = middle.y + aside;
                painter.hline(middle.x - half..=middle.x + half, y, stroke);
            }
            return;
        }
    };
    let tip = pos2(middle.x, middle.y + up * half);
    painter.line_segment([pos2(middle.x, middle.y - up * half), tip], stroke);
    for aside in [-1.0, 1.0] {
        let wing = tip + vec2(aside * 0.5 * half, -up * 0.5 * half);
        painter.line_segment([tip, wing], stroke);
    }
}

/// So many circles, round about.
fn circles(painter: &Painter, rect: Rect, count: f64, colour: Color32) {
    let count = count.round().clamp(0.0, 9.0) as usize;
    let radius = 0.13 * rect.height();
    let apart = 2.6 * radius;
    for i in 0..count {
        let [row, column] = [i / 3, i % 3];
        let in_row = (count - 3 * row).min(3);
        let rows = count.div_ceil(3);
        let x = (column as f32 - 0.5 * (in_row as f32 - 1.0)) * apart;
        let y = (row as f32 - 0.5 * (rows as f32 - 1.0)) * apart;
        let at: Pos2 = rect.center() + vec2(x, y);
        painter.circle_stroke(at, radius, Stroke::new(5.0, colour));
    }
}
