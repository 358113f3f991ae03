//! Which column is what: by the names of the columns and the size of their numbers.

use crate::columns::{Axes, Columns, TimeColumn};
use crate::fault::TraceFault;
use crate::flight_window::by_lever_arm;
use crate::names::{AxisName, AxisNames, Quantity, TimeName, quantity_of_file, rate_unit};
use crate::saturation::Ends;
use crate::signals::Signals;
use crate::table::Table;
use crate::units::{AccelerationUnit, RateUnit, TimeUnit};
use turns_aloft_physics::order::by_number;

/// Readings that are looked at for their size.
const LOOKED_AT: usize = 20_000;

/// A sensor that hardly ever reads less than this part of its middle reading has gravity in it; our choice.
const HARDLY_LESS: f64 = 0.4;

/// Three columns and how their axes are called.
type Triple = ([usize; 3], AxisNames);

/// By the names of the columns and the size of their numbers.
pub fn find_columns(table: &Table) -> Result<Columns, TraceFault> {
    if table.rows() == 0 {
        return Err(TraceFault::NoNumbers);
    }
    if !table.has_names() {
        return Err(TraceFault::NoHeader);
    }
    let time = find_time(table)?;
    let mut gyroscope = triple(table, Quantity::Gyroscope);
    let mut accelerometer = triple(table, Quantity::Accelerometer);
    let unnamed = triple(table, Quantity::Unnamed);
    if let (None, None, Some((columns, _))) = (gyroscope, accelerometer, unnamed) {
        let named = quantity_of_file(&table.file_name);
        if named.unwrap_or_else(|| by_size(table, columns)) == Quantity::Accelerometer {
            accelerometer = unnamed;
        } else {
            gyroscope = unnamed;
        }
    }
    if gyroscope.is_none() && accelerometer.is_none() {
        return Err(TraceFault::NoGyroscope);
    }
    let accelerometer = accelerometer.map(|(columns, _)| {
        let unit = AccelerationUnit::of_middle(middle(table, columns, 0.5));
        // One that gravity has been taken out of fits none, and is found out by its rest.
        let unit = unit.unwrap_or(AccelerationUnit::MetresPerS2);
        Axes { columns, unit }
    });
    let mut found = Columns {
        time,
        gyroscope: None,
        accelerometer,
    };
    if let Some((columns, names)) = gyroscope {
        let largest = largest(table, columns);
        let named = rate_unit(&table.columns[columns[0]].name);
        let unit = RateUnit::of(largest, named).ok_or(TraceFault::RateUnit { largest })?;
        found.gyroscope = Some(Axes { columns, unit });
        if names == AxisNames::AlphaBetaGamma {
            let [alpha, beta, gamma] = columns;
            let mut about_z = found;
            about_z.gyroscope = Some(Axes {
                columns: [beta, gamma, alpha],
                unit,
            });
            if flown_s(table, &about_z) > flown_s(table, &found) {
                found = about_z;
            }
        }
    }
    Ok(found)
}

/// How long the flights are in which both sensors agree, s. Descriptions of the W3C's `rotationRate`
/// disagree whether alpha is about x or about z, and so do browsers: with the axes in the wrong order no
/// lever arm explains what the accelerometer reads.
fn flown_s(table: &Table, columns: &Columns) -> f64 {
    let Ok(signals) = Signals::of(table, columns) else {
        return 0.0;
    };
    let flights = by_lever_arm(&signals, &Ends::default(), &Ends::default());
    flights
        .iter()
        .map(|flight| flight.to_s - flight.from_s)
        .sum()
}

/// The best complete set of three axes of a sensor.
fn triple(table: &Table, quantity: Quantity) -> Option<Triple> {
    let named = |with_gravity: bool, names: AxisNames| {
        let column = |axis: usize| {
            table.columns.iter().position(|column| {
                let found = AxisName::of(&column.name);
                found.is_some_and(|found| {
                    found.quantity == quantity
                        && found.axis == axis
                        && found.names == names
                        && (found.with_gravity || !with_gravity)
                }) && column.values.iter().any(|value| value.is_finite())
            })
        };
        Some(([column(0)?, column(1)?, column(2)?], names))
    };
    [true, false].into_iter().find_map(|with_gravity| {
        [AxisNames::Xyz, AxisNames::AlphaBetaGamma]
            .into_iter()
            .find_map(|names| named(with_gravity, names))
    })
}

