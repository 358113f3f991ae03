//! How far this jumper gets, and what a season may bring: to be seen and to be set.

use egui::{Id, RichText, Sense, Ui, vec2};

use super::super::parts::small;
use super::super::style::{self, NEAR, SLATE, TOUCH};
use super::super::{accessibility, stepper, targets, transport};
use crate::analysis::lever::Lever;
use crate::say;
use crate::session::Session;
use crate::session::goal::words;
use crate::words::text;

/// Each lever with its reach; the one that is touched shows both ends to be moved.
pub fn limits(ui: &mut Ui, session: &mut Session) {
    small(ui, words::LIMITS.text());
    let id = Id::new("limits of");
    let chosen: Option<Lever> = ui.data(|data| data.get_temp(id)).flatten();
    for lever in Lever::ALL {
        let (row, response) =
            ui.allocate_exact_size(vec2(ui.available_width(), TOUCH), Sense::click());
        targets::note(&format!("limits:{}", lever.key()), row);
        let label = lever.parameter().label();
        let limit = words::limit(session, lever);
        let said = say!("panel-limits-of", what = label, limit = limit.as_str());
        accessibility::toggle(&response, &said, chosen == Some(lever));
        let painter = ui.painter();
        painter.text(
            row.left_center(),
            egui::Align2::LEFT_CENTER,
            label,
            style::text(16.0),
            style::INK.get(),
        );
        let size = style::fitting(ui, &limit, 16.0, 0.6 * row.width());
        painter.text(
            row.right_center(),
            egui::Align2::RIGHT_CENTER,
            &limit,
            style::bold(size),
            style::INK.get(),
        );
        if response.clicked() {
            let now = (chosen != Some(lever)).then_some(lever);
            ui.data_mut(|data| data.insert_temp(id, now));
        }
        if chosen == Some(lever) {
            ends(ui, session, lever);
        }
    }
    if session.has_own_limits() && back(ui, "forget limits", text("panel-forget-limits")) {
        session.forget_own_limits();
    }
}

fn ends(ui: &mut Ui, session: &mut Session, lever: Lever) {
    let now = lever.value(session.scenario());
    let range = session
        .limit_of(lever)
        .map_or([now; 2], |limit| limit.range);
    for (end, label) in [(0, text("panel-least")), (1, text("panel-most"))] {
        let name = format!("{}:{}", ["least", "most"][end], lever.key());
        let value = words::value(session, lever, range[end]);
        let (steps, _) = stepper::show(
            ui,
            &stepper::Row {
                name: &name,
                label,
                note: lever.parameter().label(),
                value: &value,
            },
        );
        if let Some(steps) = steps {
            session.step_limit(lever, end, steps);
        }
    }
    ui.add_space(NEAR);
}

/// Each lever with the change that counts as one season's.
pub fn season(ui: &mut Ui, session: &mut Session) {
    small(ui, words::SEASON.text());
    for lever in Lever::ALL {
        let name = format!("season:{}", lever.key());
        let value = words::season(session, lever);
        let (steps, _) = stepper::show(
            ui,
            &stepper::Row {
                name: &name,
                label: lever.parameter().label(),
                note: "",
                value: &value,
            },
        );
        if let Some(steps) = steps {
            session.step_season(lever, steps);
        }
        ui.add_space(NEAR);
    }
    if session.has_own_season() && back(ui, "usual seasons", text("panel-back-to-usual")) {
        session.usual_season();
    }
    ui.label(
        RichText::new(text("panel-season-held"))
            .size(14.5)
            .color(SLATE.get()),
    );
}

fn back(ui: &mut Ui, name: &str, label: &str) -> bool {
    let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width(), TOUCH), Sense::hover());
    ui.add_space(NEAR);
    transport::labelled(ui, name, label, rect, false).clicked()
}
