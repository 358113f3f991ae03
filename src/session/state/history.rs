//! The way back to earlier documents, and forward again: each step as the difference between two.

use serde::{Deserialize, Deserializer, Serialize};
use serde_json::{Map, Value};

use crate::state::document::{Attempt, Document};
use crate::state::own_settings::OwnSettings;
use turns_aloft_describe::Inline;
use turns_aloft_scenario::input::Input;
use turns_aloft_scenario::{Scenario, file};
use turns_aloft_words::text;

/// Steps back at most, and as many forward. At least 100 is what users are told.
pub const MOST_STEPS: usize = 200;

/// Room for the steps in either direction, as text: 100 opened jumps with notes of the usual length take
/// 250 kB. The oldest steps go where notes of many kilobytes take more. Browsers give a page's storage
/// about 5 MB (from memory).
const MOST_BYTES: usize = 400_000;

/// What a step did.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Change {
    /// Inputs were set by hand.
    Inputs,
    /// An answer's proposal was tried.
    Tried,
    /// Every input was put back.
    ResetAll,
    /// Another jump was opened.
    Opened,
    /// Another attempt to compare with was chosen, or none.
    Reference,
}

/// Steps that can be undone and redone, the nearest one last.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct History {
    undo: Vec<Step>,
    redo: Vec<Step>,
    /// The last step still takes in what a drag adds to it.
    open: bool,
}

/// One step, as what makes the document on the other side of it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Step {
    change: Change,
    patch: Patch,
    /// What had been set about the jumper of the document on the other side, where that is another jump.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    own: Option<OwnSettings>,
    /// Room that it takes as text.
    #[serde(skip)]
    bytes: usize,
}

impl Step {
    /// `own`: what has been set about the jumper of `to`.
    fn new(change: Change, from: &Document, to: &Document, own: &OwnSettings) -> Self {
        Self {
            change,
            patch: Patch::new(from, to),
            own: (change == Change::Opened).then(|| own.clone()),
            bytes: 0,
        }
        .measured()
    }

    /// What it did, in words: "jump height".
    fn text(&self) -> &'static str {
        match self.change {
            Change::Inputs => {
                let names = self.patch.scenario.keys();
                let mut inputs = names.filter_map(|name| Input::named(name));
                match (inputs.next(), inputs.next()) {
                    (Some(input), None) => input.inline(),
                    (None, _) => text("change-name-or-note"),
                    _ => text("change-several-inputs"),
                }
            }
            Change::Tried => text("change-tried"),
            Change::ResetAll => text("change-reset-all"),
            Change::Opened => text("change-opened"),
            Change::Reference => text("change-reference"),
        }
    }

    fn measured(mut self) -> Self {
        self.bytes = serde_json::to_string(&self).map_or(0, |text| text.len());
        self
    }
}

/// What has to be changed in one document to make another of it: values by the names that they have in
/// a file, the attempt compared with as a whole.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Patch {
    #[serde(default, skip_serializing_if = "Map::is_empty")]
    scenario: Map<String, Value>,
    #[serde(default, skip_serializing_if = "Map::is_empty")]
    base: Map<String, Value>,
    #[serde(
        default,
        skip_serializing_if = "Option::is_none",
        deserialize_with = "present"
    )]
    reference: Option<Option<Attempt>>,
}

/// An entry that is there, `null` included.
fn present<'de, D: Deserializer<'de>>(from: D) -> Result<Option<Option<Attempt>>, D::Error> {
    Option::<Attempt>::deserialize(from).map(Some)
}

impl Patch {
    fn new(from: &Document, to: &Document) -> Self {
        Self {
            scenario: differing(&from.scenario, &to.scenario),
            base: differing(&from.base, &to.base),
            reference: (from.reference != to.reference).then(|| to.reference.clone()),
        }
    }

    /// None where it does not fit the document; it always fits the one that it was made from.
    fn apply(&self, to: &Document) -> Option<Document> {
        Some(Document {
            scenario: patched(&to.scenario, &self.scenario)?,
            base: patched(&to.base, &self.base)?,
            reference: (self.reference.clone()).unwrap_or_else(|| to.reference.clone()),
        })
    }
}

fn entries(scenario: &Scenario) -> Map<String, Value> {
    match serde_json::to_value(scenario) {
        Ok(Value::Object(entries)) => entries,
        _ => Map::new(),
    }
}

fn differing(from: &Scenario, to: &Scenario) -> Map<String, Value> {
    if from == to {
        return Map::new();
    }
    let from = entries(from);
    let mut to = entries(to);
    // What is not there any more.
    for name in from.keys() {
        to.entry(name.as_str()).or_insert(Value::Null);
    }
    to.retain(|name, value| from.get(name) != Some(value));
    to
}

fn patched(scenario: &Scenario, patch: &Map<String, Value>) -> Option<Scenario> {
    if patch.is_empty() {
        return Some(scenario.clone());
    }
    let mut entries = entries(scenario);
    entries.extend(patch.clone());
    serde_json::from_value(Value::Object(entries)).ok()
}

impl History {
    /// Records that `before` has become `after`; what was undone until now cannot be redone any more.
    /// While a control is dragged, what it does is one step.
    /// `own`: what has been set about the jumper of `before`.
    pub(crate) fn record(
        &mut self,
        change: Change,
        [before, after]: [&Document; 2],
        own: &OwnSettings,
        dragging: bool,
    ) {
        if before == after {
            return;
        }
        self.redo.clear();
        let merges = dragging && self.open && change == Change::Inputs;
        let started =
            (merges.then(|| self.undo.pop()).flatten()).and_then(|step| step.patch.apply(before));
        let before = started.as_ref().unwrap_or(before);
        self.open = change == Change::Inputs;
        // A drag may end where it began.
        if before != after {
            self.undo.push(Step::new(change, after, before, own));
            limit(&mut self.undo);
        }
    }

