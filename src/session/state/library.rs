//! The jumps kept on this device.

use std::sync::Arc;

use turns_aloft_scenario::collection::Collection;

/// The kept jumps. They are replaced as a whole by every change, so that who has written them down can
/// see whether they are others.
#[derive(Debug, Default)]
pub struct Library {
    pub(crate) collection: Arc<Collection>,
}

impl Library {
    pub const fn collection(&self) -> &Arc<Collection> {
        &self.collection
    }
}
