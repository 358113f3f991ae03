//! Every readout as a line for a person: name, text in the user's units, and what it means.
//!
//! The panels and the page's own text show these very lines.

use std::borrow::Cow;

use super::Session;
use crate::physics::call::{Call, QUARTER_BAND_FROM_DEG};
use crate::physics::flight::Moment;
use crate::scenario::keys::Kind;
use crate::scenario::uncertainty::{HALF_WIDTHS, INPUTS, Range};
use crate::scenario::units::Unit;
use crate::scenario::{HandsKeep, Scenario};
use crate::words::{Message, text};

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
    HowSure,
    Time,
    Rate,
    Inertia,
    Energy,
    Hands,
    Axis,
    Landing,
    /// The answer to the question in sight.
    Answer,
}

impl Group {
    pub const ALL: [Self; 10] = [
        Self::Turns,
        Self::HowSure,
        Self::Time,
        Self::Rate,
        Self::Inertia,
        Self::Energy,
        Self::Hands,
        Self::Axis,
        Self::Landing,
        Self::Answer,
    ];

    pub fn label(self) -> &'static str {
        match self {
            Self::Turns => text("group-turns"),
            Self::HowSure => text("group-how-sure"),
            Self::Time => text("group-time"),
            Self::Rate => text("group-rate"),
            Self::Inertia => text("group-inertia"),
            Self::Energy => text("group-energy"),
            Self::Hands => text("group-hands"),
            Self::Axis => text("group-axis"),
            Self::Landing => text("group-landing"),
            Self::Answer => text("group-answer"),
        }
    }
}

const TURNS: Unit = fixed("unit-turns", 2);
const SECONDS: Unit = fixed("unit-s", 2);
const INERTIA: Unit = fixed("unit-kg-m2", 2);
const MOMENTUM: Unit = fixed("unit-kg-m2-per-s", 1);
const JOULES: Unit = fixed("unit-j", 0);
const NEWTONS: Unit = fixed("unit-n", 0);
const DEGREES: Unit = fixed("unit-degrees", 0);

const fn fixed(sign: &'static str, decimals: usize) -> Unit {
    Unit {
        si: 1.0,
        sign: Message(sign),
        decimals,
    }
}

/// Missing rotation in words: "169° short", "12° too far".
pub fn shortfall_text(shortfall_deg: f64) -> String {
    let degrees = DEGREES.number(shortfall_deg.abs());
    if shortfall_deg >= 0.0 {
        format!("{degrees}° short")
    } else {
        format!("{degrees}° too far")
    }
}

/// The call in words.
pub fn call_text(call: Option<Call>) -> &'static str {
    match call {
        None => text("call-none"),
        Some(Call::Full) => text("call-full"),
        Some(Call::Quarter) => text("call-quarter"),
        Some(Call::Under) => text("call-under"),
        Some(Call::Downgraded) => text("call-downgraded"),
    }
}

/// The turns as a range: "3.42 to 3.71".
fn range_text(range: &Range) -> String {
    format!(
        "{} to {}",
        TURNS.number(range.low),
        TURNS.number(range.high)
    )
}

/// The turns as a range for large figures: "3.4–3.7", with more decimals where one says nothing.
pub fn range_figures(range: &Range) -> String {
    let of = |decimals: usize| [range.low, range.high].map(|turns| format!("{turns:.decimals$}"));
    let [low, high] = of(1);
    if low != high {
        return format!("{low}–{high}");
    }
    let [low, high] = of(2);
    if low == high {
        low
    } else {
        format!("{low}–{high}")
    }
}

/// Missing rotation from one end to the other: "41° to 148° short", "12° too far to 30° short".
pub fn shortfall_range_text(shortfall_deg: [f64; 2]) -> String {
    let [least, most] = shortfall_deg;
    if least < 0.0 && most < 0.0 {
        return format!("{}° to {}", DEGREES.number(-most), shortfall_text(least));
    }
    if least >= 0.0 {
        return format!("{}° to {}", DEGREES.number(least), shortfall_text(most));
    }
    format!("{} to {}", shortfall_text(least), shortfall_text(most))
}

