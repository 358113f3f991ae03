//! Everything on the screen that is not the 3D picture: the answer, the sliders, the charts.
//!
//! Panels read the session's finished flight and call the session's methods; they compute nothing.

mod bar;
mod beyond;
mod caution;
mod charts;
mod compare;
mod controls;
mod folded_inputs;
mod goal;
mod greeting;
mod layout;
mod map;
mod number;
mod playback;
mod questions;
mod readouts;
mod style;
mod text;
mod turns;
mod uncertainty;
mod undo;
mod weights;
mod why;

use std::borrow::Cow;

use egui::{
    Context, CornerRadius, LayerId, Rect, ScrollArea, Sense, Stroke, StrokeKind, Ui, UiBuilder,
    pos2, vec2,
};

pub use bar::PageCommand;
pub use controls::touch_targets;
use controls::{Button, NumberEdit, button_area, fold};
use layout::Layout;
use style::{APART, ICE, INK, NEAR, SNOW, TEAL, TOUCH};

use crate::appearance::{Light, chosen, shown};
use crate::scenario::parameter::{Parameter, Section};
use crate::session::{Question, Session};
use crate::view::View;
use crate::words::text;

/// What is open on the panels themselves.
#[derive(Default)]
pub struct Panels {
    edit: NumberEdit,
    /// The number or readout that is explained.
    about: Option<Cow<'static, str>>,
    /// Of the kept jumps.
    kept: compare::KeptJumps,
    /// The colours that egui has been given.
    applied_theme: Option<Light>,
}

/// What one frame of the panels leaves to the rest of the app.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Frame {
    /// Where the panels leave room for the 3D picture, in points.
    pub stage: Rect,
    /// The view whose button was clicked.
    pub view: Option<View>,
    /// What the user asked for that only the page can do.
    pub command: Option<PageCommand>,
}

/// Shows the panels for one frame; `view` is the named view that the camera is in.
///
/// Returns nothing in the frame that loads the fonts: egui has them from the next one on.
pub fn show(
    ctx: &Context,
    panels: &mut Panels,
    session: &mut Session,
    view: Option<View>,
) -> Option<Frame> {
    if panels.applied_theme != Some(shown()) {
        let first = panels.applied_theme.replace(shown()).is_none();
        style::theme(ctx);
        if first {
            return None;
        }
    }
    ctx.set_zoom_factor(chosen().zoom());
    // The one that this frame is drawn at; another one is from the next on.
    touch_targets::clear(ctx.zoom_factor());
    let screen = ctx.viewport_rect();
    let layout = Layout::of(screen, session.question());
    let mut ui = Ui::new(
        ctx.clone(),
        "panels".into(),
        UiBuilder::new()
            .layer_id(LayerId::background())
            .max_rect(screen),
    );
    undo::keys(ctx, session);
    let of_bar = bar::show(&mut ui, session, &layout);
    timeline(&mut ui, session, &layout);
    if let Some(rect) = layout.controls {
        let rest = pinned(&mut ui, rect, |ui| answer(ui, session, &layout));
        column(&mut ui, "controls", rest, |ui| {
            controls(ui, session, panels);
            folded(ui, session, panels);
        });
    }
    let rest = pinned(&mut ui, layout.column, |ui| {
        if layout.controls.is_none() {
            answer(ui, session, &layout);
        }
        questions::show(ui, session);
    });
    let mut of_column = None;
    let name = session.question().name();
    column(&mut ui, name, rest, |ui| match session.question() {
        Question::Jump => about_the_jump(ui, session, panels, &layout),
        Question::Why => why::show(ui, session),
        Question::Goal => goal::show(ui, session),
        Question::Map => map::show(ui, session),
        Question::Compare => {
            let charts = !layout.charts_under_stage();
            of_column = compare::show(ui, session, &mut panels.kept, charts);
        }
    });
    let (views, clicked) = views(&ui, view, &layout);
    greeting::show(&ui, session, layout.stage, views);
    if !layout.undo_in_bar() {
        undo::on_stage(&ui, session, layout.stage);
    }
    session.set_dragging(ui.ctx().dragged_id().is_some());
    notice(&ui, session, layout.stage);
    Some(Frame {
        stage: layout.stage,
        view: clicked,
        command: of_bar.or(of_column),
    })
}

