//! The picture: the jumper over the ice, read from a finished flight.
//!
//! Everything seen follows from two resources that change only when the session's jump or
//! playhead does; a frame in which nothing changed does no work here and asks for no other.

pub mod current_session;
pub mod palette;

mod axis;
mod camera;
mod dial;
mod feet;
mod figure;
mod framing;
mod gesture;
mod ghost;
mod ice;
mod mannequin;
mod mesh_builder;
mod orbit;
mod paint;
mod theme;
mod trails;

use std::sync::Arc;

use bevy::asset::AssetEventSystems;
use bevy::camera::CameraUpdateSystems;
use bevy::prelude::*;
use bevy_egui::EguiPostUpdateSet;

pub use crate::orbit::Orbit;
use crate::theme::Themed;

use crate::current_session::CurrentSession;
use turns_aloft_physics::flight::{Flight, Pose};

/// All that is drawn in 3D. Needs a [`CurrentSession`], Bevy's default plugins and egui's.
pub struct StagePlugin;

/// Where on the window the picture is meant to be looked at, logical px; set by the panels. The
/// whole window until then. What lies outside is drawn behind the panels all the same.
#[derive(Resource, Debug, Clone, Copy, Default, PartialEq)]
pub struct StageArea {
    pub rect: Option<Rect>,
}

/// Systems that follow the session. They run after the panels, so that a change made there is
/// seen in the same frame.
#[derive(SystemSet, Debug, Clone, PartialEq, Eq, Hash)]
pub enum StageSystems {
    /// Notices what changed.
    Read,
    /// Moves what is seen.
    Follow,
}

/// The jump on the stage; touched only when there is another one.
#[derive(Resource)]
struct ShownFlight {
    flight: Arc<Flight>,
    owed_heading_rad: Option<f64>,
}

/// The moment on the stage; touched only when the playhead or the jump moved.
#[derive(Resource)]
struct ShownSample {
    playhead_s: f64,
    pose: Pose,
}

/// The attempt beside it; touched only when there is another one, or none any more.
#[derive(Resource, Default)]
struct ShownReference {
    flight: Option<Arc<Flight>>,
}

/// That attempt at the same moment after take-off.
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
                paint::plugin,
                ice::plugin,
                dial::plugin,
                axis::plugin,
                trails::plugin,
                figure::plugin,
                ghost::plugin,
                camera::plugin,
            ));
    }
}

fn read_session(
    mut commands: Commands,
    session: Res<CurrentSession>,
    flight: Option<ResMut<ShownFlight>>,
    moment: Option<ResMut<ShownSample>>,
) {
    let owed_heading_rad = session.owed_heading_rad();
    let playhead_s = session.playhead_s();
    let pose = || session.flight().pose_at(playhead_s);
    let (Some(mut flight), Some(mut moment)) = (flight, moment) else {
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
    if !same_flight || moment.playhead_s != playhead_s {
        *moment = ShownSample {
            playhead_s,
            pose: pose(),
        };
    }
}

fn read_reference(
    session: Res<CurrentSession>,
    mut reference: ResMut<ShownReference>,
    mut moment: ResMut<ReferenceSample>,
) {
    let flight = session.reference().map(|reference| &reference.jump.flight);
    let playhead_s = session.playhead_s();
    let same_flight = reference.flight.as_ref().map(Arc::as_ptr) == flight.map(Arc::as_ptr);
    if same_flight && (flight.is_none() || moment.playhead_s == playhead_s) {
        return;
    }
    if !same_flight {
        reference.flight = flight.cloned();
    }
    *moment = ReferenceSample {
        playhead_s,
        pose: flight.map(|flight| flight.pose_at(playhead_s)),
    };
}
