//! The 3D picture: the jumper over the ice, drawn from a finished flight.
//!
//! Everything drawn follows from resources that change only when the session's jump, reference
//! attempt or playhead does. In a frame without such a change these systems do nothing and request
//! no further frame.

pub mod current_session;
pub mod palette;

mod axis;
mod camera;
mod dial;
mod feet;
mod figure;
mod framing;
mod gesture;
mod ice;
mod mannequin;
mod material;
mod mesh_builder;
mod orbit;
mod reference;
mod theme;
mod trails;

use std::sync::Arc;

use bevy::asset::AssetEventSystems;
use bevy::camera::CameraUpdateSystems;
use bevy::prelude::*;
use bevy_egui::EguiPostUpdateSet;

pub use crate::orbit::Orbit;
use crate::theme::BuildScene;

use crate::current_session::CurrentSession;
use turns_aloft_physics::flight::{Flight, Pose};

/// The plugin of the 3D picture. Needs a [`CurrentSession`], Bevy's default plugins and egui's.
pub struct StagePlugin;

/// The part of the window that the panels leave free, logical px; set by the panels, the whole
/// window until then. The jump is fitted into it; the picture also continues behind the panels.
#[derive(Resource, Debug, Clone, Copy, Default, PartialEq)]
pub struct StageArea {
    pub rect: Option<Rect>,
}

/// Systems that update the picture from the session. They run after the panels, so that a change
/// made there shows in the same frame.
#[derive(SystemSet, Debug, Clone, PartialEq, Eq, Hash)]
pub enum StageSystems {
    /// Detects what has changed in the session.
    Read,
    /// Updates meshes, transforms and the camera.
    Follow,
}

/// The flight shown; marked changed only when the session has another one.
#[derive(Resource)]
struct ShownFlight {
    flight: Arc<Flight>,
    owed_heading_rad: Option<f64>,
}

/// The pose shown; marked changed only when playhead or flight have changed.
#[derive(Resource)]
struct ShownSample {
    playhead_s: f64,
    pose: Pose,
}

/// The flight of the reference attempt; marked changed only when it is another one or removed.
#[derive(Resource, Default)]
struct ShownReference {
    flight: Option<Arc<Flight>>,
}

/// The pose of the reference attempt at the same time after take-off.
#[derive(Resource, Default)]
struct ReferenceSample {
    playhead_s: f64,
    pose: Option<Pose>,
}

impl Plugin for StagePlugin {
    fn build(&self, app: &mut App) {
        app.init_resource::<StageArea>()
            .init_resource::<ShownReference>()
            .init_resource::<ReferenceSample>()
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
                (read_session, read_reference)
                    .in_set(StageSystems::Read)
                    .run_if(resource_exists::<CurrentSession>),
            )
            .add_plugins((
                theme::plugin,
                material::plugin,
                ice::plugin,
                dial::plugin,
                axis::plugin,
                trails::plugin,
                figure::plugin,
                reference::plugin,
                camera::plugin,
            ));
    }
}

fn read_session(
    mut commands: Commands,
    session: Res<CurrentSession>,
    flight: Option<ResMut<ShownFlight>>,
    sample: Option<ResMut<ShownSample>>,
) {
    let owed_heading_rad = session.owed_heading_rad();
    let playhead_s = session.playhead_s();
    let pose = || session.flight().pose_at(playhead_s);
    let (Some(mut flight), Some(mut sample)) = (flight, sample) else {
        commands.insert_resource(ShownFlight {
            flight: Arc::clone(session.flight()),
            owed_heading_rad,
        });
        commands.insert_resource(ShownSample {
            playhead_s,
            pose: pose(),
        });
        return;
    };
    let same_flight = Arc::ptr_eq(&flight.flight, session.flight())
        && flight.owed_heading_rad == owed_heading_rad;
    if !same_flight {
        flight.flight = Arc::clone(session.flight());
        flight.owed_heading_rad = owed_heading_rad;
    }
    if !same_flight || sample.playhead_s != playhead_s {
        *sample = ShownSample {
            playhead_s,
            pose: pose(),
        };
    }
}

fn read_reference(
    session: Res<CurrentSession>,
    mut reference: ResMut<ShownReference>,
    mut sample: ResMut<ReferenceSample>,
) {
    let flight = session.reference().map(|reference| &reference.jump.flight);
    let playhead_s = session.playhead_s();
    let same_flight = reference.flight.as_ref().map(Arc::as_ptr) == flight.map(Arc::as_ptr);
    if same_flight && (flight.is_none() || sample.playhead_s == playhead_s) {
        return;
    }
    if !same_flight {
        reference.flight = flight.cloned();
    }
    *sample = ReferenceSample {
        playhead_s,
        pose: flight.map(|flight| flight.pose_at(playhead_s)),
    };
}
