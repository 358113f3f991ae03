//! Plays the film.

use crate::core::{Happening, Stop, Wish};
use crate::showing::{Film, SLOWEST, start};
use crate::watcher::Event;

/// The fastest that engines play.
const FASTEST: f64 = 16.0;

impl Film<'_> {
    /// Plays until something else is wished or the film ends; the frame that is then to be shown is the
    /// last that was seen.
    pub async fn play(&self, speed: f64) -> Result<(), Stop> {
        let core = self.core;
        let last = self.clock.last();
        if core.frame.get() == Some(last) {
            self.show(self.clock.part().start).await?;
        }
        start(core, speed.clamp(SLOWEST, FASTEST));
        core.playing.set(true);
        let mut ended = false;
        while !ended && core.wish.get().is_none() {
            core.callback.ask();
            match core.next().await? {
                Happening::Presented(time_s) => {
                    let frame = self.clock.shown(self.clock.starting_at(time_s));
                    core.frame.set(Some(frame));
                    core.tell(Event::Passing(frame));
                    ended = frame == last;
                }
                Happening::Ended => {
                    core.frame.set(Some(last));
                    ended = true;
                }
                _ => {}
            }
        }
        core.video().pause().ok();
        core.playing.set(false);
        if ended {
            core.tell(Event::Ended);
        }
        if core.wish.get().is_none() {
            core.wish.set(Some(Wish::Pause));
        }
        Ok(())
    }
}
