//! The numbers of a scenario, one row each: key, admissible range, what it is.
//!
//! The command's `--set`, the file's check and the page's sliders all read this one table.

use std::fmt;

use super::Scenario;
use super::jump::JUMP_TURNS;

/// What a number measures; decides the units the user may choose.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    Length,
    Mass,
    Rate,
    Time,
    Angle,
    Turns,
    /// A share from 0 to 1.
    Share,
}

impl Kind {
    /// The SI unit, as messages write it.
    pub const fn si(self) -> &'static str {
        match self {
            Self::Length => " m",
            Self::Mass => " kg",
            Self::Rate => " rad/s",
            Self::Time => " s",
            Self::Angle => " rad",
            Self::Turns => " turns",
            Self::Share => "",
        }
    }
}

/// One settable number.
pub struct Key {
    pub key: &'static str,
    pub label: &'static str,
    pub kind: Kind,
    pub least: f64,
    pub most: f64,
    /// One sentence for the user.
    pub about: &'static str,
    pub get: fn(&Scenario) -> f64,
    set: fn(&mut Scenario, f64),
}

impl fmt::Debug for Key {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.key)
    }
}

impl PartialEq for Key {
    fn eq(&self, other: &Self) -> bool {
        self.key == other.key
    }
}

macro_rules! key {
    ($field:ident, $label:literal, $kind:ident, $least:literal ..= $most:literal, $about:literal) => {
        Key {
            key: stringify!($field),
            label: $label,
            kind: Kind::$kind,
            least: $least,
            most: $most,
            about: $about,
            get: |scenario| scenario.$field,
            set: |scenario, value| scenario.$field = value,
        }
    };
}

/// Every settable number, the five main ones first.
pub const KEYS: [Key; 17] = [
    key!(
        takeoff_rate_rad_s,
        "Take-off rate",
        Rate,
        0.5..=25.0,
        "How fast the hips turn about the vertical as the ice is left."
    ),
    key!(
        arm_tuck,
        "Arm tuck",
        Share,
        0.0..=1.0,
        "How far the arms come in: 0 stays as at take-off, 100 % is as tight as this body can get."
    ),
    key!(
        leg_tuck,
        "Leg tuck",
        Share,
        0.0..=1.0,
        "How far the legs come together and cross: 0 stays as at take-off, 100 % is as tight as this body can get."
    ),
    key!(
        hand_mass_kg,
        "Added hand mass",
        Mass,
        0.0..=2.5,
        "Mass held in each hand; a physics experiment, not allowed in competition."
    ),
    key!(
        jump_height_m,
        "Jump height",
        Length,
        0.1..=2.5,
        "How far the centre of mass rises from take-off to the top."
    ),
    key!(
        stature_m,
        "Stature",
        Length,
        1.0..=2.1,
        "Height of the jumper; every length of the body scales with it."
    ),
    key!(
        body_mass_kg,
        "Body mass",
        Mass,
        15.0..=130.0,
        "Mass of the jumper without boots; every segment's mass scales with it."
    ),
    key!(
        boot_mass_kg,
        "Boot mass",
        Mass,
        0.0..=2.5,
        "Mass of one boot with its blade."
    ),
    key!(
        takeoff_openness,
        "Take-off openness",
        Share,
        0.0..=1.0,
        "How wide the arms and the free leg are as the ice is left."
    ),
    key!(
        lean_rad,
        "Lean at take-off",
        Angle,
        -0.35..=0.35,
        "Tilt of the body's long axis as the ice is left, towards the side it turns to."
    ),
    key!(
        pre_rotation_turns,
        "Turned on the ice",
        Turns,
        0.0..=1.0,
        "Part already turned on the ice before leaving it; it counts towards the jump."
    ),
    key!(
        arm_asymmetry,
        "Arm left out",
        Share,
        0.0..=1.0,
        "Part of its way in that the trailing arm never makes."
    ),
    key!(
        close_delay_s,
        "Close delay",
        Time,
        0.0..=0.5,
        "Time from take-off until the closing starts."
    ),
    key!(
        close_time_s,
        "Close time",
        Time,
        0.05..=0.8,
        "Time the arms and legs take to close."
    ),
    key!(
        arm_lag_s,
        "Arm lag",
        Time,
        0.0..=0.3,
        "How much later than the rest the trailing arm closes."
    ),
    key!(
        open_lead_s,
        "Open lead",
        Time,
        0.0..=0.6,
        "How long before touch-down the opening begins."
    ),
    key!(
        open_time_s,
        "Open time",
        Time,
        0.05..=0.8,
        "Time the whole opening would take; touch-down may come first."
    ),
];

