//! A span in which joints move, tabulated in even steps.
//!
//! A blend on its own is the same whatever time it takes, when that time is its unit: only the
//! angular momentum counts differently. And what arms and trunk do to the body's masses does not
//! depend on the legs. So plans that differ in times or in one tuck share what they have in common.

use std::ops::Range;
use std::sync::Arc;

use crate::body::posture::{JointRates, Posture, STILL};
use crate::dynamics::centroidal::{CentroidalState, inertia_and_momentum};
use crate::dynamics::composite::Composite;
use crate::dynamics::mass_properties::{MassProperties, RateFromMomentum};
use crate::dynamics::tree::{HalfBody, LOWER, Tree, UPPER};
use crate::motion::joint_motion::JointMotion;
use crate::motion::plan::{Blend, Plan};
use crate::motion::resolution::Resolution;

/// A span in which joints move.
#[derive(Debug, Clone)]
pub struct SampleTable {
    pub start_s: f64,
    /// The unit of time in which all rates count, s.
    pub unit_s: f64,
    /// Of one step, in that unit.
    pub step: f64,
    pub states: Arc<TableStates>,
}

/// What is tabulated at even steps. Rates, momenta and energies count in the table's unit of time.
#[derive(Debug, Clone)]
pub struct TableStates {
    /// At the start and after every step: one more than there are steps.
    pub properties: Vec<MassProperties>,
    /// In the middle of every step.
    pub middles: Vec<RateFromMomentum>,
    /// Those of one blend alone are made of these.
    pub halves: Option<HalfBodies>,
}

/// Both halves of a body in one blend alone.
#[derive(Debug, Clone)]
pub struct HalfBodies {
    upper: Arc<HalfBodySamples<1>>,
    lower: Arc<HalfBodySamples<2>>,
}

/// One half of a body at even steps.
#[derive(Debug)]
struct HalfBodySamples<const N: usize> {
    ends: Vec<HalfBody<N>>,
    middles: Vec<Composite<f64>>,
}

/// One blend on its own, in even steps, in units of the time that it takes.
#[derive(Debug, Clone, Copy)]
pub struct BlendPhase<'a> {
    plan: &'a Plan,
    blend: Blend,
    /// How long it is followed.
    span: f64,
    steps: usize,
}

impl SampleTable {
    /// A span of a motion, in seconds.
    pub fn of_motion(
        tree: &Tree,
        motion: &impl JointMotion,
        [start_s, end_s]: [f64; 2],
        steps: usize,
    ) -> Self {
        let step = (end_s - start_s) / steps as f64;
        let at = |i: usize, part: f64| motion.at(start_s + step * (i as f64 + part));
        let properties = |i| {
            let moving = at(i, 0.0);
            CentroidalState::new(tree, &moving.0, &moving.1).into()
        };
        let middle = |i| {
            let moving = at(i, 0.5);
            let (inertia, momentum) = inertia_and_momentum(tree, &moving.0, &moving.1);
            RateFromMomentum::new(inertia, momentum)
        };
        Self {
            start_s,
            unit_s: 1.0,
            step,
            states: Arc::new(TableStates {
                properties: (0..=steps).map(properties).collect(),
                middles: (0..steps).map(middle).collect(),
                halves: None,
            }),
        }
    }

    /// The rates at the start and in the middle of every step, and the mass properties at its end.
    pub fn steps(
        &self,
    ) -> impl ExactSizeIterator<Item = (&RateFromMomentum, &RateFromMomentum, &MassProperties)>
    {
        let ends = self.properties().windows(2);
        ends.zip(&self.states.middles)
            .map(|(ends, middle)| (&ends[0].rate_from_momentum, middle, &ends[1]))
    }

    /// When it ends, s.
    pub fn end_s(&self) -> f64 {
        let steps = self.states.middles.len();
        self.start_s + self.step * self.unit_s * steps as f64
    }

