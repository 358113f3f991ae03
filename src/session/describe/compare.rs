//! How the jump differs from another attempt, and what the kept jumps came to, as lines of text.

use crate::describe::reading::{Group, Reading, line};
use crate::session::Session;
use turns_aloft_analysis::hang_time;
use turns_aloft_describe::beyond;
use turns_aloft_describe::call::verdict_text;
use turns_aloft_describe::comparison::{Compared, ORDER};
use turns_aloft_describe::goal::hang_time as hang_times_text;
use turns_aloft_describe::turns::{signed_text, turns_text};
use turns_aloft_scenario::input::Input;
use turns_aloft_words::{say, text};

/// All lines, as far as the answer stands.
pub(crate) fn lines(session: &Session) -> Vec<Reading> {
    let mut lines = Vec::new();
    if let Some(compared) = session.compared() {
        of_compared(session, compared, &mut lines);
    }
    for (i, entry) in session.library().collection().entries().iter().enumerate() {
        let outcome = session.kept_result(entry);
        let said = outcome.map_or_else(
            || entry.scenario.name.clone(),
            |outcome| {
                let said = say!(
                    "compare-kept-came-to",
                    name = entry.scenario.name.as_str(),
                    turns = turns_text(outcome.hundredths()),
                    call = verdict_text(outcome.owed)
                );
                if outcome.is_beyond_seen {
                    say!("compare-kept-beyond-seen", said = said)
                } else {
                    said
                }
            },
        );
        let number = i + 1;
        lines.push(line(
            Group::Answer,
            format!("kept:{number}"),
            say!("compare-line-kept", number = number),
            said,
            text("compare-line-kept-about"),
        ));
    }
    lines
}

/// Of a difference in the jump height, both hang times: a height and its hang time are shown together.
pub fn hang_times(session: &Session, compared: &Compared, place: usize) -> Option<String> {
    let input = compared.comparison.differences[place].input;
    let reference = session
        .reference()
        .filter(|_| input == Input::Number(hang_time::OF))?;
    hang_times_text(&reference.jump, session.jump().readout.hang_time_s)
}

fn of_compared(session: &Session, compared: &Compared, lines: &mut Vec<Reading>) {
    lines.push(line(
        Group::Answer,
        "compare:sentence",
        text("compare-line-sentence"),
        compared.sentence(),
        ORDER.text(),
    ));
    let [of_beside, of_present] = compared.turns.map(turns_text);
    lines.push(line(
        Group::Answer,
        "compare:turns",
        text("compare-line-turns"),
        say!(
            "compare-turns",
            from = of_beside,
            to = of_present,
            turns = signed_text(compared.whole())
        ),
        text("compare-line-turns-about"),
    ));
    if let Some(reference) = session.reference().filter(|it| !it.beyond_seen.is_empty()) {
        lines.push(line(
            Group::Answer,
            "compare:beyond_seen",
            say!(
                "compare-line-beyond-seen",
                reference = compared.reference.as_str()
            ),
            beyond::list(&reference.beyond_seen, session.units()),
            beyond::meaning(&reference.beyond_seen, session.units()),
        ));
    }
    for (i, difference) in compared.comparison.differences.iter().enumerate() {
        let [from, to] = compared.change(i, session.units());
        let to = match hang_times(session, compared, i) {
            Some(hang_times) => format!("{to}, {hang_times}"),
            None => to,
        };
        lines.push(line(
            Group::Answer,
            format!("compare:{}", difference.input.key()),
            compared.label(i),
            say!(
                "compare-difference",
                from = from,
                to = to,
                turns = signed_text(compared.parts[i])
            ),
            ORDER.text(),
        ));
    }
}
