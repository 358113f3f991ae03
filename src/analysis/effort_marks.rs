//! Where on a number the joints of a jump meet their strength, all else as it is.

use crate::search::roughly;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::marks::Marks;
use turns_aloft_scenario::parameter::{Evidence, Hardest, Parameter};
use turns_aloft_scenario::source::Source;
use turns_aloft_scenario::strength::{self, HELD};

/// Whether a number is marked so.
pub const fn is_marked(parameter: Parameter) -> bool {
    matches!(parameter.row().evidence, Evidence::Strength { .. })
}

/// The marks of a number that [is](is_marked); some twelve flights.
pub fn marks(parameter: Parameter, scenario: &Scenario, jump: &Jump) -> Option<Marks> {
    let Evidence::Strength {
        movement, hardest, ..
    } = parameter.row().evidence
    else {
        return None;
    };
    let own = scenario.marks(parameter, jump)?;
    let at = |value: f64| {
        let mut then = scenario.clone();
        parameter.hold(&mut then, value);
        let flown = then.fly_after(Some(jump));
        let demands = movement.demands(flown.efforts());
        strength::share(then.jumper(), then.body_mass_kg, demands)
    };
    let [least, most] = parameter.row().range;
    let (easy, hard) = match hardest {
        Hardest::Most => (least, most),
        Hardest::Least => (most, least),
    };
    let ends = [(easy, at(easy)), (hard, at(hard))];
    let measured = edge(ends, 1.0, at);
    let beyond = edge(ends, HELD, at).filter(|end| *end != hard);
    let known = strength::is_known(scenario.jumper());
    let seen = measured.filter(|_| known).map(|end| ordered(easy, end));
    Some(Marks {
        seen,
        beyond: beyond.filter(|_| hardest == Hardest::Most),
        beyond_below: beyond.filter(|_| hardest == Hardest::Least),
        source: if known {
            own.source
        } else {
            Source::MarksEffortNotKnown
        },
    })
}

/// A number before its marks have been worked out.
pub fn unmarked(parameter: Parameter, scenario: &Scenario, jump: &Jump) -> Option<Marks> {
    let own = scenario.marks(parameter, jump)?;
    Some(Marks { seen: None, ..own })
}

/// Where so many times the strength is asked, from the easy end on: the hard end where it never is, the
/// easy one where it always is.
fn edge([easy, hard]: [(f64, f64); 2], times: f64, asked: impl Fn(f64) -> f64) -> Option<f64> {
    // Torque goes about with the inverse square of a time: its logarithm is straighter.
    let over = |asked: f64| libm::log(asked.max(LEAST_SHARE) / times);
    if hard.1 <= times {
        return Some(hard.0);
    }
    if easy.1 > times {
        return Some(easy.0);
    }
    let ends = [easy, hard].map(|(value, asked)| (value, over(asked)));
    roughly(ends[0], ends[1], |value| over(asked(value)))
}

/// A body that moves nothing is asked for hardly anything.
const LEAST_SHARE: f64 = 1e-6;

fn ordered(one: f64, other: f64) -> [f64; 2] {
    [one.min(other), one.max(other)]
}
