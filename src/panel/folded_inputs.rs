//! The inputs in collapsed sections: the named jump, the jumper, the motion.

use std::borrow::Cow;

use egui::{RichText, Ui};

use crate::controls::{NumberEdit, TextBox, TextEdit, choice};
use crate::number;
use crate::style::{self, GAP, WEAK_TEXT, WIDE_GAP};
use turns_aloft_describe::Label;
use turns_aloft_physics::plan::Turning;
use turns_aloft_physics::segments::SegmentTable;
use turns_aloft_scenario::HandsKeep;
use turns_aloft_scenario::ground::Ground;
use turns_aloft_scenario::jump::{JUMP_TURNS, JumpName};
use turns_aloft_scenario::parameter::{Parameter, Section};
use turns_aloft_session::Session;
use turns_aloft_words::text;

/// What it is called, which jump it is, and what is noted of it.
pub fn named_jump(ui: &mut Ui, session: &mut Session, texts: &mut TextEdit) {
    name_box(ui, session, texts);
    let names = JumpName::ALL.map(|name| (name, name.key(), name.label()));
    if let Some(name) = choice(ui, "jump", session.scenario().jump, &names) {
        session.change(|scenario| scenario.jump = name);
    }
    if session.scenario().jump != JumpName::Free {
        heading(ui, text("panel-turns-in-name"));
        turns_choice(ui, session);
    }
    heading(ui, text("panel-note"));
    let note = TextBox {
        name: "jump note",
        accessible_name: text("panel-note"),
        text: session.own_note(),
        placeholder: text("panel-note-own"),
    };
    if let Some(note) = note.show(ui, texts) {
        session.set_note(&note);
    }
}

/// What the jump is called; a click on it gives it another name.
pub fn name_box(ui: &mut Ui, session: &mut Session, texts: &mut TextEdit) {
    let name = session.shown_name().into_owned();
    let unnamed = session.scenario().name.is_empty();
    let name = TextBox {
        name: "jump name",
        accessible_name: text("panel-name"),
        text: if unnamed { "" } else { &name },
        placeholder: text("panel-name-own"),
    };
    if let Some(name) = name.show(ui, texts) {
        session.rename(&name);
    }
}

/// The turns in the jump's name.
pub fn turns_choice(ui: &mut Ui, session: &mut Session) {
    let turns: Vec<(u8, String)> = (JUMP_TURNS[0]..=JUMP_TURNS[1])
        .map(|turns| (turns, turns.to_string()))
        .collect();
    let turns: Vec<(u8, &str, &str)> = turns
        .iter()
        .map(|(n, label)| (*n, label.as_str(), label.as_str()))
        .collect();
    if let Some(turns) = choice(ui, "turns", session.scenario().jump_turns, &turns) {
        session.change(|scenario| scenario.jump_turns = turns);
    }
}

/// Whose body the mass table describes.
pub fn table_choice(ui: &mut Ui, session: &mut Session) {
    let tables = [
        (SegmentTable::Female, "Female", text("panel-table-female")),
        (SegmentTable::Male, "Male", text("panel-table-male")),
    ];
    if let Some(table) = choice(ui, "table", session.scenario().table, &tables) {
        session.change(|scenario| scenario.table = table);
    }
}

/// What the jumper keeps constant when the hands get heavier; shown with the slider of the hand
/// mass.
pub fn hands_keep(ui: &mut Ui, session: &mut Session) {
    ui.label(
        RichText::new(text("panel-hands-keep"))
            .size(15.0)
            .color(WEAK_TEXT.get()),
    );
    let options = [
        (HandsKeep::Rate, "rate", text("panel-hands-keep-rate")),
        (
            HandsKeep::AngularMomentum,
            "momentum",
            text("panel-hands-keep-momentum"),
        ),
        (HandsKeep::Energy, "energy", text("panel-hands-keep-energy")),
    ];
    if let Some(keep) = choice(ui, "hands keep", session.scenario().hands_keep, &options) {
        session.change(|scenario| scenario.hands_keep = keep);
    }
}

/// The jumper's body, ground, footwear and direction of turning.
pub fn jumper(
    ui: &mut Ui,
    session: &mut Session,
    edit: &mut NumberEdit,
    about: &mut Option<Cow<'static, str>>,
) {
    heading(ui, text("panel-table"));
    table_choice(ui, session);
    numbers(ui, session, edit, about, Section::Body);
    heading(ui, text("panel-ground"));
    let grounds = [
        (Ground::Ice, "Ice", text("panel-ground-ice")),
        (Ground::Floor, "Floor", text("panel-ground-floor")),
        (
            Ground::Trampoline,
            "Trampoline",
            text("panel-ground-trampoline"),
        ),
    ];
    if let Some(ground) = choice(ui, "ground", session.scenario().ground, &grounds) {
        session.change(|scenario| scenario.ground = ground);
    }
    numbers(ui, session, edit, about, Section::Footing);
    heading(ui, text("panel-turning"));
    let directions = [
        (
            Turning::Anticlockwise,
            "Anticlockwise",
            text("panel-turning-anticlockwise"),
        ),
        (
            Turning::Clockwise,
            "Clockwise",
            text("panel-turning-clockwise"),
        ),
    ];
    if let Some(turning) = choice(ui, "turning", session.scenario().turning, &directions) {
        session.change(|scenario| scenario.turning = turning);
    }
}

/// Take-off, and the timing of closing and opening.
pub fn motion(
    ui: &mut Ui,
    session: &mut Session,
    edit: &mut NumberEdit,
    about: &mut Option<Cow<'static, str>>,
) {
    let sections = [
        (Section::TakeOff, "panel-at-take-off"),
        (Section::Closing, "panel-closing"),
        (Section::Opening, "panel-opening"),
    ];
    for (section, title) in sections {
        let mut all = Parameter::of_section(section);
        if all.any(|parameter| session.scenario().has_part(parameter)) {
            heading(ui, text(title));
            numbers(ui, session, edit, about, section);
        }
    }
}

fn numbers(
    ui: &mut Ui,
    session: &mut Session,
    edit: &mut NumberEdit,
    about: &mut Option<Cow<'static, str>>,
    section: Section,
) {
    let all: Vec<Parameter> = Parameter::of_section(section)
        .filter(|parameter| session.scenario().has_part(*parameter))
        .collect();
    for parameter in all {
        let marks = session.marks(parameter);
        number::show(ui, session, edit, about, parameter, marks.as_ref());
    }
}

fn heading(ui: &mut Ui, title: &str) {
    ui.add_space(GAP);
    ui.label(
        RichText::new(title)
            .font(style::text(15.0))
            .color(WEAK_TEXT.get()),
    );
    ui.add_space(0.25 * WIDE_GAP);
}
