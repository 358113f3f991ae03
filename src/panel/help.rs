//! A short help, on a screen of its own: what the page is, its questions, what is estimated and who
//! decides about jumping.

use egui::text::{LayoutJob, TextFormat};
use egui::{Align2, Key, Label, Rect, RichText, ScrollArea, Ui, UiBuilder, pos2, vec2};

use crate::controls::{Button, scrolling};
use crate::style::{self, BACKGROUND, GAP, TEXT, TOUCH_SIZE, WIDE_GAP};
use crate::text::heading;
use turns_aloft_analysis::caution::Caution;
use turns_aloft_describe::Text;
use turns_aloft_session::Question;
use turns_aloft_words::text;

/// Greatest width of a line of text.
const WIDTH: f32 = 640.0;

/// Width of the button that closes it.
const CLOSE: f32 = 110.0;

const LETTERS: f32 = 17.0;

/// Shows it over the whole screen while it is `open`; the button and Escape close it.
pub fn show(ui: &mut Ui, open: &mut bool, screen: Rect) {
    ui.painter().rect_filled(screen, 0.0, BACKGROUND.get());
    let width = WIDTH.min(screen.width() - 2.0 * WIDE_GAP);
    let column = Rect::from_center_size(
        screen.center(),
        vec2(width, screen.height() - 2.0 * WIDE_GAP),
    );
    let (head, rest) = column.split_top_bottom_at_y(column.top() + TOUCH_SIZE + GAP);
    let (title, close) = head.split_left_right_at_x(head.right() - CLOSE);
    let title_line = text("help-title");
    let size = style::fitting(ui.painter(), title_line, 22.0, title.width() - GAP);
    ui.painter().text(
        pos2(title.left(), title.top() + 0.5 * TOUCH_SIZE),
        Align2::LEFT_CENTER,
        title_line,
        style::bold(size),
        TEXT.get(),
    );
    let close = Rect::from_min_size(close.min, vec2(close.width(), TOUCH_SIZE));
    let said = all_in_words();
    let closed = Button::labelled("help close", text("help-close"))
        .about(&said)
        .show(ui, close)
        .clicked();
    if closed || ui.input(|input| input.key_pressed(Key::Escape)) {
        *open = false;
    }
    let mut child = ui.new_child(UiBuilder::new().max_rect(rest).id_salt("help"));
    let area = ScrollArea::vertical().id_salt("help").auto_shrink(false);
    scrolling(&mut child, area, |ui| {
        // Clear of the scroll bar.
        ui.set_max_width(width - WIDE_GAP);
        content(ui);
    });
}

fn content(ui: &mut Ui) {
    for line in [text("help-about"), text("help-use")] {
        paragraph(ui, line);
    }
    heading(ui, text("help-questions"));
    for question in Question::ALL {
        let mut job = LayoutJob::default();
        let mut add = |said: &str, font| {
            job.append(said, 0.0, TextFormat::simple(font, TEXT.get()));
        };
        add(question.label(), style::bold(LETTERS));
        add(": ", style::bold(LETTERS));
        add(about(question), style::text(LETTERS));
        ui.add(Label::new(job).selectable(false));
    }
    for (title, lines) in sections() {
        heading(ui, title);
        for line in lines {
            paragraph(ui, line);
        }
    }
}

/// The sections below the questions.
fn sections() -> [(&'static str, Vec<&'static str>); 2] {
    [
        (
            text("help-estimated"),
            vec![text("help-estimated-about"), Caution::Adults.text()],
        ),
        (
            text("help-who-decides"),
            vec![
                text("panel-simulation"),
                Caution::NoSafeNumber.text(),
                Caution::Ask.text(),
            ],
        ),
    ]
}

fn about(question: Question) -> &'static str {
    match question {
        Question::Jump => text("help-jump"),
        Question::Why => text("help-why"),
        Question::Goal => text("help-goal"),
        Question::Map => text("help-map"),
        Question::Compare => text("help-compare"),
    }
}

fn paragraph(ui: &mut Ui, line: &str) {
    let line = RichText::new(line).font(style::text(LETTERS));
    ui.add(Label::new(line).selectable(false));
}

/// The same, to be read out.
fn all_in_words() -> String {
    let mut all = vec![text("help-about").to_owned(), text("help-use").to_owned()];
    all.extend(Question::ALL.map(|it| format!("{}: {}", it.label(), about(it))));
    for (title, lines) in sections() {
        all.push(format!("{title}: {}", lines.join(" ")));
    }
    all.join(" ")
}
