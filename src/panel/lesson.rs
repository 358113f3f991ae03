//! A lesson on the page: what introduces it, and its steps: predict, fly, observe, explain.

mod answer;
mod curve;
mod edits;
mod introduction;
mod option;
mod picture;
mod stages;

use egui::{Align2, Rect, RichText, Ui, pos2};

use crate::command::PageCommand;
use crate::style::{self, ACCENT, BACKGROUND, GAP, LINE, TEXT, WEAK_TEXT};
use crate::text::small;
use turns_aloft_lesson::{Setup, Stage};
use turns_aloft_session::Session;
use turns_aloft_session::lesson::{LessonInSight, place as place_text, stage};
use turns_aloft_words::text;

pub use crate::lesson::edits::Edits;

/// Where a lesson is: the step and its stage; none while it is introduced.
pub fn place(lesson: &LessonInSight) -> Option<(usize, Stage)> {
    let progress = lesson.progress();
    lesson.is_begun().then(|| (progress.at(), progress.stage()))
}

/// Whether the step in sight has something in the picture.
pub fn has_picture(lesson: &LessonInSight) -> bool {
    let setup = lesson.step().setup.as_ref();
    lesson.is_begun() && matches!(setup, Some(Setup::Jump(_) | Setup::Turntable(_)))
}

/// The column; what needs the browser is returned.
pub fn show(
    ui: &mut Ui,
    session: &mut Session,
    lesson: &LessonInSight,
    edits: &mut Edits,
) -> Option<PageCommand> {
    if lesson.is_begun() {
        stages::show(ui, session, lesson, edits)
    } else {
        introduction::show(ui, session, lesson, edits)
    }
}

/// What stays in sight above it: which step of which lesson, and what it is at.
pub fn header(ui: &mut Ui, lesson: &LessonInSight) {
    ui.add_space(GAP);
    if !lesson.is_begun() {
        return;
    }
    small(ui, lesson.lesson().title.text());
    let title = format!("{}: {}", place_text(lesson), lesson.step().title.text());
    ui.label(RichText::new(title).font(style::bold(20.0)));
    let width = ui.available_width();
    let (row, _) = ui.allocate_exact_size(egui::vec2(width, 26.0), egui::Sense::hover());
    let each = (width - 3.0 * GAP) / 4.0;
    let now = lesson.progress().stage();
    for (i, one) in Stage::ALL.into_iter().enumerate() {
        let left = row.left() + i as f32 * (each + GAP);
        let own = Rect::from_min_max(pos2(left, row.top()), pos2(left + each, row.bottom()));
        let (bar, colour) = match one {
            one if one == now => (ACCENT, TEXT),
            one if one < now => (ACCENT, WEAK_TEXT),
            _ => (LINE, WEAK_TEXT),
        };
        let line = own.with_min_y(own.bottom() - 4.0);
        ui.painter().rect_filled(line, 2.0, bar.get());
        let size = style::fitting(ui.painter(), stage(one), 15.0, each);
        ui.painter().text(
            own.left_top(),
            Align2::LEFT_TOP,
            stage(one),
            style::text(size),
            colour.get(),
        );
    }
    ui.add_space(GAP);
}

/// In place of the time line, as long as nothing may be flown.
pub fn withheld(ui: &Ui, rect: Rect) {
    ui.painter().rect_filled(rect, 0.0, BACKGROUND.get());
    let said = text("lesson-withheld");
    let room = rect.width() - 4.0 * GAP;
    let font = style::text(17.0);
    let galley = (ui.painter()).layout(said.to_owned(), font, WEAK_TEXT.get(), room);
    let at = rect.center() - 0.5 * galley.size();
    ui.painter().galley(at, galley, WEAK_TEXT.get());
}
