//! Why the jump has the turns it has, in words: what each part means, what is to be known of a change.

use crate::answers::why::BudgetAnswer;
use crate::session::Session;
use turns_aloft_analysis::budget::Cause;
use turns_aloft_analysis::steps::Flown;
use turns_aloft_describe::lever::step_text;
use turns_aloft_describe::number::plain;
use turns_aloft_describe::turns::{hundredths, turns_text};
use turns_aloft_describe::unit::UnitText;
use turns_aloft_describe::{Inline, Text, beyond};
use turns_aloft_words::{Message, decimal, say, text};

pub const IDEAL: Message = Message("why-ideal");
pub const ICE: Message = Message("why-ice");
pub const TURNS: Message = Message("why-turns");
pub const ORDER: Message = Message("why-order");
pub const BACK: Message = Message("why-back");

/// What a cause is, in this jump.
pub fn cause(session: &Session, cause: Cause) -> String {
    let (scenario, flight) = (session.scenario(), session.flight());
    match cause {
        Cause::Closing => say!(
            "why-closing-about",
            time = decimal(flight.table.plan.closed_s(), 2)
        ),
        Cause::Tightness => {
            let [arms, legs] = scenario.most_in().map(|tuck| decimal(100.0 * tuck, 0));
            say!("why-tightness-about", arms = arms, legs = legs)
        }
        Cause::Opening => say!(
            "why-opening-about",
            time = decimal((flight.touchdown_s - flight.open_s).max(0.0), 2)
        ),
        Cause::Tilt => say!(
            "why-tilt-about",
            tilt = decimal(session.jump().readout.tilt_peak_rad.to_degrees(), 1)
        ),
    }
}

/// The turns owed, and what is still missing of them as shown; none for a free jump.
pub fn missing(session: &Session, budget_answer: &BudgetAnswer) -> Option<String> {
    let owed = session.jump().owed?;
    let is_over_rotated = owed.over_rotated_deg.is_some();
    let missing = hundredths(owed.turns) - budget_answer.shown.turns;
    let size = turns_text(missing.abs());
    let owed = plain(owed.turns);
    Some(match missing {
        0 => say!("why-owed-all-there", owed = owed),
        1.. => say!("why-owed-missing", owed = owed, turns = size),
        _ if is_over_rotated => say!("why-owed-over-rotated", owed = owed, turns = size),
        _ => say!("why-owed-more", owed = owed, turns = size),
    })
}

/// What has to stand beside the change that the sentence tells of; empty where there is nothing.
pub fn of_change(session: &Session, budget_answer: &BudgetAnswer) -> Vec<String> {
    let Some(proposal) = &budget_answer.proposal else {
        return Vec::new();
    };
    let parameter = proposal.change.parameter;
    let mut said = Vec::new();
    if let Some(source) = proposal.unseen {
        let value = session
            .units()
            .of(parameter.kind())
            .text(proposal.change.to);
        let label = parameter.inline();
        said.push(say!(
            "why-beyond-seen",
            what = label,
            value = value,
            source = source.text()
        ));
    }
    if let Some(beyond) = beyond::with_change(&proposal.beyond_seen, session.units()) {
        said.push(beyond);
    }
    if !proposal.cautions.is_empty() {
        said.push(loads(
            session,
            &[(
                text("why-load-with-it").to_owned(),
                proposal.landing_load_bw,
            )],
        ));
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
    let cautioned: Vec<(String, [f64; 2])> = session
        .gains()
        .filter(|gain| gain.flown == Flown::Forward && !gain.cautions.is_empty())
        .filter_map(|gain| {
            Some((
                step_text(gain.lever, session.units()),
                gain.landing_load_bw?,
            ))
        })
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
fn loads(session: &Session, then: &[(String, [f64; 2])]) -> String {
    let range =
        |[low, high]: [f64; 2]| say!("from-to", from = decimal(low, 1), to = decimal(high, 1));
    let now = range(session.jump().readout.landing_load_bw);
    let then: Vec<String> = then
        .iter()
        .map(|(what, load_bw)| {
            say!(
                "why-load-then",
                what = what.as_str(),
                load = range(*load_bw)
            )
        })
        .collect();
    say!("why-loads", now = now, then = then.join("; "))
}
