//! The jumps kept on this device: any number of them up to a limit, in the user's own order.
//!
//! Everything in it can be saved as one file and opened again; it knows neither screen nor browser.

pub mod kept;
pub mod saved;

use std::collections::HashSet;

use serde::{Deserialize, Serialize};

use crate::scenario::Scenario;

/// Jumps kept at most: more than anybody finds again in a list. Our choice.
pub const MOST: usize = 500;

/// Largest file of a collection. Browsers give a page's storage about 5 MB (from memory).
pub const LARGEST_BYTES: usize = 2_000_000;

/// Characters of a name at most. Our choice: what a list can show.
pub const LONGEST_NAME: usize = 80;

/// One kept jump, whatever it is called and wherever it stands; no other ever has the same.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Id(u64);

/// A kept jump; its name is the scenario's own, and no other's.
#[derive(Debug, Clone, PartialEq)]
pub struct Entry {
    pub id: Id,
    pub scenario: Scenario,
}

#[derive(Debug, Clone, Default, PartialEq)]
pub struct Collection {
    entries: Vec<Entry>,
    /// With the place each had, the last one last. Not kept over a reload.
    deleted: Vec<(usize, Entry)>,
    next_id: u64,
}

/// Why something was not done.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Refusal {
    NoName,
    LongName,
    TooMany,
    TooLarge,
    Gone,
    NothingDeleted,
}

impl Collection {
    /// In the user's order.
    pub fn entries(&self) -> &[Entry] {
        &self.entries
    }

    pub fn get(&self, id: Id) -> Option<&Entry> {
        self.place(id).map(|place| &self.entries[place])
    }

    fn place(&self, id: Id) -> Option<usize> {
        self.entries.iter().position(|entry| entry.id == id)
    }

    /// Keeps a jump, as the last. A name that another already has gets a number.
    pub fn add(&mut self, scenario: Scenario) -> Result<Id, Refusal> {
        self.attempt(|changed| changed.append(scenario))
    }

    fn append(&mut self, mut scenario: Scenario) -> Result<Id, Refusal> {
        scenario.name = self.free_name(tidy_name(&scenario.name)?, None);
        let id = Id(self.next_id);
        self.next_id += 1;
        self.entries.push(Entry { id, scenario });
        Ok(id)
    }

    /// Gives a jump another name; one that another already has gets a number.
    pub fn rename(&mut self, id: Id, name: &str) -> Result<(), Refusal> {
        self.attempt(|changed| {
            let place = changed.place(id).ok_or(Refusal::Gone)?;
            let name = changed.free_name(tidy_name(name)?, Some(id));
            changed.entries[place].scenario.name = name;
            Ok(())
        })
    }

    /// One place nearer the first; whether it moved.
    pub fn move_up(&mut self, id: Id) -> bool {
        match self.place(id) {
            None | Some(0) => false,
            Some(place) => {
                self.entries.swap(place, place - 1);
                true
            }
        }
    }

    /// One place nearer the last; whether it moved.
    pub fn move_down(&mut self, id: Id) -> bool {
        let below = self
            .place(id)
            .and_then(|place| self.entries.get(place + 1))
            .map(|below| below.id);
        below.is_some_and(|below| self.move_up(below))
    }

    /// Deletes a jump; [`Self::restore_deleted`] can undo it.
    pub fn delete(&mut self, id: Id) -> Result<(), Refusal> {
        let place = self.place(id).ok_or(Refusal::Gone)?;
        if self.deleted.len() == MOST {
            self.deleted.remove(0);
        }
        self.deleted.push((place, self.entries.remove(place)));
        Ok(())
    }

    /// The name of what [`Self::restore_deleted`] would bring back.
    pub fn last_deleted(&self) -> Option<&str> {
        let (_, entry) = self.deleted.last()?;
        Some(&entry.scenario.name)
    }

    /// Puts the jump last deleted back to its place; done again, the one before it.
    pub fn restore_deleted(&mut self) -> Result<Id, Refusal> {
        self.attempt(|changed| {
            let (place, mut entry) = changed.deleted.pop().ok_or(Refusal::NothingDeleted)?;
            let id = entry.id;
            // Another may have taken its name meanwhile.
            entry.scenario.name = changed.free_name(entry.scenario.name, None);
            let place = place.min(changed.entries.len());
            changed.entries.insert(place, entry);
            Ok(id)
        })
    }

    /// The name, or the first with a number behind it that none but `except` has.
    fn free_name(&self, name: String, except: Option<Id>) -> String {
        let others = self.entries.iter().filter(|entry| Some(entry.id) != except);
        let taken: HashSet<&str> = others.map(|entry| &*entry.scenario.name).collect();
        if !taken.contains(&*name) {
            return name;
        }
        (2..)
            .map(|number| numbered(&name, number))
            .find(|name| !taken.contains(&**name))
            .expect("there are fewer names than numbers")
    }

    /// Does the whole of a change, or nothing of it where it fails or leaves too much.
    fn attempt<T, E: From<Refusal>>(
        &mut self,
        change: impl FnOnce(&mut Self) -> Result<T, E>,
    ) -> Result<T, E> {
        let mut changed = self.clone();
        let done = change(&mut changed)?;
        if changed.entries.len() > MOST {
            return Err(Refusal::TooMany.into());
        }
        let each_fits = changed.entries.iter().all(|it| it.scenario.fits_a_file());
        if !each_fits || changed.export().len() > LARGEST_BYTES {
            return Err(Refusal::TooLarge.into());
        }
        *self = changed;
        Ok(done)
    }
}

/// A name as it is kept: one line without anything at its ends.
pub fn tidy_name(text: &str) -> Result<String, Refusal> {
    let words: Vec<&str> = text
        .split(|c: char| c.is_whitespace() || c.is_control())
        .filter(|word| !word.is_empty())
        .collect();
    let name = words.join(" ");
    match name.chars().count() {
        0 => Err(Refusal::NoName),
        1..=LONGEST_NAME => Ok(name),
        _ => Err(Refusal::LongName),
    }
}

/// The name with a number behind it, shortened where both have no room.
fn numbered(name: &str, number: usize) -> String {
    let number = number.to_string();
    let stem: String = name.chars().take(LONGEST_NAME - number.len() - 1).collect();
    format!("{} {number}", stem.trim_end())
}
