//! What the names of columns tell. Names are taken apart, never compared whole: each maker has others.

use crate::units::RateUnit;

/// What a column is of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Quantity {
    Gyroscope,
    /// With gravity in it, as far as the name tells.
    Accelerometer,
    /// Its name is no more than that of an axis.
    Unnamed,
}

/// Axes as a column's name has them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum AxisNames {
    Xyz,
    /// The names of the W3C's `rotationRate`.
    AlphaBetaGamma,
}

/// A column that is one axis of a sensor.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct AxisName {
    pub quantity: Quantity,
    pub names: AxisNames,
    /// 0, 1 or 2.
    pub axis: usize,
    /// The name says that gravity is in it.
    pub with_gravity: bool,
}

const GYROSCOPE: [&str; 9] = [
    "gyro",
    "gyr",
    "rotationrate",
    "angularvelocity",
    "angularrate",
    "angvel",
    "omega",
    "drehrate",
    "winkelgeschwindigkeit",
];

const ACCELEROMETER: [&str; 3] = ["acc", "beschleunigung", "specificforce"];

/// Accelerations that gravity has been taken out of, and readings that are not as they were measured.
const OTHER: [&str; 10] = [
    "angularacc",
    "linear",
    "user",
    "withoutg",
    "ohneg",
    "uncal",
    "bias",
    "orientation",
    "quat",
    "mag",
];

const WITH_GRAVITY: [&str; 4] = ["includinggravity", "withgravity", "withg", "mitg"];

/// Lower-case words of a name: what is between other signs, and cut where a capital follows a small letter.
fn words(name: &str) -> Vec<String> {
    let mut words = vec![String::new()];
    let mut small = false;
    for c in name.chars() {
        if !c.is_alphanumeric() || (small && c.is_uppercase()) {
            words.push(String::new());
        }
        if c.is_alphanumeric() {
            let last = words.len() - 1;
            words[last].extend(c.to_lowercase());
        }
        small = c.is_lowercase();
    }
    words.retain(|word| !word.is_empty());
    words
}

/// The name without what stands in brackets.
fn without_unit(name: &str) -> &str {
    name.split(['(', '[']).next().unwrap_or(name)
}

fn axis_of(word: &str) -> Option<(AxisNames, usize)> {
    let of = |names: [&str; 3]| names.iter().position(|name| *name == word);
    let xyz = of(["x", "y", "z"]).map(|axis| (AxisNames::Xyz, axis));
    xyz.or_else(|| of(["alpha", "beta", "gamma"]).map(|axis| (AxisNames::AlphaBetaGamma, axis)))
}

impl AxisName {
    pub fn of(name: &str) -> Option<Self> {
        let words = words(without_unit(name));
        let joined = words.concat();
        let has = |stems: &[&str]| stems.iter().any(|stem| joined.contains(stem));
        let short = |word: &String, first: char| {
            let mut signs = word.chars();
            signs.next() == Some(first)
                && axis_of(signs.as_str()).is_some_and(|(names, _)| names == AxisNames::Xyz)
        };
        let quantity = if has(&GYROSCOPE)
            || words
                .iter()
                .any(|word| short(word, 'g') || short(word, 'w'))
        {
            Some(Quantity::Gyroscope)
        } else if has(&ACCELEROMETER) || words.iter().any(|word| short(word, 'a')) {
            Some(Quantity::Accelerometer)
        } else if words.len() == 1 {
            Some(Quantity::Unnamed)
        } else {
            None
        }?;
        let apart = words.iter().find_map(|word| axis_of(word));
        // The axis may be written onto the end of the name.
        let joint = || {
            words.iter().rev().find_map(|word| {
                let (at, _) = word.char_indices().next_back()?;
                let is_stem = at > 0 && quantity != Quantity::Unnamed;
                axis_of(&word[at..]).filter(|_| is_stem)
            })
        };
        let (names, axis) = apart.or_else(joint)?;
        if has(&OTHER) || (quantity == Quantity::Unnamed && names != AxisNames::Xyz) {
            return None;
        }
        Some(Self {
            quantity,
            names,
            axis,
            with_gravity: has(&WITH_GRAVITY),
        })
    }
}

/// What a column's name says about time.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TimeName {
    /// Time since the beginning.
    Elapsed,
    Clock,
    /// Time between two readings.
    Interval,
}

impl TimeName {
    pub fn of(name: &str) -> Option<Self> {
        if AxisName::of(name).is_some_and(|axis| axis.quantity != Quantity::Unnamed) {
            return None;
        }
        let words = words(without_unit(name));
        let joined = words.concat();
        let has = |stems: &[&str]| stems.iter().any(|stem| joined.contains(stem));
        let is = |names: &[&str]| words.iter().any(|word| names.contains(&word.as_str()));
        if has(&["interval"]) {
            Some(Self::Interval)
        } else if has(&["elapsed"]) {
            Some(Self::Elapsed)
        } else if has(&["time", "zeit", "epoch", "clock"])
            || is(&["t", "ts", "s", "ms", "us", "ns", "sec", "seconds", "secs"])
        {
            Some(Self::Clock)
        } else {
            None
        }
    }
}

/// The unit of a gyroscope that its name has, if any.
pub fn rate_unit(name: &str) -> Option<RateUnit> {
    let name = name.to_lowercase();
    let has = |signs: &[&str]| signs.iter().any(|sign| name.contains(sign));
    if has(&["deg", "grad/", "\u{b0}", "dps", "rotationrate"]) {
        Some(RateUnit::DegPerS)
    } else {
        has(&["rad"]).then_some(RateUnit::RadPerS)
    }
}

/// Signs of units as a row below the names may have them.
const UNITS: [&str; 28] = [
    "s",
    "sec",
    "ms",
    "us",
    "\u{b5}s",
    "ns",
    "rad/s",
    "rad s-1",
    "rads-1",
    "rad/sec",
    "deg/s",
    "deg/sec",
    "\u{b0}/s",
    "dps",
    "m/s2",
    "m/s^2",
    "m/s\u{b2}",
    "m/s/s",
    "g",
    "mg",
    "ut",
    "\u{b5}t",
    "hz",
    "unix",
    "epoch",
    "1",
    "-",
    "?/s",
];

/// Whether that is the sign of a unit, in brackets or not.
pub fn is_unit(field: &str) -> bool {
    let field = field.trim_matches(['(', ')', '[', ']']).trim();
    UNITS.iter().any(|unit| field.eq_ignore_ascii_case(unit))
}

/// The sensor that a file is of, by its own name.
pub fn quantity_of_file(file_name: &str) -> Option<Quantity> {
    let joined = words(file_name).concat();
    let has = |stems: &[&str]| stems.iter().any(|stem| joined.contains(stem));
    if has(&GYROSCOPE) {
        Some(Quantity::Gyroscope)
    } else {
        has(&ACCELEROMETER).then_some(Quantity::Accelerometer)
    }
}
