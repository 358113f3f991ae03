//! The name of the jump at hand, which opens the menu of jumps: a new one, the kept ones, and the
//! starting points.

use egui::text::LayoutJob;
use egui::{Rect, Response, RichText, Shape, Stroke, Ui, pos2, vec2};

use crate::command::PageCommand;
use crate::controls::{Button, menu, menu_item};
use crate::menu_area;
use crate::style::{self, GAP, TEXT, WEAK_TEXT};
use turns_aloft_describe::Label;
use turns_aloft_describe::lesson::title as lesson_title;
use turns_aloft_lesson::names::NAMES;
use turns_aloft_scenario::starts;
use turns_aloft_session::Session;
use turns_aloft_words::{say, text};

/// Room for the sign at the end that a menu opens.
const TIP: f32 = 28.0;

/// Shows the name; `open`: whether files are opened from the menu, too. Returns what the page is to do.
pub fn show(ui: &Ui, session: &mut Session, rect: Rect, open: bool) -> Option<PageCommand> {
    let name = session.shown_name().into_owned();
    let accessible_name = say!("panel-jumps", name = name.as_str());
    let response = Button::drawn("starts", &accessible_name, |_, _, _| ()).show(ui, rect);
    let shown = if session.is_changed_version() {
        say!("panel-changed", name = name)
    } else {
        name
    };
    written(ui, rect, shown);
    let mut command = None;
    let popup = menu(&response).width(menu_area::WIDTH).gap(4.0);
    popup.show(|ui| command = items(ui, session, &response, open));
    command
}

/// The name, in one line or two.
fn written(ui: &Ui, rect: Rect, name: String) {
    let room = Rect::from_min_max(rect.min, rect.max - vec2(TIP, 0.0));
    let painter = ui.painter().with_clip_rect(room);
    let width = room.width() - 14.0;
    let in_two_rows = |size| {
        let mut job = LayoutJob::simple(name.clone(), style::bold(size), TEXT.get(), width);
        job.wrap.max_rows = 2;
        painter.layout_job(job)
    };
    let size = style::fitting(ui.painter(), &name, 17.0, width);
    let mut shown = in_two_rows(size);
    let least = style::least_size(ui.ctx());
    if shown.elided && size > least {
        shown = in_two_rows(least);
    }
    let at = rect.left_center() + vec2(12.0, -0.5 * shown.size().y);
    painter.galley(at, shown, TEXT.get());
    let tip = pos2(rect.right() - 16.0, rect.center().y + 3.0);
    ui.painter().add(Shape::convex_polygon(
        vec![tip, tip + vec2(-6.0, -8.0), tip + vec2(6.0, -8.0)],
        WEAK_TEXT.get(),
        Stroke::NONE,
    ));
}

fn items(ui: &mut Ui, session: &mut Session, under: &Response, open: bool) -> Option<PageCommand> {
    let mut command = None;
    let width = menu_area::WIDTH - 12.0;
    menu_area::as_high_as_fits(ui, under, |ui| {
        if menu_item(ui, "new jump", text("panel-new-jump"), width, false).clicked() {
            session.begin_jump();
        }
        if open {
            let item = menu_item(ui, "Open", text("panel-open-file"), width, false);
            command = item.clicked().then_some(PageCommand::Open);
        }
        heading(ui, text("measure-menu"));
        if menu_item(ui, "measure watch", text("measure-by-watch"), width, false).clicked() {
            session.measure_by_stop_watch();
        }
        if menu_item(ui, "measure film", text("measure-in-film"), width, false).clicked() {
            session.measure_in_film();
        }
        if menu_item(
            ui,
            "measure sensor",
            text("measure-by-sensor"),
            width,
            false,
        )
        .clicked()
        {
            command = Some(PageCommand::Open);
        }
        heading(ui, text("in-your-hands-menu"));
        let fly = menu_item(ui, "slow flight", text("slow-fly-by-hand"), width, false);
        if fly.clicked() {
            session.fly_by_hand();
        }
        if menu_item(ui, "turntable", text("turntable-enter"), width, false).clicked() {
            session.begin_turntable();
        }
        if menu_item(ui, "five-turn try", text("try-title"), width, false).clicked() {
            session.begin_try();
        }
        heading(ui, text("lessons"));
        for (place, name) in NAMES.into_iter().enumerate() {
            let label = lesson_title(name);
            if menu_item(ui, &format!("lesson:{name}"), label, width, false).clicked() {
                command = Some(PageCommand::Lesson(place));
            }
        }
        kept_jumps(ui, session, width);
        heading(ui, text("panel-starts-invented"));
        for start in starts::all() {
            let name = format!("start:{}", start.name);
            if menu_item(ui, &name, start.label(), width, false).clicked() {
                session.open(start.scenario.clone());
            }
        }
    });
    command
}

fn kept_jumps(ui: &mut Ui, session: &mut Session, width: f32) {
    let kept = session.library().collection().clone();
    if kept.entries().is_empty() {
        return;
    }
    heading(ui, text("panel-kept-jumps"));
    for (i, entry) in kept.entries().iter().enumerate() {
        let name = format!("start kept:{}", i + 1);
        if menu_item(ui, &name, &entry.scenario.name, width, false).clicked() {
            session.open_kept(entry.id);
        }
    }
}

fn heading(ui: &mut Ui, title: &str) {
    ui.add_space(GAP);
    ui.label(RichText::new(title).color(WEAK_TEXT.get()));
}
