//! The jumper's body: sixteen rigid segments in a tree rooted at the pelvis, with what they carry.
//!
//! Segment frames have their origin at the joint towards the pelvis and, in the standing posture
//! with the arms hanging, axes along the world's: x forward, y up, z to the right.

use crate::body::segments::{
    ANKLE_HEIGHT_PER_STATURE, HEEL_BEHIND_ANKLE_PER_FOOT, Row, Rows, SegmentTable,
};
use glam::{DMat3, DVec3};

/// Number of rigid segments.
pub const SEGMENTS: usize = 16;

/// The segments, parents before children.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[repr(usize)]
pub enum Segment {
    LowerTrunk,
    MiddleTrunk,
    UpperTrunk,
    Head,
    LeftUpperArm,
    LeftForearm,
    LeftHand,
    RightUpperArm,
    RightForearm,
    RightHand,
    LeftThigh,
    LeftShank,
    LeftFoot,
    RightThigh,
    RightShank,
    RightFoot,
}

use Segment::{
    Head, LeftFoot, LeftForearm, LeftHand, LeftShank, LeftThigh, LeftUpperArm, LowerTrunk,
    MiddleTrunk, RightFoot, RightForearm, RightHand, RightShank, RightThigh, RightUpperArm,
    UpperTrunk,
};

impl Segment {
    pub const ALL: [Self; SEGMENTS] = [
        LowerTrunk,
        MiddleTrunk,
        UpperTrunk,
        Head,
        LeftUpperArm,
        LeftForearm,
        LeftHand,
        RightUpperArm,
        RightForearm,
        RightHand,
        LeftThigh,
        LeftShank,
        LeftFoot,
        RightThigh,
        RightShank,
        RightFoot,
    ];

    /// The segment on the pelvis's side of this one's joint; the pelvis has none.
    pub const fn parent(self) -> Option<Self> {
        Some(match self {
            LowerTrunk => return None,
            MiddleTrunk | LeftThigh | RightThigh => LowerTrunk,
            UpperTrunk => MiddleTrunk,
            Head | LeftUpperArm | RightUpperArm => UpperTrunk,
            LeftForearm => LeftUpperArm,
            LeftHand => LeftForearm,
            RightForearm => RightUpperArm,
            RightHand => RightForearm,
            LeftShank => LeftThigh,
            LeftFoot => LeftShank,
            RightShank => RightThigh,
            RightFoot => RightShank,
        })
    }

    /// The same segment on the other side of the body.
    pub const fn mirrored(self) -> Self {
        match self {
            LeftUpperArm => RightUpperArm,
            LeftForearm => RightForearm,
            LeftHand => RightHand,
            LeftThigh => RightThigh,
            LeftShank => RightShank,
            LeftFoot => RightFoot,
            RightUpperArm => LeftUpperArm,
            RightForearm => LeftForearm,
            RightHand => LeftHand,
            RightThigh => LeftThigh,
            RightShank => LeftShank,
            RightFoot => LeftFoot,
            midline => midline,
        }
    }

    pub const fn name(self) -> &'static str {
        match self {
            LowerTrunk => "lower_trunk",
            MiddleTrunk => "middle_trunk",
            UpperTrunk => "upper_trunk",
            Head => "head",
            LeftUpperArm => "left_upper_arm",
            LeftForearm => "left_forearm",
            LeftHand => "left_hand",
            RightUpperArm => "right_upper_arm",
            RightForearm => "right_forearm",
            RightHand => "right_hand",
            LeftThigh => "left_thigh",
            LeftShank => "left_shank",
            LeftFoot => "left_foot",
            RightThigh => "right_thigh",
            RightShank => "right_shank",
            RightFoot => "right_foot",
        }
    }
}

/// What is on the feet, by its measures over stature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Footwear {
    /// Sole, heel and blade below the foot.
    pub drop_per_stature: f64,
    /// Top of the boot above the ankle joint.
    pub top_per_stature: f64,
}

impl Footwear {
    /// Nothing.
    pub const BAREFOOT: Self = Self {
        drop_per_stature: 0.0,
        top_per_stature: 0.0,
    };
}

