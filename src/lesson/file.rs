//! The saved form of a lesson: a small, versioned JSON file.

use serde_json::{Map, Value, json};

use crate::entries::{Object, said, written};
use crate::fault::{Unreadable, Wrong};
use crate::lesson::{ClassroomAnswer, Lesson, Part, Plan};
use crate::said::Said;
use crate::step_file;
use turns_aloft_scenario::reading::{Read, read};

/// What says in a file that it is a lesson.
const MARK: &str = "turns_aloft_lesson";

/// Version written by this build.
pub const VERSION: u64 = 1;

/// Twice as much as a lesson with as many steps as there may be takes, in two languages. Our choice.
pub const LARGEST_BYTES: usize = 300_000;

/// Steps at most, entries of a list of the plan, and minutes. Our choice.
pub const MOST_STEPS: usize = 20;
const MOST_LISTED: usize = 20;
const MOST_MINUTES: u64 = 240;

const STEPS: &str = "steps";
const PLAN: &str = "plan";
const LISTS: [&str; 3] = ["fetch", "goes_wrong", "curricula"];

impl Lesson {
    /// Whether a text is a lesson's, in order or not.
    pub fn is_in(text: &str) -> bool {
        text.contains(&format!("\"{MARK}\""))
    }

    /// Reads a file's text. Whether every step has one right answer is found by flying it ([`crate::truth`]).
    pub fn open_file(text: &str) -> Result<Self, Unreadable> {
        if text.len() > LARGEST_BYTES {
            return Err(Unreadable::TooLarge);
        }
        let Read { value, twice } = read(text).map_err(Unreadable::NotJson)?;
        match value.get(MARK).and_then(Value::as_u64) {
            None | Some(0) => return Err(Unreadable::NotALesson),
            Some(newer) if newer > VERSION => return Err(Unreadable::Newer(newer)),
            Some(_) => {}
        }
        if let Some(twice) = twice {
            return Err(Unreadable::Wrong(twice.into()));
        }
        let needed = [MARK, "title", "for_whom", "minutes", PLAN, STEPS];
        let wrong = Unreadable::Wrong;
        let mut file = Object::of(MARK, value, &needed, &["pictures"]).map_err(wrong)?;
        let mut lesson = Self {
            title: file.said("title").map_err(wrong)?,
            for_whom: file.said("for_whom").map_err(wrong)?,
            minutes: file
                .whole_number("minutes", 1..=MOST_MINUTES)
                .map_err(wrong)?,
            pictures: file.is("pictures").map_err(wrong)?,
            plan: file.take(PLAN).and_then(plan).map_err(wrong)?,
            steps: Vec::new(),
        };
        let parts = lesson.plan.parts.iter().map(|part| part.minutes).sum();
        if parts != lesson.minutes {
            return Err(wrong(Wrong::Minutes {
                parts,
                lesson: lesson.minutes,
            }));
        }
        let steps = file.each(STEPS, MOST_STEPS, Ok).map_err(wrong)?;
        if steps.is_empty() {
            return Err(wrong(Wrong::TooFew {
                key: STEPS,
                least: 1,
            }));
        }
        for (i, step) in steps.into_iter().enumerate() {
            let in_step = |why| Unreadable::Step { number: i + 1, why };
            lesson.steps.push(step_file::read(step).map_err(in_step)?);
        }
        Ok(lesson)
    }

    /// The file's text.
    pub fn to_file(&self) -> String {
        let mut file = Map::new();
        file.insert(MARK.to_owned(), VERSION.into());
        file.insert("title".to_owned(), written(&self.title));
        file.insert("for_whom".to_owned(), written(&self.for_whom));
        file.insert("minutes".to_owned(), self.minutes.into());
        if self.pictures {
            file.insert("pictures".to_owned(), true.into());
        }
        file.insert(PLAN.to_owned(), written_plan(&self.plan));
        let steps = self.steps.iter().map(step_file::written).collect();
        file.insert(STEPS.to_owned(), Value::Array(steps));
        format!("{:#}\n", Value::Object(file))
    }
}

fn all_written(texts: &[Said]) -> Value {
    texts.iter().map(written).collect()
}

fn plan(value: Value) -> Result<Plan, Wrong> {
    let [fetch, goes_wrong, curricula] = LISTS;
    let optional = [fetch, goes_wrong, curricula, "classroom_answers"];
    let mut plan = Object::of(PLAN, value, &["parts"], &optional)?;
    let mut list = |key| plan.each(key, MOST_LISTED, |text| said(key, text));
    let [fetch, goes_wrong, curricula] = [list(fetch)?, list(goes_wrong)?, list(curricula)?];
    Ok(Plan {
        parts: plan.each("parts", MOST_LISTED, part)?,
        fetch,
        goes_wrong,
        classroom_answers: plan.each("classroom_answers", MOST_LISTED, classroom_answer)?,
        curricula,
    })
}

fn part(value: Value) -> Result<Part, Wrong> {
    let mut part = Object::of("parts", value, &["minutes", "doing"], &[])?;
    Ok(Part {
        minutes: part.whole_number("minutes", 1..=MOST_MINUTES)?,
        doing: part.said("doing")?,
    })
}

fn classroom_answer(value: Value) -> Result<ClassroomAnswer, Wrong> {
    let mut answer = Object::of("classroom_answers", value, &["said", "reply"], &[])?;
    Ok(ClassroomAnswer {
        said: answer.said("said")?,
        reply: answer.said("reply")?,
    })
}

fn written_plan(plan: &Plan) -> Value {
    let part = |it: &Part| json!({ "minutes": it.minutes, "doing": written(&it.doing) });
    let answer =
        |it: &ClassroomAnswer| json!({ "said": written(&it.said), "reply": written(&it.reply) });
    json!({
        "parts": plan.parts.iter().map(part).collect::<Value>(),
        "fetch": all_written(&plan.fetch),
        "goes_wrong": all_written(&plan.goes_wrong),
        "classroom_answers": plan.classroom_answers.iter().map(answer).collect::<Value>(),
        "curricula": all_written(&plan.curricula),
    })
}
