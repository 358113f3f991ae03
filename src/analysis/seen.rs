//! How far a jump is inside what has been seen of people.

use super::limits::RATE;
use crate::physics::flight_summary::FlightSummary;
use crate::scenario::Scenario;
use crate::scenario::keys::{self, Key};

/// How far inside its marks the nearest of these numbers is in a flown jump, in parts of its
/// admissible range; negative outside, 0 on a mark. A number without marks does not count, nor a
/// mark at the end of what can be set: 1 where nothing does. Where it isn't known what jumpers of this
/// size do, the mark is the one beyond which nobody at all has been seen.
///
/// The take-off rate always counts, as it was flown: its mark is the highest peak rate seen, and a
/// body that closes more gets there without leaving the ice any faster.
///
/// `grip_m_s2`, the largest acceleration of what the hands hold, is only asked for where it is needed.
pub fn margin(
    scenario: &Scenario,
    numbers: [&Key; 2],
    summary: &FlightSummary,
    grip_m_s2: impl Fn() -> f64,
) -> f64 {
    let rate = keys::key(RATE).filter(|rate| !numbers.contains(rate));
    let margins = numbers.into_iter().chain(rate).filter_map(|key| {
        let value = if key.key == RATE {
            summary.takeoff_rate_rad_s
        } else {
            (key.get)(scenario)
        };
        let marks = scenario.marks_of(key, summary, &grip_m_s2)?;
        let [least, most] = marks
            .seen
            .or(marks.beyond.map(|beyond| [key.least, beyond]))?;
        let inside = [
            (least > key.least).then_some(value - least),
            (most != key.most).then_some(most - value),
        ];
        let nearest = inside.into_iter().flatten().reduce(f64::min)?;
        Some(nearest / (key.most - key.least))
    });
    margins.fold(1.0, f64::min)
}
