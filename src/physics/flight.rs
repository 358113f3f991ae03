//! Free flight of a body that moves its joints by plan.
//!
//! The CM follows the parabola; the angular momentum h about it is constant in the world. In
//! pelvis axes w = I⁻¹ (Rᵀ h - k), R' = R [w]x.

use std::f64::consts::TAU;
use std::sync::Arc;

use glam::{DQuat, DVec3};

use super::GRAVITY_M_S2;
use super::angles::wrapped_rad;
use super::integrate;
use super::momentum::{MassState, Shape};
use super::plan::Turning;
use super::rotation::{about, arc, heading_rad};
use super::table::{PlanTable, Tape};

/// What the take-off fixes about the angular momentum: it is vertical, and its size follows from
/// one of these.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Spin {
    /// Rate of the pelvis about the vertical at take-off, rad/s, in the turning direction.
    Rate(f64),
    /// Angular momentum about the CM, kg m²/s.
    AngularMomentum(f64),
    /// Rotational energy at take-off, J.
    Energy(f64),
}

/// How the ice is left.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Launch {
    pub spin: Spin,
    /// Rise of the CM from take-off to the top, m.
    pub jump_height_m: f64,
    /// Tilt of the body's long axis against h, towards the side the jumper turns to, rad.
    pub lean_rad: f64,
    /// Heading of the pelvis as the ice is left, rad.
    pub heading_rad: f64,
}

impl Spin {
    /// Angular momentum for a body of which a unit turns it at the rate `ease` (1/(kg m²)).
    fn momentum(self, ease: f64) -> f64 {
        match self {
            Self::Rate(rate_rad_s) => rate_rad_s / ease,
            Self::AngularMomentum(h) => h,
            Self::Energy(energy_j) => (2.0 * energy_j / ease).sqrt(),
        }
    }
}

impl Launch {
    /// Attitude at take-off: balanced with the long axis on the vertical, then leaned sideways,
    /// then headed.
    fn orientation(&self, state: &MassState, turning: Turning) -> DQuat {
        let leaned =
            about(DVec3::X, -turning.sign() * self.lean_rad) * arc(state.long_axis(), DVec3::Y);
        (about(DVec3::Y, self.heading_rad - heading_rad(leaned)) * leaned).normalize()
    }

    /// The same launch of the same posture with another body: what that body leaves the ice with.
    /// The returned spins keep its angular momentum and its rotational energy.
    pub fn kept_from(&self, state: &MassState, turning: Turning) -> (Spin, Spin) {
        let ease = ease(state, self.orientation(state, turning));
        let h = self.spin.momentum(ease);
        (Spin::AngularMomentum(h), Spin::Energy(0.5 * h * h * ease))
    }
}

/// Vertical rate that a unit of vertical angular momentum gives to a still posture, 1/(kg m²).
fn ease(state: &MassState, orientation: DQuat) -> f64 {
    let up = orientation.conjugate() * DVec3::Y;
    up.dot(state.inverse * up)
}

/// The flight at one instant. World frame unless said otherwise.
#[derive(Debug, Clone, Copy)]
pub struct Moment {
    pub t_s: f64,
    /// Pelvis axes to world axes.
    pub orientation: DQuat,
    /// Angular velocity of the pelvis, rad/s.
    pub rate_rad_s: DVec3,
    /// Turned since take-off in the turning direction, rad, unwrapped.
    pub turned_rad: f64,
    /// Moment of inertia about h, kg m².
    pub inertia_kg_m2: f64,
    /// The body's long axis (least principal axis).
    pub long_axis: DVec3,
    /// Kinetic energy relative to the CM, J.
    pub energy_j: f64,
    /// Pull that keeps the left and the right hand, with what it holds, on its circle, N.
    pub hand_pull_n: [f64; 2],
    /// CM of the whole body, m.
    pub cm_m: DVec3,
    /// Height of the lowest point of either foot over the ice, m.
    pub lowest_m: f64,
}

impl Moment {
    /// Tilt of the long axis against the vertical, rad.
    pub fn tilt_rad(&self) -> f64 {
        let level = libm::hypot(self.long_axis.x, self.long_axis.z);
        libm::atan2(level, self.long_axis.y)
    }
}

/// A finished flight. Everything shown is read from it.
#[derive(Debug, Clone)]
pub struct Flight {
    pub table: Arc<PlanTable>,
    pub launch: Launch,
    /// Angular momentum about the CM, world, kg m²/s.
    pub h_kg_m2_s: DVec3,
    /// Vertical speed of the CM at take-off, m/s.
    pub takeoff_speed_m_s: f64,
    /// Height of the CM at take-off, m.
    pub takeoff_cm_m: f64,
    pub touchdown_s: f64,
    /// Beginning of the opening, s after take-off.
    pub open_s: f64,
    /// The flight step by step, from take-off to touch-down.
    pub moments: Vec<Moment>,
}

