//! The smallest joint change: the mix of levers that wins the missing turns with the least effort.
//!
//! Each change is counted in units of what a season's training might bring; the effort is the root
//! of the sum of their squares. Steps of sequential quadratic programming on real flights: the turns
//! are taken as straight in the changes, the least change that meets the target then is found exactly
//! (a scaled gradient, cut off at the limits), and is scaled until its own flight meets the target.
//! Only less effort is accepted, so the answer is never worse than the best lever alone. The search
//! goes on step by step, so that whoever shows its answer need not wait for it in one piece.

use crate::caution::{self, Caution};
use crate::goal::{Goal, MET_TURNS, Single};
use crate::lever::Lever;
use crate::limits::Judgement;
use crate::search::crossing;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::beyond::Respect;

/// Half the distance over which the turns' slope is taken, in seasons.
const SLOPE_SEASONS: f64 = 0.1;

/// Steps of the search, and halvings of one, before it is left.
const STEPS: usize = 30;
const HALVINGS: usize = 4;

/// A share of the effort that is not worth another step.
const WORTH: f64 = 1e-4;

/// What the mix changes of one lever.
#[derive(Debug, Clone, PartialEq)]
pub struct Change {
    pub lever: Lever,
    /// In the lever's own unit.
    pub now: f64,
    pub value: f64,
    pub change: f64,
    /// The change in seasons.
    pub seasons: f64,
    pub judgement: Judgement,
}

/// The smallest joint change.
#[derive(Debug, Clone, PartialEq)]
pub struct Combination {
    /// Levers that are held as they are have no row.
    pub changes: Vec<Change>,
    /// Root of the sum of the squares of the changes in seasons.
    pub effort_seasons: f64,
    /// The least effort of a single lever that is among those mixed.
    pub single_effort_seasons: Option<f64>,
    /// Whether the search came to rest: no step near it wins more than a ten-thousandth of the
    /// effort. If not, less effort may do; the turns are met all the same.
    pub settled: bool,
    /// Turns in all, flown with the changes.
    pub turns: f64,
    /// The worst of all, what comes of them together included.
    pub judgement: Judgement,
    /// Estimate, lowest and highest, in body weights.
    pub landing_load_bw: [f64; 2],
    /// In which respects the jump with the changes is beyond what has been seen.
    pub beyond_seen: Vec<Respect>,
    pub cautions: Vec<Caution>,
}

/// A lever in the mix, counted in seasons from the present value.
#[derive(Debug, Clone)]
struct Axis {
    lever: Lever,
    now: f64,
    unit: f64,
    /// From the admissible range, and the jumper's own limits where they are given; the present
    /// value is always inside.
    bounds: [f64; 2],
}

/// The changes, in seasons, axis by axis.
type Mix = Vec<f64>;

fn effort(mix: &[f64]) -> f64 {
    mix.iter().map(|u| u * u).sum::<f64>().sqrt()
}

/// The search for the smallest joint change, on its way. Always to be asked with the same question.
#[derive(Debug, Clone)]
pub struct CombinationSearch {
    axes: Vec<Axis>,
    /// Mixes that meet the target and are still to be improved, the next one last.
    starts: Vec<Mix>,
    /// The one that is being improved, and its steps so far.
    under_way: Option<(Mix, usize)>,
    /// The best so far, and whether the search came to rest there.
    best: Option<(Mix, bool)>,
    single_effort_seasons: Option<f64>,
}

impl CombinationSearch {
    /// `singles` are this question's answers for the single levers.
    pub fn new(goal: &Goal<'_>, singles: &[Single]) -> Self {
        let axes = Axis::all(goal);
        let nothing = vec![0.0; axes.len()];
        let search = Search { goal, axes: &axes };
        let (starts, best, single) = if goal.reached() {
            (Vec::new(), Some((nothing, true)), None)
        } else {
            let single = search.best_single(singles);
            let slope = search.slope(&nothing);
            let starts = [search.corner(&slope), search.along(&slope), single.clone()];
            (starts.into_iter().flatten().collect(), None, single)
        };
        Self {
            single_effort_seasons: single.map(|mix| effort(&mix)),
            starts,
            under_way: None,
            best,
            axes,
        }
    }

