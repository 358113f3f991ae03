//! What would win the missing turns: each lever alone, the others held.

use serde::Serialize;

use crate::caution::{self, Caution};
use crate::judge::Judge;
use crate::lever::{Lever, Season};
use crate::limits::{Judgement, Limits};
use crate::search::{crossing, peak};
use turns_aloft_physics::order::by_number;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::beyond::Respect;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::parameter::Parameter;

/// Fewest and most turns in all that can be asked for; our choice.
pub const GOAL_TURNS: [f64; 2] = [0.5, 10.0];

/// A proposal, set and flown, has the wanted turns to within this.
pub const MET_TURNS: f64 = 1e-3;

/// A jump that misses less than half a degree of the wanted turns has them: no degree is shown as missing.
pub const HAS_THEM_TURNS: f64 = 0.5 / 360.0;

/// Parts in which a lever's range is searched for the wanted turns.
const PARTS: usize = 40;

/// What is asked: this jump with so many turns in all.
#[derive(Debug)]
pub struct Goal<'a> {
    pub scenario: &'a Scenario,
    /// The scenario, flown.
    pub now: &'a Jump,
    pub goal_turns: f64,
    pub limits: &'a Limits,
    pub season: &'a Season,
}

/// A change that gives the wanted turns, and what is to be known of it.
#[derive(Debug, Clone, PartialEq)]
pub struct Proposal {
    /// In the lever's own unit.
    pub value: f64,
    pub change: f64,
    /// Turns in all, flown with the change.
    pub turns: f64,
    /// Time in the air with the change, s.
    pub hang_time_s: f64,
    /// Estimate, lowest and highest, in body weights.
    pub landing_load_bw: [f64; 2],
    /// In which respects the jump with the change is beyond what has been seen.
    pub beyond_seen: Vec<Respect>,
    pub cautions: Vec<Caution>,
}

/// What a number does over all its admissible range, where that is not enough.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Proof {
    /// The range's ends, in its own unit, and the turns there.
    pub range: [f64; 2],
    pub turns_at_ends: [f64; 2],
    pub most_turns: f64,
    pub most_turns_at: f64,
}

/// The answer for one lever.
#[derive(Debug, Clone, PartialEq)]
pub struct Single {
    pub lever: Lever,
    /// In the lever's own unit.
    pub now: f64,
    pub judgement: Judgement,
    pub proposal: Option<Proposal>,
    pub proof: Option<Proof>,
}

impl Single {
    /// The jump as it is, which is enough.
    fn already(lever: Lever, goal: &Goal<'_>) -> Self {
        let now = lever.value(goal.scenario);
        Self {
            lever,
            now,
            judgement: Judgement::ALREADY,
            proposal: Some(Proposal {
                value: now,
                change: 0.0,
                turns: goal.now.turns,
                hang_time_s: goal.now.readout.hang_time_s,
                landing_load_bw: goal.now.readout.landing_load_bw,
                beyond_seen: goal.scenario.beyond_seen(goal.now),
                cautions: Vec::new(),
            }),
            proof: None,
        }
    }
}

impl<'a> Goal<'a> {
    pub fn new(
        scenario: &'a Scenario,
        now: &'a Jump,
        goal_turns: f64,
        limits: &'a Limits,
        season: &'a Season,
    ) -> Self {
        Self {
            scenario,
            now,
            goal_turns,
            limits,
            season,
        }
    }

    /// Whether the jump has the wanted turns as it is.
    pub fn reached(&self) -> bool {
        self.now.turns > self.goal_turns - HAS_THEM_TURNS
    }

