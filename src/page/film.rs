//! The film that an attempt is measured in: over the canvas, where the panels leave room for it.
//!
//! The session says which frame is to be seen and the player shows it; while it plays it is the other way
//! round. What is drawn over the film is worked out for every frame beforehand, so that the player's own
//! call, before the browser draws the frame, only has to put it there.

use std::cell::{Cell, RefCell};
use std::collections::HashMap;
use std::rc::Rc;

use bevy::prelude::*;
use js_sys::futures::{JsFuture, spawn_local};
use wasm_bindgen::JsCast;
use web_sys::{File, FilePropertyBag, HtmlElement, HtmlInputElement, Response};

use crate::appearance::NIGHT;
use crate::describe::Sentence;
use crate::film::FilmFault;
use crate::page::panels::FilmArea;
use crate::page::wake::wake;
use crate::page::{dom, file_input};
use crate::player::{Event, FilmPoint, Overlay, Player, PlayerFault, Stroke, Watcher};
use crate::session::Session;
use crate::session::measuring::{FigureLine, LineOf, Mark, OpenFilm, OverlayState};
use crate::stage::current_session::CurrentSession;
use crate::words::text;

const INPUT_ID: &str = "film-file";
const EXAMPLE: &str = "films/attempt.mp4";
const CONTAINER_ID: &str = "film";

/// How far a finger moves over the film for a whole turn of the figure, as a share of the film's width.
const WIDTHS_PER_TURN: f64 = 1.0;

pub fn plugin(app: &mut App) {
    if let Some(film) = Film::build() {
        app.insert_non_send(film);
    }
    app.add_systems(PostUpdate, (lead_player, place));
}

/// What the player and the file input have said, for the app's next frame.
#[derive(Default)]
struct Heard {
    chosen: RefCell<Option<File>>,
    /// The film that comes with the page could not be had.
    unfetched: Cell<bool>,
    events: RefCell<Vec<Event>>,
    /// Whether a finger on the film turns the figure.
    turns_figure: Cell<bool>,
    /// What is drawn over each frame.
    overlays: RefCell<HashMap<usize, Overlay>>,
    /// The player, for drawing from its own calls.
    player: RefCell<Option<Player>>,
}

pub struct Film {
    heard: Rc<Heard>,
    input: HtmlInputElement,
    container: HtmlElement,
    file_name: String,
    /// What the player was last asked for.
    asked: Option<Wish>,
    /// How many times larger it shows the film, and what of it.
    looks: Option<(f64, [f64; 2])>,
    /// What the overlays were made of.
    drawn: Option<OverlayState>,
    /// Where the finger that turns the figure was last.
    finger: Option<FilmPoint>,
}

#[derive(Debug, Clone, Copy, PartialEq)]
enum Wish {
    Show(usize),
    /// At so many times its own speed.
    Play(f64),
}

impl Watcher for Heard {
    fn told(&self, event: Event) {
        let shown = match event {
            Event::Shown(frame) | Event::Passing(frame) => Some(frame),
            _ => None,
        };
        if let Some(frame) = shown
            && let Some(player) = &*self.player.borrow()
        {
            let frame = frame - first_of(player);
            let overlay = self.overlays.borrow().get(&frame).cloned();
            player.draw(overlay.unwrap_or_default());
        }
        self.events.borrow_mut().push(event);
        wake();
    }

    fn takes(&self, _: FilmPoint) -> bool {
        self.turns_figure.get()
    }
}

impl Film {
    fn build() -> Option<Self> {
        let document = dom::document()?;
        let heard = Rc::<Heard>::default();
        let to = Rc::clone(&heard);
        let input = file_input::add(INPUT_ID, "video/*", move |file| {
            to.chosen.replace(Some(file));
            wake();
        })?;
        let container: HtmlElement = document.create_element("div").ok()?.dyn_into().ok()?;
        container.set_id(CONTAINER_ID);
        container.set_hidden(true);
        container.set_attribute("role", "img").ok()?;
        dom::element("stage")?
            .parent_element()?
            .append_child(&container)
            .ok()?;
        let film = Self {
            heard,
            input,
            container,
            file_name: String::new(),
            asked: None,
            looks: None,
            drawn: None,
            finger: None,
        };
        name();
        Some(film)
    }

    fn open(&mut self, file: File) -> Result<(), String> {
        self.close();
        self.file_name = file.name();
        let watcher: Rc<dyn Watcher> = Rc::clone(&self.heard) as _;
        match Player::open(file, &self.container, watcher) {
            Ok(player) => {
                self.heard.player.replace(Some(player));
                Ok(())
            }
            Err(fault) => Err(sentence(fault)),
        }
    }

