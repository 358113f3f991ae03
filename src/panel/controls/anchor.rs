//! Keeps the control that was touched last in its place on the screen, whatever appears or disappears
//! above it because of that: its column is scrolled instead, if need be beyond its ends.

use egui::containers::scroll_area::{ScrollAreaOutput, State};
use egui::{Context, Id, Rect, Response, Ui};

/// Rounding of positions, points.
const ROUNDING: f32 = 0.5;

/// The control that was touched last.
#[derive(Debug, Clone, Copy)]
struct Touched {
    id: Id,
    top: f32,
    /// The top of what was seen of its column.
    column_top: f32,
    /// The screen as it was.
    screen: Rect,
}

impl Touched {
    /// Its place: where it was, unless that has come to be covered by what is above the column.
    fn place(&self, column_top: f32) -> f32 {
        let covered = (self.column_top - self.top).max(0.0);
        self.top.max(column_top - covered)
    }
}

/// How far the touched control is below its place, in the column that is being shown.
#[derive(Debug, Clone, Copy)]
struct Drift(f32);

/// What a column has beyond its content, so that it can be scrolled as far as is needed.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Slack {
    /// Above the content.
    above: f32,
    /// Least height of the whole.
    height: f32,
}

/// Lets go of it: the user scrolls, or has the keyboard.
pub(super) fn let_go(ctx: &Context) {
    ctx.data_mut(|data| data.remove::<Touched>(Id::NULL));
}

/// To be called for every control that is shown.
pub(super) fn note(ui: &Ui, response: &Response) {
    let (ctx, column_top) = (ui.ctx(), ui.clip_rect().top());
    let (id, top) = (response.id, response.rect.top());
    if response.is_pointer_button_down_on() && ctx.input(|input| input.pointer.any_pressed()) {
        let screen = ctx.viewport_rect();
        let touched = Touched {
            id,
            top,
            column_top,
            screen,
        };
        ctx.data_mut(|data| data.insert_temp(Id::NULL, touched));
    }
    let touched = ctx.data(|data| data.get_temp::<Touched>(Id::NULL));
    if let Some(touched) = touched.filter(|touched| touched.id == id)
        && touched.screen == ctx.viewport_rect()
    {
        ctx.data_mut(|data| data.insert_temp(Id::NULL, Drift(top - touched.place(column_top))));
    }
}

/// Adds the content of a column, within what it has beyond that. Returns the top of the whole as well.
pub(super) fn within<R>(ui: &mut Ui, column: Id, add: impl FnOnce(&mut Ui) -> R) -> (R, f32) {
    let top = ui.min_rect().top();
    let slack: Slack = ui.data_mut(|data| {
        data.remove::<Drift>(Id::NULL);
        data.get_temp(column).unwrap_or_default()
    });
    ui.add_space(slack.above);
    let inner = add(ui);
    ui.add_space((slack.height - ui.min_rect().height()).max(0.0));
    (inner, top)
}

/// After a column has been shown: scrolls it to where the touched control is in its place. Without one
/// in it, it ends where its content ends.
pub(super) fn hold<R>(ui: &Ui, column: Id, output: &ScrollAreaOutput<(R, f32)>) {
    let before: Slack = ui.data(|data| data.get_temp(column).unwrap_or_default());
    let drift = ui.data(|data| data.get_temp::<Drift>(Id::NULL));
    let (offset, slack) = match drift {
        Some(Drift(drift)) if drift.abs() <= ROUNDING => return,
        Some(Drift(drift)) => {
            // What it was scrolled by when it was laid out: it may have become shorter.
            let (_, top) = output.inner;
            let offset = output.inner_rect.top() - top + drift;
            let slack = Slack {
                above: before.above + (-offset).max(0.0),
                height: offset.max(0.0) + output.inner_rect.height(),
            };
            (offset.max(0.0), slack)
        }
        None if before.above == 0.0 && before.height == 0.0 => return,
        None => {
            let offset = (output.state.offset.y - before.above).max(0.0);
            (offset, Slack::default())
        }
    };
    let ctx = ui.ctx();
    ctx.data_mut(|data| data.insert_temp(column, slack));
    if let Some(mut state) = State::load(ctx, output.id) {
        state.offset.y = offset;
        state.store(ctx, output.id);
    }
    ctx.request_discard("what is touched stays in its place");
}