/// Whose body it is and what it carries.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BodySpec {
    pub table: SegmentTable,
    pub stature_m: f64,
    /// Without boots and hand masses.
    pub body_mass_kg: f64,
    /// In each hand.
    pub hand_mass_kg: f64,
    /// On each foot, blade included.
    pub boot_mass_kg: f64,
    pub footwear: Footwear,
    /// Factor on the trunk's and the head's own moments of inertia; 1 is the published table. What
    /// the table leaves uncertain of a body's inertia is carried by it, the same in every posture.
    pub core_inertia: f64,
}

/// A rigid body: one segment's own tissue, or something it carries.
#[derive(Debug, Clone, Copy)]
pub struct Part {
    pub name: &'static str,
    /// The segment that it is fixed to.
    pub segment: Segment,
    pub mass_kg: f64,
    /// CM in the segment's frame, m.
    pub cm_m: DVec3,
    /// Principal moments about the CM along the segment's axes, kg m².
    pub moments_kg_m2: DVec3,
}

/// A segment together with all it carries, as one rigid body.
#[derive(Debug, Clone, Copy)]
pub struct Link {
    pub parent: Option<Segment>,
    /// Joint towards the pelvis, in the parent's frame, m.
    pub joint_m: DVec3,
    pub mass_kg: f64,
    /// CM in the segment's frame, m.
    pub cm_m: DVec3,
    /// Inertia about the CM in the segment's axes, kg m².
    pub inertia_kg_m2: DMat3,
    /// Far end of the segment's long axis (the next joint, the crown, the toes), own frame, m.
    pub end_m: DVec3,
}

/// A body ready to be put into postures.
#[derive(Debug, Clone)]
pub struct Body {
    pub spec: BodySpec,
    pub links: [Link; SEGMENTS],
    /// Segments in order, then what they carry. Masses add up to `mass_kg`.
    pub parts: Vec<Part>,
    /// Everything that flies, kg.
    pub mass_kg: f64,
    /// The two ends of each sole or blade, in the foot's frame, m: heel and toe.
    pub sole_m: [DVec3; 2],
}

impl Body {
    /// Builds the body. Lengths scale with stature, masses with body mass; the segments' masses
    /// add up to the body mass exactly (the printed percentages are divided by their sum).
    pub fn new(spec: BodySpec) -> Self {
        Self::with_rows(spec, spec.table.rows())
    }

    /// The same from the rows of another table than the one that `spec` names.
    pub fn with_rows(spec: BodySpec, rows: &Rows) -> Self {
        let frame = Frame::new(&spec, rows);
        let mut parts: Vec<Part> = Segment::ALL.iter().map(|&s| frame.part(s)).collect();
        parts.extend(frame.carried());
        let links = Segment::ALL.map(|segment| link(&frame, segment, &parts));
        let mass_kg = parts.iter().map(|part| part.mass_kg).sum();
        let sole_m = frame.sole();
        Self {
            spec,
            links,
            parts,
            mass_kg,
            sole_m,
        }
    }

    pub fn link(&self, segment: Segment) -> &Link {
        &self.links[segment as usize]
    }
}

/// Measures of one body while it is being built.
struct Frame<'a> {
    spec: &'a BodySpec,
    rows: &'a Rows,
    /// m on this body per mm in the table.
    scale: f64,
}

impl<'a> Frame<'a> {
    fn new(spec: &'a BodySpec, rows: &'a Rows) -> Self {
        Self {
            spec,
            rows,
            scale: spec.stature_m / rows.stature_mm,
        }
    }

