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
pub mod blend;
pub mod body;
pub mod call;
pub mod composite;
pub mod course;
pub mod efforts;
pub mod flight;
pub mod glance;
pub mod integrate;
pub mod inverse;
pub mod joint;
pub mod kept;
pub mod landing;
pub mod lanes;
pub mod launch;
pub mod moment;
pub mod momentum;
pub mod motion;
pub mod overlap;
pub mod peak;
pub mod plan;
pub mod posture;
pub mod readout;
pub mod rotation;
pub mod segments;
pub mod shape;
pub mod stance;
pub mod stepper;
pub mod table;
pub mod takeoff_landing;
pub mod tape;
pub mod thickness;
pub mod tight;
pub mod timed;
pub mod touchdown;
pub mod tree;

/// Standard gravity, m/s² (3rd CGPM 1901, exact by definition).
pub const GRAVITY_M_S2: f64 = 9.806_65;
