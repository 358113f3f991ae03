//! The mechanics of a jump: a jointed body, a motion plan, a free flight, its readouts.
//!
//! Everything is SI and `f64`. World frame: right-handed, origin on the ice below the centre of
//! mass (CM) at take-off, Y up, X in the direction of travel, Z to the right of a jumper who
//! faces X (the ISB recommendation: Wu & Cavanagh 1995, J Biomech 28:1257). Turns are positive
//! anticlockwise seen from above.
//!
//! This package knows no scenario file, no screen and no browser.

pub mod angles;
pub mod attitude;
pub mod body;
pub mod call;
pub mod centroidal;
pub mod composite;
pub mod constants;
pub mod efforts;
pub mod fixed_time;
pub mod flight;
pub mod flight_summary;
pub mod forward_kinematics;
pub mod integrate;
pub mod inverse;
pub mod joint_trajectory;
pub mod landing;
pub mod launch;
pub mod live_flight;
pub mod mass_properties;
pub mod minimum_jerk;
pub mod motion_table;
pub mod overlap;
pub mod peak;
pub mod plan;
pub mod posture;
pub mod readout;
pub mod rotation;
pub mod sample;
pub mod sample_table;
pub mod segments;
pub mod simd;
pub mod step_record;
pub mod table;
pub mod takeoff_landing;
pub mod thickness;
pub mod tight_posture;
pub mod touchdown;
pub mod tree;

/// Standard gravity, m/s² (3rd CGPM 1901, exact by definition).
pub const GRAVITY_M_S2: f64 = 9.806_65;
