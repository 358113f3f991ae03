//! What is stored at the end of each frame, and named anew where the language has changed.

use bevy::prelude::*;

use crate::appearance::Choice;
use crate::page::address::LinkedDocument;
use crate::page::kept_jumps_storage::KeptJumpsStorage;
use crate::page::visit_storage::StoredVisit;
use crate::page::{address, appearance, files, film, kept_jumps_storage, language, visit_storage};
use crate::stage::current_session::CurrentSession;
use crate::words::Language;

pub fn plugin(app: &mut App) {
    app.add_systems(Last, store);
}

/// What was stored last.
#[derive(Default)]
struct Stored {
    language: Option<(Language, bool)>,
    look: Option<Choice>,
    visit: StoredVisit,
}

fn store(
    mut session: ResMut<CurrentSession>,
    mut linked: ResMut<LinkedDocument>,
    mut kept_jumps: ResMut<KeptJumpsStorage>,
    mut stored: Local<Stored>,
) {
    if language::has_changed(&mut stored.language) {
        language::store();
        files::name_input();
        film::name();
    }
    appearance::store(&mut stored.look);
    kept_jumps_storage::store(&mut session, &mut kept_jumps);
    address::remove_stale_link(&session, &mut linked);
    visit_storage::store(&mut session, &mut stored.visit);
}
