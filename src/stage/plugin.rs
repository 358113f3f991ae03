//! The plugin that adds the 3D picture to the app.

use bevy::asset::AssetEventSystems;
use bevy::camera::CameraUpdateSystems;
use bevy::prelude::*;
use bevy_egui::EguiPostUpdateSet;

use crate::beside::{Beside, read_beside};
use crate::current_session::CurrentSession;
use crate::order::{StageArea, StageSystems};
use crate::shown::{ReferenceSample, ShownReference, read_reference, read_session};
use crate::{
    axis, camera, dial, figure, ground, hand_distance, material, reference, theme, trails,
    turntable,
};

/// The plugin of the 3D picture. Needs a [`CurrentSession`], Bevy's default plugins and egui's.
pub struct StagePlugin;

impl Plugin for StagePlugin {
    fn build(&self, app: &mut App) {
        app.init_resource::<StageArea>()
            .init_resource::<ShownReference>()
            .init_resource::<ReferenceSample>()
            .init_resource::<Beside>()
            .configure_sets(
                PostUpdate,
                (StageSystems::Read, StageSystems::Follow)
                    .chain()
                    .after(EguiPostUpdateSet::ProcessOutput)
                    .before(CameraUpdateSystems)
                    .before(TransformSystems::Propagate)
                    .before(AssetEventSystems),
            )
            .add_systems(
                PostUpdate,
                (read_session, read_reference, read_beside)
                    .in_set(StageSystems::Read)
                    .run_if(resource_exists::<CurrentSession>),
            )
            .add_plugins((
                theme::plugin,
                material::plugin,
                ground::plugin,
                dial::plugin,
                axis::plugin,
                trails::plugin,
                figure::plugin,
                reference::plugin,
                camera::plugin,
                hand_distance::plugin,
                turntable::plugin,
            ));
    }
}
