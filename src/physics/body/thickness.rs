//! How thick the segments are: published girths and breadths, scaled to a body.
//!
//! Limbs, chest and hips: Heinz G, Peterson LJ, Johnson RW, Kerk CJ. Exploring relationships in body
//! dimensions. J Stat Educ 2003;11(2); means over its published rows, 260 women and 247 men who
//! exercise several hours a week. Waist, buttocks, hand, foot, head and neck: Gordon CC et al. 2012
//! Anthropometric survey of U.S. Army personnel, NATICK/TR-15/007, 2014; means of 1986 women and 4082
//! men, through a secondary catalogue. Adults: for a child the thickness is an estimate.
//!
//! A girth scales with the root of mass over stature: the same flesh on the same length. Boots and
//! what the hands hold are left out.

use std::f64::consts::PI;

use glam::DVec3;

use crate::body::model::{Body, SEGMENTS, Segment};
use crate::body::segments::SegmentTable;

/// The form of a segment, in its own frame.
#[derive(Debug, Clone, Copy)]
pub enum Solid {
    /// Round, with a radius that changes evenly from one end to the other and round ends: a limb.
    Cone {
        ends_m: [DVec3; 2],
        radii_m: [f64; 2],
    },
    /// A flat upright board with a thick round edge, standing across the body: a part of the trunk.
    Board {
        heights_m: [f64; 2],
        half_width_m: f64,
        radius_m: f64,
    },
}

/// Mean stature and mass of a sample, and the mean girths (around) and breadths (across), cm.
struct Active {
    stature_m: f64,
    mass_kg: f64,
    /// Flexed: the upper arm of a bent arm.
    biceps_girth: f64,
    /// At its fullest.
    forearm_girth: f64,
    wrist_girth: f64,
    knee_girth: f64,
    /// At its fullest.
    calf_girth: f64,
    ankle_girth: f64,
    chest_breadth: f64,
    /// Spine to breastbone.
    chest_depth: f64,
    /// Across the greater trochanters.
    hip_breadth: f64,
}

/// The other sample, likewise.
struct Army {
    stature_m: f64,
    mass_kg: f64,
    waist_breadth: f64,
    waist_depth: f64,
    buttock_depth: f64,
    head_breadth: f64,
    neck_girth: f64,
    hand_breadth: f64,
    hand_girth: f64,
    foot_breadth: f64,
}

const ACTIVE_WOMEN: Active = Active {
    stature_m: 1.6487,
    mass_kg: 60.60,
    biceps_girth: 28.10,
    forearm_girth: 23.76,
    wrist_girth: 15.06,
    knee_girth: 35.26,
    calf_girth: 35.01,
    ankle_girth: 21.21,
    chest_breadth: 26.10,
    chest_depth: 17.72,
    hip_breadth: 31.46,
};

const ACTIVE_MEN: Active = Active {
    stature_m: 1.7775,
    mass_kg: 78.14,
    biceps_girth: 34.40,
    forearm_girth: 28.24,
    wrist_girth: 17.19,
    knee_girth: 37.20,
    calf_girth: 37.21,
    ankle_girth: 23.16,
    chest_breadth: 29.95,
    chest_depth: 20.81,
    hip_breadth: 32.53,
};

const ARMY_WOMEN: Army = Army {
    stature_m: 1.6285,
    mass_kg: 67.76,
    waist_breadth: 29.99,
    waist_depth: 21.30,
    buttock_depth: 23.29,
    head_breadth: 14.78,
    neck_girth: 32.98,
    hand_breadth: 7.82,
    hand_girth: 18.66,
    foot_breadth: 9.27,
};

const ARMY_MEN: Army = Army {
    stature_m: 1.7562,
    mass_kg: 85.52,
    waist_breadth: 32.64,
    waist_depth: 23.78,
    buttock_depth: 24.58,
    head_breadth: 15.43,
    neck_girth: 39.76,
    hand_breadth: 8.83,
    hand_girth: 21.23,
    foot_breadth: 10.19,
};

/// Xiphion to suprasternale over stature: the upper trunk by de Leva's primary end points (1996,
/// Table 4), 142.5 mm of 1735 and 170.7 mm of 1741. The chest ends there; the shoulders slope above.
const CHEST_PER_STATURE: [f64; 2] = [142.5 / 1735.0, 170.7 / 1741.0];

