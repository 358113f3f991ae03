//! The figure on a turntable, as the picture has it.

use glam::DVec3;

use turns_aloft::figure::pose::FigurePose;
use turns_aloft::physics::body::Segment;
use turns_aloft::physics::rotation::heading_rad;
use turns_aloft::turntable::{Position, Setup, Stand, Turntable};

/// Who stands or sits on a turntable is drawn where the turntable's package says: the hands as far from the
/// axis, turned as far, the soles on what carries them.
#[test]
fn who_is_on_a_turntable_is_drawn_as_far_out_as_the_hands_are() {
    for stand in Stand::ALL {
        let setup = Setup::on(stand);
        for hand_distance_m in [0.3, 0.6] {
            let position = Position {
                hand_distance_m,
                legs: 0.0,
                twist_rad: 0.0,
            };
            let turntable = Turntable::new(&setup, &position).expect("usual numbers");
            let person = turntable.person();
            let above_m = person.hips_above_support_m();
            let hips_m = DVec3::new(0.0, above_m, 0.0);
            let turned_rad = 0.7;
            let pose = FigurePose::upright(&person.body, &turntable.posture(), hips_m, turned_rad);
            for hand in [Segment::LeftHand, Segment::RightHand] {
                let grip_m = person.body.link(hand).end_m;
                let at_m = pose.point_m(hand, grip_m);
                let out_m = libm::hypot(at_m.x, at_m.z);
                // The search for the arms goes to the last digit.
                assert!((out_m - hand_distance_m).abs() < 1e-9, "{stand:?} {out_m}");
            }
            let heading = heading_rad(pose.rotation[Segment::LowerTrunk as usize]);
            assert!((heading - turned_rad).abs() < 1e-12, "{heading}");
            if !stand.sits() {
                let lowest_m = pose.lowest_m(&person.body);
                // On the ice the free foot crosses in front of the other, a trifle lower.
                assert!(lowest_m.abs() < 0.003, "{stand:?}: {lowest_m}");
            }
        }
    }
}
