//! A span in which joints move, tabulated in even steps.
//!
//! A blend on its own is the same whatever time it takes, when that time is its unit: only the
//! angular momentum counts differently. And what arms and trunk do to the body's masses does not
//! depend on the legs. So plans that differ in times or in one tuck share what they have in common.

use std::ops::Range;
use std::sync::Arc;

use super::composite::Composite;
use super::momentum::{MassState, inertia_and_momentum};
use super::plan::{Blend, Plan};
use super::posture::{JointRates, Posture, STILL};
use super::stance::{RateLaw, Stance};
use super::table::Resolution;
use super::tree::{Half, LOWER, Tree, UPPER};

/// A span in which joints move.
#[derive(Debug, Clone)]
pub struct Tape {
    pub start_s: f64,
    /// The unit of time in which joints, stances and laws move, s.
    pub unit_s: f64,
    /// Of one step, in that unit.
    pub step: f64,
    pub states: Arc<States>,
}

/// What is tabulated at even steps. Rates, momenta and energies count in the tape's unit of time.
#[derive(Debug, Clone)]
pub struct States {
    /// At the start and after every step: one more than there are steps.
    pub stances: Vec<Stance>,
    /// In the middle of every step.
    pub middles: Vec<RateLaw>,
    /// Those of one blend alone are made of these.
    pub halves: Option<Halves>,
}

/// Both halves of a body in one blend alone.
#[derive(Debug, Clone)]
pub struct Halves {
    upper: Arc<Strip<1>>,
    lower: Arc<Strip<2>>,
}

/// One half of a body at even steps.
#[derive(Debug)]
struct Strip<const N: usize> {
    ends: Vec<Half<N>>,
    middles: Vec<Composite<f64>>,
}

/// One blend on its own, in even steps, in units of the time that it takes.
#[derive(Debug, Clone, Copy)]
pub struct Stroke<'a> {
    plan: &'a Plan,
    blend: Blend,
    /// How long it is followed.
    span: f64,
    steps: usize,
}

impl Tape {
    /// A span of a plan for an opening that begins at `open_s`, in seconds.
    pub fn of_plan(
        tree: &Tree,
        plan: &Plan,
        open_s: f64,
        [start_s, end_s]: [f64; 2],
        steps: usize,
    ) -> Self {
        let step = (end_s - start_s) / steps as f64;
        let at = |i: usize, part: f64| plan.at(start_s + step * (i as f64 + part), open_s);
        let stance = |i| {
            let moving = at(i, 0.0);
            MassState::new(tree, &moving.0, &moving.1).into()
        };
        let middle = |i| {
            let moving = at(i, 0.5);
            let (inertia, momentum) = inertia_and_momentum(tree, &moving.0, &moving.1);
            RateLaw::new(inertia, momentum)
        };
        Self {
            start_s,
            unit_s: 1.0,
            step,
            states: Arc::new(States {
                stances: (0..=steps).map(stance).collect(),
                middles: (0..steps).map(middle).collect(),
                halves: None,
            }),
        }
    }

    /// The laws at the start and in the middle of every step, and the stance at its end.
    pub fn steps(&self) -> impl ExactSizeIterator<Item = (&RateLaw, &RateLaw, &Stance)> {
        let ends = self.stances().windows(2);
        ends.zip(&self.states.middles)
            .map(|(ends, middle)| (&ends[0].law, middle, &ends[1]))
    }

    pub fn stances(&self) -> &[Stance] {
        &self.states.stances
    }

    pub fn first(&self) -> &Stance {
        &self.stances()[0]
    }

    pub fn last(&self) -> &Stance {
        &self.stances()[self.stances().len() - 1]
    }

    /// How many postures were evaluated for it.
    pub fn postures(&self) -> usize {
        self.stances().len() + self.states.middles.len()
    }
}

impl<'a> Stroke<'a> {
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

    /// Whether a half of the body moves as in another stroke.
    fn is_alike(&self, other: &Self, segments: Range<usize>) -> bool {
        self.blend == other.blend
            && self.span == other.span
            && self.steps == other.steps
            && self.plan.is_alike(other.plan, self.blend, segments)
    }

    /// Its states; what earlier strokes of the same body have in common with it is not made again.
    pub fn states<'b>(
        &self,
        tree: &Tree,
        earlier: impl Iterator<Item = (Stroke<'b>, &'b Arc<States>)>,
    ) -> Arc<States> {
        let (mut upper, mut lower) = (None, None);
        for (stroke, states) in earlier {
            let Some(halves) = &states.halves else {
                continue;
            };
            let same = [UPPER, LOWER].map(|half| self.is_alike(&stroke, half));
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
        let upper = upper.unwrap_or_else(|| self.strip(UPPER, tree, Tree::upper));
        let lower = lower.unwrap_or_else(|| self.strip(LOWER, tree, Tree::lower));
        Arc::new(States::of(Halves { upper, lower }))
    }

    fn strip<const N: usize>(
        &self,
        segments: Range<usize>,
        tree: &Tree,
        half: impl Fn(&Tree, &Posture, &JointRates) -> Half<N>,
    ) -> Arc<Strip<N>> {
        let mut strip = Strip {
            ends: Vec::with_capacity(self.steps + 1),
            middles: Vec::with_capacity(self.steps),
        };
        let mut moving = (Posture::STANDING, STILL);
        for i in 0..=2 * self.steps {
            let x = 0.5 * self.step() * i as f64;
            self.plan
                .put_in(self.blend, x, segments.clone(), &mut moving);
            let (posture, rates) = &moving;
            if i % 2 == 0 {
                strip.ends.push(half(tree, posture, rates));
            } else {
                strip.middles.push(half(tree, posture, rates).sums);
            }
        }
        Arc::new(strip)
    }
}

impl States {
    fn of(halves: Halves) -> Self {
        let Halves { upper, lower } = &halves;
        let ends = upper.ends.iter().zip(&lower.ends);
        let middles = upper.middles.iter().zip(&lower.middles);
        Self {
            stances: ends
                .map(|(upper, lower)| MassState::of(upper, lower).into())
                .collect(),
            middles: middles
                .map(|(&upper, &lower)| {
                    let (_, inertia, momentum) = (upper + lower).about_cm();
                    RateLaw::new(inertia.into(), momentum.into())
                })
                .collect(),
            halves: Some(halves),
        }
    }
}
