//! How many turns are asked for, this jumper's own limits, and what a season may bring, as the user has
//! set them.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use turns_aloft_analysis::goal::{GOAL_TURNS, MET_TURNS};
use turns_aloft_analysis::lever::{Lever, RefusedLever, Season};
use turns_aloft_analysis::limits::Limits;
use turns_aloft_describe::Sentence;
use turns_aloft_scenario::call::QUARTER_BAND_FROM_DEG;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::parameter::Parameter;

/// How many turns are asked for.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum GoalTurns {
    /// All that the jump's name owes.
    #[default]
    Full,
    /// As many as keep it from being called.
    NotCalled,
    /// In all.
    Turns(f64),
}

/// What is asked for, and of whom.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct GoalSettings {
    pub target: GoalTurns,
    pub limits: Limits,
    pub season: Season,
}

/// What survives a reload: the target, own limits and own seasons by key, in the lever's own unit.
#[derive(Debug, Clone, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct SavedGoal {
    target: GoalTurns,
    limits: BTreeMap<String, [f64; 2]>,
    /// 0 holds the lever as it is.
    season: BTreeMap<String, f64>,
}

impl GoalSettings {
    /// Turns in all that are asked of a jump.
    pub fn turns(&self, jump: &Jump) -> f64 {
        let owed = jump.owed.map(|owed| owed.turns);
        let turns = match (self.target, owed) {
            (GoalTurns::Turns(turns), _) => turns,
            (GoalTurns::Full, Some(owed)) => owed,
            // On the safe side of the limit by what a proposal may miss.
            (GoalTurns::NotCalled, Some(owed)) => owed - QUARTER_BAND_FROM_DEG / 360.0 + MET_TURNS,
            // A free jump owes nothing: half a turn more, to the half.
            (GoalTurns::Full | GoalTurns::NotCalled, None) => {
                0.5 * (2.0 * jump.turns + 1.0).floor()
            }
        };
        turns.clamp(GOAL_TURNS[0], GOAL_TURNS[1])
    }

    pub fn saved(&self) -> SavedGoal {
        let usual = Season::default();
        let mut saved = SavedGoal {
            target: self.target,
            limits: limits_by_key(&self.limits),
            season: BTreeMap::new(),
        };
        for lever in Lever::ALL {
            let unit = self.season.unit(lever);
            if unit != usual.unit(lever) {
                let unit = unit.unwrap_or_default();
                saved.season.insert(lever.key().to_owned(), unit);
            }
        }
        saved
    }

    /// The saved goal, or why it is not admissible.
    pub fn restore(saved: &SavedGoal) -> Result<Self, String> {
        if let GoalTurns::Turns(turns) = saved.target
            && !(GOAL_TURNS[0]..=GOAL_TURNS[1]).contains(&turns)
        {
            return Err(format!("{turns} turns cannot be asked for"));
        }
        let mut goal = Self {
            target: saved.target,
            limits: limits_of_keys(&saved.limits)?,
            ..Self::default()
        };
        for (key, unit) in saved.season.iter().filter(|(key, _)| is_lever(key)) {
            let lever = Lever::named(key).map_err(refused)?;
            goal.season.set(lever, *unit).map_err(refused)?;
        }
        Ok(goal)
    }

    /// Limits are one jumper's: another one has none yet.
    pub fn forget_limits(&mut self) {
        self.limits = Limits::default();
    }
}

/// The hand mass was a lever once: earlier visits may hold limits and seasons of it.
fn is_lever(key: &str) -> bool {
    key != Parameter::HandMass.key()
}

fn refused(why: RefusedLever) -> String {
    why.sentence()
}

/// A jumper's own limits by key, in the lever's own unit.
pub(crate) fn limits_by_key(limits: &Limits) -> BTreeMap<String, [f64; 2]> {
    let own = |lever: Lever| Some((lever.key().to_owned(), limits.own(lever)?));
    Lever::ALL.into_iter().filter_map(own).collect()
}

/// The limits again, or why one of them is not admissible.
pub(crate) fn limits_of_keys(saved: &BTreeMap<String, [f64; 2]>) -> Result<Limits, String> {
    let mut limits = Limits::default();
    for (key, own) in saved.iter().filter(|(key, _)| is_lever(key)) {
        let lever = Lever::named(key).map_err(refused)?;
        limits.set(lever, *own).map_err(refused)?;
    }
    Ok(limits)
}
