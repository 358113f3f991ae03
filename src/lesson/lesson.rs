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

impl Lesson {
    /// Leaves every text in the language spoken alone, or in another one where there is none in that.
    pub fn in_one_language(&mut self) {
        let plan = &mut self.plan;
        let lists = [&mut plan.fetch, &mut plan.goes_wrong, &mut plan.curricula];
        let said = [&mut self.title, &mut self.for_whom].into_iter();
        let said = said.chain(plan.parts.iter_mut().map(|part| &mut part.doing));
        let said = said.chain(lists.into_iter().flatten());
        let answers = plan.classroom_answers.iter_mut();
        let said = said.chain(answers.flat_map(|it| [&mut it.said, &mut it.reply]));
        for said in said.chain(self.steps.iter_mut().flat_map(Step::texts_mut)) {
            *said = Said::Alike(said.text().to_owned());
        }
    }
}

/// The plan for the teacher.
#[derive(Debug, Clone, Default, PartialEq)]
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
