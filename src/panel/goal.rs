//! Goal: the target turns, the changes that would reach them, and the jumper's limits.

mod card;
mod limits;

use egui::{Align2, Rect, RichText, Sense, Ui, pos2, vec2};

use crate::controls::{Button, StepperRow, fold, stepper};
use crate::fitted::fitted;
use crate::style::{self, ACCENT, GAP, TOUCH_SIZE, WEAK_TEXT, WIDE_GAP};
use crate::text::{heading, small};
use crate::{cautions, weights};
use turns_aloft_analysis::goal::Single;
use turns_aloft_session::Session;
use turns_aloft_session::goal::{GoalTurns, can, words};
use turns_aloft_words::{decimal, text};

/// Width of the button that undoes a change that was tried.
const BACK: f32 = 92.0;

pub fn show(ui: &mut Ui, session: &mut Session) {
    target(ui, session);
    ui.add_space(GAP);
    question(ui, session);
    if !session.has_goal() {
        answers(ui, session);
    }
    let title = text("panel-limits");
    fold(ui, "This jumper's limits", title, false, |ui| {
        limits::limits(ui, session);
    });
    let title = text("panel-season");
    fold(ui, "What a season may bring", title, false, |ui| {
        limits::season(ui, session);
    });
}

/// The target turns: those of a full jump, those that are just not called, or any number.
fn target(ui: &mut Ui, session: &mut Session) {
    let present = session.target();
    if session.jump().owed.is_some() {
        let (row, _) =
            ui.allocate_exact_size(vec2(ui.available_width(), TOUCH_SIZE), Sense::hover());
        let half = 0.5 * (row.width() - GAP);
        let goals = [
            (GoalTurns::Full, "Full turns", text("panel-target-full")),
            (
                GoalTurns::NotCalled,
                "Not called",
                text("panel-target-not-called"),
            ),
        ];
        for (i, (goal, name, label)) in goals.into_iter().enumerate() {
            let left = row.left() + (half + GAP) * i as f32;
            let own = Rect::from_min_size(pos2(left, row.top()), vec2(half, TOUCH_SIZE));
            let button = Button::labelled(name, label).chosen(present == goal);
            if button.show(ui, own).clicked() {
                session.set_goal(goal);
            }
        }
    }
    let value = decimal(session.goal_turns(), 2);
    let row = StepperRow {
        name: "target",
        label: text("panel-turns-wanted"),
        note: "",
        value: &value,
        value_name: None,
    };
    if let Some(steps) = stepper(ui, &row) {
        session.step_goal(steps);
    }
}

fn question(ui: &mut Ui, session: &mut Session) {
    let asked = words::question(session);
    let colour = if session.has_goal() {
        ACCENT.get()
    } else {
        style::TEXT.get()
    };
    ui.label(RichText::new(asked).font(style::bold(18.0)).color(colour));
    if session.tried() > 0 {
        let (row, _) =
            ui.allocate_exact_size(vec2(ui.available_width(), TOUCH_SIZE), Sense::hover());
        let own = Rect::from_min_size(row.min, vec2(BACK, TOUCH_SIZE));
        let back = Button::labelled("go back", text("panel-go-back"));
        if back.show(ui, own).clicked() {
            session.go_back();
        }
        let at = pos2(own.right() + WIDE_GAP, row.center().y);
        let (said, font) = (text("panel-go-back-to"), style::text(15.0));
        let room = row.right() - at.x;
        let painter = ui.painter();
        fitted(
            painter,
            Align2::LEFT_CENTER,
            said,
            font,
            WEAK_TEXT.get(),
            room,
        )
        .draw(painter, at);
    }
}

fn answers(ui: &mut Ui, session: &mut Session) {
    let singles: Vec<(Single, bool)> = session
        .singles()
        .into_iter()
        .map(|(single, fits)| (single.clone(), fits))
        .collect();
    let (able, unable): (Vec<_>, Vec<_>) = singles
        .into_iter()
        .partition(|(single, _)| can(single.judgement.verdict));
    heading(ui, text("panel-one-change"));
    for (single, fits) in &able {
        card::single(ui, session, single, *fits);
        ui.add_space(GAP);
    }
    if able.is_empty() {
        small(ui, text("panel-no-single-change"));
    }
    heading(ui, text("panel-several"));
    card::combination(ui, session);
    if !unable.is_empty() {
        heading(ui, text("panel-cannot-alone"));
        for (single, fits) in &unable {
            card::unable(ui, session, single, *fits);
        }
    }
    weights::needed(ui, session);
    let cautions = session.goal_cautions();
    if cautions.is_empty() {
        cautions::show(ui);
    } else {
        ui.add_space(WIDE_GAP);
        small(ui, &cautions.join(" "));
    }
}
