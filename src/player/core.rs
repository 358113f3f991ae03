//! What the tasks of the player share: the elements, and what happens to them.

use std::cell::Cell;
use std::rc::Rc;

use web_sys::{File, HtmlElement, HtmlVideoElement};

use crate::fault::PlayerFault;
use crate::frame_callback::FrameCallback;
use crate::inbox::Inbox;
use crate::listeners::Listeners;
use crate::screen::Screen;
use crate::timer::Timer;
use crate::watcher::{Event, Watcher};

/// The code of a `MediaError` for a film that can't be played at all (HTML, 'Error codes').
const UNSUPPORTED: u16 = 4;

pub struct Core {
    pub file: File,
    pub screen: Rc<Screen>,
    pub watcher: Rc<dyn Watcher>,
    pub inbox: Rc<Inbox<Happening>>,
    pub callback: FrameCallback,
    pub timer: Timer,
    /// The latest; what was wished before it no longer counts.
    pub wish: Cell<Option<Wish>>,
    /// The frame on the screen, as far as it is known while the film plays.
    pub frame: Cell<Option<usize>>,
    /// The frame that stands on the screen.
    pub still: Cell<Option<usize>>,
    pub playing: Cell<bool>,
    _listeners: Listeners,
}

#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Wish {
    Show(usize),
    /// So many times as fast as the file says.
    Play(f64),
    Pause,
}

/// What a task may wait for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Happening {
    /// The size of the film is known.
    Loaded,
    Sought,
    /// A frame has reached the screen; its time by the player's clock, s.
    Presented(f64),
    Ended,
    /// The element has an error.
    Failed,
    TimedOut,
    Wished,
    /// The player is no more.
    Closed,
}

/// Why a task ends.
pub enum Stop {
    Closed,
    Fault(PlayerFault),
}

impl From<PlayerFault> for Stop {
    fn from(fault: PlayerFault) -> Self {
        Self::Fault(fault)
    }
}

impl Core {
    pub fn new(
        file: File,
        container: &HtmlElement,
        watcher: Rc<dyn Watcher>,
    ) -> Result<Self, PlayerFault> {
        let inbox: Rc<Inbox<Happening>> = Rc::new(Inbox::new());
        let into = |happening: Happening| {
            let inbox = Rc::clone(&inbox);
            move || inbox.push(happening)
        };
        let tell = Rc::clone(&watcher);
        let screen = Screen::new(container, move || tell.told(Event::ViewChanged))
            .map_err(|_| PlayerFault::OldBrowser)?;
        let video = screen.video();
        let presented = Rc::clone(&inbox);
        let callback = FrameCallback::new(video, move |time_s| {
            presented.push(Happening::Presented(time_s));
        })
        .ok_or(PlayerFault::OldBrowser)?;
        let mut listeners = Listeners::default();
        for (name, happening) in [
            ("loadedmetadata", Happening::Loaded),
            ("seeked", Happening::Sought),
            ("ended", Happening::Ended),
            ("error", Happening::Failed),
        ] {
            let push = into(happening);
            listeners.add(video, name, move |_: web_sys::Event| push());
        }
        Ok(Self {
            file,
            watcher,
            callback,
            timer: Timer::new(into(Happening::TimedOut)),
            wish: Cell::new(None),
            frame: Cell::new(None),
            still: Cell::new(None),
            playing: Cell::new(false),
            _listeners: listeners,
            screen,
            inbox,
        })
    }

    pub fn video(&self) -> &HtmlVideoElement {
        self.screen.video()
    }

    pub fn tell(&self, event: Event) {
        self.watcher.told(event);
    }

    pub fn wish(&self, wish: Wish) {
        self.wish.set(Some(wish));
        self.inbox.push(Happening::Wished);
    }

    /// The next thing that happens, unless it ends everything.
    pub async fn next(&self) -> Result<Happening, Stop> {
        match self.inbox.next().await {
            Happening::Closed => Err(Stop::Closed),
            Happening::Failed => {
                let error = self.video().error();
                Err(match error.map(|error| error.code()) {
                    Some(UNSUPPORTED) => PlayerFault::Unplayable,
                    _ => PlayerFault::Damaged,
                }
                .into())
            }
            happening => Ok(happening),
        }
    }

    /// Frees what the film has of the browser.
    pub fn close(&self) {
        self.video().pause().ok();
        self.video().remove_attribute("src").ok();
        self.video().load();
    }
}
