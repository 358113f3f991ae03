//! When the flight ends.
//!
//! The jumper opens in time for a landing: the opening begins a given time before the planned end,
//! and at the planned end a foot is on the ice. That end is found as a root, a flight for each
//! guess. If a foot meets the ice earlier (legs that stretch downwards, a body that cones), the
//! flight ends there, as the body then is.

use roots::{Convergency, SimpleConvergency, find_root_brent, find_root_secant};

use crate::dynamics::attitude::Attitude;
use crate::flight::constants::{FlightConstants, TimedProperties};
use crate::flight::step_record::StepRecord;
use crate::flight::table::PlanTable;
use crate::flight::tabulated::StepObserver;

/// Touch-down is found to this, in seconds as in metres.
const TOLERANCE: f64 = 1e-11;

/// Guesses by the secant before the slower, certain way.
const QUICK_TRIES: usize = 8;

/// The secant's error is the product of the last two, so a step as short as this, s, ends as close
/// as the tolerance: the flight there need not be looked at again.
const SHORT_STEP_S: f64 = 1e-7;
const TRIES: usize = 60;

/// How far from the first guess the secant may lead, s.
const NEAR_S: f64 = 0.02;

/// First width of the bracket around the guess, s.
const BRACKET_S: f64 = 1e-3;

/// Height at which a foot counts as under the ice, m: well above what the root is found to.
pub const UNDER_M: f64 = 1e-10;

/// The meeting itself is found to this, in seconds as in metres.
const CONTACT: f64 = 1e-12;

/// A foot that is no higher than this is looked at between steps, m: in half a step of 8 ms no foot
/// dips further.
const NEAR_ICE_M: f64 = 0.01;

/// Flies until a foot meets the ice; the time at which the opening began, and the record of every
/// step.
pub fn fly<K: StepRecord>(constants: &FlightConstants, table: &PlanTable) -> (f64, Vec<K>) {
    if let Some(led) = &table.plan.spec.led {
        let mut steps: Vec<K> = led_steps(constants, table);
        end_at_contact(constants, table, f64::INFINITY, &mut steps);
        let touchdown_s = steps[steps.len() - 1].t_s();
        let open_s = led.open_s().unwrap_or(touchdown_s).min(touchdown_s);
        return (open_s, steps);
    }
    let mut attempts = Attempts::new(constants, table);
    let end_s = attempts.planned_end_s();
    let open_s = attempts.open_for(end_s);
    let mut steps = attempts.steps_to(end_s);
    end_at_contact(constants, table, open_s, &mut steps);
    (open_s, steps)
}

/// A body that is led by hand opens when the hand lets it, whenever the ice comes: it flies on until the CM
/// itself would be on the ice.
fn led_steps<K: StepRecord>(constants: &FlightConstants, table: &PlanTable) -> Vec<K> {
    let end_s = constants.falls_to_s(0.0);
    let mut steps = Vec::with_capacity(table.most_samples(end_s));
    steps.push(constants.begin(table.takeoff()));
    let mut record = |t_s, attitude, timed: TimedProperties<'_>| {
        constants.record(t_s, attitude, timed, &mut steps);
    };
    let mut attitude = constants.close(table, &mut record);
    let (start_s, air) = (table.closing.end_s(), table.air());
    let held_s = (end_s - start_s).max(0.0);
    let held = table.resolution.plain_steps(held_s);
    for i in 1..=held {
        let step_s = held_s / held as f64;
        attitude = constants.step(attitude, step_s, [&air.rate_from_momentum; 3]);
        let t_s = start_s + step_s * i as f64;
        record(t_s, attitude, TimedProperties::in_seconds(air));
    }
    steps
}

/// When the secant is there.
struct QuickEnd;

impl Convergency<f64> for QuickEnd {
    fn is_root_found(&mut self, height_m: f64) -> bool {
        height_m.abs() < TOLERANCE
    }

    fn is_converged(&mut self, end_s: f64, before_s: f64) -> bool {
        (end_s - before_s).abs() < SHORT_STEP_S
    }

    fn is_iteration_limit_reached(&mut self, tries: usize) -> bool {
        tries >= QUICK_TRIES
    }
}

/// Flights to one planned end after the other. Up to the opening all are the same one.
struct Attempts<'a, K> {
    constants: &'a FlightConstants,
    table: &'a PlanTable,
    /// From take-off to the end of the closing.
    closing: Vec<K>,
    /// Attitude at the end of the closing, then after every step in which the air position is
    /// held, as far as any attempt has come.
    held: Vec<Attitude>,
}

