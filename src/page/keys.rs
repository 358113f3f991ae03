//! The keys, wherever on the page they are pressed.
//!
//! The canvas has the focus from the start and after each click on it, and winit lets the browser do
//! nothing with a key that is pressed there: neither go on to the next control nor reload the page. So
//! the canvas gets none but those that are typed into a text field on it.

use std::cell::Cell;

use bevy::prelude::*;
use bevy_egui::EguiContext;
use bevy_egui::egui::{Event, Key, Modifiers};
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use web_sys::{Element, HtmlInputElement, KeyboardEvent};

use crate::page::{dom, egui_events};

thread_local! {
    /// Whether a text field on the canvas is being typed into.
    static TYPING: Cell<bool> = const { Cell::new(false) };
}

pub fn plugin(app: &mut App) {
    listen();
    app.add_systems(Last, note_typing);
}

fn listen() {
    let pressed = Closure::<dyn FnMut(KeyboardEvent)>::new(|event: KeyboardEvent| {
        let events = press(&event);
        if !events.is_empty() {
            egui_events::push(events);
        }
    });
    if let Some(document) = dom::document() {
        let pressed = pressed.as_ref().unchecked_ref();
        // Before the canvas gets it.
        (document.add_event_listener_with_callback_and_bool("keydown", pressed, true)).ok();
    }
    pressed.forget();
}

/// Handles a key; returns the events for egui.
fn press(event: &KeyboardEvent) -> Vec<Event> {
    let Some(target) = event.target().and_then(|it| it.dyn_into::<Element>().ok()) else {
        return Vec::new();
    };
    if target.tag_name() == "CANVAS" {
        let typing = TYPING.get();
        let goes_on = event.key() == "Tab";
        if !typing || goes_on {
            event.stop_propagation();
        }
        if typing && goes_on {
            // What has been typed is taken.
            return stroke(Key::Enter).to_vec();
        }
        if typing {
            return Vec::new();
        }
    }
    let is_text = |it: &HtmlInputElement| it.type_() == "text";
    if target.dyn_ref::<HtmlInputElement>().is_some_and(is_text) {
        // A text field of the page handles its keys itself.
        return Vec::new();
    }
    let undo = undo_key(event);
    if undo.is_some() {
        event.prevent_default();
    }
    undo.into_iter().collect()
}

/// A key that is pressed and let go.
pub fn stroke(key: Key) -> [Event; 2] {
    [true, false].map(|pressed| Event::Key {
        key,
        physical_key: None,
        pressed,
        repeat: false,
        modifiers: Modifiers::NONE,
    })
}

/// The event for a key that undoes or redoes.
fn undo_key(event: &KeyboardEvent) -> Option<Event> {
    if !(event.ctrl_key() || event.meta_key()) {
        return None;
    }
    let key = match event.key().to_lowercase().as_str() {
        "z" => Key::Z,
        "y" => Key::Y,
        _ => return None,
    };
    Some(Event::Key {
        key,
        physical_key: None,
        pressed: true,
        repeat: false,
        modifiers: Modifiers {
            alt: event.alt_key(),
            shift: event.shift_key(),
            ..Modifiers::COMMAND
        },
    })
}

fn note_typing(mut contexts: Query<&mut EguiContext>) {
    for mut context in &mut contexts {
        TYPING.set(context.get_mut().text_edit_focused());
    }
}
