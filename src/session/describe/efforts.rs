//! What the flight asks of the body, as lines for a person.

use crate::describe::reading::{Group, Reading, line};
use crate::session::Session;
use turns_aloft_describe::joint::{group_text, segment_text};
use turns_aloft_describe::unit::{NEWTON_METRES, SECONDS, UnitText, WATTS};
use turns_aloft_physics::efforts::{Demand, JointGroup, JointPeak};
use turns_aloft_words::{say, text};

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
            let joint = segment_text(segment);
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
                closing_joint = segment_text(closing.segment),
                closing_time = SECONDS.text(closing.t_s),
                opening_joint = segment_text(opening.segment),
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
