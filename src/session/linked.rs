//! The jump at hand as the text behind the `#` of an address, and back.

use super::Session;
use crate::scenario::link;

impl Session {
    /// The present jump, as a link's text behind the `#`.
    pub fn link(&self) -> String {
        link::to_fragment(&self.scenario, None)
    }

    /// Opens what stands behind the `#` of an address. What is no link of ours is passed over; a bad
    /// one is said and leaves everything as it was.
    pub fn open_link(&mut self, fragment: &str) {
        match link::from_fragment(fragment) {
            None => {}
            Some(Ok(link)) => self.open(link.jump),
            Some(Err(why)) => self.say(format!("Not opened: {why}.")),
        }
    }
}
