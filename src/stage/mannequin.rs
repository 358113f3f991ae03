//! Meshes of the jumper's segments.
//!
//! Lengths come from the body that is flown; thicknesses are for looks only and enter no
//! computation. One mesh per segment, in the segment's own frame.

use bevy::math::Vec3;

use crate::mesh_builder::{MeshBuilder, Section};
use crate::palette::{self, BevyColour as _, Rgb};
use turns_aloft_figure::forms::{self, Form, Forms, Stuff};
use turns_aloft_physics::body::{Body, Part, Segment};

/// Rows of height over the hips as a fraction of the distance from hips to shoulders, half depth
/// (m) and half width (m) of the trunk.
const TRUNK: [(f32, f32, f32); 12] = [
    (-0.20, 0.020, 0.030),
    (-0.15, 0.076, 0.104),
    (-0.05, 0.104, 0.150),
    (0.08, 0.106, 0.156),
    (0.24, 0.092, 0.132),
    (0.40, 0.080, 0.112),
    (0.58, 0.090, 0.124),
    (0.76, 0.104, 0.148),
    (0.90, 0.100, 0.158),
    (1.00, 0.078, 0.142),
    (1.06, 0.058, 0.094),
    (1.11, 0.030, 0.036),
];

/// A hand mass is drawn as a steel ball of its mass enlarged by this factor, to be visible beside a
/// hand.
const HAND_MASS_SHOWN: f32 = 2.2;

/// Builds the meshes for one body.
pub struct Mannequin<'a> {
    pub body: &'a Body,
    /// Factor of the thicknesses for this body's stature.
    pub scale: f32,
}

impl<'a> Mannequin<'a> {
    pub fn new(body: &'a Body) -> Self {
        Self {
            body,
            scale: forms::scale(body),
        }
    }

    pub fn segment(&self, segment: Segment) -> MeshBuilder {
        use Segment::{
            Head, LeftFoot, LeftForearm, LeftHand, LeftShank, LeftThigh, LeftUpperArm, LowerTrunk,
            MiddleTrunk, RightFoot, RightForearm, RightHand, RightShank, RightThigh, RightUpperArm,
            UpperTrunk,
        };
        let tint = tint(segment);
        match segment {
            LowerTrunk | MiddleTrunk => self.trunk(segment),
            UpperTrunk => self.chest(),
            Head => self.head(),
            LeftUpperArm | RightUpperArm => self.limb(segment, 0.050, 0.037, tint),
            LeftForearm | RightForearm => self.limb(segment, 0.037, 0.027, tint),
            LeftHand | RightHand => self.hand(segment),
            LeftThigh | RightThigh => self.limb(segment, 0.082, 0.053, tint),
            LeftShank | RightShank => solid(&forms::shank(self.body, segment), tint),
            LeftFoot | RightFoot => solid(&forms::foot(self.body), tint),
        }
    }

    /// From the segment's joint to the next one.
    fn limb(&self, segment: Segment, from_m: f32, to_m: f32, tint: Rgb) -> MeshBuilder {
        let mut mesh_builder = MeshBuilder::default();
        let scale = forms::girth(self.body);
        mesh_builder.limb(
            Vec3::ZERO,
            self.end(segment),
            from_m * scale,
            to_m * scale,
            tint.linear(),
        );
        mesh_builder
    }

    /// The segment's part of the trunk; its ends match its neighbours' while the trunk is straight.
    fn trunk(&self, segment: Segment) -> MeshBuilder {
        let lengths = [
            Segment::LowerTrunk,
            Segment::MiddleTrunk,
            Segment::UpperTrunk,
        ]
        .map(|s| self.end(s).y);
        let shoulder = self.joint(Segment::LeftUpperArm).y;
        let shoulders_m = lengths[0] + lengths[1] + shoulder;
        let (top, bottom) = (TRUNK[TRUNK.len() - 1].0, TRUNK[0].0);
        let (base_m, from_m, to_m) = match segment {
            Segment::LowerTrunk => (0.0, bottom * shoulders_m, lengths[0]),
            Segment::MiddleTrunk => (lengths[0], 0.0, lengths[1]),
            _ => (
                lengths[0] + lengths[1],
                0.0,
                shoulder + (top - 1.0) * shoulders_m,
            ),
        };
        let rows = 10;
        let heights = (0..=rows).map(|i| from_m + (to_m - from_m) * i as f32 / rows as f32);
        let section = |height_m: f32| {
            let (depth, width) = trunk_at((base_m + height_m) / shoulders_m);
            Section {
                middle_m: Vec3::new(0.0, height_m, 0.0),
                half_depth_m: depth * self.scale,
                half_width_m: width * self.scale,
            }
        };
        let mut mesh_builder = MeshBuilder::default();
        mesh_builder.loft(heights, section, palette::now().suit.linear());
        mesh_builder
    }

    /// Upper trunk with the shoulder line and the neck.
    fn chest(&self) -> MeshBuilder {
        let mut mesh_builder = self.trunk(Segment::UpperTrunk);
        let suit = palette::now().suit.linear();
        let scale = self.scale;
        let shoulder = self.joint(Segment::LeftUpperArm);
        let neck = Vec3::new(0.0, shoulder.y + 0.035 * scale, 0.0);
        for arm in [Segment::LeftUpperArm, Segment::RightUpperArm] {
            mesh_builder.limb(neck, self.joint(arm), 0.050 * scale, 0.046 * scale, suit);
        }
        let skin = palette::now().skin.linear();
        mesh_builder.limb(
            neck,
            self.end(Segment::UpperTrunk),
            0.056 * scale,
            0.051 * scale,
            skin,
        );
        mesh_builder
    }

