//! The net torques of the joints over the flight, one curve for each group of joints.

use egui::{Align2, Pos2, Rect, Sense, Shape, Stroke, Ui, pos2, vec2};

use crate::charts::picture::{frame, playhead};
use crate::charts::scale::VerticalScale;
use crate::charts::time_axis::x_of;
use crate::style::{self, GAP, TEXT, WEAK_TEXT};
use turns_aloft_describe::joint::group_text;
use turns_aloft_describe::unit::{NEWTON_METRES, UnitText};
use turns_aloft_physics::efforts::{GROUPS, JointGroup};
use turns_aloft_session::Session;
use turns_aloft_words::say;

const CHART: f32 = 120.0;
/// Height of a row of text, and rows of the names beside each other.
const ROW: f32 = 22.0;
const ACROSS: usize = 2;

/// The curves, and their values at the playhead.
pub fn torques(ui: &mut Ui, session: &Session) {
    let rows = GROUPS.div_ceil(ACROSS) as f32;
    let size = vec2(ui.available_width(), CHART + (rows + 1.0) * ROW);
    let (rect, _) = ui.allocate_exact_size(size, Sense::hover());
    let (head, rect) = rect.split_top_bottom_at_y(rect.top() + ROW);
    let (rect, names) = rect.split_top_bottom_at_y(rect.top() + CHART);
    let samples = &session.jump().efforts().samples;
    let curves = JointGroup::ALL.map(|group| -> Vec<[f64; 2]> {
        let points = samples.iter();
        points.map(|at| [at.t_s, at.torque_n_m(group)]).collect()
    });
    let values = || curves.iter().flatten().map(|at| at[1]);
    ui.painter().text(
        head.left_center(),
        Align2::LEFT_CENTER,
        say!(
            "panel-torques-up-to",
            torque = NEWTON_METRES.text(values().fold(0.0, f64::max))
        ),
        style::text(13.0),
        WEAK_TEXT.get(),
    );
    let scale = VerticalScale::of(values(), CHART);
    let chart = Rect::from_min_max(pos2(rect.left() + scale.width(ui), rect.top()), rect.max);
    frame(ui, session, chart);
    scale.lines(ui.painter(), chart);
    scale.numbers(ui.painter(), chart);
    let colours = style::torques();
    for (points, colour) in curves.iter().zip(colours) {
        let points = points.iter();
        let points: Vec<Pos2> = points
            .map(|&[t_s, torque]| pos2(x_of(session, chart, t_s), scale.y(chart, torque)))
            .collect();
        ui.painter()
            .add(Shape::line(points, Stroke::new(2.0, colour)));
    }
    playhead(ui.painter(), session, chart);
    legend(ui, session, names);
}

fn legend(ui: &Ui, session: &Session, rect: Rect) {
    let now = session.jump().flight.loads_at(session.now().t_s);
    let colours = style::torques();
    let width = rect.width() / ACROSS as f32;
    for (i, group) in JointGroup::ALL.into_iter().enumerate() {
        let (column, row) = (i % ACROSS, i / ACROSS);
        let at = rect.left_top() + vec2(width * column as f32, ROW * (row as f32 + 0.5));
        let swatch = [at + vec2(0.0, 1.0), at + vec2(18.0, 1.0)];
        ui.painter()
            .line_segment(swatch, Stroke::new(4.0, colours[i]));
        let said = say!(
            "panel-torque-now",
            joints = group_text(group),
            torque = NEWTON_METRES.text(now.largest_torque_n_m(group.segments()))
        );
        let size = style::fitting_text(ui.painter(), &said, 14.0, width - 18.0 - 2.0 * GAP);
        ui.painter().text(
            at + vec2(18.0 + GAP, 0.0),
            Align2::LEFT_CENTER,
            said,
            style::text(size),
            TEXT.get(),
        );
    }
}
