//! The numbers of a scenario: one enum, and one table with all that tells one number from another.
//!
//! Whoever adds a number adds its row here, its field in [`Scenario`] and its words (`key-...` in
//! `assets/words`, and `step-...` or `why-...` where the row asks for them). Everything else goes by
//! the table: the file, the link, the command, the sliders, the map, and every question that changes
//! inputs. `tests/parameters.rs` holds that nothing else names a number without need.

use std::f64::consts::TAU;

use serde::{Serialize, Serializer};

use crate::ground::Ground;
use crate::jump::JumpName;
use crate::scenario::{HandsKeep, Scenario};
use crate::source::Source;
use turns_aloft_physics::efforts::{Demand, Efforts, GROUPS};
use turns_aloft_physics::plan::Turning;
use turns_aloft_physics::segments::SegmentTable;

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
    /// The unit at the end of a key. The key of a share may do without.
    const fn suffix(self) -> &'static str {
        match self {
            Self::Length => "_m",
            Self::Mass => "_kg",
            Self::Rate => "_rad_s",
            Self::Time => "_s",
            Self::Angle => "_rad",
            Self::Turns => "_turns",
            Self::Share => "_share",
        }
    }

    /// A key without its unit.
    pub fn without_unit(self, key: &str) -> &str {
        key.strip_suffix(self.suffix()).unwrap_or(key)
    }
}

/// Where on the panel a number is set.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Section {
    /// Always in sight.
    Main,
    Body,
    Footing,
    TakeOff,
    Closing,
    Opening,
}

/// How a slider goes over the range.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SliderScale {
    Even,
    /// What is usual takes up the lower fifth of the range: the slider is finer there.
    FinerBelow,
}

/// What a number can be held against to say whether people go there.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Evidence {
    /// It is not compared with people.
    None,
    /// The highest peak rates seen, on this body and plan.
    PeakRate,
    /// The heights seen, by jumper and ground.
    Height,
    /// What a hand can hold.
    Grip,
    /// The strength that joints have been measured at, in one part of the flight.
    Strength {
        movement: Movement,
        hardest: Hardest,
        source: Source,
    },
    /// Common practice of grown jumpers: from there to the end of the range. What is said for them
    /// and for a child.
    Practice {
        seen_from: f64,
        sources: [Source; 2],
    },
}

/// The two movements of a flight.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Movement {
    Closing,
    Opening,
}

impl Movement {
    /// What it asks of the joints.
    pub const fn demands(self, efforts: &Efforts) -> &[Demand; GROUPS] {
        match self {
            Self::Closing => &efforts.closing,
            Self::Opening => &efforts.opening,
        }
    }
}

/// The end of its range at which a number asks most of the joints.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Hardest {
    Least,
    Most,
}

/// How far a map goes along a number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum MapSpan {
    /// The page offers no map of it.
    None,
    /// The whole range.
    Range,
    /// From there to there.
    Between([f64; 2]),
    /// From the least that can be set to where nobody has been seen.
    ToBeyond,
}

/// What makes a number a lever: something that training changes. Steps and seasons are our choice.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeverRow {
    /// Where it stands among the levers, from 0 on.
    pub order: usize,
    pub step: Step,
    /// "A change a season's training might bring", in the number's own unit: our assumption, common
    /// practice, no source.
    pub season: f64,
}

/// A small step in the direction that usually gives turns.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Step {
    /// In the number's own unit.
    By(f64),
    /// As much tighter as brings the hands of the closed body nearer to its long axis, m.
    HandsNearer(f64),
}

/// What a jump can lose turns by.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Cause {
    /// Closing late or slowly, one arm later than the rest included.
    Closing,
    /// Not getting to the tightest posture.
    Tightness,
    /// Opening before touch-down.
    Opening,
    /// A leaning axis, an arm left out.
    Tilt,
}

impl Cause {
    /// The order in which they are removed, and shown.
    pub const ORDER: [Self; 4] = [Self::Closing, Self::Tightness, Self::Opening, Self::Tilt];
}

/// The change of a number that is tried against a loss of turns.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Remedy {
    pub cause: Cause,
    pub change: RemedyChange,
    /// Of two that are worth exactly as much, the one with the higher rank is told of.
    pub rank: u8,
}

