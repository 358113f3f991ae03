//! The saved form of an attempt: a small, versioned JSON file with the marks and no film.

use std::f64::consts::PI;
use std::ops::RangeInclusive;

use serde::Serialize;
use serde_json::Value;

use crate::entries::Object;
use crate::film::{
    Contacts, Facing, Film, Point, PointOf, PostureMark, USUAL_FACING_SIGMA_RAD,
    USUAL_POSTURE_SIGMA,
};
use crate::sensor::{Sensor, Turned};
use crate::stop_watch::{StopWatch, USUAL_HALF_WIDTH_S};
use crate::unreadable::Unreadable;
use crate::{Attempt, Measured};
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::file::{Opened, Saved};
use turns_aloft_scenario::reading::{Read, read};

/// What says in a file that it is an attempt.
const MARK: &str = "turns_aloft_attempt";
const JUMP: &str = "jump";

/// The ways an attempt is measured; each file has one of them.
pub const MEASURED: [&str; 3] = ["stop_watch", "film", "sensor"];

/// Version written by this build.
pub const VERSION: u64 = 1;

/// An attempt with as many marks as anybody makes takes a tenth of it; anything this large is something
/// else.
pub const LARGEST_BYTES: usize = 300_000;

/// Times on the clock of a film or a trace, s; times from one instant to another; angles, rad; their
/// standard deviations; pixels.
const TIME_S: RangeInclusive<f64> = -1e6..=1e6;
const SPAN_S: RangeInclusive<f64> = 0.0..=5.0;
const ANGLE_RAD: RangeInclusive<f64> = -1e3..=1e3;
const SIGMA_RAD: RangeInclusive<f64> = 1e-3..=PI;
const SHARE: RangeInclusive<f64> = 0.0..=1.0;
const SIGMA: RangeInclusive<f64> = 1e-3..=1.0;
const PIXELS: RangeInclusive<f64> = -1e5..=1e5;

/// An attempt as it stands in a file.
#[derive(Serialize)]
struct Written<'a> {
    turns_aloft_attempt: u64,
    jump: Saved<&'a Scenario>,
    #[serde(flatten)]
    measured: &'a Measured,
}

impl Attempt {
    /// Whether a text is an attempt's, in order or not.
    pub fn is_in(text: &str) -> bool {
        text.contains(&format!("\"{MARK}\""))
    }

    /// The file's text.
    pub fn to_file(&self) -> String {
        let written = Written {
            turns_aloft_attempt: VERSION,
            jump: self.scenario.saved(),
            measured: &self.measured,
        };
        let mut text = serde_json::to_string_pretty(&written)
            .expect("an attempt holds nothing that JSON cannot say");
        text.push('\n');
        text
    }

    /// A name for the file.
    pub fn file_name(&self) -> String {
        let jump = self.scenario.file_name();
        let stem = jump.strip_suffix(".aloft.json").unwrap_or(&jump);
        format!("{stem}.attempt.json")
    }

    /// Reads a file's text, and how old its jump is.
    pub fn open_file(text: &str) -> Result<Opened<Self>, Unreadable> {
        if text.len() > LARGEST_BYTES {
            return Err(Unreadable::TooLarge);
        }
        let Read { value, twice } = read(text).map_err(Unreadable::NotJson)?;
        let opened = Self::from_saved(value)?;
        match twice {
            Some(twice) => Err(Unreadable::Broken(twice)),
            None => Ok(opened),
        }
    }

    fn from_saved(value: Value) -> Result<Opened<Self>, Unreadable> {
        let version = value.get(MARK).and_then(Value::as_u64);
        match version {
            None | Some(0) => return Err(Unreadable::NotAnAttempt),
            Some(newer) if newer > VERSION => return Err(Unreadable::Newer(newer)),
            Some(_) => {}
        }
        let mut file = Object::of(MARK, value, &[MARK, JUMP], &MEASURED)?;
        let jump = Scenario::from_saved(file.take(JUMP)?).map_err(Unreadable::Jump)?;
        let [watch, film, sensor] = MEASURED.map(|key| file.take_if_there(key));
        let measured = match (watch, film, sensor) {
            (Some(watch), None, None) => Measured::StopWatch(stop_watch(watch)?),
            (None, Some(film), None) => Measured::Film(self::film(film)?),
            (None, None, Some(sensor)) => Measured::Sensor(self::sensor(sensor)?),
            _ => return Err(Unreadable::NotMeasured),
        };
        Ok(Opened {
            read: Self {
                scenario: jump.read,
                measured,
            },
            earlier_body: jump.earlier_body,
        })
    }
}

