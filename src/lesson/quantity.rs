//! The quantities that a lesson can ask for: one table.
//!
//! Those of a jump have the published keys of its flight where they have one.

use turns_aloft_analysis::turn_try::TurnTry;
use turns_aloft_analysis::uncertainty::{Range, Uncertainty};
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_turntable::{Run, Sample};

use crate::flown::Flown;

/// A quantity of what was flown, by its place in the table.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Quantity(usize);

/// What it measures; decides in which unit it is shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Dimension {
    Turns,
    /// Those that a jump's name asks for: whole ones, and half of one more.
    NeededTurns,
    Time,
    Length,
    Rate,
    Inertia,
    AngularMomentum,
    Energy,
    Angle,
    /// A number without a unit: how many times one is the other.
    Ratio,
    Count,
}

struct Row {
    key: &'static str,
    dimension: Dimension,
    of_jump: Option<fn(&Scenario, &Jump) -> f64>,
    of_run: Option<fn(&Run) -> f64>,
}

const fn of_jump(
    key: &'static str,
    dimension: Dimension,
    value: fn(&Scenario, &Jump) -> f64,
) -> Row {
    Row {
        key,
        dimension,
        of_jump: Some(value),
        of_run: None,
    }
}

const fn of_run(key: &'static str, dimension: Dimension, value: fn(&Run) -> f64) -> Row {
    Row {
        key,
        dimension,
        of_jump: None,
        of_run: Some(value),
    }
}

const fn of_both(
    key: &'static str,
    dimension: Dimension,
    jump: fn(&Scenario, &Jump) -> f64,
    run: fn(&Run) -> f64,
) -> Row {
    Row {
        key,
        dimension,
        of_jump: Some(jump),
        of_run: Some(run),
    }
}

use Dimension as D;

