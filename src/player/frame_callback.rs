//! The callback for the next frame that reaches the screen, which web-sys doesn't have
//! (WICG, `HTMLVideoElement.requestVideoFrameCallback()`).

use std::cell::Cell;

use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::{Closure, wasm_bindgen};
use web_sys::HtmlVideoElement;

#[wasm_bindgen]
extern "C" {
    type Video;

    #[wasm_bindgen(method, js_name = requestVideoFrameCallback)]
    fn request(this: &Video, then: &Closure<dyn FnMut(f64, Presented)>) -> u32;

    #[wasm_bindgen(method, js_name = cancelVideoFrameCallback)]
    fn cancel(this: &Video, handle: u32);

    /// What is said of a frame.
    type Presented;

    #[wasm_bindgen(method, getter, js_name = mediaTime)]
    fn media_time_s(this: &Presented) -> f64;
}

pub struct FrameCallback {
    video: Video,
    then: Closure<dyn FnMut(f64, Presented)>,
    asked: Cell<Option<u32>>,
}

impl FrameCallback {
    /// `then` gets the time of the frame by the player's clock, s. None where the browser has no
    /// such callback.
    pub fn new(video: &HtmlVideoElement, then: impl Fn(f64) + 'static) -> Option<Self> {
        js_sys::Reflect::has(video, &"requestVideoFrameCallback".into())
            .ok()
            .filter(|&has| has)?;
        Some(Self {
            video: video.clone().unchecked_into(),
            then: Closure::new(move |_, frame: Presented| then(frame.media_time_s())),
            asked: Cell::new(None),
        })
    }

    /// Asks to be told of the next frame, once; in place of what was asked before.
    pub fn ask(&self) {
        self.withdraw();
        self.asked.set(Some(self.video.request(&self.then)));
    }

    pub fn withdraw(&self) {
        if let Some(asked) = self.asked.take() {
            self.video.cancel(asked);
        }
    }
}

impl Drop for FrameCallback {
    fn drop(&mut self) {
        self.withdraw();
    }
}
