//! The few materials everything shares, and the light.

use bevy::camera::visibility::NoFrustumCulling;
use bevy::prelude::*;

pub fn plugin(app: &mut App) {
    app.init_resource::<Paints>()
        .insert_resource(GlobalAmbientLight {
            color: Color::srgb(0.90, 0.95, 1.0),
            brightness: 620.0,
            ..default()
        })
        .add_systems(Startup, light);
}

/// Colours come from the vertices.
#[derive(Resource)]
pub struct Paints {
    /// Shaded by the light.
    pub solid: Handle<StandardMaterial>,
    /// Drawn as it is, from both sides.
    pub flat: Handle<StandardMaterial>,
    /// The same, with the vertices' transparency and from the front only.
    pub sheer: Handle<StandardMaterial>,
    /// Shaded by the light, and half seen through.
    pub ghost: Handle<StandardMaterial>,
}

impl FromWorld for Paints {
    fn from_world(world: &mut World) -> Self {
        let mut materials = world.resource_mut::<Assets<StandardMaterial>>();
        let flat = StandardMaterial {
            unlit: true,
            cull_mode: None,
            ..default()
        };
        let solid = StandardMaterial {
            perceptual_roughness: 0.62,
            reflectance: 0.25,
            ..default()
        };
        Self {
            ghost: materials.add(StandardMaterial {
                alpha_mode: AlphaMode::Blend,
                base_color: Color::WHITE.with_alpha(0.5),
                ..solid.clone()
            }),
            solid: materials.add(solid),
            sheer: materials.add(StandardMaterial {
                alpha_mode: AlphaMode::Blend,
                cull_mode: StandardMaterial::default().cull_mode,
                ..flat.clone()
            }),
            flat: materials.add(flat),
        }
    }
}

/// One thing to be seen. Nothing is culled: there are few things, and all are in the picture.
pub fn thing(mesh: Handle<Mesh>, paint: &Handle<StandardMaterial>) -> impl Bundle + use<> {
    (
        Mesh3d(mesh),
        MeshMaterial3d(paint.clone()),
        Transform::default(),
        NoFrustumCulling,
    )
}

fn light(mut commands: Commands) {
    commands.spawn((
        DirectionalLight {
            color: Color::srgb(1.0, 0.98, 0.95),
            illuminance: 2600.0,
            ..default()
        },
        Transform::from_xyz(3.0, 5.0, 3.0).looking_at(Vec3::ZERO, Vec3::Y),
    ));
}
