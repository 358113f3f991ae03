//! The kept jumps: a row each, the chosen one with what can be done to it.

use egui::text::{CCursor, CCursorRange};
use egui::text_edit::TextEditState;
use egui::{Key as Keyboard, Rect, TextEdit, Ui, UiBuilder, pos2, vec2};

use super::super::bar::PageCommand;
use super::super::parts::small;
use super::super::style::{self, INK, NEAR, TOUCH};
use super::super::{accessibility, targets, transport};
use super::{allocate, attempt, lay, write};
use crate::say;
use crate::session::Session;
use crate::session::collection::{Entry, Id};
use crate::session::compare::{CameTo, Which};
use crate::session::readings::mark;
use crate::words::{decimal, text};

/// What is open in the list.
#[derive(Debug, Default)]
pub struct Unfolded {
    /// The jump that is getting another name.
    naming: Option<Naming>,
}

#[derive(Debug)]
struct Naming {
    id: Id,
    text: String,
    /// The field has just opened and still has to take the keyboard.
    fresh: bool,
}

pub fn show(ui: &mut Ui, session: &mut Session, unfolded: &mut Unfolded) -> Option<PageCommand> {
    let rect = allocate(ui, TOUCH);
    if transport::labelled(ui, "keep", text("panel-keep"), rect, false).clicked() {
        session.keep_jump();
    }
    let entries = session.library().collection().entries().to_vec();
    if entries.is_empty() {
        small(ui, text("panel-kept-none"));
    }
    let chosen = session.reference().map(|reference| reference.which.clone());
    let last = entries.len().saturating_sub(1);
    for (i, entry) in entries.iter().enumerate() {
        let which = Which::Kept(entry.id);
        let chosen = chosen.as_ref() == Some(&which);
        let came_to = session.came_to(entry);
        let target = format!("kept:{}", i + 1);
        let name = &entry.scenario.name;
        let is_beyond = came_to.is_some_and(|came_to| came_to.is_beyond_seen);
        let came_to = came_to_text(came_to);
        if attempt(ui, &target, name, &came_to, is_beyond, chosen).clicked() {
            unfolded.naming = None;
            lay(session, which, chosen);
        }
        if chosen {
            if unfolded
                .naming
                .as_ref()
                .is_some_and(|naming| naming.id == entry.id)
            {
                name_field(ui, session, unfolded);
            } else {
                row_commands(ui, session, unfolded, entry, [i == 0, i == last]);
            }
        }
    }
    undo(ui, session);
    if entries.is_empty() {
        return None;
    }
    let rect = allocate(ui, TOUCH);
    let save = transport::labelled(ui, "save all", text("panel-save-all"), rect, false);
    small(ui, text("panel-save-all-about"));
    save.clicked().then_some(PageCommand::SaveAll)
}

/// Short, as behind a name in a row.
fn came_to_text(came_to: Option<CameTo>) -> String {
    let Some(came_to) = came_to else {
        return "…".to_owned();
    };
    format!("{} {}", decimal(came_to.turns, 2), mark(came_to.owed))
        .trim_end()
        .to_owned()
}

#[derive(Clone, Copy)]
enum RowCommand {
    Open,
    Rename,
    Delete,
    Up,
    Down,
}

impl RowCommand {
    /// Of its button, in every language.
    const fn name(self) -> &'static str {
        match self {
            Self::Open => "kept Open",
            Self::Rename => "kept Rename",
            Self::Delete => "kept Delete",
            Self::Up => "kept Up",
            Self::Down => "kept Down",
        }
    }

    fn label(self) -> &'static str {
        match self {
            Self::Open => text("panel-kept-open"),
            Self::Rename => text("panel-kept-rename"),
            Self::Delete => text("panel-kept-delete"),
            Self::Up => text("panel-kept-up"),
            Self::Down => text("panel-kept-down"),
        }
    }

    /// What it does to the jump of that name.
    fn said(self, name: &str) -> String {
        match self {
            Self::Open => say!("panel-kept-open-it", name = name),
            Self::Rename => say!("panel-kept-rename-it", name = name),
            Self::Delete => say!("panel-kept-delete-it", name = name),
            Self::Up => say!("panel-kept-up-it", name = name),
            Self::Down => say!("panel-kept-down-it", name = name),
        }
    }
}