    /// Takes the next step; whether there was one.
    pub fn advance(&mut self, goal: &Goal<'_>) -> bool {
        let next = self.under_way.take();
        let Some((mix, steps)) = next.or_else(|| Some((self.starts.pop()?, 0))) else {
            return false;
        };
        let search = Search {
            goal,
            axes: &self.axes,
        };
        match search.better(&mix) {
            Some(better) if steps + 1 < STEPS => self.under_way = Some((better, steps + 1)),
            Some(better) => self.offer(better, false),
            None => self.offer(mix, true),
        }
        true
    }

    fn offer(&mut self, mix: Mix, settled: bool) {
        let better = |(best, _): &(Mix, bool)| effort(&mix) < effort(best);
        if self.best.as_ref().is_none_or(better) {
            self.best = Some((mix, settled));
        }
    }

    /// What has been found so far; none if no mix that has the wanted turns.
    pub fn answer(&self, goal: &Goal<'_>) -> Option<Combination> {
        let (best, settled) = self.best.as_ref()?;
        let search = Search {
            goal,
            axes: &self.axes,
        };
        Some(search.answer(best, *settled, self.single_effort_seasons))
    }
}

impl Goal<'_> {
    /// The smallest joint change found; none if no mix was found that has the wanted turns.
    /// `singles` are this question's answers for the single levers.
    pub fn combination(&self, singles: &[Single]) -> Option<Combination> {
        let mut search = CombinationSearch::new(self, singles);
        while search.advance(self) {}
        search.answer(self)
    }
}

impl Axis {
    /// Of every lever that is not held as it is and has a part in the jump.
    fn all(goal: &Goal<'_>) -> Vec<Self> {
        Lever::ALL
            .into_iter()
            .filter(|lever| goal.scenario.has_part(lever.parameter()))
            .filter_map(|lever| {
                let now = lever.value(goal.scenario);
                let unit = goal.season.unit(lever)?;
                let [least, most] = goal.limits.own(lever).unwrap_or(lever.range());
                let bounds = [least.min(now), most.max(now)].map(|end| (end - now) / unit);
                Some(Self {
                    lever,
                    now,
                    unit,
                    bounds,
                })
            })
            .collect()
    }
}

/// A question, and the levers in the mix.
struct Search<'a> {
    goal: &'a Goal<'a>,
    axes: &'a [Axis],
}