    /// Takes a film that was opened or dropped as any other file.
    pub fn choose(&self, file: File) {
        self.heard.chosen.replace(Some(file));
        wake();
    }

    /// Lets the user choose a film.
    pub fn ask(&self) {
        self.input.click();
    }

    /// Opens the film that comes with the page.
    pub fn fetch_example(&self) {
        fetch_example(Rc::clone(&self.heard));
    }

    /// Opens what has been chosen or fetched.
    pub fn take_chosen(&mut self, session: &mut Session) {
        if self.heard.unfetched.take() {
            session.film_refused(text("page-film-not-fetched").to_owned());
        }
        if let Some(file) = self.heard.chosen.take()
            && let Err(why) = self.open(file)
        {
            session.film_refused(why);
        }
    }

    /// Passes on what the player has said.
    pub fn follow_player(&mut self, session: &mut Session) {
        if self.heard.events.borrow().is_empty() {
            return;
        }
        let events = self.heard.events.take();
        for event in events {
            match event {
                Event::Opened => match opened(self) {
                    Some(of_film) => session.film_opened(of_film),
                    None => session.film_refused(text("measure-film-unreadable").to_owned()),
                },
                Event::Failed(fault) => {
                    self.close();
                    session.film_refused(sentence(fault));
                }
                Event::Passing(frame) => {
                    let first = self.heard.player.borrow().as_ref().map_or(0, first_of);
                    session.film_played(frame - first, false);
                }
                Event::Ended => {
                    let frame = session.measuring().map_or(0, |it| it.frame());
                    session.film_played(frame, true);
                }
                Event::Tapped(place) => session.mark_point([place.x_px, place.y_px]),
                Event::Dragged(place) => {
                    let width = session
                        .measuring()
                        .and_then(|it| it.film())
                        .map(|it| it.size_px[0]);
                    if let (Some(last), Some(width)) = (self.finger, width) {
                        let turns = (place.x_px - last.x_px) / (width * WIDTHS_PER_TURN);
                        // The near side of the body follows the finger.
                        session.turn_figure(turns * std::f64::consts::TAU);
                    }
                    self.finger = Some(place);
                }
                Event::Dropped(_) => self.finger = None,
                Event::Shown(_) | Event::ViewChanged => {}
            }
        }
    }

    fn close(&mut self) {
        self.heard.player.replace(None);
        self.heard.events.borrow_mut().clear();
        self.heard.overlays.borrow_mut().clear();
        (self.asked, self.drawn, self.finger) = (None, None, None);
        self.looks = None;
    }
}

/// The file's number of the first frame that can be seen.
fn first_of(player: &Player) -> usize {
    player.frames().map_or(0, |frames| frames.start)
}

/// What is wrong, and what to do.
fn sentence(fault: PlayerFault) -> String {
    match fault {
        PlayerFault::Film(fault) => fault.sentence(),
        PlayerFault::Unreadable => text("page-file-unreadable").to_owned(),
        PlayerFault::Unplayable => text("page-film-unplayable").to_owned(),
        PlayerFault::Damaged => FilmFault::Damaged.sentence(),
        PlayerFault::TimesDisagree => text("page-film-times").to_owned(),
        PlayerFault::Unreachable => text("page-film-unreachable").to_owned(),
        PlayerFault::OldBrowser => text("page-film-old-browser").to_owned(),
    }
}

pub fn name() {
    dom::describe(INPUT_ID, text("measure-open-film"));
    dom::describe(CONTAINER_ID, text("measure-film"));
}

fn fetch_example(heard: Rc<Heard>) {
    spawn_local(async move {
        match example().await {
            Some(file) => {
                heard.chosen.replace(Some(file));
            }
            None => heard.unfetched.set(true),
        }
        wake();
    });
}

async fn example() -> Option<File> {
    let fetched = JsFuture::from(dom::window()?.fetch_with_str(EXAMPLE))
        .await
        .ok()?;
    let response: Response = fetched.dyn_into().ok()?;
    let blob = JsFuture::from(response.blob().ok()?).await.ok()?;
    let options = FilePropertyBag::new();
    options.set_type("video/mp4");
    let parts = js_sys::Array::of1(&blob);
    File::new_with_blob_sequence_and_options(&parts, text("measure-example-film-name"), &options)
        .ok()
        .filter(|_| response.ok())
}

