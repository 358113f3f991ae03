//! How it turns: one step of the angular momentum about a bearing, with the energy's book-keeping.
//!
//! L' = -(c sign w + b w) with w = (L - l) / I. Without friction L is a constant. The momentum is stepped by
//! the classical fourth-order method; a step in which the turning comes to rest is cut there, found as a
//! root. At rest friction holds as long as the reaction of the moving limbs, l', is within its torque.
//!
//! The work of the muscles is not what is left of the balance, so that the balance can be checked: in the
//! turning frame they move the limbs, against the centrifugal force and against the frame's acceleration:
//! dW = dK + l dw - w² dI / 2.

use crate::about_axis::{AboutAxis, OnBearing};
use crate::friction::Friction;

/// How far the turning has come.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Turning {
    pub t_s: f64,
    /// About the bearing's axis, kg m²/s.
    pub momentum_kg_m2_s: f64,
    /// Since the beginning, rad.
    pub turned_rad: f64,
    /// What the muscles have done, J; negative where they were pulled.
    pub work_j: f64,
    /// What friction has turned into heat, J.
    pub heat_j: f64,
    /// What pushes have brought in, J.
    pub pushed_j: f64,
    /// At rest, and held there by friction.
    held: bool,
}

/// The rate at which a step is taken to have come to rest, rad/s, and how often it is looked for.
const AT_REST_RAD_S: f64 = 1e-12;
const ROUNDS: u32 = 60;

impl Turning {
    /// At this time, turning at this rate.
    pub fn at_rate(t_s: f64, at: &AboutAxis, rate_rad_s: f64) -> Self {
        Self {
            t_s,
            momentum_kg_m2_s: at.momentum_kg_m2_s(rate_rad_s),
            turned_rad: 0.0,
            work_j: 0.0,
            heat_j: 0.0,
            pushed_j: 0.0,
            held: rate_rad_s == 0.0,
        }
    }

    /// Of what turns as it does now, rad/s.
    pub fn rate_rad_s(&self, at: &AboutAxis) -> f64 {
        if self.held {
            0.0
        } else {
            at.rate_rad_s(self.momentum_kg_m2_s)
        }
    }

    /// After a push that gives it this much angular momentum at once, kg m²/s.
    pub fn pushed(self, at: &AboutAxis, momentum_kg_m2_s: f64) -> Self {
        if momentum_kg_m2_s == 0.0 {
            return self;
        }
        let mut after = self;
        after.momentum_kg_m2_s += momentum_kg_m2_s;
        after.held = false;
        let [before_rad_s, after_rad_s] = [self, after].map(|turning| turning.rate_rad_s(at));
        after.pushed_j += 0.5 * (before_rad_s + after_rad_s) * momentum_kg_m2_s;
        // Limbs that move on as they did are pushed along by the muscles.
        after.work_j += at.own_momentum_kg_m2_s * (after_rad_s - before_rad_s);
        after
    }

    /// A step later, in which what is on the bearing moves smoothly.
    pub fn advanced(self, on: &impl OnBearing, friction: &Friction, step_s: f64) -> Self {
        let end_s = self.t_s + step_s;
        if friction.torque_n_m == 0.0 {
            return self.slid(on, friction, 0.0, end_s);
        }
        let mut now = self;
        if !now.held {
            let sense = now.rate_rad_s(&on.at(now.t_s)).signum();
            let rate_at = |t_s: f64| {
                let then = now.slid(on, friction, sense, t_s);
                (then, sense * then.rate_rad_s(&on.at(t_s)))
            };
            let (end, rate_rad_s) = rate_at(end_s);
            if rate_rad_s >= 0.0 {
                return end;
            }
            now = stopped(rate_at, [now.t_s, end_s], rate_rad_s);
            now.momentum_kg_m2_s = on.at(now.t_s).own_momentum_kg_m2_s;
            now.held = true;
        }
        now.held_or_torn_off(on, friction, end_s)
    }

