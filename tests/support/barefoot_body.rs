//! A jumper's body, barefoot and with empty hands.

use turns_aloft::physics::body::{BodySpec, Footwear};
use turns_aloft::physics::segments::SegmentTable;

pub fn barefoot_body(table: SegmentTable, stature_m: f64, body_mass_kg: f64) -> BodySpec {
    BodySpec {
        table,
        stature_m,
        body_mass_kg,
        hand_mass_kg: 0.0,
        boot_mass_kg: 0.0,
        footwear: Footwear::BAREFOOT,
        core_inertia: 1.0,
    }
}
