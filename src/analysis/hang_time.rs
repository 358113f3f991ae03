//! Hang time in place of jump height: the height at which a jump is in the air for so long.
//!
//! A scenario has a height, and how long its jump hangs is flown: it ends as the first foot meets the
//! ice, and the legs are bent otherwise then than at take-off, so g t²/8 is near the height only. So the height of a hang time is found as a root, a
//! flight for each guess, with the body, the plan and the take-off rate of the scenario.

use roots::{SimpleConvergency, find_root_brent};

use crate::uncertainty::{RefusedHalfWidth, UncertainInput, Uncertainty};
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::parameter::Parameter;

/// Its name where it is set in place of the height, and among the readouts.
pub const KEY: &str = "hang_time_s";

/// The number of the scenario that a hang time sets.
pub const OF: Parameter = Parameter::JumpHeight;

/// What a half-width of the hang time is one of.
pub const UNCERTAIN: UncertainInput = UncertainInput::Number(OF);

/// A flight's touch-down is found to this, s.
const TOLERANCE: f64 = 1e-11;
const TRIES: usize = 60;

/// Flown with the height that was found, the hang time is met to within this, s.
const MET_S: f64 = 1e-6;

/// The first guess at a half-width of the height, m, and how often it is mended.
const FIRST_GUESS_M: f64 = 0.01;
const MENDED: usize = 6;

/// Why a hang time was refused.
#[derive(Debug, Clone, PartialEq)]
pub enum RefusedHangTime {
    NotANumber {
        written: String,
    },
    /// The heights that can be set do not reach it.
    OutOfRange {
        value_s: f64,
        range_s: [f64; 2],
    },
    /// No height gives it, since a foot grazes the ice on the way; the nearest that was flown.
    NotFlown {
        value_s: f64,
        nearest_s: f64,
    },
}

/// The hang time of a scenario at another height, flown from its jump's tables.
fn hang_s(scenario: &Scenario, jump: &Jump, height_m: f64) -> f64 {
    let mut other = scenario.clone();
    OF.hold(&mut other, height_m);
    other.fly_after(Some(jump)).readout.hang_time_s
}

/// The shortest and the longest hang time: at the least and at the most height that can be set.
pub fn range_s(scenario: &Scenario, jump: &Jump) -> [f64; 2] {
    OF.row().range.map(|end_m| hang_s(scenario, jump, end_m))
}

/// The height at which the scenario, flown as `jump`, hangs for so long.
pub fn height_m(
    scenario: &Scenario,
    jump: &Jump,
    hang_time_s: f64,
) -> Result<f64, RefusedHangTime> {
    let range_s = range_s(scenario, jump);
    if !(range_s[0]..=range_s[1]).contains(&hang_time_s) {
        return Err(RefusedHangTime::OutOfRange {
            value_s: hang_time_s,
            range_s,
        });
    }
    let [least_m, most_m] = OF.row().range;
    let mut nearest = (least_m, f64::INFINITY);
    let off_s = |height_m: f64| {
        let off_s = hang_s(scenario, jump, height_m) - hang_time_s;
        if off_s.abs() < nearest.1.abs() {
            nearest = (height_m, off_s);
        }
        off_s
    };
    let mut convergency = SimpleConvergency {
        eps: TOLERANCE,
        max_iter: TRIES,
    };
    // What it returns need not be the best of the points it asked for.
    let _ = find_root_brent(least_m, most_m, off_s, &mut convergency);
    let (height_m, off_s) = nearest;
    if off_s.abs() > MET_S {
        return Err(RefusedHangTime::NotFlown {
            value_s: hang_time_s,
            nearest_s: hang_time_s + off_s,
        });
    }
    Ok(height_m)
}

/// Sets the height of a scenario from a hang time as it is written on the command line.
pub fn set(scenario: &mut Scenario, written: &str) -> Result<(), RefusedHangTime> {
    let number: Option<f64> = written.parse().ok();
    let hang_time_s = number.filter(|value| value.is_finite());
    let hang_time_s = hang_time_s.ok_or_else(|| RefusedHangTime::NotANumber {
        written: written.to_owned(),
    })?;
    let height_m = height_m(scenario, &scenario.fly(), hang_time_s)?;
    OF.hold(scenario, height_m);
    Ok(())
}

/// The half-width of the hang time that a half-width of the height makes: from the hang times at both its
/// ends, in proportion where an end cannot be reached.
pub fn half_width_s(scenario: &Scenario, jump: &Jump, half_width_m: f64) -> f64 {
    if half_width_m == 0.0 {
        return 0.0;
    }
    let now_m = OF.get(scenario);
    let ends_m =
        [-half_width_m, half_width_m].map(|off_m| (now_m + off_m).clamp(OF.least(), OF.most()));
    let [less_s, more_s] = ends_m.map(|end_m| hang_s(scenario, jump, end_m));
    (more_s - less_s) / (ends_m[1] - ends_m[0]) * half_width_m
}

/// The half-width of the height that makes a half-width of the hang time, no more than it may be.
pub fn height_half_width_m(scenario: &Scenario, jump: &Jump, half_width_s: f64) -> f64 {
    if half_width_s <= 0.0 {
        return 0.0;
    }
    // Nearly in proportion: each guess is mended by what it is off by.
    let mut guess_m = FIRST_GUESS_M;
    for _ in 0..MENDED {
        let made_s = self::half_width_s(scenario, jump, guess_m);
        guess_m = (guess_m * half_width_s / made_s).min(UNCERTAIN.most());
    }
    guess_m
}

/// Sets the half-width of the height from one of the hang time, as on the command line.
pub fn set_half_width(
    half_widths: &mut Uncertainty,
    scenario: &Scenario,
    jump: &Jump,
    written: &str,
) -> Result<(), RefusedHalfWidth> {
    let most_s = half_width_s(scenario, jump, UNCERTAIN.most());
    let number: Option<f64> = written.parse().ok();
    let value_s = number.filter(|value| (0.0..=most_s).contains(value));
    let value_s = value_s.ok_or_else(|| RefusedHalfWidth::HangTime {
        written: written.to_owned(),
        most_s,
    })?;
    half_widths.hold(UNCERTAIN, height_half_width_m(scenario, jump, value_s));
    Ok(())
}
