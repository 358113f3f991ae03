//! Fingers on the film: two look closer, one moves it, two quick taps show all of it again.

use std::cell::{Cell, RefCell};
use std::rc::Rc;

use web_sys::{PointerEvent, WheelEvent};

use crate::listeners::Listeners;
use crate::screen::Screen;
use crate::timer::Timer;
use crate::view::PagePoint;
use crate::watcher::{Event, Watcher};

/// A finger that has moved no farther has been put down to tap, CSS pixels.
const STILL_PX: f64 = 10.0;
/// Two taps are one double tap if they are this close together, ms and CSS pixels.
const DOUBLE_MS: i32 = 300;
const DOUBLE_PX: f64 = 40.0;
/// How much closer one notch of a wheel goes.
const NOTCH: f64 = 1.15;

pub struct Gestures {
    _listeners: Listeners,
}

struct Hands {
    screen: Rc<Screen>,
    watcher: Rc<dyn Watcher>,
    /// Those on the film, in the order in which they came.
    fingers: RefCell<Vec<Finger>>,
    doing: Cell<Doing>,
    /// The last tap: when, ms, and where.
    tapped: Cell<Option<(f64, PagePoint)>>,
    /// Tells of a tap once it is sure to be no double tap.
    later: Timer,
}

#[derive(Clone, Copy)]
struct Finger {
    id: i32,
    place: PagePoint,
}

#[derive(Clone, Copy, PartialEq)]
enum Doing {
    /// One finger that hasn't moved, from where it came down.
    Tap(PagePoint),
    /// Moves what the watcher took.
    Drag,
    /// Moves the film.
    Look,
}

impl Gestures {
    pub fn new(screen: &Rc<Screen>, watcher: &Rc<dyn Watcher>) -> Self {
        let single: Rc<Cell<Option<Event>>> = Rc::default();
        let (tell, pending) = (Rc::clone(watcher), Rc::clone(&single));
        let hands = Rc::new(Hands {
            screen: Rc::clone(screen),
            watcher: Rc::clone(watcher),
            fingers: RefCell::default(),
            doing: Cell::new(Doing::Look),
            tapped: Cell::new(None),
            later: Timer::new(move || {
                if let Some(tap) = pending.take() {
                    tell.told(tap);
                }
            }),
        });
        let mut listeners = Listeners::default();
        let frame = screen.frame();
        let own = Rc::clone(&hands);
        listeners.add(frame, "pointerdown", move |event: PointerEvent| {
            own.down(&event);
        });
        let own = Rc::clone(&hands);
        listeners.add(frame, "pointermove", move |event: PointerEvent| {
            own.moved(&event);
        });
        let own = Rc::clone(&hands);
        listeners.add(frame, "pointerup", move |event: PointerEvent| {
            if let Some(tap) = own.up(&event) {
                single.set(Some(tap));
            }
        });
        let own = Rc::clone(&hands);
        listeners.add(frame, "pointercancel", move |event: PointerEvent| {
            own.gone(&event);
        });
        listeners.add(frame, "wheel", move |event: WheelEvent| {
            hands.turned(&event);
        });
        Self {
            _listeners: listeners,
        }
    }
}

impl Hands {
    fn down(&self, event: &PointerEvent) {
        if event.button() != 0 {
            return;
        }
        // Not prevented: Firefox would tell nothing of a second finger.
        self.screen
            .frame()
            .set_pointer_capture(event.pointer_id())
            .ok();
        let place = self.place(event.client_x(), event.client_y());
        self.fingers.borrow_mut().push(Finger {
            id: event.pointer_id(),
            place,
        });
        let doing = match self.fingers.borrow().as_slice() {
            [first] => self.begun(first.place),
            _ => Doing::Look,
        };
        if self.doing.replace(doing) == Doing::Drag && doing == Doing::Look {
            let first = self.fingers.borrow()[0].place;
            self.tell(Event::Dropped, first);
        }
    }

    fn begun(&self, place: PagePoint) -> Doing {
        let taken = self
            .screen
            .view()
            .is_some_and(|view| self.watcher.takes(view.to_film(place)));
        if taken {
            Doing::Drag
        } else {
            Doing::Tap(place)
        }
    }

