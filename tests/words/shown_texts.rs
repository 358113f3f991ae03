//! Collects the texts that a visit shows, in the current language.

mod answers;
mod broken_files;
mod by_hand;
mod notices;
mod tables;
mod visits;

use serde_json::{Value, json};
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::{Scenario, starts};
use turns_aloft::session::compare::Which;
use turns_aloft::session::goal::GoalTurns;
use turns_aloft::session::readings::readings;
use turns_aloft::session::{Question, Session};

pub use broken_files::BROKEN_JSON;

/// A text, and where it is shown.
#[derive(Debug, Clone, PartialEq)]
pub struct ShownText {
    pub place: String,
    pub text: String,
}

/// Collects the texts that are shown.
#[derive(Default)]
struct Collector(Vec<ShownText>);

impl Collector {
    fn add(&mut self, place: impl Into<String>, text: impl Into<String>) {
        let (place, text) = (place.into(), text.into());
        if !text.is_empty() {
            self.0.push(ShownText { place, text });
        }
    }

    fn notice(&mut self, place: &str, session: &mut Session) {
        let notice = session.notice().map(str::to_owned);
        self.add(
            place,
            notice.unwrap_or_else(|| panic!("{place}: nothing is said")),
        );
        session.dismiss();
    }

    fn readings(&mut self, place: &str, session: &Session) {
        for line in readings(session).into_iter().chain(session.answers()) {
            let place = format!("{place}, {}", line.quantity);
            self.add(place.clone() + ", label", line.label);
            self.add(place.clone() + ", text", line.text);
            self.add(place + ", about", line.about);
        }
    }
}

/// Whether a text has `word` as a whole word.
pub fn has_word(text: &str, word: &str) -> bool {
    text.match_indices(word).any(|(place, _)| {
        let part = |c: Option<char>| c.is_some_and(|c| c.is_alphanumeric() || "-_".contains(c));
        !part(text[..place].chars().next_back()) && !part(text[place + word.len()..].chars().next())
    })
}

/// Texts of tables, errors, answers and notices, from one visit with each starting point.
pub fn all_texts() -> Vec<ShownText> {
    let mut collected = Collector::default();
    tables::tables(&mut collected);
    tables::refusals(&mut collected);
    for start in starts::all() {
        visits::visit(&mut collected, start.name, &start.scenario);
    }
    for (name, jump) in visits::others() {
        visits::visit(&mut collected, name, &jump);
    }
    let first = &starts::all()[0].scenario;
    answers::goal_answers(&mut collected, first, 2.0);
    answers::goal_answers(&mut collected, first, 9.0);
    answers::map_answers(&mut collected);
    answers::compare_answers(&mut collected);
    notices::notices(&mut collected);
    broken_files::broken_files(&mut collected);
    by_hand::turntable(&mut collected);
    by_hand::refused(&mut collected);
    by_hand::slow_flight(&mut collected);
    by_hand::turn_try(&mut collected);
    collected.0
}

/// The answers of one visit to every question, shown again after a change without being computed
/// again.
pub fn texts_after(change: impl Fn(&mut Session)) -> Vec<ShownText> {
    let mut collected = Collector::default();
    let four = starts::named("four-turns").expect("a start");
    let mut session = Session::default();
    session.open(four.scenario.clone());
    session.show_range(true);
    session.set_goal(GoalTurns::Turns(4.5));
    session.set_reference(Which::AsOpened);
    session.try_change(Parameter::ALL[0], 18.0);
    for question in Question::ALL {
        session.ask(question);
        session.poll(|| true);
    }
    change(&mut session);
    for question in Question::ALL {
        session.ask(question);
        if question == Question::Compare {
            session.poll(|| true);
        }
        collected.readings(question.name(), &session);
    }
    for (place, text) in ["win"; 9].into_iter().zip(session.goal_cautions()) {
        collected.add(place, text);
    }
    session.set_reference(Which::Start("trampoline".to_owned()));
    change(&mut session);
    session.poll(|| true);
    collected.readings("beside a start", &session);
    collected.0
}

/// A jump with a user's own name, which is not translated.
pub fn own() -> Scenario {
    Scenario {
        name: "Monday".to_owned(),
        ..starts::all()[1].scenario.clone()
    }
}

pub fn collection(jumps: &[&Scenario]) -> Value {
    let jumps: Vec<Value> = jumps
        .iter()
        .map(|jump| serde_json::from_str(&jump.to_file()).expect("JSON"))
        .collect();
    json!({"turns_aloft_collection": 1, "jumps": jumps})
}