/// How far a number is changed against a loss.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum RemedyChange {
    By(f64),
    To(f64),
}

/// How uncertain a number usually is: the 95 % limit of its error.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HalfWidthRow {
    /// Where it stands among the uncertain inputs, from 0 on.
    pub order: usize,
    pub usual: f64,
    pub most: f64,
    /// What one touch makes it larger or smaller by.
    pub step: f64,
}

/// What is taken to be known of a number of a real attempt before it is measured, as a function of a
/// standard normal variable. All of them are our own choice: no spread of these numbers over skaters was
/// found.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Prior {
    /// About what the attempt's own scenario says: a standard deviation.
    About(f64),
    /// The same, as a share of what the scenario says.
    AboutByShare(f64),
    /// A positive number of which the logarithm is normal: what half of all lie below, and the standard
    /// deviation of the logarithm.
    Factor { median: f64, log_sigma: f64 },
    /// A share from 0 to 1 of which log(share / (1 - share)) is normal, likewise.
    Share { median: f64, logit_sigma: f64 },
}

impl Prior {
    /// The number that so many standard deviations stand for, where the attempt's own scenario says `own`.
    pub fn at(self, own: f64, z: f64) -> f64 {
        match self {
            Self::About(sigma) => own + sigma * z,
            Self::AboutByShare(sigma) => own * (1.0 + sigma * z),
            Self::Factor { median, log_sigma } => median * libm::exp(log_sigma * z),
            Self::Share {
                median,
                logit_sigma,
            } => {
                let odds = median / (1.0 - median) * libm::exp(logit_sigma * z);
                odds / (1.0 + odds)
            }
        }
    }
}

/// All that tells one number from another.
#[derive(Debug)]
pub struct Row {
    /// Its name in files and on the command line; the names of its messages follow from it.
    pub key: &'static str,
    pub kind: Kind,
    /// The least and the most that can be set.
    pub range: [f64; 2],
    pub section: Section,
    pub scale: SliderScale,
    pub evidence: Evidence,
    pub map: MapSpan,
    pub lever: Option<LeverRow>,
    pub remedy: Option<Remedy>,
    pub half_width: Option<HalfWidthRow>,
    /// None for what no mark of a real attempt says anything about: it is what the attempt's scenario says.
    pub prior: Option<Prior>,
    /// Whether it has a part in a jump that is led by hand.
    pub in_led: bool,
    /// Which bit of a link's mask says that the number follows. Links that have been sent hold it:
    /// it never changes.
    pub link_bit: u32,
    get: fn(&Scenario) -> f64,
    set: fn(&mut Scenario, f64),
}

const RPM: f64 = TAU / 60.0;

/// Steps that are easily told and that training might bring, our choice: three pictures of a
/// 60-a-second video, and a tenth of the way in.
const TOLD_TIME_S: f64 = 0.05;
const TOLD_TUCK: f64 = 0.1;

/// Take-off rates of a map: our choice. The marks of a rate follow the body's plan; a map whose
/// ends moved while the arms are dragged on it would be no map.
const MAP_RATES_RAD_S: [f64; 2] = [50.0 * RPM, 200.0 * RPM];

/// The most that a map has in each hand, kg: our choice, a few times what training gloves weigh.
const MAP_HANDS_KG: f64 = 1.0;

/// Latest opening known to us, s before touch-down: common practice, no source.
const LATEST_OPENING_S: f64 = 0.05;

/// Gravity times half a second of hang time over four, times a sixtieth of a second: 2 cm.
const USUAL_HEIGHT_M: f64 = 0.02;
/// The square root of 2 times 2 degrees over a tenth of a second: 0.49 rad/s.
const USUAL_RATE_RAD_S: f64 = 0.5;
const USUAL_CLOSE_TIME_S: f64 = 1.0 / 60.0;

