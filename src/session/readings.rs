//! Every readout as a line for a person: name, text in the user's units, and what it means.
//!
//! The panels and the page's own text show these very lines.

use std::borrow::Cow;
use turns_aloft_describe::About;
use turns_aloft_describe::Inline;

use crate::efforts;
use crate::session::Session;
use turns_aloft_analysis::uncertainty::UncertainInput;
use turns_aloft_describe::beyond;
use turns_aloft_describe::call::{
    call_sign, facing_text, over_rotated_text, possible_calls, shortfall_range_text,
    shortfall_text, uncalled_text, verdict_text,
};
use turns_aloft_describe::input::change_label;
use turns_aloft_describe::number::plain;
use turns_aloft_describe::range::{change_text, range_text};
use turns_aloft_describe::unit::{TURNS, UnitText, fixed};
use turns_aloft_physics::flight::FlightSample;
use turns_aloft_scenario::call::QUARTER_BAND_FROM_DEG;
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_scenario::units::{Unit, UnitSign};
use turns_aloft_scenario::{HandsKeep, Scenario};
use turns_aloft_words::say;
use turns_aloft_words::{decimal, text};

/// One line.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// The readout's published key.
    pub quantity: Cow<'static, str>,
    pub group: Group,
    pub label: Cow<'static, str>,
    pub text: String,
    /// One sentence.
    pub about: String,
}

/// Readings that belong together.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Group {
    Turns,
    /// What the range comes from; empty when none is shown.
    UncertaintyInputs,
    Time,
    Rate,
    Inertia,
    Energy,
    Hands,
    Efforts,
    Axis,
    Landing,
    /// The answer to the question in sight.
    Answer,
}

impl Group {
    pub const ALL: [Self; 11] = [
        Self::Turns,
        Self::UncertaintyInputs,
        Self::Time,
        Self::Rate,
        Self::Inertia,
        Self::Energy,
        Self::Hands,
        Self::Efforts,
        Self::Axis,
        Self::Landing,
        Self::Answer,
    ];

    pub fn label(self) -> &'static str {
        match self {
            Self::Turns => text("group-turns"),
            Self::UncertaintyInputs => text("group-uncertainty"),
            Self::Time => text("group-time"),
            Self::Rate => text("group-rate"),
            Self::Inertia => text("group-inertia"),
            Self::Energy => text("group-energy"),
            Self::Hands => text("group-hands"),
            Self::Efforts => text("group-efforts"),
            Self::Axis => text("group-axis"),
            Self::Landing => text("group-landing"),
            Self::Answer => text("group-answer"),
        }
    }
}

pub(crate) const SECONDS: Unit = fixed(UnitSign::S, 2);
const INERTIA: Unit = fixed(UnitSign::KgM2, 2);
const MOMENTUM: Unit = fixed(UnitSign::KgM2PerS, 1);
const JOULES: Unit = fixed(UnitSign::J, 0);
const NEWTONS: Unit = fixed(UnitSign::N, 0);
const TORQUE: Unit = fixed(UnitSign::NM, 0);

/// What the phase of the flight at the playhead is called.
pub fn phase(session: &Session) -> &'static str {
    let (t_s, flight) = (session.playhead_s(), session.flight());
    let spec = &flight.table.plan.spec;
    if t_s < 0.0 {
        text("phase-on-the-ice")
    } else if t_s >= flight.touchdown_s {
        text("phase-landed")
    } else if t_s >= flight.open_s && spec.open_lead_s > 0.0 {
        text("phase-opening")
    } else if t_s < spec.close_delay_s {
        text("phase-still-open")
    } else if t_s < flight.table.plan.closed_s() {
        text("phase-closing")
    } else {
        text("phase-held-tight")
    }
}

/// The result in one sentence, to be read out.
pub fn summary(session: &Session) -> String {
    let value = |quantity: &str| {
        turns(session)
            .into_iter()
            .find(|line| line.quantity == quantity)
            .map(|line| line.text)
    };
    let turns = value("turns").unwrap_or_default();
    let [owed, over, facing] = ["turns_owed", "over_rotated_deg", "landing_facing_deg"].map(value);
    let said = if let (Some(owed), Some(over), Some(facing)) = (owed, over, facing) {
        say!(
            "summary-of-over-rotated",
            turns = turns,
            owed = owed,
            over = over,
            facing = facing
        )
    } else {
        of_turns(
            turns,
            [value("turns_owed"), value("shortfall_deg"), value("call")],
        )
    };
    let beyond = beyond::sentence(session.beyond_seen(), session.units());
    [Some(said), beyond]
        .into_iter()
        .flatten()
        .collect::<Vec<_>>()
        .join(" ")
}

