//! What the jump is called, and what is noted of it.

use std::borrow::Cow;

use crate::operations::action::Action;
use crate::session::Session;
use turns_aloft_describe::Sentence;
use turns_aloft_describe::name::{name_of, telling_name};
use turns_aloft_describe::start::shown_note;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::collection::{Refusal, tidy_name};
use turns_aloft_scenario::input::Text;
use turns_aloft_scenario::setting::Refused;
use turns_aloft_words::say;

impl Session {
    /// What the jump is called on the page.
    pub fn shown_name(&self) -> Cow<'_, str> {
        name_of(self.scenario())
    }

    /// Whether it is called as what it was opened as, and is another jump by now.
    pub fn is_changed_version(&self) -> bool {
        let document = &self.document;
        let is_named = !document.is_begun() && document.scenario.name == document.base.name;
        is_named && document.inputs_differ()
    }

    /// What is noted of the jump; where nothing is, what a changed one was begun from.
    pub fn shown_note(&self) -> String {
        let document = &self.document;
        let note = shown_note(&document.scenario.note);
        if note.is_empty() && document.inputs_differ() && !document.is_begun() {
            return say!("name-begun-from", name = name_of(&document.base));
        }
        note.to_owned()
    }

    /// The note to be edited: a starting point's own words are not the user's.
    pub fn own_note(&self) -> &str {
        let note = &self.document.scenario.note;
        if shown_note(note) == note { note } else { "" }
    }

    /// What it is to be called where it is written down.
    pub(crate) fn telling_name(&self) -> String {
        telling_name(&self.document.base, self.scenario(), self.units())
    }

    /// The jump as it is written down for somebody who does not know what it was begun from.
    pub(crate) fn as_named(&self) -> Scenario {
        Scenario {
            name: self.telling_name(),
            ..self.scenario().clone()
        }
    }

    /// The jump as a file: its name, and its text.
    pub fn file(&self) -> [String; 2] {
        let scenario = self.written();
        [scenario.file_name(), scenario.to_file()]
    }

    /// The jump for a file or a link. What has a name of its own, or is a starting point as it was, keeps
    /// the name that it has in files, whatever is spoken.
    pub(crate) fn written(&self) -> Scenario {
        let mut written = self.scenario().clone();
        if written.name.is_empty() || self.is_changed_version() {
            written.name = self.telling_name();
        }
        written.settle_note();
        written
    }

    /// Gives the jump a name of the user's own; an empty one takes it away again.
    pub fn rename(&mut self, name: &str) {
        let name = match tidy_name(name) {
            Ok(name) if name == self.shown_name() => return,
            Ok(name) => name,
            Err(Refusal::NoName) => self.document.base.name.clone(),
            Err(why) => {
                self.say(say!("not-renamed", why = why.sentence()));
                return;
            }
        };
        self.change(|scenario| scenario.name = name);
    }

    /// Notes something of the jump.
    pub fn set_note(&mut self, note: &str) {
        let note = note.trim();
        if note == self.own_note() {
            return;
        }
        let noted = Scenario {
            note: note.to_owned(),
            ..self.scenario().clone()
        };
        if noted.fits_a_file() {
            self.apply(Action::Edit(noted));
            return;
        }
        let why = Refused::TooLong {
            text: Text::Note,
            written: note.to_owned(),
        };
        self.say(say!("not-noted", why = why.sentence()));
    }
}
