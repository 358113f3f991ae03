//! The page's session as a Bevy resource. The session's own package does not depend on Bevy.

use bevy::prelude::{Deref, DerefMut, Resource};

use turns_aloft_session::Session;

#[derive(Resource, Deref, DerefMut)]
pub struct CurrentSession(pub Session);
