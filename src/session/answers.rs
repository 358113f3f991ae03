//! Everything that is worked out about the jump beyond its flight.

pub mod basis;
pub mod compare;
pub mod fit;
pub mod goal;
pub mod hand_weights;
pub mod kept_results;
pub mod map;
pub mod marks;
pub mod range;
pub mod why;

use crate::answers::basis::{Asked, Basis, Poll};
use crate::answers::compare::Compare;
use crate::answers::fit::FitAnswer;
use crate::answers::goal::GoalAnswer;
use crate::answers::hand_weights::HandWeights;
use crate::answers::map::MapAnswer;
use crate::answers::marks::MarksAnswer;
use crate::answers::range::RangeAnswer;
use crate::answers::why::Why;
use crate::state::question::Question;

#[derive(Debug, Default)]
pub(crate) struct Answers {
    pub range: Asked<RangeAnswer>,
    pub hand_weights: Asked<HandWeights>,
    pub why: Asked<Why>,
    pub goal: Asked<GoalAnswer>,
    pub map: Asked<MapAnswer>,
    pub compare: Asked<Compare>,
    pub marks: Asked<MarksAnswer>,
    pub fit: Asked<FitAnswer>,
}

impl Answers {
    /// All of them, the most urgent first, each with the question that it is worked out for; those
    /// without one always are.
    fn all(&mut self) -> [(Option<Question>, &mut dyn Poll); 8] {
        [
            (None, &mut self.range),
            (None, &mut self.hand_weights),
            (Some(Question::Why), &mut self.why),
            (Some(Question::Goal), &mut self.goal),
            (Some(Question::Map), &mut self.map),
            (Some(Question::Compare), &mut self.compare),
            (None, &mut self.marks),
            (None, &mut self.fit),
        ]
    }

    /// Does the next piece of what is in sight; whether there was one.
    pub fn poll(&mut self, question: Question, on: &Basis) -> bool {
        (self.all().into_iter())
            .filter(|(of, _)| of.is_none_or(|of| of == question))
            .any(|(_, answer)| answer.poll(on))
    }
}
