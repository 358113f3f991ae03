//! What the joints do while closing and while opening. From outside only gravity acts, which does no
//! work on the motion relative to the CM, so that work is what the kinetic energy of that motion
//! grows by (work-energy theorem; König's theorem for the sum over parts).

use glam::DVec3;
use proptest::prelude::*;

use crate::{body_sums, space};
use turns_aloft::physics::flight::Flight;
use turns_aloft::scenario::fly::Jump;
use turns_aloft::scenario::{Scenario, starts};

/// Kinetic energy relative to the CM at a time, J: of each part by itself, from where the pose says
/// it moves and turns.
fn energy_j(flight: &Flight, t_s: f64) -> f64 {
    let (body, pose) = (&flight.table.body, flight.pose_at(t_s));
    let moving = body_sums::cm_velocity(body, &pose);
    let doubled: f64 = body
        .parts
        .iter()
        .map(|part| {
            let along = pose.velocity_m_s(part.segment, part.cm_m) - moving;
            let own: DVec3 =
                pose.orientation(part.segment).conjugate() * pose.segment_rate_rad_s(part.segment);
            part.mass_kg * along.length_squared() + own.dot(part.moments_kg_m2 * own)
        })
        .sum();
    0.5 * doubled
}

/// Both works and all three energies against the sums over the parts; 1e-6 of the largest of them.
fn check(jump: &Jump) -> Result<(), TestCaseError> {
    let (flight, r) = (&jump.flight, &jump.readout);
    let begins_s = flight.open_s.min(flight.touchdown_s);
    let [first, between, last] =
        [0.0, begins_s, flight.touchdown_s].map(|t_s| energy_j(flight, t_s));
    let size = first.max(between).max(last);
    for (what, found, expected) in [
        ("energy at take-off", r.energy_takeoff_j, first),
        ("energy at touch-down", r.energy_touchdown_j, last),
        ("work of closing", r.closing_work_j, between - first),
        ("work of opening", r.opening_work_j, last - between),
        ("both", r.closing_work_j + r.opening_work_j, last - first),
    ] {
        prop_assert!(
            (found - expected).abs() <= 1e-6 * size,
            "{}: {} is not {}",
            what,
            found,
            expected
        );
    }
    Ok(())
}

proptest! {
    #![proptest_config(space::cases(256))]

    #[test]
    fn the_work_is_what_the_energy_grows_by(scenario in space::scenario()) {
        check(&scenario.fly())?;
    }

    /// An opening that begins before the closing is over.
    #[test]
    fn also_when_closing_and_opening_overlap(scenario in space::scenario(), share in 0.0..0.9_f64) {
        let mut scenario = scenario;
        scenario.close_time_s = 0.8;
        scenario.open_lead_s = 0.5;
        scenario.jump_height_m *= share;
        scenario.jump_height_m = scenario.jump_height_m.max(0.1);
        let jump = scenario.fly();
        prop_assume!(jump.flight.open_s < jump.flight.table.plan.closed_s());
        check(&jump)?;
    }
}

#[test]
fn the_starting_points_work_as_their_parts_do() {
    for start in starts::all() {
        let jump = start.scenario.fly();
        check(&jump).unwrap_or_else(|why| panic!("{}: {why}", start.name));
        assert!(jump.readout.closing_work_j > 0.0, "{}", start.name);
    }
}

/// Limbs that are thrown out in a moment take work and give it back as they are stopped: the largest
/// energy is then one of the opening and says nothing about pulling in.
#[test]
fn throwing_the_limbs_out_is_no_work_of_pulling_in() {
    let start = starts::named("child-single").expect("it is there");
    let opening_in = |open_time_s| {
        Scenario {
            open_time_s,
            ..start.scenario.clone()
        }
        .fly()
    };
    let quick = opening_in(0.06);
    check(&quick).expect("the sums over the parts");
    let r = &quick.readout;
    let most_j = r.energy_peak_j - r.energy_takeoff_j;
    assert!(most_j > 2.0 * r.closing_work_j, "{r:?}");
    // How fast the limbs go out changes nothing before that, and when it is by hardly anything.
    let slow = opening_in(start.scenario.open_lead_s).readout;
    assert!((slow.closing_work_j / r.closing_work_j - 1.0).abs() < 1e-3);
}
