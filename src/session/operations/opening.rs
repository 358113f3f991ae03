//! Opening a jump, or the text of a file.

use crate::operations::action::Action;
use crate::session::Session;
use turns_aloft_describe::Sentence;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::collection::saved::FileKind;
use turns_aloft_words::say;

impl Session {
    /// Opens a jump and plays it. Half-widths and limits are about one jumper: another one has the
    /// usual ones.
    pub fn open(&mut self, scenario: Scenario) {
        self.apply(Action::Open(scenario, None));
    }

    /// Opens a file's text: a scenario's, or a collection's, whose jumps are kept. A bad one is said
    /// and leaves everything as it was.
    pub fn open_text(&mut self, file: &str) {
        if FileKind::of(file) == FileKind::Collection {
            self.open_collection(file);
            return;
        }
        match Scenario::open_file(file) {
            Ok(opened) => {
                self.open(opened.read);
                if opened.earlier_body {
                    self.append_notice(&say!("earlier-body", jumps = 1));
                }
            }
            Err(why) => self.say(say!("not-opened", why = why.sentence())),
        }
    }
}
