//! Wakes the app, which draws no frames while nothing moves, to handle an event of the browser.

use std::cell::RefCell;

use bevy::prelude::*;
use bevy::winit::{EventLoopProxyWrapper, WinitUserEvent};

thread_local! {
    static CALL: RefCell<Option<Box<dyn Fn()>>> = const { RefCell::new(None) };
}

/// Has to be added before the plugins that call [`wake`].
pub fn plugin(app: &mut App) {
    let proxy = (**app.world().resource::<EventLoopProxyWrapper>()).clone();
    CALL.set(Some(Box::new(move || {
        proxy.send_event(WinitUserEvent::WakeUp).ok();
    })));
}

/// Requests a frame from the app, if it runs.
pub fn wake() {
    CALL.with_borrow(|call| {
        if let Some(call) = call {
            call();
        }
    });
}
