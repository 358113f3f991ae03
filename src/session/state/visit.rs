//! What survives a reload, as text.

use serde::{Deserialize, Serialize};
use serde_json::Value;

use crate::state::curves::ShownCurves;
use crate::state::document::Document;
use crate::state::fitted_jumps::FittedJumps;
use crate::state::goal_settings::{GoalSettings, SavedGoal};
use crate::state::lesson::{Played, SavedLesson};
use crate::state::levers::Levers;
use crate::state::preferences::Preferences;
use crate::state::question::Question;
use crate::state::reference::SavedReference;
use crate::state::uncertainty::UncertaintyInputs;
use turns_aloft_attempt::Attempt;
use turns_aloft_describe::Sentence;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::file::Opened;
use turns_aloft_scenario::reading::unmarked;
use turns_aloft_scenario::units::Units;
use turns_aloft_turntable::Setup;

#[derive(Serialize, Deserialize)]
pub(crate) struct Visit {
    pub scenario: String,
    pub base: String,
    pub units: Units,
    /// Visits before there was a range have none.
    #[serde(default, rename = "how_sure")]
    pub uncertainty: UncertaintyInputs,
    #[serde(default)]
    pub question: Question,
    #[serde(default, rename = "win")]
    pub goal: SavedGoal,
    #[serde(default)]
    pub map: Levers,
    #[serde(default, rename = "beside")]
    pub reference: Option<SavedReference>,
    #[serde(default)]
    pub greeted: bool,
    /// Visits before there were curves to choose have none.
    #[serde(default)]
    pub curves: ShownCurves,
    #[serde(default, skip_serializing_if = "is_not")]
    pub side_by_side: bool,
    #[serde(default, skip_serializing_if = "is_not")]
    pub setting_up: bool,
    /// Whether the five-turn try is on.
    #[serde(default, skip_serializing_if = "is_not")]
    pub trying: bool,
    /// The file of the attempt that is being measured.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub measuring: Option<String>,
    /// The files of jumps that were found from attempts, each with its attempt's.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub fitted: Vec<[String; 2]>,
    /// Who was on the turntable last, and on what.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub turntable: Vec<[String; 2]>,
    /// The lessons that were played, the one in sight first.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub lessons: Vec<SavedLesson>,
    /// Whether one is in sight, and whether its first step has been asked for.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub in_lesson: Option<bool>,
    /// Visits before there was undo have none. Read apart: where it is spoilt the rest is not.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub history: Option<Value>,
}

fn is_not(set: &bool) -> bool {
    !set
}

/// The jump alone of it.
#[derive(Deserialize)]
struct SavedJump {
    scenario: String,
}

/// What has been read of a visit.
pub(crate) struct Read {
    pub document: Document,
    pub earlier_body: bool,
    pub goal: GoalSettings,
    pub visit: Visit,
}

impl Visit {
    pub fn read(json: &str) -> Result<Read, String> {
        let mut visit: Self =
            serde_json::from_str(unmarked(json)).map_err(|why| why.to_string())?;
        let read = |text: &str| Scenario::open_file(text).map_err(|why| why.sentence());
        let (scenario, base) = (read(&visit.scenario)?, read(&visit.base)?);
        (visit.uncertainty.check(&scenario.read)).map_err(|why| why.sentence())?;
        let goal = GoalSettings::restore(&visit.goal)?;
        let reference = (visit.reference.take())
            .map(SavedReference::restore)
            .transpose()?;
        let of_reference = reference.as_ref().is_some_and(|it| it.earlier_body);
        let mut document = Document {
            scenario: scenario.read,
            base: base.read,
            reference: reference.map(|reference| reference.read),
        };
        document.settle_notes();
        Ok(Read {
            earlier_body: scenario.earlier_body || base.earlier_body || of_reference,
            document,
            goal,
            visit,
        })
    }
}

/// All that goes into a visit: where it is the same, so is the visit.
#[derive(Debug, Clone, PartialEq)]
pub struct VisitState {
    pub(crate) document: Document,
    /// Steps back and forward: there is no other step without another document or other numbers of them.
    pub(crate) steps: [usize; 2],
    /// What the attempt to compare with is called.
    pub(crate) reference_name: Option<String>,
    pub(crate) preferences: Preferences,
    pub(crate) uncertainty: UncertaintyInputs,
    pub(crate) question: Question,
    pub(crate) setting_up: bool,
    pub(crate) trying: bool,
    pub(crate) goal: GoalSettings,
    pub(crate) map: Levers,
    pub(crate) measuring: Option<Attempt>,
    pub(crate) turntable: Setup,
    pub(crate) fitted: FittedJumps,
    pub(crate) lessons: Vec<Played>,
    pub(crate) in_lesson: Option<bool>,
}

/// The jump of a visit, whatever else stands there.
pub(crate) fn jump_of(json: &str) -> Option<Opened<Scenario>> {
    let visit: SavedJump = serde_json::from_str(unmarked(json)).ok()?;
    Scenario::open_file(&visit.scenario).ok()
}