fn stop_watch(value: Value) -> Result<StopWatch, Unreadable> {
    let optional = ["half_width_s", "turns_counted", "landing_facing_rad"];
    let mut of = Object::of(MEASURED[0], value, &["hang_time_s"], &optional)?;
    Ok(StopWatch {
        hang_time_s: of.number("hang_time_s", SPAN_S)?,
        half_width_s: of
            .number_if_there("half_width_s", 0.0..=1.0)?
            .unwrap_or(USUAL_HALF_WIDTH_S),
        turns_counted: of.number_if_there("turns_counted", 0.0..=10.0)?,
        landing_facing_rad: of.number_if_there("landing_facing_rad", -PI..=PI)?,
    })
}

fn film(value: Value) -> Result<Film, Unreadable> {
    let needed = [
        "file_name",
        "size_px",
        "frame_s",
        "slow_motion",
        "contacts",
        "facings",
        "postures",
        "points",
    ];
    let mut of = Object::of(MEASURED[1], value, &needed, &[])?;
    Ok(Film {
        file_name: of.text("file_name")?,
        size_px: of.numbers("size_px", 1.0..=1e5)?,
        frame_s: of.number("frame_s", 1e-4..=1.0)?,
        slow_motion: of.number("slow_motion", 0.1..=100.0)?,
        contacts: contacts(of.take("contacts")?)?,
        facings: of.each("facings", facing)?,
        postures: of.each("postures", posture)?,
        points: of.each("points", point)?,
    })
}

fn contacts(value: Value) -> Result<Contacts, Unreadable> {
    let optional = [
        "last_on_ice_s",
        "first_in_air_s",
        "last_in_air_s",
        "first_on_ice_s",
    ];
    let mut of = Object::of("contacts", value, &[], &optional)?;
    let mut times_s = optional.map(|key| of.number_if_there(key, TIME_S));
    let mut next = |i: usize| std::mem::replace(&mut times_s[i], Ok(None));
    Ok(Contacts {
        last_on_ice_s: next(0)?,
        first_in_air_s: next(1)?,
        last_in_air_s: next(2)?,
        first_on_ice_s: next(3)?,
    })
}

fn facing(value: Value) -> Result<Facing, Unreadable> {
    let mut of = Object::of("facings", value, &["t_s", "angle_rad"], &["sigma_rad"])?;
    Ok(Facing {
        t_s: of.number("t_s", TIME_S)?,
        angle_rad: of.number("angle_rad", ANGLE_RAD)?,
        sigma_rad: of
            .number_if_there("sigma_rad", SIGMA_RAD)?
            .unwrap_or(USUAL_FACING_SIGMA_RAD),
    })
}

fn posture(value: Value) -> Result<PostureMark, Unreadable> {
    let mut of = Object::of("postures", value, &["t_s"], &["arms", "legs", "sigma"])?;
    Ok(PostureMark {
        t_s: of.number("t_s", TIME_S)?,
        arms: of.number_if_there("arms", SHARE)?,
        legs: of.number_if_there("legs", SHARE)?,
        sigma: of
            .number_if_there("sigma", SIGMA)?
            .unwrap_or(USUAL_POSTURE_SIGMA),
    })
}

fn point(value: Value) -> Result<Point, Unreadable> {
    let mut entries = Object::of("points", value, &["of", "t_s", "at_px"], &[])?;
    let name = entries.text("of")?;
    let of = PointOf::named(&name).ok_or(Unreadable::UnknownPoint(name))?;
    Ok(Point {
        of,
        t_s: entries.number("t_s", TIME_S)?,
        at_px: entries.numbers("at_px", PIXELS)?,
    })
}

fn sensor(value: Value) -> Result<Sensor, Unreadable> {
    let needed = [
        "file_name",
        "takeoff_s",
        "takeoff_sigma_s",
        "landing_s",
        "landing_sigma_s",
        "turned",
        "scale_sigma",
    ];
    let mut of = Object::of(MEASURED[2], value, &needed, &[])?;
    Ok(Sensor {
        file_name: of.text("file_name")?,
        takeoff_s: of.number("takeoff_s", TIME_S)?,
        takeoff_sigma_s: of.number("takeoff_sigma_s", 0.0..=1.0)?,
        landing_s: of.number("landing_s", TIME_S)?,
        landing_sigma_s: of.number("landing_sigma_s", 0.0..=1.0)?,
        turned: of.each("turned", turned)?,
        scale_sigma: of.number("scale_sigma", 0.0..=0.5)?,
    })
}

fn turned(value: Value) -> Result<Turned, Unreadable> {
    let mut of = Object::of("turned", value, &["t_s", "angle_rad", "sigma_rad"], &[])?;
    Ok(Turned {
        t_s: of.number("t_s", TIME_S)?,
        angle_rad: of.number("angle_rad", ANGLE_RAD)?,
        sigma_rad: of.number("sigma_rad", SIGMA_RAD)?,
    })
}
