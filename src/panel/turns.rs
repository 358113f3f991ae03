//! The answer: turns at landing in figures legible from three metres, and the call.

use egui::text::{LayoutJob, TextFormat};
use egui::{
    Align2, Color32, CornerRadius, FontId, Id, Pos2, Rect, RichText, Sense, Stroke, StrokeKind, Ui,
    pos2, vec2,
};

use crate::beyond::steady_height;
use crate::layout::LOW_COLUMN;
use crate::style::{
    self, ACCENT, CARD, GAP, PLAYHEAD, TEXT, TOUCH_SIZE, WARNING, WEAK_TEXT, WIDE_GAP,
};
use crate::uncertainty;
use turns_aloft_analysis::uncertainty::Range;
use turns_aloft_describe::call::{
    Standing, call_text, calls_text, short_verdict_text, shortfall_range_text, shortfall_text,
    uncalled_text,
};
use turns_aloft_describe::jump::notation;
use turns_aloft_describe::range::range_figures;
use turns_aloft_describe::turns::{owed_text, turns_in_all, turns_text};
use turns_aloft_scenario::call::Call;
use turns_aloft_scenario::fly::Owed;
use turns_aloft_session::Session;
use turns_aloft_words::{say, text};

/// Font size of the large figures. A digit is then about 80 CSS pixels high, 15 mm on a tablet:
/// 1/200 of a reading distance of three metres, a usual height for signs.
const FIGURES: f32 = 116.0;

/// Font size of the figures where there is little room, and in a column lower than `LOW_COLUMN`.
const LINE_FIGURES: f32 = 50.0;
const LOW_FIGURES: f32 = 42.0;

/// Height of a comma's tail, as a share of the figures' size.
const TAIL: f32 = 0.06;

const HEIGHT_ID: &str = "height of the answer";

pub fn card(ui: &mut Ui, session: &Session, narrow: bool) {
    let figures = if narrow { 0.8 * FIGURES } else { FIGURES };
    if let Some(range) = session.range() {
        range_card(ui, session, range, figures);
        return;
    }
    let turns = turns_text(turns_in_all(session.jump()));
    // The tail of a decimal comma extends below the figures.
    let tail = if turns.contains(',') {
        TAIL * figures
    } else {
        0.0
    };
    let number = ui
        .painter()
        .layout_no_wrap(turns, style::bold(figures), TEXT.get());
    let lines = verdict(session);
    let room = ui.available_width() - number.size().x - 3.0 * WIDE_GAP;
    let widest = widest_verdicts(session).into_iter().flatten();
    let side_by_side = widest
        .chain(verdict(session))
        .all(|line| line.width(ui) <= room);
    let height = 0.98 * figures;
    let foot = if side_by_side { 0.0 } else { 36.0 };
    let whole = height + tail + foot;
    ui.data_mut(|data| data.insert_temp(Id::new(HEIGHT_ID), whole));
    let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width(), whole), Sense::hover());
    ui.painter()
        .rect_filled(rect, CornerRadius::same(style::CORNER_RADIUS), CARD.get());

    let top = Rect::from_min_size(rect.min, vec2(rect.width(), height));
    let across = number.size().x;
    ui.painter().galley(
        pos2(
            top.left() + WIDE_GAP,
            top.center().y + 2.0 - 0.5 * number.size().y,
        ),
        number,
        TEXT.get(),
    );
    if side_by_side {
        let left = top.left() + across + 2.0 * WIDE_GAP;
        for (line, y) in lines.iter().zip([-31.0, -3.0, 27.0]) {
            line.write(ui, pos2(left, top.center().y + y));
        }
    } else {
        // The turns of a full jump stay beside the figures; the verdict goes below.
        lines[0].write(
            ui,
            pos2(top.left() + across + 2.0 * WIDE_GAP, top.bottom() - 34.0),
        );
        let y = rect.bottom() - 0.5 * foot - 4.0;
        let mut x = rect.left() + WIDE_GAP;
        let verdict = shrunk(ui, &lines[1..], rect.width() - 2.0 * WIDE_GAP);
        for line in verdict {
            line.write(ui, pos2(x, y));
            x += line.width(ui) + WIDE_GAP;
        }
    }
}

