//! A waterfall chart from the turns of the ideal flight down to those of the jump.

use std::borrow::Cow;

use egui::{
    Align2, Color32, CornerRadius, Id, Rect, RichText, Sense, Stroke, StrokeKind, Ui, pos2, vec2,
};

use crate::controls::{explained, explanation_area};
use crate::style::{
    self, ACCENT, CLOSING, LINE, OPENING, PLAYHEAD, TEXT, TIGHT, TOUCH_SIZE, WARNING, WEAK_TEXT,
};
use crate::text::small;
use turns_aloft_analysis::budget::Cause;
use turns_aloft_describe::Label;
use turns_aloft_describe::fit::loss_range;
use turns_aloft_describe::turns::{signed_text, turns_text};
use turns_aloft_session::Session;
use turns_aloft_session::why::{BudgetAnswer, words};
use turns_aloft_words::{say, text};

/// One bar with its label.
struct Bar {
    name: &'static str,
    label: Cow<'static, str>,
    /// Turns at its ends; the next bar begins at `to`.
    from: f64,
    to: f64,
    /// `to` as shown.
    number: String,
    colour: Color32,
    /// The largest loss.
    largest: bool,
    about: String,
}

/// Height of the line of text over each bar, and of the bar itself.
const TEXT_HEIGHT: f32 = 24.0;
const BAR_HEIGHT: f32 = 16.0;
/// Width kept free for the numbers at the right.
const NUMBERS: f32 = 58.0;

pub fn show(ui: &mut Ui, session: &Session, budget_answer: &BudgetAnswer) {
    let bars = bars(session, budget_answer);
    let owed = session.jump().owed.map(|owed| owed.turns);
    let most = bars
        .iter()
        .map(|bar| bar.from.max(bar.to))
        .chain(owed)
        .fold(0.0, f64::max);
    let id = Id::new("explained bar");
    let present: Option<&'static str> = ui.data(|data| data.get_temp(id)).flatten();
    let mut touched = None;
    ui.spacing_mut().item_spacing.y = 0.0;
    for (i, bar) in bars.iter().enumerate() {
        let (row, _) =
            ui.allocate_exact_size(vec2(ui.available_width(), TOUCH_SIZE), Sense::hover());
        let open = present == Some(bar.name);
        let name = format!("why:{}", bar.name);
        // Has the chart's title, because an input has the same label as one of the bars.
        let what = || format!("{}, {}", text("panel-where-turns-went"), bar.label);
        let about = || bar.about.clone();
        let response = explanation_area(ui, &name, row, open, what, about);
        let width = row.width() - NUMBERS;
        let x = |turns: f64| row.left() + width * (turns / most).clamp(0.0, 1.0) as f32;
        if i + 1 < bars.len() {
            // A line to the beginning of the next bar.
            let end = row.bottom() + TEXT_HEIGHT;
            ui.painter().vline(
                x(bar.to),
                row.top() + TEXT_HEIGHT..=end,
                Stroke::new(1.0, LINE.get()),
            );
        }
        draw(ui, bar, row, [x(bar.from), x(bar.to)]);
        if i + 1 == bars.len()
            && let Some(owed) = owed
        {
            mark_owed(ui, row, [x(bar.to), x(owed)]);
        }
        if response.clicked() {
            touched = Some(bar.name);
        }
        if open && explained(ui, &name, row, |ui| small(ui, &bar.about)) {
            touched = touched.or(Some(bar.name));
        }
    }
    if let Some(missing) = words::missing(session, budget_answer) {
        // The call is shown with the turns.
        ui.label(RichText::new(missing).font(style::bold(16.0)));
    }
    if let Some(name) = touched {
        let now = (present != Some(name)).then_some(name);
        ui.data_mut(|data| data.insert_temp(id, now));
    }
}