    const fn row(&self, segment: Segment) -> &'a Row {
        match segment {
            LowerTrunk => &self.rows.lower_trunk,
            MiddleTrunk => &self.rows.middle_trunk,
            UpperTrunk => &self.rows.upper_trunk,
            Head => &self.rows.head,
            LeftUpperArm | RightUpperArm => &self.rows.upper_arm,
            LeftForearm | RightForearm => &self.rows.forearm,
            LeftHand | RightHand => &self.rows.hand,
            LeftThigh | RightThigh => &self.rows.thigh,
            LeftShank | RightShank => &self.rows.shank,
            LeftFoot | RightFoot => &self.rows.foot,
        }
    }

    fn length_m(&self, segment: Segment) -> f64 {
        self.row(segment).length_mm * self.scale
    }

    /// Joint towards the pelvis, in the parent's frame.
    fn joint(&self, segment: Segment) -> DVec3 {
        let stature = self.spec.stature_m;
        let shoulder_z = self.rows.shoulder_per_stature * stature;
        let hip_z = self.rows.hip_per_stature * stature;
        let shoulder_y = self.rows.shoulder_above_hip_mm * self.scale
            - self.length_m(LowerTrunk)
            - self.length_m(MiddleTrunk);
        match segment {
            LowerTrunk => DVec3::ZERO,
            LeftUpperArm => DVec3::new(0.0, shoulder_y, -shoulder_z),
            RightUpperArm => DVec3::new(0.0, shoulder_y, shoulder_z),
            LeftThigh => DVec3::new(0.0, 0.0, -hip_z),
            RightThigh => DVec3::new(0.0, 0.0, hip_z),
            MiddleTrunk | UpperTrunk | Head | LeftForearm | LeftHand | RightForearm | RightHand
            | LeftShank | LeftFoot | RightShank | RightFoot => {
                self.end(segment.parent().unwrap_or(LowerTrunk))
            }
        }
    }

    /// Far end of the segment, own frame: trunk and head point up, limbs hang, feet point forward.
    fn end(&self, segment: Segment) -> DVec3 {
        let length = self.length_m(segment);
        match segment {
            LowerTrunk | MiddleTrunk | UpperTrunk | Head => DVec3::new(0.0, length, 0.0),
            LeftFoot | RightFoot => {
                let ankle = ANKLE_HEIGHT_PER_STATURE * self.spec.stature_m;
                DVec3::new(
                    length * (1.0 - HEEL_BEHIND_ANKLE_PER_FOOT),
                    -0.5 * ankle,
                    0.0,
                )
            }
            _ => DVec3::new(0.0, -length, 0.0),
        }
    }

    /// The segment's own tissue.
    fn part(&self, segment: Segment) -> Part {
        let row = self.row(segment);
        let length = self.length_m(segment);
        let mass_kg = self.spec.body_mass_kg * row.mass_percent / self.rows.mass_sum_percent();
        let along = row.cm_percent / 100.0 * length;
        let moment = |percent: f64| {
            let radius = percent / 100.0 * length;
            mass_kg * radius * radius
        };
        let (sagittal, transverse, longitudinal) = (
            moment(row.sagittal_percent),
            moment(row.transverse_percent),
            moment(row.longitudinal_percent),
        );
        let upright = DVec3::new(sagittal, longitudinal, transverse);
        let (cm_m, moments_kg_m2) = match segment {
            // The table counts from the upper end; trunk and head grow upwards from their joint.
            LowerTrunk | MiddleTrunk | UpperTrunk | Head => (
                DVec3::new(0.0, length - along, 0.0),
                upright * self.spec.core_inertia,
            ),
            // The table counts from the heel; a foot's long axis points forward.
            LeftFoot | RightFoot => {
                let ankle = ANKLE_HEIGHT_PER_STATURE * self.spec.stature_m;
                let heel = -HEEL_BEHIND_ANKLE_PER_FOOT * length;
                (
                    DVec3::new(heel + along, -0.5 * ankle, 0.0),
                    DVec3::new(longitudinal, sagittal, transverse),
                )
            }
            _ => (DVec3::new(0.0, -along, 0.0), upright),
        };
        Part {
            name: segment.name(),
            segment,
            mass_kg,
            cm_m,
            moments_kg_m2,
        }
    }

    /// Hand masses and boots, as far as there are any.
    fn carried(&self) -> Vec<Part> {
        let mut carried = Vec::with_capacity(4);
        if self.spec.hand_mass_kg > 0.0 {
            carried.push(self.hand_mass("left_hand_mass", LeftHand));
            carried.push(self.hand_mass("right_hand_mass", RightHand));
        }
        if self.spec.boot_mass_kg > 0.0 {
            carried.push(self.boot("left_boot", LeftFoot));
            carried.push(self.boot("right_boot", RightFoot));
        }
        carried
    }

    /// A steel ball (7 850 kg/m3) held at the knuckle of the middle finger, the centre of a grip.
    fn hand_mass(&self, name: &'static str, segment: Segment) -> Part {
        let mass_kg = self.spec.hand_mass_kg;
        let radius = libm::cbrt(mass_kg / 7850.0 * 0.75 / std::f64::consts::PI);
        Part {
            name,
            segment,
            mass_kg,
            cm_m: self.end(segment),
            moments_kg_m2: DVec3::splat(0.4 * mass_kg * radius * radius),
        }
    }

    /// A boot with its blade: a uniform block as long and wide as the foot (width 0.055 of
    /// stature, from memory) from the ice to the top of the boot.
    fn boot(&self, name: &'static str, segment: Segment) -> Part {
        let mass_kg = self.spec.boot_mass_kg;
        let length = self.length_m(segment);
        let width = 0.055 * self.spec.stature_m;
        let top = self.spec.footwear.top_per_stature * self.spec.stature_m;
        let bottom = self.sole()[0].y;
        let height = top - bottom;
        let moment = |a: f64, b: f64| mass_kg * (a * a + b * b) / 12.0;
        Part {
            name,
            segment,
            mass_kg,
            cm_m: DVec3::new(
                length * (0.5 - HEEL_BEHIND_ANKLE_PER_FOOT),
                0.5 * (top + bottom),
                0.0,
            ),
            moments_kg_m2: DVec3::new(
                moment(height, width),
                moment(length, width),
                moment(length, height),
            ),
        }
    }

    /// Heel and toe of the sole or blade, in the foot's frame.
    fn sole(&self) -> [DVec3; 2] {
        let stature = self.spec.stature_m;
        let length = self.length_m(LeftFoot);
        let y = -(ANKLE_HEIGHT_PER_STATURE + self.spec.footwear.drop_per_stature) * stature;
        let heel = -HEEL_BEHIND_ANKLE_PER_FOOT * length;
        [DVec3::new(heel, y, 0.0), DVec3::new(heel + length, y, 0.0)]
    }
}

