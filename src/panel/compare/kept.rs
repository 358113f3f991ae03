//! The kept jumps: a row each, the chosen one with what can be done to it.

use bevy_egui::egui::text::{CCursor, CCursorRange};
use bevy_egui::egui::text_edit::TextEditState;
use bevy_egui::egui::{Key as Keyboard, Rect, TextEdit, Ui, UiBuilder, pos2, vec2};

use super::super::bar::Wish;
use super::super::look::{self, INK, NEAR, TOUCH};
use super::super::parts::small;
use super::super::{spoken, targets, transport};
use super::{allocate, attempt, lay, write};
use crate::session::Session;
use crate::session::collection::{Entry, Id};
use crate::session::compare::{CameTo, Which};

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

pub fn show(ui: &mut Ui, session: &mut Session, unfolded: &mut Unfolded) -> Option<Wish> {
    let rect = allocate(ui, TOUCH);
    if transport::labelled(ui, "keep", "Keep this jump", rect, false).clicked() {
        session.keep_jump();
    }
    let entries = session.keeping().collection().entries().to_vec();
    if entries.is_empty() {
        small(
            ui,
            "None yet. They stay on this device, and nothing is sent anywhere.",
        );
    }
    let chosen = session.beside().map(|beside| beside.which.clone());
    let last = entries.len().saturating_sub(1);
    for (i, entry) in entries.iter().enumerate() {
        let which = Which::Kept(entry.id);
        let chosen = chosen.as_ref() == Some(&which);
        let came_to = session.keeping().came_to(entry.id);
        let target = format!("kept:{}", i + 1);
        let name = &entry.scenario.name;
        if attempt(ui, &target, name, &came_to_text(came_to), chosen).clicked() {
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
                deeds(ui, session, unfolded, entry, [i == 0, i == last]);
            }
        }
    }
    undo(ui, session);
    if entries.is_empty() {
        return None;
    }
    let rect = allocate(ui, TOUCH);
    let save = transport::labelled(ui, "save all", "Save all as a file", rect, false);
    small(ui, "“Open” at the top opens such a file again.");
    save.clicked().then_some(Wish::SaveAll)
}

/// Short, as behind a name in a row.
fn came_to_text(came_to: Option<CameTo>) -> String {
    let Some(came_to) = came_to else {
        return "…".to_owned();
    };
    let sign = came_to.call.map_or("", |call| call.sign());
    format!("{:.2} {sign}", came_to.turns).trim_end().to_owned()
}

#[derive(Clone, Copy)]
enum Deed {
    Open,
    Rename,
    Delete,
    Up,
    Down,
}

/// What can be done to a kept jump; the first does not go up, the last not down.
fn deeds(
    ui: &mut Ui,
    session: &mut Session,
    unfolded: &mut Unfolded,
    entry: &Entry,
    at_end: [bool; 2],
) {
    const ROWS: [&[(Deed, &str)]; 2] = [
        &[
            (Deed::Open, "Open"),
            (Deed::Rename, "Rename"),
            (Deed::Delete, "Delete"),
        ],
        &[(Deed::Up, "Up"), (Deed::Down, "Down")],
    ];
    let name = &entry.scenario.name;
    // One alone goes nowhere.
    let rows = if at_end == [true; 2] { 1 } else { ROWS.len() };
    for row in &ROWS[..rows] {
        let rect = allocate(ui, TOUCH);
        let width = (rect.width() + NEAR) / row.len() as f32 - NEAR;
        for (i, &(deed, label)) in row.iter().enumerate() {
            let left = rect.left() + (width + NEAR) * i as f32;
            let own = Rect::from_min_size(pos2(left, rect.top()), vec2(width, TOUCH));
            let idle = match deed {
                Deed::Up => at_end[0],
                Deed::Down => at_end[1],
                _ => false,
            };
            if idle {
                continue;
            }
            let response = transport::labelled(ui, &format!("kept {label}"), label, own, false);
            spoken::button(&response, &format!("{label}: {name}"));
            if response.clicked() {
                do_it(session, unfolded, entry, deed);
            }
        }
    }
}

fn do_it(session: &mut Session, unfolded: &mut Unfolded, entry: &Entry, deed: Deed) {
    match deed {
        Deed::Open => session.open_kept(entry.id),
        Deed::Rename => {
            unfolded.naming = Some(Naming {
                id: entry.id,
                text: entry.scenario.name.clone(),
                fresh: true,
            });
        }
        Deed::Delete => session.delete_kept(entry.id),
        Deed::Up => session.move_kept_up(entry.id),
        Deed::Down => session.move_kept_down(entry.id),
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
            .font(look::text(17.0))
            .margin(vec2(10.0, 10.0)),
    );
    if field.lost_focus() {
        let given_up = ui.input(|input| input.key_pressed(Keyboard::Escape));
        if let Some(naming) = unfolded.naming.take()
            && !given_up
        {
            session.rename_kept(naming.id, &naming.text);
        }
    }
}

/// Brings back what was deleted last.
fn undo(ui: &mut Ui, session: &mut Session) {
    const BUTTON: f32 = 76.0;
    let Some(name) = session.keeping().collection().last_deleted() else {
        return;
    };
    let said = format!("“{name}” is deleted.");
    let rect = allocate(ui, TOUCH);
    let (words, button) = rect.split_left_right_at_x(rect.right() - BUTTON);
    let words = Rect::from_min_max(words.min, pos2(words.right() - NEAR, words.bottom()));
    write(ui, words, &said, look::text(16.0), INK);
    let response = transport::labelled(ui, "kept Undo", "Undo", button, false);
    spoken::button(&response, &format!("Undo: {said}"));
    if response.clicked() {
        session.bring_back_kept();
    }
}
