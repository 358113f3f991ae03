//! Asking a question, and working out its answer piece by piece, so that no frame waits for it.

use crate::session::Session;
use crate::state::question::Question;

impl Session {
    pub const fn question(&self) -> Question {
        self.question
    }

    pub fn ask(&mut self, question: Question) {
        self.question = question;
        if question != Question::Jump {
            self.setting_up = false;
        }
    }

    /// Works on the answer in sight, on what the hands hold and on the marks as long as there is
    /// something to do and there is `more` time; always a piece of it.
    pub fn poll(&mut self, mut more: impl FnMut() -> bool) {
        self.computing = false;
        let question = self.question;
        loop {
            let (answers, basis) = self.answers_and_basis();
            if !answers.poll(question, &basis) {
                return;
            }
            self.computing = true;
            if !more() {
                return;
            }
        }
    }

    /// Whether the answer in sight has only just changed, and may not be complete yet.
    pub const fn is_computing(&self) -> bool {
        self.computing
    }
}
