//! Turns Aloft: how many turns a body completes before it comes down.

pub mod analysis;
pub mod appearance;
pub mod describe;
mod order;
pub mod scenario;
pub mod session;
pub mod view;
pub mod words;

pub use turns_aloft_physics as physics;

#[cfg(all(feature = "page", target_arch = "wasm32"))]
pub mod page;
#[cfg(feature = "panels")]
pub mod panel;
#[cfg(all(feature = "page", target_arch = "wasm32"))]
pub mod stage;
