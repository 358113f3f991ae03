//! Settings of the goal: the jumper's limits, and the change that one season may bring.

use egui::{Align2, Id, RichText, Sense, Ui, vec2};

use crate::controls::{Button, StepperRow, stepper, toggle_area};
use crate::fitted::fitted;
use crate::style::{self, GAP, TOUCH_SIZE, WEAK_TEXT};
use crate::text::small;
use turns_aloft_analysis::lever::Lever;
use turns_aloft_describe::Label;
use turns_aloft_describe::goal::value;
use turns_aloft_session::Session;
use turns_aloft_session::goal::words;
use turns_aloft_words::{say, text};

/// Lists each lever with its limits; the chosen one has a stepper for each end.
pub fn limits(ui: &mut Ui, session: &mut Session) {
    small(ui, words::LIMITS.text());
    let id = Id::new("limits of");
    let chosen: Option<Lever> = ui.data(|data| data.get_temp(id)).flatten();
    for lever in Lever::ALL {
        let label = lever.parameter().label();
        let limit = words::limit(session, lever);
        let width = ui.available_width();
        let painter = ui.painter();
        let (usual, bold) = (style::text(16.0), style::bold(16.0));
        let colour = style::TEXT.get();
        let room = 0.5 * (width - GAP);
        let left = fitted(painter, Align2::LEFT_CENTER, label, usual, colour, room);
        let right = fitted(painter, Align2::RIGHT_CENTER, &limit, bold, colour, room);
        let height = left.height().max(right.height()).max(TOUCH_SIZE);
        let (row, _) = ui.allocate_exact_size(vec2(width, height), Sense::hover());
        let accessible_name = say!("panel-limits-of", what = label, limit = limit.as_str());
        let name = format!("limits:{}", lever.key());
        let response = toggle_area(ui, &name, row, &accessible_name, chosen == Some(lever));
        left.draw(ui.painter(), row.left_center());
        right.draw(ui.painter(), row.right_center());
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
        let value = value(session.units(), lever, range[end]);
        let row = StepperRow {
            name: &name,
            label,
            note: lever.parameter().label(),
            value: &value,
            value_name: None,
        };
        if let Some(steps) = stepper(ui, &row) {
            session.step_limit(lever, end, steps);
        }
    }
    ui.add_space(GAP);
}

/// A stepper for each lever: the change that one season may bring.
pub fn season(ui: &mut Ui, session: &mut Session) {
    small(ui, words::SEASON.text());
    for lever in Lever::ALL {
        let name = format!("season:{}", lever.key());
        let value = words::season(session, lever);
        let row = StepperRow {
            name: &name,
            label: lever.parameter().label(),
            note: "",
            value: &value,
            value_name: None,
        };
        if let Some(steps) = stepper(ui, &row) {
            session.step_season(lever, steps);
        }
        ui.add_space(GAP);
    }
    if session.has_own_season() && back(ui, "usual seasons", text("panel-back-to-usual")) {
        session.usual_season();
    }
    ui.label(
        RichText::new(text("panel-season-held"))
            .size(14.5)
            .color(WEAK_TEXT.get()),
    );
}

fn back(ui: &mut Ui, name: &str, label: &str) -> bool {
    let clicked = Button::labelled(name, label).show_in_row(ui).clicked();
    ui.add_space(GAP);
    clicked
}
