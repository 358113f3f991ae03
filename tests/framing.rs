//! The camera's framing keeps the whole jump in the picture. The stage itself is built for the
//! browser only; this part of it is plain geometry and is tested here.

#[allow(dead_code, reason = "the stage uses all of it")]
#[path = "../src/stage/framing.rs"]
mod framing;

/// Above is straight down, as a plan; from the side is level.
#[test]
fn the_named_views_look_where_they_say() {
    use std::f32::consts::FRAC_PI_2;
    use turns_aloft::appearance::view::View;
    let pitch_rad = |view: View| view.yaw_and_pitch_rad()[1];
    assert_eq!(pitch_rad(View::Above), FRAC_PI_2);
    assert!(pitch_rad(View::Side) < 0.1);
    let down = glam::Quat::from_rotation_x(-pitch_rad(View::Above)) * glam::Vec3::NEG_Z;
    assert!((down - glam::Vec3::NEG_Y).length() < 1e-6);
}
