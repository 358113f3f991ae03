//! The mechanics of a jump: a jointed body, a motion plan, a free flight, its readouts.
//!
//! Everything is SI and `f64`. World frame: right-handed, origin on the ice below the centre of
//! mass (CM) at take-off, Y up, X in the direction of travel, Z to the right of a jumper who
//! faces X (the ISB recommendation: Wu & Cavanagh 1995, J Biomech 28:1257). Turns are positive
//! anticlockwise seen from above.
//!
//! This package knows no scenario file, no screen and no browser.

pub mod body;
pub mod dynamics;
pub mod flight;
pub mod math;
pub mod motion;

pub use body::{forward_kinematics, overlap, posture, segments, surface, thickness};
pub use dynamics::gravity::GRAVITY_M_S2;
pub use dynamics::{attitude, centroidal, composite, integrate, inverse, mass_properties, tree};
pub use flight::{
    constants, efforts, fixed_time, flight_summary, knot_search, landing, launch, led_flight,
    live_flight, motion_flight, motion_table, readout, release, sample, sample_table, step_record,
    table, touchdown,
};
pub use math::{angles, order, peak, rotation, simd};
pub use motion::{
    joint_motion, joint_trajectory, led_motion, led_tucks, measured_motion, minimum_jerk, plan,
    planned_motion, resolution, takeoff_landing, tight_posture,
};
