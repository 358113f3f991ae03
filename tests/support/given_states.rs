//! Flights with given centroidal states, by the product's own integration: a closing from one
//! inertia to another that no jumper has to have.

use std::sync::{Arc, OnceLock};

use turns_aloft::physics::body::Body;
use turns_aloft::physics::centroidal::CentroidalState;
use turns_aloft::physics::flight::{Flight, Launch};
use turns_aloft::physics::mass_properties::{MassProperties, RateFromMomentum};
use turns_aloft::physics::plan::{Plan, PlanSpec, Turning};
use turns_aloft::physics::sample_table::{SampleTable, TableStates};
use turns_aloft::physics::table::{PlanTable, Resolution};
use turns_aloft::physics::tree::Tree;
use turns_aloft::scenario::starts;

/// A plan that only closes, in `close_time_s` from take-off.
pub fn closing_only(close_time_s: f64) -> PlanSpec {
    PlanSpec {
        turning: Turning::Anticlockwise,
        close_delay_s: 0.0,
        close_time_s,
        arm_lag_s: 0.0,
        open_lead_s: 0.0,
        arm_asymmetry: 0.0,
        ..starts::all()[0].scenario.plan_spec()
    }
}

/// Flies these states, evenly spaced over the closing (two per step); after it the last one stays.
pub fn fly(body: Body, spec: PlanSpec, states: Vec<CentroidalState>, launch: Launch) -> Flight {
    let steps = (states.len() - 1) / 2;
    let properties = states
        .iter()
        .step_by(2)
        .map(|&s| MassProperties::from(s))
        .collect();
    let middles = states.iter().skip(1).step_by(2).map(RateFromMomentum::from);
    let table = PlanTable {
        tree: Arc::new(Tree::new(&body)),
        body: Arc::new(body),
        plan: Plan::new(spec.clone()),
        resolution: Resolution::STANDARD,
        closing: SampleTable {
            start_s: spec.close_delay_s,
            unit_s: 1.0,
            step: spec.close_time_s / steps as f64,
            states: Arc::new(TableStates {
                properties,
                middles: middles.collect(),
                halves: None,
            }),
        },
        opening: None,
        finer: OnceLock::new(),
    };
    Flight::new(Arc::new(table), launch)
}
