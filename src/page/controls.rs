//! An HTML element for each control on the canvas, so that keyboards and screen readers find it
//! (WAI-ARIA, by the elements' own roles).
//!
//! The elements lie over the controls, invisible but for the focus ring, and let touches through to the
//! canvas. They are updated from the AccessKit tree that egui makes of the panels; what is done to them
//! goes back to egui as AccessKit's requests.

use std::collections::BTreeMap;
use std::time::Duration;

use bevy::prelude::*;
use bevy::window::RequestRedraw;
use bevy_egui::egui::accesskit::{
    Action, ActionData, ActionRequest, Node, NodeId, Rect, Role, Toggled, TreeId, TreeUpdate,
};
use bevy_egui::egui::{Event, Key, accesskit_root_id};
use bevy_egui::{EguiContext, EguiOutput};
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use web_sys::{Element, HtmlElement, HtmlInputElement, KeyboardEvent};

use crate::page::{dom, egui_events, keys};
use crate::session::Moment;
use crate::stage::current_session::CurrentSession;

pub fn plugin(app: &mut App) {
    listen();
    app.init_non_send::<Elements>()
        .add_systems(Startup, skip_canvas)
        .add_systems(Last, update);
}

/// Id of the element that contains all of them.
const CONTAINER_ID: &str = "controls";

/// Time between updates while something moves.
const UPDATE_INTERVAL: Duration = Duration::from_millis(200);

/// The attribute with the id of the AccessKit node that an element stands for.
const NODE_ATTRIBUTE: &str = "data-node";

/// A control, as AccessKit describes it.
#[derive(Debug, Clone, PartialEq)]
struct Control {
    id: NodeId,
    label: String,
    /// Its description, a sentence or two.
    about: Option<String>,
    kind: Kind,
    /// It is shown, but does nothing at present.
    disabled: bool,
    /// Whether its menu is open, if it has one.
    expanded: Option<bool>,
    rect: Option<Rect>,
}

#[derive(Debug, Clone, PartialEq)]
enum Kind {
    /// Whether it is pressed, if it is a toggle button.
    Button(Option<bool>),
    Slider(Scale),
    Field(Field),
}

#[derive(Debug, Clone, PartialEq)]
struct Field {
    value: String,
    is_number: bool,
}

#[derive(Debug, Clone, PartialEq)]
struct Scale {
    value: f64,
    least: f64,
    most: f64,
    step: f64,
    text: String,
}

#[derive(Default)]
struct Elements {
    shown: Vec<Control>,
    elements: BTreeMap<NodeId, Element>,
}

/// Takes the canvas out of the tab order, since every control on it has its own element. Called
/// once the app has its window, which puts the canvas into the tab order.
fn skip_canvas() {
    let canvas = dom::element("stage").and_then(|canvas| canvas.dyn_into::<HtmlElement>().ok());
    if let Some(canvas) = canvas {
        canvas.set_tab_index(-1);
    }
}

/// Adds the listeners for the events of all elements.
fn listen() {
    let Some(place) = dom::element(CONTAINER_ID) else {
        return;
    };
    let listener = Closure::<dyn FnMut(web_sys::Event)>::new(move |event: web_sys::Event| {
        if let Some(events) = translate(&event) {
            egui_events::push(events);
        }
    });
    for name in ["click", "input", "change", "focusin", "keydown"] {
        place
            .add_event_listener_with_callback(name, listener.as_ref().unchecked_ref())
            .ok();
    }
    listener.forget();
}

/// Translates an event of an element into events of egui.
fn translate(event: &web_sys::Event) -> Option<Vec<Event>> {
    let element: Element = event.target()?.dyn_into().ok()?;
    let node = NodeId(element.get_attribute(NODE_ATTRIBUTE)?.parse().ok()?);
    let ask = |action, data| {
        Event::AccessKitActionRequest(ActionRequest {
            action,
            target_tree: TreeId::ROOT,
            target_node: node,
            data,
        })
    };
    match event.type_().as_str() {
        "click" if element.tag_name() == "BUTTON" => Some(vec![ask(Action::Click, None)]),
        "input" => {
            let slider = element.dyn_ref::<HtmlInputElement>()?;
            (slider.type_() == "range").then(|| {
                let value = ActionData::NumericValue(slider.value_as_number());
                vec![ask(Action::SetValue, Some(value))]
            })
        }
        "change" => {
            let field = element.dyn_ref::<HtmlInputElement>()?;
            (field.type_() == "text").then(|| {
                let typed = ActionData::Value(field.value().into());
                // The accepted value is written with the next update; a rejected one is reset here.
                field.set_value(&field.default_value());
                vec![ask(Action::SetValue, Some(typed))]
            })
        }
        "focusin" => Some(vec![ask(Action::ScrollIntoView, None)]),
        "keydown" => {
            let event: &KeyboardEvent = event.dyn_ref()?;
            // Closes lists and cancels typing.
            (event.key() == "Escape").then(|| {
                if let Some(field) = element.dyn_ref::<HtmlInputElement>() {
                    field.set_value(&field.default_value());
                }
                keys::stroke(Key::Escape).to_vec()
            })
        }
        _ => None,
    }
}

