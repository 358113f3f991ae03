//! Shows all panels for one frame, laid out for the question chosen.

use std::borrow::Cow;

use egui::{Context, Id, LayerId, Popup, Rect, Ui, UiBuilder, vec2};

use crate::columns::{column, header};
use crate::command::PageCommand;
use crate::controls::{Button, NumberEdit, TextEdit, fold, touch_targets};
use crate::folded_charts::folded_charts;
use crate::layout::{self, Layout};
use crate::style::{BACKGROUND, GAP, WIDE_GAP};
use crate::turntable::AxisOnPicture;
use crate::{
    bar, begun_jump, beyond, cautions, charts, compare, folded_inputs, goal, greeting, hang_time,
    help, led_by_hand, lesson, map, measure, notice, number, picture_text, playback, questions,
    readouts, slow_flight, style, turn_try, turns, turntable, uncertainty, undo, views, weights,
    why,
};
use turns_aloft_appearance::view::View;
use turns_aloft_appearance::{Theme, chosen, shown};
use turns_aloft_scenario::parameter::{Parameter, Section};
use turns_aloft_session::{Question, Session};
use turns_aloft_words::text;

/// Time in which the figure makes room for a notice.
const EASING_S: f32 = 0.25;

/// The state of the panels between frames.
#[derive(Default)]
pub struct Panels {
    edit: NumberEdit,
    texts: TextEdit,
    /// The key of the number or readout that is explained.
    about: Option<Cow<'static, str>>,
    kept: compare::KeptJumps,
    /// Whether the device has a sheet of its own for sharing.
    pub has_share_sheet: bool,
    /// Where the picture has the axis of a turntable, if somebody is on one.
    pub axis: Option<AxisOnPicture>,
    /// Whether the help is shown, in place of all else.
    help: bool,
    /// The theme that egui's style was last set to.
    applied_theme: Option<Theme>,
}

/// The result of one frame of the panels.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Frame {
    /// The area that the panels leave to the 3D picture, in points.
    pub stage: Rect,
    /// The part of it that nothing lies on, where the figure is.
    pub figure: Rect,
    /// The part of the screen that a film is shown in; none while none is measured.
    pub film: Option<Rect>,
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
    let screen_px = ctx.viewport_rect().size() * ctx.zoom_factor();
    ctx.set_zoom_factor(layout::zoom(chosen().zoom(), screen_px));
    // egui applies a new zoom from the next frame on; this frame is drawn at the old one.
    touch_targets::clear(ctx.zoom_factor());
    let screen = ctx.viewport_rect();
    let layout = Layout::of(screen, session.question(), session.is_setting_up());
    let layout = if session.is_measuring() {
        layout.in_one_column()
    } else {
        layout
    };
    let mut ui = Ui::new(
        ctx.clone(),
        "panels".into(),
        UiBuilder::new()
            .layer_id(LayerId::background())
            .max_rect(screen),
    );
    if panels.help {
        help::show(&mut ui, &mut panels.help, screen);
        session.set_dragging(false);
        return Some(Frame {
            stage: layout.stage,
            figure: layout.stage,
            film: None,
            view: None,
            command: None,
        });
    }
    if session.is_measuring_in_film() {
        return Some(measure_in_film(&mut ui, panels, session));
    }
    session.watch_lesson();
    if session.lesson().is_some() {
        return Some(in_lesson(&mut ui, panels, session, view));
    }
    if session.is_on_turntable() {
        return Some(on_turntable(&mut ui, panels, session, view));
    }
    undo::keys(ctx, session);
    if session.is_flown_by_hand() {
        return Some(fly_by_hand(&mut ui, panels, session, view));
    }
    // In the order in which the screen is read, which keyboards and screen readers follow: the bar, the
    // answer and what it is made of, the picture and its time.
    let (sheet, help) = (panels.has_share_sheet, &mut panels.help);
    let of_bar = bar::show(&mut ui, session, &layout, sheet, help);
    if let Some(rect) = layout.controls {
        let rest = header(&mut ui, rect, |ui| turns_header(ui, session, &layout));
        column(&mut ui, "controls", rest, |ui| {
            controls(ui, session, panels, layout.narrow);
            folded_sections(ui, session, panels);
        });
    }
    let rest = header(&mut ui, layout.column, |ui| {
        // The turns of the jump at hand are not those that are measured.
        if session.is_measuring() {
            return;
        }
        if layout.controls.is_none() {
            turns_header(ui, session, &layout);
        }
        questions::show(ui, session);
    });
    let mut of_column = None;
    let name = if session.is_measuring() {
        "measure"
    } else {
        session.question().name()
    };
    column(&mut ui, name, rest, |ui| {
        if session.is_measuring() {
            of_column = measured(ui, session, panels);
            return;
        }
        if !layout.warnings_stay() {
            beyond::under_turns(ui, session);
        }
        match session.question() {
            Question::Jump => {
                of_column = turn_try::show(ui, session);
                jump_answer(ui, session, panels, &layout);
            }
            Question::Why => why::show(ui, session),
            Question::Goal => goal::show(ui, session),
            Question::Map => of_column = map::show(ui, session),
            Question::Compare => {
                let charts = !layout.charts_under_stage();
                of_column = compare::show(ui, session, &mut panels.kept, charts);
            }
        }
    });
    let (figure, clicked) = on_picture(&ui, session, view, &layout);
    timeline(&mut ui, session, &layout);
    session.set_dragging(ui.ctx().dragged_id().is_some());
    Some(Frame {
        stage: layout.stage,
        figure,
        film: None,
        view: clicked,
        command: of_bar.or(of_column),
    })
}

