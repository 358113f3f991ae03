//! Fetches the lessons that come with the page: each is a file beside it.

use std::cell::RefCell;

use bevy::prelude::*;
use js_sys::futures::{JsFuture, spawn_local};
use wasm_bindgen::JsCast;
use web_sys::Response;

use crate::lesson::names::NAMES;
use crate::page::dom;
use crate::page::panels::PageCommandSent;
use crate::page::wake::wake;
use crate::panel::PageCommand;
use crate::stage::current_session::CurrentSession;
use crate::words::text;

thread_local! {
    /// What has been fetched, or could not be; handled by the app in its next frame.
    static FETCHED: RefCell<Vec<Option<String>>> = const { RefCell::new(Vec::new()) };
}

pub fn plugin(app: &mut App) {
    app.add_systems(PreUpdate, handle);
}

fn handle(mut commands: MessageReader<PageCommandSent>, mut session: ResMut<CurrentSession>) {
    for PageCommandSent(command) in commands.read() {
        if let PageCommand::Lesson(place) = command
            && let Some(name) = NAMES.get(*place)
        {
            let address = format!("lessons/{name}.lesson.json");
            spawn_local(async move {
                let fetched = fetch(address).await;
                FETCHED.with_borrow_mut(|all| all.push(fetched));
                wake();
            });
        }
    }
    if FETCHED.with_borrow(Vec::is_empty) {
        return;
    }
    for fetched in FETCHED.take() {
        match fetched {
            Some(file) => session.open_text(&file),
            None => session.say(text("lesson-not-fetched")),
        }
    }
}

async fn fetch(address: String) -> Option<String> {
    let fetched = JsFuture::from(dom::window()?.fetch_with_str(&address)).await;
    let response: Response = fetched.ok()?.dyn_into().ok()?;
    if !response.ok() {
        return None;
    }
    let read = JsFuture::from(response.text().ok()?).await.ok()?;
    read.as_string()
}
