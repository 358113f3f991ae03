//! The device's own motion sensor (W3C Device Orientation and Motion), where the browser has one and the user
//! agrees. What it reads goes to the session as long as that records.

use std::cell::RefCell;
use std::rc::Rc;

use bevy::prelude::*;
use js_sys::{Function, Promise, Reflect};
use wasm_bindgen::prelude::Closure;
use wasm_bindgen::{JsCast, JsValue};

use crate::page::dom;
use crate::page::wake::wake;
use crate::session::Session;
use crate::session::turntable::NoSensor;

const EVENT: &str = "devicemotion";

/// What a browser says that lets its sensor be read.
const GRANTED: &str = "granted";

/// What it says when it would ask the user, but only while the screen is touched.
const TOO_LATE: &str = "NotAllowedError";

/// The end of a touch, during which it asks.
const TOUCH_ENDS: &str = "click";

enum Message {
    Granted,
    Not(NoSensor),
    Read {
        t_s: f64,
        rate_rad_s: [f64; 3],
        acceleration_m_s2: Option<[f64; 3]>,
    },
}

type Inbox = Rc<RefCell<Vec<Message>>>;

#[derive(Default)]
pub struct MotionSensor {
    inbox: Inbox,
    /// While it is read.
    listener: Option<Closure<dyn FnMut(web_sys::Event)>>,
}

pub fn plugin(app: &mut App) {
    app.init_non_send::<MotionSensor>();
}

/// Asks whether it may be read, where a browser wants to be asked. `is_touched`: while the screen is touched.
fn ask(inbox: &Inbox, is_touched: bool) {
    let class = dom::window().and_then(|window| member(&window, "DeviceMotionEvent"));
    let Some(class) = class else {
        tell(inbox, Message::Not(NoSensor::Missing));
        return;
    };
    let request = member(&class, "requestPermission").and_then(|it| it.dyn_into::<Function>().ok());
    let Some(request) = request else {
        tell(inbox, Message::Granted);
        return;
    };
    let (good, bad) = (Rc::clone(inbox), Rc::clone(inbox));
    let answered = Closure::once(move |answer: JsValue| {
        let is_granted = answer.as_string().as_deref() == Some(GRANTED);
        let refused = Message::Not(NoSensor::Refused);
        tell(
            &good,
            if is_granted {
                Message::Granted
            } else {
                refused
            },
        );
    });
    let failed = Closure::once(move |why: JsValue| {
        let name = member(&why, "name").and_then(|name| name.as_string());
        if is_touched || name.as_deref() != Some(TOO_LATE) {
            tell(&bad, Message::Not(NoSensor::Refused));
        } else {
            tell(&bad, Message::Not(NoSensor::TouchAgain));
            ask_at_next_touch(bad);
        }
    });
    let promise = request.call0(&class).ok();
    if let Some(promise) = promise.and_then(|it| it.dyn_into::<Promise>().ok()) {
        drop(promise.then2(&answered, &failed));
    }
    answered.forget();
    failed.forget();
}

fn ask_at_next_touch(inbox: Inbox) {
    let touched = Closure::once_into_js(move || ask(&inbox, true));
    let once = js_sys::Object::new();
    Reflect::set(&once, &"once".into(), &true.into()).ok();
    let document = dom::document().map(JsValue::from);
    let add = document
        .as_ref()
        .and_then(|document| member(document, "addEventListener"));
    if let (Some(document), Some(add)) = (
        document,
        add.and_then(|add| add.dyn_into::<Function>().ok()),
    ) {
        add.call3(&document, &TOUCH_ENDS.into(), &touched, &once)
            .ok();
    }
}

fn tell(inbox: &Inbox, message: Message) {
    inbox.borrow_mut().push(message);
    wake();
}

impl MotionSensor {
    /// Asks whether it may be read.
    pub fn ask(&self) {
        ask(&self.inbox, false);
    }

    /// Passes on what it has said.
    pub fn take_messages(&mut self, session: &mut Session) {
        let messages = std::mem::take(&mut *self.inbox.borrow_mut());
        for message in messages {
            match message {
                Message::Granted => {
                    session.sensor_started();
                    if self.listener.is_none() {
                        self.listen();
                    }
                }
                Message::Not(why) => session.sensor_not_started(why),
                Message::Read {
                    t_s,
                    rate_rad_s,
                    acceleration_m_s2,
                } => session.sensor_read(t_s, rate_rad_s, acceleration_m_s2),
            }
        }
        if self.listener.is_some() && !session.is_recording_sensor() {
            self.stop();
        }
    }

    fn listen(&mut self) {
        let inbox = Rc::clone(&self.inbox);
        let listener = Closure::<dyn FnMut(web_sys::Event)>::new(move |event: web_sys::Event| {
            if let Some(read) = read(&event) {
                tell(&inbox, read);
            }
        });
        if let Some(window) = dom::window() {
            let callback = listener.as_ref().unchecked_ref();
            window
                .add_event_listener_with_callback(EVENT, callback)
                .ok();
        }
        self.listener = Some(listener);
    }

    fn stop(&mut self) {
        if let (Some(listener), Some(window)) = (self.listener.take(), dom::window()) {
            let callback = listener.as_ref().unchecked_ref();
            window
                .remove_event_listener_with_callback(EVENT, callback)
                .ok();
        }
    }
}

/// A reading; none of an event without a rate, as devices send that have no gyroscope.
fn read(event: &web_sys::Event) -> Option<Message> {
    let numbers = |of: &str, names: [&str; 3]| {
        let of = member(event, of)?;
        let mut numbers = [0.0; 3];
        for (number, name) in numbers.iter_mut().zip(names) {
            *number = member(&of, name)?.as_f64()?;
        }
        Some(numbers)
    };
    let rate_deg_s = numbers("rotationRate", ["alpha", "beta", "gamma"])?;
    Some(Message::Read {
        t_s: 1e-3 * event.time_stamp(),
        rate_rad_s: rate_deg_s.map(f64::to_radians),
        acceleration_m_s2: numbers("accelerationIncludingGravity", ["x", "y", "z"]),
    })
}

/// A member of an object; none where there is no such object or member.
fn member(of: &JsValue, name: &str) -> Option<JsValue> {
    let member = Reflect::get(of, &name.into()).ok()?;
    (!member.is_undefined() && !member.is_null()).then_some(member)
}
