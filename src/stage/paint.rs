//! The few materials everything shares, with a shader of their own: a tenth of what Bevy's standard
//! material takes to be made ready, when the page starts, and to be drawn.

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
    load_internal_asset!(app, SHADER, "paint.wgsl", Shader::from_wgsl);
    app.add_plugins(MaterialPlugin::<Paint>::default())
        .init_resource::<Paints>();
}

/// Colours come from the vertices.
#[derive(Asset, TypePath, AsBindGroup, Debug, Clone)]
#[bind_group_data(Sides)]
pub struct Paint {
    #[uniform(0)]
    appearance: Look,
    sheer: bool,
    sides: Sides,
}

#[derive(ShaderType, Debug, Clone)]
struct Look {
    /// What the colour's alpha is multiplied by.
    opacity: f32,
    /// 1: shaded by the light, 0: drawn as it is.
    shaded: f32,
    padding: Vec2,
}

/// From where a thing is seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Sides {
    Front,
    Both,
}

impl From<&Paint> for Sides {
    fn from(paint: &Paint) -> Self {
        paint.sides
    }
}

impl Paint {
    const fn new(shaded: f32, sides: Sides) -> Self {
        let appearance = Look {
            opacity: 1.0,
            shaded,
            padding: Vec2::ZERO,
        };
        Self {
            appearance,
            sheer: false,
            sides,
        }
    }

    /// Seen through, all of it so much.
    const fn sheer(mut self, opacity: f32) -> Self {
        self.sheer = true;
        self.appearance.opacity = opacity;
        self
    }

    pub const fn set_opacity(&mut self, opacity: f32) {
        self.appearance.opacity = opacity;
    }
}

impl Material for Paint {
    fn vertex_shader() -> ShaderRef {
        SHADER.into()
    }

    fn fragment_shader() -> ShaderRef {
        SHADER.into()
    }

    fn alpha_mode(&self) -> AlphaMode {
        if self.sheer {
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
pub struct Paints {
    /// Shaded by the light.
    pub solid: Handle<Paint>,
    /// Drawn as it is, from both sides.
    pub flat: Handle<Paint>,
    /// The same, with the vertices' transparency and from the front only.
    pub sheer: Handle<Paint>,
    /// The same again, for the shadow alone: it fades.
    pub shadow: Handle<Paint>,
    /// Shaded by the light, and half seen through.
    pub ghost: Handle<Paint>,
}

impl FromWorld for Paints {
    fn from_world(world: &mut World) -> Self {
        let mut paints = world.resource_mut::<Assets<Paint>>();
        let solid = Paint::new(1.0, Sides::Front);
        let sheer = Paint::new(0.0, Sides::Front).sheer(1.0);
        Self {
            flat: paints.add(Paint::new(0.0, Sides::Both)),
            shadow: paints.add(sheer.clone()),
            sheer: paints.add(sheer),
            ghost: paints.add(solid.clone().sheer(0.5)),
            solid: paints.add(solid),
        }
    }
}

/// One thing to be seen. Nothing is culled: there are few things, and all are in the picture.
pub fn thing(mesh: Handle<Mesh>, paint: &Handle<Paint>) -> impl Bundle + use<> {
    (
        Mesh3d(mesh),
        MeshMaterial3d(paint.clone()),
        Transform::default(),
        NoFrustumCulling,
    )
}
