//! Runs the panels in egui_kittest: without window or browser, one frame per step.

use std::collections::BTreeMap;

use egui::accesskit::Role;
use egui::epaint::{ClippedShape, TextShape};
use egui::{Event, Key, Modifiers, PointerButton, Pos2, Rect, Shape, pos2, vec2};
use egui_kittest::kittest::{NodeT, Queryable};
use egui_kittest::{Harness, Node};

use turns_aloft::appearance::view::View;
use turns_aloft::panel::{self, Frame, PageCommand, Panels, touch_targets};
use turns_aloft::session::{Question, Session};
use turns_aloft::words::{Language, set_language};

/// The four screen sizes under test, CSS pixels.
pub const SIZES: [[f32; 2]; 4] = [
    [1366.0, 1024.0],
    [1024.0, 768.0],
    [768.0, 1024.0],
    [390.0, 844.0],
];

/// A small phone, and a phone on its side.
pub const SMALL_PHONE: [f32; 2] = [320.0, 640.0];
pub const PHONE_ON_ITS_SIDE: [f32; 2] = [844.0, 390.0];

pub const LANGUAGES: [Language; 2] = [Language::English, Language::German];

/// The size whose layout has one column beside the 3D picture.
pub const TABLET: [f32; 2] = SIZES[1];

/// The state of the panels, and the commands they have sent to the page.
pub struct App {
    pub session: Session,
    pub panels: Panels,
    pub frame: Option<Frame>,
    pub view: Option<View>,
    pub commands: Vec<PageCommand>,
}

pub type Page = Harness<'static, App>;

/// Opens the first starting point, at rest on its landing, with the answer to a question complete.
pub fn open(size: [f32; 2], language: Language, question: Question) -> Page {
    set_language(language);
    let mut session = Session::default();
    session.reduce_motion();
    session.ask(question);
    show(size, session)
}

/// Shows the panels of a session.
pub fn show(size: [f32; 2], session: Session) -> Page {
    let app = App {
        session,
        panels: Panels::default(),
        frame: None,
        view: Some(View::Front),
        commands: Vec::new(),
    };
    let mut page = Harness::builder()
        .with_size(vec2(size[0], size[1]))
        .with_step_dt(1.0 / 60.0)
        .build_ui_state(
            |ui, app: &mut App| {
                app.session.poll(|| true);
                app.frame = panel::show(ui.ctx(), &mut app.panels, &mut app.session, app.view);
                if let Some(frame) = app.frame {
                    app.view = frame.view.or(app.view);
                    app.commands.extend(frame.command);
                }
            },
            app,
        );
    settle(&mut page);
    page
}

/// Handles pending events, and runs the frames until layout and answers are up to date.
pub fn settle(page: &mut Page) {
    page.step();
    page.run_steps(3);
}

/// A control as AccessKit describes it.
#[derive(Debug, Clone, PartialEq)]
pub struct Control {
    pub role: Role,
    pub name: String,
    pub about: Option<String>,
    pub value: Option<String>,
    pub rect: Rect,
}

fn is_control(node: &Node<'_>) -> bool {
    let own = node.accesskit_node();
    let role = own.role();
    // egui's internal parts, such as a text field being edited, have no label.
    matches!(
        role,
        Role::Button | Role::Slider | Role::TextInput | Role::NumberInput
    ) && own.label().is_some()
}

/// Every control: buttons, sliders and fields.
pub fn controls(page: &Page) -> Vec<Control> {
    let all = page.root().children_recursive();
    all.filter(is_control)
        .map(|node| {
            let own = node.accesskit_node();
            Control {
                role: own.role(),
                name: own.label().unwrap_or_default(),
                about: own.description(),
                value: own.value(),
                rect: node.rect(),
            }
        })
        .collect()
}

/// The only control with that role and name.
pub fn control<'a>(page: &'a Page, role: Role, name: &'a str) -> Node<'a> {
    page.get_by_role_and_label(role, name)
}

pub fn has(page: &Page, name: &str) -> bool {
    controls(page).iter().any(|control| control.name == name)
}

/// The names of the controls that begin with `start`.
pub fn named(page: &Page, start: &str) -> Vec<String> {
    let names = controls(page).into_iter().map(|control| control.name);
    names.filter(|name| name.starts_with(start)).collect()
}

/// Scrolls a control into view and clicks it in its middle.
pub fn click(page: &mut Page, role: Role, name: &str) {
    control(page, role, name).scroll_to_me();
    settle(page);
    control(page, role, name).click();
    settle(page);
}