/// A film in place of the picture, what goes through it below, and what is to be marked.
fn measure_in_film(ui: &mut Ui, panels: &mut Panels, session: &mut Session) -> Frame {
    let layout = Layout::measuring(ui.ctx().viewport_rect());
    let (sheet, help) = (panels.has_share_sheet, &mut panels.help);
    let of_bar = bar::show(ui, session, &layout, sheet, help);
    let mut of_column = None;
    column(ui, "measure", layout.column, |ui| {
        of_column = measured(ui, session, panels);
    });
    ui.painter()
        .rect_filled(layout.stage, 0.0, BACKGROUND.get());
    if session.measuring().is_some_and(|it| it.film().is_none()) {
        measure::no_film(ui, layout.stage);
    }
    ui.painter()
        .rect_filled(layout.timeline, 0.0, BACKGROUND.get());
    let inside = layout.timeline.shrink2(vec2(WIDE_GAP - 2.0, GAP));
    measure::transport::show(ui, session, inside);
    // The page lays the film over the canvas: what opens there, or is said there, has to stay in sight.
    let notice = notice::show(ui, session, layout.stage, &[]);
    let bottom = notice.map_or(layout.stage.bottom(), |notice| notice.top() - GAP);
    let film = layout.stage.with_max_y(bottom);
    let covered = Popup::is_any_open(ui.ctx());
    session.set_dragging(ui.ctx().dragged_id().is_some());
    Frame {
        stage: layout.stage,
        figure: layout.stage,
        film: (!covered).then_some(film),
        view: None,
        command: of_bar.or(of_column),
    }
}

/// A jump that is flown by hand: its picture, how long it still is in the air, and what leads it.
fn fly_by_hand(
    ui: &mut Ui,
    panels: &mut Panels,
    session: &mut Session,
    view: Option<View>,
) -> Frame {
    let layout = Layout::by_hand(ui.ctx().viewport_rect());
    let (sheet, help) = (panels.has_share_sheet, &mut panels.help);
    let command = bar::show(ui, session, &layout, sheet, help);
    column(ui, "slow flight", layout.column, |ui| {
        slow_flight::show(ui, session, layout.column.height());
    });
    // What lies on the picture goes first.
    slow_flight::on_picture(ui, session, layout.stage);
    let (figure, view) = on_picture(ui, session, view, &layout);
    timeline(ui, session, &layout);
    session.set_dragging(ui.ctx().dragged_id().is_some());
    Frame {
        stage: layout.stage,
        figure,
        film: None,
        view,
        command,
    }
}

/// Somebody on a turntable: led in the picture or by sliders, with the run below as it writes itself.
fn on_turntable(
    ui: &mut Ui,
    panels: &mut Panels,
    session: &mut Session,
    view: Option<View>,
) -> Frame {
    let screen = ui.ctx().viewport_rect();
    let layout = Layout::of(screen, Question::Jump, false).in_one_column();
    let (sheet, help) = (panels.has_share_sheet, &mut panels.help);
    let of_bar = bar::show(ui, session, &layout, sheet, help);
    let rest = header(ui, layout.column, |ui| {
        turntable::header(ui, session, &layout)
    });
    let mut of_column = None;
    column(ui, "turntable", rest, |ui| {
        of_column = turntable::show(ui, session, &mut panels.edit, &layout);
    });
    let (views, clicked) = views::show(ui, view, layout.stage);
    let figure = turntable::on_picture(ui, session, layout.stage, views, panels.axis);
    let of_run = turntable::timeline(ui, session, &layout);
    session.set_dragging(ui.ctx().dragged_id().is_some());
    Frame {
        stage: layout.stage,
        figure,
        film: None,
        view: clicked,
        command: of_bar.or(of_column).or(of_run),
    }
}

