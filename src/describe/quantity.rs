//! The quantities that a lesson asks for, in words, and texts with their figures put in.

use std::sync::LazyLock;

use crate::Label;
use crate::number::plain;
use crate::turns::{owed_text, turns_in_all, turns_text};
use crate::unit::{DEGREES, INERTIA, JOULES, MOMENTUM, SECONDS, TENTHS_OF_JOULES, TURNS, UnitText};
use turns_aloft_lesson::figure::{Figure, Piece, pieces};
use turns_aloft_lesson::quantity::{Dimension, Quantity};
use turns_aloft_lesson::{Flights, Flown, Step};
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_scenario::units::{Unit, Units};
use turns_aloft_words::{Message, decimal};

/// The names of the messages follow from the quantities' keys.
static LABELS: LazyLock<Vec<Message>> = LazyLock::new(|| {
    let name = |it: Quantity| format!("quantity-{}", it.key().replace('_', "-"));
    Quantity::all().map(|it| Message(name(it).leak())).collect()
});

impl Label for Quantity {
    fn label(self) -> &'static str {
        LABELS[self.place()].text()
    }
}

/// Decimals of a number without a unit.
const RATIO_DECIMALS: usize = 2;

/// The unit in which it is shown and typed; none where it is a number alone.
pub fn unit(quantity: Quantity, units: &Units) -> Option<Unit> {
    Some(match quantity.dimension() {
        Dimension::Turns | Dimension::NeededTurns => TURNS,
        Dimension::Time => SECONDS,
        Dimension::Length => units.of(Kind::Length),
        Dimension::Rate => units.of(Kind::Rate),
        Dimension::Inertia => INERTIA,
        Dimension::AngularMomentum => MOMENTUM,
        Dimension::Energy if quantity.is_of_jump() => JOULES,
        Dimension::Energy => TENTHS_OF_JOULES,
        Dimension::Angle => Unit {
            si: std::f64::consts::PI / 180.0,
            ..DEGREES
        },
        Dimension::Ratio | Dimension::Count => return None,
    })
}

/// A value with its unit.
pub fn value_text(quantity: Quantity, si: f64, units: &Units) -> String {
    match (unit(quantity, units), quantity.dimension()) {
        (Some(unit), Dimension::NeededTurns) => format!("{} {}", owed_text(si), unit.sign()),
        // Set by somebody, and shown as it was.
        (Some(unit), Dimension::Length) => unit.set_text(si),
        (Some(unit), _) => unit.text(si),
        (None, Dimension::Count) => plain(si),
        (None, _) => decimal(si, RATIO_DECIMALS),
    }
}

/// A figure with its unit; none where it has not been flown.
pub fn figure_text(figure: &Figure, flights: &Flights, units: &Units) -> Option<String> {
    let flown = flights.one(figure.variant)?;
    let si = flights.value(figure)?;
    // Turns in all are shown so wherever they stand.
    let Flown::Jump { jump, .. } = flown else {
        return Some(value_text(figure.quantity, si, units));
    };
    if si != jump.turns || figure.quantity.dimension() != Dimension::Turns {
        return Some(value_text(figure.quantity, si, units));
    }
    Some(format!(
        "{} {}",
        turns_text(turns_in_all(jump)),
        TURNS.sign()
    ))
}

/// A text of a step with its figures put in; a sign that there is none yet where nothing has been flown.
pub fn filled(text: &str, step: &Step, flights: &Flights, units: &Units) -> String {
    // That its figures are in order has been found when it was read.
    let pieces = pieces(text, &step.variants).unwrap_or_default();
    let said = pieces.iter().map(|piece| match piece {
        Piece::Plain(plain) => (*plain).to_owned(),
        Piece::Figure(figure) => {
            figure_text(figure, flights, units).unwrap_or_else(|| "…".to_owned())
        }
    });
    said.collect()
}
