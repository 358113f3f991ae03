//! Who turns on what: each change begins a new run.

use egui::Ui;

use crate::controls::{NumberEdit, choice};
use crate::style::GAP;
use crate::text::small;
use crate::turntable::typed;
use turns_aloft_physics::segments::SegmentTable;
use turns_aloft_session::Session;
use turns_aloft_session::turntable::{TypedNumber, stand};
use turns_aloft_turntable::Stand;
use turns_aloft_turntable::setup::Number;
use turns_aloft_words::text;

/// In the order in which they are asked for: who, then what it turns on.
const NUMBERS: [Number; 8] = [
    Number::Stature,
    Number::BodyMass,
    Number::HandMass,
    Number::BootMass,
    Number::HipsForward,
    Number::BearingInertia,
    Number::FrictionTorque,
    Number::FrictionViscous,
];

pub fn show(ui: &mut Ui, session: &mut Session, numbers: &mut NumberEdit) {
    let Some(on_turntable) = session.turntable() else {
        return;
    };
    let setup = *on_turntable.setup();
    let without = on_turntable.is_without_friction();
    small(ui, text("turntable-new-run"));
    let stands = Stand::ALL.map(|it| (it, it.key(), stand(it)));
    if let Some(chosen) = choice(ui, "stand", setup.stand, &stands) {
        session.set_stand(chosen);
    }
    ui.add_space(GAP);
    let tables = [
        (SegmentTable::Female, "female", text("panel-table-female")),
        (SegmentTable::Male, "male", text("panel-table-male")),
    ];
    if let Some(chosen) = choice(ui, "masses", setup.table, &tables) {
        session.set_turntable_table(chosen);
    }
    ui.add_space(GAP);
    let frictions = [
        (false, "with", text("turntable-with-friction")),
        (true, "without", text("turntable-without-friction")),
    ];
    if let Some(chosen) = choice(ui, "friction", without, &frictions) {
        session.set_without_friction(chosen);
    }
    let has_boots = setup.stand == Stand::Ice;
    for number in NUMBERS {
        if number != Number::BootMass || has_boots {
            let name = format!("value:turntable {}", number.key());
            typed::show(ui, session, numbers, TypedNumber::Of(number), &name);
        }
    }
}