    /// The control that was dragged has been let go: the next change is another step.
    pub fn close_step(&mut self) {
        self.open = false;
    }

    /// What the last step did, and the document before it. The step can then be redone; `own`: what has
    /// been set about the present jumper.
    pub(crate) fn undo(&mut self, present: &Document, own: &OwnSettings) -> Option<Passed> {
        self.open = false;
        pass(&mut self.undo, &mut self.redo, present, own)
    }

    /// What the step last undone did, and the document after it.
    pub(crate) fn redo(&mut self, present: &Document, own: &OwnSettings) -> Option<Passed> {
        self.open = false;
        pass(&mut self.redo, &mut self.undo, present, own)
    }

    /// Undoes everything from the last try on; nothing where none can be gone back on.
    pub(crate) fn go_back(&mut self, present: &Document, own: &OwnSettings) -> Option<Passed> {
        if self.tried() == 0 {
            return None;
        }
        let mut passed = self.undo(present, own)?;
        while passed.change != Change::Tried {
            passed = self.undo(&passed.document, own)?;
        }
        Some(passed)
    }

    /// The document before the last try; none where none can be gone back on.
    pub(crate) fn before_try(&self, present: &Document) -> Option<Document> {
        if self.tried() == 0 {
            return None;
        }
        let mut before = present.clone();
        for step in self.undo.iter().rev() {
            before = step.patch.apply(&before)?;
            if step.change == Change::Tried {
                return Some(before);
            }
        }
        None
    }

    /// What would be undone and what would be redone next.
    pub fn next(&self) -> [Option<Change>; 2] {
        [&self.undo, &self.redo].map(|steps| steps.last().map(|step| step.change))
    }

    /// The same in words: "jump height".
    pub fn next_texts(&self) -> [Option<&'static str>; 2] {
        [&self.undo, &self.redo].map(|steps| steps.last().map(Step::text))
    }

    /// How many steps can be undone, and how many redone.
    pub const fn steps(&self) -> [usize; 2] {
        [self.undo.len(), self.redo.len()]
    }

    /// How many of the steps back are proposals tried on the jump that was last opened or put back as a
    /// whole.
    pub fn tried(&self) -> usize {
        (self.undo.iter().rev())
            .take_while(|step| !matches!(step.change, Change::Opened | Change::ResetAll))
            .filter(|step| step.change == Change::Tried)
            .count()
    }
}

/// A step that has been passed over: what it did, and what is on its other side.
#[derive(Debug)]
pub(crate) struct Passed {
    pub change: Change,
    pub document: Document,
    pub own: Option<OwnSettings>,
}

/// Passes the last of the steps over.
fn pass(
    from: &mut Vec<Step>,
    to: &mut Vec<Step>,
    present: &Document,
    own: &OwnSettings,
) -> Option<Passed> {
    let step = from.pop()?;
    let document = step.patch.apply(present)?;
    to.push(Step::new(step.change, &document, present, own));
    limit(to);
    Some(Passed {
        change: step.change,
        document,
        own: step.own,
    })
}

/// Drops the oldest steps that are too many or take too much room.
fn limit(steps: &mut Vec<Step>) {
    let mut left = MOST_BYTES;
    let kept = (steps.iter().rev().take(MOST_STEPS))
        .take_while(|step| {
            let fits = step.bytes <= left;
            left = left.saturating_sub(step.bytes);
            fits
        })
        .count();
    steps.drain(..steps.len() - kept);
}

/// What survives a reload.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Saved {
    /// Of the scenarios' form; steps of another one are not read.
    version: u64,
    undo: Vec<Step>,
    redo: Vec<Step>,
}

impl History {
    /// None where there is no step.
    pub fn saved(&self) -> Option<Value> {
        if self.steps() == [0, 0] {
            return None;
        }
        let saved = Saved {
            version: file::PRESENT_BODY,
            undo: self.undo.clone(),
            redo: self.redo.clone(),
        };
        serde_json::to_value(saved).ok()
    }

    /// The steps around a document again; none where any of them leads to what may not be.
    pub fn restore(saved: Value, present: &Document) -> Option<Self> {
        let Saved {
            version,
            undo,
            redo,
        } = serde_json::from_value(saved).ok()?;
        let [undo, redo] = [undo, redo].map(|steps| {
            let mut steps = steps.into_iter().map(Step::measured).collect();
            limit(&mut steps);
            steps
        });
        let leads_well = |steps: &[Step]| {
            let mut at = present.clone();
            steps.iter().rev().all(|step| {
                let next = step.patch.apply(&at).filter(is_admissible);
                let own = step.own.as_ref();
                next.filter(|next| own.is_none_or(|own| own.fits(&next.scenario)))
                    .map(|next| at = next)
                    .is_some()
            })
        };
        (version == file::PRESENT_BODY && leads_well(&undo) && leads_well(&redo)).then_some(Self {
            undo,
            redo,
            open: false,
        })
    }
}

fn is_admissible(document: &Document) -> bool {
    let reference = document.reference.as_ref().map(|attempt| &attempt.scenario);
    let mut all = [&document.scenario, &document.base]
        .into_iter()
        .chain(reference);
    all.all(|scenario| scenario.check().is_ok() && scenario.fits_a_file())
}
