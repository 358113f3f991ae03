//! When the flight ends.
//!
//! The jumper opens in time for a landing: the opening begins a given time before the planned end,
//! and at the planned end a foot is on the ice. That end is found as a root, a flight for each
//! guess. If a foot meets the ice earlier (legs that stretch downwards, a body that cones), the
//! flight ends there, as the body then is.

use glam::DVec3;
use roots::{SimpleConvergency, find_root_brent};

use super::course::Course;
use super::moment::Moment;
use super::rotation::arc;
use super::table::PlanTable;

/// Touch-down is found to this, in seconds as in metres.
const TOLERANCE: f64 = 1e-12;
const TRIES: usize = 60;

/// First width of the bracket around the guess, s.
const BRACKET_S: f64 = 1e-3;

/// Height at which a foot counts as under the ice, m: well above what the root is found to.
const UNDER_M: f64 = 1e-10;

/// Flies until a foot meets the ice; the time at which the opening began, and all moments.
pub fn fly(course: &Course, table: &PlanTable) -> (f64, Vec<Moment>) {
    let mut attempt = Attempt {
        course,
        table,
        open_s: 0.0,
        closing: 0,
        moments: Vec::new(),
    };
    attempt.plan();
    attempt.end_at_contact();
    (attempt.open_s, attempt.moments)
}

/// The flight, attempted with one planned end after the other.
struct Attempt<'a> {
    course: &'a Course,
    table: &'a PlanTable,
    open_s: f64,
    /// How many moments, up to the end of the closing, the attempts have in common.
    closing: usize,
    moments: Vec<Moment>,
}

impl Attempt<'_> {
    /// Finds the planned end; the last flight attempted is the one that ends there.
    fn plan(&mut self) {
        let guess_s = self.upright_end_s();
        let height = self.height_at_end(guess_s);
        let Some((above_s, below_s)) = self.bracket(guess_s, height) else {
            return;
        };
        let mut convergency = SimpleConvergency {
            eps: TOLERANCE,
            max_iter: TRIES,
        };
        let root = find_root_brent(
            above_s,
            below_s,
            |end_s| self.height_at_end(end_s),
            &mut convergency,
        );
        // The bracket holds a root; the method leaves it unfinished only at the limits of rounding.
        let end_s = root.unwrap_or(below_s);
        self.height_at_end(end_s);
    }

    /// The planned end if the body came down upright: a guess that is off by its tilt only.
    fn upright_end_s(&self) -> f64 {
        let ballistic_s = self.course.falls_to_s(self.course.cm_m);
        let open_s = self.open_for(ballistic_s);
        let state = self.table.state_at(ballistic_s, open_s);
        let upright = arc(state.long_axis(), DVec3::Y);
        self.course.falls_to_s(-state.lowest_m(upright))
    }

    /// Two ends around a sign change of the foot's height, the higher one first; none if the guess
    /// is the end already.
    fn bracket(&mut self, guess_s: f64, height_m: f64) -> Option<(f64, f64)> {
        if height_m.abs() <= TOLERANCE {
            return None;
        }
        let mut width_s = BRACKET_S;
        let mut near_s = guess_s;
        if height_m > 0.0 {
            loop {
                let far_s = near_s + width_s;
                if self.height_at_end(far_s) <= 0.0 {
                    return Some((near_s, far_s));
                }
                near_s = far_s;
                width_s *= 2.0;
            }
        }
        while near_s > width_s {
            let far_s = near_s - width_s;
            if self.height_at_end(far_s) >= 0.0 {
                return Some((far_s, near_s));
            }
            near_s = far_s;
            width_s *= 2.0;
        }
        // At no end is a foot above the ice: whatever is planned, the ice comes first.
        None
    }

    fn open_for(&self, end_s: f64) -> f64 {
        (end_s - self.table.plan.spec.open_lead_s).max(0.0)
    }

    /// Flies to a planned end; the height of the lower foot there, m.
    fn height_at_end(&mut self, end_s: f64) -> f64 {
        let (course, table) = (self.course, self.table);
        self.open_s = self.open_for(end_s);
        if self.open_s < table.plan.closed_s() {
            self.moments.clear();
            self.closing = 0;
            course.fly_overlapping(table, self.open_s, end_s, &mut self.moments);
        } else {
            if self.closing == 0 {
                self.moments.clear();
                course.fly_closing(table, &mut self.moments);
                self.closing = self.moments.len();
            }
            self.moments.truncate(self.closing);
            course.fly_rest(table, self.open_s, end_s, &mut self.moments);
        }
        self.moments[self.moments.len() - 1].lowest_m
    }

    /// Cuts the flight off at the first moment at which a foot is on the ice.
    fn end_at_contact(&mut self) {
        let under = |moment: &Moment| moment.lowest_m < -UNDER_M;
        let Some(i) = self.moments.iter().position(under).filter(|&i| i > 0) else {
            return;
        };
        let (from, below) = (self.moments[i - 1], self.moments[i]);
        let (course, table, open_s) = (self.course, self.table, self.open_s);
        let mut convergency = SimpleConvergency {
            eps: TOLERANCE,
            max_iter: TRIES,
        };
        // At take-off itself the foot is on the ice: the search starts a little after.
        let after_s = from.t_s + 1e-6 * (below.t_s - from.t_s);
        let contact_s = find_root_brent(
            after_s,
            below.t_s,
            |t_s| course.on_from(table, open_s, &from, t_s).lowest_m,
            &mut convergency,
        )
        .unwrap_or(after_s);
        self.moments.truncate(i);
        self.moments
            .push(course.on_from(table, open_s, &from, contact_s));
    }
}
