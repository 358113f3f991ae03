//! Where the reference attempt stands: in the jumper's place, or beside it on the same floor.

use bevy::prelude::*;

use crate::current_session::CurrentSession;

/// Distance of the two figures side by side, m: spread arms do not meet.
const APART_M: f32 = 1.7;

/// How far beside the jumper the reference attempt stands, m; 0 without one, or in the same place.
#[derive(Resource, Default, PartialEq)]
pub struct Beside(pub f32);

impl Beside {
    /// World frame. From the usual views the earlier attempt is on the left.
    pub fn offset_m(&self) -> Vec3 {
        self.0 * Vec3::Z
    }
}

pub fn read_beside(session: Res<CurrentSession>, mut beside: ResMut<Beside>) {
    let is_beside = session.is_side_by_side() && session.pictured_beside().is_some();
    beside.set_if_neq(Beside(if is_beside { APART_M } else { 0.0 }));
}
