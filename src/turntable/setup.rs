//! Who turns on what, and how fast at first: every number with its key and its range.

use turns_aloft_physics::body::BodySpec;
use turns_aloft_physics::segments::SegmentTable;
use turns_aloft_physics::tight_posture::TightPosture;
use turns_aloft_scenario::ground::Ground;
use turns_aloft_scenario::parameter::Parameter;

use crate::friction::Friction;
use crate::stand::Stand;

/// Who turns on what, and how fast at first.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Setup {
    pub stand: Stand,
    pub table: SegmentTable,
    pub stature_m: f64,
    pub body_mass_kg: f64,
    /// In each hand.
    pub hand_mass_kg: f64,
    /// On each foot.
    pub boot_mass_kg: f64,
    /// How far the hips are in front of the axis, m; negative behind it.
    pub hips_forward_m: f64,
    /// Of what turns with the person, kg m².
    pub bearing_inertia_kg_m2: f64,
    pub friction: Friction,
    /// At the beginning, positive anticlockwise seen from above.
    pub rate_rad_s: f64,
}

/// Why a value is refused.
#[derive(Debug, Clone, PartialEq)]
pub enum Refused {
    UnknownKey {
        key: String,
    },
    UnknownWord {
        key: &'static str,
        written: String,
        known: Vec<&'static str>,
    },
    NotANumber {
        number: Number,
        written: String,
    },
    OutOfRange {
        number: Number,
        value: f64,
    },
}

/// The numbers of a setup.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Number {
    Stature,
    BodyMass,
    HandMass,
    BootMass,
    HipsForward,
    BearingInertia,
    FrictionTorque,
    FrictionViscous,
    Rate,
}

/// The fastest that anything is set or pushed to turn, rad/s: beyond the 342 rpm of the fastest spin on record
/// (OpenStax, University Physics 1, 11.3).
pub const FASTEST_RAD_S: f64 = 40.0;

/// The keys of what is chosen by a word.
pub const STAND: &str = "stand";
pub const TABLE: &str = "table";

const TABLES: [(&str, SegmentTable); 2] = [
    ("female", SegmentTable::Female),
    ("male", SegmentTable::Male),
];

impl Number {
    pub const ALL: [Self; 9] = [
        Self::Stature,
        Self::BodyMass,
        Self::HandMass,
        Self::BootMass,
        Self::HipsForward,
        Self::BearingInertia,
        Self::FrictionTorque,
        Self::FrictionViscous,
        Self::Rate,
    ];

    /// The input of a jump that is the same, whose key and range it has.
    pub const fn of_jump(self) -> Option<Parameter> {
        match self {
            Self::Stature => Some(Parameter::Stature),
            Self::BodyMass => Some(Parameter::BodyMass),
            Self::HandMass => Some(Parameter::HandMass),
            Self::BootMass => Some(Parameter::BootMass),
            _ => None,
        }
    }

    pub const fn key(self) -> &'static str {
        match self {
            Self::HipsForward => "hips_forward_m",
            Self::BearingInertia => "bearing_inertia_kg_m2",
            Self::FrictionTorque => "friction_torque_n_m",
            Self::FrictionViscous => "friction_viscous_n_m_s",
            Self::Rate => "rate_rad_s",
            Self::Stature => Parameter::Stature.key(),
            Self::BodyMass => Parameter::BodyMass.key(),
            Self::HandMass => Parameter::HandMass.key(),
            Self::BootMass => Parameter::BootMass.key(),
        }
    }

    pub fn named(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|number| number.key() == key)
    }

    /// The least and the most that can be set. Those of the bearing are our choice: wide. Hands hold up to the
    /// weights of a worked example (Young & Freedman, University Physics, ch. 10; value from memory), more than
    /// anybody jumps with.
    pub const fn range(self) -> [f64; 2] {
        if matches!(self, Self::HandMass) {
            return [0.0, 5.0];
        }
        if let Some(parameter) = self.of_jump() {
            return [parameter.least(), parameter.most()];
        }
        match self {
            Self::HipsForward => [-0.3, 0.3],
            Self::FrictionViscous => [0.0, 5.0],
            Self::Rate => [-FASTEST_RAD_S, FASTEST_RAD_S],
            _ => [0.0, 20.0],
        }
    }

    pub const fn get(self, setup: &Setup) -> f64 {
        match self {
            Self::Stature => setup.stature_m,
            Self::BodyMass => setup.body_mass_kg,
            Self::HandMass => setup.hand_mass_kg,
            Self::BootMass => setup.boot_mass_kg,
            Self::HipsForward => setup.hips_forward_m,
            Self::BearingInertia => setup.bearing_inertia_kg_m2,
            Self::FrictionTorque => setup.friction.torque_n_m,
            Self::FrictionViscous => setup.friction.viscous_n_m_s,
            Self::Rate => setup.rate_rad_s,
        }
    }

    /// Sets it, where that is in its range.
    pub fn set(self, setup: &mut Setup, value: f64) -> Result<(), Refused> {
        self.check(value)?;
        *match self {
            Self::Stature => &mut setup.stature_m,
            Self::BodyMass => &mut setup.body_mass_kg,
            Self::HandMass => &mut setup.hand_mass_kg,
            Self::BootMass => &mut setup.boot_mass_kg,
            Self::HipsForward => &mut setup.hips_forward_m,
            Self::BearingInertia => &mut setup.bearing_inertia_kg_m2,
            Self::FrictionTorque => &mut setup.friction.torque_n_m,
            Self::FrictionViscous => &mut setup.friction.viscous_n_m_s,
            Self::Rate => &mut setup.rate_rad_s,
        } = value;
        Ok(())
    }

    fn check(self, value: f64) -> Result<(), Refused> {
        let [least, most] = self.range();
        if (least..=most).contains(&value) {
            return Ok(());
        }
        Err(Refused::OutOfRange {
            number: self,
            value,
        })
    }
}

