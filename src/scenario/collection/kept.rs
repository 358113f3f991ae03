//! A collection as the browser keeps it: with what tells its jumps apart.

use serde::Serialize;
use serde_json::Value;

use crate::collection::{Collection, Entry, Id, LARGEST_BYTES, Refusal, tidy_name};
use crate::fault::{Entries, Fault, NotJson};
use crate::file;
use crate::file::Opened;
use crate::reading::{Read, read};
use crate::scenario::Scenario;

/// Version written by this build. Version 1 has the same fields and is read for ever.
pub const VERSION: u64 = 2;

/// What says in a text that it is kept jumps.
const MARK: &str = "turns_aloft_kept_jumps";

/// No collection ever gets that far; JSON's readers agree on numbers up to here.
const MOST_IDS: u64 = 1 << 53;

#[derive(Serialize)]
struct Kept<J> {
    turns_aloft_kept_jumps: u64,
    next_id: u64,
    jumps: Vec<SavedJump<J>>,
}

#[derive(Serialize)]
struct SavedJump<J> {
    id: Id,
    jump: J,
}

/// Why what was kept could not be read.
#[derive(Debug, Clone, PartialEq)]
pub enum Unreadable {
    Newer(u64),
    TooLong,
    NotJson(NotJson),
    NoVersion,
    Broken(Fault),
    /// More jumps were kept, one after the other, than anybody can have.
    TooOften,
    Scenario(file::Unreadable),
    Refused(Refusal),
    /// A name that is not as this collection writes it, or that another has.
    OddName,
    /// Two jumps have the number that tells them apart, or one has a number not given out yet.
    Twice,
}

impl From<Refusal> for Unreadable {
    fn from(why: Refusal) -> Self {
        Self::Refused(why)
    }
}

impl From<Fault> for Unreadable {
    fn from(why: Fault) -> Self {
        Self::Broken(why)
    }
}

impl Collection {
    /// What a reload needs, as text; what was deleted is not among it.
    pub fn to_kept(&self) -> String {
        let jumps = self.entries.iter().map(|entry| SavedJump {
            id: entry.id,
            jump: entry.scenario.saved(),
        });
        serde_json::to_string(&Kept {
            turns_aloft_kept_jumps: VERSION,
            next_id: self.next_id,
            jumps: jumps.collect(),
        })
        .expect("a collection holds nothing that JSON cannot say")
    }

    /// Reads what was kept. Where that fails it must not be written over unasked.
    pub fn from_kept(kept: &str) -> Result<Opened<Self>, Unreadable> {
        if kept.len() > LARGEST_BYTES {
            return Err(Unreadable::TooLong);
        }
        let Read { value, twice } = read(kept).map_err(Unreadable::NotJson)?;
        match value.get(MARK).and_then(Value::as_u64) {
            Some(1..=VERSION) => {}
            Some(newer) if newer > VERSION => return Err(Unreadable::Newer(newer)),
            _ => return Err(Unreadable::NoVersion),
        }
        if let Some(twice) = twice {
            return Err(twice.into());
        }
        let mut kept = Entries::of(MARK, value, &[MARK, "next_id", "jumps"])?;
        let (next_id, jumps) = (kept.whole_number("next_id")?, kept.list("jumps")?);
        if next_id > MOST_IDS {
            return Err(Unreadable::TooOften);
        }
        let mut taken_up = Self::default();
        let earlier_body = taken_up.attempt(|read| {
            read.next_id = next_id;
            let mut earlier_body = false;
            for jump in jumps {
                earlier_body |= read.restore(jump)?;
            }
            Ok::<_, Unreadable>(earlier_body)
        })?;
        Ok(Opened {
            read: taken_up,
            earlier_body,
        })
    }

    /// Becomes what another page has made of the kept jumps; what was deleted here can still be
    /// brought back.
    pub fn follow(&mut self, other: Self) {
        self.entries = other.entries;
        self.next_id = self.next_id.max(other.next_id);
        self.deleted
            .retain(|(_, entry)| self.entries.iter().all(|other| other.id != entry.id));
    }

    /// Whether the jump was kept before the body was refined.
    fn restore(&mut self, kept: Value) -> Result<bool, Unreadable> {
        let mut kept = Entries::of("jumps", kept, &["id", "jump"])?;
        let id = Id(kept.whole_number("id")?);
        let opened = Scenario::from_saved(kept.take("jump")?).map_err(Unreadable::Scenario)?;
        let scenario = opened.read;
        let name = tidy_name(&scenario.name)?;
        if self.free_name(name, None) != scenario.name {
            return Err(Unreadable::OddName);
        }
        if id.0 >= self.next_id || self.get(id).is_some() {
            return Err(Unreadable::Twice);
        }
        self.entries.push(Entry { id, scenario });
        Ok(opened.earlier_body)
    }
}
