//! The friction of a real bearing from how it slows down: rates at two or three times, nobody moving.
//!
//! With I w' = -(c + b w) and w > 0: with c alone w falls evenly, with b alone by the same factor in the same
//! time, with both w + c / b does. Three readings give both, from the one root of an equation in b / I.

use crate::friction::Friction;

/// The rate at one time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reading {
    pub t_s: f64,
    /// Either way round.
    pub rate_rad_s: f64,
}

/// Why readings give no friction.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CalibrationFault {
    /// A number is none, or the inertia is not positive.
    NotNumbers,
    /// The times do not rise.
    OutOfOrder,
    /// It does not slow down, or turns the other way.
    NotSlower,
    /// It has come to rest, and it is not known when.
    AtRest,
    /// It slows down harder at the end than any friction of this kind does.
    HarderAtEnd,
    /// It slows down harder at the beginning than friction that grows with the rate does.
    HarderAtBeginning,
}

/// Halvings of the range of b / I.
const HALVINGS: u32 = 80;

/// Rounding that is taken as none: what pure friction of one kind leaves of the other.
const ROUNDING: f64 = 1e-12;

/// A torque alone, from two readings and the moment of inertia of all that turned, kg m².
pub fn torque_alone(
    readings: &[Reading; 2],
    inertia_kg_m2: f64,
) -> Result<Friction, CalibrationFault> {
    let [from, to] = checked(readings, inertia_kg_m2)?;
    Ok(Friction {
        torque_n_m: inertia_kg_m2 * (from.rate_rad_s - to.rate_rad_s) / (to.t_s - from.t_s),
        viscous_n_m_s: 0.0,
    })
}

/// A part that grows with the rate, alone.
pub fn viscous_alone(
    readings: &[Reading; 2],
    inertia_kg_m2: f64,
) -> Result<Friction, CalibrationFault> {
    let [from, to] = checked(readings, inertia_kg_m2)?;
    Ok(Friction {
        torque_n_m: 0.0,
        viscous_n_m_s: inertia_kg_m2 * libm::log(from.rate_rad_s / to.rate_rad_s)
            / (to.t_s - from.t_s),
    })
}

/// Both, from three readings.
pub fn both(readings: &[Reading; 3], inertia_kg_m2: f64) -> Result<Friction, CalibrationFault> {
    let [first, second, third] = checked(readings, inertia_kg_m2)?;
    let [early_s, late_s] = [second.t_s - first.t_s, third.t_s - second.t_s];
    let [early, late] = [
        (first.rate_rad_s - second.rate_rad_s) / early_s,
        (second.rate_rad_s - third.rate_rad_s) / late_s,
    ];
    if late > early * (1.0 + ROUNDING) {
        return Err(CalibrationFault::HarderAtEnd);
    }
    // The share of its rate that it loses in a second, if that were all.
    let most = libm::log(first.rate_rad_s / second.rate_rad_s) / early_s;
    if libm::log(second.rate_rad_s / third.rate_rad_s) / late_s < most * (1.0 - ROUNDING) {
        return Err(CalibrationFault::HarderAtBeginning);
    }
    // By how much the third rate comes out too high with this share: it rises with it.
    let lost = |share: f64, time_s: f64| -libm::expm1(-share * time_s) / share;
    let deceleration = |share: f64| {
        let rate = first.rate_rad_s * libm::exp(-share * early_s);
        ((rate - second.rate_rad_s) / lost(share, early_s)).max(0.0)
    };
    let too_high = |share: f64| {
        second.rate_rad_s * libm::exp(-share * late_s)
            - deceleration(share) * lost(share, late_s)
            - third.rate_rad_s
    };
    let (mut below, mut above) = (0.0, most);
    for _ in 0..HALVINGS {
        let middle = 0.5 * (below + above);
        if middle > 0.0 && too_high(middle) < 0.0 {
            below = middle;
        } else {
            above = middle;
        }
    }
    Ok(Friction {
        torque_n_m: inertia_kg_m2 * deceleration(above),
        viscous_n_m_s: inertia_kg_m2 * above,
    })
}

/// The readings with positive rates, where they are readings of something that slows down.
fn checked<const N: usize>(
    readings: &[Reading; N],
    inertia_kg_m2: f64,
) -> Result<[Reading; N], CalibrationFault> {
    let numbers = readings
        .iter()
        .all(|reading| reading.t_s.is_finite() && reading.rate_rad_s.is_finite());
    if !numbers || !inertia_kg_m2.is_finite() || inertia_kg_m2 <= 0.0 {
        return Err(CalibrationFault::NotNumbers);
    }
    if readings.windows(2).any(|pair| pair[1].t_s <= pair[0].t_s) {
        return Err(CalibrationFault::OutOfOrder);
    }
    let sense = readings[0].rate_rad_s.signum();
    let readings = readings.map(|reading| Reading {
        rate_rad_s: sense * reading.rate_rad_s,
        ..reading
    });
    if readings[N - 1].rate_rad_s == 0.0 {
        return Err(CalibrationFault::AtRest);
    }
    let slower = |pair: &[Reading]| pair[1].rate_rad_s < pair[0].rate_rad_s;
    if readings[N - 1].rate_rad_s < 0.0 || !readings.windows(2).all(slower) {
        return Err(CalibrationFault::NotSlower);
    }
    Ok(readings)
}