/// What the call may be, each by these words: "< or <<".
pub fn possible_calls(calls: &[Call], words: impl Fn(Call) -> &'static str) -> String {
    let mut words: Vec<&str> = calls.iter().map(|&call| words(call)).collect();
    let last = words.pop().unwrap_or_default();
    if words.is_empty() {
        last.to_owned()
    } else {
        format!("{} or {last}", words.join(", "))
    }
}

/// The call in one or two characters; a full rotation has no sign.
const fn call_sign(call: Call) -> &'static str {
    match call {
        Call::Full => "full",
        other => other.sign(),
    }
}

/// What the phase of the flight at the playhead is called.
pub fn phase(session: &Session) -> &'static str {
    let (t_s, flight) = (session.playhead_s(), session.flight());
    let spec = &flight.table.plan.spec;
    if t_s < 0.0 {
        "on the ice"
    } else if t_s >= flight.touchdown_s {
        "landed"
    } else if t_s >= flight.open_s && spec.open_lead_s > 0.0 {
        "opening"
    } else if t_s < spec.close_delay_s {
        "still open"
    } else if t_s < flight.table.plan.closed_s() {
        "closing"
    } else {
        "held tight"
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
    match (value("turns_owed"), value("shortfall_deg"), value("call")) {
        (Some(owed), Some(missing), Some(call)) => {
            format!("{turns} turns of {owed}: {missing}, {call}.")
        }
        _ => format!("{turns} turns."),
    }
}

/// The picture in one sentence, at the playhead.
pub fn picture(session: &Session) -> String {
    let turns = turns_at(session, &session.now());
    format!(
        "The jumper, {}, {} after take-off, {} turns so far.",
        phase(session),
        SECONDS.text(session.now().t_s),
        TURNS.number(turns)
    )
}

/// Turns up to a moment, the part turned on the ice included.
pub fn turns_at(session: &Session, moment: &Moment) -> f64 {
    turns_of(session.scenario(), moment)
}

/// The same of any attempt.
pub fn turns_of(scenario: &Scenario, moment: &Moment) -> f64 {
    moment.air_turns() + scenario.pre_rotation_turns
}

/// All lines, those of one group together.
pub fn readings(session: &Session) -> Vec<Reading> {
    let now = session.now();
    let mut lines = turns(session);
    lines.extend(how_sure(session));
    lines.extend(time(session, &now));
    lines.extend(rate(session, &now));
    lines.extend(inertia(session, &now));
    lines.extend(energy(session, &now));
    lines.extend(hands(session, &now));
    lines.extend(axis(session, &now));
    lines.extend(landing(session));
    lines
}

pub(super) fn line(
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
            "Turns in all",
            range.map_or_else(|| TURNS.number(jump.turns), range_text),
            "Turns in the air plus the part already turned on the ice before leaving it.",
        ),
        line(
            "air_turns",
            "Turns in the air",
            TURNS.number(jump.readout.air_turns),
            "How far the hips turned about the vertical from take-off to touch-down.",
        ),
        line(
            "pre_rotation_turns",
            "Turned on the ice",
            TURNS.number(scenario.pre_rotation_turns),
            "Turned before leaving the ice; it counts towards the jump.",
        ),
    ];
    let Some(owed) = jump.owed else {
        return lines;
    };
    lines.push(line(
        "turns_owed",
        "Turns owed",
        format!("{}", owed.turns),
        "What the jump's name asks for; an Axel owes half a turn more because it takes off forwards.",
    ));
    lines.push(line(
        "shortfall_deg",
        "Missing",
        range
            .and_then(|range| range.shortfall_deg)
            .map_or_else(|| shortfall_text(owed.shortfall_deg), shortfall_range_text),
        "Rotation still missing at touch-down, in degrees: 360 are a whole turn.",
    ));
    let about = format!(
        "By the sport's rule a quarter turn missing is q, more than a quarter <, a half or more <<; \
         the rule gives q the single value 90°, and its band here, {QUARTER_BAND_FROM_DEG}° to 90°, \
         is our own."
    );
    let possible = range.and_then(|range| range.calls.as_deref());
    let call = match possible {
        Some(calls) if calls.len() > 1 => format!("may be {}", possible_calls(calls, call_sign)),
        _ => call_text(owed.call).to_owned(),
    };
    lines.push(line("call", "Call", call, &about));
    lines
}