    fn head(&self) -> MeshBuilder {
        let mut mesh_builder = MeshBuilder::default();
        let scale = self.scale;
        let at = |x: f32, y: f32, z: f32| Vec3::new(x, y, z) * scale;
        let (skin, hair) = (palette::now().skin.linear(), palette::now().dark.linear());
        // The face ends at the crown, which is the end of the segment.
        let middle = self.end(Segment::Head) - at(-0.012, 0.120, 0.0);
        mesh_builder.limb(
            Vec3::ZERO,
            middle - at(0.02, 0.04, 0.0),
            0.051 * scale,
            0.055 * scale,
            skin,
        );
        mesh_builder.ball(middle, at(0.097, 0.120, 0.083), skin);
        mesh_builder.ball(
            middle + at(-0.019, 0.022, 0.0),
            at(0.099, 0.111, 0.090),
            hair,
        );
        mesh_builder.ball(
            middle + at(-0.118, 0.060, 0.0),
            at(0.040, 0.040, 0.040),
            hair,
        );
        mesh_builder.ball(
            middle + at(0.095, -0.018, 0.0),
            at(0.022, 0.019, 0.013),
            skin,
        );
        for side in [-1.0, 1.0] {
            mesh_builder.ball(
                middle + at(0.081, 0.012, 0.033 * side),
                at(0.012, 0.013, 0.010),
                hair,
            );
        }
        mesh_builder
    }

    fn hand(&self, segment: Segment) -> MeshBuilder {
        let scale = self.scale;
        let knuckle = self.end(segment);
        let skin = palette::now().skin.linear();
        let mut mesh_builder = MeshBuilder::default();
        mesh_builder.limb(Vec3::ZERO, knuckle, 0.027 * scale, 0.034 * scale, skin);
        mesh_builder.limb(knuckle, knuckle * 2.0, 0.033 * scale, 0.018 * scale, skin);
        for held in self.body.parts.iter().filter(|part| is_held(part, segment)) {
            // Moment of inertia of a solid ball: 0.4 m r².
            let radius_m = (held.moments_kg_m2.x / (0.4 * held.mass_kg)).sqrt() as f32;
            let shown = Vec3::splat(HAND_MASS_SHOWN * radius_m);
            mesh_builder.ball(
                held.cm_m.as_vec3(),
                shown,
                palette::now().hand_mass.linear(),
            );
        }
        mesh_builder
    }

    fn end(&self, segment: Segment) -> Vec3 {
        self.body.link(segment).end_m.as_vec3()
    }

    fn joint(&self, segment: Segment) -> Vec3 {
        self.body.link(segment).joint_m.as_vec3()
    }
}

/// Forms in the colours of what they are made of.
fn solid(forms: &Forms, tint: Rgb) -> MeshBuilder {
    let mut mesh_builder = MeshBuilder::default();
    let colours = palette::now();
    for (form, stuff) in forms {
        let color = match stuff {
            Stuff::Leg => tint,
            Stuff::Boot => tint.over(colours.dark, 0.45),
            Stuff::Shoe => tint.over(colours.dark, 0.5),
            Stuff::Skin => colours.skin,
            Stuff::Sole => colours.sole,
            Stuff::Steel => colours.steel,
        }
        .linear();
        match *form {
            Form::Limb {
                ends_m: [from, to],
                radii_m: [from_m, to_m],
            } => mesh_builder.limb(from, to, from_m, to_m, color),
            Form::Ball { centre_m, radii_m } => mesh_builder.ball(centre_m, radii_m, color),
            Form::Block { centre_m, half_m } => mesh_builder.block(centre_m, half_m, color),
        }
    }
    mesh_builder
}

/// Left and right limbs have different colours.
pub fn tint(segment: Segment) -> Rgb {
    use Segment::{LeftFoot, LeftForearm, LeftHand, LeftShank, LeftThigh, LeftUpperArm};
    match segment {
        LeftUpperArm | LeftForearm | LeftHand | LeftThigh | LeftShank | LeftFoot => {
            palette::now().left_side
        }
        _ => palette::now().suit,
    }
}

/// Whether the part is a mass held in the hand.
fn is_held(part: &Part, hand: Segment) -> bool {
    part.segment == hand && part.name != hand.name()
}

/// Half depth and half width of the trunk at a height, m, interpolated between the rows of `TRUNK`.
fn trunk_at(height: f32) -> (f32, f32) {
    let last = TRUNK.len() - 1;
    let height = height.clamp(TRUNK[0].0, TRUNK[last].0);
    let above = TRUNK.partition_point(|row| row.0 <= height).clamp(1, last);
    let row = |i: usize| TRUNK[i.min(last)];
    let (a, b) = (row(above - 1), row(above));
    let span = b.0 - a.0;
    let x = (height - a.0) / span;
    // Cubic Hermite, slopes from the neighbours on both sides.
    let blend = |of: fn((f32, f32, f32)) -> f32| {
        let slope = |low: usize, high: usize| {
            let (low, high) = (row(low), row(high));
            (of(high) - of(low)) / (high.0 - low.0) * span
        };
        let from = slope(above.saturating_sub(2), above);
        let to = slope(above - 1, (above + 1).min(last));
        let (x2, x3) = (x * x, x * x * x);
        of(a) * (2.0 * x3 - 3.0 * x2 + 1.0)
            + from * (x3 - 2.0 * x2 + x)
            + of(b) * (3.0 * x2 - 2.0 * x3)
            + to * (x3 - x2)
    };
    (blend(|row| row.1), blend(|row| row.2))
}
