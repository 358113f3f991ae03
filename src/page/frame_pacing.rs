//! When to draw: every frame while something moves, not at all while nothing does.

use std::time::Duration;

use bevy::platform::time::Instant;
use bevy::prelude::*;
use bevy::winit::{UpdateMode, WinitSettings};
use bevy_egui::{EguiInput, EguiPreUpdateSet, egui};

use crate::page::dom;
use crate::stage::current_session::CurrentSession;

/// Frames drawn before the page is declared ready: the panels load their fonts in the first, the 3D
/// picture its shaders in the second.
const FIRST_FRAMES: u32 = 4;

/// Longest step of the playhead, s: a longer frame means that the page was hidden or the device
/// asleep.
const LONGEST_FRAME_S: f64 = 1.0;

/// Time per frame for computing the answer shown: half a frame at 60 frames per second.
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

/// Advances the playhead, a flight that is led by hand, or the turntable, by the time since the last frame.
fn advance(time: Res<Time<Real>>, mut session: ResMut<CurrentSession>) {
    if !session.moves() {
        return;
    }
    // After a pause of the page it continues where it was.
    let passed_s = time.delta_secs_f64().min(LONGEST_FRAME_S);
    if session.is_on_turntable() {
        session.advance_turntable(passed_s);
    } else {
        session.advance(passed_s);
    }
}

/// `bevy_egui` 0.42 sends an event with the modifier keys in every frame, and every event makes
/// egui request another frame: drops those without a change.
fn drop_unchanged_modifiers(mut inputs: Query<&mut EguiInput>, mut last: Local<egui::Modifiers>) {
    for mut input in &mut inputs {
        input.events.retain(|event| match event {
            egui::Event::ModifiersChanged(now) => std::mem::replace(&mut *last, *now) != *now,
            _ => true,
        });
    }
}

/// Computes the answer shown for at most [`COMPUTING`], so that the next frame is not delayed.
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
    let moves = session.moves() || session.is_computing();
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
