//! The postures in which the ice is left and met again. Shapes of common practice, no source.

use crate::body::posture::{Arm, Leg, Posture};
use crate::math::angles::rad;

/// Either arm as the ice is left; openness raises it.
///
/// Even the least open arm is raised so far that every bit of the way in brings it nearer to the axis.
pub const fn takeoff_arm(openness: f64) -> Arm {
    Arm {
        plane_rad: rad(35.0),
        elevation_rad: rad(38.0 + 42.0 * openness),
        axial_rad: 0.0,
        elbow_flexion_rad: rad(30.0),
    }
}

/// The posture in which the ice is left: from a stretched left leg, on the toe; openness raises the
/// arms and takes the free leg away, as little as the turning lets a hip hold. Thighs that are too thick to stand side by side keep the legs apart
/// by an angle at each hip.
pub fn takeoff_posture(openness: f64, legs_apart_rad: f64) -> Posture {
    let arm = takeoff_arm(openness);
    let properties = Leg {
        hip_flexion_rad: 0.0,
        hip_abduction_rad: legs_apart_rad,
        knee_flexion_rad: rad(4.0),
        plantarflexion_rad: rad(35.0),
    };
    let free = Leg {
        hip_flexion_rad: rad(4.0 + 16.0 * openness),
        hip_abduction_rad: legs_apart_rad.max(rad(10.0 * openness)),
        knee_flexion_rad: rad(10.0 + 25.0 * openness),
        plantarflexion_rad: rad(25.0),
    };
    Posture::new(arm, arm, properties, free)
}

/// The posture towards which the body opens: over the right toe with a soft knee, arms out, free leg
/// hardly away from the other. It swings back after the landing: before, the turning would throw it out
/// harder than a hip can hold.
pub fn landing_posture() -> Posture {
    let arm = Arm {
        plane_rad: rad(20.0),
        elevation_rad: rad(70.0),
        axial_rad: 0.0,
        elbow_flexion_rad: rad(15.0),
    };
    let free = Leg {
        hip_flexion_rad: rad(-4.0),
        hip_abduction_rad: rad(5.0),
        knee_flexion_rad: rad(15.0),
        plantarflexion_rad: rad(30.0),
    };
    let landing = Leg {
        hip_flexion_rad: rad(10.0),
        hip_abduction_rad: rad(-2.0),
        knee_flexion_rad: rad(22.0),
        plantarflexion_rad: rad(28.0),
    };
    Posture::new(arm, arm, free, landing)
}
