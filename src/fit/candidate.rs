//! One possible jump of an attempt, flown by the mechanics.

use std::sync::Arc;

use crate::problem::Problem;
use crate::unknown::{Point, Unknown};
use turns_aloft_analysis::uncertainty::with_ratio_off;
use turns_aloft_physics::body::BodySpec;
use turns_aloft_physics::fixed_time::{FixedTimeFlight, height_for_m};
use turns_aloft_physics::launch::Launch;
use turns_aloft_physics::resolution::Resolution;
use turns_aloft_physics::sample::FlightSample;
use turns_aloft_physics::table::PlanTable;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::parameter::Parameter;

/// Steps of a candidate's flight: a few times as long as usual. The turns then are off by less than a
/// thousandth, where marks tell a twentieth; the jumps that come of a fit are flown again in usual steps.
const STEPS: Resolution = Resolution {
    longest_step_s: 0.02,
    steps_per_blend: 12,
};

/// How far under the ice a foot may be on the way, m: less is an error of the steps.
const GRAZE_M: f64 = 1e-3;

/// What is set of a candidate.
#[derive(Debug, Clone)]
pub struct Setting {
    /// Its height is that of the hang time once it has been flown.
    pub scenario: Scenario,
    pub takeoff_s: f64,
    pub landing_s: f64,
    pub first_facing_rad: f64,
    /// By how much more the facings turn than the jumper: over the flight, and as a share.
    pub drift_rad: f64,
    pub drift_share: f64,
    pub inertia_ratio_share: f64,
    pub landing_offset_m: f64,
}

/// A candidate and its flight.
#[derive(Debug, Clone)]
pub struct Candidate {
    pub setting: Setting,
    body: BodySpec,
    table: Arc<PlanTable>,
    /// As flown at the height of the attempt's own scenario.
    steps: Arc<[FlightSample]>,
    /// By how much faster the ice is left at the height that was found.
    faster_m_s: f64,
}

impl Setting {
    pub fn of(problem: &Problem, point: &Point) -> Self {
        let z = |unknown: Unknown| point[unknown.place()];
        let mut scenario = problem.scenario.clone();
        for (&unknown, &z) in Unknown::ALL.iter().zip(point) {
            if let Unknown::Number(parameter) = unknown {
                let prior = parameter
                    .row()
                    .prior
                    .expect("it is an unknown by its prior");
                let value = prior.at(parameter.get(&problem.scenario), z);
                parameter.hold(&mut scenario, value);
            }
        }
        let [takeoff_s, landing_s] = problem.times_s(z(Unknown::Takeoff), z(Unknown::Landing));
        Self {
            scenario,
            takeoff_s,
            landing_s,
            first_facing_rad: z(Unknown::FirstFacing),
            drift_rad: problem.drift_sigma_rad * z(Unknown::Drift),
            drift_share: problem.drift_sigma_share * z(Unknown::Drift),
            inertia_ratio_share: problem.ratio_sigma * z(Unknown::InertiaRatio),
            landing_offset_m: problem.landing_offset_sigma_m * z(Unknown::LandingOffset),
        }
    }

    pub fn hang_s(&self) -> f64 {
        self.landing_s - self.takeoff_s
    }
}

impl Candidate {
    /// Flies what a point stands for; what an earlier candidate has in common with it is not made again.
    pub fn fly(problem: &Problem, point: &Point, earlier: Option<&Self>) -> Self {
        let mut setting = Setting::of(problem, point);
        if let Some(same) = earlier.filter(|earlier| earlier.flies_like(&setting)) {
            setting.scenario.jump_height_m = same.setting.scenario.jump_height_m;
            return Self {
                setting,
                table: Arc::clone(&same.table),
                steps: Arc::clone(&same.steps),
                ..*same
            };
        }
        let body = earlier
            .filter(|earlier| earlier.has_body_of(&setting))
            .map(|earlier| earlier.body);
        let body = body
            .unwrap_or_else(|| with_ratio_off(&setting.scenario, setting.inertia_ratio_share).1);
        let tables = earlier.map(|earlier| &earlier.table);
        let (table, launch) = setting
            .scenario
            .tabulated_as(body, STEPS, tables.as_slice());
        let flown = FixedTimeFlight::of_plan(&table, setting.hang_s());
        let steps = flown.fly_in_steps(&table, &launch);
        let jump_height_m = height_for_m(&steps, &launch).unwrap_or(0.0);
        setting.scenario.jump_height_m = jump_height_m;
        let found = Launch {
            jump_height_m,
            ..launch
        };
        Self {
            setting,
            body,
            table,
            steps: steps.into(),
            faster_m_s: found.speed_m_s() - launch.speed_m_s(),
        }
    }

