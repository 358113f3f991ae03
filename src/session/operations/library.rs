//! Changing the kept jumps: whatever goes wrong is said in a sentence.

use std::sync::Arc;

use crate::session::Session;
use crate::state::library::Library;
use crate::state::question::Question;
use turns_aloft_describe::Sentence;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::collection::kept::Unreadable;
use turns_aloft_scenario::collection::{Collection, Id};
use turns_aloft_scenario::file::Opened;
use turns_aloft_words::{say, text};

impl Session {
    pub const fn library(&self) -> &Library {
        &self.library
    }

    /// Does something to the kept jumps; what is refused is said.
    fn change_kept<T, E: Sentence>(
        &mut self,
        refused: fn(String) -> String,
        change: impl FnOnce(&mut Collection) -> Result<T, E>,
    ) -> Option<T> {
        match change(Arc::make_mut(&mut self.library.collection)) {
            Ok(done) => Some(done),
            Err(why) => {
                self.say(refused(why.sentence()));
                None
            }
        }
    }

    /// Keeps the present jump under a name that tells it from others, and says so.
    pub fn keep_jump(&mut self) {
        let scenario = self.as_named();
        let kept = self.change_kept(|why| say!("not-kept", why = why), |kept| kept.add(scenario));
        if let Some(id) = kept {
            self.say(say!("jump-kept", name = self.name_of_kept(id)));
        }
    }

    fn name_of_kept(&self, id: Id) -> &str {
        let entry = self.library.collection.get(id);
        entry.map_or("", |entry| &entry.scenario.name)
    }

    /// Opens a kept jump.
    pub fn open_kept(&mut self, id: Id) {
        if let Some(entry) = self.library.collection.get(id) {
            self.open(entry.scenario.clone());
        }
    }

    pub fn rename_kept(&mut self, id: Id, name: &str) {
        if self
            .change_kept(
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
        Arc::make_mut(&mut self.library.collection).move_up(id);
    }

    /// One place nearer the last.
    pub fn move_kept_down(&mut self, id: Id) {
        Arc::make_mut(&mut self.library.collection).move_down(id);
    }

    pub fn delete_kept(&mut self, id: Id) {
        self.change_kept(|why| say!("not-deleted", why = why), |kept| kept.delete(id));
    }

    /// Brings the kept jump last deleted back.
    pub fn restore_deleted(&mut self) {
        self.change_kept(
            |why| say!("not-brought-back", why = why),
            Collection::restore_deleted,
        );
    }

    /// All kept jumps as one file.
    pub fn kept_file(&self) -> String {
        self.library.collection.export()
    }

    /// Adds the jumps of a collection's file to the kept ones and shows them.
    pub(crate) fn open_collection(&mut self, file: &str) {
        let Some(added) = self.change_kept(
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
            self.append_notice(&say!("earlier-body", jumps = jumps));
        }
    }

    /// Keeps the present jump where it was changed and is not kept yet, before another takes its
    /// place. Returns what to say of it.
    ///
    /// # Errors
    ///
    /// A sentence, where it cannot be kept.
    pub(crate) fn rescue(&mut self) -> Result<Option<String>, String> {
        if !self.differs_from_base() || self.is_kept(self.scenario()) {
            return Ok(None);
        }
        let scenario = self.as_named();
        let collection = Arc::make_mut(&mut self.library.collection);
        let id = collection.add(scenario).map_err(|why| why.sentence())?;
        Ok(Some(say!(
            "changed-jump-kept",
            name = self.name_of_kept(id)
        )))
    }

    /// Whether this very jump is among the kept ones, whatever it is called there.
    pub(crate) fn is_kept(&self, scenario: &Scenario) -> bool {
        let entries = self.library.collection.entries();
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
        self.library.collection.to_kept()
    }

    /// Takes up the kept jumps of the last visit, or as another page has just left them. Returns whether
    /// they were kept before the body was refined and are to be kept anew: what is kept then is no longer
    /// old.
    ///
    /// # Errors
    ///
    /// What was kept cannot be read; what is here stays.
    pub fn restore_kept_jumps(&mut self, text: &str) -> Result<bool, Unreadable> {
        let Opened { read, earlier_body } = Collection::from_kept(text)?;
        Arc::make_mut(&mut self.library.collection).follow(read);
        self.follow_reference();
        self.earlier_body_unreported |= earlier_body;
        Ok(earlier_body)
    }
}
