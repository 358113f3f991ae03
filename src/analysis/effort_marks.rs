//! Where on a number the joints of a jump meet their strength, all else as it is.

use super::search::roughly;
use crate::scenario::Scenario;
use crate::scenario::fly::Jump;
use crate::scenario::keys::{self, Key};
use crate::scenario::marks::Marks;
use crate::scenario::strength::{self, HELD};
use crate::words::Message;

/// The numbers that are marked so.
pub const MARKED: [&str; 4] = ["arm_tuck", "leg_tuck", "close_time_s", "open_time_s"];

/// The marks of one of them, by its place in [`MARKED`]; some twelve flights.
pub fn marks(place: usize, scenario: &Scenario, jump: &Jump) -> Option<Marks> {
    let key = keys::key(MARKED[place])?;
    let own = scenario.marks(key, jump)?;
    let at = |value: f64| {
        let mut then = scenario.clone();
        key.hold(&mut then, value);
        let efforts = then.fly_after(Some(jump));
        let efforts = efforts.efforts();
        let demands = match key.key {
            "open_time_s" => &efforts.opening,
            _ => &efforts.closing,
        };
        strength::share(then.jumper(), then.body_mass_kg, demands)
    };
    // Less time asks for more, and so does tighter.
    let (easy, hard) = match key.key {
        "arm_tuck" | "leg_tuck" => (key.least, key.most),
        _ => (key.most, key.least),
    };
    let ends = [(easy, at(easy)), (hard, at(hard))];
    let measured = edge(ends, 1.0, at);
    let beyond = edge(ends, HELD, at).filter(|end| *end != hard);
    let known = strength::is_known(scenario.jumper());
    let seen = measured.filter(|_| known).map(|end| ordered(easy, end));
    Some(Marks {
        seen,
        beyond: beyond.filter(|_| hard == key.most),
        beyond_below: beyond.filter(|_| hard == key.least),
        source: if known {
            own.source
        } else {
            Message("marks-effort-not-known")
        },
    })
}

/// A number before its marks have been worked out.
pub fn unmarked(key: &Key, scenario: &Scenario, jump: &Jump) -> Option<Marks> {
    let own = scenario.marks(key, jump)?;
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