    /// Whether another setting's flight is this one: the heights are set by the hang time.
    fn flies_like(&self, setting: &Setting) -> bool {
        self.setting.hang_s() == setting.hang_s()
            && self.setting.inertia_ratio_share == setting.inertia_ratio_share
            && Scenario {
                jump_height_m: setting.scenario.jump_height_m,
                ..self.setting.scenario.clone()
            } == setting.scenario
    }

    fn has_body_of(&self, setting: &Setting) -> bool {
        let (one, other) = (&self.setting, setting);
        one.inertia_ratio_share == other.inertia_ratio_share
            && one.scenario.body_spec() == other.scenario.body_spec()
    }

    /// Whether a jump of that height can be set, and no foot meets the ice before its end.
    pub fn is_admissible(&self) -> bool {
        let height_m = self.setting.scenario.jump_height_m;
        let between = &self.steps[1..self.steps.len() - 1];
        let over_ice = |step: &FlightSample| step.lowest_m + self.faster_m_s * step.t_s > -GRAZE_M;
        Parameter::JumpHeight.check(height_m).is_ok() && between.iter().all(over_ice)
    }

    pub const fn body(&self) -> BodySpec {
        self.body
    }

    /// Turned since take-off at a time of the attempt's clock, rad, in the turning direction. Before
    /// take-off and after landing the body is taken to turn on as it does there.
    pub fn turned_rad(&self, t_s: f64) -> f64 {
        let (t_s, steps) = (t_s - self.setting.takeoff_s, &self.steps);
        let sign = self.setting.scenario.turning.sign();
        let last = &steps[steps.len() - 1];
        if t_s <= 0.0 {
            return sign * steps[0].spin_rad_s * t_s;
        }
        if t_s >= last.t_s {
            return last.turned_rad + sign * last.spin_rad_s * (t_s - last.t_s);
        }
        let after = steps.partition_point(|step| step.t_s <= t_s);
        let (from, to) = (&steps[after - 1], &steps[after]);
        // The cubic through both angles with both rates.
        let step_s = to.t_s - from.t_s;
        let x = (t_s - from.t_s) / step_s;
        let turned_rad = to.turned_rad - from.turned_rad;
        let [begin, end] = [from, to].map(|step| sign * step.spin_rad_s * step_s);
        let y = 1.0 - x;
        from.turned_rad + turned_rad * x * x * (3.0 - 2.0 * x) + x * y * (begin * y - end * x)
    }

    pub fn air_turns(&self) -> f64 {
        self.steps[self.steps.len() - 1].air_turns()
    }

    /// Turned as a camera or a sensor sees it, rad, anticlockwise positive, since the facing at take-off was 0.
    pub fn facing_rad(&self, t_s: f64) -> f64 {
        let setting = &self.setting;
        let turned_rad = setting.scenario.turning.sign() * self.turned_rad(t_s);
        let passed = (t_s - setting.takeoff_s) / setting.hang_s();
        setting.first_facing_rad
            + turned_rad * (1.0 + setting.drift_share)
            + setting.drift_rad * passed
    }

    /// How far in arms and legs are at a time of the attempt's clock.
    pub fn tucks(&self, t_s: f64) -> [f64; 2] {
        let plan = &self.table.plan;
        let open_s = FixedTimeFlight::of_plan(&self.table, self.setting.hang_s()).open_s;
        plan.tucks_at(t_s - self.setting.takeoff_s, open_s)
    }
}
