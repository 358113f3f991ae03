//! When the text of the jump is written, for those who read it instead of the screen: at rest at once;
//! while something moves, often enough and no more, since every text is announced or read from its
//! beginning.

use std::time::Duration;

/// Decides in each frame whether the text is written.
#[derive(Debug, Clone, Copy, Default)]
pub struct Pace {
    moves_since: Option<Duration>,
}

impl Pace {
    /// The text is behind by this at most, and by the time of a frame.
    pub const LONGEST: Duration = Duration::from_millis(800);

    /// Whether it is due at the time `now`, when something `moves` or nothing.
    pub fn is_due(&mut self, now: Duration, moves: bool) -> bool {
        if !moves {
            self.moves_since = None;
            return true;
        }
        let since = *self.moves_since.get_or_insert(now);
        let due = now >= since + Self::LONGEST;
        if due {
            self.moves_since = Some(now);
        }
        due
    }
}
