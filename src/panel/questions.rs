//! The buttons of the questions, side by side; the answer to the chosen one is below them.

use egui::{Rect, Sense, Ui, pos2, vec2};

use crate::controls::Button;
use crate::style::{self, GAP, TEXT, TOUCH_SIZE};
use turns_aloft_session::{Question, Session};

pub fn show(ui: &mut Ui, session: &mut Session) {
    let (row, _) = ui.allocate_exact_size(vec2(ui.available_width(), TOUCH_SIZE), Sense::hover());
    let widths = Question::ALL.map(|question| {
        ui.painter()
            .layout_no_wrap(question.label().to_owned(), style::text(16.0), TEXT.get())
            .size()
            .x
    });
    let count = widths.len() as f32;
    // The remaining width is divided evenly.
    let free = row.width() - widths.iter().sum::<f32>() - GAP * (count - 1.0);
    let mut left = row.left();
    for (question, width) in Question::ALL.into_iter().zip(widths) {
        let own = Rect::from_min_size(
            pos2(left, row.top()),
            vec2(width + free / count, TOUCH_SIZE),
        );
        left = own.right() + GAP;
        let chosen = session.question() == question;
        let name = format!("question:{}", question.name());
        let button = Button::labelled(&name, question.label()).chosen(chosen);
        if button.show(ui, own).clicked() && !chosen {
            session.ask(question);
        }
    }
}
