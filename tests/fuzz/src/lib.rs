//! What holds for whatever is read, however it came about.

pub mod framed;

use serde_json::Value;
use turns_aloft::describe::Sentence;
use turns_aloft::scenario::Scenario;
use turns_aloft::scenario::collection::{Collection, LONGEST_NAME, MOST};
use turns_aloft::scenario::link::{from_fragment, to_fragment};
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::trace::{Table, TableReader, TraceFault};

/// A sentence that a notice on the page has room for. Our choice.
const LONGEST_SENTENCE: usize = 400;

/// What is wrong is said in one line.
pub fn said(why: &impl Sentence) {
    one_line(&why.sentence());
}

/// A sentence is one line, for which a notice has room.
pub fn one_line(said: &str) {
    assert!(!said.trim().is_empty());
    assert!(!said.contains(char::is_control), "{said:?}");
    assert!(said.chars().count() <= LONGEST_SENTENCE, "{said:?}");
}

/// The table of a sensor's file that comes in these pieces.
pub fn sensor_table(pieces: &[&[u8]]) -> Result<Table, TraceFault> {
    let mut reader = TableReader::new("trace.csv");
    for piece in pieces {
        reader.push(piece)?;
    }
    reader.finish()
}

/// What was let in is flown without a number that is none, and can be given away again, whole.
pub fn good(jump: &Scenario) {
    flies(jump);
    let again = Scenario::open_file(&jump.to_file()).expect("a file is read back");
    same(&again.read, jump);
    assert!(!again.earlier_body);
    let fragment = to_fragment(jump, None);
    let link = from_fragment(&fragment)
        .expect("it is ours")
        .expect("a link is read back");
    same(&link.jump, jump);
    assert_eq!(link.reference, None);
    assert!(!link.earlier_body);
}

/// To the last bit of every number.
pub fn same(one: &Scenario, other: &Scenario) {
    assert_eq!(one, other);
    for key in Parameter::ALL {
        let (one, other) = (key.get(one), key.get(other));
        assert_eq!(one.to_bits(), other.to_bits(), "{key:?}");
    }
}

fn flies(jump: &Scenario) {
    let flown = jump.fly();
    assert!(flown.turns.is_finite());
    assert!(flown.owed.is_none_or(|owed| owed.shortfall_deg.is_finite()));
    assert!(
        flown
            .owed
            .is_none_or(|owed| owed.landing_facing_deg.abs() <= 180.0)
    );
    assert!(
        flown
            .owed
            .and_then(|owed| owed.over_rotated_deg)
            .is_none_or(|deg| deg > 90.0)
    );
    // JSON has no word for a number that is none: it would become null.
    let readout = serde_json::to_value(flown.readout).expect("a readout is plain");
    assert!(!has_null(&readout), "{readout}");
}

fn has_null(value: &Value) -> bool {
    match value {
        Value::Null => true,
        Value::Array(values) => values.iter().any(has_null),
        Value::Object(values) => values.values().any(has_null),
        _ => false,
    }
}

/// A collection is in order, however it came about, and can be given away and kept.
pub fn in_order(collection: &Collection) {
    let entries = collection.entries();
    assert!(entries.len() <= MOST);
    for (i, entry) in entries.iter().enumerate() {
        let name = &entry.scenario.name;
        assert!((1..=LONGEST_NAME).contains(&name.chars().count()));
        assert!(name.trim() == name && !name.contains(char::is_control));
        for other in &entries[..i] {
            assert!(other.id != entry.id && other.scenario.name != *name);
        }
        good(&entry.scenario);
    }
    let mut other = Collection::default();
    let added = other
        .import(&collection.export())
        .expect("its file is read back");
    assert!(!added.earlier_body);
    assert_eq!(other.entries().len(), entries.len());
    for (one, other) in entries.iter().zip(other.entries()) {
        same(&one.scenario, &other.scenario);
    }
    let kept = Collection::from_kept(&collection.to_kept()).expect("what is kept is read back");
    assert_eq!(kept.read.entries(), entries);
    assert!(!kept.earlier_body);
}
