//! Rotations, vectors of two numbers side by side, angles and peaks of curves.

pub mod angles;
pub mod peak;
pub mod rotation;
pub mod simd;
