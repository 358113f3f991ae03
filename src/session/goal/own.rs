//! This jumper's own limits and what a season may bring, as the user has set them.

use std::collections::BTreeMap;
use turns_aloft_describe::Sentence;

use serde::{Deserialize, Serialize};

use crate::Session;
use crate::goal::{GoalSettings, GoalTurns};
use crate::stepping::moved;
use turns_aloft_analysis::goal::GOAL_TURNS;
use turns_aloft_analysis::lever::{Lever, RefusedLever, Season};
use turns_aloft_analysis::limits::{LimitOf, Limits};
use turns_aloft_scenario::parameter::Parameter;

/// What survives a reload: the target, own limits and own seasons by key, in the lever's own unit.
#[derive(Debug, Clone, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SavedGoal {
    target: GoalTurns,
    limits: BTreeMap<String, [f64; 2]>,
    /// 0 holds the lever as it is.
    season: BTreeMap<String, f64>,
}

/// How far this jumper is taken to get with a lever.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LimitInUse {
    pub range: [f64; 2],
    pub own: bool,
}

impl GoalSettings {
    pub(crate) fn saved(&self) -> SavedGoal {
        let usual = Season::default();
        let mut saved = SavedGoal {
            target: self.target,
            limits: BTreeMap::new(),
            season: BTreeMap::new(),
        };
        for lever in Lever::ALL {
            if let Some(limits) = self.limits.own(lever) {
                saved.limits.insert(lever.key().to_owned(), limits);
            }
            let unit = self.season.unit(lever);
            if unit != usual.unit(lever) {
                let unit = unit.unwrap_or_default();
                saved.season.insert(lever.key().to_owned(), unit);
            }
        }
        saved
    }

    /// The saved goal, or why it is not admissible.
    pub(crate) fn restore(saved: &SavedGoal) -> Result<Self, String> {
        if let GoalTurns::Turns(turns) = saved.target
            && !(GOAL_TURNS[0]..=GOAL_TURNS[1]).contains(&turns)
        {
            return Err(format!("{turns} turns cannot be asked for"));
        }
        let mut goal = Self {
            target: saved.target,
            ..Self::default()
        };
        let refused = |why: RefusedLever| why.sentence();
        // The hand mass was a lever once: earlier visits may hold limits of it.
        let is_lever = |key: &str| key != Parameter::HandMass.key();
        for (key, own) in saved.limits.iter().filter(|(key, _)| is_lever(key)) {
            let lever = Lever::named(key).map_err(refused)?;
            goal.limits.set(lever, *own).map_err(refused)?;
        }
        for (key, unit) in saved.season.iter().filter(|(key, _)| is_lever(key)) {
            let lever = Lever::named(key).map_err(refused)?;
            goal.season.set(lever, *unit).map_err(refused)?;
        }
        Ok(goal)
    }

    /// Limits are one jumper's: another one has none yet.
    pub(crate) fn forget_limits(&mut self) {
        self.limits = Limits::default();
    }
}

impl Session {
    /// How far this jumper is taken to get with a lever; none where nothing is known.
    pub fn limit_of(&self, lever: Lever) -> Option<LimitInUse> {
        let limit = self.goal_settings.limits.limit_of(
            lever,
            &self.document.scenario,
            &self.goal_settings.season,
        )?;
        Some(LimitInUse {
            range: limit.range,
            own: limit.of == LimitOf::Jumper,
        })
    }

    /// Moves one end of a lever's own limits, 0 the lower and 1 the higher, by so many steps. The first
    /// time they start from what was taken for this jumper's reach, or from the jump as it is.
    pub fn step_limit(&mut self, lever: Lever, end: usize, steps: f64) {
        let [least, most] = lever.range();
        let now = lever.value(&self.document.scenario);
        let mut range = self.limit_of(lever).map_or([now; 2], |limit| limit.range);
        let moved = moved(range[end], lever.nudge(), steps).clamp(least, most);
        range[end] = moved;
        // The other end gives way.
        range[1 - end] = if end == 0 {
            range[1].max(moved)
        } else {
            range[0].min(moved)
        };
        // It is inside the lever's range.
        self.goal_settings.limits.set(lever, range).ok();
    }

    pub fn has_own_limits(&self) -> bool {
        self.goal_settings.limits != Limits::default()
    }

    pub fn forget_own_limits(&mut self) {
        self.goal_settings.forget_limits();
    }

    /// What a season may bring of a lever, in its own unit; none where it is held as it is.
    pub fn season_of(&self, lever: Lever) -> Option<f64> {
        self.goal_settings.season.unit(lever)
    }

    /// More or less of it, by so many steps; none left holds the lever as it is.
    pub fn step_season(&mut self, lever: Lever, steps: f64) {
        let [least, most] = lever.range();
        let unit = self.season_of(lever).unwrap_or_default();
        let moved = moved(unit, season_step(lever), steps).clamp(0.0, most - least);
        // It is inside the lever's range.
        self.goal_settings.season.set(lever, moved).ok();
    }

    pub fn has_own_season(&self) -> bool {
        self.goal_settings.season != Season::default()
    }

    pub fn usual_season(&mut self) {
        self.goal_settings.season = Season::default();
    }
}

/// Half of what a lever's limits move by: a season is a small change.
fn season_step(lever: Lever) -> f64 {
    0.5 * lever.nudge()
}
