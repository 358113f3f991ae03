//! What the flight asks of the body, as lines for a person.

use crate::describe::reading::{Group, Reading, line};
use crate::describe::units::{NEWTON_METRES, SECONDS, WATTS};
use crate::session::Session;
use turns_aloft_describe::unit::UnitText;
use turns_aloft_physics::body::Segment;
use turns_aloft_physics::efforts::{Demand, JointGroup, JointPeak};
use turns_aloft_words::say;
use turns_aloft_words::text;

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

/// The key of a group's line.
const fn quantity(group: JointGroup) -> &'static str {
    match group {
        JointGroup::Shoulder => "shoulder_torque_peaks_n_m",
        JointGroup::Elbow => "elbow_torque_peaks_n_m",
        JointGroup::Hip => "hip_torque_peaks_n_m",
        JointGroup::Knee => "knee_torque_peaks_n_m",
        JointGroup::Spine => "spine_torque_peaks_n_m",
    }
}

/// A segment's joint towards the pelvis: "left hip".
fn joint_text(segment: Segment) -> String {
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

/// All lines.
pub(crate) fn lines(session: &Session) -> Vec<Reading> {
    let efforts = session.jump().efforts();
    let line = |quantity: &'static str, label: &'static str, text, about: String| {
        line(Group::Efforts, quantity, label, text, about)
    };
    let largest = |quantity, label, demands: &[Demand], about| {
        let peaks = demands.iter().map(|demand| demand.torque);
        let peak = peaks.reduce(|a, b| if b.value > a.value { b } else { a });
        peak.map(|JointPeak { value, segment, .. }| {
            let joint = joint_text(segment);
            let torque = NEWTON_METRES.text(value);
            let said = say!("reading-torque-at", torque = torque, joint = joint);
            line(quantity, label, said, text(about).to_owned())
        })
    };
    let mut lines = Vec::new();
    lines.extend(largest(
        "torque_closing_peak_n_m",
        text("reading-torque-closing-peak-n-m"),
        &efforts.closing,
        "reading-torque-closing-peak-n-m-about",
    ));
    lines.extend(largest(
        "torque_opening_peak_n_m",
        text("reading-torque-opening-peak-n-m"),
        &efforts.opening,
        "reading-torque-opening-peak-n-m-about",
    ));
    lines.extend(JointGroup::ALL.map(|group| {
        let [closing, opening] =
            [&efforts.closing, &efforts.opening].map(|demands| demands[group as usize].torque);
        line(
            quantity(group),
            group_text(group),
            say!(
                "reading-torque-peaks",
                closing = NEWTON_METRES.number(closing.value),
                opening = NEWTON_METRES.number(opening.value),
                unit = NEWTON_METRES.sign()
            ),
            say!(
                "reading-torque-peaks-about",
                closing_joint = joint_text(closing.segment),
                closing_time = SECONDS.text(closing.t_s),
                opening_joint = joint_text(opening.segment),
                opening_time = SECONDS.text(opening.t_s)
            ),
        )
    }));
    lines.push(line(
        "joint_power_peak_w",
        text("reading-joint-power-peak-w"),
        WATTS.text(efforts.power.value),
        text("reading-joint-power-peak-w-about").to_owned(),
    ));
    lines.push(line(
        "joint_power_least_w",
        text("reading-joint-power-least-w"),
        WATTS.text(efforts.least_power.value),
        text("reading-joint-power-least-w-about").to_owned(),
    ));
    lines
}
