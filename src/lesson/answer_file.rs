//! The answer that a step asks for, as it stands in a file.

use serde_json::{Value, json};

use crate::answer::{Answer, Choice, Meaning, OfCurve};
use crate::entries::{Object, number, word, written as written_text};
use crate::fault::Wrong;
use crate::figure::{Figure, NoFigure, of_variant};
use crate::quantity::Quantity;
use crate::said::Said;
use crate::setup::{Setup, Variant};
use crate::setup_file::SETUP;
use turns_aloft_scenario::curve::Curve;
use turns_aloft_scenario::fault::Fault;
use turns_aloft_turntable::RunCurve;

/// Options of a choice.
const LEAST_OPTIONS: usize = 2;
const MOST_OPTIONS: usize = 5;

/// What stands under `kind` of an answer.
pub const NUMBER: &str = "number";
pub const CHOICE: &str = "choice";
pub const CURVE: &str = "curve";
pub const WORDS: &str = "words";
const KINDS: [&str; 4] = [NUMBER, CHOICE, CURVE, WORDS];

pub const ANSWER: &str = "answer";
const KIND: &str = "kind";
const OF: &str = "of";
const OPTIONS: &str = "options";
pub const TEXT: &str = "text";

/// By what the right option is found; a choice has one of them. `from` comes with `to`.
const FOUND_BY: [&str; 5] = ["most_of", "least_of", "from", OF, "open"];
const TO: &str = "to";

/// What an option stands for: a variant, what comes of a quantity, or a value.
const STANDS_FOR: [&str; 3] = ["variant", "is", "value"];

/// Whether what is set up has such a quantity.
pub fn check(setup: Option<&Setup>, quantity: Quantity) -> Result<(), Wrong> {
    let is = match setup {
        Some(Setup::Jump(_)) => quantity.is_of_jump(),
        Some(Setup::WorkedExample(_)) => quantity.is_of_run(),
        // Led by hand, nothing is known beforehand.
        Some(Setup::Turntable(on)) => quantity.is_of_run() && on.programme.is_some(),
        None => false,
    };
    if is {
        Ok(())
    } else {
        Err(Wrong::NotOfSetup(quantity))
    }
}

struct Of<'a> {
    setup: Option<&'a Setup>,
    variants: &'a [Variant],
}

impl Of<'_> {
    fn figure(&self, key: &'static str, written: Value) -> Result<Figure, Wrong> {
        let written = word(key, written)?;
        let figure = Figure::read(&written, self.variants);
        let figure = figure.map_err(|why| Wrong::NoFigure { key, why })?;
        check(self.setup, figure.quantity)?;
        Ok(figure)
    }

    /// A quantity of no particular variant.
    fn quantity(&self, key: &'static str, written: Value) -> Result<Quantity, Wrong> {
        let figure = self.figure(key, written)?;
        match figure.variant.and_then(|place| self.variants.get(place)) {
            None => Ok(figure.quantity),
            Some(variant) => {
                let why = NoFigure::Variant(variant.name.clone());
                Err(Wrong::NoFigure { key, why })
            }
        }
    }

    fn curve(&self, written: Value) -> Result<OfCurve, Wrong> {
        let written = word(OF, written)?;
        let of = of_variant(&written, self.variants);
        let (variant, curve) = of.map_err(|why| Wrong::NoFigure { key: OF, why })?;
        let known: Vec<&str> = match self.setup {
            Some(Setup::Jump(_)) => Curve::ALL.map(Curve::name).into(),
            Some(Setup::Turntable(on)) if on.programme.is_none() => Vec::new(),
            Some(_) => RunCurve::ALL.map(RunCurve::name).into(),
            None => Vec::new(),
        };
        if !known.contains(&curve) {
            let curve = curve.to_owned();
            return Err(Wrong::UnknownCurve { curve, known });
        }
        let curve = curve.to_owned();
        Ok(OfCurve { curve, variant })
    }

    /// The variant that an option stands for; `setup` is what is set up itself.
    fn variant(&self, name: &str) -> Result<Option<usize>, Wrong> {
        if name == SETUP {
            return Ok(None);
        }
        let place = self
            .variants
            .iter()
            .position(|variant| variant.name == name);
        let unknown = || Wrong::NoFigure {
            key: STANDS_FOR[0],
            why: NoFigure::Variant(name.to_owned()),
        };
        place.map(Some).ok_or_else(unknown)
    }
}

/// Reads one, of what is set up and its variants.
pub fn read(value: Value, setup: Option<&Setup>, variants: &[Variant]) -> Result<Answer, Wrong> {
    let [most, least, from, of, open] = FOUND_BY;
    let optional = [most, least, from, TO, of, open, OPTIONS];
    let mut answer = Object::of(ANSWER, value, &[KIND], &optional)?;
    let kind = answer.word(KIND)?;
    let context = Of { setup, variants };
    // What does not belong to its kind is left over.
    let read = match kind.as_str() {
        NUMBER => Answer::Number(context.figure(OF, answer.take(OF)?)?),
        CURVE => Answer::Curve(context.curve(answer.take(OF)?)?),
        WORDS => Answer::Words,
        CHOICE => Answer::Choice(choice(&mut answer, &context)?),
        _ => {
            return Err(Wrong::UnknownWord {
                key: KIND,
                written: kind,
                known: KINDS.to_vec(),
            });
        }
    };
    match optional
        .into_iter()
        .find(|key| answer.take_if_there(key).is_some())
    {
        Some(key) => Err(Wrong::Broken(Fault::Unknown {
            key: key.to_owned(),
            known: match read {
                Answer::Words => vec![KIND],
                Answer::Number(_) | Answer::Curve(_) => vec![KIND, OF],
                Answer::Choice(_) => [&[KIND, OPTIONS][..], &FOUND_BY].concat(),
            },
        })),
        None => Ok(read),
    }
}

