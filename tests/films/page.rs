//! The page of `tests/browser/test_film.py`: the player and nothing else, called from `page.js`.

use std::cell::Cell;
use std::rc::Rc;

use js_sys::{Array, Function};
use turns_aloft_player::{
    Event, FilmPoint, Overlay, PagePoint, Player, PlayerFault, Stroke, Watcher,
};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;
use web_sys::{File, HtmlElement};

#[wasm_bindgen]
pub struct Film {
    player: Player,
    handle: Rc<Cell<Option<Handle>>>,
}

/// Something over the film that a finger can move: its place, and how near a finger has to be.
#[derive(Clone, Copy)]
struct Handle(FilmPoint, f64);

/// Calls `told` with the name of each event and its values.
struct Page {
    told: Function,
    handle: Rc<Cell<Option<Handle>>>,
}

impl Page {
    fn call(&self, name: &str, values: &[JsValue]) {
        let values: Array = values.iter().collect();
        self.told.call2(&JsValue::NULL, &name.into(), &values).ok();
    }
}

impl Watcher for Page {
    fn told(&self, event: Event) {
        let place = |place: FilmPoint| [place.x_px.into(), place.y_px.into()];
        match event {
            Event::Opened => self.call("opened", &[]),
            Event::Failed(fault) => self.call("failed", &[name(&fault).into()]),
            Event::Shown(frame) => self.call("shown", &[frame.into()]),
            Event::Passing(frame) => self.call("passing", &[frame.into()]),
            Event::Ended => self.call("ended", &[]),
            Event::ViewChanged => self.call("view", &[]),
            Event::Tapped(at) => self.call("tapped", &place(at)),
            Event::Dragged(at) => self.call("dragged", &place(at)),
            Event::Dropped(at) => self.call("dropped", &place(at)),
        }
    }

    fn takes(&self, place: FilmPoint) -> bool {
        self.handle.get().is_some_and(|Handle(at, within_px)| {
            libm::hypot(place.x_px - at.x_px, place.y_px - at.y_px) <= within_px
        })
    }
}

fn name(fault: &PlayerFault) -> String {
    format!("{fault:?}")
}

#[wasm_bindgen]
impl Film {
    /// # Errors
    /// With the name of the fault.
    #[wasm_bindgen(constructor)]
    pub fn new(file: File, container: &HtmlElement, told: Function) -> Result<Film, String> {
        let handle = Rc::default();
        let page = Page {
            told,
            handle: Rc::clone(&handle),
        };
        let player = Player::open(file, container, Rc::new(page)).map_err(|fault| name(&fault))?;
        Ok(Self { player, handle })
    }

    pub fn show(&self, frame: usize) {
        self.player.show(frame);
    }

    pub fn play(&self, speed: f64) {
        self.player.play(speed);
    }

    pub fn pause(&self) {
        self.player.pause();
    }

    #[wasm_bindgen(getter)]
    pub fn frame(&self) -> Option<usize> {
        self.player.current_frame()
    }

    #[wasm_bindgen(getter)]
    pub fn scale(&self) -> Option<f64> {
        self.player.scale()
    }

    pub fn to_page(&self, x_px: f64, y_px: f64) -> Option<Vec<f64>> {
        let place = self.player.to_page(FilmPoint { x_px, y_px })?;
        Some(vec![place.x_px, place.y_px])
    }

    pub fn to_film(&self, x_px: f64, y_px: f64) -> Option<Vec<f64>> {
        let place = self.player.to_film(PagePoint { x_px, y_px })?;
        Some(vec![place.x_px, place.y_px])
    }

    /// Draws a line and a circle around its end.
    pub fn draw(&self, from_x_px: f64, from_y_px: f64, x_px: f64, y_px: f64, radius_px: f64) {
        let stroke = Stroke {
            width_px: 6.0,
            colour: "rgb(255, 0, 0)".to_owned(),
        };
        let end = FilmPoint { x_px, y_px };
        let start = FilmPoint {
            x_px: from_x_px,
            y_px: from_y_px,
        };
        let mut overlay = Overlay::default();
        overlay.line(&[start, end], &stroke);
        overlay.circle(end, radius_px, &stroke);
        self.player.draw(overlay);
    }

    pub fn let_take(&self, x_px: f64, y_px: f64, within_px: f64) {
        self.handle
            .set(Some(Handle(FilmPoint { x_px, y_px }, within_px)));
    }
}
