//! The smallest page of the same crates: the cost of any page of Bevy and bevy_egui that draws
//! something.
//!
//! It has the simulator's crates with the same features, and the same canvas: a lit cube that
//! turns, and a line of text. `web/weigh` compares the simulator's page with it.

#[cfg(target_arch = "wasm32")]
mod page {
    use bevy::prelude::*;
    use bevy_egui::{EguiContexts, EguiPlugin, EguiPrimaryContextPass, egui};

    /// Frames until the page is declared ready: the same number as for the simulator's.
    const FIRST_FRAMES: u32 = 4;

    pub fn run() {
        App::new()
            .add_plugins(DefaultPlugins.set(WindowPlugin {
                primary_window: Some(Window {
                    canvas: Some("#stage".to_owned()),
                    fit_canvas_to_parent: true,
                    ..default()
                }),
                ..default()
            }))
            .add_plugins(EguiPlugin::default())
            .add_systems(Startup, set_up)
            .add_systems(Update, turn)
            .add_systems(EguiPrimaryContextPass, text)
            .add_systems(Last, count)
            .run();
    }

    fn set_up(
        mut commands: Commands,
        mut meshes: ResMut<Assets<Mesh>>,
        mut materials: ResMut<Assets<StandardMaterial>>,
    ) {
        commands.spawn((
            Mesh3d(meshes.add(Cuboid::default())),
            MeshMaterial3d(materials.add(Color::WHITE)),
        ));
        commands.spawn((
            DirectionalLight::default(),
            Transform::default().looking_to(Vec3::new(-1.0, -1.0, -1.0), Vec3::Y),
        ));
        commands.spawn((
            Camera3d::default(),
            Transform::from_xyz(0.0, 1.0, 4.0).looking_at(Vec3::ZERO, Vec3::Y),
        ));
    }

    fn turn(time: Res<Time>, mut cubes: Query<&mut Transform, With<Mesh3d>>) {
        for mut cube in &mut cubes {
            cube.rotate_y(time.delta_secs());
        }
    }

    fn text(mut contexts: EguiContexts) -> Result {
        egui::Window::new("Smallest").show(contexts.ctx_mut()?, |ui| ui.label("A page."));
        Ok(())
    }

    fn count(mut frames: Local<u32>) {
        *frames += 1;
        if *frames == FIRST_FRAMES {
            let root = web_sys::window()
                .and_then(|window| window.document())
                .and_then(|document| document.document_element());
            if let Some(root) = root {
                root.set_attribute("data-state", "ready").ok();
            }
        }
    }
}

fn main() {
    #[cfg(target_arch = "wasm32")]
    page::run();
}