/// The turns, and what is owed, missing and called where anything is owed.
fn of_turns(turns: String, against: [Option<String>; 3]) -> String {
    match against.into() {
        (Some(owed), Some(missing), Some(call)) => say!(
            "summary-of-named",
            turns = turns,
            owed = owed,
            missing = missing,
            call = call
        ),
        _ => say!("summary-of-free", turns = turns),
    }
}

/// The picture in one sentence, at the playhead.
pub fn picture(session: &Session) -> String {
    let turns = turns_at(session, &session.now());
    say!(
        "picture",
        phase = phase(session),
        time = SECONDS.text(session.now().t_s),
        turns = TURNS.number(turns)
    )
}

/// Turns up to a moment, the part turned on the ice included.
pub fn turns_at(session: &Session, sample: &FlightSample) -> f64 {
    turns_of(session.scenario(), sample)
}

/// The same of any attempt.
pub fn turns_of(scenario: &Scenario, sample: &FlightSample) -> f64 {
    sample.air_turns() + scenario.pre_rotation_turns
}

/// All lines, those of one group together.
pub fn readings(session: &Session) -> Vec<Reading> {
    let now = session.now();
    let mut lines = turns(session);
    lines.extend(session.held_readings());
    lines.extend(uncertainty(session));
    lines.extend(time(session, &now));
    lines.extend(rate(session, &now));
    lines.extend(inertia(session, &now));
    lines.extend(energy(session, &now));
    lines.extend(hands(session, &now));
    lines.extend(efforts::lines(session));
    lines.extend(axis(session, &now));
    lines.extend(landing(session));
    lines
}

pub(crate) fn line(
    group: Group,
    quantity: impl Into<Cow<'static, str>>,
    label: impl Into<Cow<'static, str>>,
    text: String,
    about: impl Into<String>,
) -> Reading {
    Reading {
        quantity: quantity.into(),
        group,
        label: label.into(),
        text,
        about: about.into(),
    }
}

fn turns(session: &Session) -> Vec<Reading> {
    let (jump, scenario) = (session.jump(), session.scenario());
    let range = session.range();
    let line = |quantity: &'static str, label: &'static str, text, about: &str| {
        line(Group::Turns, quantity, label, text, about)
    };
    let mut lines = vec![
        line(
            "turns",
            text("reading-turns"),
            range.map_or_else(|| TURNS.number(jump.turns), range_text),
            text("reading-turns-about"),
        ),
        line(
            "air_turns",
            text("reading-air-turns"),
            TURNS.number(jump.readout.air_turns),
            text("reading-air-turns-about"),
        ),
        line(
            "pre_rotation_turns",
            text("reading-pre-rotation-turns"),
            TURNS.number(scenario.pre_rotation_turns),
            text("reading-pre-rotation-turns-about"),
        ),
    ];
    if !session.beyond_seen().is_empty() {
        let beyond = session.beyond_seen();
        lines.push(line(
            "beyond_seen",
            text("reading-beyond-seen"),
            beyond::list(beyond, session.units()),
            &beyond::meaning(beyond, session.units()),
        ));
    }
    let Some(owed) = jump.owed else {
        return lines;
    };
    lines.push(line(
        "turns_owed",
        text("reading-turns-owed"),
        plain(owed.turns),
        text("reading-turns-owed-about"),
    ));
    lines.push(line(
        "shortfall_deg",
        text("reading-shortfall-deg"),
        range
            .and_then(|range| range.shortfall_deg)
            .map_or_else(|| shortfall_text(owed.shortfall_deg), shortfall_range_text),
        text("reading-shortfall-deg-about"),
    ));
    // With a range the call says whether it may be so.
    if let (Some(over_deg), None) = (owed.over_rotated_deg, range) {
        lines.push(line(
            "over_rotated_deg",
            text("reading-over-rotated-deg"),
            over_rotated_text(&owed, over_deg),
            text("reading-over-rotated-deg-about"),
        ));
    }
    lines.push(line(
        "landing_facing_deg",
        text("reading-landing-facing-deg"),
        facing_text(owed.landing_facing_deg),
        text("reading-landing-facing-deg-about"),
    ));
    let about = say!(
        "reading-call-about",
        from = decimal(QUARTER_BAND_FROM_DEG, 0)
    );
    let call = match range.map(|range| (range.calls.as_deref(), range.shortfall_deg)) {
        Some((Some(calls), _)) if calls.len() > 1 => {
            say!("call-may-be", calls = possible_calls(calls, call_sign))
        }
        Some((None, Some(shortfall_deg))) => uncalled_text(shortfall_deg).to_owned(),
        _ => verdict_text(Some(owed)).to_owned(),
    };
    lines.push(line("call", text("reading-call"), call, &about));
    lines
}

