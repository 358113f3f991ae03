//! How the jump differs from another attempt, and what the kept jumps came to.

use crate::answers::kept_results::KeptResult;
use crate::session::Session;
use turns_aloft_describe::comparison::Compared;
use turns_aloft_scenario::collection::Entry;

impl Session {
    /// The two attempts compared, as of the last time there was time for it; none where there is
    /// nothing to compare with.
    pub fn compared(&self) -> Option<&Compared> {
        self.reference()?;
        self.answers.compare.result().compared.as_ref()
    }

    /// What a kept jump came to, once it is known.
    pub fn kept_result(&self, entry: &Entry) -> Option<KeptResult> {
        self.answers.compare.result().kept.of(entry)
    }
}
