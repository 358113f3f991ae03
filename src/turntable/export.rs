//! A programme as plain data: the exact body, how its joints stand over time, and what was found, for
//! whoever wants to compute it again with other means. In the words of the export of a flight.

use serde::Serialize;

use turns_aloft_physics::body::Segment;
use turns_aloft_scenario::export::{PartData, wxyz};

use crate::planned::Planned;

/// Everything that a run is computed from, then what came of it. SI units; quaternions [w, x, y, z] from the
/// own axes to those of the parent. The hinge is about Y, through the origin.
#[derive(Debug, Serialize)]
pub struct Export {
    turns_aloft_turntable_export: u32,
    bearing: Bearing,
    segments: Vec<SegmentData>,
    parts: Vec<PartData>,
    /// How the joints stand, at even times.
    measured: Joints,
    samples: Vec<SampleData>,
}

#[derive(Debug, Serialize)]
struct Bearing {
    inertia_kg_m2: f64,
    friction_torque_n_m: f64,
    friction_viscous_n_m_s: f64,
    first_rate_rad_s: f64,
    /// Mid-hip from the axis.
    hips_m: [f64; 3],
}

#[derive(Debug, Serialize)]
struct SegmentData {
    name: &'static str,
    parent: Option<&'static str>,
    joint_m: [f64; 3],
}

#[derive(Debug, Serialize)]
struct Joints {
    times_s: Vec<f64>,
    /// Of all segments but the pelvis.
    rotations: Vec<Vec<[f64; 4]>>,
}

#[derive(Debug, Serialize)]
struct SampleData {
    t_s: f64,
    rate_rad_s: f64,
    turned_rad: f64,
    inertia_kg_m2: f64,
    momentum_kg_m2_s: f64,
    kinetic_j: f64,
    work_j: f64,
}

/// Version of the form.
const VERSION: u32 = 1;

/// From one posture to the next, s.
const POSTURES_EVERY_S: f64 = 0.005;

impl Export {
    pub fn new(planned: &Planned<'_>, sample_s: f64) -> Self {
        let person = planned.person();
        let (setup, body) = (&person.setup, &person.body);
        let [from_s, to_s] = planned.span_s();
        let count = libm::ceil((to_s - from_s) / POSTURES_EVERY_S) as usize;
        let times_s: Vec<f64> = (0..=count)
            .map(|i| from_s + (to_s - from_s) * (i as f64 / count as f64))
            .collect();
        let rotations = times_s.iter().map(|&t_s| {
            let posture = person.posture(&planned.coordinates(t_s).0);
            posture.joints[1..]
                .iter()
                .map(|&joint| wxyz(joint))
                .collect()
        });
        Self {
            turns_aloft_turntable_export: VERSION,
            bearing: Bearing {
                inertia_kg_m2: setup.bearing_inertia_kg_m2,
                friction_torque_n_m: setup.friction.torque_n_m,
                friction_viscous_n_m_s: setup.friction.viscous_n_m_s,
                first_rate_rad_s: setup.rate_rad_s,
                hips_m: [setup.hips_forward_m, 0.0, 0.0],
            },
            segments: Segment::ALL
                .map(|segment| SegmentData {
                    name: segment.name(),
                    parent: segment.parent().map(Segment::name),
                    joint_m: body.link(segment).joint_m.to_array(),
                })
                .into(),
            parts: PartData::of(body),
            measured: Joints {
                rotations: rotations.collect(),
                times_s,
            },
            samples: planned
                .run(sample_s)
                .samples
                .iter()
                .map(|sample| SampleData {
                    t_s: sample.t_s,
                    rate_rad_s: sample.rate_rad_s,
                    turned_rad: sample.turned_rad,
                    inertia_kg_m2: sample.inertia_kg_m2,
                    momentum_kg_m2_s: sample.momentum_kg_m2_s,
                    kinetic_j: sample.kinetic_j,
                    work_j: sample.work_j,
                })
                .collect(),
        }
    }
}
