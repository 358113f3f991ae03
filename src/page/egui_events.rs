//! Events for the panels that the page makes itself, out of what is done to its elements and of keys.

use std::cell::RefCell;

use bevy::prelude::*;
use bevy_egui::egui::Event;
use bevy_egui::{EguiInput, EguiPreUpdateSet};

use crate::page::wake::wake;

thread_local! {
    /// To be sent to the panels in the next frame.
    static PENDING: RefCell<Vec<Event>> = const { RefCell::new(Vec::new()) };
}

pub fn plugin(app: &mut App) {
    app.add_systems(
        PreUpdate,
        send.after(EguiPreUpdateSet::ProcessInput)
            .before(EguiPreUpdateSet::BeginPass),
    );
}

/// Sends events to the panels in the app's next frame. They happen while nothing moves: the app is woken.
pub fn push(events: impl IntoIterator<Item = Event>) {
    PENDING.with_borrow_mut(|all| all.extend(events));
    wake();
}

fn send(mut inputs: Query<&mut EguiInput>) {
    let events = PENDING.take();
    if events.is_empty() {
        return;
    }
    for mut input in &mut inputs {
        input.events.extend(events.iter().cloned());
    }
}