/// A scrolling column on the ice.
fn column(ui: &mut Ui, name: &str, rect: Rect, add: impl FnOnce(&mut Ui)) {
    ui.painter().rect_filled(rect, 0.0, ICE.get());
    let inside = rect.shrink2(vec2(APART - 2.0, 0.0));
    let mut child = ui.new_child(UiBuilder::new().max_rect(inside).id_salt(name));
    ScrollArea::vertical()
        .id_salt(name)
        .auto_shrink(false)
        .scroll_bar_visibility(egui::scroll_area::ScrollBarVisibility::AlwaysHidden)
        .show(&mut child, |ui| {
            add(ui);
            ui.add_space(APART);
        });
}

/// The head of a column, which does not scroll; returns the rest.
fn pinned(ui: &mut Ui, rect: Rect, add: impl FnOnce(&mut Ui)) -> Rect {
    ui.painter().rect_filled(rect, 0.0, ICE.get());
    let inside = rect.shrink2(vec2(APART - 2.0, 0.0));
    let mut child = ui.new_child(UiBuilder::new().max_rect(inside).id_salt("pinned"));
    add(&mut child);
    let below = (child.min_rect().bottom() + NEAR).min(rect.bottom());
    Rect::from_min_max(pos2(rect.left(), below), rect.max)
}

/// Turns at landing, and how far the playhead has come; a line of it where there is no room. The
/// jump's own page has it in full on every screen, there it scrolls.
fn answer(ui: &mut Ui, session: &mut Session, layout: &Layout) {
    if layout.tall {
        answer_in_full(ui, session, layout.narrow);
    } else if session.question() != Question::Jump {
        turns::line(ui, session);
        beyond::under_turns(ui, session);
    }
}

fn answer_in_full(ui: &mut Ui, session: &mut Session, narrow: bool) {
    turns::card(ui, session, narrow);
    beyond::under_turns(ui, session);
    turns::progress(ui, session);
}

/// The jump's own page: sliders, charts and readouts, as far as they have no place of their own.
fn about_the_jump(ui: &mut Ui, session: &mut Session, panels: &mut Panels, layout: &Layout) {
    if !layout.tall {
        answer_in_full(ui, session, layout.narrow);
    }
    if session.range().is_some() {
        let title = text("panel-uncertainty-inputs");
        fold(ui, "Uncertainty of the inputs", title, false, |ui| {
            uncertainty::inputs(ui, session);
        });
    }
    if layout.controls.is_some() {
        readouts::show(ui, session, &mut panels.about);
        return;
    }
    controls(ui, session, panels);
    if !layout.charts_under_stage() {
        folded_charts(ui, session, 230.0);
    }
    readings(ui, session, panels, layout.narrow);
    folded(ui, session, panels);
}

fn controls(ui: &mut Ui, session: &mut Session, panels: &mut Panels) {
    for parameter in Parameter::of_section(Section::Main) {
        let marks = session.marks(parameter);
        number::show(
            ui,
            session,
            &mut panels.edit,
            &mut panels.about,
            parameter,
            marks.as_ref(),
        );
        if parameter == Parameter::HandMass {
            folded_inputs::hands_keep(ui, session);
            weights::held(ui, session);
        }
    }
    number::legend(ui);
    if session.differs_from_base() {
        let reset = Button::text("reset all", text("panel-reset-all"));
        if reset.show_in_row(ui).clicked() {
            session.reset_all();
        }
    }
    turns::note(ui, session);
    caution::show(ui);
}

/// The charts, where they have no place under the stage.
fn folded_charts(ui: &mut Ui, session: &mut Session, height: f32) {
    let title = text("panel-charts");
    fold(ui, "Charts over the flight", title, true, |ui| {
        let size = vec2(ui.available_width(), height);
        let (rect, _) = ui.allocate_exact_size(size, Sense::hover());
        charts::show(ui, session, rect);
    });
}

