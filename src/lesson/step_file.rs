//! A step, as it stands in a file.

use serde_json::{Map, Value};

use crate::answer::Answer;
use crate::answer_file::{self, ANSWER, TEXT, check};
use crate::entries::{Object, said, word, written as written_text};
use crate::fault::Wrong;
use crate::figure::{Piece, pieces};
use crate::free::Free;
use crate::said::Said;
use crate::setup::Setup;
use crate::setup_file::{self, SETUP, VARIANTS, setup, variants, written_changes};
use crate::step::Step;

const FREE: &str = "free";
const TITLE: &str = "title";
const QUESTION: &str = "question";
const REASON: &str = "reason";
const OBSERVE: &str = "observe";
const EXPLANATION: &str = "explanation";

/// Inputs that are free at most: all of them.
const MOST_FREE: usize = 40;

pub fn read(value: Value) -> Result<Step, Wrong> {
    let needed = [TITLE, QUESTION, ANSWER, EXPLANATION];
    let optional = [SETUP, VARIANTS, FREE, REASON, OBSERVE];
    let mut step = Object::of("steps", value, &needed, &optional)?;
    let set_up = step.take_if_there(SETUP).map(setup).transpose()?;
    let named = step.take_if_there(VARIANTS);
    let keys = step.each(FREE, MOST_FREE, |key| word(FREE, key))?;
    let (variants, free) = match (&set_up, named) {
        (Some(setup), None) => (Vec::new(), free(keys, setup)?),
        (Some(setup), Some(named)) => (variants(named, setup)?, free(keys, setup)?),
        (None, Some(_)) => return Err(Wrong::NothingSetUp(VARIANTS)),
        (None, None) if !keys.is_empty() => return Err(Wrong::NothingSetUp(FREE)),
        (None, None) => (Vec::new(), Vec::new()),
    };
    let answer = answer_file::read(step.take(ANSWER)?, set_up.as_ref(), &variants)?;
    let observe = step.take_if_there(OBSERVE);
    let read = Step {
        title: step.said(TITLE)?,
        question: step.said(QUESTION)?,
        reason: step.is(REASON)?,
        observe: observe.map(|it| said(OBSERVE, it)).transpose()?,
        explanation: step.said(EXPLANATION)?,
        setup: set_up,
        variants,
        free,
        answer,
    };
    read.check_texts()?;
    Ok(read)
}

impl Step {
    /// Whether every figure in its texts is one of what is set up.
    fn check_texts(&self) -> Result<(), Wrong> {
        let texts = [
            (TITLE, Some(&self.title)),
            (QUESTION, Some(&self.question)),
            (OBSERVE, self.observe.as_ref()),
            (EXPLANATION, Some(&self.explanation)),
        ];
        for (key, said) in texts {
            self.check_text(key, said)?;
        }
        if let Answer::Choice(choice) = &self.answer {
            for said in choice.texts() {
                self.check_text(TEXT, Some(said))?;
            }
        }
        Ok(())
    }

    fn check_text(&self, key: &'static str, said: Option<&Said>) -> Result<(), Wrong> {
        for text in said.into_iter().flat_map(Said::all) {
            let no_figure = |why| Wrong::NoFigure { key, why };
            for piece in pieces(text, &self.variants).map_err(no_figure)? {
                if let Piece::Figure(figure) = piece {
                    check(self.setup.as_ref(), figure.quantity)?;
                }
            }
        }
        Ok(())
    }
}

fn free(keys: Vec<String>, setup: &Setup) -> Result<Vec<Free>, Wrong> {
    let all = Free::all(setup);
    let mut read: Vec<Free> = Vec::with_capacity(keys.len());
    for key in keys {
        let Some(free) = all.iter().find(|free| free.key() == key) else {
            let known = all.iter().map(|free| free.key()).collect();
            return Err(Wrong::UnknownFree { key, known });
        };
        if read.contains(free) {
            return Err(Wrong::FreeTwice(free.key()));
        }
        read.push(*free);
    }
    Ok(read)
}

/// As it stands in a file.
pub fn written(step: &Step) -> Value {
    let mut file = Map::new();
    let mut put = |key: &str, value: Value| file.insert(key.to_owned(), value);
    put(TITLE, written_text(&step.title));
    if let Some(setup) = &step.setup {
        put(SETUP, setup_file::written(setup));
    }
    if !step.variants.is_empty() {
        let named = step.variants.iter();
        let named = named.map(|it| (it.name.clone(), written_changes(&it.changes)));
        put(VARIANTS, Value::Object(named.collect()));
    }
    if !step.free.is_empty() {
        put(FREE, step.free.iter().map(|free| free.key()).collect());
    }
    put(QUESTION, written_text(&step.question));
    put(ANSWER, answer_file::written(&step.answer, &step.variants));
    if step.reason {
        put(REASON, true.into());
    }
    if let Some(observe) = &step.observe {
        put(OBSERVE, written_text(observe));
    }
    put(EXPLANATION, written_text(&step.explanation));
    Value::Object(file)
}
