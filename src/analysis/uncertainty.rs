//! How sure the turns are: what is uncertain of a few inputs, carried through to turns and call.
//!
//! A half-width is the 95 % limit of an error taken as normal and independent of the others. Each
//! input is flown at both its ends; the changes of the turns add up as the root of their squares.

use turns_aloft_physics::body::{Body, BodySpec, Segment};
use turns_aloft_physics::centroidal::CentroidalState;
use turns_aloft_physics::order::sorted;
use turns_aloft_physics::posture::STILL;
use turns_aloft_physics::segments::SegmentTable;
use turns_aloft_physics::takeoff_landing::takeoff_posture;
use turns_aloft_physics::tight_posture::TightPosture;
use turns_aloft_physics::tree::Tree;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::call::Call;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::jumper::Size;
use turns_aloft_scenario::parameter::{HalfWidthRow, Kind, Parameter};

/// What is uncertain about a jump.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum UncertainInput {
    /// A number of the scenario whose row has a half-width.
    Number(Parameter),
    /// The ratio of the body's moments of inertia, open as at take-off to tightest, as a share.
    InertiaRatio,
}

/// How many numbers of the scenario are uncertain.
const NUMBERS: usize = {
    let (mut count, mut i) = (0, 0);
    while i < Parameter::COUNT {
        count += Parameter::ALL[i].row().half_width.is_some() as usize;
        i += 1;
    }
    count
};

/// The most that the half-width of the ratio of inertia may be, and what one touch changes it by.
const MOST_RATIO: f64 = 0.5;
const RATIO_STEP: f64 = 0.01;

impl UncertainInput {
    pub const COUNT: usize = NUMBERS + 1;

    /// The numbers as their table orders them, then the ratio.
    pub const ALL: [Self; Self::COUNT] = {
        let mut all = [Self::InertiaRatio; Self::COUNT];
        let mut i = 0;
        while i < Parameter::COUNT {
            let parameter = Parameter::ALL[i];
            if let Some(half_width) = &parameter.row().half_width {
                assert!(
                    matches!(all[half_width.order], Self::InertiaRatio),
                    "each has a place of its own"
                );
                all[half_width.order] = Self::Number(parameter);
            }
            i += 1;
        }
        all
    };

    /// Its place in [`Self::ALL`].
    pub const fn order(self) -> usize {
        match self.half_width_row() {
            Some(row) => row.order,
            None => NUMBERS,
        }
    }

    const fn half_width_row(self) -> Option<&'static HalfWidthRow> {
        match self {
            Self::Number(parameter) => parameter.row().half_width.as_ref(),
            Self::InertiaRatio => None,
        }
    }

    /// The one with this key.
    pub fn named(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|it| it.key() == key)
    }

    pub const fn key(self) -> &'static str {
        match self {
            Self::Number(parameter) => parameter.key(),
            Self::InertiaRatio => "inertia_ratio_share",
        }
    }

    /// The published key of what the input alone changes the turns by.
    pub fn change_key(self) -> String {
        let name = self.kind().without_unit(self.key());
        format!("turns_change_with_{name}")
    }

    pub const fn kind(self) -> Kind {
        match self {
            Self::Number(parameter) => parameter.kind(),
            Self::InertiaRatio => Kind::Share,
        }
    }

    /// The largest half-width that may be.
    pub const fn most(self) -> f64 {
        match self.half_width_row() {
            Some(row) => row.most,
            None => MOST_RATIO,
        }
    }

    /// What one touch makes the half-width larger or smaller by.
    pub const fn step(self) -> f64 {
        match self.half_width_row() {
            Some(row) => row.step,
            None => RATIO_STEP,
        }
    }
}

/// Why a half-width was refused.
#[derive(Debug, Clone, PartialEq)]
pub enum RefusedHalfWidth {
    OutOfRange {
        input: UncertainInput,
        value: f64,
    },
    NotANumber {
        input: UncertainInput,
        written: String,
    },
    /// Of the hang time, which stands for the height's: from nothing to the most that the height's makes.
    HangTime {
        written: String,
        most_s: f64,
    },
    Unknown {
        key: String,
        written: String,
    },
}

/// Half-widths of what is uncertain about a jump.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Uncertainty([f64; UncertainInput::COUNT]);

/// Half-width of the ratio of inertia, as a share: the one that makes of the turns, on average over the
/// starting points of grown jumpers, what nine bodies from outside make of them when they are flown
/// through the same plan with the jumper's stature and mass (1.96 times the root of the mean square of
/// their differences from the jumper's own table: what that table is off by as a whole is in it). They
/// are five measured people, both tables of de Leva and both of Dumas & Wojtusch. `cargo test
/// --no-default-features --test ensemble` computes it again and prints what belongs here. From
/// nine bodies it is itself known to a quarter only (standard error).
const FEMALE_RATIO: f64 = 0.18;
const MALE_RATIO: f64 = 0.14;

