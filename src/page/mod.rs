//! The app in the browser: storage, files, the page's own elements, and when to draw.

mod address;
mod appearance;
mod commands;
mod controls;
mod documents;
mod dom;
mod egui_events;
mod file_input;
mod files;
mod film;
mod frame_pacing;
mod frame_times;
mod kept_jumps_storage;
mod keys;
mod language;
mod lessons;
mod motion_sensor;
mod panels;
mod picture;
mod readout_elements;
mod resize_redraw;
mod share_sheet;
mod sheets;
mod storing;
mod visit_storage;
mod wake;

use bevy::prelude::*;
use bevy::window::{PresentMode, WindowPlugin};
use bevy_egui::EguiPlugin;
use js_sys::futures::spawn_local;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::panel;
use crate::session::Session;
use crate::stage::StagePlugin;
use crate::stage::current_session::CurrentSession;
use crate::words;

/// Starts the app once its texts are there.
pub fn run() {
    language::restore();
    spawn_local(async {
        match language::load(words::language()).await {
            Some(()) => start(),
            None => dom::fail("the texts could not be fetched"),
        }
    });
}

/// Starts the app on the page's canvas; without WebGL 2, shows the readout as text only.
fn start() {
    appearance::restore();
    let mut session = Session::default();
    visit_storage::restore(&mut session);
    let mut kept_jumps = kept_jumps_storage::restore(&mut session);
    kept_jumps_storage::listen();
    address::restore(&mut session);
    kept_jumps.show_notice(&mut session);
    if dom::prefers_reduced_motion() {
        session.reduce_motion();
    }
    if !dom::can_draw() {
        dom::show_no_graphics();
        readout_elements::write(&session);
        dom::say(session.notice().unwrap_or_default());
        dom::ready();
        return;
    }
    App::new()
        .add_plugins(DefaultPlugins.set(WindowPlugin {
            primary_window: Some(Window {
                canvas: Some(dom::CANVAS.to_owned()),
                fit_canvas_to_parent: true,
                present_mode: PresentMode::AutoVsync,
                // The on-screen keyboard of tablets needs this.
                prevent_default_event_handling: true,
                ..default()
            }),
            ..default()
        }))
        .add_plugins(EguiPlugin::default())
        .insert_resource(CurrentSession(session))
        .insert_resource(kept_jumps)
        .add_plugins((
            wake::plugin,
            commands::plugin,
            storing::plugin,
            StagePlugin,
            panels::plugin,
            appearance::plugin,
            readout_elements::plugin,
            (egui_events::plugin, controls::plugin, keys::plugin),
            frame_pacing::plugin,
            resize_redraw::plugin,
            frame_times::plugin,
            (
                files::plugin,
                address::plugin,
                film::plugin,
                motion_sensor::plugin,
            ),
        ))
        .run();
}

/// The touch targets as JSON: name to [x, y, width, height] in CSS pixels of the canvas.
#[wasm_bindgen]
pub fn touch_targets() -> String {
    panel::touch_targets::json()
}
