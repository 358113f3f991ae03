//! What needs the browser: the panels' commands, and what has come of earlier ones, in one place each.

use bevy::prelude::*;
use bevy::window::RequestRedraw;

use crate::page::address::LinkedDocument;
use crate::page::files::FileInput;
use crate::page::film::Film;
use crate::page::kept_jumps_storage::KeptJumpsStorage;
use crate::page::motion_sensor::MotionSensor;
use crate::page::panels::PageCommandSent;
use crate::page::{address, files, kept_jumps_storage, language, lessons, picture, sheets};
use crate::panel::PageCommand;
use crate::stage::current_session::CurrentSession;

pub fn plugin(app: &mut App) {
    app.add_systems(PreUpdate, (carry_out, take_results).chain());
}

fn carry_out(
    mut commands: MessageReader<PageCommandSent>,
    mut session: ResMut<CurrentSession>,
    mut linked: ResMut<LinkedDocument>,
    (file_input, film): (Option<NonSend<FileInput>>, Option<NonSend<Film>>),
    sensor: NonSend<MotionSensor>,
) {
    for PageCommandSent(command) in commands.read() {
        match *command {
            PageCommand::Open => {
                if let Some(file_input) = &file_input {
                    file_input.ask();
                }
            }
            PageCommand::OpenFilm => {
                if let Some(film) = &film {
                    film.ask();
                }
            }
            PageCommand::ExampleFilm => {
                if let Some(film) = &film {
                    film.fetch_example();
                }
            }
            PageCommand::Lesson(place) => lessons::fetch(place),
            PageCommand::Save(saved) => files::save(&mut session, saved),
            PageCommand::Picture => picture::make(&session, picture::Next::Save),
            PageCommand::SendPicture => picture::make(&session, picture::Next::Send),
            PageCommand::Link => address::copy_link(&mut session, &mut linked),
            PageCommand::SendLink => address::send_link(&mut session, &mut linked),
            PageCommand::Sheet(sheet) => sheets::open(&session, sheet),
            PageCommand::UseSensor => sensor.ask(),
        }
    }
}

fn take_results(
    mut session: ResMut<CurrentSession>,
    mut kept_jumps: ResMut<KeptJumpsStorage>,
    (file_input, film): (Option<NonSend<FileInput>>, Option<NonSendMut<Film>>),
    mut sensor: NonSendMut<MotionSensor>,
    mut redraw: MessageWriter<RequestRedraw>,
) {
    let session = &mut session;
    if let Some(file_input) = file_input {
        file_input.take_results(session, film.as_deref());
    }
    if let Some(mut film) = film {
        film.take_chosen(session);
        film.follow_player(session);
    }
    address::take_events(session);
    picture::take_results(session);
    sheets::take_said(session);
    lessons::take_results(session);
    kept_jumps_storage::read_changes(session, &mut kept_jumps);
    sensor.take_messages(session);
    if language::take_texts(session) {
        redraw.write(RequestRedraw);
    }
}
