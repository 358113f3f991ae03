//! Listeners for events, which end with their owner.

use wasm_bindgen::JsCast;
use wasm_bindgen::convert::FromWasmAbi;
use wasm_bindgen::prelude::Closure;
use web_sys::EventTarget;

#[derive(Default)]
pub struct Listeners(Vec<Box<dyn Listening>>);

struct Listener<E: 'static> {
    target: EventTarget,
    name: &'static str,
    then: Closure<dyn FnMut(E)>,
}

/// A listener for whatever kind of event.
trait Listening {
    fn end(&self);
}

impl<E: 'static> Listening for Listener<E> {
    fn end(&self) {
        let then = self.then.as_ref().unchecked_ref();
        self.target
            .remove_event_listener_with_callback(self.name, then)
            .ok();
    }
}

impl Listeners {
    /// `E` is the type of event that has this name.
    pub fn add<E: FromWasmAbi + 'static>(
        &mut self,
        target: &EventTarget,
        name: &'static str,
        then: impl FnMut(E) + 'static,
    ) {
        let then = Closure::<dyn FnMut(E)>::new(then);
        target
            .add_event_listener_with_callback(name, then.as_ref().unchecked_ref())
            .ok();
        self.0.push(Box::new(Listener {
            target: target.clone(),
            name,
            then,
        }));
    }
}

impl Drop for Listeners {
    fn drop(&mut self) {
        for listener in &self.0 {
            listener.end();
        }
    }
}
