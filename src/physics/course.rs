//! Flying on: from one moment to the next, along a held posture or a tabulated movement.

use glam::{DQuat, DVec3};

use super::GRAVITY_M_S2;
use super::angles::wrapped_rad;
use super::integrate;
use super::launch::Launch;
use super::moment::Moment;
use super::momentum::MassState;
use super::rotation::heading_rad;
use super::table::{PlanTable, Tape};

/// What take-off has settled for the whole flight.
#[derive(Debug, Clone, Copy)]
pub struct Course {
    /// Angular momentum about the CM, world.
    pub h_kg_m2_s: DVec3,
    /// Attitude at take-off, pelvis axes to world axes.
    pub orientation: DQuat,
    /// Vertical speed of the CM at take-off.
    pub speed_m_s: f64,
    /// Height of the CM at take-off.
    pub cm_m: f64,
    /// +1 for a jumper who turns anticlockwise, -1 clockwise.
    pub sign: f64,
}

impl Course {
    pub fn new(table: &PlanTable, launch: &Launch) -> Self {
        let turning = table.plan.spec.turning;
        let (h_kg_m2_s, orientation) = launch.of(table.takeoff(), turning);
        Self {
            h_kg_m2_s,
            orientation,
            speed_m_s: launch.speed_m_s(),
            cm_m: -table.takeoff().lowest_m(orientation),
            sign: turning.sign(),
        }
    }

    pub fn cm_height_m(&self, t_s: f64) -> f64 {
        self.cm_m + t_s * (self.speed_m_s - 0.5 * GRAVITY_M_S2 * t_s)
    }

    /// The time at which the CM comes down to a height, s; the top of the flight if it never gets
    /// that high.
    pub fn falls_to_s(&self, height_m: f64) -> f64 {
        let drop_m = self.cm_m - height_m;
        let square = self.speed_m_s * self.speed_m_s + 2.0 * GRAVITY_M_S2 * drop_m;
        (self.speed_m_s + square.max(0.0).sqrt()) / GRAVITY_M_S2
    }

    /// From a moment on to a time within the same step, by a step of its own.
    pub fn on_from(&self, table: &PlanTable, open_s: f64, from: &Moment, t_s: f64) -> Moment {
        let step_s = t_s - from.t_s;
        let end = table.state_at(t_s, open_s);
        let orientation = if step_s == 0.0 {
            from.orientation
        } else {
            let start = table.state_at(from.t_s, open_s);
            let middle = table.state_at(from.t_s + 0.5 * step_s, open_s);
            self.attitude(from.orientation, step_s, [&start, &middle, &end])
        };
        self.moment(t_s, orientation, &end, Some(from))
    }

    /// The moment of take-off.
    pub fn first(&self, table: &PlanTable, moments: &mut Vec<Moment>) {
        moments.push(self.moment(0.0, self.orientation, table.takeoff(), None));
    }

    pub fn fly_closing(&self, table: &PlanTable, moments: &mut Vec<Moment>) {
        self.first(table, moments);
        self.hold(table, table.takeoff(), table.closing.start_s, moments);
        self.follow(&table.closing, 0.0, moments);
    }

    pub fn fly_rest(&self, table: &PlanTable, open_s: f64, end_s: f64, moments: &mut Vec<Moment>) {
        self.hold(table, table.air(), open_s.min(end_s), moments);
        if let Some(opening) = &table.opening {
            self.follow(opening, open_s - opening.start_s, moments);
        }
    }

    pub fn fly_overlapping(
        &self,
        table: &PlanTable,
        open_s: f64,
        end_s: f64,
        moments: &mut Vec<Moment>,
    ) {
        self.first(table, moments);
        let moving_s = table.closing.start_s.min(open_s).min(end_s);
        self.hold(table, table.takeoff(), moving_s, moments);
        if moving_s < end_s {
            self.follow(&table.overlapping(open_s, moving_s, end_s), 0.0, moments);
        }
    }

    /// Flies on to `until_s` in one posture.
    fn hold(&self, table: &PlanTable, state: &MassState, until_s: f64, moments: &mut Vec<Moment>) {
        let from = moments[moments.len() - 1];
        let span_s = until_s - from.t_s;
        if span_s <= 0.0 {
            return;
        }
        let steps = table.resolution.plain_steps(span_s);
        let step_s = span_s / steps as f64;
        for i in 1..=steps {
            let t_s = if i == steps {
                until_s
            } else {
                from.t_s + step_s * i as f64
            };
            self.advance(t_s, step_s, [state; 3], moments);
        }
    }

    /// Flies along a tape, delayed by `shift_s`.
    fn follow(&self, tape: &Tape, shift_s: f64, moments: &mut Vec<Moment>) {
        for (i, states) in tape.steps().enumerate() {
            let t_s = tape.start_s + shift_s + tape.step_s * (i + 1) as f64;
            self.advance(t_s, tape.step_s, states, moments);
        }
    }

    fn advance(&self, t_s: f64, step_s: f64, states: [&MassState; 3], moments: &mut Vec<Moment>) {
        let from = moments[moments.len() - 1];
        let orientation = self.attitude(from.orientation, step_s, states);
        moments.push(self.moment(t_s, orientation, states[2], Some(&from)));
    }

    fn attitude(&self, from: DQuat, step_s: f64, states: [&MassState; 3]) -> DQuat {
        let rate = |state: &MassState, q: DQuat| state.rate_rad_s(q.conjugate() * self.h_kg_m2_s);
        let [start, middle, end] = states;
        integrate::step(
            from,
            step_s,
            |q| rate(start, q),
            |q| rate(middle, q),
            |q| rate(end, q),
        )
    }

    /// All that is known at one instant.
    fn moment(
        &self,
        t_s: f64,
        orientation: DQuat,
        state: &MassState,
        before: Option<&Moment>,
    ) -> Moment {
        let h_body = orientation.conjugate() * self.h_kg_m2_s;
        let own_rate = state.rate_rad_s(h_body);
        let up = orientation.conjugate() * DVec3::Y;
        let rate_rad_s = orientation * own_rate;
        let turned_rad = before.map_or(0.0, |before| {
            let turn = heading_rad(orientation) - heading_rad(before.orientation);
            before.turned_rad + self.sign * wrapped_rad(turn)
        });
        let cm_m = DVec3::Y * self.cm_height_m(t_s);
        Moment {
            t_s,
            orientation,
            rate_rad_s,
            turned_rad,
            inertia_kg_m2: up.dot(state.inertia_kg_m2 * up),
            long_axis: orientation * state.long_axis(),
            energy_j: state.energy_j(own_rate),
            hand_pull_n: state.hand_pull_n(up, rate_rad_s.y),
            cm_m,
            lowest_m: cm_m.y + state.lowest_m(orientation),
        }
    }
}
