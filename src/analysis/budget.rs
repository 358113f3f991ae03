//! Where the turns went: from the ideal flight down to the actual one.
//!
//! The ideal flight has the tightest posture from the first instant to touch-down, its long axis on
//! the vertical, with the angular momentum and the hang time of the actual one. The causes of what
//! is lost are removed from the actual flight one at a time, in the order of [`Cause::ORDER`], until
//! the ideal is left; each is worth the turns gained by removing it. So the closing is judged at the
//! tightness reached: who never gets tight lost nothing by closing slowly. Another order would
//! share the same whole out otherwise.
//!
//! No loss is negative. A cause may be of use while another is still there: a closing that has hardly
//! begun as the opening runs keeps the arms nearer than the opening alone would, and a leaning body may
//! turn faster for opening. Then it costs nothing by itself, and what both cost together is charged to
//! the one that is removed after it.

use std::sync::Arc;

use crate::one_change::OneChange;
use turns_aloft_physics::fixed_time::FixedTimeFlight;
use turns_aloft_physics::flight::{Flight, Launch, Spin};
use turns_aloft_physics::table::PlanTable;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::fly::Jump;
pub use turns_aloft_scenario::parameter::Cause;

/// Where the turns went. The ideal turns less the losses are the turns in the air, exactly; with
/// those on the ice they are the turns in all.
#[derive(Debug, Clone, PartialEq)]
pub struct Budget {
    pub ideal_turns: f64,
    /// Turns lost, in the order of [`Cause::ORDER`]; negative where they were won.
    pub losses: [f64; 4],
    pub air_turns: f64,
    pub pre_rotation_turns: f64,
    /// In the air and on the ice before it.
    pub turns: f64,
    /// The largest loss; none where all are too small to be shown.
    pub largest: Option<Cause>,
    /// The one change to try against the largest loss, as flown.
    pub one_change: Option<OneChange>,
}

/// Losses below this are not shown as any, turns.
const SHOWN_FROM_TURNS: f64 = 0.005;

impl Budget {
    /// Of a scenario and the jump it flies.
    pub fn new(scenario: &Scenario, jump: &Jump) -> Self {
        let budget = Self::without_change(scenario, jump);
        let of = |cause| OneChange::best(scenario, jump, cause);
        Self {
            one_change: budget.largest.and_then(of),
            ..budget
        }
    }

    /// The same without the one change, which takes many flights to find.
    pub fn without_change(scenario: &Scenario, jump: &Jump) -> Self {
        Self::of_losses(scenario, jump, Losses::new(scenario, &jump.flight))
    }

    /// The same where the losses are known.
    pub fn of_losses(scenario: &Scenario, jump: &Jump, losses: Losses) -> Self {
        let Losses {
            ideal_turns,
            losses,
        } = losses;
        let largest = Cause::ORDER
            .into_iter()
            .zip(losses)
            .filter(|(_, loss)| *loss >= SHOWN_FROM_TURNS)
            .max_by(|(_, one), (_, other)| one.total_cmp(other))
            .map(|(cause, _)| cause);
        Self {
            ideal_turns,
            losses,
            air_turns: jump.readout.air_turns,
            pre_rotation_turns: scenario.pre_rotation_turns,
            turns: jump.turns,
            largest,
            one_change: None,
        }
    }

    pub fn loss(&self, cause: Cause) -> f64 {
        let of_it = Cause::ORDER.into_iter().zip(self.losses);
        of_it
            .filter(|(one, _)| *one == cause)
            .map(|(_, loss)| loss)
            .sum()
    }
}

/// What each cause lost.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Losses {
    pub ideal_turns: f64,
    /// In the order of [`Cause::ORDER`].
    pub losses: [f64; 4],
}

impl Losses {
    /// Of a scenario and the flight of its plan.
    pub fn new(scenario: &Scenario, flight: &Flight) -> Self {
        let mut search = LossSearch::of(flight);
        loop {
            if let Some(losses) = search.advance(scenario, flight) {
                return losses;
            }
        }
    }
}

