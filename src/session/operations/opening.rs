//! Opening a jump, or the text of a file.

use crate::operations::action::Action;
use crate::session::Session;
use crate::state::question::Question;
use turns_aloft_attempt::Attempt;
use turns_aloft_describe::Sentence;
use turns_aloft_lesson::Lesson;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::collection::saved::FileKind;
use turns_aloft_words::say;

impl Session {
    /// Opens a jump and plays it. Half-widths and limits are about one jumper: another one has the
    /// usual ones.
    pub fn open(&mut self, scenario: Scenario) {
        self.apply(Action::Open(scenario, None));
    }

    /// Begins a jump of the user's own; which one it is and who jumps is to be put in first.
    pub fn begin_jump(&mut self) {
        if self.apply(Action::Open(Scenario::begun(), None)) {
            self.ask(Question::Jump);
            self.setting_up = true;
        }
    }

    /// Whether the jump has just been begun, and what it is and who jumps is being put in.
    pub const fn is_setting_up(&self) -> bool {
        self.setting_up
    }

    /// Shows the jump that has been begun as any other.
    pub fn finish_setting_up(&mut self) {
        self.setting_up = false;
    }

    /// Opens a file's text: a scenario's, an attempt's, or a collection's, whose jumps are kept. A bad one is said
    /// and leaves everything as it was.
    pub fn open_text(&mut self, file: &str) {
        if FileKind::of(file) == FileKind::Collection {
            self.open_collection(file);
            return;
        }
        if Lesson::is_in(file) {
            self.open_lesson(file);
            return;
        }
        if Attempt::is_in(file) {
            self.open_attempt(file);
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