    pub(super) const fn judge(&self) -> Judge<'a> {
        Judge {
            scenario: self.scenario,
            now: self.now,
            limits: self.limits,
            season: self.season,
        }
    }

    pub(super) fn fly(&self, scenario: &Scenario) -> Jump {
        scenario.fly_after(Some(self.now))
    }

    /// Turns that are more than wanted.
    pub(super) fn over(&self, scenario: &Scenario) -> f64 {
        self.fly(scenario).turns - self.goal_turns
    }

    /// Every lever by itself.
    pub fn singles(&self) -> Vec<Single> {
        Lever::ALL.map(|lever| self.single(lever)).into()
    }

    /// The value of one lever nearest to the present one that gives the wanted turns.
    pub fn single(&self, lever: Lever) -> Single {
        if self.reached() {
            return Single::already(lever, self);
        }
        if !self.scenario.has_part(lever.parameter()) {
            return Single {
                judgement: Judgement::NO_PART,
                proposal: None,
                ..Single::already(lever, self)
            };
        }
        let now = lever.value(self.scenario);
        let turns = |value: f64| self.fly(&lever.at(self.scenario, value)).turns;
        let single = Single::already(lever, self);
        let value = match self.nearest(lever.parameter(), (now, self.now.turns), turns) {
            Ok(value) => value,
            Err(proof) => {
                return Single {
                    judgement: Judgement::cannot(lever),
                    proposal: None,
                    proof: Some(proof),
                    ..single
                };
            }
        };
        let then = lever.at(self.scenario, value);
        let jump = self.fly(&then);
        Single {
            judgement: self.judge().judge_all(&[lever], &then, &jump),
            proposal: Some(Proposal {
                value,
                change: value - now,
                turns: jump.turns,
                hang_time_s: jump.readout.hang_time_s,
                landing_load_bw: jump.readout.landing_load_bw,
                beyond_seen: then.beyond_seen(&jump),
                cautions: caution::of(self.scenario, &then),
            }),
            ..single
        }
    }

    /// The value of a number nearest to where it starts that gives the wanted turns, or what it does
    /// over all its admissible range. `from` is where it starts, and the turns there, too few.
    pub(super) fn nearest(
        &self,
        parameter: Parameter,
        from: (f64, f64),
        turns: impl Fn(f64) -> f64,
    ) -> Result<f64, Proof> {
        let over = |turns: f64| turns - self.goal_turns;
        let nodes = self.nodes(parameter, from, &turns);
        nodes
            .windows(2)
            .filter(|ends| over(ends[0].1) * over(ends[1].1) <= 0.0)
            .filter_map(|ends| crossing(ends[0].0, ends[1].0, |value| over(turns(value))))
            // A step in the turns is no way to meet the target.
            .filter(|(_, over)| over.abs() < MET_TURNS)
            .map(|(value, _)| value)
            .min_by(|a, b| (a - from.0).abs().total_cmp(&(b - from.0).abs()))
            .ok_or_else(|| Proof::of(&nodes))
    }

    /// The ends of the range's equal parts, where the search starts, and every peak below the target
    /// that lies between them: value, and turns there.
    fn nodes(
        &self,
        parameter: Parameter,
        from: (f64, f64),
        turns: impl Fn(f64) -> f64,
    ) -> Vec<(f64, f64)> {
        let [least, most] = parameter.row().range;
        let nodes = (0..=PARTS)
            .map(|i| least + (most - least) * i as f64 / PARTS as f64)
            .filter(|&value| value != from.0)
            .map(|value| (value, turns(value)))
            .chain([from])
            .collect();
        let mut nodes = by_number(nodes, |node: &(f64, f64)| node.0);
        let peaks: Vec<(f64, f64)> = nodes
            .windows(3)
            .filter(|three| three[1].1 < self.goal_turns)
            .filter(|three| three[1].1 > three[0].1 && three[1].1 > three[2].1)
            .map(|three| peak(three[0].0, three[2].0, &turns))
            .collect();
        nodes.extend(peaks);
        by_number(nodes, |node| node.0)
    }
}

impl Proof {
    fn of(nodes: &[(f64, f64)]) -> Self {
        let ends = [nodes[0], nodes[nodes.len() - 1]];
        let top = nodes
            .iter()
            .copied()
            .fold(ends[0], |top, node| if node.1 > top.1 { node } else { top });
        Self {
            range: ends.map(|end| end.0),
            turns_at_ends: ends.map(|end| end.1),
            most_turns: top.1,
            most_turns_at: top.0,
        }
    }
}
