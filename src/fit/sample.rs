//! A possible jump of an attempt, flown.

use crate::candidate::Candidate;
use turns_aloft_analysis::budget::{Cause, Losses};
use turns_aloft_physics::GRAVITY_M_S2;
use turns_aloft_physics::body::BodySpec;
use turns_aloft_physics::flight::Flight;
use turns_aloft_physics::table::Resolution;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::fly::Jump;

/// One possible jump of the attempt.
#[derive(Debug, Clone)]
pub struct Sample {
    /// A jump like any other; flown with the body below it hangs as long as this attempt.
    pub scenario: Scenario,
    /// How far the body's ratio of inertia is off from the table's.
    pub inertia_ratio_share: f64,
    pub body: BodySpec,
    /// When the flight began and ended, on the attempt's clock.
    pub takeoff_s: f64,
    pub landing_s: f64,
    /// The facing at take-off as a camera saw it.
    pub first_facing_rad: f64,
    /// By how much more than the jumper the facings turned over the flight.
    pub drift_rad: f64,
    /// How much lower than the model's the body landed, and so how high it rose.
    pub landing_offset_m: f64,
    pub rise_m: f64,
    pub air_turns: f64,
    pub peak_rate_rad_s: f64,
    /// In the order of [`Cause::ORDER`].
    pub losses: [f64; 4],
}

impl Sample {
    /// Of a candidate whose jump can be set.
    pub fn new(candidate: &Candidate, named: &Scenario) -> Self {
        let setting = &candidate.setting;
        let scenario = Scenario {
            name: named.name.clone(),
            note: named.note.clone(),
            ..setting.scenario.clone()
        };
        let (table, launch) = scenario.tabulated_as(candidate.body(), Resolution::STANDARD, &[]);
        let flight = Flight::for_time(table, launch, setting.hang_s());
        let losses = Losses::new(&scenario, &flight);
        Self {
            inertia_ratio_share: setting.inertia_ratio_share,
            body: candidate.body(),
            takeoff_s: setting.takeoff_s,
            landing_s: setting.landing_s,
            first_facing_rad: setting.first_facing_rad,
            drift_rad: setting.drift_rad,
            landing_offset_m: setting.landing_offset_m,
            rise_m: rise_m(&flight, setting.landing_offset_m),
            air_turns: flight.touchdown().air_turns(),
            peak_rate_rad_s: peak_rate_rad_s(&flight),
            losses: losses.losses,
            scenario,
        }
    }

    /// Flies it.
    pub fn fly(&self) -> Jump {
        self.scenario.fly_as(self.body, None)
    }

    /// In the air and on the ice before it.
    pub fn turns(&self) -> f64 {
        self.air_turns + self.scenario.pre_rotation_turns
    }

    pub fn lost(&self, cause: Cause) -> f64 {
        let place = Cause::ORDER.iter().position(|&one| one == cause);
        place.map_or(0.0, |place| self.losses[place])
    }

    pub fn largest_loss(&self) -> Cause {
        let each = Cause::ORDER.into_iter().zip(self.losses);
        let largest = each.max_by(|one, other| one.1.total_cmp(&other.1));
        largest.expect("there are causes").0
    }
}

fn peak_rate_rad_s(flight: &Flight) -> f64 {
    let sign = flight.table.plan.spec.turning.sign();
    let rates = flight.samples.iter().map(|sample| sign * sample.spin_rad_s);
    rates.fold(f64::NEG_INFINITY, f64::max)
}

/// How high the body rose that landed so much lower after the same time in the air: it left the ice
/// slower.
fn rise_m(flight: &Flight, landing_offset_m: f64) -> f64 {
    let speed_m_s = (flight.takeoff_speed_m_s - landing_offset_m / flight.touchdown_s).max(0.0);
    speed_m_s * speed_m_s / (2.0 * GRAVITY_M_S2)
}