/// The answer beside smaller figures, for layouts with little room; it does not scroll out of sight.
pub fn line(ui: &mut Ui, session: &Session) {
    const SIZE: f32 = 18.0;
    let (turns, lines) = match session.range() {
        Some(range) => (
            range_figures(range, owed(session)),
            possible_verdict(session, range),
        ),
        None => (turns_text(turns_in_all(session.jump())), verdict(session)),
    };
    let width = ui.available_width();
    let figures = if ui.available_height() < LOW_COLUMN {
        LOW_FIGURES
    } else {
        LINE_FIGURES
    };
    let painter = ui.painter();
    let figures = style::fitting(painter, &turns, figures, 0.45 * width);
    let number = painter.layout_no_wrap(turns, style::bold(figures), TEXT.get());
    let room = width - number.size().x - 3.0 * WIDE_GAP;
    // The last line, the call, stands below the others.
    let (others, call) = lines.split_at(lines.len().saturating_sub(1).max(1));
    let mut job = LayoutJob::default();
    job.wrap.max_width = room;
    for (i, line) in others.iter().chain(call).enumerate() {
        let between = match i {
            0 => "",
            _ if i == others.len() => "\n",
            _ => "   ",
        };
        let row = if i < others.len() { others } else { call };
        let row: Vec<&str> = row.iter().map(|line| line.text.as_str()).collect();
        let size = style::fitting(painter, &row.join("   "), SIZE, room);
        let format = TextFormat::simple(style::bold(size), line.colour);
        job.append(&format!("{between}{}", line.text), 0.0, format);
    }
    let said = painter.layout_job(job);
    let height = TOUCH_SIZE.max(0.9 * figures).max(said.size().y) + GAP;
    let height = steady_height(ui, session, "height of the answer's line", height);

    let (rect, _) = ui.allocate_exact_size(vec2(width, height), Sense::hover());
    let painter = ui.painter();
    painter.rect_filled(rect, CornerRadius::same(style::CORNER_RADIUS), CARD.get());
    let left = rect.left() + WIDE_GAP;
    let middle = rect.center().y + 1.0;
    let said_at = pos2(
        left + number.size().x + WIDE_GAP,
        middle - 0.5 * said.size().y,
    );
    // Digits stand low in their line; a comma's tail hangs below them.
    let raised = rect.center().y - TAIL * figures;
    painter.galley(
        pos2(left, raised - 0.5 * number.size().y),
        number,
        TEXT.get(),
    );
    painter.galley(said_at, said, TEXT.get());
}

/// The turns as a range: figures as wide as the card, and the verdict below.
fn range_card(ui: &mut Ui, session: &Session, range: &Range, figures: f32) {
    let width = ui.available_width() - 2.0 * WIDE_GAP;
    let text = range_figures(range, owed(session));
    let size = style::fitting(ui.painter(), &text, figures, width);
    let number = ui
        .painter()
        .layout_no_wrap(text, style::bold(size), TEXT.get());
    let rows: Vec<_> = possible_verdict(session, range)
        .into_iter()
        .map(|line| {
            let font = line.font();
            ui.painter().layout(line.text, font, line.colour, width)
        })
        .collect();
    let top = 0.98 * size;
    let foot: f32 = rows.iter().map(|row| row.size().y).sum();
    // As high as the card of the single number, so that the button below, which changes between them,
    // stays where it is.
    let least: Option<f32> = ui.data(|data| data.get_temp(Id::new(HEIGHT_ID)));
    let whole = least.unwrap_or_default().max(top + foot + GAP);
    let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width(), whole), Sense::hover());
    ui.painter()
        .rect_filled(rect, CornerRadius::same(style::CORNER_RADIUS), CARD.get());
    let left = rect.left() + WIDE_GAP;
    let middle = rect.top() + 0.5 * top + 2.0;
    ui.painter().galley(
        pos2(left, middle - 0.5 * number.size().y),
        number,
        TEXT.get(),
    );
    let mut y = rect.top() + top;
    for row in rows {
        let height = row.size().y;
        ui.painter().galley(pos2(left, y), row, TEXT.get());
        y += height;
    }
}

