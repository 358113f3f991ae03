//! The card of one proposal: what to change, the verdict on whether people can do it, and a button
//! that tries it.

use egui::{
    Align2, Color32, CornerRadius, Id, Pos2, Rect, RichText, Sense, Shape, Stroke, Ui, pos2, vec2,
};

use crate::beyond;
use crate::controls::{Button, explained, toggle_area};
use crate::fitted::fitted;
use crate::number::{hatch, place};
use crate::style::{self, ACCENT, CARD, GAP, LINE, SEEN, TEXT, TOUCH_SIZE, WARNING, WEAK_TEXT};
use crate::text::{card, small};
use turns_aloft_analysis::goal::{Proposal, Single};
use turns_aloft_analysis::limits::{Judgement, Verdict};
use turns_aloft_describe::goal as words;
use turns_aloft_describe::{Label, Text};
use turns_aloft_scenario::beyond::Respect;
use turns_aloft_session::Session;
use turns_aloft_words::{say, text};

const APPLY: f32 = 76.0;

/// Width of the sign before a verdict.
const SIGN: f32 = 24.0;

/// The card of a lever that reaches the goal alone.
pub fn single(ui: &mut Ui, session: &mut Session, single: &Single, fits: bool) {
    let Some(proposal) = &single.proposal else {
        return;
    };
    ui.scope(|ui| {
        if !fits {
            ui.set_opacity(style::FADED);
        }
        card(ui, |ui| {
            let values = [single.now, proposal.value];
            let [values, change] = words::from_to_and_change(session.units(), single.lever, values);
            let change = format!("{values}  ({change})");
            if title_row(
                ui,
                single.lever.key(),
                single.lever.parameter().label(),
                &change,
            ) && fits
            {
                session.apply_single(single.lever);
            }
            track(ui, session, single, proposal);
            if let Some(said) = words::hang_time(session.jump(), proposal.hang_time_s) {
                small(ui, &said);
            }
            let landing = words::landing(session.jump(), proposal.landing_load_bw);
            verdict(
                ui,
                single.lever.key(),
                single.lever.parameter().label(),
                single.judgement.verdict,
                |ui| {
                    beyond::meaning(ui, session, &proposal.beyond_seen);
                    small(ui, &words::basis(session.units(), single));
                    small(ui, &landing);
                },
            );
            verdict_notes(ui, session, &single.judgement, &proposal.beyond_seen);
            if !proposal.cautions.is_empty() {
                small(ui, &landing);
            }
        });
    });
}

/// One line on a lever that does not reach the goal alone.
pub fn unable(ui: &mut Ui, session: &Session, single: &Single, fits: bool) {
    let said = format!(
        "{}: {}",
        single.lever.parameter().label(),
        words::most(session.units(), single)
    );
    let colour = if fits { TEXT.get() } else { LINE.get() };
    ui.label(RichText::new(said).size(16.0).color(colour));
}

/// The card of the smallest joint change of several levers.
pub fn combination(ui: &mut Ui, session: &mut Session) {
    let (found, fits) = session.combination();
    let Some(combination) = found.cloned() else {
        let said = if fits {
            text("panel-no-mix")
        } else {
            text("panel-being-worked-out")
        };
        small(ui, said);
        return;
    };
    ui.scope(|ui| {
        if !fits {
            ui.set_opacity(style::FADED);
        }
        card(ui, |ui| {
            let together = text("panel-together");
            if title_row(ui, "joint", together, &words::effort(&combination)) && fits {
                session.apply_combination();
            }
            for change in words::parts(session.units(), &combination) {
                ui.label(RichText::new(words::part(session.units(), change)).size(16.0));
            }
            let landing = words::landing(session.jump(), combination.landing_load_bw);
            verdict(ui, "joint", together, combination.judgement.verdict, |ui| {
                beyond::meaning(ui, session, &combination.beyond_seen);
                small(ui, combination.judgement.source.text());
                small(ui, &landing);
            });
            verdict_notes(
                ui,
                session,
                &combination.judgement,
                &combination.beyond_seen,
            );
            if !combination.cautions.is_empty() {
                small(ui, &landing);
            }
        });
    });
}

/// Notes on the verdict.
fn verdict_notes(ui: &mut Ui, session: &Session, judgement: &Judgement, beyond_seen: &[Respect]) {
    if let Some(said) = words::size_not_known(judgement) {
        small(ui, said);
    }
    beyond::line(ui, session, beyond_seen);
}

/// Name, change and the button that tries it; returns whether that was clicked.
fn title_row(ui: &mut Ui, name: &str, label: &str, change: &str) -> bool {
    let room = ui.available_width() - APPLY - GAP;
    let painter = ui.painter();
    let (bold, usual) = (style::bold(17.0), style::text(16.0));
    let left = Align2::LEFT_TOP;
    let label_text = fitted(painter, left, label, bold, TEXT.get(), room);
    let change_text = fitted(painter, left, change, usual, TEXT.get(), room);
    let high = label_text.height() + change_text.height();
    let size = vec2(ui.available_width(), high.max(TOUCH_SIZE));
    let (row, _) = ui.allocate_exact_size(size, Sense::hover());
    let top = row.left_center() - vec2(0.0, 0.5 * high);
    let below = label_text.draw(ui.painter(), top).left_bottom();
    change_text.draw(ui.painter(), below);
    let button = Rect::from_min_size(
        pos2(row.right() - APPLY, row.top()),
        vec2(APPLY, TOUCH_SIZE),
    );
    let name = format!("apply:{name}");
    let accessible_name = say!("panel-try-change", what = label, change = change);
    Button::labelled(&name, text("panel-try-it"))
        .accessible_name(&accessible_name)
        .filled(true)
        .show(ui, button)
        .clicked()
}

