//! Wakes the app, which sleeps while nothing moves, to look at what the browser has brought.

use std::cell::RefCell;

use bevy::prelude::*;
use bevy::winit::{EventLoopProxyWrapper, WinitUserEvent};

thread_local! {
    static CALL: RefCell<Option<Box<dyn Fn()>>> = const { RefCell::new(None) };
}

/// Stands before those that wake.
pub fn plugin(app: &mut App) {
    let proxy = (**app.world().resource::<EventLoopProxyWrapper>()).clone();
    CALL.set(Some(Box::new(move || {
        proxy.send_event(WinitUserEvent::WakeUp).ok();
    })));
}

pub fn wake() {
    CALL.with_borrow(|call| {
        if let Some(call) = call {
            call();
        }
    });
}
