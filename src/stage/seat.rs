//! What a turntable turns on: platform, swivel chair, or a spot on the ice. Shapes and sizes are for looks only.

use std::f32::consts::TAU;

use bevy::math::{Vec2, Vec3};

use crate::level;
use crate::mesh_builder::{MeshBuilder, Section};
use crate::palette::{self, BevyColour as _};
use turns_aloft_turntable::Stand;

/// Radius that all of it keeps to, m.
pub const RADIUS_M: f32 = 0.36;

/// Of the platform and of the seat, m, and how thick they are.
const PLATE_M: f32 = 0.22;
const PLATE_THICK_M: f32 = 0.03;
const SEAT_THICK_M: f32 = 0.06;

/// Height of a platform and of a seat at least, m, and what is left below the feet of who sits.
const PLATFORM_HIGH_M: f64 = 0.06;
const SEAT_HIGH_M: f64 = 0.45;
const CLEAR_M: f64 = 0.04;

/// How high the seat or platform is on which feet reach so far below it, m.
pub fn height_m(stand: Stand, feet_below_m: f64) -> f64 {
    match stand {
        Stand::Ice => 0.0,
        Stand::Platform => PLATFORM_HIGH_M,
        Stand::PlatformSitting => PLATFORM_HIGH_M.max(feet_below_m + CLEAR_M),
        Stand::Chair => SEAT_HIGH_M.max(feet_below_m + CLEAR_M),
    }
}

/// What turns along, with a mark in front.
pub fn turning(stand: Stand, high_m: f32) -> MeshBuilder {
    let mut mesh_builder = MeshBuilder::default();
    let colours = palette::now();
    let (pad, mark) = (colours.pad.linear(), colours.mark.linear());
    match stand {
        Stand::Platform | Stand::PlatformSitting => {
            drum(
                &mut mesh_builder,
                [high_m - PLATE_THICK_M, high_m],
                PLATE_M,
                pad,
            );
            let front = Vec3::new(0.75 * PLATE_M, high_m, 0.0);
            let half = Vec3::new(0.2 * PLATE_M, 0.002, 0.012);
            mesh_builder.block(front, half, mark);
        }
        Stand::Chair => {
            drum(
                &mut mesh_builder,
                [high_m - SEAT_THICK_M, high_m],
                PLATE_M,
                pad,
            );
            let back = Vec3::new(-PLATE_M - 0.03, high_m + 0.30, 0.0);
            mesh_builder.block(back, Vec3::new(0.02, 0.20, 0.17), pad);
            let post = Vec3::new(-PLATE_M + 0.01, high_m - 0.03, 0.0);
            let steel = colours.steel.linear();
            mesh_builder.limb(post, back, 0.016, 0.016, steel);
        }
        Stand::Ice => {
            let at = |x: f32| Vec3::new(x, 0.012, 0.0);
            mesh_builder.limb(at(0.16), at(0.27), 0.010, 0.010, mark);
            mesh_builder.cone(at(0.27), at(0.34), 0.03, mark);
        }
    }
    mesh_builder
}

/// What it stands on.
pub fn base(stand: Stand, high_m: f32) -> MeshBuilder {
    let mut mesh_builder = MeshBuilder::default();
    let colours = palette::now();
    let steel = colours.steel.linear();
    match stand {
        Stand::Platform | Stand::PlatformSitting => {
            let top = high_m - PLATE_THICK_M - 0.004;
            drum(&mut mesh_builder, [0.0, top], 0.8 * PLATE_M, steel);
        }
        Stand::Chair => {
            let under = Vec3::Y * (high_m - SEAT_THICK_M);
            let foot = Vec3::Y * 0.09;
            mesh_builder.limb(foot, under, 0.026, 0.026, steel);
            for i in 0..5 {
                let out = Vec2::from_angle(TAU * i as f32 / 5.0) * (RADIUS_M - 0.06);
                let end = Vec3::new(out.x, 0.035, out.y);
                mesh_builder.limb(foot, end, 0.022, 0.016, steel);
                mesh_builder.ball(end, Vec3::splat(0.03), colours.dark.linear());
            }
        }
        Stand::Ice => {
            let ring = (0..=24).map(|i| {
                let p = Vec2::from_angle(TAU * i as f32 / 24.0);
                let out = Vec3::new(p.x, 0.0, -p.y);
                let lift = Vec3::Y * level::MARK;
                (out * 0.055 + lift, out * 0.065 + lift)
            });
            mesh_builder.band(ring, colours.scratch.linear());
        }
    }
    mesh_builder
}

/// An upright cylinder with a top.
fn drum(mesh_builder: &mut MeshBuilder, [from_m, to_m]: [f32; 2], radius_m: f32, color: [f32; 4]) {
    let section = |height_m: f32| Section {
        middle_m: Vec3::Y * height_m,
        half_depth_m: radius_m,
        half_width_m: radius_m,
    };
    mesh_builder.loft([from_m, to_m].into_iter(), section, color);
    mesh_builder.disc(Vec3::Y * to_m, radius_m, color);
}
