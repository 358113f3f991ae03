//! What a step sets up, as it stands in a file.

use serde_json::{Map, Value, json};

use crate::entries::{Object, number, word, written as written_text, wrong_kind};
use crate::fault::Wrong;
use crate::setup::{Changes, OnTurntable, Refused, Setup, Variant, WorkedExample, changed};
use turns_aloft_scenario::fault::Expected;
use turns_aloft_scenario::input::Input;
use turns_aloft_scenario::{Scenario, starts};
use turns_aloft_turntable::programme::{ProgrammeFault, Row};
use turns_aloft_turntable::setup::{Number, STAND};
use turns_aloft_turntable::{Friction, Position, Programme, Setup as TurntableSetup, Stand};

/// The kinds of setup; each has one of them.
const KINDS: [&str; 3] = ["jump", "turntable", "worked_example"];

pub const SETUP: &str = "setup";
const START: &str = "start";
const SET: &str = "set";
const PROGRAMME: &str = "programme";
pub const VARIANTS: &str = "variants";

/// Inputs that are changed at most, variants of a step, rows of a programme, and its longest time, s: each variant
/// is flown as soon as its step is asked. Our choice.
const MOST_CHANGES: usize = 30;
const MOST_VARIANTS: usize = 5;
const MOST_ROWS: usize = 100;
const LONGEST_S: f64 = 30.0;

/// Letters of a variant's name at most.
const LONGEST_NAME: usize = 30;

pub fn setup(value: Value) -> Result<Setup, Wrong> {
    let mut setup = Object::of(SETUP, value, &[], &KINDS)?;
    let read = match KINDS.map(|kind| setup.take_if_there(kind)) {
        [Some(it), None, None] => Setup::Jump(Box::new(jump(it)?)),
        [None, Some(it), None] => Setup::Turntable(Box::new(turntable(it)?)),
        [None, None, Some(it)] => Setup::WorkedExample(worked_example(it)?),
        _ => return Err(Wrong::NotOneOf(KINDS.to_vec())),
    };
    read.flyable()?;
    Ok(read)
}

impl Setup {
    /// Whether it can be flown, without flying a jump, which always can.
    fn flyable(&self) -> Result<(), Refused> {
        match self {
            Self::Turntable(on) => on.movable(),
            Self::Jump(_) | Self::WorkedExample(_) => Ok(()),
        }
    }
}

/// The jump of a file, or a starting point with some inputs changed.
fn jump(value: Value) -> Result<Scenario, Wrong> {
    if value.get(START).is_none() {
        let opened = Scenario::from_saved(value).map_err(Wrong::Jump)?;
        return Ok(opened.read);
    }
    let mut jump = Object::of(KINDS[0], value, &[START], &[SET])?;
    let name = jump.word(START)?;
    let start = starts::named(&name).ok_or(Wrong::UnknownStart(name))?;
    let set = jump.take_if_there(SET).map(changes).transpose()?;
    Ok(changed(&start.scenario, &set.unwrap_or_default())?)
}

/// Keys and what they are set to.
fn changes(value: Value) -> Result<Changes, Wrong> {
    let Value::Object(entries) = value else {
        return Err(wrong_kind(SET, Expected::Object));
    };
    if entries.len() > MOST_CHANGES {
        let (key, most) = (SET, MOST_CHANGES);
        return Err(Wrong::TooMany { key, most });
    }
    let change = |(key, value): (String, Value)| match value {
        // 1 and 1.0 are the same change.
        Value::Number(number) => Ok([key, number.as_f64().unwrap_or_default().to_string()]),
        Value::String(_) => Ok([key, word(SET, value)?]),
        _ => Err(Wrong::NotAValue(key)),
    };
    entries
        .into_iter()
        .map(change)
        .collect::<Result<_, _>>()
        .map(Changes)
}

