//! This jumper's own limits and what a season may bring, as the user sets them.

use crate::operations::stepping::moved;
use crate::session::Session;
use turns_aloft_analysis::lever::{Lever, Season};
use turns_aloft_analysis::limits::{LimitOf, Limits};

/// How far this jumper is taken to get with a lever.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LimitInUse {
    pub range: [f64; 2],
    pub own: bool,
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