/// The lines side by side in `room`, smaller if they need more.
fn shrunk(ui: &Ui, lines: &[Line], room: f32) -> Vec<Line> {
    let gaps = WIDE_GAP * (lines.len() - 1) as f32;
    let needed: f32 = lines.iter().map(|line| line.width(ui)).sum();
    let share = ((room - gaps) / needed).min(1.0);
    let size = |size: f32| (2.0 * share * size).floor() / 2.0;
    let shrunk = lines.iter().map(|line| Line {
        text: line.text.clone(),
        size: size(line.size),
        colour: line.colour,
    });
    shrunk.collect()
}

/// A line of the verdict.
struct Line {
    text: String,
    size: f32,
    colour: Color32,
}

impl Line {
    fn font(&self) -> FontId {
        if self.size > 20.0 {
            style::bold(self.size)
        } else {
            style::text(self.size)
        }
    }

    fn width(&self, ui: &Ui) -> f32 {
        ui.painter()
            .layout_no_wrap(self.text.clone(), self.font(), self.colour)
            .size()
            .x
    }

    fn write(&self, ui: &Ui, at: Pos2) {
        ui.painter().text(
            at,
            Align2::LEFT_CENTER,
            &self.text,
            self.font(),
            self.colour,
        );
    }
}

/// The turns of a full jump, those missing and the call.
fn verdict(session: &Session) -> Vec<Line> {
    let line = |text, size, colour| Line { text, size, colour };
    let Some(owed) = session.jump().owed else {
        return vec![line(text("panel-turns").to_owned(), 22.0, WEAK_TEXT.get())];
    };
    verdict_of(session, owed)
}

/// Verdicts that the jump could get, so that the card is as high whichever it gets: nothing below it moves
/// while a slider does.
fn widest_verdicts(session: &Session) -> Vec<Vec<Line>> {
    let Some(owed) = session.jump().owed else {
        return Vec::new();
    };
    let with = |shortfall_deg: f64| Owed {
        shortfall_deg,
        call: owed.call.map(|_| Call::of(shortfall_deg)),
        ..owed
    };
    [-188.0, 0.0, 68.0, 80.0, 108.0, 188.0]
        .map(|shortfall_deg| verdict_of(session, with(shortfall_deg)))
        .into()
}

fn verdict_of(session: &Session, owed: Owed) -> Vec<Line> {
    let line = |text, size, colour| Line { text, size, colour };
    let scenario = session.scenario();
    let colour = colour(session, [owed.shortfall_deg; 2]);
    let call = if scenario.jump.is_called() {
        let sign = owed.call.map_or("", Call::sign);
        format!(
            "{}{sign}  {}",
            notation(scenario.jump, scenario.jump_turns),
            without_sign(&short_verdict_text(owed))
        )
    } else {
        short_verdict_text(owed)
    };
    let of = say!("panel-turns-of", owed = owed_text(owed.turns));
    vec![
        line(of, 20.0, WEAK_TEXT.get()),
        line(shortfall_text(owed.shortfall_deg), 24.0, colour),
        line(call, 17.0, colour),
    ]
}

/// The accent colour if nothing is missing, and none where some is missing that the rule lets pass; the
/// warning colour if any call is possible, or the jump is beyond what has been seen.
fn colour(session: &Session, shortfall_deg: [f64; 2]) -> Color32 {
    match Standing::of(shortfall_deg, session.beyond_seen()) {
        Standing::AllThere => ACCENT.get(),
        Standing::LetPass => TEXT.get(),
        Standing::Wanting | Standing::Beyond => WARNING.get(),
    }
}