/// The rows that are looked at for their size, evenly spread.
fn looked_at(table: &Table, columns: [usize; 3]) -> impl Iterator<Item = [f64; 3]> {
    let stride = table.rows() / LOOKED_AT + 1;
    (0..table.rows())
        .step_by(stride)
        .map(move |row| columns.map(|column| table.columns[column].values[row]))
        .filter(|reading| reading.iter().all(|value| value.is_finite()))
}

/// The size below which so large a part of the readings is; zero where there are none.
fn middle(table: &Table, columns: [usize; 3], part: f64) -> f64 {
    let mut sizes: Vec<f64> = looked_at(table, columns)
        .map(|[x, y, z]| libm::hypot(libm::hypot(x, y), z))
        .collect();
    if sizes.is_empty() {
        return 0.0;
    }
    // Truncation picks the reading just below.
    let at = (part * (sizes.len() - 1) as f64) as usize;
    *sizes.select_nth_unstable_by(at, f64::total_cmp).1
}

/// The largest size of a reading on one axis.
fn largest(table: &Table, columns: [usize; 3]) -> f64 {
    let values = columns
        .into_iter()
        .flat_map(|column| &table.columns[column].values);
    values.fold(0.0, |largest, value| value.abs().max(largest))
}

/// An accelerometer reads about gravity most of the time, and hardly ever nothing.
fn by_size(table: &Table, columns: [usize; 3]) -> Quantity {
    let half = middle(table, columns, 0.5);
    let is_gravity = AccelerationUnit::of_middle(half).is_some();
    if is_gravity && middle(table, columns, 0.1) > HARDLY_LESS * half {
        Quantity::Accelerometer
    } else {
        Quantity::Gyroscope
    }
}

/// The first clock that goes on, else the first at all, of which is then said what is wrong.
fn find_time(table: &Table) -> Result<TimeColumn, TraceFault> {
    let named = table.columns.iter().enumerate();
    let found: Vec<(TimeName, usize)> = named
        .filter(|(_, column)| column.values.iter().any(|value| value.is_finite()))
        .filter_map(|(i, column)| Some((TimeName::of(&column.name)?, i)))
        .collect();
    let mut first_fault = None;
    for (name, column) in by_number(found, |(name, _)| f64::from(*name as u8)) {
        let intervals = name == TimeName::Interval;
        let values = &table.columns[column].values;
        let goes_on = intervals || values.iter().filter(|value| value.is_finite()).is_sorted();
        let step = middle_step(values, intervals);
        match TimeUnit::of_step(step) {
            Some(unit) => {
                let time = TimeColumn {
                    column,
                    unit,
                    intervals,
                };
                if goes_on {
                    return Ok(time);
                }
                first_fault.get_or_insert(Ok(time));
            }
            None => {
                first_fault.get_or_insert(Err(TraceFault::TimeUnit { step }));
            }
        }
    }
    first_fault.unwrap_or(Err(TraceFault::NoTime))
}

/// The middle time between readings: steps of zero, as sensors write them that report several readings
/// at once, are left out.
fn middle_step(values: &[f64], intervals: bool) -> f64 {
    let known = values.iter().copied().filter(|value| value.is_finite());
    let mut steps: Vec<f64> = if intervals {
        known.filter(|step| *step > 0.0).collect()
    } else {
        let known: Vec<f64> = known.collect();
        let steps = known.windows(2).map(|pair| pair[1] - pair[0]);
        steps.filter(|step| *step > 0.0).collect()
    };
    if steps.is_empty() {
        return 0.0;
    }
    let at = steps.len() / 2;
    *steps.select_nth_unstable_by(at, f64::total_cmp).1
}