static ROWS: [Row; 34] = [
    of_both(
        "turns",
        D::Turns,
        |_, it| it.turns,
        |run| last(run).turns().abs(),
    ),
    of_jump("air_turns", D::Turns, |_, it| it.readout.air_turns),
    of_jump("turns_owed", D::NeededTurns, |_, it| {
        it.owed.map_or(0.0, |owed| owed.turns)
    }),
    of_jump("turns_missing", D::Turns, |_, it| {
        it.owed.map_or(0.0, |owed| owed.turns - it.turns)
    }),
    of_jump("turns_low", D::Turns, |scenario, it| {
        range(scenario, it).low
    }),
    of_jump("turns_high", D::Turns, |scenario, it| {
        range(scenario, it).high
    }),
    of_jump("limits_passed", D::Count, |scenario, it| {
        TurnTry::new(scenario, it, scenario.jump_turns).passed.len() as f64
    }),
    of_jump("hang_time_s", D::Time, |_, it| it.readout.hang_time_s),
    of_jump("jump_height_m", D::Length, |_, it| it.readout.jump_height_m),
    of_jump("takeoff_rate_rad_s", D::Rate, |_, it| {
        it.readout.takeoff_rate_rad_s
    }),
    of_both(
        "peak_rate_rad_s",
        D::Rate,
        |_, it| it.readout.peak_rate_rad_s,
        |run| most(run, |it| it.rate_rad_s.abs()),
    ),
    of_jump("mean_rate_rad_s", D::Rate, |_, it| {
        it.readout.mean_rate_rad_s
    }),
    of_jump("touchdown_rate_rad_s", D::Rate, |_, it| {
        it.readout.touchdown_rate_rad_s
    }),
    of_run("first_rate_rad_s", D::Rate, |run| {
        first(run).rate_rad_s.abs()
    }),
    of_run("last_rate_rad_s", D::Rate, |run| last(run).rate_rad_s.abs()),
    of_jump("inertia_takeoff_kg_m2", D::Inertia, |_, it| {
        it.readout.inertia_takeoff_kg_m2
    }),
    of_both(
        "inertia_least_kg_m2",
        D::Inertia,
        |_, it| it.readout.inertia_least_kg_m2,
        |run| -most(run, |it| -it.inertia_kg_m2),
    ),
    of_run("first_inertia_kg_m2", D::Inertia, |run| {
        first(run).inertia_kg_m2
    }),
    of_run("last_inertia_kg_m2", D::Inertia, |run| {
        last(run).inertia_kg_m2
    }),
    of_jump(
        "angular_momentum_takeoff_kg_m2_s",
        D::AngularMomentum,
        |_, it| it.flight.momentum_at(0.0).momentum_kg_m2_s,
    ),
    of_jump(
        "angular_momentum_touchdown_kg_m2_s",
        D::AngularMomentum,
        |_, it| {
            it.flight
                .momentum_at(it.flight.touchdown_s)
                .momentum_kg_m2_s
        },
    ),
    of_run(
        "first_angular_momentum_kg_m2_s",
        D::AngularMomentum,
        |run| first(run).momentum_kg_m2_s.abs(),
    ),
    of_run("last_angular_momentum_kg_m2_s", D::AngularMomentum, |run| {
        last(run).momentum_kg_m2_s.abs()
    }),
    of_jump("energy_takeoff_j", D::Energy, |_, it| {
        it.readout.energy_takeoff_j
    }),
    of_both(
        "energy_peak_j",
        D::Energy,
        |_, it| it.readout.energy_peak_j,
        |run| most(run, |it| it.kinetic_j),
    ),
    of_jump("energy_touchdown_j", D::Energy, |_, it| {
        it.readout.energy_touchdown_j
    }),
    of_run("first_energy_j", D::Energy, |run| first(run).kinetic_j),
    of_run("last_energy_j", D::Energy, |run| last(run).kinetic_j),
    of_jump("closing_work_j", D::Energy, |_, it| {
        it.readout.closing_work_j
    }),
    of_jump("opening_work_j", D::Energy, |_, it| {
        it.readout.opening_work_j
    }),
    of_run("muscle_work_j", D::Energy, |run| last(run).work_j),
    of_jump("tilt_peak_rad", D::Angle, |_, it| it.readout.tilt_peak_rad),
    of_both(
        "rate_ratio",
        D::Ratio,
        |_, it| it.readout.peak_rate_rad_s / it.readout.takeoff_rate_rad_s,
        |run| last(run).rate_rad_s / first(run).rate_rad_s,
    ),
    of_both(
        "inertia_ratio",
        D::Ratio,
        |_, it| it.readout.inertia_takeoff_kg_m2 / it.readout.inertia_least_kg_m2,
        |run| first(run).inertia_kg_m2 / last(run).inertia_kg_m2,
    ),
];

impl Quantity {
    pub fn all() -> impl Iterator<Item = Self> {
        (0..ROWS.len()).map(Self)
    }

    pub fn named(key: &str) -> Option<Self> {
        Self::all().find(|it| it.key() == key)
    }

    /// Its place in the table.
    pub const fn place(self) -> usize {
        self.0
    }

    /// Its name in files.
    pub fn key(self) -> &'static str {
        ROWS[self.0].key
    }

    pub fn dimension(self) -> Dimension {
        ROWS[self.0].dimension
    }

    /// Whether a jump has it.
    pub fn is_of_jump(self) -> bool {
        ROWS[self.0].of_jump.is_some()
    }

    /// Whether a run on a turntable has it.
    pub fn is_of_run(self) -> bool {
        ROWS[self.0].of_run.is_some()
    }

    /// The value in SI; none where what was flown has no such quantity, or none that is a number.
    pub fn of(self, flown: &Flown) -> Option<f64> {
        let row = &ROWS[self.0];
        let value = match flown {
            Flown::Jump { scenario, jump } => row.of_jump?(scenario, jump),
            Flown::Run(run) => row.of_run?(run),
        };
        value.is_finite().then_some(value)
    }
}

fn range(scenario: &Scenario, jump: &Jump) -> Range {
    Range::new(scenario, jump, &Uncertainty::usual(scenario))
}

/// A run has its first sample from the beginning.
fn first(run: &Run) -> &Sample {
    &run.samples[0]
}

fn last(run: &Run) -> &Sample {
    &run.samples[run.samples.len() - 1]
}

fn most(run: &Run, of: impl Fn(&Sample) -> f64) -> f64 {
    run.samples.iter().map(of).fold(f64::NEG_INFINITY, f64::max)
}
