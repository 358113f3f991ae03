//! What the session holds.

pub mod curves;
pub mod document;
pub mod fitted_jumps;
pub mod goal_settings;
pub mod history;
pub mod lesson;
pub mod levers;
pub mod library;
pub mod measured_rate;
pub mod measuring;
pub mod notice;
pub mod own_settings;
pub mod playback;
pub mod policy;
pub mod prediction;
pub mod preferences;
pub mod question;
pub mod reference;
pub mod slow_flight;
pub mod slowing;
pub mod turntable;
pub mod uncertainty;
pub mod visit;
