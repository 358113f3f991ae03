//! The session of the page as a resource of Bevy: the session itself knows no Bevy.

use bevy::prelude::{Deref, DerefMut, Resource};

use crate::session::Session;

#[derive(Resource, Deref, DerefMut)]
pub struct CurrentSession(pub Session);
