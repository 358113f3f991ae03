//! The list of kept jumps; the chosen one has buttons to open, rename, delete and move it.

use egui::{Rect, Ui, pos2, vec2};
use turns_aloft_session::Saved;

use crate::command::PageCommand;
use crate::compare::attempt::{allocate, attempt_button, elided, toggle_reference};
use crate::controls::{Button, Edit, Edited, text_field};
use crate::style::{self, GAP, TEXT, TOUCH_SIZE};
use crate::text::small;
use turns_aloft_describe::call::mark;
use turns_aloft_describe::turns::turns_text;
use turns_aloft_scenario::collection::{Entry, Id};
use turns_aloft_session::Session;
use turns_aloft_session::compare::{KeptResult, Which};
use turns_aloft_words::{say, text};

/// The state of the list.
#[derive(Debug, Default)]
pub struct KeptJumps {
    /// The jump that is being renamed.
    renamed: Option<(Id, Edit)>,
}

pub fn show(ui: &mut Ui, session: &mut Session, kept_jumps: &mut KeptJumps) -> Option<PageCommand> {
    let entries = session.library().collection().entries().to_vec();
    if entries.is_empty() {
        small(ui, text("panel-kept-none"));
    }
    let chosen = session.reference().map(|reference| reference.which.clone());
    let last = entries.len().saturating_sub(1);
    for (i, entry) in entries.iter().enumerate() {
        let which = Which::Kept(entry.id);
        let chosen = chosen.as_ref() == Some(&which);
        let outcome = session.kept_result(entry);
        let target = format!("kept:{}", i + 1);
        let name = &entry.scenario.name;
        let is_beyond = outcome.is_some_and(|outcome| outcome.is_beyond_seen);
        let outcome = result_text(outcome);
        if attempt_button(ui, &target, name, &outcome, is_beyond, chosen).clicked() {
            kept_jumps.renamed = None;
            toggle_reference(session, which, chosen);
        }
        if chosen {
            if matches!(kept_jumps.renamed, Some((id, _)) if id == entry.id) {
                name_field(ui, session, kept_jumps);
            } else {
                row_commands(ui, session, kept_jumps, entry, [i == 0, i == last]);
            }
        }
    }
    undo(ui, session);
    if entries.is_empty() {
        return None;
    }
    let save = Button::labelled("save all", text("panel-save-all")).show_in_row(ui);
    small(ui, text("panel-save-all-about"));
    save.clicked()
        .then_some(PageCommand::Save(Saved::KeptJumps))
}

/// Turns and call, short enough for a row.
fn result_text(outcome: Option<KeptResult>) -> String {
    let Some(outcome) = outcome else {
        return "…".to_owned();
    };
    format!(
        "{} {}",
        turns_text(outcome.hundredths()),
        mark(outcome.owed)
    )
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
    /// Name of its button.
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

    /// Accessible name of its button, with the name of the jump.
    fn accessible_name(self, name: &str) -> String {
        match self {
            Self::Open => say!("panel-kept-open-it", name = name),
            Self::Rename => say!("panel-kept-rename-it", name = name),
            Self::Delete => say!("panel-kept-delete-it", name = name),
            Self::Up => say!("panel-kept-up-it", name = name),
            Self::Down => say!("panel-kept-down-it", name = name),
        }
    }
}

/// The buttons of a kept jump; the first cannot move up, the last not down.
fn row_commands(
    ui: &mut Ui,
    session: &mut Session,
    kept_jumps: &mut KeptJumps,
    entry: &Entry,
    at_end: [bool; 2],
) {
    const ROWS: [&[RowCommand]; 2] = [
        &[RowCommand::Open, RowCommand::Rename, RowCommand::Delete],
        &[RowCommand::Up, RowCommand::Down],
    ];
    let name = &entry.scenario.name;
    // A single jump cannot be moved.
    let rows = if at_end == [true; 2] { 1 } else { ROWS.len() };
    for row in &ROWS[..rows] {
        let rect = allocate(ui, TOUCH_SIZE);
        let width = (rect.width() + GAP) / row.len() as f32 - GAP;
        for (i, &command) in row.iter().enumerate() {
            let left = rect.left() + (width + GAP) * i as f32;
            let own = Rect::from_min_size(pos2(left, rect.top()), vec2(width, TOUCH_SIZE));
            let disabled = match command {
                RowCommand::Up => at_end[0],
                RowCommand::Down => at_end[1],
                _ => false,
            };
            if disabled {
                continue;
            }
            let accessible_name = command.accessible_name(name);
            let button =
                Button::labelled(command.name(), command.label()).accessible_name(&accessible_name);
            if button.show(ui, own).clicked() {
                run(session, kept_jumps, entry, command);
            }
        }
    }
}

fn run(session: &mut Session, kept_jumps: &mut KeptJumps, entry: &Entry, command: RowCommand) {
    match command {
        RowCommand::Open => session.open_kept(entry.id),
        RowCommand::Rename => {
            let edit = Edit::of(entry.scenario.name.clone());
            kept_jumps.renamed = Some((entry.id, edit));
        }
        RowCommand::Delete => session.delete_kept(entry.id),
        RowCommand::Up => session.move_kept_up(entry.id),
        RowCommand::Down => session.move_kept_down(entry.id),
    }
}

/// The field to rename a jump. The name applies when the field loses the focus; Escape cancels.
fn name_field(ui: &mut Ui, session: &mut Session, kept_jumps: &mut KeptJumps) {
    let Some((id, edit)) = &mut kept_jumps.renamed else {
        return;
    };
    let id = *id;
    let rect = allocate(ui, TOUCH_SIZE);
    match text_field(ui, "kept name", rect, text("panel-kept-name"), edit) {
        Edited::NotYet => return,
        Edited::To(name) => session.rename_kept(id, &name),
        Edited::Cancelled => (),
    }
    kept_jumps.renamed = None;
}

/// A row that restores the jump deleted last.
fn undo(ui: &mut Ui, session: &mut Session) {
    const BUTTON: f32 = 76.0;
    let Some(name) = session.library().collection().last_deleted() else {
        return;
    };
    let deleted = say!("panel-kept-deleted", name = name);
    let accessible_name = say!("panel-kept-undo-it", name = name);
    let rect = allocate(ui, TOUCH_SIZE);
    let (words, button) = rect.split_left_right_at_x(rect.right() - BUTTON);
    let words = Rect::from_min_max(words.min, pos2(words.right() - GAP, words.bottom()));
    let font = style::text(16.0);
    elided(ui.painter(), words, &deleted, font, TEXT.get());
    let undo = Button::labelled("kept Undo", text("panel-kept-undo"));
    let undo = undo.accessible_name(&accessible_name);
    if undo.show(ui, button).clicked() {
        session.restore_deleted();
    }
}
