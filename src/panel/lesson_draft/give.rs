//! How a lesson that is made is tried and given to others: as a file, a link, or a QR code on the screen.

use std::sync::Arc;

use egui::{Color32, Mesh, Rect, Sense, Ui, pos2, vec2};

use crate::command::PageCommand;
use crate::controls::{Button, fold};
use crate::style::GAP;
use crate::text::{heading, small};
use turns_aloft_lesson::Lesson;
use turns_aloft_picture::qr::{Code, QUIET_MODULES, Where};
use turns_aloft_session::lesson_draft::LessonDraft;
use turns_aloft_session::{Saved, Session};
use turns_aloft_words::text;

/// Most modules on a side: a camera reads so many from a screen that is held before it. Our choice.
const MOST_MODULES: usize = 137;

/// Greatest side of a code on the screen.
const LARGEST: f32 = 560.0;

/// How a lesson is given to others.
#[derive(Default)]
pub struct Given {
    /// The page's address, without a fragment; none where nobody else can open it.
    pub address: Option<String>,
    /// The code of the draft as it was when it was last shown.
    code: Option<(Arc<Lesson>, Option<Code>)>,
}

pub fn show(
    ui: &mut Ui,
    session: &mut Session,
    draft: &LessonDraft,
    given: &mut Given,
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

fn link(
    ui: &mut Ui,
    session: &Session,
    draft: &LessonDraft,
    given: &mut Given,
) -> Option<PageCommand> {
    let Some(link) = session.draft_link() else {
        small(ui, text("draft-too-long-for-link"));
        return None;
    };
    let copy = Button::labelled("draft link", text("draft-link"));
    let copied = copy.show_in_row(ui).clicked();
    if let Some(address) = &given.address {
        ui.add_space(GAP);
        let (address, kept) = (format!("{address}#{link}"), &mut given.code);
        fold(
            ui,
            "Lesson code",
            text("draft-code"),
            false,
            |ui| match code(kept, &address, draft.version()) {
                Some(code) => {
                    small(ui, text("draft-code-about"));
                    draw(ui, code);
                }
                None => small(ui, text("draft-too-long-for-code")),
            },
        );
    }
    copied.then_some(PageCommand::LessonLink)
}

/// The code of an address, made again where the lesson has been changed.
fn code<'a>(
    kept: &'a mut Option<(Arc<Lesson>, Option<Code>)>,
    address: &str,
    lesson: &Arc<Lesson>,
) -> Option<&'a Code> {
    if !(kept.as_ref()).is_some_and(|(of, _)| Arc::ptr_eq(of, lesson)) {
        let code = Code::of(address, Where::OnScreen, MOST_MODULES);
        *kept = Some((Arc::clone(lesson), code));
    }
    kept.as_ref()?.1.as_ref()
}

/// Dark on light by night as well: cameras expect that.
fn draw(ui: &mut Ui, code: &Code) {
    let width = ui.available_width();
    let side = width.min(LARGEST);
    let (room, _) = ui.allocate_exact_size(vec2(width, side), Sense::hover());
    let square = Rect::from_center_size(room.center(), vec2(side, side));
    ui.painter().rect_filled(square, 0.0, Color32::WHITE);
    let modules = code.modules() + 2 * QUIET_MODULES;
    // Whole pixels, so that no module is blurred.
    let pixel = 1.0 / ui.ctx().pixels_per_point();
    let module = (side / modules as f32 / pixel).floor().max(1.0) * pixel;
    let corner = square.center() - 0.5 * module * vec2(modules as f32, modules as f32);
    let corner = pos2(
        (corner.x / pixel).round() * pixel,
        (corner.y / pixel).round() * pixel,
    );
    let mut mesh = Mesh::default();
    for at in code.dark() {
        let [x, y] = at.map(|n| (n + QUIET_MODULES) as f32 * module);
        let own = Rect::from_min_size(corner + vec2(x, y), vec2(module, module));
        mesh.add_colored_rect(own, Color32::BLACK);
    }
    ui.painter().add(mesh);
}
