//! The joints in words.

use turns_aloft_physics::body::Segment;
use turns_aloft_physics::efforts::JointGroup;
use turns_aloft_words::{say, text};

/// What the joints of a group are called.
pub fn group_text(group: JointGroup) -> &'static str {
    match group {
        JointGroup::Shoulder => text("joint-shoulders"),
        JointGroup::Elbow => text("joint-elbows"),
        JointGroup::Hip => text("joint-hips"),
        JointGroup::Knee => text("joint-knees"),
        JointGroup::Spine => text("joint-spine"),
    }
}

/// What one joint of a group is called.
pub fn joint_text(joint: JointGroup) -> &'static str {
    match joint {
        JointGroup::Shoulder => text("joint-shoulder"),
        JointGroup::Elbow => text("joint-elbow"),
        JointGroup::Hip => text("joint-hip"),
        JointGroup::Knee => text("joint-knee"),
        JointGroup::Spine => text("strength-spine"),
    }
}

/// A segment's joint towards the pelvis: "left hip".
pub fn segment_text(segment: Segment) -> String {
    let left = |joint| say!("joint-left", joint = text(joint));
    let right = |joint| say!("joint-right", joint = text(joint));
    match segment {
        Segment::LeftUpperArm => left("joint-shoulder"),
        Segment::RightUpperArm => right("joint-shoulder"),
        Segment::LeftForearm => left("joint-elbow"),
        Segment::RightForearm => right("joint-elbow"),
        Segment::LeftThigh => left("joint-hip"),
        Segment::RightThigh => right("joint-hip"),
        Segment::LeftShank => left("joint-knee"),
        Segment::RightShank => right("joint-knee"),
        Segment::UpperTrunk => text("joint-chest").to_owned(),
        _ => text("joint-waist").to_owned(),
    }
}