/// A lesson: what the step in sight flies in the picture, where it flies something, and what is asked beside it.
fn in_lesson(ui: &mut Ui, panels: &mut Panels, session: &mut Session, view: Option<View>) -> Frame {
    let screen = ui.ctx().viewport_rect();
    let layout = Layout::of(screen, Question::Jump, false).in_one_column();
    let withheld = session.withholds_flight();
    let layout = if withheld {
        layout.without_timeline()
    } else {
        layout
    };
    let (sheet, help) = (panels.has_share_sheet, &mut panels.help);
    let of_bar = bar::show(ui, session, &layout, sheet, help);
    let Some(lesson) = session.lesson().cloned() else {
        // It has just been left.
        ui.ctx().request_repaint();
        return nothing_but(layout.stage, of_bar);
    };
    let has_picture = lesson::has_picture(&lesson);
    let room = if has_picture {
        layout.column
    } else {
        let all = layout.column.union(layout.stage).union(layout.timeline);
        ui.painter().rect_filled(all, 0.0, BACKGROUND.get());
        layout::readable(all)
    };
    let rest = header(ui, room, |ui| lesson::header(ui, &lesson));
    let mut of_column = None;
    // Each stage begins at its top.
    let name = format!("lesson {:?}", lesson::place(&lesson));
    column(ui, &name, rest, |ui| {
        let mut edits = lesson::Edits {
            numbers: &mut panels.edit,
            texts: &mut panels.texts,
            about: &mut panels.about,
        };
        of_column = lesson::show(ui, session, &lesson, &mut edits);
    });
    let command = of_bar.or(of_column);
    if !has_picture {
        session.set_dragging(ui.ctx().dragged_id().is_some());
        notice::show(ui, session, layout.stage, &[]);
        return nothing_but(layout.stage, command);
    }
    let (figure, view, of_run) = if session.is_on_turntable() {
        let (views, clicked) = views::show(ui, view, layout.stage);
        let figure = turntable::on_picture(ui, session, layout.stage, views, panels.axis);
        let of_run = (!withheld).then(|| turntable::timeline(ui, session, &layout));
        (figure, clicked, of_run.flatten())
    } else {
        let (figure, clicked) = on_picture(ui, session, view, &layout);
        if !withheld {
            timeline(ui, session, &layout);
        }
        (figure, clicked, None)
    };
    if withheld {
        lesson::withheld(ui, layout.timeline);
    }
    session.set_dragging(ui.ctx().dragged_id().is_some());
    Frame {
        stage: layout.stage,
        figure,
        film: None,
        view,
        command: command.or(of_run),
    }
}

/// A frame with nothing in the picture.
const fn nothing_but(stage: Rect, command: Option<PageCommand>) -> Frame {
    Frame {
        stage,
        figure: stage,
        film: None,
        view: None,
        command,
    }
}

/// The column of a real attempt, with the jump that it was meant to be and the jumper.
fn measured(ui: &mut Ui, session: &mut Session, panels: &mut Panels) -> Option<PageCommand> {
    let command = measure::show(ui, session, &mut panels.edit);
    jump_and_jumper(ui, session, panels);
    command.or(measure::end(ui, session))
}

/// What lies on the picture. Returns the part of it that stays free, and the view that was clicked.
fn on_picture(
    ui: &Ui,
    session: &mut Session,
    view: Option<View>,
    layout: &Layout,
) -> (Rect, Option<View>) {
    let stage = layout.stage;
    let (views, clicked) = views::show(ui, view, stage);
    let mut over = vec![views];
    if !layout.undo_in_bar() {
        over.push(undo::on_stage(ui, session, stage));
    }
    let notice = notice::show(ui, session, stage, &over);
    let strip = notice.or_else(|| greeting::show(ui, session, stage, &over));
    over.push(picture_text::landing(ui, session, stage, strip, &over));
    over.extend(strip);
    let figure = layout::figure_area(stage, &over);
    // A notice moves the figure gradually.
    let eased = |name: &str, to: f32| {
        let id = Id::new(("figure", name));
        ui.ctx().animate_value_with_time(id, to, EASING_S)
    };
    let corners = [figure.min - stage.min, figure.max - stage.max];
    let [from, to] = [("min", corners[0]), ("max", corners[1])].map(|(name, at)| {
        vec2(
            eased(&format!("{name} x"), at.x),
            eased(&format!("{name} y"), at.y),
        )
    });
    let figure = Rect::from_min_max(stage.min + from, stage.max + to);
    (figure, clicked)
}

/// The turns at landing, and the progress of the playhead where there is room for it.
fn turns_header(ui: &mut Ui, session: &mut Session, layout: &Layout) {
    if layout.tall {
        turns::card(ui, session, layout.narrow);
        beyond::under_turns(ui, session);
        turns::progress(ui, session);
    } else {
        turns::line(ui, session);
        if layout.warnings_stay() {
            beyond::under_turns(ui, session);
        }
    }
}

