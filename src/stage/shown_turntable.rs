//! Resources with who is on a turntable, and how, updated from the session.

use bevy::prelude::*;
use glam::DVec3;

use crate::current_session::CurrentSession;
use crate::framing::Subject;
use crate::seat;
use turns_aloft_figure::pose::FigurePose;
use turns_aloft_physics::body::BodySpec;
use turns_aloft_scenario::ground::Ground;
use turns_aloft_session::turntable::OnTurntable;
use turns_aloft_turntable::Stand;

/// Who is on a turntable, and on which; marked changed only when that is another.
#[derive(Resource, Default, PartialEq)]
pub struct ShownTurntable(pub Option<WhoOnWhat>);

#[derive(Clone, Copy, PartialEq)]
pub struct WhoOnWhat {
    pub spec: BodySpec,
    pub stand: Stand,
    /// Mid-hip, before anything has turned, m.
    pub hips_m: DVec3,
    /// How high the seat or the platform is, m.
    pub support_m: f32,
    reach_m: f32,
}

/// How it stands at the time shown; marked changed only when it stands in another way.
#[derive(Resource, Default, PartialEq)]
pub struct TurntableMoment(pub Option<TurnedPose>);

#[derive(Clone, PartialEq)]
pub struct TurnedPose {
    pub turned_rad: f64,
    pub pose: FigurePose,
}

/// What lies under a turntable.
pub const fn ground(stand: Stand) -> Ground {
    match stand {
        Stand::Ice => Ground::Ice,
        _ => Ground::Floor,
    }
}

impl WhoOnWhat {
    fn of(on_turntable: &OnTurntable) -> Self {
        let person = on_turntable.turntable().person();
        let setup = on_turntable.setup();
        let above_m = person.hips_above_support_m();
        let legs_in = person.posture(&[0.0; 3]);
        let seated = FigurePose::upright(&person.body, &legs_in, DVec3::ZERO, 0.0);
        let feet_below_m = -seated.lowest_m(&person.body) - above_m;
        let support_m = seat::height_m(setup.stand, feet_below_m);
        Self {
            spec: person.body.spec,
            stand: setup.stand,
            hips_m: DVec3::new(setup.hips_forward_m, support_m + above_m, 0.0),
            support_m: support_m as f32,
            reach_m: on_turntable.reach_m()[1] as f32,
        }
    }
}

impl ShownTurntable {
    pub const fn is_some(&self) -> bool {
        self.0.is_some()
    }

    /// What has to fit the picture: all that the person can reach, and the head.
    pub fn subject(&self) -> Option<Subject> {
        self.0.map(|shown| {
            let hips_m = shown.hips_m.y as f32;
            let stature_m = shown.spec.stature_m as f32;
            Subject {
                dial_m: seat::RADIUS_M,
                arms_m: [hips_m + 0.28 * stature_m, shown.reach_m + 0.1],
                low_m: 0.0,
                top_m: hips_m + 0.5 * stature_m,
                beside_m: Vec3::ZERO,
            }
        })
    }
}

pub fn read(
    session: Res<CurrentSession>,
    mut shown: ResMut<ShownTurntable>,
    mut moment: ResMut<TurntableMoment>,
) {
    let on_turntable = session.turntable();
    shown.set_if_neq(ShownTurntable(on_turntable.map(WhoOnWhat::of)));
    let turned = on_turntable.zip(shown.0).map(|(it, shown)| {
        let turned_rad = it.shown().turned_rad;
        let body = &it.turntable().person().body;
        TurnedPose {
            turned_rad,
            pose: FigurePose::upright(body, &it.posture(), shown.hips_m, turned_rad),
        }
    });
    moment.set_if_neq(TurntableMoment(turned));
}