/// Touch-down is found to this, s.
const TOUCHDOWN_TOLERANCE_S: f64 = 1e-12;
const TOUCHDOWN_TRIES: usize = 30;

impl Flight {
    /// Flies a tabulated plan.
    pub fn new(table: Arc<PlanTable>, launch: Launch) -> Self {
        let start = Start::new(&table, &launch);
        let (touchdown_s, open_s, moments) = start.fly(&table, &launch);
        Self {
            launch,
            h_kg_m2_s: start.h,
            takeoff_speed_m_s: start.speed_m_s,
            takeoff_cm_m: start.cm_m,
            touchdown_s,
            open_s,
            moments,
            table,
        }
    }

    pub fn takeoff(&self) -> &Moment {
        &self.moments[0]
    }

    pub fn touchdown(&self) -> &Moment {
        &self.moments[self.moments.len() - 1]
    }

    /// The flight at any time, held at its ends.
    pub fn at(&self, t_s: f64) -> Moment {
        let t_s = t_s.clamp(0.0, self.touchdown_s);
        let after = self.moments.partition_point(|moment| moment.t_s <= t_s);
        let from = &self.moments[after.max(1) - 1];
        let step_s = t_s - from.t_s;
        let state = |t| self.table.state_at(t, self.open_s);
        let end = state(t_s);
        let orientation = if step_s == 0.0 {
            from.orientation
        } else {
            let states = [&state(from.t_s), &state(from.t_s + 0.5 * step_s), &end];
            attitude_step(self.h_kg_m2_s, from.orientation, step_s, states)
        };
        self.start().moment(t_s, orientation, &end, Some(from))
    }

    /// Where every segment is at a time, and how it moves, relative to the CM.
    pub fn pose_at(&self, t_s: f64) -> Pose {
        let moment = self.at(t_s);
        let (posture, rates) = self.table.plan.at(moment.t_s, self.open_s);
        let state = MassState::new(&self.table.body, &posture, &rates);
        Pose {
            shape: Shape::new(&self.table.body, &posture, &rates),
            shape_cm_m: state.cm_m,
            shape_cm_velocity_m_s: state.cm_velocity_m_s,
            cm_velocity_m_s: DVec3::Y * (self.takeoff_speed_m_s - GRAVITY_M_S2 * moment.t_s),
            moment,
        }
    }

    fn start(&self) -> Start {
        Start {
            h: self.h_kg_m2_s,
            orientation: self.takeoff().orientation,
            speed_m_s: self.takeoff_speed_m_s,
            cm_m: self.takeoff_cm_m,
            sign: self.table.plan.spec.turning.sign(),
        }
    }
}

/// Where every segment is in the world at one instant.
#[derive(Debug, Clone, Copy)]
pub struct Pose {
    pub moment: Moment,
    pub cm_velocity_m_s: DVec3,
    shape: Shape,
    shape_cm_m: DVec3,
    shape_cm_velocity_m_s: DVec3,
}

impl Pose {
    /// A point fixed to a segment, in the world, m.
    pub fn point_m(&self, segment: super::body::Segment, own_m: DVec3) -> DVec3 {
        let (p, _) = self.shape.point(segment, own_m);
        self.moment.cm_m + self.moment.orientation * (p - self.shape_cm_m)
    }

    /// Velocity of that point in the world, m/s.
    pub fn velocity_m_s(&self, segment: super::body::Segment, own_m: DVec3) -> DVec3 {
        let (p, v) = self.shape.point(segment, own_m);
        let turn = self.moment.orientation;
        self.cm_velocity_m_s
            + turn * (v - self.shape_cm_velocity_m_s)
            + self.moment.rate_rad_s.cross(turn * (p - self.shape_cm_m))
    }

    /// Segment axes to world axes.
    pub fn orientation(&self, segment: super::body::Segment) -> DQuat {
        self.moment.orientation * self.shape.rotation[segment as usize]
    }

    /// Angular velocity of the segment in the world, rad/s.
    pub fn segment_rate_rad_s(&self, segment: super::body::Segment) -> DVec3 {
        self.moment.rate_rad_s + self.moment.orientation * self.shape.rate_rad_s[segment as usize]
    }
}

/// What take-off has settled.
struct Start {
    h: DVec3,
    orientation: DQuat,
    speed_m_s: f64,
    cm_m: f64,
    sign: f64,
}

