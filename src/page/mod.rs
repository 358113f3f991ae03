//! The browser around the app: what is kept, files in and out, the page's own text, and when to
//! draw.

mod address;
mod appearance;
mod controls;
mod dom;
mod files;
mod frame_pacing;
mod frame_times;
mod kept;
mod kept_storage;
mod language;
mod outputs;
mod panels;
mod resized;
mod wake;

use bevy::prelude::*;
use bevy::window::{PresentMode, WindowPlugin};
use bevy_egui::EguiPlugin;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::panel;
use crate::session::Session;
use crate::stage::StagePlugin;
use crate::stage::current_session::CurrentSession;

/// Starts the app on the page's canvas, or without a picture where the browser cannot draw one.
pub fn run() {
    language::restore();
    appearance::restore();
    let mut session = Session::default();
    kept::restore(&mut session);
    let mut kept_storage = kept_storage::restore(&mut session);
    address::restore(&mut session);
    kept_storage.tell(&mut session);
    if dom::wants_stillness() {
        session.keep_still();
    }
    if !dom::can_draw() {
        dom::show_no_graphics();
        outputs::write(&session);
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
                // The on-screen keyboard of tablets works only when the app takes the events.
                prevent_default_event_handling: true,
                ..default()
            }),
            ..default()
        }))
        .add_plugins(EguiPlugin::default())
        .insert_resource(CurrentSession(session))
        .insert_resource(kept_storage)
        .add_plugins((
            wake::plugin,
            StagePlugin,
            panels::plugin,
            appearance::plugin,
            files::plugin,
            kept::plugin,
            language::plugin,
            kept_storage::plugin,
            outputs::plugin,
            controls::plugin,
            address::plugin,
            frame_pacing::plugin,
            resized::plugin,
            frame_times::plugin,
        ))
        .run();
}

/// Where everything that can be touched is on the page: JSON of name to [x, y, width, height] in
/// CSS pixels.
#[wasm_bindgen]
pub fn touch_targets() -> String {
    panel::touch_targets::json()
}
