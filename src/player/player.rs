//! A film, as whoever shows it has it.

use std::cell::OnceCell;
use std::ops::Range;
use std::rc::Rc;

use js_sys::futures::spawn_local;
use turns_aloft_film::{FilmFault, FilmTimes};
use web_sys::{File, HtmlElement};

use crate::clock::Clock;
use crate::core::{Core, Happening, Stop, Wish};
use crate::fault::PlayerFault;
use crate::gestures::Gestures;
use crate::opening::{load, read_times, set_clock};
use crate::overlay::Overlay;
use crate::source::Source;
use crate::view::{FilmPoint, PagePoint};
use crate::watcher::{Event, Watcher};

/// A film that is open or opening; it closes with this.
pub struct Player {
    core: Rc<Core>,
    known: Rc<OnceCell<(FilmTimes, Range<usize>)>>,
    _gestures: Gestures,
}

impl Player {
    /// Opens a file in `container`, a positioned element of the page. `watcher` is told when its first
    /// frame can be seen, or why none can.
    ///
    /// # Errors
    /// If the browser doesn't know what is needed to tell frames.
    pub fn open(
        file: File,
        container: &HtmlElement,
        watcher: Rc<dyn Watcher>,
    ) -> Result<Self, PlayerFault> {
        let core = Rc::new(Core::new(file, container, Rc::clone(&watcher))?);
        let known = Rc::default();
        spawn_local(run(Rc::clone(&core), Rc::clone(&known)));
        Ok(Self {
            _gestures: Gestures::new(&core.screen, &watcher),
            core,
            known,
        })
    }

    /// What the file says of its frames, once it is open.
    pub fn times(&self) -> Option<&FilmTimes> {
        Some(&self.known.get()?.0)
    }

    /// Shows a frame, and tells when it is on the screen. Of several asked for meanwhile it shows the
    /// last.
    pub fn show(&self, frame: usize) {
        self.core.wish(Wish::Show(frame));
    }

    /// Plays from the frame shown, so many times as fast as the file says; from the beginning if that is
    /// the last one.
    pub fn play(&self, speed: f64) {
        self.core.wish(Wish::Play(speed));
    }

    /// Stops at the frame last seen, and tells when it is on the screen.
    pub fn pause(&self) {
        self.core.wish(Wish::Pause);
    }

    pub fn is_playing(&self) -> bool {
        self.core.playing.get()
    }

    /// The frames of the file that the film shows, by their places in [`Player::times`]: one that was cut
    /// may have more. None until it is open.
    pub fn frames(&self) -> Option<Range<usize>> {
        Some(self.known.get()?.1.clone())
    }

    /// The frame on the screen; none before the first.
    pub fn current_frame(&self) -> Option<usize> {
        self.core.frame.get()
    }

    /// Draws this over the film, in place of what was drawn before, until something else is.
    pub fn draw(&self, overlay: Overlay) {
        self.core.screen.draw(overlay);
    }

    /// Where a place of the film is on the page; none before its size is known.
    pub fn to_page(&self, place: FilmPoint) -> Option<PagePoint> {
        self.core.screen.to_page(place)
    }

    /// What of the film, or of the plane of its picture, is at a place of the page.
    pub fn to_film(&self, place: PagePoint) -> Option<FilmPoint> {
        let view = self.core.screen.view()?;
        Some(view.to_film(self.core.screen.to_room(place)))
    }

    /// CSS pixels of the page for each pixel of the film.
    pub fn scale(&self) -> Option<f64> {
        Some(self.core.screen.view()?.scale())
    }

    /// Shows a place in the middle, so many times larger than when the whole film is seen; as near to the
    /// middle as the film goes.
    pub fn look_closer(&self, times: f64, at: FilmPoint) {
        if let Some(view) = self.core.screen.view() {
            let whole = view.fitted();
            self.core
                .screen
                .set_view(whole.closer(times, whole.to_room(at)).centred(at));
        }
    }

    /// Shows the whole film again, after somebody has looked closer.
    pub fn show_whole(&self) {
        if let Some(view) = self.core.screen.view() {
            self.core.screen.set_view(view.fitted());
        }
    }
}

impl Drop for Player {
    fn drop(&mut self) {
        self.core.inbox.push(Happening::Closed);
    }
}

/// Opens the film and does what is wished, until the player is no more.
async fn run(core: Rc<Core>, known: Rc<OnceCell<(FilmTimes, Range<usize>)>>) {
    if let Err(Stop::Fault(fault)) = show_film(&core, &known).await {
        core.tell(Event::Failed(fault));
    }
    core.close();
}

async fn show_film(core: &Core, known: &OnceCell<(FilmTimes, Range<usize>)>) -> Result<(), Stop> {
    let times = read_times(&core.file).await?;
    let clock = Clock::new(times.clone()).ok_or(PlayerFault::Film(FilmFault::Empty))?;
    let first = clock.part().start;
    let source = if clock.part().len() < times.frames() {
        Source::of_all_frames(&core.file, times.starts_s()[0]).await?
    } else {
        Source::of(&core.file).await?
    };
    load(core, &source).await?;
    let film = set_clock(core, clock).await?;
    known.set((times, film.clock.part())).ok();
    core.tell(Event::Opened);
    core.wish.set(core.wish.get().or(Some(Wish::Show(first))));
    loop {
        match core.wish.take() {
            Some(Wish::Show(frame)) => film.show_and_tell(frame).await?,
            Some(Wish::Play(speed)) => film.play(speed).await?,
            Some(Wish::Pause) => {
                film.show_and_tell(core.frame.get().unwrap_or(first))
                    .await?
            }
            None => drop(core.next().await?),
        }
    }
}