    /// From rest on: friction holds while it can take up what the limbs give off.
    fn held_or_torn_off(self, on: &impl OnBearing, friction: &Friction, end_s: f64) -> Self {
        let [from, to] = [self.t_s, end_s].map(|t_s| on.at(t_s));
        let given_off = to.own_momentum_kg_m2_s - from.own_momentum_kg_m2_s;
        let held = Self {
            t_s: end_s,
            momentum_kg_m2_s: to.own_momentum_kg_m2_s,
            work_j: self.work_j + to.own_energy_j - from.own_energy_j,
            ..self
        };
        if given_off.abs() <= friction.torque_n_m * (end_s - self.t_s) {
            return held;
        }
        let sense = -given_off.signum();
        let torn_off = self.slid(on, friction, sense, end_s);
        if sense * torn_off.rate_rad_s(&to) > 0.0 {
            torn_off
        } else {
            held
        }
    }

    /// Turning on with friction against this sense (1, -1; 0 where there is none but the viscous part).
    fn slid(&self, on: &impl OnBearing, friction: &Friction, sense: f64, end_s: f64) -> Self {
        let step_s = end_s - self.t_s;
        let at = [0.0, 0.5, 1.0].map(|part| on.at(self.t_s + part * step_s));
        let [start, middle, end] = &at;
        let torque = |at: &AboutAxis, momentum: f64| {
            -sense * friction.torque_n_m - friction.viscous_n_m_s * at.rate_rad_s(momentum)
        };
        let from = self.momentum_kg_m2_s;
        let torque_1 = torque(start, from);
        let torque_2 = torque(middle, from + 0.5 * step_s * torque_1);
        let torque_3 = torque(middle, from + 0.5 * step_s * torque_2);
        let torque_4 = torque(end, from + step_s * torque_3);
        let to = from + step_s / 6.0 * (torque_1 + 2.0 * (torque_2 + torque_3) + torque_4);
        // Half-way on the cubic with these ends and slopes.
        let half_way = 0.5 * (from + to) + step_s / 8.0 * (torque_1 - torque(end, to));
        let rates = [
            start.rate_rad_s(from),
            middle.rate_rad_s(half_way),
            end.rate_rad_s(to),
        ];
        let own = at.map(|at| at.own_momentum_kg_m2_s);
        let inertia = at.map(|at| at.inertia_kg_m2);
        let over_time = |of: [f64; 3]| step_s / 6.0 * (of[0] + 4.0 * of[1] + of[2]);
        let moved_j = end.own_energy_j - start.own_energy_j;
        let work_j = moved_j + along(own, rates) - 0.5 * along(rates.map(|w| w * w), inertia);
        Self {
            t_s: end_s,
            momentum_kg_m2_s: to,
            turned_rad: self.turned_rad + over_time(rates),
            work_j: self.work_j + work_j,
            heat_j: self.heat_j + over_time(rates.map(|w| friction.power_w(w))),
            pushed_j: self.pushed_j,
            held: false,
        }
    }

    /// Whether friction holds it at rest.
    pub const fn is_held(&self) -> bool {
        self.held
    }
}

/// Where the rate, positive at the beginning of a step and `last` at its end, has become zero: by false
/// position, an end that stays twice counting half (Illinois; Dowell & Jarratt 1971, BIT 11:168-174).
fn stopped(
    rate_at: impl Fn(f64) -> (Turning, f64),
    [mut from_s, mut to_s]: [f64; 2],
    mut last: f64,
) -> Turning {
    let (mut stop, mut first) = rate_at(from_s);
    if first <= AT_REST_RAD_S {
        return stop;
    }
    let mut side = 0.0;
    for _ in 0..ROUNDS {
        let t_s = from_s + (to_s - from_s) * first / (first - last);
        let (then, rate_rad_s) = rate_at(t_s);
        stop = then;
        if rate_rad_s.abs() <= AT_REST_RAD_S {
            break;
        }
        let same_side = rate_rad_s.signum() == side;
        side = rate_rad_s.signum();
        if rate_rad_s > 0.0 {
            (from_s, first) = (t_s, rate_rad_s);
            last *= if same_side { 0.5 } else { 1.0 };
        } else {
            (to_s, last) = (t_s, rate_rad_s);
            first *= if same_side { 0.5 } else { 1.0 };
        }
    }
    stop
}

/// The integral of one thing over another, of both of which the values at the beginning, the middle and the
/// end of a step are given: exact for parabolas.
fn along(of: [f64; 3], over: [f64; 3]) -> f64 {
    let [start, middle, end] = over;
    let slopes = [
        4.0 * middle - 3.0 * start - end,
        end - start,
        3.0 * end + start - 4.0 * middle,
    ];
    (of[0] * slopes[0] + 4.0 * of[1] * slopes[1] + of[2] * slopes[2]) / 6.0
}