/// What the inputs alone make of the turns.
fn how_sure(session: &Session) -> Vec<Reading> {
    const NAMES: [(&str, &str); INPUTS] = [
        ("turns_change_with_jump_height", "By jump height"),
        ("turns_change_with_takeoff_rate", "By take-off rate"),
        ("turns_change_with_close_time", "By close time"),
        ("turns_change_with_inertia", "By moment of inertia"),
    ];
    let Some(range) = session.range() else {
        return Vec::new();
    };
    HALF_WIDTHS
        .iter()
        .zip(NAMES)
        .zip(range.changes)
        .map(|((row, (quantity, label)), change)| {
            let about = format!(
                "What {} ± {} alone makes of the turns. {}",
                row.inline(),
                session.half_width_text(row),
                row.about()
            );
            line(Group::HowSure, quantity, label, change_text(change), about)
        })
        .collect()
}

/// A change of the turns to either side.
pub fn change_text(change: f64) -> String {
    format!("± {} turns", TURNS.number(change.abs()))
}

fn time(session: &Session, now: &Moment) -> Vec<Reading> {
    let length = session.units.of(Kind::Length);
    let readout = &session.jump().readout;
    vec![
        line(
            Group::Time,
            "phase",
            "Phase",
            phase(session).to_owned(),
            "What the body is doing at the playhead.",
        ),
        line(
            Group::Time,
            "hang_time_s",
            "Hang time",
            SECONDS.text(readout.hang_time_s),
            "Time from take-off to the first touch of the ice; bent legs at landing make it longer.",
        ),
        line(
            Group::Time,
            "jump_height_m",
            "Jump height",
            length.text(readout.jump_height_m),
            "How far the centre of mass rises from take-off to the top.",
        ),
        line(
            Group::Time,
            "cm_height_now_m",
            "Centre of mass now",
            length.text(now.cm_height_m),
            "Height of the body's centre of mass over the ice at the playhead.",
        ),
    ]
}

fn rate(session: &Session, now: &Moment) -> Vec<Reading> {
    let unit = session.units.of(Kind::Rate);
    let readout = &session.jump().readout;
    let sign = session.scenario().turning.sign();
    let line = |quantity: &'static str, label: &'static str, rate_rad_s, about: &str| {
        line(Group::Rate, quantity, label, unit.text(rate_rad_s), about)
    };
    vec![
        line(
            "rate_now_rad_s",
            "Now",
            sign * now.spin_rad_s,
            "How fast the hips turn about the vertical at the playhead.",
        ),
        line(
            "takeoff_rate_rad_s",
            "At take-off",
            readout.takeoff_rate_rad_s,
            "How fast the hips turn as the ice is left.",
        ),
        line(
            "peak_rate_rad_s",
            "Peak",
            readout.peak_rate_rad_s,
            "The fastest of the flight; the highest peaks seen are about 430 to 440 rpm (common practice, no source).",
        ),
        line(
            "mean_rate_rad_s",
            "Mean",
            readout.mean_rate_rad_s,
            "Turns in the air over hang time: this, not the peak, decides how many turns there are.",
        ),
        line(
            "touchdown_rate_rad_s",
            "At touch-down",
            readout.touchdown_rate_rad_s,
            "What the landing still has to stop.",
        ),
    ]
}

fn inertia(session: &Session, now: &Moment) -> Vec<Reading> {
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
            "Now",
            now.inertia_kg_m2,
            "How hard the body is to turn about its axis: mass far out counts by the square of its distance.",
        ),
        line(
            "inertia_takeoff_kg_m2",
            "At take-off",
            readout.inertia_takeoff_kg_m2,
            "Open arms and a free leg make it large as the ice is left.",
        ),
        line(
            "inertia_least_kg_m2",
            "Tightest",
            readout.inertia_least_kg_m2,
            "The smallest of the flight; the mass tables behind it describe adults, so it is an estimate for a child.",
        ),
    ]
}

