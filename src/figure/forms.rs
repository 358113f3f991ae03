//! The forms that shanks and feet are drawn with: bare, in shoes or in skates.
//!
//! Lengths are those of the body that is flown, thicknesses are for looks only. Each form is in the
//! frame of its segment.

use glam::Vec3;

use turns_aloft_physics::body::{Body, Segment};
use turns_aloft_physics::segments::ANKLE_HEIGHT_PER_STATURE;
use turns_aloft_scenario::ground::{SHOES, SKATES};

/// The stature that the thicknesses belong to, m; they scale with stature.
const DRAWN_STATURE_M: f64 = 1.735;

/// Mass over stature cubed of that body, kg/m³, and how much thinner a lighter one is drawn at most.
const DRAWN_BUILD_KG_M3: f64 = 11.85;
const THINNEST: f64 = 0.78;

/// A solid.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Form {
    /// Two balls and the cone tangent to both.
    Limb {
        ends_m: [Vec3; 2],
        radii_m: [f32; 2],
    },
    /// With these half axes.
    Ball { centre_m: Vec3, radii_m: Vec3 },
    /// With edges along the axes, half as long.
    Block { centre_m: Vec3, half_m: Vec3 },
}

/// What a form is made of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Stuff {
    /// The leg, in the colour of its side.
    Leg,
    Boot,
    Shoe,
    Skin,
    Sole,
    Steel,
}

pub type Forms = Vec<(Form, Stuff)>;

const fn limb(from_m: Vec3, to_m: Vec3, radii_m: [f32; 2]) -> Form {
    Form::Limb {
        ends_m: [from_m, to_m],
        radii_m,
    }
}

/// Factor of the thicknesses for a body's stature.
pub fn scale(body: &Body) -> f32 {
    (body.spec.stature_m / DRAWN_STATURE_M) as f32
}

/// Factor of the thicknesses of limbs and feet: a light body has thin ones, which may stand closer
/// together.
pub fn girth(body: &Body) -> f32 {
    let spec = &body.spec;
    let stature_m = spec.stature_m;
    let build_kg_m3 = spec.body_mass_kg / (stature_m * stature_m * stature_m);
    scale(body)
        * (build_kg_m3 / DRAWN_BUILD_KG_M3)
            .sqrt()
            .clamp(THINNEST, 1.0) as f32
}

/// A shank with a calf behind and, on skates, the shaft of the boot.
pub fn shank(body: &Body, segment: Segment) -> Forms {
    let (scale, ankle_m) = (girth(body), body.link(segment).end_m.as_vec3());
    let mut forms = vec![
        (
            limb(Vec3::ZERO, ankle_m, [0.053 * scale, 0.036 * scale]),
            Stuff::Leg,
        ),
        (
            Form::Ball {
                centre_m: ankle_m * 0.30 - Vec3::X * 0.014 * scale,
                radii_m: Vec3::new(0.050, 0.120, 0.048) * scale,
            },
            Stuff::Leg,
        ),
    ];
    if body.spec.footwear == SKATES {
        let top_m = ankle_m + Vec3::Y * 0.10 * scale;
        forms.push((
            limb(top_m, ankle_m, [0.048 * scale, 0.043 * scale]),
            Stuff::Boot,
        ));
    }
    forms
}

/// A foot with what is on it.
pub fn foot(body: &Body) -> Forms {
    if body.spec.footwear == SKATES {
        skate(body)
    } else if body.spec.footwear == SHOES {
        shoe(body, Stuff::Shoe)
    } else {
        shoe(body, Stuff::Skin)
    }
}

/// A low foot whose lowest points are the ends of the sole.
fn shoe(body: &Body, stuff: Stuff) -> Forms {
    let (scale, [heel, toe]) = (girth(body), sole(body));
    let (back, front) = (0.036 * scale, 0.026 * scale);
    let back_at = Vec3::new(heel.x + back, heel.y + back, 0.0);
    let front_at = Vec3::new(toe.x - front, toe.y + front, 0.0);
    let instep = back_at + Vec3::X * 0.05 * scale;
    let mut forms = vec![
        (limb(back_at, front_at, [back, front]), stuff),
        (limb(Vec3::ZERO, instep, [back, front]), stuff),
    ];
    let drop = drop_m(body);
    if drop > 0.0 {
        let block = Form::Block {
            centre_m: 0.5 * (heel + toe) + Vec3::Y * 0.5 * drop,
            half_m: Vec3::new(0.42 * (toe.x - heel.x), 0.5 * drop, back * 0.8),
        };
        forms.push((block, Stuff::Sole));
    }
    forms
}

/// A boot with a blade.
fn skate(body: &Body) -> Forms {
    let (scale, [heel, toe]) = (girth(body), sole(body));
    let length = toe.x - heel.x;
    let sole_m = heel.y + drop_m(body);
    let (back, front) = (0.041 * scale, 0.029 * scale);
    let back_at = Vec3::new(heel.x + 0.9 * back, sole_m + back, 0.0);
    let front_at = Vec3::new(toe.x - front, sole_m + front, 0.0);
    let instep = front_at - Vec3::new(0.03, -0.004, 0.0) * scale;
    let mut forms = vec![
        (limb(back_at, front_at, [back, front]), Stuff::Boot),
        (
            limb(back_at, Vec3::ZERO, [back, 0.043 * scale]),
            Stuff::Boot,
        ),
        (
            limb(Vec3::ZERO, instep, [0.041 * scale, front]),
            Stuff::Boot,
        ),
    ];
    // A real blade is 4 mm thick, too thin to see: drawn 8 mm thick.
    let thick = 0.004 * scale;
    let runner = 0.16 * drop_m(body);
    let blade = Form::Block {
        centre_m: 0.5 * (heel + toe) + Vec3::Y * runner,
        half_m: Vec3::new(0.5 * length, runner, thick),
    };
    forms.push((blade, Stuff::Steel));
    let rise = 0.5 * (sole_m + 0.008 * scale - heel.y);
    for (along, half) in [(0.20, 0.018), (0.76, 0.026)] {
        let post = Form::Block {
            centre_m: heel + Vec3::new(along * length, rise, 0.0),
            half_m: Vec3::new(half * scale, rise, 1.2 * thick),
        };
        forms.push((post, Stuff::Steel));
    }
    forms
}

/// Heel and toe ends of the sole or blade, m, foot frame.
fn sole(body: &Body) -> [Vec3; 2] {
    body.sole_m.map(|end_m| end_m.as_vec3())
}

/// Height of the bare foot's sole above the ground: the thickness of shoe or skate, m.
fn drop_m(body: &Body) -> f32 {
    let ankle_m = ANKLE_HEIGHT_PER_STATURE * body.spec.stature_m;
    (-body.sole_m[0].y - ankle_m) as f32
}