/// What the inputs alone make of the turns.
fn uncertainty(session: &Session) -> Vec<Reading> {
    let Some(range) = session.range() else {
        return Vec::new();
    };
    UncertainInput::ALL
        .into_iter()
        .zip(range.changes)
        .map(|(input, change)| {
            let about = say!(
                "range-by-about",
                what = input.inline(),
                half_width = session.half_width_text(input),
                source = input.about()
            );
            line(
                Group::UncertaintyInputs,
                input.change_key(),
                change_label(input),
                change_text(change),
                about,
            )
        })
        .collect()
}

fn time(session: &Session, now: &FlightSample) -> Vec<Reading> {
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

fn rate(session: &Session, now: &FlightSample) -> Vec<Reading> {
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

fn inertia(session: &Session, now: &FlightSample) -> Vec<Reading> {
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

fn energy(session: &Session, now: &FlightSample) -> Vec<Reading> {
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

fn hands(session: &Session, now: &FlightSample) -> Vec<Reading> {
    let efforts = session.jump().efforts();
    let [left, right] = session.flight().loads_at(now.t_s).hand_n();
    let holds = session.scenario().hand_mass_kg > 0.0;
    let largest = match (holds, session.scenario().hands_keep) {
        (false, _) => text("reading-hand-force-peak-n-about"),
        (true, HandsKeep::Rate) => text("reading-hand-force-peak-n-about-rate"),
        (true, HandsKeep::AngularMomentum) => text("reading-hand-force-peak-n-about-momentum"),
        (true, HandsKeep::Energy) => text("reading-hand-force-peak-n-about-energy"),
    };
    let line = |quantity: &'static str, label: &'static str, force_n, about: &str| {
        line(Group::Hands, quantity, label, NEWTONS.text(force_n), about)
    };
    let about = text("reading-hand-force-now-about");
    let mut lines = vec![
        line(
            "hand_force_left_now_n",
            text("reading-hand-force-left-now-n"),
            left,
            about,
        ),
        line(
            "hand_force_right_now_n",
            text("reading-hand-force-right-now-n"),
            right,
            about,
        ),
        line(
            "hand_force_peak_n",
            text("reading-hand-force-peak-n"),
            efforts.hand_force.value,
            largest,
        ),
    ];
    if holds {
        lines.push(line(
            "grip_force_peak_n",
            text("reading-grip-force-peak-n"),
            efforts.grip_force.value,
            text("reading-grip-force-peak-n-about"),
        ));
    }
    lines
}

fn axis(session: &Session, now: &FlightSample) -> Vec<Reading> {
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

fn landing(session: &Session) -> Vec<Reading> {
    let readout = &session.jump().readout;
    let [low, high] = readout.landing_load_bw;
    let [least, most] = readout.landing_torque_n_m;
    let [short_s, long_s] = session.scenario().ground.stopping_time_s().map(plain);
    vec![
        line(
            Group::Landing,
            "landing_load_bw",
            text("reading-landing-load-bw"),
            say!(
                "reading-landing-load-bw-value",
                low = decimal(low, 1),
                high = decimal(high, 1)
            ),
            say!(
                "reading-landing-load-bw-about",
                from = short_s.as_str(),
                to = long_s.as_str()
            ),
        ),
        line(
            Group::Landing,
            "landing_angular_momentum_kg_m2_s",
            text("reading-landing-angular-momentum-kg-m2-s"),
            MOMENTUM.text(readout.landing_angular_momentum_kg_m2_s),
            text("reading-landing-angular-momentum-kg-m2-s-about"),
        ),
        line(
            Group::Landing,
            "landing_torque_n_m",
            text("reading-landing-torque-n-m"),
            say!(
                "from-to",
                from = TORQUE.number(least),
                to = TORQUE.text(most)
            ),
            say!(
                "reading-landing-torque-n-m-about",
                from = short_s.as_str(),
                to = long_s.as_str()
            ),
        ),
    ]
}
