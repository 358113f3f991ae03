//! Lessons: their files, what is right in them, those that come with the program, and what a pupil has answered.

mod come_along;
mod faults;
mod outcome;
mod progress;
mod truth;

use serde_json::{Value, json};

use turns_aloft::lesson::Lesson;

/// A lesson of one step, to be changed.
pub fn one_step(step: &Value) -> Value {
    json!({
        "turns_aloft_lesson": 1,
        "title": { "en": "A test", "de": "Ein Versuch" },
        "for_whom": "us",
        "minutes": 10,
        "plan": { "parts": [{ "minutes": 10, "doing": "Look." }] },
        "steps": [step],
    })
}

/// A step that asks for the turns of a jump.
pub fn step() -> Value {
    json!({
        "title": "Turns",
        "setup": { "jump": { "start": "senior-triple" } },
        "variants": {
            "higher": { "jump_height_m": 0.5 },
            "same": { "boot_mass_kg": 1.0 },
        },
        "free": ["jump_height_m"],
        "question": "How many turns are there?",
        "answer": { "kind": "number", "of": "turns" },
        "reason": true,
        "observe": "What did you see?",
        "explanation": "There are {turns}, and {higher.turns} where it is higher.",
    })
}

pub fn opened(lesson: &Value) -> Lesson {
    Lesson::open_file(&lesson.to_string()).expect("a lesson in order")
}
