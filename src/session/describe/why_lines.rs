//! Why the jump has the turns it has, as lines of text.

use crate::answers::why::BudgetAnswer;
use crate::describe::reading::{Group, Reading, line};
use crate::describe::weights;
use crate::describe::why_words as words;
use crate::session::Session;
use turns_aloft_analysis::budget::Cause;
use turns_aloft_analysis::steps::Gain;
use turns_aloft_describe::budget::budget_sentence;
use turns_aloft_describe::lever::{gained_and_beyond_text, step_text};
use turns_aloft_describe::turns::turns_text;
use turns_aloft_describe::weights::{more as more_text, turns as outcome_text};
use turns_aloft_words::{say, text};

/// All lines, as far as the answer stands.
pub(crate) fn lines(session: &Session) -> Vec<Reading> {
    let mut lines = Vec::new();
    if let Some(budget_answer) = session.budget_answer() {
        lines.extend(budget(session, budget_answer));
    }
    lines.extend(session.gains().map(|it| gain(session, it)));
    lines.extend(cautions("caution:steps", &words::of_steps(session)));
    if let Some(more) = session.more_weights() {
        let label = more_text(session.units(), more);
        let about = text("weights-no-technique");
        lines.extend(more.outcomes.iter().map(|outcome| {
            let text = outcome_text(outcome, session.jump().owed.map(|owed| owed.turns));
            weights::answer(&label, outcome.hands_keep, text, about)
        }));
        lines.push(weights::answer_known());
    }
    lines
}

fn budget(session: &Session, budget_answer: &BudgetAnswer) -> Vec<Reading> {
    let line = |quantity: &'static str, label: &'static str, text: String, about: String| {
        line(Group::Answer, quantity, label, text, about)
    };
    let turns = |hundredths: i64| say!("in-turns", turns = turns_text(hundredths));
    let mut lines = vec![
        line(
            "sentence",
            text("why-line-sentence"),
            budget_sentence(session.scenario(), &budget_answer.budget),
            text("why-line-sentence-about").to_owned(),
        ),
        line(
            "ideal_turns",
            text("why-line-ideal"),
            turns(budget_answer.shown.ideal),
            words::IDEAL.text().to_owned(),
        ),
    ];
    for (cause, loss) in Cause::ORDER.into_iter().zip(budget_answer.shown.losses) {
        let (quantity, label) = match cause {
            Cause::Closing => ("lost_by_closing_turns", text("why-line-closing")),
            Cause::Tightness => ("lost_by_tightness_turns", text("why-line-tightness")),
            Cause::Opening => ("lost_by_opening_turns", text("why-line-opening")),
            Cause::Tilt => ("lost_by_tilt_turns", text("why-line-tilt")),
        };
        let about = words::cause(session, cause);
        lines.push(line(quantity, label, turns(loss), about));
    }
    if let Some(missing) = words::missing(session, budget_answer) {
        lines.push(line(
            "missing_turns",
            text("why-line-owed"),
            missing,
            text("why-line-owed-about").to_owned(),
        ));
    }
    lines.extend(cautions(
        "caution:one_change",
        &words::of_change(session, budget_answer),
    ));
    lines
}

fn gain(session: &Session, gain: &Gain) -> Reading {
    line(
        Group::Answer,
        format!("gain:{}", gain.lever.key()),
        step_text(gain.lever, session.units()),
        gained_and_beyond_text(gain, session.units()),
        text("why-line-gain-about"),
    )
}

fn cautions(quantity: &'static str, said: &[String]) -> Option<Reading> {
    (!said.is_empty()).then(|| {
        line(
            Group::Answer,
            quantity,
            text("why-line-caution"),
            said.join(" "),
            text("why-line-caution-about"),
        )
    })
}
