//! The materials of the picture, with their own shader. Compiling it at the start of the page and
//! drawing with it take a tenth of the time that Bevy's standard material takes.

use bevy::asset::{load_internal_asset, uuid_handle};
use bevy::camera::visibility::NoFrustumCulling;
use bevy::mesh::MeshVertexBufferLayoutRef;
use bevy::pbr::{MaterialPipeline, MaterialPipelineKey};
use bevy::prelude::*;
use bevy::render::render_resource::{
    AsBindGroup, Face, RenderPipelineDescriptor, ShaderType, SpecializedMeshPipelineError,
};
use bevy::shader::ShaderRef;

const SHADER: Handle<Shader> = uuid_handle!("7c1d7f1c-1f0e-4f0b-9a0e-5d0a0b6f2c31");

pub fn plugin(app: &mut App) {
    load_internal_asset!(app, SHADER, "material.wgsl", Shader::from_wgsl);
    app.add_plugins(MaterialPlugin::<StageMaterial>::default())
        .init_resource::<StageMaterials>();
}

/// A material whose colours come from the vertices.
#[derive(Asset, TypePath, AsBindGroup, Debug, Clone)]
#[bind_group_data(Sides)]
pub struct StageMaterial {
    #[uniform(0)]
    uniform: MaterialUniform,
    transparent: bool,
    sides: Sides,
}

#[derive(ShaderType, Debug, Clone)]
struct MaterialUniform {
    /// Factor of the colour's alpha.
    opacity: f32,
    /// 1: lit, 0: unlit.
    shaded: f32,
    /// How far what lies on the ground is pressed down under the jumper, m: as a cone, so that
    /// whatever is flat and drawn about the axis fits on what is under it.
    sag: f32,
    padding: f32,
}

/// Which faces are drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Sides {
    Front,
    Both,
}

impl From<&StageMaterial> for Sides {
    fn from(material: &StageMaterial) -> Self {
        material.sides
    }
}

impl StageMaterial {
    const fn new(shaded: f32, sides: Sides) -> Self {
        let uniform = MaterialUniform {
            opacity: 1.0,
            shaded,
            sag: 0.0,
            padding: 0.0,
        };
        Self {
            uniform,
            transparent: false,
            sides,
        }
    }

    /// Alpha-blended, with this factor of the vertices' alpha.
    const fn transparent(mut self, opacity: f32) -> Self {
        self.transparent = true;
        self.uniform.opacity = opacity;
        self
    }

    pub const fn set_sag(&mut self, sag_m: f32) {
        self.uniform.sag = sag_m;
    }

    pub const fn set_opacity(&mut self, opacity: f32) {
        self.uniform.opacity = opacity;
    }
}

impl Material for StageMaterial {
    fn vertex_shader() -> ShaderRef {
        SHADER.into()
    }

    fn fragment_shader() -> ShaderRef {
        SHADER.into()
    }

    fn alpha_mode(&self) -> AlphaMode {
        if self.transparent {
            AlphaMode::Blend
        } else {
            AlphaMode::Opaque
        }
    }

    fn enable_prepass() -> bool {
        false
    }

    fn enable_shadows() -> bool {
        false
    }

    fn specialize(
        _: &MaterialPipeline,
        descriptor: &mut RenderPipelineDescriptor,
        _: &MeshVertexBufferLayoutRef,
        key: MaterialPipelineKey<Self>,
    ) -> Result<(), SpecializedMeshPipelineError> {
        descriptor.primitive.cull_mode = match key.bind_group_data {
            Sides::Front => Some(Face::Back),
            Sides::Both => None,
        };
        Ok(())
    }
}

#[derive(Resource)]
pub struct StageMaterials {
    /// Lit, front faces.
    pub lit: Handle<StageMaterial>,
    /// Unlit, both faces.
    pub unlit: Handle<StageMaterial>,
    /// Unlit, front faces, blended by the vertices' alpha.
    pub transparent: Handle<StageMaterial>,
    /// As `transparent`, for the shadow only: its opacity changes.
    pub shadow: Handle<StageMaterial>,
    /// Lit, front faces, half transparent.
    pub translucent: Handle<StageMaterial>,
}

impl FromWorld for StageMaterials {
    fn from_world(world: &mut World) -> Self {
        let mut materials = world.resource_mut::<Assets<StageMaterial>>();
        let lit = StageMaterial::new(1.0, Sides::Front);
        let transparent = StageMaterial::new(0.0, Sides::Front).transparent(1.0);
        Self {
            unlit: materials.add(StageMaterial::new(0.0, Sides::Both)),
            shadow: materials.add(transparent.clone()),
            transparent: materials.add(transparent),
            translucent: materials.add(lit.clone().transparent(0.5)),
            lit: materials.add(lit),
        }
    }
}

/// The components of one drawn entity. Frustum culling is off: there are few entities, and all are
/// in the picture.
pub fn mesh_bundle(mesh: Handle<Mesh>, material: &Handle<StageMaterial>) -> impl Bundle + use<> {
    (
        Mesh3d(mesh),
        MeshMaterial3d(material.clone()),
        Transform::default(),
        NoFrustumCulling,
    )
}
