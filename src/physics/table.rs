//! Inertia and joint-motion momentum tabulated over a motion plan.
//!
//! The joint angles are prescribed, so these depend on the plan alone: computed once, a table
//! serves every take-off rate and jump height that is flown on the plan.

use std::sync::{Arc, OnceLock};

use super::body::Body;
use super::momentum::{MassState, inertia_and_momentum};
use super::plan::Plan;
use super::stance::{RateLaw, Stance};
use super::tree::Tree;

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
        longest_step_s: 0.008,
        steps_per_blend: 28,
    };

    /// The same with steps half as long.
    pub fn halved(self) -> Self {
        Self {
            longest_step_s: 0.5 * self.longest_step_s,
            steps_per_blend: 2 * self.steps_per_blend,
        }
    }

    /// Steps of a span in which joints move: as many as keep a blend of `blend_s` well resolved.
    fn moving_steps(&self, blend_s: f64, span_s: f64) -> usize {
        let blend = self.steps_per_blend.max(self.plain_steps(blend_s));
        let per_blend = span_s / blend_s * blend as f64;
        self.plain_steps(span_s)
            .max(libm::ceil(per_blend) as usize)
            .max(1)
    }

    /// Steps of a span in which no joint moves.
    pub fn plain_steps(&self, span_s: f64) -> usize {
        libm::ceil(span_s / self.longest_step_s) as usize
    }
}

/// A span in which joints move, in even steps.
#[derive(Debug, Clone)]
pub struct Tape {
    pub start_s: f64,
    pub step_s: f64,
    /// At the start and after every step: one more than there are steps.
    pub stances: Vec<Stance>,
    /// In the middle of every step.
    pub middles: Vec<RateLaw>,
}

impl Tape {
    /// The laws at the start and in the middle of every step, and the stance at its end.
    pub fn steps(&self) -> impl ExactSizeIterator<Item = (&RateLaw, &RateLaw, &Stance)> {
        let ends = self.stances.windows(2);
        ends.zip(&self.middles)
            .map(|(ends, middle)| (&ends[0].law, middle, &ends[1]))
    }

    pub fn last(&self) -> &Stance {
        &self.stances[self.stances.len() - 1]
    }

    /// How many postures were evaluated for it.
    pub fn postures(&self) -> usize {
        self.stances.len() + self.middles.len()
    }
}

/// The tabulated plan. Opening times count from the beginning of the opening.
#[derive(Debug, Clone)]
pub struct PlanTable {
    pub body: Body,
    pub tree: Tree,
    pub plan: Plan,
    pub resolution: Resolution,
    /// From the first movement to the end of the closing.
    pub closing: Tape,
    /// From the beginning of the opening to touch-down, if the closing is over by then.
    pub opening: Option<Tape>,
    /// The same with steps half as long, once a flight has asked for it.
    pub finer: OnceLock<Arc<PlanTable>>,
}

/// An opening that never comes, for the closing on its own.
const NEVER_S: f64 = f64::INFINITY;

impl PlanTable {
    pub fn new(body: Body, plan: Plan, resolution: Resolution) -> Self {
        let tree = Tree::new(&body);
        let tape = |blend_s, open_s, start_s, end_s| {
            let steps = resolution.moving_steps(blend_s, end_s - start_s);
            tabulate(&tree, &plan, open_s, [start_s, end_s], steps)
        };
        let (spec, closed_s) = (&plan.spec, plan.closed_s());
        let closing = tape(spec.close_time_s, NEVER_S, spec.close_delay_s, closed_s);
        let opening = (spec.open_lead_s > 0.0).then(|| {
            let end_s = closed_s + spec.open_lead_s;
            tape(spec.open_time_s, closed_s, closed_s, end_s)
        });
        Self {
            body,
            tree,
            plan,
            resolution,
            closing,
            opening,
            finer: OnceLock::new(),
        }
    }

    /// The same with steps half as long.
    pub fn finer(&self) -> Arc<Self> {
        let make = || {
            Arc::new(Self::new(
                self.body.clone(),
                self.plan.clone(),
                self.resolution.halved(),
            ))
        };
        Arc::clone(self.finer.get_or_init(make))
    }

    /// The posture in which the ice is left.
    pub fn takeoff(&self) -> &Stance {
        &self.closing.stances[0]
    }

    /// The air position, held from the end of the closing to the beginning of the opening.
    pub fn air(&self) -> &Stance {
        self.closing.last()
    }

    /// A span in which closing and opening run together; depends on when the opening begins.
    pub fn overlapping(&self, open_s: f64, start_s: f64, end_s: f64) -> Tape {
        let steps = self
            .resolution
            .moving_steps(self.plan.shortest_blend_s(), end_s - start_s);
        tabulate(&self.tree, &self.plan, open_s, [start_s, end_s], steps)
    }

    /// No flight to `end_s` has more moments.
    pub fn most_moments(&self, end_s: f64) -> usize {
        let opening = self.opening.as_ref().map_or(0, |tape| tape.stances.len());
        let overlapping = self
            .resolution
            .moving_steps(self.plan.shortest_blend_s(), end_s);
        let apart = self.closing.stances.len() + opening + self.resolution.plain_steps(end_s);
        apart.max(overlapping) + 4
    }

    /// How many postures were evaluated for it.
    pub fn postures(&self) -> usize {
        self.closing.postures() + self.opening.as_ref().map_or(0, Tape::postures)
    }

    /// One state, computed afresh.
    pub fn state_at(&self, t_s: f64, open_s: f64) -> MassState {
        let (posture, rates) = self.plan.at(t_s, open_s);
        MassState::new(&self.tree, &posture, &rates)
    }
}

/// Tabulates a span for an opening that begins at `open_s`.
fn tabulate(tree: &Tree, plan: &Plan, open_s: f64, span_s: [f64; 2], steps: usize) -> Tape {
    let [start_s, end_s] = span_s;
    let step_s = (end_s - start_s) / steps as f64;
    let at = |i: usize, part: f64| plan.at(start_s + step_s * (i as f64 + part), open_s);
    let stance = |i| {
        let moving = at(i, 0.0);
        MassState::new(tree, &moving.0, &moving.1).into()
    };
    let middle = |i| {
        let moving = at(i, 0.5);
        let (inertia, momentum) = inertia_and_momentum(tree, &moving.0, &moving.1);
        RateLaw::new(inertia, momentum)
    };
    Tape {
        start_s,
        step_s,
        stances: (0..=steps).map(stance).collect(),
        middles: (0..steps).map(middle).collect(),
    }
}
