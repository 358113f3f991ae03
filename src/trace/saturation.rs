//! Readings at the sensor's end: beyond it, it goes on reading the same.

use glam::DVec3;

use turns_aloft_physics::GRAVITY_M_S2;

/// The ends of a sensor's three axes, in its unit; none where it never got there.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Ends {
    pub axes: [Option<f64>; 3],
}

/// Ends of gyroscopes, degrees a second: powers of two parts of 2000, as sensors of the trade have
/// them (from memory).
const RATE_ENDS_DEG_S: [f64; 6] = [125.0, 250.0, 500.0, 1000.0, 2000.0, 4000.0];

/// Ends of accelerometers, in gravities (from memory).
const ACCELERATION_ENDS_G: [f64; 5] = [2.0, 4.0, 8.0, 16.0, 32.0];

/// So near to such an end readings may stay the same, as a part of it: the last number of 16 bits, a
/// scale and a drift that were taken out before. And makers who count 32768 steps of 35 thousandths of a
/// degree have their end at 1147 where others have 1000 (from memory).
const NEAR: f64 = 0.025;
const LONGER: f64 = 1.147;

/// The same reading at least so often one after the other; our choice.
const IN_A_ROW: usize = 3;

/// Readings within this part of the end are at it: the negative end is a step further out.
const AT_END: f64 = 0.9995;

impl Ends {
    pub fn of_rates(rates_rad_s: &[DVec3]) -> Self {
        let plain = RATE_ENDS_DEG_S.map(f64::to_radians);
        let ends: Vec<f64> = plain
            .into_iter()
            .chain(plain.map(|end| end * LONGER))
            .collect();
        Self::of(rates_rad_s, &ends)
    }

    pub fn of_accelerations(accelerations_m_s2: &[DVec3]) -> Self {
        Self::of(
            accelerations_m_s2,
            &ACCELERATION_ENDS_G.map(|end| end * GRAVITY_M_S2),
        )
    }

    fn of(readings: &[DVec3], ends: &[f64]) -> Self {
        Self {
            axes: [0, 1, 2].map(|axis| end_of(readings.iter().map(|reading| reading[axis]), ends)),
        }
    }

    /// Which axes of a reading are at their end.
    pub fn reached(&self, reading: DVec3) -> [bool; 3] {
        [0, 1, 2].map(|axis| self.axes[axis].is_some_and(|end| reading[axis].abs() >= AT_END * end))
    }

    pub fn is_reached(&self, reading: DVec3) -> bool {
        self.reached(reading).contains(&true)
    }

    /// The nearest end of all axes.
    pub fn least(&self) -> Option<f64> {
        self.axes.into_iter().flatten().min_by(f64::total_cmp)
    }
}

/// The largest size of one axis, where it is read several times in a row and is that of an end.
fn end_of(values: impl Iterator<Item = f64> + Clone, ends: &[f64]) -> Option<f64> {
    let largest = values
        .clone()
        .fold(0.0, |largest, value: f64| value.abs().max(largest));
    let is_end = ends.iter().any(|end| (largest - end).abs() < NEAR * end);
    let (mut longest, mut row, mut last) = (0, 0, 0.0);
    for value in values {
        let is_at = value.abs() >= AT_END * largest;
        row = match (is_at, value == last) {
            (true, true) => row + 1,
            (true, false) => 1,
            (false, _) => 0,
        };
        last = value;
        longest = longest.max(row);
    }
    (is_end && longest >= IN_A_ROW).then_some(largest)
}
