//! How the body flies, as lines of text: height, rate, inertia, energy and axis.

use crate::describe::moment::phase;
use crate::describe::reading::{Group, Reading, line};
use crate::session::Session;
use turns_aloft_describe::unit::{INERTIA, JOULES, MOMENTUM, SECONDS, UnitText};
use turns_aloft_physics::flight::FlightSample;
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_words::text;

pub(crate) fn time(session: &Session, now: &FlightSample) -> Vec<Reading> {
    let length = session.units().of(Kind::Length);
    let readout = &session.jump().readout;
    vec![
        line(
            Group::Time,
            "phase",
            text("reading-phase"),
            phase(session).to_owned(),
            text("reading-phase-about"),
        ),
        line(
            Group::Time,
            "hang_time_s",
            text("reading-hang-time-s"),
            SECONDS.text(readout.hang_time_s),
            text("reading-hang-time-s-about"),
        ),
        line(
            Group::Time,
            "jump_height_m",
            text("reading-jump-height-m"),
            length.text(readout.jump_height_m),
            text("reading-jump-height-m-about"),
        ),
        line(
            Group::Time,
            "cm_height_now_m",
            text("reading-cm-height-now-m"),
            length.text(now.cm_height_m),
            text("reading-cm-height-now-m-about"),
        ),
    ]
}

pub(crate) fn rate(session: &Session, now: &FlightSample) -> Vec<Reading> {
    let unit = session.units().of(Kind::Rate);
    let readout = &session.jump().readout;
    let sign = session.scenario().turning.sign();
    let line = |quantity: &'static str, label: &'static str, rate_rad_s, about: &str| {
        line(Group::Rate, quantity, label, unit.text(rate_rad_s), about)
    };
    vec![
        line(
            "rate_now_rad_s",
            text("reading-rate-now-rad-s"),
            sign * now.spin_rad_s,
            text("reading-rate-now-rad-s-about"),
        ),
        line(
            "takeoff_rate_rad_s",
            text("reading-takeoff-rate-rad-s"),
            readout.takeoff_rate_rad_s,
            text("reading-takeoff-rate-rad-s-about"),
        ),
        line(
            "peak_rate_rad_s",
            text("reading-peak-rate-rad-s"),
            readout.peak_rate_rad_s,
            text("reading-peak-rate-rad-s-about"),
        ),
        line(
            "mean_rate_rad_s",
            text("reading-mean-rate-rad-s"),
            readout.mean_rate_rad_s,
            text("reading-mean-rate-rad-s-about"),
        ),
        line(
            "touchdown_rate_rad_s",
            text("reading-touchdown-rate-rad-s"),
            readout.touchdown_rate_rad_s,
            text("reading-touchdown-rate-rad-s-about"),
        ),
    ]
}

pub(crate) fn inertia(session: &Session, now: &FlightSample) -> Vec<Reading> {
    let readout = &session.jump().readout;
    let line = |quantity: &'static str, label: &'static str, inertia, about: &str| {
        line(
            Group::Inertia,
            quantity,
            label,
            INERTIA.text(inertia),
            about,
        )
    };
    vec![
        line(
            "inertia_now_kg_m2",
            text("reading-inertia-now-kg-m2"),
            now.inertia_kg_m2,
            text("reading-inertia-now-kg-m2-about"),
        ),
        line(
            "inertia_takeoff_kg_m2",
            text("reading-inertia-takeoff-kg-m2"),
            readout.inertia_takeoff_kg_m2,
            text("reading-inertia-takeoff-kg-m2-about"),
        ),
        line(
            "inertia_least_kg_m2",
            text("reading-inertia-least-kg-m2"),
            readout.inertia_least_kg_m2,
            text("reading-inertia-least-kg-m2-about"),
        ),
    ]
}

pub(crate) fn energy(session: &Session, now: &FlightSample) -> Vec<Reading> {
    let readout = &session.jump().readout;
    let h = readout.angular_momentum_kg_m2_s.length();
    let line = |quantity: &'static str, label: &'static str, text, about: &str| {
        line(Group::Energy, quantity, label, text, about)
    };
    vec![
        line(
            "angular_momentum_kg_m2_s",
            text("reading-angular-momentum-kg-m2-s"),
            MOMENTUM.text(h),
            text("reading-angular-momentum-kg-m2-s-about"),
        ),
        line(
            "energy_now_j",
            text("reading-energy-now-j"),
            JOULES.text(now.energy_j),
            text("reading-energy-now-j-about"),
        ),
        line(
            "energy_takeoff_j",
            text("reading-energy-takeoff-j"),
            JOULES.text(readout.energy_takeoff_j),
            text("reading-energy-takeoff-j-about"),
        ),
        line(
            "closing_work_j",
            text("reading-closing-work-j"),
            JOULES.text(readout.closing_work_j),
            text("reading-closing-work-j-about"),
        ),
        line(
            "opening_work_j",
            text("reading-opening-work-j"),
            JOULES.text(readout.opening_work_j),
            text("reading-opening-work-j-about"),
        ),
        line(
            "energy_touchdown_j",
            text("reading-energy-touchdown-j"),
            JOULES.text(readout.energy_touchdown_j),
            text("reading-energy-touchdown-j-about"),
        ),
    ]
}

pub(crate) fn axis(session: &Session, now: &FlightSample) -> Vec<Reading> {
    let readout = &session.jump().readout;
    let unit = session.units().of(Kind::Angle);
    let line = |quantity: &'static str, label: &'static str, angle_rad, about: &str| {
        line(
            Group::Axis,
            quantity,
            label,
            format!("{}°", unit.number(angle_rad)),
            about,
        )
    };
    vec![
        line(
            "tilt_now_rad",
            text("reading-tilt-now-rad"),
            now.tilt_rad(),
            text("reading-tilt-now-rad-about"),
        ),
        line(
            "tilt_peak_rad",
            text("reading-tilt-peak-rad"),
            readout.tilt_peak_rad,
            text("reading-tilt-peak-rad-about"),
        ),
        line(
            "tilt_touchdown_rad",
            text("reading-tilt-touchdown-rad"),
            readout.tilt_touchdown_rad,
            text("reading-tilt-touchdown-rad-about"),
        ),
    ]
}
