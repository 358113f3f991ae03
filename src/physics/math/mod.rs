//! Rotations, vectors of two numbers side by side, angles, peaks of curves and order.

pub mod angles;
pub mod order;
pub mod peak;
pub mod rotation;
pub mod simd;
