//! When to draw: all the time while something moves, not at all while nothing does.

use std::time::Duration;

use bevy::platform::time::Instant;
use bevy::prelude::*;
use bevy::winit::{UpdateMode, WinitSettings};
use bevy_egui::{EguiInput, EguiPreUpdateSet, egui};

use crate::page::dom;
use crate::stage::current_session::CurrentSession;

/// Frames drawn before the page counts as ready: the panels get their fonts in the first, the
/// stage its shaders in the second.
const FIRST_FRAMES: u32 = 4;

/// A frame that took longer was no frame: the page was hidden or the device asleep.
const LONGEST_FRAME_S: f64 = 1.0;

/// What a frame gives to the answer in sight: half of one of 60 a second.
const COMPUTING: Duration = Duration::from_millis(8);

pub fn plugin(app: &mut App) {
    app.insert_resource(WinitSettings::continuous())
        .add_systems(
            PreUpdate,
            drop_unchanged_modifiers
                .after(EguiPreUpdateSet::ProcessInput)
                .before(EguiPreUpdateSet::BeginPass),
        )
        .add_systems(PreUpdate, advance.before(EguiPreUpdateSet::BeginPass))
        .add_systems(Last, (poll, choose_frame_pacing).chain());
}

/// Moves the playhead on by the time that has passed since the last frame.
fn advance(time: Res<Time<Real>>, mut session: ResMut<CurrentSession>) {
    if session.playback.playing {
        // After a pause of the page itself the flight goes on where it was.
        session.advance(time.delta_secs_f64().min(LONGEST_FRAME_S));
    }
}

/// `bevy_egui` 0.42 tells the panels of the modifier keys in every frame, and every event makes
/// them ask for another frame: only changes are let through.
fn drop_unchanged_modifiers(mut inputs: Query<&mut EguiInput>, mut last: Local<egui::Modifiers>) {
    for mut input in &mut inputs {
        input.events.retain(|event| match event {
            egui::Event::ModifiersChanged(now) => std::mem::replace(&mut *last, *now) != *now,
            _ => true,
        });
    }
}

/// Works on the answer in sight without keeping the next frame waiting.
pub fn poll(mut session: ResMut<CurrentSession>) {
    let started = Instant::now();
    session.poll(|| started.elapsed() < COMPUTING);
}

fn choose_frame_pacing(
    mut settings: ResMut<WinitSettings>,
    session: Res<CurrentSession>,
    mut frames: Local<u32>,
) {
    *frames = frames.saturating_add(1);
    if *frames == FIRST_FRAMES {
        dom::ready();
    }
    let moves = session.playback.playing || session.is_computing();
    let mode = if moves || *frames <= FIRST_FRAMES {
        UpdateMode::Continuous
    } else {
        UpdateMode::reactive_low_power(Duration::from_secs(60))
    };
    if settings.focused_mode != mode {
        settings.focused_mode = mode;
        settings.unfocused_mode = mode;
    }
}
