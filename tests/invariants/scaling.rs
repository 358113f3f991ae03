//! Exact laws of scale: a heavier body, and a larger one.

use std::sync::Arc;

use proptest::prelude::*;

use crate::space;
use turns_aloft::physics::body::{Body, BodySpec};
use turns_aloft::physics::efforts::Efforts;
use turns_aloft::physics::flight::{Flight, Launch, Spin};
use turns_aloft::physics::plan::{Plan, PlanSpec};
use turns_aloft::physics::table::{PlanTable, Resolution};
use turns_aloft::scenario::Scenario;

/// The same body with every mass times `mass` and every length times `length`, whatever it
/// carries.
fn scaled(mut body: Body, mass: f64, length: f64) -> Body {
    body.mass_kg *= mass;
    body.sole_m = body.sole_m.map(|point| point * length);
    for link in &mut body.links {
        link.mass_kg *= mass;
        link.joint_m *= length;
        link.cm_m *= length;
        link.end_m *= length;
        link.inertia_kg_m2 *= mass * length * length;
    }
    for part in &mut body.parts {
        part.mass_kg *= mass;
        part.cm_m *= length;
        part.moments_kg_m2 *= mass * length * length;
    }
    body
}

/// The jump of a body that is so much heavier and larger under the same gravity: lengths times
/// `length`, so times (and the steps of computation) times its root and rates divided by it.
fn fly(scenario: &Scenario, mass: f64, length: f64) -> Flight {
    let time = length.sqrt();
    let body = scaled(Body::new(scenario.body_spec()), mass, length);
    let plan = scenario.plan_spec();
    let plan = Plan::new(PlanSpec {
        close_delay_s: plan.close_delay_s * time,
        close_time_s: plan.close_time_s * time,
        arm_lag_s: plan.arm_lag_s * time,
        open_lead_s: plan.open_lead_s * time,
        open_time_s: plan.open_time_s * time,
        ..plan
    });
    let resolution = Resolution {
        longest_step_s: Resolution::STANDARD.longest_step_s * time,
        ..Resolution::STANDARD
    };
    let launch = Launch {
        spin: Spin::Rate(scenario.takeoff_rate_rad_s / time),
        jump_height_m: scenario.jump_height_m * length,
        ..scenario.launch()
    };
    Flight::new(Arc::new(PlanTable::new(body, plan, resolution)), launch)
}

proptest! {
    #![proptest_config(space::cases(128))]

    /// All masses times s: the same turns in the same time, I and h times s. All lengths times k
    /// under the same gravity (Froude's law): the same turns in root k times the time, I times
    /// k^2, h times k^(3/2). Exact but for rounding and for when a foot is within a nanometre of the
    /// ice: 1e-6. k is a power of four, so that no span is cut into a step more.
    #[test]
    fn heavier_and_larger_bodies_turn_alike(
        scenario in space::planned(),
        mass in 0.3..3.0_f64,
        length in prop::sample::select(vec![0.25, 4.0]),
    ) {
        let (one, other) = (fly(&scenario, 1.0, 1.0), fly(&scenario, mass, length));
        let time = length.sqrt();
        let close = |a: f64, b: f64| (a - b).abs() <= 1e-6 * (1.0 + b.abs());
        prop_assert!(close(other.touchdown_s, one.touchdown_s * time));
        let (end, expected) = (other.touchdown(), one.touchdown());
        prop_assert!(close(end.turned_rad, expected.turned_rad));
        prop_assert!(close(end.tilt_rad(), expected.tilt_rad()));
        let inertia = mass * length * length;
        prop_assert!(close(end.inertia_kg_m2 / inertia, expected.inertia_kg_m2));
        let h = inertia / time;
        prop_assert!(close(other.h_kg_m2_s.y / h, one.h_kg_m2_s.y));
        prop_assert!(close(end.energy_j / (h / time), expected.energy_j));
        let [hand, own] = [&other, &one].map(|flight| Efforts::new(flight).hand_force.value);
        prop_assert!(close(hand / mass, own));
    }

    /// A body with empty hands is built to the same law: lengths with stature, masses with body
    /// and boot mass. (A hand mass is a ball of steel and keeps its density.)
    #[test]
    fn bodies_are_built_to_scale(
        scenario in space::scenario(),
        mass in 0.3..3.0_f64,
        length in 0.5..2.0_f64,
    ) {
        let spec = BodySpec { hand_mass_kg: 0.0, ..scenario.body_spec() };
        let expected = scaled(Body::new(spec), mass, length);
        let built = Body::new(BodySpec {
            stature_m: spec.stature_m * length,
            body_mass_kg: spec.body_mass_kg * mass,
            boot_mass_kg: spec.boot_mass_kg * mass,
            ..spec
        });
        for (a, b) in built.links.iter().zip(&expected.links) {
            prop_assert!((a.mass_kg - b.mass_kg).abs() <= 1e-13 * b.mass_kg);
            prop_assert!((a.joint_m - b.joint_m).length() <= 1e-14);
            prop_assert!((a.cm_m - b.cm_m).length() <= 1e-14);
            let size = b.inertia_kg_m2.x_axis.length() + b.inertia_kg_m2.z_axis.length();
            let off = a.inertia_kg_m2 - b.inertia_kg_m2;
            prop_assert!(off.abs_diff_eq(glam::DMat3::ZERO, 1e-12 * size));
        }
    }
}