/// Updates the elements from the AccessKit tree. While something moves this happens every
/// [`UPDATE_INTERVAL`], and AccessKit is off in between.
fn update(
    mut contexts: Query<(&EguiOutput, &mut EguiContext)>,
    mut elements: NonSendMut<Elements>,
    session: Res<CurrentSession>,
    time: Res<Time<Real>>,
    mut redraw: MessageWriter<RequestRedraw>,
    mut next: Local<Duration>,
    mut last: Local<Option<Moment>>,
) {
    let moment = Some(session.moment());
    let moves = session.moves() || session.is_dragging();
    let due = !moves || time.elapsed() >= *next;
    for (output, mut context) in &mut contexts {
        let context = context.get_mut();
        if !due {
            context.disable_accesskit();
            // A finger that lies still on a slider gives no further frames of itself.
            if *last != moment {
                redraw.write(RequestRedraw);
            }
            continue;
        }
        let Some(update) = &output.platform_output.accesskit_update else {
            // The tree is there from the next frame on.
            context.enable_accesskit();
            redraw.write(RequestRedraw);
            continue;
        };
        *next = time.elapsed() + UPDATE_INTERVAL;
        *last = moment;
        let controls = controls(update, f64::from(context.zoom_factor()));
        if elements.shown != controls {
            elements.show(controls);
        }
    }
}

/// The widgets that can be operated and have a name, in reading order: what a menu contains follows the
/// button that opens it.
fn controls(update: &TreeUpdate, zoom: f64) -> Vec<Control> {
    let mut nodes: BTreeMap<NodeId, &Node> = BTreeMap::new();
    nodes.extend(update.nodes.iter().map(|(id, node)| (*id, node)));
    let mut left = vec![accesskit_root_id().accesskit_id()];
    let mut controls = Vec::new();
    // Each is removed as it is come by, because a menu is come by twice.
    while let Some(id) = left.pop() {
        let Some(node) = nodes.remove(&id) else {
            continue;
        };
        left.extend(node.children().iter().rev());
        left.extend(node.controls().iter().rev());
        controls.extend(Control::of(id, node, zoom));
    }
    controls
}

impl Control {
    /// `zoom`: CSS pixels in a point of the panels.
    fn of(id: NodeId, node: &Node, zoom: f64) -> Option<Self> {
        let kind = match node.role() {
            Role::Button => Kind::Button(node.toggled().map(|toggled| toggled == Toggled::True)),
            Role::Slider => Kind::Slider(Scale::of(node)?),
            role @ (Role::TextInput | Role::NumberInput) => Kind::Field(Field {
                value: node.value().unwrap_or_default().to_owned(),
                is_number: role == Role::NumberInput,
            }),
            _ => return None,
        };
        Some(Self {
            id,
            label: node.label().filter(|label| !label.is_empty())?.to_owned(),
            about: node.description().map(str::to_owned),
            kind,
            disabled: node.is_disabled(),
            expanded: node.is_expanded(),
            rect: node.bounds().map(|rect| Rect {
                x0: rect.x0 * zoom,
                y0: rect.y0 * zoom,
                x1: rect.x1 * zoom,
                y1: rect.y1 * zoom,
            }),
        })
    }

    fn build(&self, place: &Element) -> Option<Element> {
        let (name, kind) = match self.kind {
            Kind::Button(_) => ("button", "button"),
            Kind::Slider(_) => ("input", "range"),
            Kind::Field(_) => ("input", "text"),
        };
        let element = dom::document()?.create_element(name).ok()?;
        element.set_attribute("type", kind).ok()?;
        element
            .set_attribute(NODE_ATTRIBUTE, &self.id.0.to_string())
            .ok()?;
        place.append_child(&element).ok()?;
        Some(element)
    }

