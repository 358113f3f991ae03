//! Theme, type size and the way the jumper is drawn: as the user has chosen, which is stored, or as the device is set.
//!
//! `web/theme.js` sets the root element's theme before the app starts. Later choices are made on
//! the panels; this module passes them to the root element and the storage.

use bevy::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use web_sys::MediaQueryList;

use crate::appearance::{self, Choice, Figure, Theme};
use crate::page::dom;
use crate::page::visit_storage::storage;
use crate::page::wake::wake;

/// Names of the choices in the storage; `web/theme.js` reads the first.
const THEME: &str = "turns-aloft/light";
const TYPE: &str = "turns-aloft/type";
const LARGE: &str = "large";
const FIGURE: &str = "turns-aloft/figure";
const STICKS: &str = "sticks";

/// The device's setting: whether it prefers dark colours.
struct Device(MediaQueryList);

pub fn plugin(app: &mut App) {
    if let Some(query) = listen() {
        app.insert_non_send(Device(query));
    }
    app.add_systems(First, follow);
}

/// Restores the stored choices, and sets the theme in which the page has opened.
pub fn restore() {
    let stored = |name| storage().and_then(|storage| storage.get_item(name).ok()?);
    let theme = stored(THEME);
    appearance::choose(Choice {
        theme: Theme::ALL
            .into_iter()
            .find(|it| theme.as_deref() == Some(it.name())),
        large: stored(TYPE).as_deref() == Some(LARGE),
        figure: match stored(FIGURE).as_deref() {
            Some(STICKS) => Figure::Sticks,
            _ => Figure::Body,
        },
    });
    if dom::theme().as_deref() == Some(Theme::Night.name()) {
        appearance::show(Theme::Night);
    }
}

/// Wakes the app when the device's setting changes.
fn listen() -> Option<MediaQueryList> {
    let query = dom::window()?
        .match_media("(prefers-color-scheme: dark)")
        .ok()??;
    let changed = Closure::<dyn FnMut()>::new(wake);
    query.set_onchange(Some(changed.as_ref().unchecked_ref()));
    changed.forget();
    Some(query)
}

/// Applies the theme chosen, else that of the device.
fn follow(device: Option<NonSend<Device>>) {
    let of_device = if device.is_some_and(|device| device.0.matches()) {
        Theme::Night
    } else {
        Theme::Day
    };
    let theme = appearance::chosen().theme.unwrap_or(of_device);
    if theme != appearance::shown() {
        appearance::show(theme);
        dom::set_theme(theme.name());
    }
}

/// Stores a changed choice. Without storage it holds until the next reload.
pub fn store(last: &mut Option<Choice>) {
    let choice = appearance::chosen();
    if last.replace(choice).is_none_or(|last| last == choice) {
        return;
    }
    let Some(storage) = storage() else {
        return;
    };
    let set = |name, value: Option<&str>| match value {
        Some(value) => storage.set_item(name, value).ok(),
        None => storage.remove_item(name).ok(),
    };
    set(THEME, choice.theme.map(Theme::name));
    set(TYPE, choice.large.then_some(LARGE));
    set(FIGURE, (choice.figure == Figure::Sticks).then_some(STICKS));
}
