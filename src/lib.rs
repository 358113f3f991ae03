//! Turns Aloft: how many turns a body completes before it comes down.

pub mod analysis;
pub mod look;
pub mod physics;
pub mod scenario;
pub mod session;
pub mod words;

#[cfg(all(feature = "page", target_arch = "wasm32"))]
pub mod page;
#[cfg(all(feature = "page", target_arch = "wasm32"))]
pub mod panel;
#[cfg(all(feature = "page", target_arch = "wasm32"))]
pub mod stage;
