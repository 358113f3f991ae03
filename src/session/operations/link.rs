//! The jump at hand, and the one beside it, as the text behind the `#` of an address, and back.

use crate::operations::action::Action;
use crate::session::Session;
use crate::state::document::{Attempt, Which};
use crate::state::question::Question;
use turns_aloft_describe::Sentence;
use turns_aloft_scenario::input::Input;
use turns_aloft_scenario::link::{self, Link};
use turns_aloft_words::say;

impl Session {
    /// The present jump and the one beside it, as a link's text behind the `#`.
    pub fn link(&self) -> String {
        let reference = self.reference().map(|reference| &reference.scenario);
        link::to_fragment(&self.written(), reference)
    }

    /// Opens what stands behind the `#` of an address. What is no link of ours is passed over; a bad
    /// one is said and leaves everything as it was. Nobody who follows a link means to give up a
    /// jump of their own: one that was changed is kept.
    pub fn open_link(&mut self, fragment: &str) {
        let opened = match link::from_fragment(fragment) {
            None => return,
            Some(Ok(link)) => self.open_linked(link),
            Some(Err(why)) => Err(why.sentence()),
        };
        if let Err(why) = opened {
            self.say(say!("not-opened", why = why));
        }
    }

    fn open_linked(&mut self, link: Link) -> Result<(), String> {
        let is_here = Input::differing(&link.jump, self.scenario())
            .next()
            .is_none();
        let said = if is_here { None } else { self.rescue()? };
        let jumps = 1 + usize::from(link.reference.is_some());
        let reference = link.reference.map(|scenario| {
            Box::new(Attempt {
                which: Which::Linked,
                scenario,
            })
        });
        let two = reference.is_some();
        if !self.apply(Action::Open(link.jump, reference)) {
            return Ok(());
        }
        if two {
            self.ask(Question::Compare);
        }
        if let Some(said) = said {
            self.say(said);
        }
        // Both at once would be the same twice.
        if link.earlier_body && !self.earlier_body_unreported {
            self.append_notice(&say!("earlier-body", jumps = jumps));
        }
        Ok(())
    }
}