impl Start {
    fn new(table: &PlanTable, launch: &Launch) -> Self {
        let turning = table.plan.spec.turning;
        let state = table.takeoff();
        let orientation = launch.orientation(state, turning);
        Self {
            h: DVec3::Y * (turning.sign() * launch.spin.momentum(ease(state, orientation))),
            orientation,
            speed_m_s: (2.0 * GRAVITY_M_S2 * launch.jump_height_m).sqrt(),
            cm_m: -lowest(orientation, state),
            sign: turning.sign(),
        }
    }

    fn cm_height_m(&self, t_s: f64) -> f64 {
        self.cm_m + t_s * (self.speed_m_s - 0.5 * GRAVITY_M_S2 * t_s)
    }

    /// Touch-down is an event whose posture is known beforehand (the opening is timed back from
    /// it) but whose attitude is not: fly, correct the time by Newton's step, fly again.
    fn fly(&self, table: &PlanTable, launch: &Launch) -> (f64, f64, Vec<Moment>) {
        let lead_s = table.plan.spec.open_lead_s;
        let mut touchdown_s = libm::sqrt(8.0 * launch.jump_height_m / GRAVITY_M_S2);
        let mut moments = Vec::new();
        let mut open_s = 0.0;
        // The closing is common to all tries in which it ends before the opening begins.
        let mut common = 0;
        for _ in 0..TOUCHDOWN_TRIES {
            open_s = (touchdown_s - lead_s).max(0.0);
            if open_s < table.plan.closed_s() {
                moments.clear();
                common = 0;
                self.fly_overlapping(table, open_s, touchdown_s, &mut moments);
            } else {
                moments.truncate(common);
                if common == 0 {
                    self.fly_closing(table, &mut moments);
                    common = moments.len();
                }
                self.fly_rest(table, open_s, touchdown_s, &mut moments);
            }
            let next_s = self.corrected(touchdown_s, &moments[moments.len() - 1]);
            let settled = (next_s - touchdown_s).abs() < TOUCHDOWN_TOLERANCE_S;
            if settled {
                break;
            }
            touchdown_s = next_s;
        }
        (touchdown_s, open_s, moments)
    }

    /// Newton's correction of the touch-down time; the feet move with the turning body.
    fn corrected(&self, touchdown_s: f64, last: &Moment) -> f64 {
        let falling = self.speed_m_s - GRAVITY_M_S2 * touchdown_s;
        let apex_s = self.speed_m_s / GRAVITY_M_S2;
        // Never back over the top, where the tangent is flat.
        (touchdown_s - last.lowest_m / falling.min(-0.3)).max(0.5 * (apex_s + touchdown_s))
    }

    fn first(&self, table: &PlanTable, moments: &mut Vec<Moment>) {
        moments.push(self.moment(0.0, self.orientation, table.takeoff(), None));
    }

    fn fly_closing(&self, table: &PlanTable, moments: &mut Vec<Moment>) {
        self.first(table, moments);
        self.hold(table, table.takeoff(), table.closing.start_s, moments);
        self.follow(&table.closing, 0.0, moments);
    }

    fn fly_rest(&self, table: &PlanTable, open_s: f64, end_s: f64, moments: &mut Vec<Moment>) {
        self.hold(table, table.air(), open_s.min(end_s), moments);
        if let Some(opening) = &table.opening {
            self.follow(opening, open_s - opening.start_s, moments);
        }
    }

    fn fly_overlapping(
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
        let orientation = attitude_step(self.h, from.orientation, step_s, states);
        moments.push(self.moment(t_s, orientation, states[2], Some(&from)));
    }

    /// All that is known at one instant.
    fn moment(
        &self,
        t_s: f64,
        orientation: DQuat,
        state: &MassState,
        before: Option<&Moment>,
    ) -> Moment {
        let h_body = orientation.conjugate() * self.h;
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
            lowest_m: cm_m.y + lowest(orientation, state),
        }
    }
}

fn attitude_step(h: DVec3, from: DQuat, step_s: f64, states: [&MassState; 3]) -> DQuat {
    let rate = |state: &MassState, q: DQuat| state.rate_rad_s(q.conjugate() * h);
    let [start, middle, end] = states;
    integrate::step(
        from,
        step_s,
        |q| rate(start, q),
        |q| rate(middle, q),
        |q| rate(end, q),
    )
}

/// Lowest sole point relative to the CM, m.
fn lowest(orientation: DQuat, state: &MassState) -> f64 {
    state
        .soles_m
        .iter()
        .map(|&sole| (orientation * sole).y)
        .fold(f64::INFINITY, f64::min)
}

/// Turns from radians turned.
pub fn turns_of(turned_rad: f64) -> f64 {
    turned_rad / TAU
}