    /// Updates the attributes that differ from those `before`.
    fn update(&self, element: &Element, before: Option<&Self>) -> Option<()> {
        let changed = |of: fn(&Self) -> Option<String>| {
            let now = of(self);
            (before.map(of) != Some(now.clone())).then_some(now)
        };
        let set = |name: &str, value: Option<String>| match value {
            Some(value) => element.set_attribute(name, &value).ok(),
            None => element.remove_attribute(name).ok(),
        };
        if let Some(label) = changed(|control| Some(control.label.clone())) {
            set("aria-label", label)?;
        }
        if let Some(about) = changed(|control| control.about.clone()) {
            set("aria-description", about)?;
        }
        if let Some(disabled) = changed(|control| control.disabled.then(|| "true".to_owned())) {
            set("aria-disabled", disabled)?;
        }
        if let Some(expanded) = changed(|control| control.expanded.map(|open| open.to_string())) {
            set("aria-expanded", expanded)?;
        }
        if before.and_then(|before| before.rect) != self.rect
            && let (Some(rect), Some(element)) = (self.rect, element.dyn_ref::<HtmlElement>())
        {
            let style = element.style();
            for (name, size) in [
                ("left", rect.x0),
                ("top", rect.y0),
                ("width", rect.width()),
                ("height", rect.height()),
            ] {
                style.set_property(name, &format!("{size:.0}px")).ok()?;
            }
        }
        if before.map(|before| &before.kind) == Some(&self.kind) {
            return Some(());
        }
        match (&self.kind, element.dyn_ref::<HtmlInputElement>()) {
            (Kind::Button(pressed), _) => set("aria-pressed", pressed.map(|on| on.to_string()))?,
            (Kind::Slider(scale), Some(input)) => {
                input.set_min(&scale.least.to_string());
                input.set_max(&scale.most.to_string());
                input.set_step(&scale.step.to_string());
                input.set_value_as_number(scale.value);
                set("aria-valuetext", Some(scale.text.clone()))?;
            }
            (Kind::Field(field), Some(input)) => {
                input.set_default_value(&field.value);
                input.set_value(&field.value);
                set("inputmode", field.is_number.then(|| "decimal".to_owned()))?;
            }
            _ => (),
        }
        Some(())
    }
}

impl Scale {
    fn of(node: &Node) -> Option<Self> {
        Some(Self {
            value: node.numeric_value()?,
            least: node.min_numeric_value()?,
            most: node.max_numeric_value()?,
            step: node.numeric_value_step()?,
            text: node.value().unwrap_or_default().to_owned(),
        })
    }
}

impl Elements {
    fn show(&mut self, controls: Vec<Control>) {
        let Some(place) = dom::element(CONTAINER_ID) else {
            return;
        };
        let shown = std::mem::take(&mut self.shown);
        let lost_focus = self.lost_focus(&shown, &controls);
        self.elements.retain(|id, element| {
            let stays = controls.iter().any(|control| control.id == *id);
            if !stays {
                element.remove();
            }
            stays
        });
        let mut before = BTreeMap::new();
        before.extend(shown.into_iter().map(|control| (control.id, control)));
        let mut last: Option<Element> = None;
        for control in &controls {
            let known = self.elements.get(&control.id).cloned();
            let Some(element) = known.or_else(|| control.build(&place)) else {
                continue;
            };
            control.update(&element, before.get(&control.id));
            place_after(&place, &element, last.as_ref());
            self.elements.insert(control.id, element.clone());
            last = Some(element);
        }
        if let Some(place) = lost_focus {
            self.move_focus(&controls, &before, place);
        }
        self.shown = controls;
    }

    /// The index of the control that had the focus, if it no longer exists.
    fn lost_focus(&self, before: &[Control], now: &[Control]) -> Option<usize> {
        let active = dom::document()?.active_element()?;
        let place = before
            .iter()
            .position(|control| self.elements.get(&control.id) == Some(&active))?;
        let stays = now.iter().any(|control| control.id == before[place].id);
        (!stays).then_some(place)
    }

    /// Focuses a text field that has just opened, else the control that is now at the index
    /// `place`.
    fn move_focus(&self, now: &[Control], before: &BTreeMap<NodeId, Control>, place: usize) {
        let opened = now.iter().find(|control| {
            let is_field = matches!(&control.kind, Kind::Field(field) if !field.is_number);
            is_field && !before.contains_key(&control.id)
        });
        let next = opened.or_else(|| now.get(place.min(now.len().saturating_sub(1))));
        let element = next.and_then(|control| self.elements.get(&control.id));
        if let Some(element) = element.and_then(|element| element.dyn_ref::<HtmlElement>()) {
            element.focus().ok();
        }
    }
}

/// Puts an element after another one, or first. Leaves it alone if it is there already, because an
/// element that is moved loses the focus.
fn place_after(place: &Element, element: &Element, last: Option<&Element>) {
    let next = match last {
        Some(last) => last.next_element_sibling(),
        None => place.first_element_child(),
    };
    if next.as_ref() != Some(element) {
        place.insert_before(element, next.as_deref()).ok();
    }
}
