//! A table's columns as readings in SI.

use glam::DVec3;

use crate::columns::{Axes, Columns, TimeColumn};
use crate::fault::TraceFault;
use crate::readings::Readings;
use crate::table::Table;

/// The readings of a gyroscope, and of an accelerometer at the same times.
#[derive(Debug, Clone)]
pub struct Signals {
    /// Since the first row, s; rising.
    pub t_s: Vec<f64>,
    pub rate_rad_s: Vec<DVec3>,
    /// Empty where there is none.
    pub acceleration_m_s2: Vec<DVec3>,
    /// The middle time between readings, s.
    pub step_s: f64,
    /// Steps that are longer are gaps, s.
    longest_step_s: f64,
}

/// Readings at least; our choice.
pub const FEWEST: usize = 20;

/// Readings a second at least: fewer are no help against turns of a fifth of a second. Our choice.
pub const SLOWEST_A_SECOND: f64 = 20.0;

/// Steps as long as so many usual ones are gaps, but not below `SHORTEST_GAP_S`: some sensors send their
/// readings in bursts. Our choice.
const GAP_STEPS: f64 = 4.0;
const SHORTEST_GAP_S: f64 = 0.03;

/// Clocks of two files that are further apart do not belong together, s; our choice.
const FAR_APART_S: f64 = 60.0;

impl Signals {
    /// Of a file that has the gyroscope in it.
    pub fn of(table: &Table, columns: &Columns) -> Result<Self, TraceFault> {
        let clock = Clock::of(table, columns.time)?;
        let axes = columns.gyroscope.ok_or(TraceFault::NoGyroscope)?;
        let rate = clock.readings(table, axes, axes.unit.rad_s())?;
        let acceleration = match columns.accelerometer {
            Some(axes) => Some(clock.readings(table, axes, axes.unit.m_s2())?),
            None => None,
        };
        Self::joined(rate, acceleration.as_ref())
    }

    /// Of two files, one for each sensor.
    pub fn of_two(
        (table, columns): (&Table, &Columns),
        (other, other_columns): (&Table, &Columns),
    ) -> Result<Self, TraceFault> {
        let clock = Clock::of(table, columns.time)?;
        let axes = columns.gyroscope.ok_or(TraceFault::NoGyroscope)?;
        let rate = clock.readings(table, axes, axes.unit.rad_s())?;
        let mut other_clock = Clock::of(other, other_columns.time)?;
        // Clocks that tell the same time of day go on as they are; others both began at zero.
        let apart_s = other_clock.start_s - clock.start_s;
        if apart_s.abs() < FAR_APART_S {
            for t_s in &mut other_clock.t_s {
                *t_s += apart_s;
            }
        }
        let acceleration = match other_columns.accelerometer {
            Some(axes) => Some(other_clock.readings(other, axes, axes.unit.m_s2())?),
            None => None,
        };
        Self::joined(rate, acceleration.as_ref())
    }

    fn joined(rate: Readings, acceleration: Option<&Readings>) -> Result<Self, TraceFault> {
        let readings = rate.t_s.len();
        if readings < FEWEST {
            return Err(TraceFault::TooShort { readings });
        }
        let step_s = rate.step_s();
        if step_s * SLOWEST_A_SECOND > 1.0 {
            return Err(TraceFault::TooSlow {
                readings_a_second: 1.0 / step_s,
            });
        }
        if rate.value.iter().all(|value| *value == rate.value[0]) {
            return Err(TraceFault::Constant);
        }
        let acceleration = acceleration.filter(|readings| readings.t_s.len() >= FEWEST);
        let acceleration_m_s2 = acceleration.map_or_else(Vec::new, |readings| {
            rate.t_s.iter().map(|&t_s| readings.at(t_s)).collect()
        });
        Ok(Self {
            t_s: rate.t_s,
            rate_rad_s: rate.value,
            acceleration_m_s2,
            step_s,
            longest_step_s: (GAP_STEPS * step_s).max(SHORTEST_GAP_S),
        })
    }

    /// The same with the gyroscope alone.
    pub fn without_acceleration(&self) -> Self {
        Self {
            acceleration_m_s2: Vec::new(),
            ..self.clone()
        }
    }

    /// Half of the accelerometer's readings are smaller; there has to be one.
    pub fn middle_acceleration_m_s2(&self) -> f64 {
        let mut sizes: Vec<f64> = self.acceleration_m_s2.iter().map(|a| a.length()).collect();
        let middle = sizes.len() / 2;
        *sizes.select_nth_unstable_by(middle, f64::total_cmp).1
    }

