//! What follows from another language.

use crate::session::Session;

impl Session {
    /// To be called when another language is spoken: what has been put into words already is put into
    /// words anew.
    pub fn retranslate(&mut self) {
        self.notice = None;
        self.follow_reference();
    }
}
