//! What a pupil has answered, step by step. The one place that says what comes after what: predict, fly, observe,
//! explain. Going back loses nothing, and nothing is flown before it has been predicted.

use crate::answer::Answer;
use crate::lesson::Lesson;
use crate::said::LONGEST;
use crate::step::Step;

/// Characters of a name at most, and points of a drawn curve. Our choice.
pub const LONGEST_NAME: usize = 60;
pub const MOST_POINTS: usize = 200;

/// How far a pupil has come in a lesson.
#[derive(Debug, Clone, PartialEq)]
pub struct Progress {
    /// The name of the pupil, or of two, as they have typed it; empty where they haven't.
    pub who: String,
    /// The step that is shown, from 0 on.
    at: usize,
    /// One for each step.
    records: Vec<Record>,
}

/// What was answered in a step.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Record {
    pub prediction: Option<Prediction>,
    pub reason: String,
    pub observation: String,
    /// How far the step has come.
    pub stage: Stage,
}

/// What was predicted.
#[derive(Debug, Clone, PartialEq)]
pub enum Prediction {
    /// In SI.
    Number(f64),
    /// The option's place.
    Choice(usize),
    /// Times and values, in SI, in the order of time.
    Curve(Vec<[f64; 2]>),
    Words(String),
}

/// Where a step is.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, PartialOrd, Ord)]
pub enum Stage {
    #[default]
    Predict,
    Fly,
    Observe,
    Explain,
}

impl Stage {
    pub const ALL: [Self; 4] = [Self::Predict, Self::Fly, Self::Observe, Self::Explain];

    /// Its name in files.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Predict => "predict",
            Self::Fly => "fly",
            Self::Observe => "observe",
            Self::Explain => "explain",
        }
    }

    pub fn named(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|stage| stage.key() == key)
    }
}

impl Prediction {
    /// Whether it is one that a step asks for, within what can be kept.
    pub fn fits(&self, answer: &Answer) -> bool {
        match (self, answer) {
            (Self::Number(value), Answer::Number(_)) => value.is_finite(),
            (Self::Choice(place), Answer::Choice(choice)) => *place < choice.texts().len(),
            (Self::Curve(points), Answer::Curve(_)) => {
                let finite = |it: &[f64; 2]| it.iter().all(|number| number.is_finite());
                (2..=MOST_POINTS).contains(&points.len())
                    && points.iter().all(finite)
                    && points.windows(2).all(|pair| pair[0][0] < pair[1][0])
            }
            (Self::Words(words), Answer::Words) => is_said(words),
            _ => false,
        }
    }
}

/// Whether something is said, and not too much to be kept.
fn is_said(text: &str) -> bool {
    !text.trim().is_empty() && text.chars().count() <= LONGEST
}

impl Record {
    /// Whether all that is asked before flying is there.
    pub fn is_predicted(&self, step: &Step) -> bool {
        let reason = !step.reason || is_said(&self.reason);
        let prediction = self.prediction.as_ref();
        reason && prediction.is_some_and(|it| it.fits(&step.answer))
    }
}

impl Progress {
    /// At the beginning of a lesson.
    pub fn new(lesson: &Lesson) -> Self {
        Self {
            who: String::new(),
            at: 0,
            records: vec![Record::default(); lesson.steps.len()],
        }
    }

    /// With what was kept; nothing where that is not of this lesson.
    pub(crate) fn kept(who: String, at: usize, records: Vec<Record>) -> Self {
        Self { who, at, records }
    }

    /// The step that is shown, from 0 on.
    pub const fn at(&self) -> usize {
        self.at
    }

    pub fn record(&self) -> &Record {
        &self.records[self.at]
    }

    pub fn records(&self) -> &[Record] {
        &self.records
    }

    /// Where the step that is shown is.
    pub fn stage(&self) -> Stage {
        self.record().stage
    }

    /// Whether the simulator may be flown: after the prediction.
    pub fn may_fly(&self) -> bool {
        self.stage() >= Stage::Fly
    }

    /// Predicts, as long as it has not been flown.
    pub fn predict(&mut self, prediction: Option<Prediction>) {
        if self.stage() == Stage::Predict {
            self.records[self.at].prediction = prediction;
        }
    }

    pub fn give_reason(&mut self, reason: &str) {
        if self.stage() == Stage::Predict {
            self.records[self.at].reason = kept_part(reason, LONGEST);
        }
    }

    /// Writes down what was seen; it can be mended later.
    pub fn observe(&mut self, observation: &str) {
        if self.may_fly() {
            self.records[self.at].observation = kept_part(observation, LONGEST);
        }
    }

    pub fn set_who(&mut self, who: &str) {
        self.who = kept_part(who, LONGEST_NAME);
    }

    /// Whether the step can go on from where it is.
    pub fn can_go_on(&self, lesson: &Lesson) -> bool {
        let (record, step) = (self.record(), &lesson.steps[self.at]);
        match record.stage {
            Stage::Predict => record.is_predicted(step),
            // That it has been flown is for the page to say.
            Stage::Fly => true,
            Stage::Observe => is_said(&record.observation),
            Stage::Explain => self.at + 1 < lesson.steps.len(),
        }
    }

    /// Goes on, where that can be: to what comes next in the step, or to the next step. What a step does not
    /// have is passed over.
    pub fn go_on(&mut self, lesson: &Lesson) {
        if self.can_go_on(lesson) {
            self.pass_on(lesson);
        }
    }

    /// Goes on without an answer: a class gives its answers aloud.
    pub fn pass_on(&mut self, lesson: &Lesson) {
        let step = &lesson.steps[self.at];
        let after_flying = if step.observe.is_some() {
            Stage::Observe
        } else {
            Stage::Explain
        };
        let next = match self.stage() {
            Stage::Predict if step.setup.is_some() => Stage::Fly,
            Stage::Predict | Stage::Fly => after_flying,
            Stage::Observe => Stage::Explain,
            Stage::Explain => {
                self.at = (self.at + 1).min(lesson.steps.len() - 1);
                return;
            }
        };
        self.records[self.at].stage = next;
    }

    /// Shows the step before; nothing is lost.
    pub const fn go_back(&mut self) {
        self.at = self.at.saturating_sub(1);
    }

    /// Whether a step can be shown: those before it have been explained.
    pub fn is_reached(&self, place: usize) -> bool {
        let before = self.records.get(..place);
        before.is_some_and(|all| all.iter().all(|it| it.stage == Stage::Explain))
            && place < self.records.len()
    }

    /// Shows a step that has been reached.
    pub fn show(&mut self, place: usize) {
        if self.is_reached(place) {
            self.at = place;
        }
    }

    /// Whether all of it has been explained.
    pub fn is_done(&self) -> bool {
        self.records.iter().all(|it| it.stage == Stage::Explain)
    }
}

/// As much of a text as is kept.
fn kept_part(text: &str, most: usize) -> String {
    text.chars().take(most).collect()
}