fn bars(session: &Session, budget_answer: &BudgetAnswer) -> Vec<Bar> {
    let (budget, shown) = (&budget_answer.budget, &budget_answer.shown);
    let mut level = budget.ideal_turns;
    let mut bars = vec![Bar {
        name: "ideal",
        label: text("panel-ideal").into(),
        from: 0.0,
        to: level,
        number: turns_text(shown.ideal),
        colour: LINE.get(),
        largest: false,
        about: words::IDEAL.text().to_owned(),
    }];
    for ((cause, loss), shown) in Cause::ORDER
        .into_iter()
        .zip(budget.losses)
        .zip(shown.losses)
    {
        let (name, colour) = match cause {
            Cause::Closing => ("closing", CLOSING.get()),
            Cause::Tightness => ("tightness", TIGHT.get()),
            Cause::Opening => ("opening", OPENING.get()),
            Cause::Tilt => ("tilt", LINE.get()),
        };
        bars.push(Bar {
            name,
            label: label(session, cause),
            from: level,
            to: level - loss,
            number: signed_text(-shown),
            colour,
            largest: budget.largest == Some(cause),
            about: words::cause(session, cause),
        });
        level -= loss;
    }
    bars.push(Bar {
        name: "ice",
        label: text("panel-turned-before-take-off").into(),
        from: level,
        to: budget.turns,
        number: signed_text(shown.ice),
        colour: PLAYHEAD.get(),
        largest: false,
        about: words::ICE.text().to_owned(),
    });
    bars.push(Bar {
        name: "turns",
        label: text("panel-turns-in-all").into(),
        from: 0.0,
        to: budget.turns,
        number: turns_text(shown.turns),
        colour: PLAYHEAD.get(),
        largest: false,
        about: words::TURNS.text().to_owned(),
    });
    bars
}

/// A cause, and the range that the marks leave of what it cost, where the jump was found from marks.
fn label(session: &Session, cause: Cause) -> Cow<'static, str> {
    let Some(fit) = session.present_fit() else {
        return cause.label().into();
    };
    say!(
        "why-loss-range",
        what = cause.label(),
        range = loss_range(fit, cause)
    )
    .into()
}

fn draw(ui: &Ui, bar: &Bar, row: Rect, [from, to]: [f32; 2]) {
    let painter = ui.painter();
    let font = |size| {
        if bar.largest {
            style::bold(size)
        } else {
            style::text(size)
        }
    };
    painter.text(
        pos2(row.left(), row.top() + 0.5 * TEXT_HEIGHT),
        Align2::LEFT_CENTER,
        &*bar.label,
        font(16.0),
        TEXT.get(),
    );
    painter.text(
        pos2(row.right(), row.top() + TEXT_HEIGHT + 0.5 * BAR_HEIGHT),
        Align2::RIGHT_CENTER,
        &bar.number,
        style::bold(17.0),
        if bar.largest {
            WARNING.get()
        } else {
            TEXT.get()
        },
    );
    // A change of zero is drawn as a line.
    let width = (to - from).abs().max(1.0);
    let own = Rect::from_min_size(
        pos2(from.min(to), row.top() + TEXT_HEIGHT),
        vec2(width, BAR_HEIGHT),
    );
    let edge = if bar.largest {
        Stroke::new(2.0, WARNING.get())
    } else {
        Stroke::new(1.0, bar.colour.lerp_to_gamma(WEAK_TEXT.get(), 0.6))
    };
    painter.rect(
        own,
        CornerRadius::same(3),
        bar.colour,
        edge,
        StrokeKind::Middle,
    );
}

/// Marks the turns of a full jump, and those missing.
fn mark_owed(ui: &Ui, row: Rect, [turned, owed]: [f32; 2]) {
    let painter = ui.painter();
    let across = row.top() + TEXT_HEIGHT..=row.top() + TEXT_HEIGHT + BAR_HEIGHT;
    if owed > turned {
        painter.rect(
            Rect::from_x_y_ranges(turned..=owed, across.clone()),
            CornerRadius::ZERO,
            Color32::TRANSPARENT,
            Stroke::new(1.0, WEAK_TEXT.get()),
            StrokeKind::Middle,
        );
    }
    painter.vline(
        owed,
        across.start() - 4.0..=across.end() + 4.0,
        Stroke::new(3.0, ACCENT.get()),
    );
}