/// All readouts: folded on a narrow page, open elsewhere.
fn readings(ui: &mut Ui, session: &Session, panels: &mut Panels, narrow: bool) {
    let title = text("panel-readouts");
    fold(ui, "All readouts", title, !narrow, |ui| {
        readouts::show(ui, session, &mut panels.about);
    });
}

fn folded(ui: &mut Ui, session: &mut Session, panels: &mut Panels) {
    let Panels { edit, about, .. } = panels;
    fold(ui, "Which jump", text("panel-which-jump"), false, |ui| {
        folded_inputs::named_jump(ui, session);
    });
    fold(ui, "The jumper", text("panel-the-jumper"), false, |ui| {
        folded_inputs::jumper(ui, session, edit, about);
    });
    let title = text("panel-motion");
    fold(ui, "Take-off, closing, opening", title, false, |ui| {
        folded_inputs::motion(ui, session, edit, about);
    });
}

fn timeline(ui: &mut Ui, session: &mut Session, layout: &Layout) {
    let rect = layout.timeline;
    ui.painter().rect_filled(rect, 0.0, ICE.get());
    let inside = rect.shrink2(vec2(APART - 2.0, NEAR));
    let (row, rest) = inside.split_top_bottom_at_y(inside.top() + playback::HEIGHT);
    playback::show(ui, session, row);
    if layout.charts_under_stage() {
        charts::show(ui, session, rest);
    } else {
        charts::time_line(ui, session, rest);
    }
}

/// The named views, over a corner of the stage: in a row, or one below the other where a row
/// would cover the jumper.
/// Returns their place, and the one that was clicked.
fn views(ui: &Ui, present: Option<View>, layout: &Layout) -> (Rect, Option<View>) {
    let views = [
        (View::Front, "view Front", text("panel-view-front")),
        (View::Above, "view Above", text("panel-view-above")),
        (View::AlongAxis, "view Axis", text("panel-view-axis")),
    ];
    let size = vec2(62.0, TOUCH);
    let step = if layout.narrow {
        vec2(0.0, size.y + NEAR)
    } else {
        vec2(size.x + NEAR, 0.0)
    };
    let corner = layout.stage.right_top() + vec2(-APART - size.x, APART) - vec2(2.0 * step.x, 0.0);
    let all = Rect::from_min_size(corner, size + 2.0 * step);
    let mut clicked = None;
    for (i, (view, name, label)) in views.into_iter().enumerate() {
        let own = Rect::from_min_size(corner + i as f32 * step, size);
        let chosen = present == Some(view);
        let button = Button::text(name, label).chosen(chosen);
        if button.show(ui, own).clicked() {
            clicked = Some(view);
        }
    }
    (all, clicked)
}

/// The one sentence, at the foot of the stage, until it is touched.
fn notice(ui: &Ui, session: &mut Session, stage: Rect) {
    let Some(sentence) = session.notice() else {
        return;
    };
    let width = (stage.width() - 2.0 * APART).min(560.0);
    let galley = ui.painter().layout(
        sentence.to_owned(),
        style::text(17.0),
        INK.get(),
        width - 2.0 * APART,
    );
    let size = vec2(width, (galley.size().y + 2.0 * APART).max(TOUCH));
    let rect = Rect::from_min_size(
        pos2(
            stage.center().x - 0.5 * width,
            stage.bottom() - size.y - APART,
        ),
        size,
    );
    let response = button_area(ui, "notice", rect, text("panel-dismiss"));
    ui.painter().rect(
        rect,
        CornerRadius::same(style::ROUND),
        SNOW.get(),
        Stroke::new(2.0, TEAL.get()),
        StrokeKind::Inside,
    );
    ui.painter().galley(
        pos2(rect.left() + APART, rect.center().y - 0.5 * galley.size().y),
        galley,
        INK.get(),
    );
    if response.clicked() {
        session.dismiss();
    }
}