fn choice(answer: &mut Object, context: &Of<'_>) -> Result<Choice, Wrong> {
    let options = answer.each(OPTIONS, MOST_OPTIONS, Ok)?;
    if options.len() < LEAST_OPTIONS {
        return Err(Wrong::TooFew {
            key: OPTIONS,
            least: LEAST_OPTIONS,
        });
    }
    let choice = match FOUND_BY.map(|key| answer.take_if_there(key)) {
        [Some(of), None, None, None, None] => best(context, (FOUND_BY[0], of), options)?,
        [None, Some(of), None, None, None] => best(context, (FOUND_BY[1], of), options)?,
        [None, None, Some(from), None, None] => Choice::Change {
            figures: [
                context.figure(FOUND_BY[2], from)?,
                context.figure(TO, answer.take(TO)?)?,
            ],
            options: each(options, STANDS_FOR[1], |key, it| {
                let written = word(key, it)?;
                Meaning::named(&written).ok_or(Wrong::UnknownWord {
                    key,
                    written,
                    known: Meaning::ALL.map(Meaning::key).to_vec(),
                })
            })?,
        },
        [None, None, None, Some(of), None] => Choice::Nearest {
            of: context.figure(OF, of)?,
            options: each(options, STANDS_FOR[2], |key, it| {
                number(key, &it, -1e6..=1e6)
            })?,
        },
        [None, None, None, None, Some(Value::Bool(true))] => Choice::Open {
            options: options
                .into_iter()
                .map(|it| Object::of(OPTIONS, it, &[TEXT], &[])?.said(TEXT))
                .collect::<Result<_, _>>()?,
        },
        _ => return Err(Wrong::NotOneOf(FOUND_BY.to_vec())),
    };
    Ok(choice)
}

fn best(
    context: &Of<'_>,
    (key, of): (&'static str, Value),
    options: Vec<Value>,
) -> Result<Choice, Wrong> {
    Ok(Choice::Best {
        of: context.quantity(key, of)?,
        most: key == FOUND_BY[0],
        options: each(options, STANDS_FOR[0], |key, it| {
            context.variant(&word(key, it)?)
        })?,
    })
}

/// The options' texts, and what each stands for; no two for the same.
fn each<T: PartialEq>(
    options: Vec<Value>,
    key: &'static str,
    stands_for: impl Fn(&'static str, Value) -> Result<T, Wrong>,
) -> Result<Vec<(Said, T)>, Wrong> {
    let mut read: Vec<(Said, T)> = Vec::with_capacity(options.len());
    for (i, option) in options.into_iter().enumerate() {
        let mut option = Object::of(OPTIONS, option, &[TEXT, key], &[])?;
        let meant = stands_for(key, option.take(key)?)?;
        if read.iter().any(|(_, other)| *other == meant) {
            return Err(Wrong::SameOption(i + 1));
        }
        read.push((option.said(TEXT)?, meant));
    }
    Ok(read)
}

/// As it stands in a file.
pub fn written(answer: &Answer, variants: &[Variant]) -> Value {
    match answer {
        Answer::Number(figure) => json!({ KIND: NUMBER, OF: figure.written(variants) }),
        Answer::Curve(of) => {
            let variant = of.variant.and_then(|place| variants.get(place));
            let name = variant.map_or_else(
                || of.curve.clone(),
                |variant| format!("{}.{}", variant.name, of.curve),
            );
            json!({ KIND: CURVE, OF: name })
        }
        Answer::Words => json!({ KIND: WORDS }),
        Answer::Choice(choice) => written_choice(choice, variants),
    }
}

fn written_choice(choice: &Choice, variants: &[Variant]) -> Value {
    let [_, _, from, of, open] = FOUND_BY;
    match choice {
        Choice::Best { of, most, options } => {
            let name = |place: &Option<usize>| {
                let variant = place.and_then(|place| variants.get(place));
                variant.map_or(SETUP, |variant| &variant.name)
            };
            let options = options
                .iter()
                .map(|(said, it)| option(said, STANDS_FOR[0], name(it)));
            json!({
                KIND: CHOICE,
                FOUND_BY[usize::from(!most)]: of.key(),
                OPTIONS: options.collect::<Value>(),
            })
        }
        Choice::Change { figures, options } => {
            let options = options.iter();
            let options = options.map(|(said, it)| option(said, STANDS_FOR[1], it.key()));
            json!({
                KIND: CHOICE,
                from: figures[0].written(variants),
                TO: figures[1].written(variants),
                OPTIONS: options.collect::<Value>(),
            })
        }
        Choice::Nearest {
            of: figure,
            options,
        } => {
            let options = options.iter();
            let options = options.map(|(said, it)| option(said, STANDS_FOR[2], *it));
            json!({
                KIND: CHOICE,
                of: figure.written(variants),
                OPTIONS: options.collect::<Value>(),
            })
        }
        Choice::Open { options } => {
            let options = options
                .iter()
                .map(|said| json!({ TEXT: written_text(said) }));
            json!({ KIND: CHOICE, open: true, OPTIONS: options.collect::<Value>() })
        }
    }
}

fn option(said: &Said, key: &str, stands_for: impl Into<Value>) -> Value {
    json!({ TEXT: written_text(said), key: stands_for.into() })
}
