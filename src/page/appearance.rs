//! Light or dark, usual or large: as the device is set, or as the user has chosen and the storage
//! keeps.
//!
//! `web/theme.js` decides at the start, before there is an app, and tells the root element; later
//! choices are made on the panels and go from here to the root element and into the storage.

use bevy::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use web_sys::MediaQueryList;

use super::dom;
use super::kept::storage;
use super::wake::wake;
use crate::appearance::{self, Choice, Theme};

/// The storage's names for the choices; `web/theme.js` reads them.
const THEME: &str = "turns-aloft/light";
const TYPE: &str = "turns-aloft/type";
const LARGE: &str = "large";

/// What the device is set to.
struct Device(MediaQueryList);

pub fn plugin(app: &mut App) {
    if let Some(query) = listen() {
        app.insert_non_send(Device(query));
    }
    app.add_systems(First, follow).add_systems(Last, keep);
}

/// Takes up what has been chosen, and draws from the start as the page has opened.
pub fn restore() {
    let kept = |name| storage().and_then(|storage| storage.get_item(name).ok()?);
    let theme = kept(THEME);
    appearance::choose(Choice {
        theme: Theme::ALL
            .into_iter()
            .find(|it| theme.as_deref() == Some(it.name())),
        large: kept(TYPE).as_deref() == Some(LARGE),
    });
    if dom::theme().as_deref() == Some(Theme::Night.name()) {
        appearance::show(Theme::Night);
    }
}

/// Hears of it when the device is set otherwise.
fn listen() -> Option<MediaQueryList> {
    let query = dom::window()?
        .match_media("(prefers-color-scheme: dark)")
        .ok()??;
    let changed = Closure::<dyn FnMut()>::new(wake);
    query.set_onchange(Some(changed.as_ref().unchecked_ref()));
    changed.forget();
    Some(query)
}

/// Shows the colours chosen, or those of the device.
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

/// Keeps another choice. Where nothing can be kept it holds until the next reload.
fn keep(mut last: Local<Option<Choice>>) {
    let choice = appearance::chosen();
    if last.replace(choice).is_none_or(|last| last == choice) {
        return;
    }
    let Some(storage) = storage() else {
        return;
    };
    let keep = |name, value: Option<&str>| match value {
        Some(value) => storage.set_item(name, value).ok(),
        None => storage.remove_item(name).ok(),
    };
    keep(THEME, choice.theme.map(Theme::name));
    keep(TYPE, choice.large.then_some(LARGE));
}
