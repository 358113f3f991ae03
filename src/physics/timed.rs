//! Turns of a body that is in the air for a given time, whatever the ice does: what a flight is
//! compared with.

use std::sync::Arc;

use super::attitude::Attitude;
use super::course::Course;
use super::flight::{MOST_ADDED_UP, added};
use super::launch::Launch;
use super::plan::Turning;
use super::stance::Stance;
use super::table::{PlanTable, Resolution};

/// What has been turned so far, and how much the steps' errors may have added up to.
struct Tally<'a> {
    course: &'a Course,
    attitude: Attitude,
    t_s: f64,
    turned_rad: f64,
    added_up: f64,
}

impl<'a> Tally<'a> {
    const fn new(course: &'a Course) -> Self {
        Self {
            course,
            attitude: course.attitude,
            t_s: 0.0,
            turned_rad: 0.0,
            added_up: 0.0,
        }
    }

    fn go_on(&mut self, t_s: f64, attitude: Attitude, stance: &Stance) {
        self.turned_rad += self.course.sign * attitude.turned_since(&self.attitude);
        let rate_rad_s = stance.law.rate_rad_s(attitude.up * self.course.h_kg_m2_s);
        self.added_up += added(rate_rad_s, t_s - self.t_s);
        (self.attitude, self.t_s) = (attitude, t_s);
    }
}

/// Turned in `end_s` by a plan that opens at `open_s`, rad, in the turning direction.
pub fn turned_rad(table: &Arc<PlanTable>, launch: &Launch, open_s: f64, end_s: f64) -> f64 {
    let course = Course::of(table.takeoff(), launch, table.plan.spec.turning);
    let mut tally = Tally::new(&course);
    course.close_and_open(table, open_s, end_s, |t_s, attitude, stance| {
        tally.go_on(t_s, attitude, stance);
    });
    if tally.added_up <= MOST_ADDED_UP {
        return tally.turned_rad;
    }
    turned_rad(&table.finer(), launch, open_s, end_s)
}

/// Turned in `end_s` by a body that leaves the ice in a posture and keeps it, rad.
pub fn turned_rigid_rad(stance: &Stance, launch: &Launch, turning: Turning, end_s: f64) -> f64 {
    let course = Course::of(stance, launch, turning);
    let mut resolution = Resolution::STANDARD;
    loop {
        let mut tally = Tally::new(&course);
        course.stand(
            stance,
            end_s,
            &resolution,
            &mut |t_s, attitude, stance: &Stance| {
                tally.go_on(t_s, attitude, stance);
            },
        );
        if tally.added_up <= MOST_ADDED_UP {
            return tally.turned_rad;
        }
        resolution = resolution.halved();
    }
}