impl<'a, K: StepRecord> Attempts<'a, K> {
    fn new(constants: &'a FlightConstants, table: &'a PlanTable) -> Self {
        // Room for a fall from straight legs to bent ones.
        let longest_s = constants.falls_to_s(0.0);
        let mut closing = Vec::with_capacity(table.most_samples(longest_s));
        closing.push(constants.begin(table.takeoff()));
        let closed = constants.close(table, |t_s, attitude, timed| {
            constants.record(t_s, attitude, timed, &mut closing);
        });
        let steps = longest_s / table.resolution.longest_step_s;
        let mut held = Vec::with_capacity(steps as usize + 2);
        held.push(closed);
        Self {
            constants,
            table,
            closing,
            held,
        }
    }

    fn planned_end_s(&mut self) -> f64 {
        let guess_s = self.upright_end_s();
        let height_m = self.height_at_end_m(guess_s);
        if height_m.abs() <= TOLERANCE {
            return guess_s;
        }
        self.quick_end_s(guess_s, height_m)
            .unwrap_or_else(|| self.certain_end_s(guess_s, height_m))
    }

    /// The planned end if the body came down upright: a guess that is off by its tilt only.
    fn upright_end_s(&self) -> f64 {
        let ballistic_s = self.constants.falls_to_s(self.constants.cm_m);
        let open_s = self.open_for(ballistic_s);
        let at_end = match &self.table.opening {
            Some(opening) if open_s >= self.table.plan.closed_s() => *opening.last(),
            _ => self.table.state_at(ballistic_s, open_s).into(),
        };
        let below_m = at_end.state.lowest_m(at_end.long_axis);
        self.constants.falls_to_s(-below_m)
    }

    /// By the secant, starting as if the attitude stayed as it is: it hardly changes between one
    /// guess and the next. None where that leads astray.
    fn quick_end_s(&mut self, guess_s: f64, height_m: f64) -> Option<f64> {
        let next_s = guess_s + height_m / self.constants.falling_m_s(guess_s);
        let near = |end_s: f64| (end_s - guess_s).abs() <= NEAR_S;
        let height_at_end_m = |end_s| {
            if end_s == guess_s {
                height_m
            } else if near(end_s) {
                self.height_at_end_m(end_s)
            } else {
                f64::NAN
            }
        };
        find_root_secant(guess_s, next_s, height_at_end_m, &mut QuickEnd)
            .ok()
            .filter(|&end_s| near(end_s))
    }

    /// By a bracket that holds a sign change.
    fn certain_end_s(&mut self, guess_s: f64, height_m: f64) -> f64 {
        let Some((above_s, below_s)) = self.bracket(guess_s, height_m) else {
            // At no end is a foot above the ice: whatever is planned, the ice comes first.
            return guess_s;
        };
        let mut convergency = SimpleConvergency {
            eps: TOLERANCE,
            max_iter: TRIES,
        };
        let root = find_root_brent(
            above_s,
            below_s,
            |end_s| self.height_at_end_m(end_s),
            &mut convergency,
        );
        // The bracket holds a root; the method leaves it unfinished only at the limits of rounding.
        root.unwrap_or(below_s)
    }

    /// Two ends around a sign change of the foot's height, the higher one first.
    fn bracket(&mut self, guess_s: f64, height_m: f64) -> Option<(f64, f64)> {
        let mut width_s = BRACKET_S;
        let mut near_s = guess_s;
        if height_m > 0.0 {
            loop {
                let far_s = near_s + width_s;
                if self.height_at_end_m(far_s) <= 0.0 {
                    return Some((near_s, far_s));
                }
                near_s = far_s;
                width_s *= 2.0;
            }
        }
        while near_s > width_s {
            let far_s = near_s - width_s;
            if self.height_at_end_m(far_s) >= 0.0 {
                return Some((far_s, near_s));
            }
            near_s = far_s;
            width_s *= 2.0;
        }
        None
    }

    fn open_for(&self, end_s: f64) -> f64 {
        (end_s - self.table.plan.spec.open_lead_s).max(0.0)
    }

    /// Flies to a planned end; the height of the lower foot there, m.
    fn height_at_end_m(&mut self, end_s: f64) -> f64 {
        let constants = self.constants;
        let mut height_m = 0.0;
        self.end(end_s, |t_s, attitude, timed| {
            height_m = constants.lowest_m(t_s, attitude.axis, timed.properties);
        });
        height_m
    }

    /// The part of a flight to a planned end that no other shares: the opening, or all of a flight
    /// that opens before it has closed. `visit` is called after each step.
    fn end(&mut self, end_s: f64, visit: impl StepObserver) {
        let (constants, table, open_s) = (self.constants, self.table, self.open_for(end_s));
        if open_s < table.plan.closed_s() {
            constants.close_and_open(table, open_s, end_s, visit);
            return;
        }
        let attitude = self.held_until(open_s);
        constants.open(table, open_s, attitude, visit);
    }

