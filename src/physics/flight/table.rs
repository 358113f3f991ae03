//! Inertia and joint-motion momentum tabulated over a motion plan.
//!
//! The joint angles are prescribed, so these depend on the plan alone: computed once, a table
//! serves every take-off rate and jump height that is flown on the plan.

use std::sync::{Arc, OnceLock};

use crate::body::model::{Body, BodySpec};
use crate::dynamics::centroidal::CentroidalState;
use crate::dynamics::mass_properties::MassProperties;
use crate::dynamics::tree::Tree;
use crate::flight::sample_table::{BlendPhase, SampleTable, TableStates};
use crate::motion::plan::{Blend, Plan, PlanSpec};
pub use crate::motion::resolution::Resolution;

/// The tabulated plan. Opening times count from the beginning of the opening.
#[derive(Debug, Clone)]
pub struct PlanTable {
    pub body: Arc<Body>,
    pub tree: Arc<Tree>,
    pub plan: Plan,
    pub resolution: Resolution,
    /// From the first movement to the end of the closing; of what is led by hand, to the end of the last
    /// movement.
    pub closing: SampleTable,
    /// From the beginning of the opening to touch-down, if the closing is over by then.
    pub opening: Option<SampleTable>,
    /// The same with steps half as long, once a flight has asked for it.
    pub finer: OnceLock<Arc<PlanTable>>,
}

impl PlanTable {
    pub fn new(body: Body, plan: Plan, resolution: Resolution) -> Self {
        let tree = Arc::new(Tree::new(&body));
        Self::sharing(Arc::new(body), tree, plan, resolution, &[])
    }

    /// The table of a body and a plan; whatever earlier tables have in common with it is not made
    /// again.
    pub fn after(
        earlier: &[&Arc<Self>],
        body: BodySpec,
        plan: PlanSpec,
        resolution: Resolution,
    ) -> Arc<Self> {
        let of_body = |table: &&&Arc<Self>| table.body.spec == body;
        let same: Vec<&Self> = earlier
            .iter()
            .filter(of_body)
            .map(|table| &***table)
            .collect();
        if let Some(table) = earlier
            .iter()
            .filter(of_body)
            .find(|table| table.plan.spec == plan && table.resolution == resolution)
        {
            return Arc::clone(table);
        }
        let plan = Plan::new(plan);
        Arc::new(match same.first() {
            Some(first) => {
                let (body, tree) = (Arc::clone(&first.body), Arc::clone(&first.tree));
                Self::sharing(body, tree, plan, resolution, &same)
            }
            None => Self::new(Body::new(body), plan, resolution),
        })
    }

    /// What earlier tables of the same body have in common with this one is not made again.
    fn sharing(
        body: Arc<Body>,
        tree: Arc<Tree>,
        plan: Plan,
        resolution: Resolution,
        earlier: &[&Self],
    ) -> Self {
        if let Some(led) = &plan.spec.led {
            let [start_s, last_s] = led.span_s();
            let end_s = last_s + plan.settling_s();
            let steps = resolution.moving_steps(plan.shortest_blend_s(), end_s - start_s);
            let motion = plan.opening_at(f64::INFINITY);
            return Self {
                closing: SampleTable::of_motion(&tree, &motion, [start_s, end_s], steps),
                opening: None,
                body,
                tree,
                plan,
                resolution,
                finer: OnceLock::new(),
            };
        }
        let span = |blend, starts_s| {
            let phase = BlendPhase::of(&plan, blend, &resolution)?;
            let earlier = earlier.iter().filter_map(|table| table.phase(blend));
            Some(SampleTable {
                start_s: starts_s,
                unit_s: plan.blend_s(blend),
                step: phase.step(),
                states: phase.states(&tree, earlier),
            })
        };
        let closing = span(Blend::Closing, plan.spec.close_delay_s);
        let opening = span(Blend::Opening, plan.closed_s());
        Self {
            closing: closing.expect("there always is a closing"),
            opening,
            body,
            tree,
            plan,
            resolution,
            finer: OnceLock::new(),
        }
    }

    /// A blend on its own, if it has been tabulated as one.
    fn phase(&self, blend: Blend) -> Option<(BlendPhase<'_>, &Arc<TableStates>)> {
        if self.plan.spec.led.is_some() {
            return None;
        }
        let span = match blend {
            Blend::Closing => Some(&self.closing),
            Blend::Opening => self.opening.as_ref(),
        };
        let phase = BlendPhase::of(&self.plan, blend, &self.resolution)?;
        span.map(|span| (phase, &span.states))
    }

    /// The same with steps half as long.
    pub fn finer(&self) -> Arc<Self> {
        let make = || {
            Arc::new(Self::sharing(
                Arc::clone(&self.body),
                Arc::clone(&self.tree),
                self.plan.clone(),
                self.resolution.halved(),
                &[],
            ))
        };
        Arc::clone(self.finer.get_or_init(make))
    }

    /// The posture in which the ice is left.
    pub fn takeoff(&self) -> &MassProperties {
        self.closing.first()
    }

    /// The air position, held from the end of the closing to the beginning of the opening; of what is led by
    /// hand, the last one.
    pub fn air(&self) -> &MassProperties {
        self.closing.last()
    }

    /// A span in which closing and opening run together; depends on when the opening begins.
    pub fn overlapping(&self, open_s: f64, start_s: f64, end_s: f64) -> SampleTable {
        let steps = self
            .resolution
            .moving_steps(self.plan.shortest_blend_s(), end_s - start_s);
        SampleTable::of_motion(
            &self.tree,
            &self.plan.opening_at(open_s),
            [start_s, end_s],
            steps,
        )
    }

    /// No flight to `end_s` has more samples.
    pub fn most_samples(&self, end_s: f64) -> usize {
        let opening = self
            .opening
            .as_ref()
            .map_or(0, |span| span.properties().len());
        let overlapping = self
            .resolution
            .moving_steps(self.plan.shortest_blend_s(), end_s);
        let apart = self.closing.properties().len() + opening + self.resolution.plain_steps(end_s);
        apart.max(overlapping) + 4
    }

    /// How many postures were evaluated for it.
    #[cfg(feature = "verification")]
    pub fn postures(&self) -> usize {
        self.closing.postures() + self.opening.as_ref().map_or(0, SampleTable::postures)
    }

    /// One state, computed afresh.
    pub fn state_at(&self, t_s: f64, open_s: f64) -> CentroidalState {
        let (posture, rates) = self.plan.at(t_s, open_s);
        CentroidalState::new(&self.tree, &posture, &rates)
    }
}
