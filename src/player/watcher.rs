//! What the player tells whoever shows the film.

use crate::fault::PlayerFault;
use crate::view::FilmPoint;

pub trait Watcher {
    /// Called before the browser draws next: what is then drawn over the film is in step with it.
    fn told(&self, event: Event);

    /// Whether a finger put down here moves something that is drawn over the film. Otherwise it moves
    /// the film.
    fn takes(&self, place: FilmPoint) -> bool;
}

#[derive(Clone, Debug, PartialEq)]
pub enum Event {
    /// The film's frames are known, and the first of them is on its way to the screen.
    Opened,
    /// Nothing can be shown any more.
    Failed(PlayerFault),
    /// The frame that was asked for is on the screen, and stays there.
    Shown(usize),
    /// While it plays: the next thing drawn will be this frame.
    Passing(usize),
    /// It has played up to its end. `Shown` follows.
    Ended,
    /// The film lies elsewhere on the page, or is looked at more or less closely.
    ViewChanged,
    /// A finger has touched the film for a moment.
    Tapped(FilmPoint),
    /// A finger that the watcher took is here now.
    Dragged(FilmPoint),
    /// It has been lifted here.
    Dropped(FilmPoint),
}
