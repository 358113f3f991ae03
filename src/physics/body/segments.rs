//! Body segment parameters of de Leva 1996, Table 4, and the joint breadths that go with them.
//!
//! Source: de Leva P. Adjustments to Zatsiorsky-Seluyanov's segment inertia parameters.
//! J Biomech 1996;29(9):1223-1230. doi 10.1016/0021-9290(95)00178-6. Adults (college age); for a
//! child the result is an estimate.

use serde::{Deserialize, Serialize};

/// Which of the two published tables a body is built from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum SegmentTable {
    Female,
    Male,
}

/// One row of the table: a segment as a share of the whole body.
///
/// Lengths in mm on the reference body, mass in % of body mass, CM in % of the length from the
/// proximal (upper) end, radii of gyration in % of the length about the axes through the CM.
#[derive(Debug, Clone, Copy)]
pub struct Row {
    pub length_mm: f64,
    pub mass_percent: f64,
    pub cm_percent: f64,
    /// About the sagittal (front-back) axis.
    pub sagittal_percent: f64,
    /// About the transverse (left-right) axis.
    pub transverse_percent: f64,
    /// About the longitudinal axis.
    pub longitudinal_percent: f64,
}

const fn row(length_mm: f64, mass_percent: f64, cm_percent: f64, radii: [f64; 3]) -> Row {
    Row {
        length_mm,
        mass_percent,
        cm_percent,
        sagittal_percent: radii[0],
        transverse_percent: radii[1],
        longitudinal_percent: radii[2],
    }
}

/// The rows used by the sixteen-segment body, with the stature they were measured at.
///
/// The upper trunk and the head are taken by the table's own alternative end points at the
/// seventh cervical vertebra (C7), because the neck joint sits there; `r x length` is the same in
/// either definition.
#[derive(Debug, Clone, Copy)]
pub struct Rows {
    pub stature_mm: f64,
    pub head: Row,
    pub upper_trunk: Row,
    pub middle_trunk: Row,
    pub lower_trunk: Row,
    pub upper_arm: Row,
    pub forearm: Row,
    pub hand: Row,
    pub thigh: Row,
    pub shank: Row,
    pub foot: Row,
    /// Mid-shoulder to mid-hip, the height of the shoulder joints above the hip joints.
    pub shoulder_above_hip_mm: f64,
    /// Distance of a shoulder joint from the midline over stature.
    pub shoulder_per_stature: f64,
    /// Distance of a hip joint from the midline over stature.
    pub hip_per_stature: f64,
}

/// The female table; reference body 1.735 m, 61.9 kg.
pub const FEMALE: Rows = Rows {
    stature_mm: 1735.0,
    head: row(243.7, 6.68, 48.41, [27.1, 29.5, 26.1]),
    upper_trunk: row(228.0, 15.45, 50.50, [46.6, 31.4, 44.9]),
    middle_trunk: row(205.3, 14.65, 45.12, [43.3, 35.4, 41.5]),
    lower_trunk: row(181.5, 12.47, 49.20, [43.3, 40.2, 44.4]),
    upper_arm: row(275.1, 2.55, 57.54, [27.8, 26.0, 14.8]),
    forearm: row(264.3, 1.38, 45.59, [26.1, 25.7, 9.4]),
    hand: row(78.0, 0.56, 74.74, [53.1, 45.4, 33.5]),
    thigh: row(368.5, 14.78, 36.12, [36.9, 36.4, 16.2]),
    shank: row(432.3, 4.81, 44.16, [27.1, 26.7, 9.3]),
    foot: row(228.3, 1.29, 40.14, [29.9, 27.9, 13.9]),
    shoulder_above_hip_mm: 497.9,
    shoulder_per_stature: 0.5 * BIACROMIAL_PER_STATURE * SHOULDER_CENTRE_PER_HALF_BREADTH,
    hip_per_stature: 0.5 * BI_ILIAC_PER_STATURE * HIP_CENTRE_PER_HALF_BREADTH,
};