/// The enum, its table and what has to name every field, from the rows.
macro_rules! parameters {
    ($($Parameter:ident, $field:ident { $($columns:tt)* })*) => {
        /// A number of a scenario.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
        pub enum Parameter {
            $($Parameter),*
        }

        static ROWS: [Row; Parameter::COUNT] = [
            $(Row {
                key: stringify!($field),
                get: |scenario| scenario.$field,
                set: |scenario, value| scenario.$field = value,
                $($columns)*
            }),*
        ];

        impl Parameter {
            /// All of them, in the order of their table.
            pub const ALL: [Self; Self::COUNT] = [$(Self::$Parameter),*];

            pub const COUNT: usize = [$(stringify!($field)),*].len();
        }

        /// What the first jump of a link is written as different from. No jump that flies: it has
        /// no height.
        pub(super) const BLANK: Scenario = Scenario {
            name: String::new(),
            note: String::new(),
            jump: JumpName::ToeLoop,
            jump_turns: 1,
            table: SegmentTable::Female,
            ground: Ground::Ice,
            turning: Turning::Anticlockwise,
            hands_keep: HandsKeep::Rate,
            led: None,
            $($field: 0.0),*
        };
    };
}

parameters! {
    TakeoffRate, takeoff_rate_rad_s {
        kind: Kind::Rate,
        range: [0.5, 25.0],
        section: Section::Main,
        scale: SliderScale::Even,
        evidence: Evidence::PeakRate,
        map: MapSpan::Between(MAP_RATES_RAD_S),
        lever: Some(LeverRow {
            order: 1,
            step: Step::By(5.0 * TAU / 60.0),
            season: 10.0 * TAU / 60.0,
        }),
        remedy: None,
        half_width: Some(HalfWidthRow {
            order: 1,
            usual: USUAL_RATE_RAD_S,
            most: 5.0,
            step: RPM,
        }),
        prior: Some(Prior::Factor {
            median: 12.0,
            log_sigma: 0.35,
        }),
        in_led: true,
        link_bit: 0,
    }
    ArmTuck, arm_tuck {
        kind: Kind::Share,
        range: [0.0, 1.0],
        section: Section::Main,
        scale: SliderScale::Even,
        evidence: Evidence::Strength {
            movement: Movement::Closing,
            hardest: Hardest::Most,
            source: Source::MarksTuck,
        },
        map: MapSpan::Range,
        lever: Some(LeverRow {
            order: 2,
            step: Step::HandsNearer(0.01),
            season: 0.10,
        }),
        remedy: Some(Remedy {
            cause: Cause::Tightness,
            change: RemedyChange::By(TOLD_TUCK),
            rank: 0,
        }),
        half_width: None,
        prior: Some(Prior::Share {
            median: 0.75,
            logit_sigma: 1.2,
        }),
        in_led: false,
        link_bit: 1,
    }
    LegTuck, leg_tuck {
        kind: Kind::Share,
        range: [0.0, 1.0],
        section: Section::Main,
        scale: SliderScale::Even,
        evidence: Evidence::Strength {
            movement: Movement::Closing,
            hardest: Hardest::Most,
            source: Source::MarksTuck,
        },
        map: MapSpan::Range,
        lever: Some(LeverRow {
            order: 3,
            // About 1 cm at the feet as long as they are apart; crossed, they get no nearer.
            step: Step::By(0.05),
            season: 0.10,
        }),
        remedy: Some(Remedy {
            cause: Cause::Tightness,
            change: RemedyChange::By(TOLD_TUCK),
            rank: 1,
        }),
        half_width: None,
        prior: Some(Prior::Share {
            median: 0.75,
            logit_sigma: 1.2,
        }),
        in_led: false,
        link_bit: 2,
    }
    // No lever: what it gives hangs on what the jumper is taken to keep, and no training brings it.
    HandMass, hand_mass_kg {
        kind: Kind::Mass,
        range: [0.0, 2.5],
        section: Section::Main,
        scale: SliderScale::FinerBelow,
        evidence: Evidence::Grip,
        map: MapSpan::Between([0.0, MAP_HANDS_KG]),
        lever: None,
        remedy: None,
        half_width: None,
        prior: None,
        in_led: true,
        link_bit: 3,
    }
    JumpHeight, jump_height_m {
        kind: Kind::Length,
        range: [0.1, 2.5],
        section: Section::Main,
        scale: SliderScale::FinerBelow,
        evidence: Evidence::Height,
        map: MapSpan::ToBeyond,
        lever: Some(LeverRow {
            order: 0,
            step: Step::By(0.01),
            season: 0.03,
        }),
        remedy: None,
        half_width: Some(HalfWidthRow {
            order: 0,
            usual: USUAL_HEIGHT_M,
            most: 0.25,
            step: 0.005,
        }),
        prior: None,
        in_led: true,
        link_bit: 4,
    }
    Stature, stature_m {
        kind: Kind::Length,
        range: [1.0, 2.1],
        section: Section::Body,
        scale: SliderScale::Even,
        evidence: Evidence::None,
        map: MapSpan::None,
        lever: None,
        remedy: None,
        half_width: None,
        prior: Some(Prior::About(0.02)),
        in_led: true,
        link_bit: 5,
    }
    BodyMass, body_mass_kg {
        kind: Kind::Mass,
        range: [15.0, 130.0],
        section: Section::Body,
        scale: SliderScale::Even,
        evidence: Evidence::None,
        map: MapSpan::None,
        lever: None,
        remedy: None,
        half_width: None,
        prior: Some(Prior::AboutByShare(0.04)),
        in_led: true,
        link_bit: 6,
    }
    BootMass, boot_mass_kg {
        kind: Kind::Mass,
        range: [0.0, 2.5],
        section: Section::Footing,
        scale: SliderScale::Even,
        evidence: Evidence::None,
        map: MapSpan::None,
        lever: None,
        remedy: None,
        half_width: None,
        prior: None,
        in_led: true,
        link_bit: 7,
    }
    TakeoffOpenness, takeoff_openness {
        kind: Kind::Share,
        range: [0.0, 1.0],
        section: Section::TakeOff,
        scale: SliderScale::Even,
        evidence: Evidence::None,
        map: MapSpan::None,
        lever: None,
        remedy: None,
        half_width: None,
        prior: None,
        in_led: true,
        link_bit: 8,
    }
    Lean, lean_rad {
        kind: Kind::Angle,
        range: [-0.35, 0.35],
        section: Section::TakeOff,
        scale: SliderScale::Even,
        evidence: Evidence::None,
        map: MapSpan::None,
        lever: None,
        remedy: Some(Remedy {
            cause: Cause::Tilt,
            change: RemedyChange::To(0.0),
            rank: 0,
        }),
        half_width: None,
        prior: None,
        in_led: true,
        link_bit: 9,
    }
    PreRotation, pre_rotation_turns {
        kind: Kind::Turns,
        range: [0.0, 1.0],
        section: Section::TakeOff,
        scale: SliderScale::Even,
        evidence: Evidence::None,
        map: MapSpan::None,
        lever: None,
        remedy: None,
        half_width: None,
        prior: Some(Prior::About(0.08)),
        in_led: true,
        link_bit: 10,
    }
    ArmAsymmetry, arm_asymmetry {
        kind: Kind::Share,
        range: [0.0, 1.0],
        section: Section::Closing,
        scale: SliderScale::Even,
        evidence: Evidence::None,
        map: MapSpan::None,
        lever: None,
        remedy: Some(Remedy {
            cause: Cause::Tilt,
            change: RemedyChange::To(0.0),
            rank: 1,
        }),
        half_width: None,
        prior: None,
        in_led: true,
        link_bit: 11,
    }
    CloseDelay, close_delay_s {
        kind: Kind::Time,
        range: [0.0, 0.5],
        section: Section::Closing,
        scale: SliderScale::Even,
        evidence: Evidence::Practice {
            seen_from: 0.0,
            sources: [
                Source::MarksCloseDelay,
                Source::MarksCloseDelayNotKnown,
            ],
        },
        map: MapSpan::Range,
        lever: Some(LeverRow {
            order: 4,
            step: Step::By(-0.010),
            season: 0.02,
        }),
        remedy: Some(Remedy {
            cause: Cause::Closing,
            change: RemedyChange::By(-TOLD_TIME_S),
            rank: 1,
        }),
        half_width: None,
        prior: Some(Prior::Factor {
            median: 0.03,
            log_sigma: 0.8,
        }),
        in_led: false,
        link_bit: 12,
    }
    CloseTime, close_time_s {
        kind: Kind::Time,
        range: [0.05, 0.8],
        section: Section::Closing,
        scale: SliderScale::Even,
        evidence: Evidence::Strength {
            movement: Movement::Closing,
            hardest: Hardest::Least,
            source: Source::MarksCloseTime,
        },
        map: MapSpan::Range,
        lever: Some(LeverRow {
            order: 5,
            step: Step::By(-0.010),
            season: 0.02,
        }),
        remedy: Some(Remedy {
            cause: Cause::Closing,
            change: RemedyChange::By(-TOLD_TIME_S),
            rank: 0,
        }),
        half_width: Some(HalfWidthRow {
            order: 2,
            usual: USUAL_CLOSE_TIME_S,
            most: 0.2,
            step: 1.0 / 120.0,
        }),
        prior: Some(Prior::Factor {
            median: 0.2,
            log_sigma: 0.3,
        }),
        in_led: true,
        link_bit: 13,
    }
    ArmLag, arm_lag_s {
        kind: Kind::Time,
        range: [0.0, 0.3],
        section: Section::Closing,
        scale: SliderScale::Even,
        evidence: Evidence::None,
        map: MapSpan::None,
        lever: None,
        remedy: Some(Remedy {
            cause: Cause::Closing,
            change: RemedyChange::By(-TOLD_TIME_S),
            rank: 2,
        }),
        half_width: None,
        prior: None,
        in_led: true,
        link_bit: 14,
    }
    OpenLead, open_lead_s {
        kind: Kind::Time,
        range: [0.0, 0.6],
        section: Section::Opening,
        scale: SliderScale::Even,
        evidence: Evidence::Practice {
            seen_from: LATEST_OPENING_S,
            sources: [
                Source::MarksOpenLead,
                Source::MarksOpenLeadNotKnown,
            ],
        },
        map: MapSpan::Range,
        lever: Some(LeverRow {
            order: 6,
            step: Step::By(-0.010),
            season: 0.02,
        }),
        remedy: Some(Remedy {
            cause: Cause::Opening,
            change: RemedyChange::By(-TOLD_TIME_S),
            rank: 0,
        }),
        half_width: None,
        prior: Some(Prior::Factor {
            median: 0.1,
            log_sigma: 0.4,
        }),
        in_led: false,
        link_bit: 15,
    }
    OpenTime, open_time_s {
        kind: Kind::Time,
        range: [0.05, 0.8],
        section: Section::Opening,
        scale: SliderScale::Even,
        evidence: Evidence::Strength {
            movement: Movement::Opening,
            hardest: Hardest::Least,
            source: Source::MarksOpenTime,
        },
        map: MapSpan::None,
        lever: None,
        remedy: None,
        half_width: None,
        prior: Some(Prior::Factor {
            median: 0.21,
            log_sigma: 0.2,
        }),
        in_led: false,
        link_bit: 16,
    }
}