/// What can be done to a kept jump; the first does not go up, the last not down.
fn row_commands(
    ui: &mut Ui,
    session: &mut Session,
    unfolded: &mut Unfolded,
    entry: &Entry,
    at_end: [bool; 2],
) {
    const ROWS: [&[RowCommand]; 2] = [
        &[RowCommand::Open, RowCommand::Rename, RowCommand::Delete],
        &[RowCommand::Up, RowCommand::Down],
    ];
    let name = &entry.scenario.name;
    // One alone goes nowhere.
    let rows = if at_end == [true; 2] { 1 } else { ROWS.len() };
    for row in &ROWS[..rows] {
        let rect = allocate(ui, TOUCH);
        let width = (rect.width() + NEAR) / row.len() as f32 - NEAR;
        for (i, &command) in row.iter().enumerate() {
            let left = rect.left() + (width + NEAR) * i as f32;
            let own = Rect::from_min_size(pos2(left, rect.top()), vec2(width, TOUCH));
            let idle = match command {
                RowCommand::Up => at_end[0],
                RowCommand::Down => at_end[1],
                _ => false,
            };
            if idle {
                continue;
            }
            let response = transport::labelled(ui, command.name(), command.label(), own, false);
            accessibility::button(&response, &command.said(name));
            if response.clicked() {
                do_it(session, unfolded, entry, command);
            }
        }
    }
}

fn do_it(session: &mut Session, unfolded: &mut Unfolded, entry: &Entry, command: RowCommand) {
    match command {
        RowCommand::Open => session.open_kept(entry.id),
        RowCommand::Rename => {
            unfolded.naming = Some(Naming {
                id: entry.id,
                text: entry.scenario.name.clone(),
                fresh: true,
            });
        }
        RowCommand::Delete => session.delete_kept(entry.id),
        RowCommand::Up => session.move_kept_up(entry.id),
        RowCommand::Down => session.move_kept_down(entry.id),
    }
}

/// The field for another name; left, the name is taken, with Escape it is not.
fn name_field(ui: &mut Ui, session: &mut Session, unfolded: &mut Unfolded) {
    let Some(naming) = &mut unfolded.naming else {
        return;
    };
    let rect = allocate(ui, TOUCH);
    targets::note("kept name", rect);
    let id = ui.id().with("kept name");
    if std::mem::take(&mut naming.fresh) {
        // All of the old name is marked: the first letter typed replaces it.
        let all = CCursorRange::two(CCursor::new(0), CCursor::new(naming.text.chars().count()));
        let mut state = TextEditState::default();
        state.cursor.set_char_range(Some(all));
        state.store(ui.ctx(), id);
        ui.memory_mut(|memory| memory.request_focus(id));
    }
    let field = ui.new_child(UiBuilder::new().max_rect(rect)).add_sized(
        rect.size(),
        TextEdit::singleline(&mut naming.text)
            .id(id)
            .font(style::text(17.0))
            .margin(vec2(10.0, 10.0)),
    );
    let typed = accessibility::typed_into(ui, &field);
    accessibility::name_field(ui, &field, text("panel-kept-name"), &naming.text);
    if field.lost_focus() || typed.is_some() {
        let given_up = ui.input(|input| input.key_pressed(Keyboard::Escape));
        if let Some(naming) = unfolded.naming.take()
            && !given_up
        {
            session.rename_kept(naming.id, typed.as_ref().unwrap_or(&naming.text));
        }
    }
}

/// Brings back what was deleted last.
fn undo(ui: &mut Ui, session: &mut Session) {
    const BUTTON: f32 = 76.0;
    let Some(name) = session.library().collection().last_deleted() else {
        return;
    };
    let said = say!("panel-kept-deleted", name = name);
    let rect = allocate(ui, TOUCH);
    let (words, button) = rect.split_left_right_at_x(rect.right() - BUTTON);
    let words = Rect::from_min_max(words.min, pos2(words.right() - NEAR, words.bottom()));
    write(ui, words, &said, style::text(16.0), INK.get());
    let response = transport::labelled(ui, "kept Undo", text("panel-kept-undo"), button, false);
    accessibility::button(&response, &say!("panel-kept-undo-it", name = name));
    if response.clicked() {
        session.bring_back_kept();
    }
}
