//! The session of the page as a resource of Bevy: the session itself knows no Bevy.

use bevy::prelude::{Deref, DerefMut, Resource};

use turns_aloft_session::Session;

#[derive(Resource, Deref, DerefMut)]
pub struct CurrentSession(pub Session);