impl Parameter {
    /// The one with this key.
    pub fn named(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|it| it.key() == key)
    }

    /// Those that are set in one place of the panel.
    pub fn of_section(section: Section) -> impl Iterator<Item = Self> {
        let all = Self::ALL.into_iter();
        all.filter(move |it| it.row().section == section)
    }

    pub const fn row(self) -> &'static Row {
        &ROWS[self as usize]
    }

    pub const fn key(self) -> &'static str {
        self.row().key
    }

    pub const fn kind(self) -> Kind {
        self.row().kind
    }

    /// The least that can be set.
    pub const fn least(self) -> f64 {
        self.row().range[0]
    }

    /// The most that can be set.
    pub const fn most(self) -> f64 {
        self.row().range[1]
    }

    pub fn get(self, scenario: &Scenario) -> f64 {
        (self.row().get)(scenario)
    }

    /// Sets the number whatever it is.
    pub(crate) fn put(self, scenario: &mut Scenario, value: f64) {
        (self.row().set)(scenario, value);
    }

    /// Sets the number, held inside the admissible range; returns what it was held at if it was.
    pub fn hold(self, scenario: &mut Scenario, value: f64) -> Option<f64> {
        let held = value.clamp(self.least(), self.most());
        self.put(scenario, held);
        (held != value).then_some(held)
    }
}

/// As its key.
impl Serialize for Parameter {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.key())
    }
}
