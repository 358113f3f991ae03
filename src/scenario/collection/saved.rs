//! A collection as one file.

use serde::de::IgnoredAny;
use serde::{Deserialize, Serialize};
use serde_json::Value;

use crate::collection::{Collection, Id, LARGEST_BYTES, LONGEST_NAME, Refusal, tidy_name};
use crate::fault::{Entries, Fault, NotJson};
use crate::file;
use crate::file::Opened;
use crate::reading::{Read, read, unmarked};
use crate::scenario::Scenario;

/// Version written by this build. Version 1 has the same fields and is read for ever.
pub const VERSION: u64 = 2;

/// What says in a file that it is a collection.
const MARK: &str = "turns_aloft_collection";

/// Every jump as in a file of its own.
#[derive(Serialize)]
struct Saved<J> {
    turns_aloft_collection: u64,
    jumps: Vec<J>,
}

/// Why a collection was not opened.
#[derive(Debug, Clone, PartialEq)]
pub enum Unreadable {
    TooLarge,
    NotJson(NotJson),
    NotACollection,
    Newer(u64),
    Broken(Fault),
    /// Counted from 1.
    Jump {
        number: usize,
        name: Option<String>,
        why: JumpFault,
    },
    /// It was the file of a single scenario.
    Scenario(file::Unreadable),
    Refused(Refusal),
}

/// What is wrong with one jump of a collection.
#[derive(Debug, Clone, PartialEq)]
pub enum JumpFault {
    Scenario(file::Unreadable),
    Refused(Refusal),
}

impl From<Refusal> for Unreadable {
    fn from(why: Refusal) -> Self {
        Self::Refused(why)
    }
}

/// What a file's text is to be read as.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FileKind {
    /// Also anything that is neither: reading it says what is wrong.
    Scenario,
    Collection,
}

impl FileKind {
    pub fn of(text: &str) -> Self {
        #[derive(Deserialize)]
        struct Head {
            turns_aloft_collection: Option<IgnoredAny>,
        }
        let collection = match serde_json::from_str::<Head>(unmarked(text)) {
            Ok(head) => head.turns_aloft_collection.is_some(),
            // Damaged, it is still a collection.
            Err(_) => text.contains(&format!("\"{MARK}\"")),
        };
        if collection {
            Self::Collection
        } else {
            Self::Scenario
        }
    }
}

impl Collection {
    /// The text of one file with every jump in it.
    pub fn export(&self) -> String {
        let saved = Saved {
            turns_aloft_collection: VERSION,
            jumps: self.entries.iter().map(|it| it.scenario.saved()).collect(),
        };
        let mut text = serde_json::to_string_pretty(&saved)
            .expect("a collection holds nothing that JSON cannot say");
        text.push('\n');
        text
    }

    /// Adds every jump of a collection's file, or the one of a scenario's file, to those here: all
    /// of them or, where something is wrong, none.
    pub fn import(&mut self, text: &str) -> Result<Opened<Vec<Id>>, Unreadable> {
        if text.len() > LARGEST_BYTES {
            return Err(Unreadable::TooLarge);
        }
        let Read { value, twice } = read(text).map_err(Unreadable::NotJson)?;
        let Some(version) = value.get(MARK) else {
            return self.import_one(text);
        };
        match version.as_u64() {
            Some(1..=VERSION) => {}
            Some(newer) if newer > VERSION => return Err(Unreadable::Newer(newer)),
            _ => return Err(Unreadable::NotACollection),
        }
        if let Some(twice) = twice {
            return Err(Unreadable::Broken(twice));
        }
        let jumps = Entries::of(MARK, value, &[MARK, "jumps"])
            .and_then(|mut entries| entries.list("jumps"))
            .map_err(Unreadable::Broken)?;
        self.attempt(|changed| {
            let mut added = Opened {
                read: Vec::new(),
                earlier_body: false,
            };
            for (i, jump) in jumps.into_iter().enumerate() {
                let one = changed.import_jump(i + 1, jump)?;
                added.read.push(one.read);
                added.earlier_body |= one.earlier_body;
            }
            Ok(added)
        })
    }

    /// A scenario's file.
    fn import_one(&mut self, text: &str) -> Result<Opened<Vec<Id>>, Unreadable> {
        match Scenario::open_file(text) {
            Ok(opened) => Ok(Opened {
                read: vec![self.add(opened.read)?],
                earlier_body: opened.earlier_body,
            }),
            Err(file::Unreadable::NotAScenario) => Err(Unreadable::NotACollection),
            Err(why) => Err(Unreadable::Scenario(why)),
        }
    }

    fn import_jump(&mut self, number: usize, jump: Value) -> Result<Opened<Id>, Unreadable> {
        let name = name_in(&jump);
        let refused = |why: JumpFault| Unreadable::Jump {
            number,
            name: name.clone(),
            why,
        };
        let opened = Scenario::from_saved(jump).map_err(|why| refused(JumpFault::Scenario(why)))?;
        Ok(Opened {
            read: (self.append(opened.read)).map_err(|why| refused(JumpFault::Refused(why)))?,
            earlier_body: opened.earlier_body,
        })
    }
}

/// The name that a jump in a file seems to have, as far as a sentence has room for it.
fn name_in(jump: &Value) -> Option<String> {
    let name = jump.get("scenario")?.get("name")?.as_str()?;
    let shown: String = name.chars().take(LONGEST_NAME).collect();
    tidy_name(&shown).ok()
}
