//! A person who moves by a programme.
//!
//! From row to row every coordinate follows the quintic with no acceleration at either end. Where the rows
//! before and after say that it rests or turns back it is at rest at a row, else it goes through at the harmonic
//! mean of the slopes on either side (Fritsch & Butland 1984, SIAM J Sci Stat Comput 5:300-304), so that it
//! does not overshoot. From rest to rest that is the minimum-jerk movement (Flash & Hogan 1985).

use turns_aloft_physics::minimum_jerk::minimum_jerk;

use crate::about_axis::{AboutAxis, OnBearing};
use crate::person::Person;
use crate::position::{Coordinates, Limbs, TWIST_RAD};
use crate::programme::{Programme, Row};
use crate::run::Run;
use crate::turning::Turning;

/// A person and what they do.
#[derive(Debug)]
pub struct Planned<'a> {
    person: &'a Person,
    knots: Vec<Knot>,
}

#[derive(Debug, Clone, Copy)]
struct Knot {
    t_s: f64,
    at: Coordinates,
    /// For a second.
    rate: Coordinates,
}

/// Why somebody cannot do what a programme asks.
#[derive(Debug, Clone, PartialEq)]
pub enum PlanFault {
    /// The hands do not come so near or so far.
    Reach {
        line: u64,
        asked_m: f64,
        reach_m: [f64; 2],
    },
    Legs {
        line: u64,
        asked: f64,
    },
    /// Somebody stands on both.
    LegsStand {
        line: u64,
    },
    Twist {
        line: u64,
        asked_rad: f64,
    },
    /// On the way to this line a joint would turn too fast.
    TooFast {
        line: u64,
        limbs: Limbs,
        rate_rad_s: f64,
    },
}

/// Shares of the distance to the end of the arms' reach by which it may be missed: the programme has its rounded
/// numbers.
const REACH_MISSED_M: f64 = 0.001;

/// Places on the way between two rows where the rate is looked at.
const LOOKED_AT: u32 = 16;

/// By which the fastest may be passed: a recorded run has been led at it, and its samples are not as smooth.
const PASSED: f64 = 1.05;

impl<'a> Planned<'a> {
    pub fn new(person: &'a Person, programme: &Programme) -> Result<Self, PlanFault> {
        let mut knots = Vec::with_capacity(programme.rows.len());
        for row in &programme.rows {
            check(person, row)?;
            knots.push(Knot {
                t_s: row.t_s,
                at: person.coordinates(&row.position),
                rate: [0.0; 3],
            });
        }
        for i in 1..knots.len() - 1 {
            knots[i].rate = rates(&knots[i - 1], &knots[i], &knots[i + 1]);
        }
        let planned = Self { person, knots };
        for (pair, row) in planned.knots.windows(2).zip(&programme.rows[1..]) {
            planned.check_speed(pair, row.line)?;
        }
        Ok(planned)
    }

    fn check_speed(&self, pair: &[Knot], line: u64) -> Result<(), PlanFault> {
        for limbs in Limbs::ALL {
            let turn_rad = self.person.turn_rad(limbs);
            let rates = (0..=LOOKED_AT).map(|i| {
                let part = f64::from(i) / f64::from(LOOKED_AT);
                let t_s = pair[0].t_s + part * (pair[1].t_s - pair[0].t_s);
                turn_rad * between(&pair[0], &pair[1], t_s).1[limbs as usize].abs()
            });
            let rate_rad_s = rates.fold(0.0, f64::max);
            if rate_rad_s > PASSED * limbs.fastest_rad_s() {
                return Err(PlanFault::TooFast {
                    line,
                    limbs,
                    rate_rad_s,
                });
            }
        }
        Ok(())
    }

    /// The coordinates, and how they change for a second.
    pub fn coordinates(&self, t_s: f64) -> (Coordinates, Coordinates) {
        let later = self.knots.partition_point(|knot| knot.t_s <= t_s);
        match (later.checked_sub(1), self.knots.get(later)) {
            (Some(before), Some(to)) => between(&self.knots[before], to, t_s),
            (Some(last), None) => (self.knots[last].at, [0.0; 3]),
            (None, _) => (self.knots[0].at, [0.0; 3]),
        }
    }

