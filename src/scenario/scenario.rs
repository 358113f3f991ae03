//! One jump, whole.

use serde::{Deserialize, Serialize};

use crate::ground::Ground;
use crate::jump::JumpName;
use turns_aloft_physics::led_tucks::LedTucks;
use turns_aloft_physics::plan::Turning;
use turns_aloft_physics::segments::SegmentTable;

/// What the jumper keeps when the hands get heavier than bare.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum HandsKeep {
    /// The take-off rate; the angular momentum grows with the hands.
    Rate,
    /// The angular momentum of the bare-handed take-off.
    AngularMomentum,
    /// The rotational energy of the bare-handed take-off.
    Energy,
}

/// One jump, whole. SI units, in the names.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Scenario {
    pub name: String,
    /// What the jump is about; for the starting points, that it is invented.
    pub note: String,

    pub jump: JumpName,
    /// Turns in the jump's name, 1 to 5; an Axel owes half a turn more.
    pub jump_turns: u8,

    pub table: SegmentTable,
    pub stature_m: f64,
    pub body_mass_kg: f64,
    pub ground: Ground,
    /// On each foot, blade included.
    pub boot_mass_kg: f64,
    pub turning: Turning,

    pub takeoff_rate_rad_s: f64,
    pub takeoff_openness: f64,
    pub jump_height_m: f64,
    /// Tilt of the long axis at take-off towards the side the jumper turns to.
    pub lean_rad: f64,
    /// Already turned on the ice before leaving it.
    pub pre_rotation_turns: f64,

    pub arm_tuck: f64,
    pub leg_tuck: f64,
    pub arm_asymmetry: f64,
    /// In each hand.
    pub hand_mass_kg: f64,
    pub hands_keep: HandsKeep,

    pub close_delay_s: f64,
    pub close_time_s: f64,
    pub arm_lag_s: f64,
    pub open_lead_s: f64,
    pub open_time_s: f64,

    /// How arms and legs were led by hand, in place of what is planned of them.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub led: Option<LedTucks>,
}