impl Search<'_> {
    fn scenario(&self, mix: &[f64]) -> Scenario {
        let start = self.goal.scenario.clone();
        self.axes
            .iter()
            .zip(mix)
            .fold(start, |scenario, (axis, u)| {
                axis.lever.at(&scenario, axis.now + axis.unit * u)
            })
    }

    fn over(&self, mix: &[f64]) -> f64 {
        self.goal.over(&self.scenario(mix))
    }

    fn held(&self, mix: impl IntoIterator<Item = f64>) -> Mix {
        let axes = self.axes.iter().zip(mix);
        axes.map(|(axis, u)| u.clamp(axis.bounds[0], axis.bounds[1]))
            .collect()
    }

    fn scaled(&self, mix: &[f64], by: f64) -> Mix {
        self.held(mix.iter().map(|u| by * u))
    }

    /// The single lever that does it with the least effort, inside the same bounds.
    fn best_single(&self, singles: &[Single]) -> Option<Mix> {
        let alone = |i: usize, axis: &Axis| {
            let single = singles.iter().find(|single| single.lever == axis.lever)?;
            let proposal = single.proposal.as_ref()?;
            let mut mix = vec![0.0; self.axes.len()];
            mix[i] = proposal.change / axis.unit;
            (self.held(mix.iter().copied()) == mix).then_some(mix)
        };
        let mixes = self.axes.iter().enumerate();
        mixes
            .filter_map(|(i, axis)| alone(i, axis))
            .min_by(|a, b| effort(a).total_cmp(&effort(b)))
    }

    /// Turns for a season of each lever, by central differences; one-sided at a bound.
    fn slope(&self, mix: &[f64]) -> Mix {
        let at = |i: usize, to: f64| {
            let mut other = mix.to_vec();
            other[i] = to;
            self.over(&other)
        };
        self.axes
            .iter()
            .enumerate()
            .map(|(i, axis)| {
                let [less, more] = [-SLOPE_SEASONS, SLOPE_SEASONS]
                    .map(|by| (mix[i] + by).clamp(axis.bounds[0], axis.bounds[1]));
                if less == more {
                    return 0.0;
                }
                (at(i, more) - at(i, less)) / (more - less)
            })
            .collect()
    }

    /// The least mix that meets the target if the turns are straight from `mix` on with this slope:
    /// a multiple of the slope, cut off at the bounds; all that the bounds give if that is too little.
    fn least(&self, mix: &[f64], over: f64, slope: &[f64]) -> Mix {
        let dot = |other: &[f64]| slope.iter().zip(other).map(|(g, u)| g * u).sum::<f64>();
        let goal = dot(mix) - over;
        let square = dot(slope);
        if square == 0.0 {
            return mix.to_vec();
        }
        let short = |by: f64| dot(&self.scaled(slope, by)) - goal;
        let mut by = goal.abs() / square;
        let all = dot(&self.all(slope));
        while short(by) < 0.0 && dot(&self.scaled(slope, by)) < all {
            by *= 2.0;
        }
        let by = crossing(0.0, by, short).map_or(by, |(by, _)| by);
        self.scaled(slope, by)
    }

    /// Every lever as far as it helps.
    fn all(&self, slope: &[f64]) -> Mix {
        let axes = self.axes.iter().zip(slope);
        axes.map(|(axis, g)| match g {
            g if *g > 0.0 => axis.bounds[1],
            g if *g < 0.0 => axis.bounds[0],
            _ => 0.0,
        })
        .collect()
    }

    /// A mix scaled until its own flight meets the target; none where no scale does.
    fn along(&self, mix: &[f64]) -> Option<Mix> {
        let over = |by: f64| self.over(&self.scaled(mix, by));
        let (mut near, mut far) = (0.0, 1.0);
        while over(far) < 0.0 {
            if self.scaled(mix, far) == self.scaled(mix, 2.0 * far) {
                return None;
            }
            (near, far) = (far, 2.0 * far);
        }
        let (by, over) = crossing(near, far, over)?;
        (over.abs() < MET_TURNS).then(|| self.scaled(mix, by))
    }

    /// The way to every lever as far as it helps: where the straight way fails, this one may not.
    fn corner(&self, slope: &[f64]) -> Option<Mix> {
        self.along(&self.all(slope))
    }

    /// From a mix that meets the target to one near it that does with less effort; none where none
    /// is worth it.
    fn better(&self, mix: &[f64]) -> Option<Mix> {
        let least = self.least(mix, self.over(mix), &self.slope(mix));
        let worth = (1.0 - WORTH) * effort(mix);
        (0..=HALVINGS).find_map(|halvings| {
            let share = 0.5_f64.powi(halvings as i32);
            let part = mix.iter().zip(&least).map(|(u, v)| u + share * (v - u));
            let met = self.along(&self.held(part))?;
            (effort(&met) < worth).then_some(met)
        })
    }

    fn answer(
        &self,
        mix: &[f64],
        settled: bool,
        single_effort_seasons: Option<f64>,
    ) -> Combination {
        let goal = self.goal;
        let then = self.scenario(mix);
        let jump = goal.fly(&then);
        let changed = |(axis, u): (&Axis, &f64)| (*u != 0.0).then_some(axis.lever);
        let changed: Vec<Lever> = self.axes.iter().zip(mix).filter_map(changed).collect();
        let change = |(axis, u): (&Axis, &f64)| {
            let lever = axis.lever;
            let value = lever.value(&then);
            Change {
                lever,
                now: axis.now,
                value,
                change: value - axis.now,
                seasons: *u,
                judgement: goal.judge().judge(lever, &then, &jump),
            }
        };
        Combination {
            changes: self.axes.iter().zip(mix).map(change).collect(),
            effort_seasons: effort(mix),
            single_effort_seasons,
            settled,
            turns: jump.turns,
            judgement: goal.judge().judge_all(&changed, &then, &jump),
            landing_load_bw: jump.readout.landing_load_bw,
            beyond_seen: then.beyond_seen(&jump),
            cautions: caution::of(goal.scenario, &then),
        }
    }
}
