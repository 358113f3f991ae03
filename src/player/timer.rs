//! One time-out at a time.

use std::cell::Cell;

use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;

pub struct Timer {
    then: Closure<dyn FnMut()>,
    set: Cell<Option<i32>>,
}

impl Timer {
    pub fn new(then: impl FnMut() + 'static) -> Self {
        Self {
            then: Closure::new(then),
            set: Cell::new(None),
        }
    }

    /// In place of the time-out set before.
    pub fn start(&self, after_ms: i32) {
        self.stop();
        let then = self.then.as_ref().unchecked_ref();
        self.set.set(web_sys::window().and_then(|window| {
            window
                .set_timeout_with_callback_and_timeout_and_arguments_0(then, after_ms)
                .ok()
        }));
    }

    pub fn stop(&self) {
        if let (Some(set), Some(window)) = (self.set.take(), web_sys::window()) {
            window.clear_timeout_with_handle(set);
        }
    }
}

impl Drop for Timer {
    fn drop(&mut self) {
        self.stop();
    }
}