    pub fn has_acceleration(&self) -> bool {
        !self.acceleration_m_s2.is_empty()
    }

    /// The readings of a stretch of time, both ends included.
    pub fn range(&self, [from_s, to_s]: [f64; 2]) -> std::ops::Range<usize> {
        let from = self.t_s.partition_point(|&t_s| t_s < from_s);
        let to = self.t_s.partition_point(|&t_s| t_s <= to_s);
        from..to.max(from)
    }

    /// Whether readings are missing between this one and the next.
    pub fn is_gap_after(&self, i: usize) -> bool {
        i + 1 < self.t_s.len() && self.t_s[i + 1] - self.t_s[i] > self.longest_step_s
    }

    /// The first gap that reaches into a stretch of time: from the last reading before it to the first
    /// after it, s.
    pub fn gap_in(&self, [from_s, to_s]: [f64; 2]) -> Option<[f64; 2]> {
        let range = self.range([from_s, to_s]);
        let mut before = range.start.saturating_sub(1)..range.end;
        let i = before.find(|&i| self.is_gap_after(i))?;
        Some([self.t_s[i], self.t_s[i + 1]])
    }
}

/// The time of each row.
struct Clock {
    /// Since the first row, s; not a number where the row has none.
    t_s: Vec<f64>,
    /// What the clock says at the first row, s.
    start_s: f64,
}

impl Clock {
    fn of(table: &Table, time: TimeColumn) -> Result<Self, TraceFault> {
        let values = &table
            .columns
            .get(time.column)
            .ok_or(TraceFault::NoColumn {
                column: time.column,
            })?
            .values;
        no_text(table, time.column)?;
        let unit_s = time.unit.s();
        if time.intervals {
            let mut now_s = 0.0;
            let t_s = values.iter().map(|value| {
                if value.is_finite() {
                    now_s += value * unit_s;
                }
                now_s
            });
            let t_s = t_s.collect();
            let back = values.iter().position(|value| *value < 0.0);
            return match back {
                Some(row) => Err(TraceFault::ClockBackwards {
                    line: table.lines[row],
                }),
                None => Ok(Self { t_s, start_s: 0.0 }),
            };
        }
        let mut last = f64::NEG_INFINITY;
        for (value, &line) in values.iter().zip(&table.lines) {
            if *value < last {
                return Err(TraceFault::ClockBackwards { line });
            }
            if value.is_finite() {
                last = *value;
            }
        }
        let start = values.iter().copied().find(|value| value.is_finite());
        let start = start.ok_or(TraceFault::NoTime)?;
        // Before the unit: the times of day of a clock in nanoseconds have all digits that there are.
        let t_s = values
            .iter()
            .map(|value| (value - start) * unit_s)
            .collect();
        Ok(Self {
            t_s,
            start_s: start * unit_s,
        })
    }

    /// The rows that have all three axes. Of those at one time the last counts.
    fn readings<U>(&self, table: &Table, axes: Axes<U>, unit: f64) -> Result<Readings, TraceFault> {
        for column in axes.columns {
            if column >= table.columns.len() {
                return Err(TraceFault::NoColumn { column });
            }
            no_text(table, column)?;
        }
        let [x, y, z] = axes.columns.map(|column| &table.columns[column].values);
        let mut readings = Readings::default();
        for (row, &t_s) in self.t_s.iter().enumerate() {
            let value = DVec3::new(x[row], y[row], z[row]) * unit;
            // Whatever is so large is no reading, and would make sums of squares infinite.
            let is_time = t_s.is_finite() && t_s < LATEST_S;
            if !is_time || !value.is_finite() || value.abs().max_element() > LARGEST {
                continue;
            }
            if readings.t_s.last().is_some_and(|&last_s| t_s <= last_s) {
                readings.t_s.pop();
                readings.value.pop();
            }
            readings.t_s.push(t_s);
            readings.value.push(value);
        }
        Ok(readings)
    }
}

/// Largest number that may be a reading, in SI; our choice, far above any sensor.
const LARGEST: f64 = 1e5;

/// Time since the first row at most, s: four months. Our choice; nobody records for so long.
const LATEST_S: f64 = 1e7;

fn no_text(table: &Table, column: usize) -> Result<(), TraceFault> {
    let column = &table.columns[column];
    match &column.text {
        Some((line, text)) => Err(TraceFault::TextInNumbers {
            column: column.name.clone(),
            line: *line,
            text: text.clone(),
        }),
        None => Ok(()),
    }
}
