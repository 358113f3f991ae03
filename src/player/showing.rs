//! Brings one frame to the screen.

use crate::clock::Clock;
use crate::core::{Core, Happening, Stop};
use crate::fault::PlayerFault;
use crate::watcher::Event;

/// The longest that going to a frame may take: far more than a slow tablet needs, ms.
const LONGEST_MS: i32 = 20_000;
/// How long after that the frame may take to reach the screen, ms. A page that nobody sees draws none.
const DRAWN_MS: i32 = 300;
/// The slowest that engines play.
pub const SLOWEST: f64 = 0.0625;
/// How long each frame is at least on the screen when one is walked to, s.
const WALKED_S: f64 = 0.05;
const WALKS: u32 = 6;
/// The most frames that are stepped on by playing.
const STEPPED: usize = 3;

/// The player and what is known of its film.
pub struct Film<'a> {
    pub core: &'a Core,
    pub clock: Clock,
    /// Whether the engine says the time of the frame that it shows while paused, and not the time that
    /// it was sent to.
    pub tells_frames: bool,
}

impl Film<'_> {
    /// Shows a frame, or the nearest that the film has, and tells when it is on the screen.
    pub async fn show_and_tell(&self, frame: usize) -> Result<(), Stop> {
        let frame = self.clock.shown(frame);
        self.show(frame).await?;
        self.core.tell(Event::Shown(frame));
        Ok(())
    }

    /// Shows a frame, and returns when it is on the screen.
    pub async fn show(&self, frame: usize) -> Result<(), Stop> {
        let still = self.core.still.take();
        if still != Some(frame) && !self.step_on(still, frame).await? {
            let there = self.go_to(frame).await?;
            if there != frame {
                self.walk_to(frame).await?;
            }
        }
        self.core.frame.set(Some(frame));
        self.core.still.set(Some(frame));
        Ok(())
    }

    /// Shows a frame a few after the one that stands on the screen by playing on: going there makes an engine
    /// decode everything again since the last key frame. Whether that frame then stands on the screen.
    async fn step_on(&self, still: Option<usize>, frame: usize) -> Result<bool, Stop> {
        let near = still.is_some_and(|still| (1..=STEPPED).contains(&frame.wrapping_sub(still)));
        // What others say while they play isn't yet on the screen.
        if !near || !self.tells_frames || frame >= self.clock.last() {
            return Ok(false);
        }
        let speed = (self.clock.duration_s(frame) / WALKED_S).clamp(SLOWEST, 1.0);
        let reached = self.play_to(frame, speed).await?;
        // The next one may have come to the screen before the engine stopped.
        let stopped_s = self.core.video().current_time();
        Ok(reached == frame && stopped_s < self.clock.start_s(frame + 1))
    }

    /// Goes to a frame; returns the one that is then on the screen.
    async fn go_to(&self, frame: usize) -> Result<usize, Stop> {
        let there_s = self.clock.middle_s(frame);
        let is_it = |time_s: f64| {
            if self.tells_frames {
                self.clock.starting_at(time_s) == frame
            } else {
                // Where it was sent; or else when the frame starts, if that is later.
                (time_s - there_s).abs() < self.clock.duration_s(frame) / 4.0
            }
        };
        let told_s = go_to(self.core, there_s, is_it).await?;
        // What isn't drawn, on a page that nobody sees, can't be held against anything.
        Ok(told_s
            .filter(|&time_s| !is_it(time_s))
            .map_or(frame, |time_s| self.clock.starting_at(time_s)))
    }

    /// Shows a frame that the engine doesn't go to, by playing up to it: some skip those before a key
    /// frame.
    async fn walk_to(&self, frame: usize) -> Result<(), Stop> {
        if !self.tells_frames {
            // What it says while it plays isn't yet on the screen. But the frame told of may have been
            // the one before.
            return match self.go_to(frame).await? == frame {
                true => Ok(()),
                false => Err(PlayerFault::Unreachable.into()),
            };
        }
        // Slower each time that the browser was too busy to draw each frame.
        for walk in 0..WALKS {
            let seen_s = WALKED_S * f64::from(1 << walk);
            let speed = (self.clock.duration_s(frame) / seen_s).clamp(SLOWEST, 1.0);
            if self.go_before(frame).await? == frame || self.play_to(frame, speed).await? == frame {
                return Ok(());
            }
        }
        Err(PlayerFault::Unreachable.into())
    }

    /// Goes to a frame no later than this one, and returns it.
    async fn go_before(&self, frame: usize) -> Result<usize, Stop> {
        let mut back = 1;
        while back < 2 * frame {
            let there = self.go_to(frame.saturating_sub(back)).await?;
            if there <= frame {
                return Ok(there);
            }
            back *= 2;
        }
        Err(PlayerFault::Unreachable.into())
    }

    /// Plays until a frame, or one after it, is on the screen; returns that one.
    async fn play_to(&self, frame: usize, speed: f64) -> Result<usize, Stop> {
        start(self.core, speed);
        self.core.timer.start(LONGEST_MS);
        let reached = loop {
            self.core.callback.ask();
            match self.core.next().await? {
                Happening::Presented(time_s) if self.clock.starting_at(time_s) >= frame => {
                    break self.clock.starting_at(time_s);
                }
                Happening::Ended => break self.clock.last(),
                Happening::TimedOut => return Err(PlayerFault::Damaged.into()),
                _ => {}
            }
        };
        self.core.video().pause().ok();
        self.core.timer.stop();
        Ok(reached)
    }
}

/// Plays at a speed that the engine can.
pub fn start(core: &Core, speed: f64) {
    core.still.set(None);
    let video = core.video();
    video.set_playback_rate(speed);
    if let Ok(started) = video.play() {
        // Rejected where it is paused before it has begun.
        js_sys::futures::spawn_local(async {
            started.await.ok();
        });
    }
}

/// Goes to a time by the player's clock. Returns the time that the engine says of the frame then on the
/// screen, or none where it draws none; `is_it` tells whether a frame presented meanwhile is the one.
pub async fn go_to(
    core: &Core,
    there_s: f64,
    is_it: impl Fn(f64) -> bool,
) -> Result<Option<f64>, Stop> {
    // Asked before going there: the frame may be on the screen before the engine says it is there.
    core.callback.ask();
    core.video().set_current_time(there_s);
    core.timer.start(LONGEST_MS);
    let (mut there, mut presented_s) = (false, None);
    loop {
        match core.next().await? {
            Happening::Presented(time_s) => {
                presented_s = Some(time_s);
                if !is_it(time_s) {
                    // An earlier one, most likely.
                    core.callback.ask();
                } else if there {
                    break;
                }
            }
            Happening::Sought if !core.video().seeking() => {
                there = true;
                if presented_s.is_some_and(&is_it) {
                    break;
                }
                core.timer.start(DRAWN_MS);
            }
            Happening::TimedOut if there => break,
            Happening::TimedOut => return Err(PlayerFault::Damaged.into()),
            _ => {}
        }
    }
    core.timer.stop();
    core.callback.withdraw();
    Ok(presented_s)
}
