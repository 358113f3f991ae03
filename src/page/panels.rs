//! Runs the panels as a Bevy system, and passes their results to the page and the 3D picture.

use bevy::prelude::*;
use bevy_egui::{EguiContexts, EguiPrimaryContextPass, egui};

use crate::page::share_sheet;
use crate::panel::{self, AxisOnPicture, HandDistance, PageCommand, Panels};
use crate::stage::current_session::CurrentSession;
use crate::stage::{HandDistances, Orbit, StageArea, TurntableAxis};

/// The system that shows the panels.
#[derive(SystemSet, Debug, Clone, PartialEq, Eq, Hash)]
pub struct PanelSystems;

/// Sent when the user has given a command that needs the browser.
#[derive(Message, Debug, Clone, Copy)]
pub struct PageCommandSent(pub PageCommand);

/// Where a film is shown, CSS pixels of the canvas; none while none is.
#[derive(Resource, Default, PartialEq)]
pub struct FilmArea(pub Option<Rect>);

#[derive(Resource)]
struct PanelState(Panels);

pub fn plugin(app: &mut App) {
    let mut panels = Panels::default();
    panels.has_share_sheet = share_sheet::is_there();
    app.insert_resource(PanelState(panels))
        .init_resource::<FilmArea>()
        .add_message::<PageCommandSent>()
        .add_systems(EguiPrimaryContextPass, show.in_set(PanelSystems));
}

fn show(
    mut contexts: EguiContexts,
    mut panels: ResMut<PanelState>,
    mut session: ResMut<CurrentSession>,
    (mut stage_area, mut film_area): (ResMut<StageArea>, ResMut<FilmArea>),
    mut orbit: ResMut<Orbit>,
    (hands, axis): (Res<HandDistances>, Res<TurntableAxis>),
    mut commands: MessageWriter<PageCommandSent>,
) -> Result {
    let ctx = contexts.ctx_mut()?;
    let zoom = ctx.zoom_factor();
    let on_screen = |at: Vec2| egui::pos2(at.x, at.y) / zoom;
    panels.0.axis = axis.0.map(|axis| AxisOnPicture {
        hips: on_screen(axis.hips),
        points_per_m: axis.px_per_m / zoom,
    });
    let Some(frame) = panel::show(ctx, &mut panels.0, &mut session, orbit.view()) else {
        return Ok(());
    };
    let hands: Vec<HandDistance> = hands
        .0
        .iter()
        .map(|hand| HandDistance {
            distance_m: hand.distance_m,
            at: on_screen(hand.at),
            axis_at: on_screen(hand.axis_at),
        })
        .collect();
    panel::hand_distances(ctx, &session, frame.stage, &hands);
    let area = |rect: egui::Rect| {
        let rect = rect * zoom;
        Some(Rect::new(
            rect.left(),
            rect.top(),
            rect.right(),
            rect.bottom(),
        ))
    };
    stage_area.set_if_neq(StageArea {
        rect: area(frame.stage),
        figure: area(frame.figure),
    });
    film_area.set_if_neq(FilmArea(frame.film.and_then(area)));
    if let Some(view) = frame.view {
        orbit.set_view(view);
    }
    commands.write_batch(frame.command.map(PageCommandSent));
    Ok(())
}
