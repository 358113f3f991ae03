//! Why the jump has the turns it has, in words.

mod lines;
pub mod words;

pub use crate::answers::why::Went;

use crate::readings::Reading;
use crate::session::Session;

impl Session {
    pub(crate) fn why_readings(&self) -> Vec<Reading> {
        lines::all(self)
    }
}