/// The male table; reference body 1.741 m, 73.0 kg.
pub const MALE: Rows = Rows {
    stature_mm: 1741.0,
    head: row(242.9, 6.94, 50.02, [30.3, 31.5, 26.1]),
    upper_trunk: row(242.1, 15.96, 50.66, [50.5, 32.0, 46.5]),
    middle_trunk: row(215.5, 16.33, 45.02, [48.2, 38.3, 46.8]),
    lower_trunk: row(145.7, 11.17, 61.15, [61.5, 55.1, 58.7]),
    upper_arm: row(281.7, 2.71, 57.72, [28.5, 26.9, 15.8]),
    forearm: row(268.9, 1.62, 45.74, [27.6, 26.5, 12.1]),
    hand: row(86.2, 0.61, 79.00, [62.8, 51.3, 40.1]),
    thigh: row(422.2, 14.16, 40.95, [32.9, 32.9, 14.9]),
    shank: row(434.0, 4.33, 44.59, [25.5, 24.9, 10.3]),
    foot: row(258.1, 1.37, 44.15, [25.7, 24.5, 12.4]),
    shoulder_above_hip_mm: 515.5,
    shoulder_per_stature: 0.5 * BIACROMIAL_PER_STATURE * SHOULDER_CENTRE_PER_HALF_BREADTH,
    hip_per_stature: 0.5 * BI_ILIAC_PER_STATURE * HIP_CENTRE_PER_HALF_BREADTH,
};

impl SegmentTable {
    pub const fn rows(self) -> &'static Rows {
        match self {
            Self::Female => &FEMALE,
            Self::Male => &MALE,
        }
    }
}

impl Rows {
    /// The sum of all sixteen segment masses as printed, in % (99.99 female, 100.00 male).
    pub fn mass_sum_percent(&self) -> f64 {
        self.head.mass_percent
            + self.upper_trunk.mass_percent
            + self.middle_trunk.mass_percent
            + self.lower_trunk.mass_percent
            + 2.0
                * (self.upper_arm.mass_percent
                    + self.forearm.mass_percent
                    + self.hand.mass_percent
                    + self.thigh.mass_percent
                    + self.shank.mass_percent
                    + self.foot.mass_percent)
    }
}

/// Shoulder (biacromial) breadth over stature: Drillis & Contini 1966, NYU technical report
/// 1166-03, as in Winter, Biomechanics and Motor Control of Human Movement, fig. 4.1.
pub const BIACROMIAL_PER_STATURE: f64 = 0.259;

/// Distance of a shoulder joint centre from the midline over half the biacromial breadth. The
/// breadth is an outer one; the joint lies nearer the midline. Value from memory, no source.
pub const SHOULDER_CENTRE_PER_HALF_BREADTH: f64 = 0.845;

/// Hip (bi-iliac) breadth over stature; same source as the shoulder breadth.
pub const BI_ILIAC_PER_STATURE: f64 = 0.191;

/// Distance of a hip joint centre from the midline over half the bi-iliac breadth. The hip
/// centres are 0.72 of the distance between the anterior superior iliac spines apart (14 % medial
/// of each: Bell, Brand & Pedersen 1989, Hum Mov Sci 8:3-16); that the spines are 0.71 of the
/// outer breadth apart is from memory.
pub const HIP_CENTRE_PER_HALF_BREADTH: f64 = 0.72 * 0.71;

/// Height of the ankle joint above the sole over stature; same source as the shoulder breadth.
pub const ANKLE_HEIGHT_PER_STATURE: f64 = 0.039;

/// How far the heel lies behind the ankle joint, over the length of the foot: 0.06 m on the
/// reference female foot. Value from memory, no source.
pub const HEEL_BEHIND_ANKLE_PER_FOOT: f64 = 0.26;
