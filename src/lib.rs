//! Turns Aloft: how many turns a body completes before it comes down.
//!
//! Its layers are packages, the lowest first: each can only reach what its own `Cargo.toml` names.

pub use turns_aloft_analysis as analysis;
pub use turns_aloft_appearance as appearance;
pub use turns_aloft_attempt as attempt;
pub use turns_aloft_describe as describe;
pub use turns_aloft_documents as documents;
pub use turns_aloft_figure as figure;
pub use turns_aloft_film as film;
pub use turns_aloft_fit as fit;
pub use turns_aloft_lesson as lesson;
pub use turns_aloft_overlay as overlay;
#[cfg(feature = "panels")]
pub use turns_aloft_panel as panel;
pub use turns_aloft_physics as physics;
pub use turns_aloft_picture as picture;
pub use turns_aloft_scenario as scenario;
pub use turns_aloft_session as session;
pub use turns_aloft_sheet as sheet;
pub use turns_aloft_trace as trace;
pub use turns_aloft_turntable as turntable;
pub use turns_aloft_words as words;
pub use turns_aloft_words::say;

#[cfg(all(feature = "page", target_arch = "wasm32"))]
pub use turns_aloft_player as player;
#[cfg(all(feature = "page", target_arch = "wasm32"))]
pub use turns_aloft_stage as stage;

#[cfg(all(feature = "page", target_arch = "wasm32"))]
pub mod page;