/// What the session has to know of the film.
fn opened(film: &Film) -> Option<OpenFilm> {
    let player = film.heard.player.borrow();
    let player = player.as_ref()?;
    let times = player.times()?;
    Some(OpenFilm {
        file_name: film.file_name.clone(),
        times_s: times.starts_s()[player.frames()?].to_vec(),
        size_px: times.size_px().map(f64::from),
        slow_motion: times.slow_motion(),
    })
}

/// Asks the player for what the session wants to be seen.
fn lead_player(film: Option<NonSendMut<Film>>, session: Res<CurrentSession>) {
    let Some(mut film) = film else {
        return;
    };
    if !session.is_measuring_in_film() {
        if film.heard.player.borrow().is_some() {
            film.close();
        }
        return;
    }
    let Some(measuring) = session.measuring().filter(|it| it.film().is_some()) else {
        return;
    };
    let turns_figure = matches!(session.asked_mark(), Some(Mark::Facing(_)));
    film.heard.turns_figure.set(turns_figure);
    let wish = if measuring.is_playing() {
        Wish::Play(session.playback.speed)
    } else {
        Wish::Show(measuring.frame())
    };
    draw_overlays(&mut film, &session);
    look(&mut film, &session);
    if film.asked == Some(wish) {
        return;
    }
    if let Some(player) = &*film.heard.player.borrow() {
        match wish {
            Wish::Show(frame) => {
                if let Some(Wish::Play(_)) = film.asked {
                    player.pause();
                }
                player.show(frame + first_of(player));
            }
            Wish::Play(speed) => player.play(speed),
        }
    }
    film.asked = Some(wish);
}

/// Shows the film as large as the session wants. Fingers may look closer by themselves meanwhile.
fn look(film: &mut Film, session: &Session) {
    let closer = session.measuring().map_or(1.0, |it| it.closer());
    let looks = (closer > 1.0)
        .then(|| session.looked_at_px())
        .flatten()
        .map(|at_px| (closer, at_px));
    if looks == film.looks {
        return;
    }
    film.looks = looks;
    if let Some(player) = &*film.heard.player.borrow() {
        match looks {
            Some((times, [x_px, y_px])) => player.look_closer(times, FilmPoint { x_px, y_px }),
            None => player.show_whole(),
        }
    }
}

/// Makes what is drawn over the film anew where it has changed.
fn draw_overlays(film: &mut Film, session: &Session) {
    let state = session.overlay_state();
    if film.drawn == state {
        return;
    }
    let overlays: HashMap<usize, Overlay> = (session.overlays().into_iter())
        .map(|(frame, lines)| (frame, overlay(&lines)))
        .collect();
    if let Some(player) = &*film.heard.player.borrow()
        && let Some(frame) = player.current_frame()
    {
        let frame = frame - first_of(player);
        player.draw(overlays.get(&frame).cloned().unwrap_or_default());
    }
    film.heard.overlays.replace(overlays);
    film.drawn = state;
}

/// In the colours of the night, light on dark, whatever the film is like.
fn overlay(lines: &[FigureLine]) -> Overlay {
    let mut overlay = Overlay::default();
    for line in lines {
        let (width_px, colour) = match line.of {
            LineOf::Outline => (6.0, NIGHT.background),
            LineOf::Turned => (3.0, NIGHT.playhead),
            LineOf::Fitted => (3.0, NIGHT.accent),
            LineOf::Proposed => (3.0, NIGHT.reference),
            LineOf::Mark => (2.0, NIGHT.text),
        };
        let stroke = Stroke {
            width_px,
            colour: colour.hex(),
        };
        let place = |&[x_px, y_px]: &[f64; 2]| FilmPoint { x_px, y_px };
        let through: Vec<FilmPoint> = line.through_px.iter().map(place).collect();
        match line.radius_px {
            Some(radius_px) => overlay.circle(through[0], radius_px, &stroke),
            None => overlay.line(&through, &stroke),
        }
    }
    overlay
}

/// Lays the film where the panels leave room for it.
fn place(film: Option<NonSend<Film>>, area: Res<FilmArea>) {
    let Some(film) = film.filter(|_| area.is_changed()) else {
        return;
    };
    let Some(rect) = area.0 else {
        film.container.set_hidden(true);
        return;
    };
    let style = film.container.style();
    for (property, px) in [
        ("left", rect.min.x),
        ("top", rect.min.y),
        ("width", rect.width()),
        ("height", rect.height()),
    ] {
        style.set_property(property, &format!("{px}px")).ok();
    }
    film.container.set_hidden(false);
}
