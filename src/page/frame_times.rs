//! Processor time of the app per frame, for measurements by script: of the panels (which include
//! flying the jump that a slider sets, readouts and charts), and of everything except the renderer.

use std::cell::RefCell;
use std::collections::VecDeque;

use bevy::app::MainScheduleOrder;
use bevy::ecs::schedule::ScheduleLabel;
use bevy::platform::time::Instant;
use bevy::prelude::*;
use bevy_egui::EguiPrimaryContextPass;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::page::panels::PanelSystems;
use crate::physics::order::by_number;

/// Number of frames in a median.
const FRAMES: usize = 120;

thread_local! {
    static PANELS: RefCell<Times> = const { RefCell::new(Times(VecDeque::new())) };
    static ALL: RefCell<Times> = const { RefCell::new(Times(VecDeque::new())) };
}

/// Times of the last frames, ms, the latest at the end.
struct Times(VecDeque<f64>);

impl Times {
    fn add(&mut self, since: Instant) {
        self.0.push_back(1e3 * since.elapsed().as_secs_f64());
        if self.0.len() > FRAMES {
            self.0.pop_front();
        }
    }

    fn median(&self) -> f64 {
        let sorted = by_number(self.0.iter().copied().collect(), |time: &f64| *time);
        sorted.get(sorted.len() / 2).copied().unwrap_or_default()
    }
}

/// Schedules before and after all others of a frame.
#[derive(ScheduleLabel, Debug, Clone, PartialEq, Eq, Hash)]
struct Begin;
#[derive(ScheduleLabel, Debug, Clone, PartialEq, Eq, Hash)]
struct End;

/// When this frame began, and its panels.
#[derive(Resource)]
struct Began {
    all: Instant,
    panels: Instant,
}

pub fn plugin(app: &mut App) {
    let now = Instant::now();
    app.insert_resource(Began {
        all: now,
        panels: now,
    })
    .init_schedule(Begin)
    .init_schedule(End)
    .add_systems(Begin, |mut began: ResMut<Began>| began.all = Instant::now())
    .add_systems(End, |began: Res<Began>| {
        ALL.with_borrow_mut(|all| all.add(began.all))
    })
    .add_systems(
        EguiPrimaryContextPass,
        (
            (|mut began: ResMut<Began>| began.panels = Instant::now()).before(PanelSystems),
            (|began: Res<Began>| PANELS.with_borrow_mut(|panels| panels.add(began.panels)))
                .after(PanelSystems),
        ),
    );
    let mut order = app.world_mut().resource_mut::<MainScheduleOrder>();
    order.insert_before(First, Begin);
    order.insert_after(Last, End);
}

/// Median time of the panels over the last frames, ms.
#[wasm_bindgen]
pub fn panels_ms() -> f64 {
    PANELS.with_borrow(Times::median)
}

/// Median time of everything except the renderer over the last frames, ms.
#[wasm_bindgen]
pub fn work_ms() -> f64 {
    ALL.with_borrow(Times::median)
}
