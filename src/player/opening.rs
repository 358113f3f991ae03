//! Opens a film: its frames' times, its address, and what the player's clock says of them.

use turns_aloft_film::{FilmTimes, Progress, Reading};
use web_sys::File;

use crate::bytes;
use crate::clock::Clock;
use crate::core::{Core, Happening, Stop};
use crate::fault::PlayerFault;
use crate::showing::{Film, go_to};
use crate::source::Source;
use crate::view::Size;

/// The longest that an engine may take until it knows the size of a film, ms: one may read all of it.
const LONGEST_MS: i32 = 120_000;
/// Times nearer than this are the same, s: engines round to microseconds.
const SAME_S: f64 = 1e-5;

/// What the file says of its frames.
pub async fn read_times(file: &File) -> Result<FilmTimes, PlayerFault> {
    let mut reading = Reading::new(file.size() as u64);
    loop {
        match reading.go_on().map_err(PlayerFault::Film)? {
            Progress::Read(times) => return Ok(times),
            Progress::Needs(range) => reading.supply(bytes::read(file, range).await?),
        }
    }
}

/// Gives the element the film, and waits until it has it.
pub async fn load(core: &Core, source: &Source) -> Result<(), Stop> {
    let video = core.video();
    video.set_src(source.address());
    core.timer.start(LONGEST_MS);
    loop {
        match core.next().await? {
            Happening::Loaded => break,
            Happening::TimedOut => return Err(PlayerFault::Damaged.into()),
            _ => {}
        }
    }
    core.timer.stop();
    let film = Size {
        width_px: video.video_width().into(),
        height_px: video.video_height().into(),
    };
    // Some engines play the sound of a film whose picture they can't read.
    if film.width_px == 0.0 || film.height_px == 0.0 {
        return Err(PlayerFault::Unplayable.into());
    }
    core.screen.set_film(film);
    Ok(())
}

/// Finds what the player's clock says of the file's times, and what can be learnt from it later; by its
/// first, its second and its last frame.
pub async fn set_clock<'a>(core: &'a Core, mut clock: Clock) -> Result<Film<'a>, Stop> {
    let first_s = go_to(core, 0.0, |_| true).await?;
    // A page that nobody sees: then at least where it stands.
    clock.set_first(first_s.unwrap_or_else(|| core.video().current_time()));

    // What comes before these times is of a frame that was on the screen before.
    let (there_s, start_s) = (clock.middle_s(1), clock.start_s(1));
    let told_s = go_to(core, there_s, |time_s| time_s > start_s - SAME_S).await?;
    let tells_frames =
        told_s.is_some_and(|told_s| (told_s - start_s).abs() < (told_s - there_s).abs());

    let end_s = core.video().duration();
    if end_s.is_finite()
        && let Some(last_s) = go_to(core, end_s, |time_s| clock.ends_with(time_s)).await?
        // Some engines say where they were sent, and not the last frame's start.
        && (last_s - end_s).abs() > SAME_S
        && !clock.ends_with(last_s)
    {
        return Err(PlayerFault::TimesDisagree.into());
    }
    Ok(Film {
        core,
        clock,
        tells_frames,
    })
}
