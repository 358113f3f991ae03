//! What would win the missing turns, as lines of text.

use crate::answers::goal::can;
use crate::describe::goal_words::question;
use crate::describe::reading::{Group, Reading, line};
use crate::describe::weights;
use crate::session::Session;
use turns_aloft_describe::goal as words;
use turns_aloft_describe::weights::needed as needed_text;
use turns_aloft_describe::{Label, Text};
use turns_aloft_words::{decimal, text};

/// All lines, as far as the answer stands.
pub(crate) fn lines(session: &Session) -> Vec<Reading> {
    let units = session.units();
    let mut lines = vec![line(
        Group::Answer,
        "goal:target",
        text("goal-line-target"),
        decimal(session.goal_turns(), 3),
        question(session),
    )];
    for (single, _) in session.singles() {
        let verdict = single.judgement.verdict.text();
        let text = match &single.proposal {
            Some(proposal) if can(single.judgement.verdict) => format!(
                "{}: {}",
                words::value_and_change(units, single, proposal),
                words::judgement(units, &single.judgement, &proposal.beyond_seen)
            ),
            _ => format!("{verdict}: {}", words::most(units, single)),
        };
        lines.push(line(
            Group::Answer,
            format!("goal:{}", single.lever.key()),
            single.lever.parameter().label(),
            text,
            words::basis(units, single),
        ));
    }
    if let (Some(combination), _) = session.combination() {
        let parts: Vec<String> = words::parts(units, combination)
            .into_iter()
            .map(|change| words::part(units, change))
            .collect();
        lines.push(line(
            Group::Answer,
            "goal:combination",
            text("goal-line-combination"),
            format!(
                "{}: {}",
                parts.join(", "),
                words::judgement(units, &combination.judgement, &combination.beyond_seen)
            ),
            words::effort(combination),
        ));
    }
    let needed: Vec<_> = session.weights_needed().map(|(needed, _)| needed).collect();
    lines.extend(needed.iter().map(|needed| {
        let text = needed_text(units, needed);
        let about = self::text("weights-no-technique");
        weights::answer(self::text("weights"), needed.hands_keep, text, about)
    }));
    if !needed.is_empty() {
        lines.push(weights::answer_known());
    }
    lines
}
