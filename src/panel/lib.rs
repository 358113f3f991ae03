//! Everything on the screen that is not the 3D picture: the turns, the sliders, the charts.
//!
//! Panels read the session's finished flight and call the session's methods; they compute nothing.

mod bar;
mod beyond;
mod cautions;
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

pub use crate::bar::PageCommand;
pub use crate::controls::touch_targets;
use crate::controls::{Button, NumberEdit, button_area, fold};
use crate::layout::Layout;
use crate::style::{ACCENT, BACKGROUND, CARD, GAP, TEXT, TOUCH_SIZE, WIDE_GAP};

use turns_aloft_appearance::view::View;
use turns_aloft_appearance::{Theme, chosen, shown};
use turns_aloft_scenario::parameter::{Parameter, Section};
use turns_aloft_session::{Question, Session};
use turns_aloft_words::text;

/// The state of the panels between frames.
#[derive(Default)]
pub struct Panels {
    edit: NumberEdit,
    /// The key of the number or readout that is explained.
    about: Option<Cow<'static, str>>,
    kept: compare::KeptJumps,
    /// The theme that egui's style was last set to.
    applied_theme: Option<Theme>,
}

/// The result of one frame of the panels.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Frame {
    /// The area that the panels leave to the 3D picture, in points.
    pub stage: Rect,
    /// The view whose button was clicked.
    pub view: Option<View>,
    /// A command for the page, if the user gave one.
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
    // egui applies a new zoom from the next frame on; this frame is drawn at the old one.
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
        let rest = header(&mut ui, rect, |ui| turns_header(ui, session, &layout));
        column(&mut ui, "controls", rest, |ui| {
            controls(ui, session, panels);
            folded_sections(ui, session, panels);
        });
    }
    let rest = header(&mut ui, layout.column, |ui| {
        if layout.controls.is_none() {
            turns_header(ui, session, &layout);
        }
        questions::show(ui, session);
    });
    let mut of_column = None;
    let name = session.question().name();
    column(&mut ui, name, rest, |ui| match session.question() {
        Question::Jump => jump_answer(ui, session, panels, &layout),
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

/// A column that scrolls.
fn column(ui: &mut Ui, name: &str, rect: Rect, add: impl FnOnce(&mut Ui)) {
    ui.painter().rect_filled(rect, 0.0, BACKGROUND.get());
    let inside = rect.shrink2(vec2(WIDE_GAP - 2.0, 0.0));
    let mut child = ui.new_child(UiBuilder::new().max_rect(inside).id_salt(name));
    ScrollArea::vertical()
        .id_salt(name)
        .auto_shrink(false)
        .scroll_bar_visibility(egui::scroll_area::ScrollBarVisibility::AlwaysHidden)
        .show(&mut child, |ui| {
            add(ui);
            ui.add_space(WIDE_GAP);
        });
}

/// The header of a column, which does not scroll; returns the area below it.
fn header(ui: &mut Ui, rect: Rect, add: impl FnOnce(&mut Ui)) -> Rect {
    ui.painter().rect_filled(rect, 0.0, BACKGROUND.get());
    let inside = rect.shrink2(vec2(WIDE_GAP - 2.0, 0.0));
    let mut child = ui.new_child(UiBuilder::new().max_rect(inside).id_salt("header"));
    add(&mut child);
    let below = (child.min_rect().bottom() + GAP).min(rect.bottom());
    Rect::from_min_max(pos2(rect.left(), below), rect.max)
}

/// The turns at landing and the progress of the playhead; one line where there is little room.
/// There, under [`Question::Jump`], they are shown in full with what scrolls below.
fn turns_header(ui: &mut Ui, session: &mut Session, layout: &Layout) {
    if layout.tall {
        turns_in_full(ui, session, layout.narrow);
    } else if session.question() != Question::Jump {
        turns::line(ui, session);
        beyond::under_turns(ui, session);
    }
}

fn turns_in_full(ui: &mut Ui, session: &mut Session, narrow: bool) {
    turns::card(ui, session, narrow);
    beyond::under_turns(ui, session);
    turns::progress(ui, session);
}

/// The answer to [`Question::Jump`]: the sliders, charts and readouts that the layout shows nowhere
/// else.
fn jump_answer(ui: &mut Ui, session: &mut Session, panels: &mut Panels, layout: &Layout) {
    if !layout.tall {
        turns_in_full(ui, session, layout.narrow);
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
    all_readouts(ui, session, panels, layout.narrow);
    folded_sections(ui, session, panels);
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
        let reset = Button::labelled("reset all", text("panel-reset-all"));
        if reset.show_in_row(ui).clicked() {
            session.reset_all();
        }
    }
    turns::note(ui, session);
    cautions::show(ui);
}

/// The charts, where they are not below the picture.
fn folded_charts(ui: &mut Ui, session: &mut Session, height: f32) {
    let title = text("panel-charts");
    fold(ui, "Charts over the flight", title, true, |ui| {
        let size = vec2(ui.available_width(), height);
        let (rect, _) = ui.allocate_exact_size(size, Sense::hover());
        charts::show(ui, session, rect);
    });
}

/// All readouts: folded at first on a narrow page.
fn all_readouts(ui: &mut Ui, session: &Session, panels: &mut Panels, narrow: bool) {
    let title = text("panel-readouts");
    fold(ui, "All readouts", title, !narrow, |ui| {
        readouts::show(ui, session, &mut panels.about);
    });
}

fn folded_sections(ui: &mut Ui, session: &mut Session, panels: &mut Panels) {
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
    ui.painter().rect_filled(rect, 0.0, BACKGROUND.get());
    let inside = rect.shrink2(vec2(WIDE_GAP - 2.0, GAP));
    let (row, rest) = inside.split_top_bottom_at_y(inside.top() + playback::HEIGHT);
    playback::show(ui, session, row);
    if layout.charts_under_stage() {
        charts::show(ui, session, rest);
    } else {
        charts::time_line(ui, session, rest);
    }
}

/// The view buttons in a corner of the picture: in a row, or in a column where a row would cover
/// the jumper. Returns their area, and the view that was clicked.
fn views(ui: &Ui, present: Option<View>, layout: &Layout) -> (Rect, Option<View>) {
    let views = [
        (View::Front, "view Front", text("panel-view-front")),
        (View::Above, "view Above", text("panel-view-above")),
        (View::AlongAxis, "view Axis", text("panel-view-axis")),
    ];
    let size = vec2(62.0, TOUCH_SIZE);
    let step = if layout.narrow {
        vec2(0.0, size.y + GAP)
    } else {
        vec2(size.x + GAP, 0.0)
    };
    let corner =
        layout.stage.right_top() + vec2(-WIDE_GAP - size.x, WIDE_GAP) - vec2(2.0 * step.x, 0.0);
    let all = Rect::from_min_size(corner, size + 2.0 * step);
    let mut clicked = None;
    for (i, (view, name, label)) in views.into_iter().enumerate() {
        let own = Rect::from_min_size(corner + i as f32 * step, size);
        let chosen = present == Some(view);
        let button = Button::labelled(name, label).chosen(chosen);
        if button.show(ui, own).clicked() {
            clicked = Some(view);
        }
    }
    (all, clicked)
}

/// The notice at the bottom of the picture; a click dismisses it.
fn notice(ui: &Ui, session: &mut Session, stage: Rect) {
    let Some(sentence) = session.notice() else {
        return;
    };
    let width = (stage.width() - 2.0 * WIDE_GAP).min(560.0);
    let galley = ui.painter().layout(
        sentence.to_owned(),
        style::text(17.0),
        TEXT.get(),
        width - 2.0 * WIDE_GAP,
    );
    let size = vec2(width, (galley.size().y + 2.0 * WIDE_GAP).max(TOUCH_SIZE));
    let rect = Rect::from_min_size(
        pos2(
            stage.center().x - 0.5 * width,
            stage.bottom() - size.y - WIDE_GAP,
        ),
        size,
    );
    let response = button_area(ui, "notice", rect, text("panel-dismiss"));
    ui.painter().rect(
        rect,
        CornerRadius::same(style::CORNER_RADIUS),
        CARD.get(),
        Stroke::new(2.0, ACCENT.get()),
        StrokeKind::Inside,
    );
    ui.painter().galley(
        pos2(
            rect.left() + WIDE_GAP,
            rect.center().y - 0.5 * galley.size().y,
        ),
        galley,
        TEXT.get(),
    );
    if response.clicked() {
        session.dismiss();
    }
}