    pub fn properties(&self) -> &[MassProperties] {
        &self.states.properties
    }

    pub fn first(&self) -> &MassProperties {
        &self.properties()[0]
    }

    pub fn last(&self) -> &MassProperties {
        &self.properties()[self.properties().len() - 1]
    }

    /// How many postures were evaluated for it.
    #[cfg(feature = "verification")]
    pub fn postures(&self) -> usize {
        self.properties().len() + self.states.middles.len()
    }
}

impl<'a> BlendPhase<'a> {
    /// A blend of a plan; none where it never begins.
    pub fn of(plan: &'a Plan, blend: Blend, resolution: &Resolution) -> Option<Self> {
        let blend_s = plan.blend_s(blend);
        let span = plan.span(blend);
        (span > 0.0).then(|| Self {
            plan,
            blend,
            span,
            steps: resolution.moving_steps(blend_s, span * blend_s),
        })
    }

    pub fn step(&self) -> f64 {
        self.span / self.steps as f64
    }

    /// Whether a half of the body moves as in another phase.
    fn moves_like(&self, other: &Self, segments: Range<usize>) -> bool {
        self.blend == other.blend
            && self.span == other.span
            && self.steps == other.steps
            && self.plan.moves_like(other.plan, self.blend, segments)
    }

    /// Its states; what earlier phases of the same body have in common with it is not made again.
    pub fn states<'b>(
        &self,
        tree: &Tree,
        earlier: impl Iterator<Item = (BlendPhase<'b>, &'b Arc<TableStates>)>,
    ) -> Arc<TableStates> {
        let (mut upper, mut lower) = (None, None);
        for (phase, states) in earlier {
            let Some(halves) = &states.halves else {
                continue;
            };
            let same = [UPPER, LOWER].map(|half| self.moves_like(&phase, half));
            if same == [true, true] {
                return Arc::clone(states);
            }
            if same[0] {
                upper = Some(Arc::clone(&halves.upper));
            }
            if same[1] {
                lower = Some(Arc::clone(&halves.lower));
            }
        }
        let upper = upper.unwrap_or_else(|| self.samples(UPPER, tree, Tree::upper));
        let lower = lower.unwrap_or_else(|| self.samples(LOWER, tree, Tree::lower));
        Arc::new(TableStates::of(HalfBodies { upper, lower }))
    }

    fn samples<const N: usize>(
        &self,
        segments: Range<usize>,
        tree: &Tree,
        half: impl Fn(&Tree, &Posture, &JointRates) -> HalfBody<N>,
    ) -> Arc<HalfBodySamples<N>> {
        let mut samples = HalfBodySamples {
            ends: Vec::with_capacity(self.steps + 1),
            middles: Vec::with_capacity(self.steps),
        };
        let mut moving = (Posture::STANDING, STILL);
        for i in 0..=2 * self.steps {
            let x = 0.5 * self.step() * i as f64;
            self.plan
                .set_joints_in_blend(self.blend, x, segments.clone(), &mut moving);
            let (posture, rates) = &moving;
            if i % 2 == 0 {
                samples.ends.push(half(tree, posture, rates));
            } else {
                samples.middles.push(half(tree, posture, rates).sums);
            }
        }
        Arc::new(samples)
    }
}

impl TableStates {
    fn of(halves: HalfBodies) -> Self {
        let HalfBodies { upper, lower } = &halves;
        let ends = upper.ends.iter().zip(&lower.ends);
        let middles = upper.middles.iter().zip(&lower.middles);
        Self {
            properties: ends
                .map(|(upper, lower)| CentroidalState::of(upper, lower).into())
                .collect(),
            middles: middles
                .map(|(&upper, &lower)| {
                    let (_, inertia, momentum) = (upper + lower).about_cm();
                    RateFromMomentum::new(inertia.into(), momentum.into())
                })
                .collect(),
            halves: Some(halves),
        }
    }
}