impl Setup {
    /// An invented person on one of the stands, at rest: 1.65 m, 60 kg, with 2 kg in each hand but on the ice.
    pub const fn on(stand: Stand) -> Self {
        let on_ice = matches!(stand, Stand::Ice);
        Self {
            stand,
            table: SegmentTable::Female,
            stature_m: 1.65,
            body_mass_kg: 60.0,
            hand_mass_kg: if on_ice { 0.0 } else { 2.0 },
            boot_mass_kg: if on_ice { 1.0 } else { 0.0 },
            hips_forward_m: 0.0,
            bearing_inertia_kg_m2: stand.inertia_kg_m2(),
            friction: stand.friction(),
            rate_rad_s: 0.0,
        }
    }

    /// The same person on another stand, with what goes with that, at rest.
    #[must_use]
    pub const fn moved_to(self, stand: Stand) -> Self {
        Self {
            table: self.table,
            stature_m: self.stature_m,
            body_mass_kg: self.body_mass_kg,
            ..Self::on(stand)
        }
    }

    /// Sets one value from text, as on the command line. Another stand brings its bearing along.
    pub fn set(&mut self, key: &str, written: &str) -> Result<(), Refused> {
        let unknown = |key, known| Refused::UnknownWord {
            key,
            written: written.to_owned(),
            known,
        };
        if key == STAND {
            self.stand = Stand::named(written)
                .ok_or_else(|| unknown(STAND, Stand::ALL.map(Stand::key).to_vec()))?;
            self.bearing_inertia_kg_m2 = self.stand.inertia_kg_m2();
            self.friction = self.stand.friction();
            return Ok(());
        }
        if key == TABLE {
            let found = TABLES.into_iter().find(|(word, _)| *word == written);
            let known = || unknown(TABLE, TABLES.map(|(word, _)| word).to_vec());
            self.table = found.ok_or_else(known)?.1;
            return Ok(());
        }
        let number = Number::named(key).ok_or_else(|| Refused::UnknownKey {
            key: key.to_owned(),
        })?;
        let value = written.parse().ok().filter(|value: &f64| value.is_finite());
        let not_a_number = || Refused::NotANumber {
            number,
            written: written.to_owned(),
        };
        number.set(self, value.ok_or_else(not_a_number)?)
    }

    /// All values as text, by which [`Self::set`] makes the same again, in that order.
    pub fn written(&self) -> Vec<[String; 2]> {
        let pair = |key: &str, value: &str| [key.to_owned(), value.to_owned()];
        let table = TABLES.into_iter().find(|(_, table)| *table == self.table);
        let words = [(STAND, self.stand.key())]
            .into_iter()
            .chain(table.map(|(word, _)| (TABLE, word)))
            .map(|(key, word)| pair(key, word));
        let numbers = Number::ALL.map(|it| pair(it.key(), &it.get(self).to_string()));
        words.chain(numbers).collect()
    }

    /// The one that was written so.
    pub fn read(written: &[[String; 2]]) -> Result<Self, Refused> {
        let mut setup = Self::on(Stand::Platform);
        for [key, value] in written {
            setup.set(key, value)?;
        }
        Ok(setup)
    }

    /// Whether every number is in its range; the first that is not is named.
    pub fn check(&self) -> Result<(), Refused> {
        Number::ALL
            .into_iter()
            .try_for_each(|number| number.check(number.get(self)))
    }

    pub fn body_spec(&self) -> BodySpec {
        let ground = match self.stand {
            Stand::Ice => Ground::Ice,
            _ => Ground::Floor,
        };
        BodySpec {
            table: self.table,
            stature_m: self.stature_m,
            body_mass_kg: self.body_mass_kg,
            hand_mass_kg: self.hand_mass_kg,
            boot_mass_kg: self.boot_mass_kg,
            footwear: ground.footwear(),
            core_inertia: 1.0,
        }
    }

    pub fn tight(&self) -> TightPosture {
        TightPosture::of(self.table, self.stature_m, self.body_mass_kg)
    }
}