fn turntable(value: Value) -> Result<OnTurntable, Wrong> {
    let mut of = Object::of(KINDS[1], value, &[], &[SET, PROGRAMME])?;
    let set = of.take_if_there(SET).map(changes).transpose()?;
    let mut set = set.unwrap_or_default();
    // What somebody stands on first, since that brings a bearing along.
    set.0.sort_by_key(|[key, _]| key != STAND);
    let mut setup = TurntableSetup::on(Stand::Platform);
    for [key, value] in &set.0 {
        if key == STAND {
            let mut on = setup;
            on.set(key, value).map_err(Refused::Turntable)?;
            setup = TurntableSetup::on(on.stand);
        } else {
            setup.set(key, value).map_err(Refused::Turntable)?;
        }
    }
    let programme = of.take_if_there(PROGRAMME).map(programme).transpose()?;
    Ok(OnTurntable { setup, programme })
}

fn programme(value: Value) -> Result<Programme, Wrong> {
    let Value::Array(list) = value else {
        return Err(wrong_kind(PROGRAMME, Expected::List));
    };
    if list.len() > MOST_ROWS {
        let (key, most) = (PROGRAMME, MOST_ROWS);
        return Err(Wrong::TooMany { key, most });
    }
    let mut rows: Vec<Row> = Vec::new();
    for (i, row) in list.into_iter().enumerate() {
        let row = self::row(row, i as u64 + 1)?;
        if rows.last().is_some_and(|before| row.t_s <= before.t_s) {
            let line = row.line;
            return Err(Wrong::Programme(ProgrammeFault::OutOfOrder { line }));
        }
        rows.push(row);
    }
    if rows.len() < 2 {
        return Err(Wrong::Programme(ProgrammeFault::TooShort));
    }
    Ok(Programme { rows })
}

const TIME: &str = "time_s";
const HANDS: &str = "hand_distance_m";
const OTHERS: [&str; 2] = ["legs", "twist_rad"];

fn row(value: Value, line: u64) -> Result<Row, Wrong> {
    let mut row = Object::of(PROGRAMME, value, &[TIME, HANDS], &OTHERS)?;
    let [legs, twist_rad] = OTHERS.map(|key| match row.take_if_there(key) {
        Some(value) => number(key, &value, -1.0..=1.0),
        None => Ok(0.0),
    });
    Ok(Row {
        line,
        t_s: row.number(TIME, 0.0..=LONGEST_S)?,
        position: Position {
            hand_distance_m: row.number(HANDS, 0.0..=2.0)?,
            legs: legs?,
            twist_rad: twist_rad?,
        },
    })
}

const EXAMPLE: [&str; 3] = ["source", "rate_rad_s", "inertia"];
const TORQUE: &str = "friction_torque_n_m";

fn worked_example(value: Value) -> Result<WorkedExample, Wrong> {
    let mut of = Object::of(KINDS[2], value, &EXAMPLE, &[TORQUE])?;
    let [least, most] = Number::Rate.range();
    let torque_n_m = of
        .take_if_there(TORQUE)
        .map(|it| number(TORQUE, &it, 0.0..=100.0));
    let example = WorkedExample {
        source: of.said(EXAMPLE[0])?,
        rate_rad_s: of.number(EXAMPLE[1], least..=most)?,
        inertia: of.each(EXAMPLE[2], MOST_ROWS, inertia)?,
        friction: Friction {
            torque_n_m: torque_n_m.transpose()?.unwrap_or(0.0),
            viscous_n_m_s: 0.0,
        },
    };
    if example.inertia.len() < 2 || example.body().is_none() {
        return Err(Wrong::NotRising);
    }
    Ok(example)
}

const AT: [&str; 2] = [TIME, "inertia_kg_m2"];

fn inertia(value: Value) -> Result<[f64; 2], Wrong> {
    let mut at = Object::of(EXAMPLE[2], value, &AT, &[])?;
    let [t_s, inertia_kg_m2] = [
        at.number(AT[0], 0.0..=LONGEST_S)?,
        at.number(AT[1], 1e-3..=1e4)?,
    ];
    Ok([t_s, inertia_kg_m2])
}

