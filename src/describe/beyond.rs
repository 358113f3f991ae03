//! What is beyond what has been seen, in words.

use crate::Text;
use crate::joint::joint_text;
use crate::rounding::beyond_and_limit;
use crate::unit::{UnitText, fixed};
use turns_aloft_physics::efforts::JointGroup;
use turns_aloft_scenario::beyond::{Respect, RespectOf};
use turns_aloft_scenario::parameter::{Kind, Movement};
use turns_aloft_scenario::units::{Unit, UnitSign, Units};
use turns_aloft_words::{say, text};

/// Torque for each kilogram of body mass.
const TORQUE: Unit = fixed(UnitSign::NMPerKg, 1);

/// The unit that it is told in.
pub fn unit_of(of: RespectOf, units: &Units) -> Unit {
    match of {
        RespectOf::PeakRate => units.of(Kind::Rate),
        RespectOf::Height => units.of(Kind::Length),
        RespectOf::Torque(_) => TORQUE,
    }
}

/// The value, and as far as people have been seen to go: beyond that as it is shown where it is.
fn value_and_limit(respect: &Respect, units: &Units) -> [String; 2] {
    let unit = unit_of(respect.of, units);
    match respect.seen_up_to {
        Some(up_to) if respect.value > up_to => beyond_and_limit(&unit, [respect.value, up_to]),
        up_to => {
            [Some(respect.value), up_to].map(|si| si.map_or_else(String::new, |si| unit.text(si)))
        }
    }
}

/// What it is called, with the joint whose torque it is.
pub fn name_of(of: RespectOf, joint: Option<JointGroup>) -> String {
    let joint = joint.map_or("", joint_text);
    match of {
        RespectOf::PeakRate => text("respect-peak-rate").to_owned(),
        RespectOf::Height => text("respect-jump-height").to_owned(),
        RespectOf::Torque(Movement::Closing) => say!("respect-closing", joint = joint),
        RespectOf::Torque(Movement::Opening) => say!("respect-opening", joint = joint),
    }
}

/// "peak rate 494 rpm, jump height 66 cm"; empty where there is nothing.
pub fn list(respects: &[Respect], units: &Units) -> String {
    let one = |respect: &Respect| {
        let [value, _] = value_and_limit(respect, units);
        say!(
            "respect-value",
            what = name_of(respect.of, respect.joint),
            value = value
        )
    };
    respects.iter().map(one).collect::<Vec<_>>().join(", ")
}

/// "Beyond what has been seen: peak rate 494 rpm"; none where there is nothing.
pub fn short(respects: &[Respect], units: &Units) -> Option<String> {
    (!respects.is_empty()).then(|| say!("beyond-seen", what = list(respects, units)))
}

/// The same as a sentence.
pub fn sentence(respects: &[Respect], units: &Units) -> Option<String> {
    (!respects.is_empty()).then(|| say!("beyond-seen-sentence", what = list(respects, units)))
}

/// That the jump after a change is: "With it beyond what has been seen: peak rate 494 rpm."
pub fn with_change(respects: &[Respect], units: &Units) -> Option<String> {
    (!respects.is_empty()).then(|| say!("beyond-seen-with-it", what = list(respects, units)))
}

/// How far people have been seen to go, by which source, and what that means.
pub fn meaning(respects: &[Respect], units: &Units) -> String {
    let one = |respect: &Respect| {
        let what = name_of(respect.of, respect.joint);
        let source = respect.source.text();
        let [_, limit] = value_and_limit(respect, units);
        match respect.seen_up_to {
            Some(_) => say!(
                "beyond-seen-up-to",
                what = what,
                limit = limit.as_str(),
                source = source
            ),
            None => source.to_owned(),
        }
    };
    let mut said: Vec<String> = respects.iter().map(one).collect();
    if respects.iter().any(|respect| respect.joint.is_some()) {
        said.push(text("strength-meaning").to_owned());
    }
    said.push(text("beyond-seen-meaning").to_owned());
    said.join(" ")
}
