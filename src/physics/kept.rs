//! What a flight keeps of its steps: all that is known of each, or only what it takes to end it and
//! to say how far and how fast it turned.

use super::attitude::Attitude;
use super::course::{Course, Passed};
use super::moment::Moment;

use glam::DVec3;

/// What is kept of an instant.
pub trait Kept: Copy {
    /// Without an instant before, that of take-off.
    fn of(
        course: &Course,
        t_s: f64,
        attitude: Attitude,
        passed: Passed<'_>,
        before: Option<&Self>,
    ) -> Self;
    fn t_s(&self) -> f64;
    fn attitude(&self) -> Attitude;
    /// Angular velocity of the pelvis, pelvis axes, rad/s.
    fn own_rate_rad_s(&self) -> DVec3;
    /// Height of the lowest point of either foot over the ice, m.
    fn lowest_m(&self) -> f64;
}

impl Kept for Moment {
    #[inline]
    fn of(
        course: &Course,
        t_s: f64,
        attitude: Attitude,
        passed: Passed<'_>,
        before: Option<&Self>,
    ) -> Self {
        course.moment(t_s, attitude, passed, before)
    }

    fn t_s(&self) -> f64 {
        self.t_s
    }

    fn attitude(&self) -> Attitude {
        self.attitude
    }

    fn own_rate_rad_s(&self) -> DVec3 {
        self.own_rate_rad_s
    }

    fn lowest_m(&self) -> f64 {
        self.lowest_m
    }
}

/// The least of it.
#[derive(Debug, Clone, Copy)]
pub struct Bare {
    pub t_s: f64,
    pub attitude: Attitude,
    pub own_rate_rad_s: DVec3,
    pub lowest_m: f64,
    /// Angular velocity of the pelvis about the vertical, anticlockwise positive, rad/s.
    pub spin_rad_s: f64,
}

impl Kept for Bare {
    #[inline]
    fn of(
        course: &Course,
        t_s: f64,
        attitude: Attitude,
        passed: Passed<'_>,
        _: Option<&Self>,
    ) -> Self {
        let up = attitude.up;
        let own_rate_rad_s = course.own_rate_rad_s(up, passed);
        let spin_rad_s = own_rate_rad_s.dot(up);
        Self {
            t_s,
            attitude,
            own_rate_rad_s,
            lowest_m: course.lowest_m(t_s, up, passed.stance),
            spin_rad_s,
        }
    }

    fn t_s(&self) -> f64 {
        self.t_s
    }

    fn attitude(&self) -> Attitude {
        self.attitude
    }

    fn own_rate_rad_s(&self) -> DVec3 {
        self.own_rate_rad_s
    }

    fn lowest_m(&self) -> f64 {
        self.lowest_m
    }
}
