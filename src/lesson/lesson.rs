//! A lesson, whole.

use crate::said::Said;
use crate::step::Step;

/// A lesson.
#[derive(Debug, Clone, PartialEq)]
pub struct Lesson {
    pub title: Said,
    pub for_whom: Said,
    /// How long it takes.
    pub minutes: u64,
    /// Whether the options of a choice are shown as pictures, for those who hardly read.
    pub pictures: bool,
    pub plan: Plan,
    /// One at least.
    pub steps: Vec<Step>,
}

/// The plan for the teacher.
#[derive(Debug, Clone, PartialEq)]
pub struct Plan {
    /// One after the other; their minutes add up to the lesson's.
    pub parts: Vec<Part>,
    /// What to fetch.
    pub fetch: Vec<Said>,
    pub goes_wrong: Vec<Said>,
    /// What pupils commonly say. Common practice, no source: so it has to be marked where it is shown.
    pub classroom_answers: Vec<ClassroomAnswer>,
    /// Where it stands in which curriculum, and where not.
    pub curricula: Vec<Said>,
}

/// A part of the lesson.
#[derive(Debug, Clone, PartialEq)]
pub struct Part {
    pub minutes: u64,
    pub doing: Said,
}

#[derive(Debug, Clone, PartialEq)]
pub struct ClassroomAnswer {
    pub said: Said,
    /// What helps then.
    pub reply: Said,
}