/// Joins a segment's parts into one rigid body.
fn link(frame: &Frame<'_>, segment: Segment, parts: &[Part]) -> Link {
    let own = || parts.iter().filter(|part| part.segment == segment);
    let mass_kg: f64 = own().map(|part| part.mass_kg).sum();
    let cm_m = own().map(|part| part.cm_m * part.mass_kg).sum::<DVec3>() / mass_kg;
    let inertia_kg_m2 = own()
        .map(|part| {
            DMat3::from_diagonal(part.moments_kg_m2) + point_inertia(part.mass_kg, part.cm_m - cm_m)
        })
        .fold(DMat3::ZERO, |sum, i| sum + i);
    Link {
        parent: segment.parent(),
        joint_m: frame.joint(segment),
        mass_kg,
        cm_m,
        inertia_kg_m2,
        end_m: frame.end(segment),
    }
}

/// Inertia of a point mass at `r` about the origin, kg m²: m (|r|² 1 - r rᵀ).
pub fn point_inertia(mass_kg: f64, r_m: DVec3) -> DMat3 {
    let r2 = r_m.length_squared();
    DMat3::from_cols(
        DVec3::new(r2 - r_m.x * r_m.x, -r_m.x * r_m.y, -r_m.x * r_m.z) * mass_kg,
        DVec3::new(-r_m.y * r_m.x, r2 - r_m.y * r_m.y, -r_m.y * r_m.z) * mass_kg,
        DVec3::new(-r_m.z * r_m.x, -r_m.z * r_m.y, r2 - r_m.z * r_m.z) * mass_kg,
    )
}