/// The causes removed one at a time.
#[derive(Debug, Clone)]
pub struct LossSearch {
    /// With the causes so far removed.
    air_turns: f64,
    removed: Removed,
    tables: Vec<Arc<PlanTable>>,
    losses: Vec<f64>,
}

impl LossSearch {
    pub fn of(flight: &Flight) -> Self {
        Self {
            air_turns: flight.touchdown().air_turns(),
            removed: Removed::default(),
            tables: vec![Arc::clone(&flight.table)],
            losses: Vec::new(),
        }
    }

    /// Removes the next cause from the flight that it was begun with; all that they lost, once none is left.
    pub fn advance(&mut self, scenario: &Scenario, flight: &Flight) -> Option<Losses> {
        let cause = Cause::ORDER.get(self.losses.len()).copied();
        if let Some(cause) = cause {
            self.removed.remove(cause);
            let without = if cause == Cause::Closing && scenario.closes_nothing() {
                self.air_turns
            } else {
                (self.removed.air_turns(flight, &mut self.tables)).max(self.air_turns)
            };
            self.losses.push(without - self.air_turns);
            self.air_turns = without;
        }
        let losses = <[f64; 4]>::try_from(self.losses.as_slice()).ok()?;
        Some(Losses {
            ideal_turns: self.air_turns,
            losses,
        })
    }
}

/// Which causes are gone from a flight.
#[derive(Debug, Clone, Copy, Default)]
struct Removed {
    closing: bool,
    tightness: bool,
    opening: bool,
    tilt: bool,
}

impl Removed {
    fn remove(&mut self, cause: Cause) {
        *match cause {
            Cause::Closing => &mut self.closing,
            Cause::Tightness => &mut self.tightness,
            Cause::Opening => &mut self.opening,
            Cause::Tilt => &mut self.tilt,
        } = true;
    }

    /// Turns of the same body with the same angular momentum in the same time, without these
    /// causes; the ice is not looked at.
    fn air_turns(self, actual: &Flight, tables: &mut Vec<Arc<PlanTable>>) -> f64 {
        let timed = FixedTimeFlight {
            closed: self.closing && actual.table.plan.spec.led.is_none(),
            open_s: if self.opening {
                f64::INFINITY
            } else {
                actual.open_s
            },
            hang_s: actual.touchdown_s,
        };
        let launch = Launch {
            spin: Spin::AngularMomentum(actual.h_kg_m2_s.length()),
            lean_rad: if self.tilt {
                0.0
            } else {
                actual.launch.lean_rad
            },
            ..actual.launch
        };
        let table = self.table(tables);
        let samples = timed.fly(&table, &launch);
        tables.push(table);
        samples[samples.len() - 1].air_turns()
    }

    /// The table without these causes. Of a jump that was led by hand other knots are flown: it is held in from
    /// the start as far as the hand ever led it, or all the way, and let out as the hand did, or never.
    ///
    /// `made` are those that there are already, the actual one first.
    fn table(self, made: &[Arc<PlanTable>]) -> Arc<PlanTable> {
        let actual = &made[0];
        let mut spec = actual.plan.spec.clone();
        if self.tightness {
            (spec.arm_tuck, spec.leg_tuck) = (1.0, 1.0);
        }
        if let Some(led) = spec.led.as_mut().filter(|_| self.closing) {
            let tucks = if self.tightness {
                [1.0; 2]
            } else {
                led.most_in()
            };
            // Every movement is over as the ice is left.
            *led = led.held_in(-actual.plan.settling_s(), tucks, !self.opening);
        }
        // The closing is over by then: one arm's lag alone tilts nothing.
        if self.tilt && spec.arm_asymmetry != 0.0 {
            (spec.arm_asymmetry, spec.arm_lag_s) = (0.0, 0.0);
        }
        let made: Vec<&Arc<PlanTable>> = made.iter().collect();
        PlanTable::after(&made, actual.body.spec, spec, actual.resolution)
    }
}