/// How much wider it is for a child: no child's body was found to compare, so our choice.
const CHILD_TIMES: f64 = 1.5;

/// The take-off openness at which the ratio is taken: that of most starting points on the ice.
const OPENNESS: f64 = 0.6;

/// Least ratio of inertia, open to tight, our choice: a body is never tightest when open.
const LEAST_RATIO: f64 = 1.05;

/// Least factor on the trunk's and the head's own moments, our choice: a body has to keep some.
const LEAST_CORE: f64 = 0.05;

impl UncertainInput {
    /// What an input's error makes of the turns: by how much the input could be off, because it is
    /// held inside its range, and the turns then.
    fn flown_off(self, scenario: &Scenario, nominal: &Jump, off: f64) -> (f64, f64) {
        let parameter = match self {
            Self::Number(parameter) => parameter,
            Self::InertiaRatio => {
                let (reached, body) = with_ratio_off(scenario, off);
                return (reached, scenario.fly_as(body, Some(nominal)).turns);
            }
        };
        let mut other = scenario.clone();
        parameter.hold(&mut other, parameter.get(scenario) + off);
        let reached = parameter.get(&other) - parameter.get(scenario);
        if other.turns_like(scenario) {
            return (reached, nominal.turns);
        }
        (reached, other.fly_after(Some(nominal)).turns)
    }

    /// Change of the turns as the input grows by its half-width: from the turns at both its ends,
    /// in proportion where an end cannot be reached.
    fn change(self, scenario: &Scenario, nominal: &Jump, half_width: f64) -> f64 {
        if half_width == 0.0 {
            return 0.0;
        }
        let (less, turns_less) = self.flown_off(scenario, nominal, -half_width);
        let (more, turns_more) = self.flown_off(scenario, nominal, half_width);
        (turns_more - turns_less) / (more - less) * half_width
    }
}

/// Moments of inertia about the long axis, kg m², of a body as open as at take-off and as tight as
/// it can get.
pub fn open_and_tight_kg_m2(body: &Body) -> [f64; 2] {
    let tree = Tree::new(body);
    let spec = &body.spec;
    let tight = TightPosture::of(spec.table, spec.stature_m, spec.body_mass_kg);
    let open = takeoff_posture(OPENNESS, tight.legs_apart_rad());
    [open, tight.posture()].map(|posture| {
        CentroidalState::new(&tree, &posture, &STILL)
            .inertia_kg_m2
            .y_axis
            .y
    })
}

/// The jumper without what is weighed, not read from a table.
pub fn bare(scenario: &Scenario) -> BodySpec {
    BodySpec {
        hand_mass_kg: 0.0,
        boot_mass_kg: 0.0,
        ..scenario.body_spec()
    }
}

/// The jumper's body with a ratio of inertia, open to tight, that is off by a share, and the share
/// that could be reached.
///
/// The take-off rate is given, so a factor common to all postures would change no turns: the ratio
/// is what counts. All of the error is put into the own moments of trunk and head, the same number
/// of kg m² in every posture. The ratio is that of two given postures, not of the jump's own: a jump
/// that opens or closes by half then feels as much less of the error as it must.
pub fn with_ratio_off(scenario: &Scenario, share: f64) -> (f64, BodySpec) {
    let bare = Body::new(bare(scenario));
    let [open, tight] = open_and_tight_kg_m2(&bare);
    let ratio = open / tight;
    let core_kg_m2: f64 = bare
        .parts
        .iter()
        .filter(|part| CORE.contains(&part.segment))
        .map(|part| part.moments_kg_m2.y)
        .sum();
    // What has to be added so that (open + added) / (tight + added) is the ratio that is off: still above
    // 1, which the largest half-width would take it below in a body too stout to get tight.
    let share = share.max(LEAST_RATIO / ratio - 1.0);
    let goal = share * open / (1.0 - ratio * (1.0 + share));
    let core_inertia = (1.0 + goal / core_kg_m2).max(LEAST_CORE);
    let added = (core_inertia - 1.0) * core_kg_m2;
    let reached = (open + added) / (tight + added) / ratio - 1.0;
    let body = BodySpec {
        core_inertia,
        ..scenario.body_spec()
    };
    (reached, body)
}

const CORE: [Segment; 4] = [
    Segment::LowerTrunk,
    Segment::MiddleTrunk,
    Segment::UpperTrunk,
    Segment::Head,
];

impl Uncertainty {
    /// What is usual for this jumper.
    pub fn usual(scenario: &Scenario) -> Self {
        Self(
            UncertainInput::ALL.map(|input| match input.half_width_row() {
                Some(row) => row.usual,
                None => usual_ratio(scenario),
            }),
        )
    }