    fn moved(&self, event: &PointerEvent) {
        let place = self.place(event.client_x(), event.client_y());
        let before = self.fingers.borrow().clone();
        let Some(moving) = before
            .iter()
            .position(|finger| finger.id == event.pointer_id())
        else {
            return;
        };
        match self.doing.get() {
            Doing::Tap(start) if distance(start, place) <= STILL_PX => return,
            Doing::Tap(_) => self.doing.set(Doing::Look),
            Doing::Drag | Doing::Look => {}
        }
        let mut after = before.clone();
        after[moving].place = place;
        self.fingers.borrow_mut().clone_from(&after);
        if self.doing.get() == Doing::Drag {
            self.tell(Event::Dragged, place);
            return;
        }
        if let Some(view) = self.screen.view() {
            let (from, to) = (middle(&before), middle(&after));
            let view = match (before.as_slice(), after.as_slice()) {
                ([a, b, ..], [c, d, ..]) if distance(a.place, b.place) > 0.0 => view.closer(
                    distance(c.place, d.place) / distance(a.place, b.place),
                    from,
                ),
                _ => view,
            };
            self.screen
                .set_view(view.moved(to.x_px - from.x_px, to.y_px - from.y_px));
        }
    }

    /// Returns a tap of which is to be told later.
    fn up(&self, event: &PointerEvent) -> Option<Event> {
        match self.gone(event)? {
            Doing::Tap(place) => self.tap(event.time_stamp(), place),
            Doing::Drag | Doing::Look => None,
        }
    }

    /// A finger has left; what the last one was doing.
    fn gone(&self, event: &PointerEvent) -> Option<Doing> {
        let at = self
            .fingers
            .borrow()
            .iter()
            .position(|finger| finger.id == event.pointer_id())?;
        let finger = self.fingers.borrow_mut().remove(at);
        let doing = self.doing.replace(Doing::Look);
        if doing == Doing::Drag {
            self.tell(Event::Dropped, finger.place);
        }
        self.fingers.borrow().is_empty().then_some(doing)
    }

    fn tap(&self, when_ms: f64, place: PagePoint) -> Option<Event> {
        let view = self.screen.view()?;
        let double = self.tapped.take().is_some_and(|(before_ms, before)| {
            when_ms - before_ms <= f64::from(DOUBLE_MS) && distance(before, place) <= DOUBLE_PX
        });
        if double && view.is_close() {
            self.later.stop();
            self.screen.set_view(view.fitted());
            return None;
        }
        self.tapped.set(Some((when_ms, place)));
        if view.is_close() {
            self.later.start(DOUBLE_MS);
            return Some(Event::Tapped(view.to_film(place)));
        }
        self.tell(Event::Tapped, place);
        None
    }

    fn turned(&self, event: &WheelEvent) {
        event.prevent_default();
        if let Some(view) = self.screen.view() {
            let factor = if event.delta_y() < 0.0 {
                NOTCH
            } else {
                NOTCH.recip()
            };
            let about = self.place(event.client_x(), event.client_y());
            self.screen.set_view(view.closer(factor, about));
        }
    }

    fn tell(&self, event: impl Fn(crate::view::FilmPoint) -> Event, place: PagePoint) {
        if let Some(view) = self.screen.view() {
            self.watcher.told(event(view.to_film(place)));
        }
    }

    fn place(&self, x_px: i32, y_px: i32) -> PagePoint {
        self.screen.to_room(PagePoint {
            x_px: x_px.into(),
            y_px: y_px.into(),
        })
    }
}

/// Between the first two fingers, or where the only one is.
fn middle(fingers: &[Finger]) -> PagePoint {
    let counted = &fingers[..fingers.len().min(2)];
    let sum = |of: fn(&Finger) -> f64| counted.iter().map(of).sum::<f64>() / counted.len() as f64;
    PagePoint {
        x_px: sum(|finger| finger.place.x_px),
        y_px: sum(|finger| finger.place.y_px),
    }
}

fn distance(a: PagePoint, b: PagePoint) -> f64 {
    libm::hypot(a.x_px - b.x_px, a.y_px - b.y_px)
}
