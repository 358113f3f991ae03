//! The jumps kept on this device, as the session handles them: with what each came to, and with
//! whatever goes wrong said in a sentence.

use std::collections::HashMap;
use std::fmt;

use crate::describe::start::shown_name;
use crate::say;
use crate::scenario::Scenario;
use crate::scenario::file::Opened;
use crate::scenario::fly::Owed;
use crate::session::collection::kept::Unreadable;
use crate::session::collection::{Collection, Id};
use crate::session::{Question, Session};
use crate::words::text;

#[derive(Debug, Default)]
pub struct Keeping {
    collection: Collection,
    results: HashMap<Id, CameTo>,
    /// Grows with every change that is to be kept.
    changes: u64,
}

/// What a kept jump came to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CameTo {
    pub turns: f64,
    /// None for a free jump.
    pub owed: Option<Owed>,
    /// Whether it is beyond what has been seen, in any respect.
    pub is_beyond_seen: bool,
}

impl Keeping {
    pub const fn collection(&self) -> &Collection {
        &self.collection
    }

    /// Flies the first kept jump whose turns are not known yet; whether there was one.
    pub fn fly_next(&mut self) -> bool {
        let unknown = self
            .collection
            .entries()
            .iter()
            .find(|entry| !self.results.contains_key(&entry.id));
        let Some(entry) = unknown else {
            return false;
        };
        let jump = entry.scenario.fly();
        let came_to = CameTo {
            turns: jump.turns,
            owed: jump.owed,
            is_beyond_seen: !entry.scenario.beyond_seen(&jump).is_empty(),
        };
        self.results.insert(entry.id, came_to);
        true
    }

    /// What a kept jump came to, once it is known.
    pub fn came_to(&self, id: Id) -> Option<CameTo> {
        self.results.get(&id).copied()
    }
}

impl Session {
    pub const fn keeping(&self) -> &Keeping {
        &self.compare.keeping
    }

    /// Grows with every change of the kept jumps.
    pub const fn kept_changes(&self) -> u64 {
        self.compare.keeping.changes
    }

    /// Does something to the kept jumps and has it kept; what is refused is said.
    fn keeping_to<T, E: fmt::Display>(
        &mut self,
        refused: fn(String) -> String,
        change: impl FnOnce(&mut Collection) -> Result<T, E>,
    ) -> Option<T> {
        match change(&mut self.compare.keeping.collection) {
            Ok(done) => {
                self.compare.keeping.changes += 1;
                Some(done)
            }
            Err(why) => {
                self.say(refused(why.to_string()));
                None
            }
        }
    }

    /// Keeps the present jump under the name that is shown.
    pub fn keep_jump(&mut self) {
        let scenario = self.as_shown();
        self.keeping_to(|why| say!("not-kept", why = why), |kept| kept.add(scenario));
    }

    /// Opens a kept jump.
    pub fn open_kept(&mut self, id: Id) {
        if let Some(entry) = self.keeping().collection.get(id) {
            self.open(entry.scenario.clone());
        }
    }

    pub fn rename_kept(&mut self, id: Id, name: &str) {
        if self
            .keeping_to(
                |why| say!("not-renamed", why = why),
                |kept| kept.rename(id, name),
            )
            .is_some()
        {
            self.follow_reference();
        }
    }

    /// One place nearer the first.
    pub fn move_kept_up(&mut self, id: Id) {
        if self.compare.keeping.collection.move_up(id) {
            self.compare.keeping.changes += 1;
        }
    }

    /// One place nearer the last.
    pub fn move_kept_down(&mut self, id: Id) {
        if self.compare.keeping.collection.move_down(id) {
            self.compare.keeping.changes += 1;
        }
    }

    pub fn delete_kept(&mut self, id: Id) {
        self.keeping_to(|why| say!("not-deleted", why = why), |kept| kept.delete(id));
    }

    /// Brings the kept jump last deleted back.
    pub fn bring_back_kept(&mut self) {
        self.keeping_to(
            |why| say!("not-brought-back", why = why),
            Collection::bring_back,
        );
    }

    /// All kept jumps as one file.
    pub fn kept_file(&self) -> String {
        self.keeping().collection.export()
    }

    /// Adds the jumps of a collection's file to the kept ones and shows them.
    pub(in crate::session) fn open_collection(&mut self, file: &str) {
        let Some(added) = self.keeping_to(
            |why| say!("not-opened", why = why),
            |kept| kept.import(file),
        ) else {
            return;
        };
        self.ask(Question::Compare);
        let jumps = added.read.len();
        self.say(match jumps {
            0 => text("collection-empty").to_owned(),
            jumps => say!("collection-added", jumps = jumps),
        });
        if added.earlier_body {
            self.say_too(&say!("earlier-body", jumps = jumps));
        }
    }

    /// Keeps the present jump where it was changed and is not kept yet, before another takes its
    /// place. Returns what to say of it.
    ///
    /// # Errors
    ///
    /// A sentence, where it cannot be kept.
    pub(in crate::session) fn rescue(&mut self) -> Result<Option<String>, String> {
        if !self.differs_from_base() || self.is_kept(self.scenario()) {
            return Ok(None);
        }
        let scenario = self.as_shown();
        let keeping = &mut self.compare.keeping;
        let id = keeping
            .collection
            .add(scenario)
            .map_err(|why| why.to_string())?;
        keeping.changes += 1;
        let name = keeping
            .collection
            .get(id)
            .map(|entry| entry.scenario.name.as_str())
            .unwrap_or_default();
        Ok(Some(say!("changed-jump-kept", name = name)))
    }

    fn as_shown(&self) -> Scenario {
        Scenario {
            name: shown_name(&self.scenario().name).to_owned(),
            ..self.scenario().clone()
        }
    }

    /// Whether this very jump is among the kept ones, whatever it is called there.
    fn is_kept(&self, scenario: &Scenario) -> bool {
        let entries = self.keeping().collection.entries();
        entries.iter().any(|entry| {
            let named = Scenario {
                name: scenario.name.clone(),
                ..entry.scenario.clone()
            };
            named == *scenario
        })
    }

    /// The kept jumps as the browser keeps them.
    pub fn kept_jumps(&self) -> String {
        self.keeping().collection.to_kept()
    }

    /// Takes up the kept jumps of the last visit, or as another page has just left them. Those kept
    /// before the body was refined are to be kept anew: what is kept then is no longer old.
    ///
    /// # Errors
    ///
    /// What was kept cannot be read; what is here stays.
    pub fn restore_kept_jumps(&mut self, text: &str) -> Result<(), Unreadable> {
        let Opened { read, earlier_body } = Collection::from_kept(text)?;
        let keeping = &mut self.compare.keeping;
        keeping.collection.follow(read);
        keeping.changes += u64::from(earlier_body);
        // An id may stand for another jump now.
        keeping.results.clear();
        self.follow_reference();
        self.earlier_body_unreported |= earlier_body;
        Ok(())
    }
}
