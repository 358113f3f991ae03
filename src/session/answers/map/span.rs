//! How far a map goes along a lever: where jumps are, and as far as people could ask about.

use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::parameter::{MapSpan, Parameter};

/// From there to there, in the number's own unit; the same wherever on the map the jump is. None of a
/// number that the page offers no map of.
pub(crate) fn span(parameter: Parameter, scenario: &Scenario, jump: &Jump) -> Option<[f64; 2]> {
    let [least, most] = parameter.row().range;
    match parameter.row().map {
        MapSpan::None => None,
        MapSpan::Range => Some([least, most]),
        MapSpan::Between(span) => Some(span),
        MapSpan::ToBeyond => {
            let beyond = scenario.marks(parameter, jump).and_then(|it| it.beyond);
            Some([least, beyond.unwrap_or(most)])
        }
    }
}