    pub const fn person(&self) -> &Person {
        self.person
    }

    /// Times at which the programme begins and ends, s.
    pub fn span_s(&self) -> [f64; 2] {
        [self.knots[0].t_s, self.knots[self.knots.len() - 1].t_s]
    }

    /// From the first rate of the setup on, with a sample each so many seconds and one at the end.
    pub fn run(&self, sample_s: f64) -> Run {
        let setup = &self.person.setup;
        let [from_s, _] = self.span_s();
        let first = Turning::at_rate(from_s, &self.at(from_s), setup.rate_rad_s);
        let position = |t_s| self.person.position(&self.coordinates(t_s).0);
        Run::recorded(
            first,
            self,
            &setup.friction,
            self.span_s(),
            sample_s,
            position,
        )
    }
}

impl OnBearing for Planned<'_> {
    fn at(&self, t_s: f64) -> AboutAxis {
        let (coordinates, change) = self.coordinates(t_s);
        self.person.about_axis(&coordinates, &change)
    }
}

fn check(person: &Person, row: &Row) -> Result<(), PlanFault> {
    let line = row.line;
    let position = &row.position;
    let asked_m = position.hand_distance_m;
    let reach_m = person.reach_m();
    if !(reach_m[0] - REACH_MISSED_M..=reach_m[1] + REACH_MISSED_M).contains(&asked_m) {
        return Err(PlanFault::Reach {
            line,
            asked_m,
            reach_m,
        });
    }
    let asked = position.legs;
    if !(0.0..=1.0).contains(&asked) {
        return Err(PlanFault::Legs { line, asked });
    }
    if asked != 0.0 && !person.setup.stand.legs_move() {
        return Err(PlanFault::LegsStand { line });
    }
    let asked_rad = position.twist_rad;
    if !(-TWIST_RAD..=TWIST_RAD).contains(&asked_rad) {
        return Err(PlanFault::Twist { line, asked_rad });
    }
    Ok(())
}

/// At what rates the coordinates go through a row.
fn rates(before: &Knot, here: &Knot, after: &Knot) -> Coordinates {
    std::array::from_fn(|i| {
        let slope = |from: &Knot, to: &Knot| (to.at[i] - from.at[i]) / (to.t_s - from.t_s);
        let (one, other) = (slope(before, here), slope(here, after));
        if one * other > 0.0 {
            2.0 * one * other / (one + other)
        } else {
            0.0
        }
    })
}

/// On the quintics between two rows.
fn between(from: &Knot, to: &Knot, t_s: f64) -> (Coordinates, Coordinates) {
    let time_s = to.t_s - from.t_s;
    let (part, part_rate) = minimum_jerk(t_s, from.t_s, time_s);
    let x = ((t_s - from.t_s) / time_s).clamp(0.0, 1.0);
    let (out, out_rate) = run_out(x);
    // The same from the other end.
    let (into, into_rate) = run_out(1.0 - x);
    let at = std::array::from_fn(|i| {
        let way = to.at[i] - from.at[i];
        from.at[i] + part * way + time_s * (out * from.rate[i] - into * to.rate[i])
    });
    let change = std::array::from_fn(|i| {
        let way = to.at[i] - from.at[i];
        part_rate * way + out_rate * from.rate[i] + into_rate * to.rate[i]
    });
    (at, change)
}

/// The quintic that begins with slope 1 and runs out: 0 at both ends, its slope and second derivatives 0 at
/// the other one; and its slope.
fn run_out(x: f64) -> (f64, f64) {
    let x2 = x * x;
    (
        x + x2 * x * (x * (8.0 - 3.0 * x) - 6.0),
        1.0 + x2 * (x * (32.0 - 15.0 * x) - 18.0),
    )
}
