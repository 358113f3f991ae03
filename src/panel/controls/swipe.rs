//! Swipes: whether a finger scrolls a column or moves a control in it, decided by the direction of the
//! finger's first few pixels, once and for all.
//!
//! egui would give every drag that begins on a slider to the slider, and begin to scroll under a finger
//! that has only been put down.

use std::mem;

use egui::containers::scroll_area::{DragScroll, ScrollSource, State};
use egui::{
    Context, Event, Id, LayerId, Plugin, PointerButton, Pos2, RawInput, Rect, ScrollArea,
    TouchPhase, Ui, Vec2,
};

use crate::controls::anchor;
use crate::controls::one_step::OneStep;

/// Decides about swipes; a plugin of egui.
#[derive(Default)]
struct Swipes {
    steps: OneStep,
    press: Option<Press>,
    /// The columns of this pass and of the one before, the innermost of nested ones first.
    shown: Vec<Column>,
    before: Vec<Column>,
}

#[derive(Clone, Copy)]
struct Column {
    id: Id,
    rect: Rect,
    layer: LayerId,
}

impl Column {
    /// The id that egui's scroll area is dragged by.
    fn background(&self) -> Id {
        self.id.with("area")
    }
}

/// A finger, or the mouse's button, that is down.
struct Press {
    origin: Pos2,
    is_finger: bool,
    /// The column it came down in.
    column: Option<Column>,
    /// It came down on a handle, which follows it in every direction.
    on_handle: bool,
    /// Its direction, once it has moved by a few pixels.
    direction: Option<Direction>,
    /// Whether the column scrolls with it; none before its direction is known.
    scrolls: Option<bool>,
}

#[derive(Clone, Copy, PartialEq)]
enum Direction {
    Level,
    Upright,
}

impl Direction {
    fn of(way: Vec2) -> Self {
        if way.y.abs() > way.x.abs() {
            Self::Upright
        } else {
            Self::Level
        }
    }
}

impl Press {
    /// Whether the column takes it from the control that it would otherwise drag, if there is one. The
    /// mouse has a wheel to scroll with: what it has taken hold of follows it.
    fn is_taken(&self, direction: Direction, drags_control: bool) -> bool {
        let may_scroll = self.is_finger && direction == Direction::Upright && !self.on_handle;
        self.column.is_some() && (may_scroll || !drags_control)
    }
}

impl Swipes {
    fn follow(&mut self, ctx: &Context, event: &Event, has_touch: bool) {
        match event {
            Event::PointerButton {
                pos,
                button: PointerButton::Primary,
                pressed,
                ..
            } => {
                self.press = pressed.then(|| Press {
                    origin: *pos,
                    is_finger: has_touch,
                    column: self.column_at(ctx, *pos),
                    on_handle: false,
                    direction: None,
                    scrolls: None,
                });
                if let Some(column) = self.press.as_ref().and_then(|press| press.column) {
                    hold_still(ctx, column.id);
                }
            }
            Event::PointerMoved(pos) => {
                let least = ctx.options(|options| options.input_options.max_click_dist);
                if let Some(press) = &mut self.press
                    && press.direction.is_none()
                    && press.origin.distance(*pos) > least
                {
                    press.direction = Some(Direction::of(*pos - press.origin));
                }
            }
            Event::MouseWheel { .. } | Event::AccessKitActionRequest(_) => anchor::let_go(ctx),
            // Taken away by the device, without being lifted: egui would go on dragging.
            Event::Touch {
                phase: TouchPhase::Cancel,
                ..
            } => {
                self.press = None;
                ctx.stop_dragging();
            }
            _ => (),
        }
    }

    fn column_at(&self, ctx: &Context, at: Pos2) -> Option<Column> {
        let layer = ctx.layer_id_at(at)?;
        let mut columns = self.before.iter();
        columns
            .find(|column| column.layer == layer && column.rect.contains(at))
            .copied()
    }

    /// Gives the drag to the column or leaves it to the control.
    fn decide(&mut self, ctx: &Context) {
        let dragged = ctx.dragged_id();
        let is_column = |id: Id| self.before.iter().any(|column| column.background() == id);
        let drags_control = dragged.is_some_and(|id| !is_column(id));
        let scrolls = self.press.as_mut().and_then(|press| {
            let taken = press.is_taken(press.direction?, drags_control);
            let scrolls = *press.scrolls.get_or_insert(taken);
            press.column.filter(|_| scrolls)
        });
        match scrolls {
            Some(column) => {
                anchor::let_go(ctx);
                ctx.set_dragged_id(column.background());
            }
            None if dragged.is_some_and(is_column) => ctx.stop_dragging(),
            None => (),
        }
    }
}

/// Ends a column's own movement, so that it lies still under the finger.
fn hold_still(ctx: &Context, column: Id) {
    if let Some(moving) = State::load(ctx, column) {
        let mut still = State::default();
        still.offset = moving.offset;
        still.store(ctx, column);
    }
}

impl Plugin for Swipes {
    fn debug_name(&self) -> &'static str {
        "swipes"
    }

    fn input_hook(&mut self, ctx: &Context, input: &mut RawInput) {
        // A frame's further passes have no input of their own.
        if ctx.current_pass_index() == 0 {
            input.events = self.steps.next(mem::take(&mut input.events));
        }
    }

    fn on_begin_pass(&mut self, ui: &mut Ui) {
        let ctx = ui.ctx();
        self.before = mem::take(&mut self.shown);
        let (events, has_touch) = ctx.input(|input| (input.events.clone(), input.any_touches()));
        for event in &events {
            self.follow(ctx, event, has_touch);
        }
        self.decide(ctx);
        if self.steps.is_waiting() {
            ctx.request_repaint();
        }
    }
}

/// Shows a column that scrolls by a finger, by the wheel, and when a control in it gets the keyboard's
/// focus.
pub fn scrolling<R>(ui: &mut Ui, area: ScrollArea, add: impl FnOnce(&mut Ui) -> R) -> R {
    let by = ScrollSource {
        drag: DragScroll::Always,
        ..ScrollSource::default()
    };
    let layer = ui.layer_id();
    let id = ui.id().with("slack");
    let output = area
        .scroll_source(by)
        .show(ui, |ui| anchor::within(ui, id, add));
    anchor::hold(ui, id, &output);
    let column = Column {
        id: output.id,
        rect: output.inner_rect.intersect(ui.clip_rect()),
        layer,
    };
    let swipes = ui.ctx().plugin_or_default::<Swipes>();
    swipes.lock().shown.push(column);
    output.inner.0
}

/// Says that the press that has just begun is on a handle, which follows a finger in every direction.
pub(crate) fn take_hold(ctx: &Context) {
    let swipes = ctx.plugin_or_default::<Swipes>();
    if let Some(press) = &mut swipes.lock().press {
        press.on_handle = true;
    }
}