    /// Nothing is uncertain.
    pub const NONE: Self = Self([0.0; UncertainInput::COUNT]);

    pub const fn get(&self, input: UncertainInput) -> f64 {
        self.0[input.order()]
    }

    /// Sets a half-width, held between nothing and the most it may be.
    pub fn hold(&mut self, input: UncertainInput, value: f64) {
        self.0[input.order()] = value.clamp(0.0, input.most());
    }

    /// Sets one half-width from text, as on the command line.
    pub fn set(&mut self, key: &str, text: &str) -> Result<(), RefusedHalfWidth> {
        let input = UncertainInput::named(key).ok_or_else(|| RefusedHalfWidth::Unknown {
            key: key.to_owned(),
            written: text.to_owned(),
        })?;
        let number: Option<f64> = text.parse().ok();
        let value = number.filter(|value| value.is_finite()).ok_or_else(|| {
            RefusedHalfWidth::NotANumber {
                input,
                written: text.to_owned(),
            }
        })?;
        if !(0.0..=input.most()).contains(&value) {
            return Err(RefusedHalfWidth::OutOfRange { input, value });
        }
        self.hold(input, value);
        Ok(())
    }
}

/// That of the ratio of inertia.
fn usual_ratio(scenario: &Scenario) -> f64 {
    let child = scenario.jumper().size != Size::Grown;
    let ratio = match scenario.table {
        SegmentTable::Female => FEMALE_RATIO,
        SegmentTable::Male => MALE_RATIO,
    };
    if child { CHILD_TIMES * ratio } else { ratio }
}

/// Where the turns may lie, and what it comes from.
#[derive(Debug, Clone, PartialEq)]
pub struct Range {
    /// 95 % of what is possible lies from `low` to `high`. Turns are never fewer than none.
    pub low: f64,
    pub high: f64,
    /// Change of the turns as each input grows by its half-width, in the order of
    /// [`UncertainInput::ALL`].
    pub changes: [f64; UncertainInput::COUNT],
    /// Missing rotation at `high` and at `low`, degrees; none for a free jump.
    pub shortfall_deg: Option<[f64; 2]>,
    /// Every call between both ends, that of the most turns first; none where the rule does not
    /// reach.
    pub calls: Option<Vec<Call>>,
}

impl Range {
    /// The range of a flown jump.
    pub fn new(scenario: &Scenario, jump: &Jump, uncertainty: &Uncertainty) -> Self {
        let changes =
            UncertainInput::ALL.map(|input| input.change(scenario, jump, uncertainty.get(input)));
        let half_width = libm::sqrt(changes.iter().map(|change| change * change).sum());
        let low = (jump.turns - half_width).max(0.0).min(jump.turns);
        let high = jump.turns + half_width;
        Self::between(low, high, changes, jump)
    }

    /// The range of turns in all that are all as likely, of which there is one at least.
    pub fn of_turns(turns: Vec<f64>, jump: &Jump) -> Self {
        let turns = sorted(turns);
        let last = (turns.len() - 1) as f64;
        let at = |share: f64| {
            let place = share * last;
            let below = turns[place.floor() as usize];
            below + (turns[place.ceil() as usize] - below) * (place - place.floor())
        };
        let changes = [0.0; UncertainInput::COUNT];
        Self::between(at(0.025), at(0.975), changes, jump)
    }

    fn between(low: f64, high: f64, changes: [f64; UncertainInput::COUNT], jump: &Jump) -> Self {
        let shortfall_deg = jump
            .owed
            .map(|owed| [high, low].map(|turns| 360.0 * (owed.turns - turns)));
        let called = jump.owed.is_some_and(|owed| owed.call.is_some());
        Self {
            low,
            high,
            changes,
            shortfall_deg,
            calls: shortfall_deg.filter(|_| called).map(calls_between),
        }
    }

    /// The input that matters most, if any does.
    pub fn foremost(&self) -> Option<UncertainInput> {
        UncertainInput::ALL
            .into_iter()
            .zip(self.changes)
            .filter(|(_, change)| *change != 0.0)
            .max_by(|(_, one), (_, other)| one.abs().total_cmp(&other.abs()))
            .map(|(input, _)| input)
    }
}

/// All calls from the one at the smaller shortfall to the one at the larger.
fn calls_between(shortfall_deg: [f64; 2]) -> Vec<Call> {
    const MOST_TURNS_FIRST: [Call; 5] = [
        Call::OverRotated,
        Call::Full,
        Call::Quarter,
        Call::Under,
        Call::Downgraded,
    ];
    let [most, fewest] = shortfall_deg.map(Call::of);
    let place = |call| MOST_TURNS_FIRST.iter().position(|&one| one == call);
    match (place(most), place(fewest)) {
        (Some(from), Some(to)) => MOST_TURNS_FIRST[from..=to].to_vec(),
        _ => Vec::new(),
    }
}
