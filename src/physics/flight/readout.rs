//! What a finished flight says: every number a screen or a file shows of the whole flight.

use glam::DVec3;
use serde::{Serialize, Serializer};

use crate::dynamics::gravity::GRAVITY_M_S2;
use crate::flight::landing::{load_bw, stopping_torque_n_m};
use crate::flight::planned::Flight;
use crate::flight::sample::FlightSample;

/// The numbers of a whole flight, under their published names. Rates are about the vertical and positive in the jumper's own
/// turning direction.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Readout {
    /// Turned from take-off to touch-down.
    pub air_turns: f64,
    pub hang_time_s: f64,
    pub jump_height_m: f64,
    pub takeoff_rate_rad_s: f64,
    pub peak_rate_rad_s: f64,
    pub mean_rate_rad_s: f64,
    pub touchdown_rate_rad_s: f64,
    /// About the direction of the angular momentum.
    pub inertia_takeoff_kg_m2: f64,
    /// The smallest reached.
    pub inertia_least_kg_m2: f64,
    /// About the CM, world axes; constant in flight.
    #[serde(serialize_with = "as_list")]
    pub angular_momentum_kg_m2_s: DVec3,
    /// Kinetic energy relative to the CM, limbs included, at take-off.
    pub energy_takeoff_j: f64,
    /// The largest reached, also while opening.
    pub energy_peak_j: f64,
    pub energy_touchdown_j: f64,
    /// Net work of the joints from take-off until the opening begins; with gravity alone from
    /// outside it is what the energy relative to the CM grows by.
    pub closing_work_j: f64,
    /// The same from there to touch-down; negative where the turning pushes the limbs out.
    pub opening_work_j: f64,
    /// Long axis against the vertical.
    pub tilt_takeoff_rad: f64,
    pub tilt_peak_rad: f64,
    pub tilt_touchdown_rad: f64,
    /// Vertical speed of the CM at touch-down, downwards positive.
    pub touchdown_speed_m_s: f64,
    /// Estimate, lowest and highest, in body weights.
    pub landing_load_bw: [f64; 2],
    /// Size about the vertical as the ice is met: what is left to stop of the turning.
    pub landing_angular_momentum_kg_m2_s: f64,
    /// Estimate, lowest and highest: mean torque that would stop it in the same time as the fall.
    pub landing_torque_n_m: [f64; 2],
}

fn as_list<S: Serializer>(v: &DVec3, serializer: S) -> Result<S::Ok, S::Error> {
    v.to_array().serialize(serializer)
}

/// The extremes over a flight's samples.
struct Extremes {
    rate_rad_s: f64,
    inertia_kg_m2: f64,
    energy_j: f64,
    tilted: FlightSample,
}

impl Extremes {
    fn of(flight: &Flight) -> Self {
        let sign = flight.table.plan.spec.turning.sign();
        let first = *flight.takeoff();
        let mut extremes = Self {
            rate_rad_s: sign * first.spin_rad_s,
            inertia_kg_m2: first.inertia_kg_m2,
            energy_j: first.energy_j,
            tilted: first,
        };
        let (mut tilted, mut least) = (0, first.uprightness());
        for (i, sample) in flight.samples.iter().enumerate() {
            extremes.rate_rad_s = extremes.rate_rad_s.max(sign * sample.spin_rad_s);
            extremes.inertia_kg_m2 = extremes.inertia_kg_m2.min(sample.inertia_kg_m2);
            extremes.energy_j = extremes.energy_j.max(sample.energy_j);
            // The tilt itself only of the one that is tilted most.
            let upright = sample.uprightness();
            if upright < least {
                (tilted, least) = (i, upright);
            }
        }
        extremes.tilted = flight.samples[tilted];
        extremes
    }
}

/// Energy at the beginning of the opening, also where the closing is still going on then; at
/// touch-down where that comes first.
fn energy_as_opening_begins_j(flight: &Flight) -> f64 {
    let open_s = flight.open_s.min(flight.touchdown_s);
    let found = flight.samples.iter().find(|sample| sample.t_s == open_s);
    found.map_or_else(|| flight.at(open_s).energy_j, |sample| sample.energy_j)
}

/// What takes one energy to the other; none where they differ by no more than the
/// integration's own error.
fn work_j(from_j: f64, to_j: f64) -> f64 {
    let work_j = to_j - from_j;
    if work_j.abs() <= 1e-9 * from_j.max(to_j) {
        0.0
    } else {
        work_j
    }
}

impl Readout {
    /// `stopping_time_s`: shortest and longest time in which the landing stops the body.
    pub fn new(flight: &Flight, stopping_time_s: [f64; 2]) -> Self {
        let (first, last) = (flight.takeoff(), flight.touchdown());
        let sign = flight.table.plan.spec.turning.sign();
        let extremes = Extremes::of(flight);
        let opening_j = energy_as_opening_begins_j(flight);
        // A foot can meet the ice while the body still rises: then nothing falls.
        let touchdown_speed_m_s =
            (GRAVITY_M_S2 * flight.touchdown_s - flight.takeoff_speed_m_s).max(0.0);
        let landing_angular_momentum_kg_m2_s = flight.h_kg_m2_s.y.abs();
        Self {
            air_turns: last.air_turns(),
            hang_time_s: flight.touchdown_s,
            jump_height_m: flight.launch.jump_height_m,
            takeoff_rate_rad_s: sign * first.spin_rad_s,
            peak_rate_rad_s: extremes.rate_rad_s,
            mean_rate_rad_s: last.turned_rad / flight.touchdown_s,
            touchdown_rate_rad_s: sign * last.spin_rad_s,
            inertia_takeoff_kg_m2: first.inertia_kg_m2,
            inertia_least_kg_m2: extremes.inertia_kg_m2,
            angular_momentum_kg_m2_s: flight.h_kg_m2_s,
            energy_takeoff_j: first.energy_j,
            energy_peak_j: extremes.energy_j,
            energy_touchdown_j: last.energy_j,
            closing_work_j: work_j(first.energy_j, opening_j),
            opening_work_j: work_j(opening_j, last.energy_j),
            tilt_takeoff_rad: first.tilt_rad(),
            tilt_peak_rad: extremes.tilted.tilt_rad(),
            tilt_touchdown_rad: last.tilt_rad(),
            touchdown_speed_m_s,
            landing_load_bw: load_bw(touchdown_speed_m_s, stopping_time_s),
            landing_angular_momentum_kg_m2_s,
            landing_torque_n_m: stopping_torque_n_m(
                landing_angular_momentum_kg_m2_s,
                stopping_time_s,
            ),
        }
    }
}
