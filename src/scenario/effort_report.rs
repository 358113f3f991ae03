//! What a flown jump asks of the body, under published keys.

use serde::Serialize;

use turns_aloft_physics::efforts::{Efforts, JointGroup};

/// The largest of each: net torque of the joint asked most, from take-off until the opening begins
/// (closing) and from there to touch-down (opening); power of all joints together; force of a forearm
/// on its hand with what it holds, and of a hand on the weight alone.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct EffortReport {
    pub hand_force_peak_n: f64,
    /// 0 with empty hands.
    pub grip_force_peak_n: f64,
    pub shoulder_torque_closing_peak_n_m: f64,
    pub shoulder_torque_opening_peak_n_m: f64,
    pub elbow_torque_closing_peak_n_m: f64,
    pub elbow_torque_opening_peak_n_m: f64,
    pub hip_torque_closing_peak_n_m: f64,
    pub hip_torque_opening_peak_n_m: f64,
    pub knee_torque_closing_peak_n_m: f64,
    pub knee_torque_opening_peak_n_m: f64,
    /// Of waist and chest.
    pub spine_torque_closing_peak_n_m: f64,
    pub spine_torque_opening_peak_n_m: f64,
    pub joint_power_peak_w: f64,
    /// Below zero: muscles that give way.
    pub joint_power_least_w: f64,
}

impl EffortReport {
    pub fn new(efforts: &Efforts) -> Self {
        let closing = |group: JointGroup| efforts.closing[group as usize].torque.value;
        let opening = |group: JointGroup| efforts.opening[group as usize].torque.value;
        Self {
            hand_force_peak_n: efforts.hand_force.value,
            grip_force_peak_n: efforts.grip_force.value,
            shoulder_torque_closing_peak_n_m: closing(JointGroup::Shoulder),
            shoulder_torque_opening_peak_n_m: opening(JointGroup::Shoulder),
            elbow_torque_closing_peak_n_m: closing(JointGroup::Elbow),
            elbow_torque_opening_peak_n_m: opening(JointGroup::Elbow),
            hip_torque_closing_peak_n_m: closing(JointGroup::Hip),
            hip_torque_opening_peak_n_m: opening(JointGroup::Hip),
            knee_torque_closing_peak_n_m: closing(JointGroup::Knee),
            knee_torque_opening_peak_n_m: opening(JointGroup::Knee),
            spine_torque_closing_peak_n_m: closing(JointGroup::Spine),
            spine_torque_opening_peak_n_m: opening(JointGroup::Spine),
            joint_power_peak_w: efforts.power.value,
            joint_power_least_w: efforts.least_power.value,
        }
    }
}