/// How many of them, from the first, have a slider always in sight.
pub const MAIN: usize = 5;

/// The row of a key.
pub fn key(name: &str) -> Option<&'static Key> {
    KEYS.iter().find(|key| key.key == name)
}

/// A setting that was refused: one line naming the key, the value and what is admissible.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Refused(String);

impl Refused {
    pub(crate) fn new(text: impl Into<String>) -> Self {
        Self(text.into())
    }
}

impl fmt::Display for Refused {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl std::error::Error for Refused {}

impl Key {
    /// Sets the number, or says why not.
    pub fn set(&self, scenario: &mut Scenario, value: f64) -> Result<(), Refused> {
        self.check(value)?;
        (self.set)(scenario, value);
        Ok(())
    }

    /// Sets the number, held inside the admissible range; returns what it was held at if it was.
    pub fn hold(&self, scenario: &mut Scenario, value: f64) -> Option<f64> {
        let held = value.clamp(self.least, self.most);
        (self.set)(scenario, held);
        (held != value).then_some(held)
    }

    /// Whether the number may be, or why not.
    pub fn check(&self, value: f64) -> Result<(), Refused> {
        if (self.least..=self.most).contains(&value) {
            return Ok(());
        }
        Err(Refused::new(format!(
            "{} = {} is out of range: it goes from {} to {}{}",
            self.key,
            short(value),
            self.least,
            self.most,
            self.kind.si()
        )))
    }
}

/// As people write it, where that is not hundreds of digits.
fn short(value: f64) -> String {
    let plain = value.to_string();
    if plain.len() > 24 {
        format!("{value:e}")
    } else {
        plain
    }
}

impl Scenario {
    /// Whether every number is in its range; the first that is not is named.
    pub fn check(&self) -> Result<(), Refused> {
        for key in &KEYS {
            key.check((key.get)(self))?;
        }
        if (JUMP_TURNS[0]..=JUMP_TURNS[1]).contains(&self.jump_turns) {
            return Ok(());
        }
        Err(Refused::new(format!(
            "jump_turns = {} is out of range: it goes from {} to {}",
            self.jump_turns, JUMP_TURNS[0], JUMP_TURNS[1]
        )))
    }

    /// Sets one key from text, as on the command line.
    pub fn set(&mut self, name: &str, text: &str) -> Result<(), Refused> {
        if let Some(key) = key(name) {
            let number = text.parse().ok().filter(|value: &f64| value.is_finite());
            let value = number.ok_or_else(|| {
                Refused::new(format!(
                    "{name} = {text} is not a number: it goes from {} to {}{}",
                    key.least,
                    key.most,
                    key.kind.si()
                ))
            })?;
            return key.set(self, value);
        }
        self.set_word(name, text)
    }

    /// Sets one of the keys that are not numbers, through the saved form itself.
    fn set_word(&mut self, name: &str, text: &str) -> Result<(), Refused> {
        let refuse = |why: &dyn fmt::Display| Refused::new(format!("{name} = {text}: {why}"));
        let mut whole = serde_json::to_value(&*self).map_err(|why| refuse(&why))?;
        let Some(field) = whole.get_mut(name) else {
            let known: Vec<&str> = WORDS.into_iter().chain(KEYS.map(|key| key.key)).collect();
            return Err(Refused::new(format!(
                "{name} = {text}: no such key; the keys are {}",
                known.join(", ")
            )));
        };
        *field = if field.is_number() {
            serde_json::from_str(text).unwrap_or_else(|_| text.into())
        } else {
            text.into()
        };
        let changed: Self = serde_json::from_value(whole).map_err(|why| refuse(&why))?;
        changed.check()?;
        *self = changed;
        Ok(())
    }
}

/// The keys that are not numbers with a range of their own in [`KEYS`].
const WORDS: [&str; 8] = [
    "name",
    "note",
    "jump",
    "jump_turns",
    "table",
    "ground",
    "turning",
    "hands_keep",
];