/// The turns of a full jump, and the possible shortfalls and calls in the colour of the worst.
fn possible_verdict(session: &Session, range: &Range) -> Vec<Line> {
    let line = |text, size, colour| Line { text, size, colour };
    let (Some(owed), Some(shortfall_deg)) = (session.jump().owed, range.shortfall_deg) else {
        return vec![line(text("panel-turns").to_owned(), 20.0, WEAK_TEXT.get())];
    };
    let scenario = session.scenario();
    let colour = colour(session, shortfall_deg);
    let call = range.calls.as_ref().map_or_else(
        || uncalled_text(shortfall_deg).to_owned(),
        |calls| {
            let jump = notation(scenario.jump, scenario.jump_turns);
            // No line break between a word and its sign.
            let call = calls_text(calls, shortfall_deg, call_text).replace(" (", "\u{a0}(");
            if calls.len() > 1 {
                say!("panel-call-may-be", jump = jump, call = call)
            } else {
                say!("panel-call-is", jump = jump, call = call)
            }
        },
    );
    let of = say!(
        "panel-turns-of-short",
        owed = owed_text(owed.turns),
        short = shortfall_range_text(shortfall_deg)
    );
    vec![line(of, 21.0, colour), line(call, 17.0, colour)]
}

/// The turns that the jump's name owes, if it owes any.
fn owed(session: &Session) -> Option<f64> {
    session.jump().owed.map(|owed| owed.turns)
}

/// A call without its sign, which is shown after the name of the jump.
fn without_sign(whole: &str) -> &str {
    whole.split(" (").next().unwrap_or(whole)
}

/// The note of the jump: where it comes from.
pub fn note(ui: &mut Ui, session: &Session) {
    let note = session.shown_note();
    if !note.is_empty() {
        ui.label(RichText::new(note).size(14.5).color(WEAK_TEXT.get()));
        ui.add_space(GAP);
    }
}

/// A progress bar of the turns up to the playhead, and the uncertainty button.
pub fn progress(ui: &mut Ui, session: &mut Session) {
    let (row, _) = ui.allocate_exact_size(vec2(ui.available_width(), TOUCH_SIZE), Sense::hover());
    let (rest, button) = row.split_left_right_at_x(row.right() - uncertainty::BUTTON);
    uncertainty::button(ui, session, button);
    let middle = rest.center().y;
    bar(
        ui,
        session,
        Rect::from_min_max(
            pos2(rest.left(), middle - 5.0),
            pos2(rest.right() - WIDE_GAP, middle + 5.0),
        ),
    );
}

fn bar(ui: &Ui, session: &Session, rect: Rect) {
    let Some(owed) = session.jump().owed else {
        return;
    };
    let now = session.now();
    let turns = turns_aloft_session::readings::turns_at(session, &now);
    let range = session.range();
    let most = owed
        .turns
        .max(range.map_or(session.jump().turns, |range| range.high));
    let x = |turns: f64| rect.left() + rect.width() * (turns / most).clamp(0.0, 1.0) as f32;
    let painter = ui.painter();
    let round = CornerRadius::same(5);
    painter.rect_filled(rect, round, style::LINE.get());
    painter.rect_filled(
        Rect::from_min_max(rect.min, pos2(x(turns), rect.bottom())),
        round,
        PLAYHEAD.get(),
    );
    for quarter in 1..(4.0 * most) as u32 {
        let whole = quarter % 4 == 0;
        let mark = x(f64::from(quarter) / 4.0);
        let top = if whole { rect.top() } else { rect.center().y };
        painter.line_segment(
            [pos2(mark, top), pos2(mark, rect.bottom())],
            (if whole { 2.0 } else { 1.0 }, TEXT.get()),
        );
    }
    if let Some(range) = range {
        painter.rect(
            Rect::from_x_y_ranges(x(range.low)..=x(range.high), rect.y_range())
                .expand2(vec2(0.0, 5.0)),
            CornerRadius::same(3),
            Color32::TRANSPARENT,
            Stroke::new(2.0, TEXT.get()),
            StrokeKind::Middle,
        );
    }
}
