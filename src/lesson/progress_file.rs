//! What a pupil has answered, as it is kept by the browser, or given away as a file.

use serde_json::{Value, json};

use crate::answer::Answer;
use crate::entries::{Object, wrong_kind};
use crate::fault::Wrong;
use crate::lesson::Lesson;
use crate::progress::{LONGEST_NAME, MOST_POINTS, Prediction, Progress, Record, Stage};
use crate::said::LONGEST;
use turns_aloft_scenario::fault::{Expected, NotJson};
use turns_aloft_scenario::reading::{Read, read};

/// What says in a file that it is what a pupil has answered.
const MARK: &str = "turns_aloft_answers";

/// Version written by this build.
pub const VERSION: u64 = 1;

/// As large as a lesson's own file may be.
pub const LARGEST_BYTES: usize = crate::file::LARGEST_BYTES;

const FILE: [&str; 4] = ["lesson", "who", "at", "steps"];
const STEP: [&str; 4] = ["prediction", "reason", "observation", "stage"];

/// Why what was kept was not opened.
#[derive(Debug, Clone, PartialEq)]
pub enum Unreadable {
    TooLarge,
    NotJson(NotJson),
    NotAnswers,
    Newer(u64),
    /// Of a lesson with another title, or with other steps.
    OtherLesson,
    Wrong(Wrong),
    /// In one of its steps, counted from 1.
    Step {
        number: usize,
        why: Wrong,
    },
}

impl Progress {
    /// Whether a text is what a pupil has answered, in order or not.
    pub fn is_in(text: &str) -> bool {
        text.contains(&format!("\"{MARK}\""))
    }

    /// The file's text.
    pub fn to_file(&self, lesson: &Lesson) -> String {
        let steps = self.records().iter().map(|record| {
            let prediction = match &record.prediction {
                None => Value::Null,
                Some(Prediction::Number(value)) => json!(value),
                Some(Prediction::Choice(place)) => json!(place),
                Some(Prediction::Curve(points)) => json!(points),
                Some(Prediction::Words(words)) => json!(words),
            };
            json!({
                STEP[0]: prediction,
                STEP[1]: record.reason,
                STEP[2]: record.observation,
                STEP[3]: record.stage.key(),
            })
        });
        let file = json!({
            MARK: VERSION,
            FILE[0]: title(lesson),
            FILE[1]: self.who,
            FILE[2]: self.at(),
            FILE[3]: steps.collect::<Value>(),
        });
        format!("{file:#}\n")
    }

    /// Reads a file's text, as answers to this lesson.
    pub fn open_file(text: &str, lesson: &Lesson) -> Result<Self, Unreadable> {
        if text.len() > LARGEST_BYTES {
            return Err(Unreadable::TooLarge);
        }
        let Read { value, twice } = read(text).map_err(Unreadable::NotJson)?;
        match value.get(MARK).and_then(Value::as_u64) {
            None | Some(0) => return Err(Unreadable::NotAnswers),
            Some(newer) if newer > VERSION => return Err(Unreadable::Newer(newer)),
            Some(_) => {}
        }
        if let Some(twice) = twice {
            return Err(Unreadable::Wrong(twice.into()));
        }
        let wrong = Unreadable::Wrong;
        let needed = [MARK, FILE[0], FILE[1], FILE[2], FILE[3]];
        let mut file = Object::of(MARK, value, &needed, &[]).map_err(wrong)?;
        let own = file.word(FILE[0]).map_err(wrong)? == title(lesson);
        let most = lesson.steps.len();
        let steps = file.each(FILE[3], most, Ok).map_err(wrong)?;
        if !own || steps.len() != most {
            return Err(Unreadable::OtherLesson);
        }
        let who = text_of(&mut file, FILE[1], LONGEST_NAME).map_err(wrong)?;
        let last = most as u64 - 1;
        let at = file.whole_number(FILE[2], 0..=last).map_err(wrong)?;
        let mut records = Vec::with_capacity(most);
        for (i, (value, step)) in steps.into_iter().zip(&lesson.steps).enumerate() {
            let in_step = |why| Unreadable::Step { number: i + 1, why };
            let record = record(value, &step.answer).map_err(in_step)?;
            if record.stage > Stage::Predict && !record.is_predicted(step) {
                return Err(in_step(Wrong::NotItsAnswer));
            }
            records.push(record);
        }
        let read = Self::kept(who, at as usize, records);
        // No step is shown before those in front of it have been explained.
        if read.is_reached(read.at()) {
            Ok(read)
        } else {
            Err(Unreadable::OtherLesson)
        }
    }
}

/// By which a lesson is known again, whatever is spoken.
fn title(lesson: &Lesson) -> &str {
    lesson.title.all().next().unwrap_or_default()
}

fn record(value: Value, answer: &Answer) -> Result<Record, Wrong> {
    let mut of = Object::of(FILE[3], value, &STEP[1..], &STEP[..1])?;
    let stage = of.word(STEP[3])?;
    Ok(Record {
        prediction: of
            .take_if_there(STEP[0])
            .map(|it| prediction(it, answer))
            .transpose()?,
        reason: text_of(&mut of, STEP[1], LONGEST)?,
        observation: text_of(&mut of, STEP[2], LONGEST)?,
        stage: Stage::named(&stage).ok_or(Wrong::UnknownWord {
            key: STEP[3],
            written: stage,
            known: Stage::ALL.map(Stage::key).to_vec(),
        })?,
    })
}

fn prediction(value: Value, answer: &Answer) -> Result<Prediction, Wrong> {
    let read = match answer {
        Answer::Number(_) => value.as_f64().map(Prediction::Number),
        Answer::Choice(_) => value
            .as_u64()
            .map(|place| Prediction::Choice(place as usize)),
        Answer::Curve(_) => points(&value).map(Prediction::Curve),
        Answer::Words => value
            .as_str()
            .map(|words| Prediction::Words(words.to_owned())),
    };
    // One that is not complete yet is kept as well: words that are still empty.
    let kept = |it: &Prediction| it.fits(answer) || *it == Prediction::Words(String::new());
    read.filter(kept).ok_or(Wrong::NotItsAnswer)
}

fn points(value: &Value) -> Option<Vec<[f64; 2]>> {
    let list = value.as_array().filter(|list| list.len() <= MOST_POINTS)?;
    let point = |value: &Value| match value.as_array()?.as_slice() {
        [t_s, value] => Some([t_s.as_f64()?, value.as_f64()?]),
        _ => None,
    };
    list.iter().map(point).collect()
}

/// A text that may be empty, and have line breaks.
fn text_of(of: &mut Object, key: &'static str, most: usize) -> Result<String, Wrong> {
    let Value::String(text) = of.take(key)? else {
        return Err(wrong_kind(key, Expected::Text));
    };
    if text.chars().count() > most {
        return Err(Wrong::LongText { key, most });
    }
    Ok(text)
}
