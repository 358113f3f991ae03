//! What the range of the turns comes from.

use crate::describe::reading::{Group, Reading, line};
use crate::session::Session;
use turns_aloft_analysis::uncertainty::UncertainInput;
use turns_aloft_describe::input::change_label;
use turns_aloft_describe::range::change_text;
use turns_aloft_describe::unit::UnitText;
use turns_aloft_describe::{About, Inline, Label};
use turns_aloft_fit::quantity::{Quantity, Range};
use turns_aloft_scenario::parameter::{Kind, Parameter};
use turns_aloft_scenario::units::Unit;
use turns_aloft_words::{self as words, say};

impl Session {
    /// A half-width in the user's units, one decimal finer than the number itself.
    pub fn half_width_text(&self, input: UncertainInput) -> String {
        let unit = self.units().of(input.kind());
        let finer = Unit {
            decimals: match input.kind() {
                Kind::Share => unit.decimals,
                _ => unit.decimals + 1,
            },
            ..unit
        };
        finer.text(self.half_widths().get(input))
    }

    /// The same of one of the hang time, s.
    pub fn hang_time_half_width_text(&self, half_width_s: f64) -> String {
        let unit = self.units().of(Kind::Time);
        let finer = Unit {
            decimals: unit.decimals + 1,
            ..unit
        };
        finer.text(half_width_s)
    }
}

/// What the marks leave of each input, where the jump was found from marks: what it is called, and from where
/// to where 95 % of what is possible lies, in the user's units.
pub fn fitted_inputs(session: &Session) -> Option<Vec<(Parameter, String)>> {
    let fit = session.fit_behind_range()?;
    let each = Quantity::inputs().into_iter().filter_map(|quantity| {
        let Quantity::Input(parameter) = quantity else {
            return None;
        };
        let Range { low, high, .. } = fit.range(quantity);
        let unit = session.units().of(parameter.kind());
        Some((
            parameter,
            say!("from-to", from = unit.number(low), to = unit.text(high)),
        ))
    });
    Some(each.collect())
}

/// What the inputs alone make of the turns; of a jump that was found from marks, what those leave of each.
pub(crate) fn lines(session: &Session) -> Vec<Reading> {
    let Some(range) = session.range() else {
        return Vec::new();
    };
    if let Some(inputs) = fitted_inputs(session) {
        let line_of = |(parameter, text): (Parameter, String)| {
            line(
                Group::UncertaintyInputs,
                format!("fitted:{}", parameter.key()),
                parameter.label(),
                text,
                words::text("fitted-input-about"),
            )
        };
        return inputs.into_iter().map(line_of).collect();
    }
    UncertainInput::ALL
        .into_iter()
        .zip(range.changes)
        .map(|(input, change)| {
            let about = say!(
                "range-by-about",
                what = input.inline(),
                half_width = session.half_width_text(input),
                source = input.about()
            );
            line(
                Group::UncertaintyInputs,
                input.change_key(),
                change_label(input),
                change_text(change),
                about,
            )
        })
        .collect()
}