/// Metres per centimetre, for a girth's radius: C / (2 pi).
const CM: f64 = 0.01;

/// The forms of all segments of a body, in the order of [`Segment::ALL`].
pub fn solids(body: &Body) -> [Solid; SEGMENTS] {
    let (active, army, chest_per_stature) = match body.spec.table {
        SegmentTable::Female => (&ACTIVE_WOMEN, &ARMY_WOMEN, CHEST_PER_STATURE[0]),
        SegmentTable::Male => (&ACTIVE_MEN, &ARMY_MEN, CHEST_PER_STATURE[1]),
    };
    let per_length = body.spec.body_mass_kg / body.spec.stature_m;
    let active_scale = CM * (per_length / (active.mass_kg / active.stature_m)).sqrt();
    let army_scale = CM * (per_length / (army.mass_kg / army.stature_m)).sqrt();
    let girth = |cm: f64| cm * active_scale / (2.0 * PI);
    let board = |heights_m, breadth_m: f64, depth_m: f64| Solid::Board {
        heights_m,
        half_width_m: (0.5 * (breadth_m - depth_m)).max(0.0),
        radius_m: 0.5 * depth_m,
    };
    let cone = |end_m: DVec3, radii_m| Solid::Cone {
        ends_m: [DVec3::ZERO, end_m],
        radii_m,
    };
    let head_radius_m = 0.5 * army.head_breadth * army_scale;
    let chest_depth_m = active.chest_depth * active_scale;
    let chest_m = chest_per_stature * body.spec.stature_m;
    Segment::ALL.map(|segment| {
        let end_m = body.link(segment).end_m;
        match segment {
            Segment::LowerTrunk => board(
                [0.0, end_m.y],
                active.hip_breadth * active_scale,
                army.buttock_depth * army_scale,
            ),
            Segment::MiddleTrunk => board(
                [0.0, end_m.y],
                army.waist_breadth * army_scale,
                army.waist_depth * army_scale,
            ),
            Segment::UpperTrunk => board(
                [0.0, (chest_m - 0.5 * chest_depth_m).max(0.0)],
                active.chest_breadth * active_scale,
                chest_depth_m,
            ),
            Segment::Head => cone(
                end_m - DVec3::Y * head_radius_m,
                [army.neck_girth * army_scale / (2.0 * PI), head_radius_m],
            ),
            Segment::LeftUpperArm | Segment::RightUpperArm => cone(
                end_m,
                [girth(active.biceps_girth), girth(active.forearm_girth)],
            ),
            Segment::LeftForearm | Segment::RightForearm => cone(
                end_m,
                [girth(active.forearm_girth), girth(active.wrist_girth)],
            ),
            Segment::LeftHand | Segment::RightHand => {
                cone(end_m, [army.hand_radius_m(army_scale); 2])
            }
            // Both thighs together are as broad as the hips of a body that stands with closed legs.
            // Thicker ones press each other flat in the middle.
            Segment::LeftThigh | Segment::RightThigh => {
                let middle_m = body.link(segment).joint_m.z.abs();
                let top_m = (0.25 * active.hip_breadth * active_scale).min(middle_m);
                cone(end_m, [top_m, girth(active.knee_girth).min(top_m)])
            }
            Segment::LeftShank | Segment::RightShank => {
                cone(end_m, [girth(active.calf_girth), girth(active.ankle_girth)])
            }
            Segment::LeftFoot | Segment::RightFoot => {
                let toe_radius_m = 0.5 * army.foot_breadth * army_scale;
                let height_m = DVec3::Y * end_m.y;
                Solid::Cone {
                    ends_m: [height_m, height_m + DVec3::X * (end_m.x - toe_radius_m)],
                    radii_m: [girth(active.ankle_girth), toe_radius_m],
                }
            }
        }
    })
}

impl Army {
    /// Of a round hand as thick as the flat one on the whole. The thickness t follows from breadth b
    /// and girth p of a flat form with round edges: p = 2 (b - t) + pi t.
    fn hand_radius_m(&self, scale: f64) -> f64 {
        let thickness = (self.hand_girth - 2.0 * self.hand_breadth) / (PI - 2.0);
        0.5 * (self.hand_breadth * thickness).sqrt() * scale
    }
}
