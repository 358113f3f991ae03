//! Why a film can't be shown; said by whoever opens it.

use turns_aloft_film::FilmFault;

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PlayerFault {
    /// What the file itself tells.
    Film(FilmFault),
    /// The file can't be read: moved, removed, or not permitted.
    Unreadable,
    /// This browser doesn't play what the film is written in.
    Unplayable,
    /// The film can't be played on from somewhere: cut off or damaged.
    Damaged,
    /// The player shows frames at other times than the file says.
    TimesDisagree,
    /// This browser goes past some frames: those of a recording without an index, as a rule.
    Unreachable,
    /// The browser can't tell which frame is on its screen.
    OldBrowser,
}
