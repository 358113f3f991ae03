//! The rest of the jump, folded away until asked for.

use std::borrow::Cow;

use bevy_egui::egui::{RichText, Ui};

use super::choice;
use super::look::{self, APART, NEAR, SLATE};
use super::slider::{self, Typing};
use crate::physics::landing::Ground;
use crate::physics::plan::Turning;
use crate::physics::segments::SegmentTable;
use crate::scenario::HandsKeep;
use crate::scenario::jump::{JUMP_TURNS, JumpName};
use crate::scenario::keys::{KEYS, Key};
use crate::session::Session;

/// Which jump it is: name and turns.
pub fn named_jump(ui: &mut Ui, session: &mut Session) {
    let names = JumpName::ALL.map(|name| (name, name.label()));
    if let Some(name) = choice::of(ui, "jump", session.scenario().jump, &names) {
        session.change(|scenario| scenario.jump = name);
    }
    if session.scenario().jump == JumpName::Free {
        return;
    }
    heading(ui, "Turns in the name (an Axel owes half a turn more)");
    let turns: Vec<(u8, String)> = (JUMP_TURNS[0]..=JUMP_TURNS[1])
        .map(|turns| (turns, turns.to_string()))
        .collect();
    let turns: Vec<(u8, &str)> = turns
        .iter()
        .map(|(n, label)| (*n, label.as_str()))
        .collect();
    if let Some(turns) = choice::of(ui, "turns", session.scenario().jump_turns, &turns) {
        session.change(|scenario| scenario.jump_turns = turns);
    }
}

/// What the jumper keeps when the hands get heavier; always in sight beside the hand mass.
pub fn hands_keep(ui: &mut Ui, session: &mut Session) {
    ui.label(
        RichText::new("With heavier hands the jumper keeps the")
            .size(15.0)
            .color(SLATE),
    );
    let options = [
        (HandsKeep::Rate, "rate"),
        (HandsKeep::AngularMomentum, "momentum"),
        (HandsKeep::Energy, "energy"),
    ];
    if let Some(keep) = choice::of(ui, "hands keep", session.scenario().hands_keep, &options) {
        session.change(|scenario| scenario.hands_keep = keep);
    }
}

/// The jumper's body and footing.
pub fn jumper(
    ui: &mut Ui,
    session: &mut Session,
    typing: &mut Typing,
    about: &mut Option<Cow<'static, str>>,
) {
    let tables = [
        (SegmentTable::Female, "Female"),
        (SegmentTable::Male, "Male"),
    ];
    heading(ui, "Mass table of adults; an estimate for a child");
    if let Some(table) = choice::of(ui, "table", session.scenario().table, &tables) {
        session.change(|scenario| scenario.table = table);
    }
    numbers(ui, session, typing, about, &["stature_m", "body_mass_kg"]);
    heading(ui, "Jumps on");
    let grounds = [
        (Ground::Ice, "Ice"),
        (Ground::Floor, "Floor"),
        (Ground::Trampoline, "Trampoline"),
    ];
    if let Some(ground) = choice::of(ui, "ground", session.scenario().ground, &grounds) {
        session.change(|scenario| scenario.ground = ground);
    }
    numbers(ui, session, typing, about, &["boot_mass_kg"]);
    heading(ui, "Turns, seen from above");
    let ways = [
        (Turning::Anticlockwise, "Anticlockwise"),
        (Turning::Clockwise, "Clockwise"),
    ];
    if let Some(turning) = choice::of(ui, "turning", session.scenario().turning, &ways) {
        session.change(|scenario| scenario.turning = turning);
    }
}

/// How the ice is left, and when arms and legs move.
pub fn motion(
    ui: &mut Ui,
    session: &mut Session,
    typing: &mut Typing,
    about: &mut Option<Cow<'static, str>>,
) {
    heading(ui, "Leaving the ice");
    let takeoff = ["takeoff_openness", "lean_rad", "pre_rotation_turns"];
    numbers(ui, session, typing, about, &takeoff);
    heading(ui, "Closing");
    let closing = [
        "close_delay_s",
        "close_time_s",
        "arm_lag_s",
        "arm_asymmetry",
    ];
    numbers(ui, session, typing, about, &closing);
    heading(ui, "Opening");
    numbers(ui, session, typing, about, &["open_lead_s", "open_time_s"]);
}

fn numbers(
    ui: &mut Ui,
    session: &mut Session,
    typing: &mut Typing,
    about: &mut Option<Cow<'static, str>>,
    names: &[&str],
) {
    let keys = KEYS.iter().filter(|key: &&Key| names.contains(&key.key));
    for key in keys {
        slider::number(ui, session, typing, about, key, None);
    }
}

fn heading(ui: &mut Ui, text: &str) {
    ui.add_space(NEAR);
    ui.label(RichText::new(text).font(look::text(15.0)).color(SLATE));
    ui.add_space(0.25 * APART);
}
