//! How long the app's own work on a frame takes, for whoever measures the page: everything but the
//! renderer's, from the input to the readouts, panels and charts.

use std::cell::RefCell;
use std::collections::VecDeque;

use bevy::app::MainScheduleOrder;
use bevy::ecs::schedule::ScheduleLabel;
use bevy::platform::time::Instant;
use bevy::prelude::*;
use wasm_bindgen::prelude::wasm_bindgen;

/// Frames looked back on.
const FRAMES: usize = 120;

thread_local! {
    /// ms, the latest at the end.
    static WORKED: RefCell<VecDeque<f64>> = const { RefCell::new(VecDeque::new()) };
}

/// Before everything and after everything of a frame.
#[derive(ScheduleLabel, Debug, Clone, PartialEq, Eq, Hash)]
struct Begin;
#[derive(ScheduleLabel, Debug, Clone, PartialEq, Eq, Hash)]
struct End;

#[derive(Resource)]
struct Began(Instant);

pub fn plugin(app: &mut App) {
    app.init_schedule(Begin)
        .init_schedule(End)
        .add_systems(Begin, begin)
        .add_systems(End, end);
    let mut order = app.world_mut().resource_mut::<MainScheduleOrder>();
    order.insert_before(First, Begin);
    order.insert_after(Last, End);
}

fn begin(mut commands: Commands) {
    commands.insert_resource(Began(Instant::now()));
}

fn end(began: Option<Res<Began>>) {
    let Some(began) = began else {
        return;
    };
    let took_ms = 1e3 * began.0.elapsed().as_secs_f64();
    WORKED.with_borrow_mut(|worked| {
        worked.push_back(took_ms);
        if worked.len() > FRAMES {
            worked.pop_front();
        }
    });
}

/// The median of the last frames, ms.
#[wasm_bindgen]
pub fn work_ms() -> f64 {
    let mut worked: Vec<f64> = WORKED.with_borrow(|worked| worked.iter().copied().collect());
    worked.sort_by(f64::total_cmp);
    worked.get(worked.len() / 2).copied().unwrap_or_default()
}
