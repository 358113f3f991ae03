//! Meshes of the jumper's feet: bare, in shoes, or in skates.

use bevy::math::{DVec3, Vec3};

use crate::mannequin::Mannequin;
use crate::mesh_builder::MeshBuilder;
use crate::palette::{self, BevyColour as _, Rgb};
use turns_aloft_physics::segments::ANKLE_HEIGHT_PER_STATURE;
use turns_aloft_scenario::ground::{SHOES, SKATES};

impl Mannequin<'_> {
    pub fn foot(&self, tint: Rgb) -> MeshBuilder {
        let footwear = self.body.spec.footwear;
        if footwear == SKATES {
            self.skate(tint)
        } else if footwear == SHOES {
            self.shoe(tint.over(palette::now().dark, 0.5))
        } else {
            self.shoe(palette::now().skin)
        }
    }

    /// Adds the boot's shaft, which is part of the shank's mesh.
    pub fn add_shaft(&self, shank: &mut MeshBuilder, ankle_m: Vec3, tint: Rgb) {
        if self.body.spec.footwear == SKATES {
            let top = ankle_m + Vec3::Y * 0.10 * self.scale;
            let (wide, narrow) = (0.048 * self.scale, 0.043 * self.scale);
            shank.limb(top, ankle_m, wide, narrow, leather(tint));
        }
    }

    /// A low foot whose lowest points are the ends of the sole.
    fn shoe(&self, color: Rgb) -> MeshBuilder {
        let scale = self.scale;
        let [heel, toe] = self.sole();
        let (back, front) = (0.036 * scale, 0.026 * scale);
        let mut mesh_builder = MeshBuilder::default();
        let back_at = Vec3::new(heel.x + back, heel.y + back, 0.0);
        let front_at = Vec3::new(toe.x - front, toe.y + front, 0.0);
        mesh_builder.limb(back_at, front_at, back, front, color.linear());
        let instep = back_at + Vec3::X * 0.05 * scale;
        mesh_builder.limb(Vec3::ZERO, instep, back, front, color.linear());
        let drop = self.drop_m();
        if drop > 0.0 {
            let middle = 0.5 * (heel + toe) + Vec3::Y * 0.5 * drop;
            let half = Vec3::new(0.42 * (toe.x - heel.x), 0.5 * drop, back * 0.8);
            mesh_builder.block(middle, half, palette::now().sole.linear());
        }
        mesh_builder
    }

    /// A boot with a blade.
    fn skate(&self, tint: Rgb) -> MeshBuilder {
        let scale = self.scale;
        let [heel, toe] = self.sole();
        let length = toe.x - heel.x;
        let sole_m = heel.y + self.drop_m();
        let mut mesh_builder = MeshBuilder::default();

        let (back, front) = (0.041 * scale, 0.029 * scale);
        let back_at = Vec3::new(heel.x + 0.9 * back, sole_m + back, 0.0);
        let front_at = Vec3::new(toe.x - front, sole_m + front, 0.0);
        let instep = front_at - Vec3::new(0.03, -0.004, 0.0) * scale;
        mesh_builder.limb(back_at, front_at, back, front, leather(tint));
        mesh_builder.limb(back_at, Vec3::ZERO, back, 0.043 * scale, leather(tint));
        mesh_builder.limb(Vec3::ZERO, instep, 0.041 * scale, front, leather(tint));

        // A real blade is 4 mm thick, too thin to see: drawn 8 mm thick.
        let steel = palette::now().steel.linear();
        let thick = 0.004 * scale;
        let runner = 0.16 * self.drop_m();
        let middle = 0.5 * (heel + toe) + Vec3::Y * runner;
        mesh_builder.block(middle, Vec3::new(0.5 * length, runner, thick), steel);
        let rise = 0.5 * (sole_m + 0.008 * scale - heel.y);
        for (along, half) in [(0.20, 0.018), (0.76, 0.026)] {
            let post = heel + Vec3::new(along * length, rise, 0.0);
            mesh_builder.block(post, Vec3::new(half * scale, rise, 1.2 * thick), steel);
        }
        mesh_builder
    }

    /// Heel and toe ends of the sole or blade, m, foot frame.
    fn sole(&self) -> [Vec3; 2] {
        self.body.sole_m.map(DVec3::as_vec3)
    }

    /// Height of the bare foot's sole above the ice: the thickness of shoe or skate, m.
    fn drop_m(&self) -> f32 {
        let ankle_m = ANKLE_HEIGHT_PER_STATURE * self.body.spec.stature_m;
        (-self.body.sole_m[0].y - ankle_m) as f32
    }
}

fn leather(tint: Rgb) -> [f32; 4] {
    tint.over(palette::now().dark, 0.45).linear()
}
