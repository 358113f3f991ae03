//! The answer in words: what each part means, what is to be known of a change.

use super::super::Session;
use super::shown::{hundredths, turns_text};
use super::{Went, changed};
use crate::analysis::budget::Cause;
use crate::analysis::steps::{Flown, Gain};
use crate::say;
use crate::words::Message;

pub const IDEAL: Message = Message("why-ideal");
pub const ICE: Message = Message("why-ice");
pub const TURNS: Message = Message("why-turns");
pub const ORDER: Message = Message("why-order");
pub const BACK: Message = Message("why-back");
const NOT_POSSIBLE: Message = Message("why-not-possible");

/// What a cause is, in this jump.
pub fn cause(session: &Session, cause: Cause) -> String {
    let (scenario, flight) = (session.scenario(), session.flight());
    match cause {
        Cause::Closing => format!(
            "Until arms and legs are in, the body turns more slowly; here they were in {:.2} s after take-off.",
            flight.table.plan.closed_s()
        ),
        Cause::Tightness => format!(
            "What stays far from the axis slows the turning; here the arms came in {:.0} % and the legs {:.0} % of their way.",
            100.0 * scenario.arm_tuck,
            100.0 * scenario.leg_tuck
        ),
        Cause::Opening => format!(
            "Opening for the landing slows the turning again; here it began {:.2} s before touch-down.",
            (flight.touchdown_s - flight.open_s).max(0.0)
        ),
        Cause::Tilt => format!(
            "An axis that leans, or an arm late or left out, lets the body wobble; here it leaned up to {:.1} degrees.",
            session.jump().readout.tilt_peak_rad.to_degrees()
        ),
    }
}

/// The turns owed, and what is still missing of them as shown; none for a free jump.
pub fn missing(session: &Session, went: &Went) -> Option<String> {
    let owed = session.jump().owed?;
    let missing = hundredths(owed.turns) - went.shown.turns;
    let size = turns_text(missing.abs());
    Some(match missing {
        0 => format!("{} turns owed: all there", owed.turns),
        1.. => format!("{} turns owed: {size} missing", owed.turns),
        _ => format!("{} turns owed: {size} more than that", owed.turns),
    })
}

/// What has to stand beside the change that the sentence tells of; empty where there is nothing.
pub fn of_change(session: &Session, went: &Went) -> Vec<String> {
    let Some(proposal) = &went.proposal else {
        return Vec::new();
    };
    let key = changed(&proposal.change);
    let mut said = Vec::new();
    if let Some(source) = proposal.unseen {
        let value = session.units.of(key.kind).text(proposal.change.to);
        let label = key.inline();
        said.push(say!(
            "why-beyond-seen",
            what = label,
            value = value,
            source = source.text()
        ));
    }
    if !proposal.cautions.is_empty() {
        said.push(loads(session, &[("with it", proposal.landing_load_bw)]));
    }
    said.extend(
        proposal
            .cautions
            .iter()
            .map(|caution| caution.text().to_owned()),
    );
    said
}

/// What has to stand beside the steps: the loads of those that carry a caution, and the cautions.
pub fn of_steps(session: &Session) -> Vec<String> {
    let cautioned: Vec<(&str, [f64; 2])> = session
        .gains()
        .filter(|gain| gain.flown == Flown::Forward && !gain.cautions.is_empty())
        .filter_map(|gain| Some((gain.step.text(), gain.landing_load_bw?)))
        .collect();
    if cautioned.is_empty() {
        return Vec::new();
    }
    let cautions = session.step_cautions();
    let mut said = vec![loads(session, &cautioned)];
    said.extend(cautions.iter().map(|&caution| caution.to_owned()));
    said
}

/// The landing load now, and with each of these changes, body weights.
fn loads(session: &Session, then: &[(&str, [f64; 2])]) -> String {
    let text = |[low, high]: [f64; 2]| format!("{low:.1} to {high:.1}");
    let now = text(session.jump().readout.landing_load_bw);
    let then: String = then
        .iter()
        .map(|(what, load_bw)| format!("; {what}, {}", text(*load_bw)))
        .collect();
    format!("Landing load, an estimate, in body weights: {now} now{then}.")
}

/// What a lever's step gives: "+0.062 turns", "back costs 0.041".
pub fn gain(gain: &Gain) -> String {
    match (gain.flown, gain.turns_gained) {
        (Flown::Forward, Some(gained)) => format!("{} turns", signed(gained)),
        (Flown::Back, Some(gained)) => {
            let what = if gained < 0.0 { "wins" } else { "costs" };
            format!("back {what} {:.3}", gained.abs())
        }
        _ => NOT_POSSIBLE.text().to_owned(),
    }
}

/// A change of the turns with its sign: "+0.062", "−0.003".
fn signed(turns: f64) -> String {
    let size = format!("{:.3}", turns.abs());
    let sign = match size.as_str() {
        "0.000" => "",
        _ if turns < 0.0 => "−",
        _ => "+",
    };
    format!("{sign}{size}")
}
