//! How far a jump is inside what has been seen of people.

use turns_aloft_physics::flight_summary::FlightSummary;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::parameter::{Evidence, Parameter};

/// Whether a number counts on every map, whatever lies along its axes.
pub const fn always_counts(parameter: Parameter) -> bool {
    matches!(
        parameter.row().evidence,
        Evidence::PeakRate | Evidence::Height
    )
}

/// How far inside its marks the nearest of these numbers is in a flown jump, in parts of its
/// admissible range; negative outside, 0 on a mark. A number without marks does not count, nor a
/// mark at the end of what can be set: 1 where nothing does. Where it isn't known what jumpers of this
/// size do, the mark is the one beyond which nobody at all has been seen.
///
/// The take-off rate always counts, as it was flown: its mark is the highest peak rate seen, and a
/// body that closes more gets there without leaving the ice any faster. So does the height: a jump that
/// is beyond what has been seen in either is so on every map.
///
/// `grip_m_s2`, the largest acceleration of what the hands hold, is only asked for where it is needed.
pub fn margin(
    scenario: &Scenario,
    numbers: [Parameter; 2],
    summary: &FlightSummary,
    grip_m_s2: impl Fn() -> f64,
) -> f64 {
    let is_rate = |parameter: &Parameter| parameter.row().evidence == Evidence::PeakRate;
    let always = Parameter::ALL.into_iter().filter(|it| always_counts(*it));
    let always = always.filter(|parameter| !numbers.contains(parameter));
    let margins = numbers.into_iter().chain(always).filter_map(|parameter| {
        let value = if is_rate(&parameter) {
            summary.takeoff_rate_rad_s
        } else {
            parameter.get(scenario)
        };
        let [set_least, set_most] = parameter.row().range;
        let marks = scenario.marks_of(parameter, summary, &grip_m_s2)?;
        let [least, most] = marks
            .seen
            .or(marks.beyond.map(|beyond| [set_least, beyond]))?;
        let inside = [
            (least > set_least).then_some(value - least),
            (most != set_most).then_some(most - value),
        ];
        let nearest = inside.into_iter().flatten().reduce(f64::min)?;
        Some(nearest / (set_most - set_least))
    });
    margins.fold(1.0, f64::min)
}
