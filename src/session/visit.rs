//! What survives a reload, as text.

use serde::{Deserialize, Serialize};
use serde_json::Value;
use turns_aloft_describe::Sentence;

use crate::Question;
use crate::Session;
use crate::compare::SavedReference;
use crate::document::Document;
use crate::goal::{GoalSettings, SavedGoal};
use crate::history::{Change, History};
use crate::map;
use crate::preferences::Preferences;
use crate::uncertainty::UncertaintyInputs;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::file::Opened;
use turns_aloft_scenario::reading::unmarked;
use turns_aloft_scenario::units::Units;
use turns_aloft_words::text;

#[derive(Serialize, Deserialize)]
struct Visit {
    scenario: String,
    base: String,
    units: Units,
    /// Visits before there was a range have none.
    #[serde(default, rename = "how_sure")]
    uncertainty: UncertaintyInputs,
    #[serde(default)]
    question: Question,
    #[serde(default, rename = "win")]
    goal: SavedGoal,
    #[serde(default)]
    map: map::Levers,
    #[serde(default, rename = "beside")]
    reference: Option<SavedReference>,
    #[serde(default)]
    greeted: bool,
    /// Visits before there was undo have none. Read apart: where it is spoilt the rest is not.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    history: Option<Value>,
}

/// The jump alone of it.
#[derive(Deserialize)]
struct SavedJump {
    scenario: String,
}

/// What has been read of a visit.
struct Read {
    document: Document,
    earlier_body: bool,
    goal: GoalSettings,
    visit: Visit,
}

impl Visit {
    fn read(json: &str) -> Result<Read, String> {
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
        Ok(Read {
            earlier_body: scenario.earlier_body || base.earlier_body || of_reference,
            document: Document {
                scenario: scenario.read,
                base: base.read,
                reference: reference.map(|reference| reference.read),
            },
            goal,
            visit,
        })
    }
}

/// All that goes into a visit: where it is the same, so is the visit.
#[derive(Debug, Clone, PartialEq)]
pub struct VisitState {
    document: Document,
    /// Steps back and forward: there is no other step without another document or other numbers of them.
    steps: [usize; 2],
    /// What the attempt to compare with is called.
    reference_name: Option<String>,
    preferences: Preferences,
    uncertainty: UncertaintyInputs,
    question: Question,
    goal: GoalSettings,
    map: map::Levers,
}

impl Session {
    /// All that a reload needs.
    pub fn visit_state(&self) -> VisitState {
        VisitState {
            document: self.document.clone(),
            steps: self.history.steps(),
            reference_name: self.reference().map(|reference| reference.name.clone()),
            preferences: self.preferences,
            uncertainty: self.uncertainty.clone(),
            question: self.question,
            goal: self.goal_settings.clone(),
            map: self.map_levers().clone(),
        }
    }

    /// What a reload needs, as text.
    pub fn keep(&self) -> String {
        serde_json::to_string(&Visit {
            scenario: self.document.scenario.to_file(),
            base: self.document.base.to_file(),
            units: self.preferences.units,
            uncertainty: self.uncertainty.clone(),
            question: self.question,
            goal: self.goal_settings.saved(),
            map: self.map_levers().clone(),
            reference: self.reference().map(SavedReference::of),
            greeted: self.preferences.greeted,
            history: self.history.saved(),
        })
        .expect("a session holds nothing that JSON cannot say")
    }

    /// Restores an earlier visit. An unreadable one is reported and the usual start stays; where only its
    /// jump can be read, that is restored.
    ///
    /// Its version is reported later ([`Self::report_earlier_body`]): the kept jumps and a link are read
    /// directly after it.
    pub fn restore(&mut self, json: &str) {
        match Visit::read(json) {
            Ok(read) => {
                let visit = read.visit;
                self.preferences.units = visit.units;
                self.question = visit.question;
                self.map_levers = visit.map;
                self.preferences.greeted = visit.greeted;
                self.earlier_body_unreported |= read.earlier_body;
                let history =
                    (visit.history).and_then(|saved| History::restore(saved, &read.document));
                self.history = history.unwrap_or_default();
                self.replace_document(Change::Opened, read.document);
                self.uncertainty = visit.uncertainty;
                self.goal_settings = read.goal;
                self.measure_range();
            }
            Err(_) => match jump_of(json) {
                Some(jump) => {
                    self.earlier_body_unreported |= jump.earlier_body;
                    self.history = History::default();
                    self.replace_document(Change::Opened, Document::opened(jump.read));
                    self.say(text("last-visit-jump-only"));
                }
                None => self.say(text("last-visit-unreadable")),
            },
        }
    }
}

/// The jump of a visit, whatever else stands there.
fn jump_of(json: &str) -> Option<Opened<Scenario>> {
    let visit: SavedJump = serde_json::from_str(unmarked(json)).ok()?;
    Scenario::open_file(&visit.scenario).ok()
}
