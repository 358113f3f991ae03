//! Gravity.

/// Standard gravity, m/s² (3rd CGPM 1901, exact by definition).
pub const GRAVITY_M_S2: f64 = 9.806_65;
