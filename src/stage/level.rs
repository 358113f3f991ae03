//! Heights of the layers drawn on the ground, m: far enough apart for the depth buffer.

pub const SCRATCH: f32 = 0.002;
pub const SHADOW: f32 = 0.004;
pub const TRACK: f32 = 0.006;
pub const GAP: f32 = 0.008;
pub const TURNED: f32 = 0.010;
pub const MARK: f32 = 0.012;
pub const REFERENCE: f32 = 0.014;
pub const POINTER: f32 = 0.016;
