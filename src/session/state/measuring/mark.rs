//! One thing to mark in a film.

use turns_aloft_attempt::film::{Contacts, Film, PointOf};

#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Mark {
    /// The last frame with a blade on the ice.
    TakeOff,
    /// The last frame in the air.
    Landing,
    /// A point of the picture in one of the frames.
    Point(PointOf, usize),
    /// Which way the hips face in a frame.
    Facing(usize),
    /// How far in arms and legs are in a frame.
    Posture(usize),
}

impl Mark {
    /// The frame that it is made in; none where the user has to find it.
    pub const fn frame(self) -> Option<usize> {
        match self {
            Self::TakeOff | Self::Landing => None,
            Self::Point(_, frame) | Self::Facing(frame) | Self::Posture(frame) => Some(frame),
        }
    }
}

/// Removes a mark of a film; in a frame by its real time.
pub(crate) fn unmark(film: &mut Film, mark: Mark, same_frame: impl Fn(f64) -> bool) {
    match mark {
        Mark::TakeOff => {
            film.contacts = Contacts {
                last_on_ice_s: None,
                first_in_air_s: None,
                ..film.contacts
            }
        }
        Mark::Landing => {
            film.contacts = Contacts {
                last_in_air_s: None,
                first_on_ice_s: None,
                ..film.contacts
            }
        }
        Mark::Point(of, _) => (film.points).retain(|it| it.of != of || !same_frame(it.t_s)),
        Mark::Facing(_) => film.facings.retain(|it| !same_frame(it.t_s)),
        Mark::Posture(_) => film.postures.retain(|it| !same_frame(it.t_s)),
    }
}