pub fn press(page: &mut Page, name: &str) {
    click(page, Role::Button, name);
}

/// The control at the touch target of that name, if AccessKit has one there.
pub fn at_target<'a>(page: &'a Page, target: &str) -> Option<Node<'a>> {
    let place = targets()[target] / page.ctx.zoom_factor();
    let near = |node: &Node<'_>| {
        let rect = node.rect();
        rect.min.distance(place.min) < 1.0 && rect.max.distance(place.max) < 1.0
    };
    page.root()
        .children_recursive()
        .find(|node| is_control(node) && near(node))
}

/// Clicks the control at the touch target of that name, as a script does.
pub fn press_target(page: &mut Page, target: &str) {
    at_target(page, target)
        .unwrap_or_else(|| panic!("no control at the touch target {target:?}"))
        .click_accesskit();
    settle(page);
}

/// Sets a slider or a field by AccessKit.
pub fn set(page: &mut Page, role: Role, name: &str, data: egui::accesskit::ActionData) {
    let node = control(page, role, name);
    let (target_node, target_tree) = node.accesskit_node().locate();
    page.event(Event::AccessKitActionRequest(
        egui::accesskit::ActionRequest {
            action: egui::accesskit::Action::SetValue,
            target_node,
            target_tree,
            data: Some(data),
        },
    ));
    settle(page);
}

pub fn pointer(page: &mut Page, at: Pos2, pressed: bool) {
    page.event(Event::PointerMoved(at));
    page.event(Event::PointerButton {
        pos: at,
        button: PointerButton::Primary,
        pressed,
        modifiers: Modifiers::NONE,
    });
    page.step();
}

/// Presses the pointer, moves it in steps and releases it.
pub fn drag(page: &mut Page, from: Pos2, to: Pos2) {
    pointer(page, from, true);
    for step in 1_u8..=4 {
        page.event(Event::PointerMoved(from.lerp(to, f32::from(step) / 4.0)));
        page.step();
    }
    pointer(page, to, false);
    settle(page);
}

/// Types into the focused field, and presses a key.
pub fn type_and_press(page: &mut Page, text: &str, key: Key) {
    page.event(Event::Text(text.to_owned()));
    page.key_press(key);
    settle(page);
}

/// Every touch target of the last frame.
pub fn targets() -> BTreeMap<String, Rect> {
    let all: BTreeMap<String, [f32; 4]> =
        serde_json::from_str(&touch_targets::json()).expect("JSON of names and places");
    all.into_iter()
        .map(|(name, [x, y, width, height])| {
            (name, Rect::from_min_size(pos2(x, y), vec2(width, height)))
        })
        .collect()
}

/// What scrolls below the buttons of the questions.
pub fn panel(size: [f32; 2]) -> Rect {
    let [first, last] = ["question:Jump", "question:Compare"].map(|name| targets()[name]);
    Rect::from_min_max(
        pos2(first.left(), first.bottom() + 8.0),
        pos2(last.right(), size[1]),
    )
}

/// The middle of a touch target.
pub fn centre(target: &str) -> Pos2 {
    targets()[target].center()
}

/// A text as it is drawn, of one or more lines.
#[derive(Debug, Clone)]
pub struct Text {
    pub text: String,
    /// The bounds of its glyphs, and the clip rectangle.
    pub letters: Rect,
    pub clip: Rect,
    /// Whether it ends with an ellipsis because it is too long.
    pub elided: bool,
    /// Its smallest font size, points.
    pub size: f32,
}

/// Every text of the last frame.
pub fn texts(page: &Page) -> Vec<Text> {
    let mut all = Vec::new();
    for ClippedShape { clip_rect, shape } in &page.output().shapes {
        collect(shape, *clip_rect, &mut all);
    }
    all
}

fn collect(shape: &Shape, clip: Rect, all: &mut Vec<Text>) {
    match shape {
        Shape::Vec(shapes) => {
            for shape in shapes {
                collect(shape, clip, all);
            }
        }
        Shape::Text(TextShape { pos, galley, .. }) if !galley.text().trim().is_empty() => {
            let sizes = galley.job.sections.iter().map(|it| it.format.font_id.size);
            all.push(Text {
                text: galley.text().to_owned(),
                letters: galley.mesh_bounds.translate(pos.to_vec2()),
                clip,
                elided: galley.elided,
                size: sizes.fold(f32::INFINITY, f32::min),
            });
        }
        _ => (),
    }
}

pub fn says(page: &Page, part: &str) -> bool {
    texts(page).iter().any(|text| text.text.contains(part))
}
