//! Measuring a real attempt: what is to be marked next, what has been marked, and what follows from it.

mod answer;
mod ask;
mod marks;
mod sensor;
mod stop_watch;
pub mod transport;

use egui::{Align2, Rect, Ui};
use turns_aloft_session::Saved;

use crate::command::PageCommand;
use crate::controls::{Button, NumberEdit};
use crate::style::{self, GAP, WEAK_TEXT};
use crate::text::{heading, small};
use turns_aloft_attempt::Measured;
use turns_aloft_describe::Text;
use turns_aloft_describe::measuring_caution::MeasuringCaution;
use turns_aloft_session::Session;
use turns_aloft_words::text;

/// Shows what is measured and what follows; what needs the browser is returned.
pub fn show(ui: &mut Ui, session: &mut Session, numbers: &mut NumberEdit) -> Option<PageCommand> {
    let mut command = None;
    let measuring = session.measuring()?;
    match measuring.measured() {
        Measured::StopWatch(_) => {
            stop_watch::show(ui, session, numbers);
            ui.add_space(GAP);
            answer::show(ui, session);
        }
        Measured::Film(_) if measuring.film().is_none() => command = ask::for_film(ui, session),
        Measured::Film(_) => {
            ask::show(ui, session);
            ui.add_space(GAP);
            answer::show(ui, session);
            marks::show(ui, session);
        }
        Measured::Sensor(_) => {
            // It needs no further touch.
            answer::show(ui, session);
            sensor::show(ui, session);
        }
    }
    command
}

/// Below it: the attempt is saved or left, and what to think of before filming. What needs the browser is
/// returned.
pub fn end(ui: &mut Ui, session: &mut Session) -> Option<PageCommand> {
    let mut command = None;
    ui.add_space(GAP);
    if session.attempt_at_hand().is_some() {
        let save = Button::labelled("save attempt", text("measure-save"));
        if save.show_in_row(ui).clicked() {
            command = Some(PageCommand::Save(Saved::Attempt));
        }
        ui.add_space(GAP);
    }
    let leave = Button::labelled("leave measuring", text("measure-leave"));
    if leave.show_in_row(ui).clicked() {
        session.stop_measuring();
    }
    heading(ui, text("measure-cautions"));
    for caution in MeasuringCaution::ALL {
        small(ui, caution.text());
    }
    command
}

/// In place of the film, until one is open.
pub fn no_film(ui: &Ui, rect: Rect) {
    let galley = ui.painter().layout(
        text("measure-no-film").to_owned(),
        style::text(17.0),
        WEAK_TEXT.get(),
        0.8 * rect.width(),
    );
    let at = Align2::CENTER_CENTER
        .align_size_within_rect(galley.size(), rect)
        .min;
    ui.painter().galley(at, galley, WEAK_TEXT.get());
}
