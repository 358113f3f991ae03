//! How far a map goes along a lever: where jumps are, and as far as people could ask about.

use crate::scenario::Scenario;
use crate::scenario::fly::Jump;
use crate::scenario::keys::Key;
use crate::scenario::units::RateUnit;

/// Take-off rates of a map, rpm: our choice. The marks of a rate follow the body's plan; a map whose
/// ends moved while the arms are dragged on it would be no map.
const RATES_RPM: [f64; 2] = [50.0, 200.0];

/// The most that a map has in each hand, kg: our choice, a few times what training gloves weigh.
const HANDS_KG: f64 = 1.0;

/// From there to there, in the key's own unit; the same wherever on the map the jump is.
pub fn of(key: &Key, scenario: &Scenario, jump: &Jump) -> [f64; 2] {
    match key.key {
        "takeoff_rate_rad_s" => RATES_RPM.map(|rpm| RateUnit::Rpm.unit().to_si(rpm)),
        "hand_mass_kg" => [key.least, HANDS_KG],
        // The marks of a height are those of the ground.
        "jump_height_m" => {
            let beyond = scenario.marks(key, jump).and_then(|marks| marks.beyond);
            [key.least, beyond.unwrap_or(key.most)]
        }
        _ => [key.least, key.most],
    }
}
