//! How a lesson that is made is tried and given to others: as a file, a link, or a QR code on the screen.

use std::sync::Arc;

use egui::{Color32, Mesh, Rect, Sense, Ui, pos2, vec2};

use crate::command::PageCommand;
use crate::controls::Button;
use crate::style::GAP;
use crate::text::{heading, small};
use turns_aloft_lesson::Lesson;
use turns_aloft_session::lesson_draft::LessonDraft;
use turns_aloft_session::{Saved, Session};
use turns_aloft_words::text;

/// Light modules around a code (ISO/IEC 18004).
const QUIET_MODULES: usize = 4;

/// Greatest side of a code on the screen.
const LARGEST: f32 = 560.0;

/// How a lesson is given to others.
#[derive(Default)]
pub struct Given {
    /// The page's address, without a fragment; none where nobody else can open it.
    pub address: Option<String>,
    /// The code of a lesson as it was then.
    code: Option<(Arc<Lesson>, Code)>,
}

/// A QR code: its rows, each module of which is dark or not. Without a row where the link is too long for one.
struct Code(Vec<Vec<bool>>);

impl Given {
    /// Takes the code that the page has had made of a lesson: rows of `#` and `.`.
    pub fn take_code(&mut self, lesson: Arc<Lesson>, rows: &str) {
        let row = |row: &str| row.bytes().map(|module| module == b'#').collect();
        self.code = Some((lesson, Code(rows.lines().map(row).collect())));
    }

    /// The code of a lesson, unless that has been changed since.
    fn code_of(&self, lesson: &Arc<Lesson>) -> Option<&Code> {
        let (of, code) = self.code.as_ref()?;
        Arc::ptr_eq(of, lesson).then_some(code)
    }
}

pub fn show(
    ui: &mut Ui,
    session: &mut Session,
    draft: &LessonDraft,
    given: &Given,
) -> Option<PageCommand> {
    let is_whole = draft.is_whole();
    let mut command = None;
    heading(ui, text("draft-give"));
    if !is_whole {
        small(ui, text("draft-unfinished"));
    }
    let try_it = Button::labelled("draft try", text("draft-try"));
    let try_it = try_it.filled(is_whole).enabled(is_whole);
    if try_it.show_in_row(ui).clicked() {
        session.try_lesson_draft();
    }
    ui.add_space(GAP);
    let save = Button::labelled("draft save", text("draft-save"));
    if save.show_in_row(ui).clicked() {
        command = Some(PageCommand::Save(Saved::LessonDraft));
    }
    if is_whole {
        ui.add_space(GAP);
        command = command.or(link(ui, session, draft, given));
    }
    ui.add_space(GAP);
    let to_jump = Button::labelled("draft to jump", text("draft-to-jump"));
    let about = text("draft-to-jump-about");
    if to_jump.about(about).show_in_row(ui).clicked() {
        session.leave_lesson_draft();
    }
    small(ui, about);
    ui.add_space(GAP);
    let discard = Button::labelled("draft discard", text("draft-discard"));
    if discard.show_in_row(ui).clicked() {
        session.discard_lesson_draft();
    }
    command
}

fn link(ui: &mut Ui, session: &Session, draft: &LessonDraft, given: &Given) -> Option<PageCommand> {
    if session.draft_link().is_none() {
        small(ui, text("draft-too-long-for-link"));
        return None;
    }
    let mut command = None;
    let copy = Button::labelled("draft link", text("draft-link"));
    if copy.show_in_row(ui).clicked() {
        command = Some(PageCommand::LessonLink);
    }
    if given.address.is_none() {
        return command;
    }
    ui.add_space(GAP);
    match given.code_of(draft.version()) {
        None => {
            let show = Button::labelled("draft code", text("draft-code"));
            if show.show_in_row(ui).clicked() {
                command = Some(PageCommand::LessonCode);
            }
        }
        Some(Code(rows)) if rows.is_empty() => small(ui, text("draft-too-long-for-code")),
        Some(code) => {
            small(ui, text("draft-code-about"));
            draw(ui, code);
        }
    }
    command
}

/// Dark on light by night as well: cameras expect that.
fn draw(ui: &mut Ui, code: &Code) {
    let width = ui.available_width();
    let side = width.min(LARGEST);
    let (room, _) = ui.allocate_exact_size(vec2(width, side), Sense::hover());
    let square = Rect::from_center_size(room.center(), vec2(side, side));
    ui.painter().rect_filled(square, 0.0, Color32::WHITE);
    let modules = code.0.len() + 2 * QUIET_MODULES;
    // Whole pixels, so that no module is blurred.
    let pixel = 1.0 / ui.ctx().pixels_per_point();
    let module = (side / modules as f32 / pixel).floor().max(1.0) * pixel;
    let corner = square.center() - 0.5 * module * vec2(modules as f32, modules as f32);
    let corner = pos2(
        (corner.x / pixel).round() * pixel,
        (corner.y / pixel).round() * pixel,
    );
    let mut mesh = Mesh::default();
    let place = |n: usize| (n + QUIET_MODULES) as f32 * module;
    for (row, modules) in code.0.iter().enumerate() {
        let dark = modules.iter().enumerate().filter(|(_, dark)| **dark);
        for (column, _) in dark {
            let at = corner + vec2(place(column), place(row));
            let own = Rect::from_min_size(at, vec2(module, module));
            mesh.add_colored_rect(own, Color32::BLACK);
        }
    }
    ui.painter().add(mesh);
}