/// The answer to [`Question::Jump`]: the sliders, charts and readouts that the layout shows nowhere
/// else.
fn jump_answer(ui: &mut Ui, session: &mut Session, panels: &mut Panels, layout: &Layout) {
    if !layout.tall && !session.is_setting_up() {
        turns::progress(ui, session);
    }
    if session.range().is_some() {
        let title = text("panel-uncertainty-inputs");
        fold(ui, "Uncertainty of the inputs", title, false, |ui| {
            uncertainty::inputs(ui, session);
        });
    }
    if session.is_setting_up() {
        let Panels { edit, texts, .. } = panels;
        begun_jump::show(ui, session, edit, texts, layout.narrow);
    }
    if layout.controls.is_some() {
        readouts::show(ui, session, &mut panels.about);
        return;
    }
    controls(ui, session, panels, layout.narrow);
    folded_sections(ui, session, panels);
    if !layout.charts_under_stage() {
        folded_charts(ui, session);
    }
    all_readouts(ui, session, panels, layout.narrow);
}

fn controls(ui: &mut Ui, session: &mut Session, panels: &mut Panels, narrow: bool) {
    let setting_up = session.is_setting_up();
    let numbers: Vec<Parameter> = if setting_up {
        begun_jump::sliders().collect()
    } else {
        // The weights last, because of what is said below them.
        (Parameter::of_section(Section::Main))
            .filter(|parameter| *parameter != Parameter::HandMass)
            .chain([Parameter::HandMass])
            .collect()
    };
    led_by_hand::show(ui, session);
    for parameter in numbers {
        if !session.scenario().has_part(parameter) {
            continue;
        }
        let marks = session.marks(parameter);
        number::show(
            ui,
            session,
            &mut panels.edit,
            &mut panels.about,
            parameter,
            marks.as_ref(),
        );
        match parameter {
            Parameter::JumpHeight => {
                hang_time::show(ui, session, &mut panels.edit, &mut panels.about);
            }
            Parameter::HandMass => {
                folded_inputs::hands_keep(ui, session);
                weights::held(ui, session);
            }
            _ => (),
        }
    }
    number::legend(ui);
    if setting_up {
        begun_jump::finish(ui, session, &mut panels.texts, narrow);
    } else {
        // Always there, so that the first change moves nothing.
        let reset = Button::labelled("reset all", text("panel-reset-all"));
        let reset = reset.enabled(session.inputs_differ());
        if reset.show_in_row(ui).clicked() {
            session.reset_all();
        }
        ui.add_space(GAP);
        let by_hand = Button::labelled("fly by hand", text("slow-fly-by-hand"));
        if by_hand.show_in_row(ui).clicked() {
            session.fly_by_hand();
        }
    }
    turns::note(ui, session);
    cautions::show(ui);
}

/// All readouts: folded at first on a narrow page.
fn all_readouts(ui: &mut Ui, session: &Session, panels: &mut Panels, narrow: bool) {
    let title = text("panel-readouts");
    fold(ui, "All readouts", title, !narrow, |ui| {
        readouts::show(ui, session, &mut panels.about);
    });
}

fn jump_and_jumper(ui: &mut Ui, session: &mut Session, panels: &mut Panels) {
    let Panels {
        edit, texts, about, ..
    } = panels;
    fold(ui, "Which jump", text("panel-which-jump"), false, |ui| {
        folded_inputs::named_jump(ui, session, texts);
    });
    fold(ui, "The jumper", text("panel-the-jumper"), false, |ui| {
        folded_inputs::jumper(ui, session, edit, about);
    });
}

fn folded_sections(ui: &mut Ui, session: &mut Session, panels: &mut Panels) {
    // While a jump is set up this is asked in a form of its own.
    if !session.is_setting_up() {
        jump_and_jumper(ui, session, panels);
    }
    let Panels { edit, about, .. } = panels;
    let title = text("panel-motion");
    fold(ui, "Take-off, closing, opening", title, false, |ui| {
        folded_inputs::motion(ui, session, edit, about);
    });
}

fn timeline(ui: &mut Ui, session: &mut Session, layout: &Layout) {
    let rect = layout.timeline;
    if !rect.is_positive() {
        return;
    }
    ui.painter().rect_filled(rect, 0.0, BACKGROUND.get());
    let inside = rect.shrink2(vec2(WIDE_GAP - 2.0, GAP));
    if slow_flight::time_left(ui, session, inside) {
        return;
    }
    let (row, rest) = inside.split_top_bottom_at_y(inside.top() + playback::HEIGHT);
    let has_charts = layout.charts_under_stage();
    let row = if has_charts {
        charts::choice_button(ui, session, row, rest)
    } else {
        row
    };
    playback::show(ui, session, row);
    if has_charts {
        charts::show(ui, session, rest);
    } else {
        charts::time_line(ui, session, rest);
    }
}