    /// Attitude of the body that has closed and holds its position until then.
    fn held_until(&mut self, open_s: f64) -> Attitude {
        let (constants, rates_from_momentum) =
            (self.constants, [&self.table.air().rate_from_momentum; 3]);
        let step_s = self.table.resolution.longest_step_s;
        let span_s = open_s - self.table.plan.closed_s();
        let whole = (span_s / step_s) as usize;
        while self.held.len() <= whole {
            let last = self.held[self.held.len() - 1];
            self.held
                .push(constants.step(last, step_s, rates_from_momentum));
        }
        constants.step(
            self.held[whole],
            span_s - step_s * whole as f64,
            rates_from_momentum,
        )
    }

    /// The whole flight to a planned end, step by step.
    fn steps_to(mut self, end_s: f64) -> Vec<K> {
        let (constants, table, open_s) = (self.constants, self.table, self.open_for(end_s));
        let closed_s = table.plan.closed_s();
        let mut steps = std::mem::take(&mut self.closing);
        if open_s < closed_s {
            steps.truncate(1);
        } else {
            let air = TimedProperties::in_seconds(table.air());
            let opened = self.held_until(open_s);
            for (i, &attitude) in self.held.iter().enumerate().skip(1) {
                let t_s = closed_s + table.resolution.longest_step_s * i as f64;
                if t_s < open_s {
                    constants.record(t_s, attitude, air, &mut steps);
                }
            }
            constants.record(open_s, opened, air, &mut steps);
        }
        self.end(end_s, |t_s, attitude, timed| {
            constants.record(t_s, attitude, timed, &mut steps);
        });
        steps
    }
}

/// Cuts the flight off at the first instant at which a foot is on the ice.
fn end_at_contact<K: StepRecord>(
    constants: &FlightConstants,
    table: &PlanTable,
    open_s: f64,
    steps: &mut Vec<K>,
) {
    let advanced_to =
        |from: &K, t_s| constants.advanced_to(from, t_s, |t_s| table.state_at(t_s, open_s));
    let height_m = |from: &K, t_s| advanced_to(from, t_s).lowest_m();
    let under_in = |i: usize| {
        let (from, to) = (&steps[i - 1], &steps[i]);
        let between = may_dip(constants, steps, i).then_some([0.25, 0.5, 0.75]);
        let mut between = between
            .into_iter()
            .flatten()
            .map(|part| from.t_s() + part * (to.t_s() - from.t_s()));
        between
            .find(|&t_s| height_m(from, t_s) < -UNDER_M)
            .or((to.lowest_m() < -UNDER_M).then_some(to.t_s()))
            .map(|under_s| (i, under_s))
    };
    let Some((i, under_s)) = (1..steps.len()).find_map(under_in) else {
        return;
    };
    let from = steps[i - 1];
    steps.truncate(i);
    let at = |t_s| advanced_to(&from, t_s);
    steps.push(contact([from.t_s(), under_s], at, StepRecord::lowest_m));
}

/// The instant at which the body meets the ice, between a step and a time at which it is under it; `at`
/// flies on from that step.
pub fn contact<T>(
    [from_s, under_s]: [f64; 2],
    at: impl Fn(f64) -> T,
    height_m: impl Fn(&T) -> f64,
) -> T {
    let mut convergency = SimpleConvergency {
        eps: CONTACT,
        max_iter: TRIES,
    };
    // At take-off itself the foot is on the ice: the search starts a little after.
    let after_s = from_s + 1e-6 * (under_s - from_s);
    let contact_s = find_root_brent(after_s, under_s, |t_s| height_m(&at(t_s)), &mut convergency);
    at(contact_s.unwrap_or(after_s))
}

/// Whether a foot may dip into the ice and leave it again within a step: near an instant at which it
/// is lower than before and after, and where it hardly leaves the ice with the body, or hardly
/// comes down with it.
fn may_dip<K: StepRecord>(constants: &FlightConstants, steps: &[K], i: usize) -> bool {
    let last = steps.len() - 1;
    let low = |i: usize| {
        let height_m = steps[i].lowest_m();
        (1..last).contains(&i)
            && height_m < NEAR_ICE_M
            && height_m < steps[i - 1].lowest_m()
            && height_m < steps[i + 1].lowest_m()
    };
    let (from, to) = (&steps[i - 1], &steps[i]);
    let fall_m = constants.cm_height_m(from.t_s()) - constants.cm_height_m(to.t_s());
    let hardly = (to.lowest_m() - from.lowest_m()).abs() < 0.25 * fall_m.abs();
    low(i - 1) || low(i) || (i == 1 || i == last) && hardly
}
