//! The elements on the page: the film, and the canvas above it.

use std::cell::{Cell, RefCell};
use std::rc::{Rc, Weak};

use js_sys::Function;
use wasm_bindgen::prelude::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{
    CanvasRenderingContext2d, HtmlCanvasElement, HtmlElement, HtmlVideoElement, ResizeObserver,
};

use crate::overlay::Overlay;
use crate::view::{FilmPoint, PagePoint, Size, View};

pub struct Screen {
    /// As large as the container; what lies outside of it is cut off.
    frame: HtmlElement,
    video: HtmlVideoElement,
    canvas: HtmlCanvasElement,
    context: CanvasRenderingContext2d,
    /// None until the size of the film is known.
    view: Cell<Option<View>>,
    overlay: RefCell<Overlay>,
    /// Whom to tell that the view is another one.
    moved: Box<dyn Fn()>,
    resized: RefCell<Option<Resized>>,
}

/// What follows the size of the container.
struct Resized {
    observer: ResizeObserver,
    _then: Closure<dyn FnMut()>,
}

const FRAME_STYLE: [(&str, &str); 5] = [
    ("position", "absolute"),
    ("inset", "0"),
    ("overflow", "hidden"),
    ("touch-action", "none"),
    ("user-select", "none"),
];
const VIDEO_STYLE: [(&str, &str); 6] = [
    ("position", "absolute"),
    ("left", "0"),
    ("top", "0"),
    ("max-width", "none"),
    ("transform-origin", "0 0"),
    ("pointer-events", "none"),
];
const CANVAS_STYLE: [(&str, &str); 5] = [
    ("position", "absolute"),
    ("inset", "0"),
    ("width", "100%"),
    ("height", "100%"),
    ("pointer-events", "none"),
];

impl Screen {
    /// Elements in `container`, which has to be positioned; `moved` is told when the view changes.
    pub fn new(container: &HtmlElement, moved: impl Fn() + 'static) -> Result<Rc<Self>, JsValue> {
        let frame: HtmlElement = element("div", &FRAME_STYLE)?;
        let video: HtmlVideoElement = element("video", &VIDEO_STYLE)?;
        let canvas: HtmlCanvasElement = element("canvas", &CANVAS_STYLE)?;
        video.set_muted(true);
        video.set_attribute("playsinline", "")?;
        video.set_preload("auto");
        frame.append_child(&video)?;
        frame.append_child(&canvas)?;
        container.append_child(&frame)?;
        let context = canvas
            .get_context("2d")?
            .ok_or(JsValue::NULL)?
            .unchecked_into();
        let screen = Rc::new(Self {
            frame,
            video,
            canvas,
            context,
            view: Cell::new(None),
            overlay: RefCell::default(),
            moved: Box::new(moved),
            resized: RefCell::default(),
        });
        screen.resized.replace(Some(Resized::new(&screen)?));
        Ok(screen)
    }

    pub const fn frame(&self) -> &HtmlElement {
        &self.frame
    }

    pub const fn video(&self) -> &HtmlVideoElement {
        &self.video
    }

    pub const fn view(&self) -> Option<View> {
        self.view.get()
    }

    /// Lays out a film of this size.
    pub fn set_film(&self, film: Size) {
        let style = HtmlElement::style(&self.video);
        style
            .set_property("width", &format!("{}px", film.width_px))
            .ok();
        style
            .set_property("height", &format!("{}px", film.height_px))
            .ok();
        self.set_view(View::fitting(film, self.room()));
    }

    pub fn set_view(&self, view: View) {
        if self.view.replace(Some(view)) == Some(view) {
            return;
        }
        let (scale, PagePoint { x_px, y_px }) = (view.scale(), view.shift());
        let transform = format!("matrix({scale},0,0,{scale},{x_px},{y_px})");
        HtmlElement::style(&self.video)
            .set_property("transform", &transform)
            .ok();
        self.redraw();
        (self.moved)();
    }

    pub fn draw(&self, overlay: Overlay) {
        self.overlay.replace(overlay);
        self.redraw();
    }

    /// Where something of the film is on the page.
    pub fn to_page(&self, place: FilmPoint) -> Option<PagePoint> {
        let PagePoint { x_px, y_px } = self.view.get()?.to_room(place);
        let frame = self.frame.get_bounding_client_rect();
        Some(PagePoint {
            x_px: x_px + frame.left(),
            y_px: y_px + frame.top(),
        })
    }

    /// What is in the room where this is on the page.
    pub fn to_room(&self, place: PagePoint) -> PagePoint {
        let frame = self.frame.get_bounding_client_rect();
        PagePoint {
            x_px: place.x_px - frame.left(),
            y_px: place.y_px - frame.top(),
        }
    }

    fn room(&self) -> Size {
        Size {
            width_px: self.frame.client_width().into(),
            height_px: self.frame.client_height().into(),
        }
    }

    fn resize(&self) {
        match self.view.get() {
            Some(view) => self.set_view(view.in_room(self.room())),
            None => self.redraw(),
        }
    }

    fn redraw(&self) {
        let (room, sharpness) = (self.room(), sharpness());
        let device_px = |px: f64| (px * sharpness).round() as u32;
        // Setting the size clears the canvas.
        self.canvas.set_width(device_px(room.width_px));
        self.canvas.set_height(device_px(room.height_px));
        if let Some(view) = self.view.get() {
            self.context.scale(sharpness, sharpness).ok();
            self.overlay.borrow().draw(&self.context, &view);
        }
    }
}

impl Drop for Screen {
    fn drop(&mut self) {
        self.frame.remove();
    }
}

impl Resized {
    fn new(screen: &Rc<Screen>) -> Result<Self, JsValue> {
        let of: Weak<Screen> = Rc::downgrade(screen);
        let then = Closure::<dyn FnMut()>::new(move || {
            if let Some(screen) = of.upgrade() {
                screen.resize();
            }
        });
        let observer = ResizeObserver::new(then.as_ref().unchecked_ref::<Function>())?;
        observer.observe(&screen.frame);
        Ok(Self {
            observer,
            _then: then,
        })
    }
}

impl Drop for Resized {
    fn drop(&mut self) {
        self.observer.disconnect();
    }
}

/// Device pixels in a CSS pixel.
fn sharpness() -> f64 {
    web_sys::window().map_or(1.0, |window| window.device_pixel_ratio())
}

fn element<E: JsCast>(name: &str, style: &[(&str, &str)]) -> Result<E, JsValue> {
    let document = web_sys::window()
        .and_then(|window| window.document())
        .ok_or(JsValue::NULL)?;
    let element: HtmlElement = document.create_element(name)?.unchecked_into();
    for (property, value) in style {
        element.style().set_property(property, value)?;
    }
    Ok(element.unchecked_into())
}
