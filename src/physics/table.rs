//! Inertia and joint-motion momentum tabulated over a motion plan.
//!
//! The joint angles are prescribed, so these depend on the plan alone: computed once, a table
//! serves every take-off rate and jump height that is flown on the plan.

use super::body::Body;
use super::momentum::MassState;
use super::plan::Plan;

/// How finely a flight is computed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Resolution {
    /// No step is longer than this, s.
    pub longest_step_s: f64,
    /// Every blend gets at least this many steps.
    pub steps_per_blend: usize,
}

impl Resolution {
    /// Halving these steps changes the turns of any admissible flight by less than 1e-5.
    pub const STANDARD: Self = Self {
        longest_step_s: 0.004,
        steps_per_blend: 24,
    };

    /// The same with steps half as long.
    pub fn halved(self) -> Self {
        Self {
            longest_step_s: 0.5 * self.longest_step_s,
            steps_per_blend: 2 * self.steps_per_blend,
        }
    }

    fn steps(&self, blend_s: f64) -> usize {
        self.steps_per_blend.max(self.plain_steps(blend_s))
    }

    /// Steps of a span in which no joint moves.
    pub fn plain_steps(&self, span_s: f64) -> usize {
        libm::ceil(span_s / self.longest_step_s).max(1.0) as usize
    }
}

/// Mass states on an even grid over a span in which joints move: three a step, the middle ones
/// shared by nobody, the ends by neighbours.
#[derive(Debug, Clone)]
pub struct Tape {
    pub start_s: f64,
    pub step_s: f64,
    /// `2 n + 1` states for `n` steps.
    pub states: Vec<MassState>,
}

impl Tape {
    /// Tabulates `[start_s, end_s]` for an opening that begins at `open_s`.
    fn new(
        body: &Body,
        plan: &Plan,
        open_s: f64,
        start_s: f64,
        end_s: f64,
        resolution: &Resolution,
    ) -> Self {
        let spec = &plan.spec;
        let shortest = spec.close_time_s.min(spec.open_time_s);
        let span_s = end_s - start_s;
        // As many steps as keep the finest blend inside the span well resolved.
        let per_blend = span_s / shortest * resolution.steps(shortest) as f64;
        let steps = resolution
            .plain_steps(span_s)
            .max(libm::ceil(per_blend) as usize)
            .max(1);
        let step_s = span_s / steps as f64;
        let states = (0..=2 * steps)
            .map(|i| {
                let t_s = start_s + 0.5 * step_s * i as f64;
                let (posture, rates) = plan.at(t_s, open_s);
                MassState::new(body, &posture, &rates)
            })
            .collect();
        Self {
            start_s,
            step_s,
            states,
        }
    }

    /// The states at the start, the middle and the end of every step.
    pub fn steps(&self) -> impl Iterator<Item = [&MassState; 3]> {
        self.states
            .windows(3)
            .step_by(2)
            .map(|states| [&states[0], &states[1], &states[2]])
    }
}

/// The tabulated plan. Opening times count from the beginning of the opening.
#[derive(Debug, Clone)]
pub struct PlanTable {
    pub body: Body,
    pub plan: Plan,
    pub resolution: Resolution,
    /// From the first movement to the end of the closing.
    pub closing: Tape,
    /// From the beginning of the opening to touch-down, if the closing is over by then.
    pub opening: Option<Tape>,
}

impl PlanTable {
    pub fn new(body: Body, plan: Plan, resolution: Resolution) -> Self {
        // An opening that never comes, for the closing on its own.
        let never_s = f64::INFINITY;
        let closing = Tape::new(
            &body,
            &plan,
            never_s,
            plan.spec.close_delay_s,
            plan.closed_s(),
            &resolution,
        );
        let opening = (plan.spec.open_lead_s > 0.0).then(|| {
            let open_s = plan.closed_s();
            Tape::new(
                &body,
                &plan,
                open_s,
                open_s,
                open_s + plan.spec.open_lead_s,
                &resolution,
            )
        });
        Self {
            body,
            plan,
            resolution,
            closing,
            opening,
        }
    }

    /// The same with steps half as long.
    pub fn finer(&self) -> Self {
        Self::new(
            self.body.clone(),
            self.plan.clone(),
            self.resolution.halved(),
        )
    }

    /// The posture in which the ice is left.
    pub fn takeoff(&self) -> &MassState {
        &self.closing.states[0]
    }

    /// The air position, held from the end of the closing to the beginning of the opening.
    pub fn air(&self) -> &MassState {
        &self.closing.states[self.closing.states.len() - 1]
    }

    /// A span in which closing and opening run together; depends on when the opening begins.
    pub fn overlapping(&self, open_s: f64, start_s: f64, end_s: f64) -> Tape {
        Tape::new(
            &self.body,
            &self.plan,
            open_s,
            start_s,
            end_s,
            &self.resolution,
        )
    }

    /// One state, computed afresh.
    pub fn state_at(&self, t_s: f64, open_s: f64) -> MassState {
        let (posture, rates) = self.plan.at(t_s, open_s);
        MassState::new(&self.body, &posture, &rates)
    }
}