/// The variants of what is set up.
pub fn variants(value: Value, setup: &Setup) -> Result<Vec<Variant>, Wrong> {
    let Value::Object(named) = value else {
        return Err(wrong_kind(VARIANTS, Expected::Object));
    };
    if named.len() > MOST_VARIANTS {
        let (key, most) = (VARIANTS, MOST_VARIANTS);
        return Err(Wrong::TooMany { key, most });
    }
    let mut variants = Vec::with_capacity(named.len());
    for (name, set) in named {
        let plain = name.chars().all(|c| c.is_ascii_lowercase() || c == '_');
        if !plain || !(1..=LONGEST_NAME).contains(&name.len()) {
            return Err(Wrong::OddName(name));
        }
        let changes = changes(set)?;
        setup.changed(&changes)?.flyable()?;
        variants.push(Variant { name, changes });
    }
    Ok(variants)
}

/// As it stands in a file: a jump that is a starting point but for some inputs as that.
pub fn written(setup: &Setup) -> Value {
    let (kind, value) = match setup {
        Setup::Jump(jump) => (KINDS[0], written_jump(jump)),
        Setup::Turntable(on) => (KINDS[1], written_turntable(on)),
        Setup::WorkedExample(example) => (KINDS[2], written_example(example)),
    };
    json!({ kind: value })
}

fn written_jump(jump: &Scenario) -> Value {
    let start = starts::all()
        .iter()
        .find(|start| start.scenario.name == jump.name);
    if let Some(start) = start {
        let set: Map<String, Value> = Input::differing(&start.scenario, jump)
            .filter_map(|input| Some((input.key().to_owned(), value_of(input, jump)?)))
            .collect();
        let short = json!({ START: start.name, SET: set });
        // Knots, or a note of somebody's own, stand in a whole file only.
        if self::jump(short.clone()).is_ok_and(|read| read == *jump) {
            return short;
        }
    }
    json!(jump.saved())
}

fn value_of(input: Input, jump: &Scenario) -> Option<Value> {
    match input {
        Input::Number(parameter) => Some(parameter.get(jump).into()),
        Input::Choice(choice) => Some(choice.written(jump)),
        Input::Led => None,
    }
}

/// What changes, as it stands in a file.
pub fn written_changes(changes: &Changes) -> Value {
    let entry = |[key, value]: &[String; 2]| {
        let number = value.parse().ok().filter(|it: &f64| it.is_finite());
        (
            key.clone(),
            number.map_or_else(|| value.as_str().into(), Value::from),
        )
    };
    Value::Object(changes.0.iter().map(entry).collect())
}

fn written_turntable(on: &OnTurntable) -> Value {
    let mut of = Map::new();
    let set = Changes(on.setup.written());
    of.insert(SET.to_owned(), written_changes(&set));
    if let Some(programme) = &on.programme {
        let row = |row: &Row| {
            let Position {
                hand_distance_m,
                legs,
                twist_rad,
            } = row.position;
            json!({ TIME: row.t_s, HANDS: hand_distance_m, OTHERS[0]: legs, OTHERS[1]: twist_rad })
        };
        let rows = programme.rows.iter().map(row).collect();
        of.insert(PROGRAMME.to_owned(), Value::Array(rows));
    }
    Value::Object(of)
}

fn written_example(example: &WorkedExample) -> Value {
    let at = |&[t_s, inertia_kg_m2]: &[f64; 2]| json!({ AT[0]: t_s, AT[1]: inertia_kg_m2 });
    json!({
        EXAMPLE[0]: written_text(&example.source),
        EXAMPLE[1]: example.rate_rad_s,
        EXAMPLE[2]: example.inertia.iter().map(at).collect::<Value>(),
        TORQUE: example.friction.torque_n_m,
    })
}