fn energy(session: &Session, now: &Moment) -> Vec<Reading> {
    let readout = &session.jump().readout;
    let h = readout.angular_momentum_kg_m2_s.length();
    let line = |quantity: &'static str, label: &'static str, text, about: &str| {
        line(Group::Energy, quantity, label, text, about)
    };
    vec![
        line(
            "angular_momentum_kg_m2_s",
            "Angular momentum",
            MOMENTUM.text(h),
            "Fixed as the ice is left and the same all through the flight, because nothing in the air can turn the body but the air itself, which would take 0.1 to 1 % by estimate and is left out.",
        ),
        line(
            "energy_now_j",
            "Energy now",
            JOULES.text(now.energy_j),
            "Energy of the turning, limbs included, at the playhead.",
        ),
        line(
            "energy_takeoff_j",
            "Energy at take-off",
            JOULES.text(readout.energy_takeoff_j),
            "Energy of the turning as the ice is left.",
        ),
        line(
            "pull_in_work_j",
            "Pull-in work",
            JOULES.text(readout.pull_in_work_j),
            "What the muscles add by pulling arms and legs in against the turning.",
        ),
    ]
}

fn hands(session: &Session, now: &Moment) -> Vec<Reading> {
    let readout = &session.jump().readout;
    let [left, right] = now.hand_pull_n;
    let keeps = match (
        session.scenario().hand_mass_kg > 0.0,
        session.scenario().hands_keep,
    ) {
        (false, _) => "",
        (true, HandsKeep::Rate) => "; the heavier hands here keep the take-off rate",
        (true, HandsKeep::AngularMomentum) => "; the heavier hands here keep the angular momentum",
        (true, HandsKeep::Energy) => "; the heavier hands here keep the energy of take-off",
    };
    let line = |quantity: &'static str, label: &'static str, pull, about: String| {
        line(Group::Hands, quantity, label, NEWTONS.text(pull), about)
    };
    let about = "Inward pull that keeps this hand, with what it holds, on its circle: mass times rate squared times distance.";
    vec![
        line("hand_pull_left_now_n", "Left now", left, about.to_owned()),
        line(
            "hand_pull_right_now_n",
            "Right now",
            right,
            about.to_owned(),
        ),
        line(
            "hand_pull_peak_n",
            "Largest",
            readout.hand_pull_peak_n,
            format!(
                "The larger of both hands over the flight; it grows with the square of the rate{keeps}."
            ),
        ),
    ]
}

fn axis(session: &Session, now: &Moment) -> Vec<Reading> {
    let readout = &session.jump().readout;
    let unit = session.units.of(Kind::Angle);
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
            "Tilt now",
            now.tilt_rad(),
            "Angle between the body's long axis and the vertical at the playhead.",
        ),
        line(
            "tilt_peak_rad",
            "Largest tilt",
            readout.tilt_peak_rad,
            "A tilted body wobbles about the upright angular momentum and turns more slowly.",
        ),
        line(
            "tilt_touchdown_rad",
            "Tilt at touch-down",
            readout.tilt_touchdown_rad,
            "How crooked the body comes down.",
        ),
    ]
}

fn landing(session: &Session) -> Vec<Reading> {
    let readout = &session.jump().readout;
    let [low, high] = readout.landing_load_bw;
    let [short_s, long_s] = session.scenario().ground.stopping_time_s();
    vec![line(
        Group::Landing,
        "landing_load_bw",
        "Landing load, estimate",
        format!("{low:.1} to {high:.1} body weights"),
        format!(
            "An estimate, not a measurement, of the peak when a half-sine push stops the fall within \
             {short_s} to {long_s} s (assumed); no safe number of jumps is known, and what is too \
             much is for the coach and a clinician to say."
        ),
    )]
}