/// Draws the lever's range, what has been seen in people, the present value (hollow) and the value
/// needed (filled).
fn track(ui: &mut Ui, session: &Session, single: &Single, proposal: &Proposal) {
    let parameter = single.lever.parameter();
    let [least, most] = parameter.row().range;
    let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width(), 20.0), Sense::hover());
    let x = |value: f64| {
        rect.left() + 8.0 + (rect.width() - 16.0) * place(parameter, value).clamp(0.0, 1.0)
    };
    let y = rect.center().y;
    let bar = |from: f32, to: f32, height: f32| {
        Rect::from_min_max(pos2(from, y - 0.5 * height), pos2(to, y + 0.5 * height))
    };
    let painter = ui.painter();
    let round = CornerRadius::same(3);
    painter.rect_filled(bar(x(least), x(most), 6.0), round, LINE.get());
    if let Some(limit) = session.marks(parameter) {
        if let Some([from, to]) = limit.seen {
            painter.rect_filled(bar(x(from), x(to), 6.0), round, SEEN.get());
        }
        if let Some(beyond) = limit.beyond.filter(|beyond| *beyond < most) {
            hatch(ui, bar(x(beyond), x(most), 12.0));
        }
        if let Some(below) = limit.beyond_below.filter(|below| *below > least) {
            hatch(ui, bar(x(least), x(below), 12.0));
        }
    }
    let (from, to) = (pos2(x(single.now), y), pos2(x(proposal.value), y));
    painter.line_segment([from, to], Stroke::new(2.5, TEXT.get()));
    painter.circle(from, 6.0, CARD.get(), Stroke::new(2.5, TEXT.get()));
    painter.circle_filled(to, 7.0, TEXT.get());
}

/// The verdict, with a sign that distinguishes it without colour. A click shows what explains it.
fn verdict(
    ui: &mut Ui,
    name: &str,
    label: &str,
    verdict: Verdict,
    explanation: impl FnOnce(&mut Ui),
) {
    let id = Id::new(("win basis", name.to_owned()));
    let open = ui
        .data(|data| data.get_temp::<bool>(id))
        .unwrap_or_default();
    let words = verdict.text();
    let colour = match verdict {
        Verdict::AlreadyReached | Verdict::WithinReach => ACCENT.get(),
        Verdict::WithinMeasured | Verdict::AtEdge | Verdict::NotKnown | Verdict::NoPart => {
            WEAK_TEXT.get()
        }
        Verdict::BeyondMeasured | Verdict::CannotAlone => WARNING.get(),
    };
    let why = text(if open {
        "panel-verdict-close"
    } else {
        "panel-verdict-why"
    });
    let painter = ui.painter();
    let why = painter.layout_no_wrap(why.to_owned(), style::text(15.0), WEAK_TEXT.get());
    let room = ui.available_width() - SIGN - why.size().x - GAP;
    let font = style::bold(16.0);
    let said = fitted(painter, Align2::LEFT_CENTER, words, font, colour, room);
    let size = vec2(ui.available_width(), said.height().max(TOUCH_SIZE));
    let (row, _) = ui.allocate_exact_size(size, Sense::hover());
    let accessible_name = say!("panel-verdict", what = label, verdict = words);
    let response = toggle_area(ui, &format!("verdict:{name}"), row, &accessible_name, open);
    sign(ui, verdict, row.left_center() + vec2(8.0, 0.0), colour);
    said.draw(ui.painter(), row.left_center() + vec2(SIGN, 0.0));
    let at = row.right_center() - vec2(why.size().x, 0.5 * why.size().y);
    ui.painter().galley(at, why, WEAK_TEXT.get());
    if response.clicked() {
        ui.data_mut(|data| data.insert_temp(id, !open));
    } else if open && explained(ui, &format!("verdict:{name}"), row, explanation) {
        ui.data_mut(|data| data.insert_temp(id, false));
    }
}

/// A full disc, a ring, a small one in a ring, a question mark, a stroke, a triangle: within reach,
/// seen, at the edge, not known, no part, beyond.
fn sign(ui: &Ui, verdict: Verdict, at: Pos2, colour: Color32) {
    let painter = ui.painter();
    match verdict {
        Verdict::AlreadyReached | Verdict::WithinReach => {
            painter.circle_filled(at, 7.0, colour);
        }
        Verdict::WithinMeasured => {
            painter.circle_stroke(at, 6.0, Stroke::new(2.5, colour));
        }
        Verdict::AtEdge => {
            painter.circle_stroke(at, 6.5, Stroke::new(1.5, colour));
            painter.circle_filled(at, 2.5, colour);
        }
        Verdict::NotKnown => {
            painter.text(at, Align2::CENTER_CENTER, "?", style::bold(18.0), colour);
        }
        Verdict::NoPart => {
            let across = vec2(6.0, 0.0);
            painter.line_segment([at - across, at + across], Stroke::new(2.5, colour));
        }
        Verdict::BeyondMeasured | Verdict::CannotAlone => {
            let corners = [vec2(0.0, -8.0), vec2(8.0, 6.0), vec2(-8.0, 6.0)];
            painter.add(Shape::convex_polygon(
                corners.map(|corner| at + corner).to_vec(),
                colour,
                Stroke::NONE,
            ));
        }
    }
}
