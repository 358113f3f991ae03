//! A step of a lesson: what is set up, what is asked of it, and what is said in the end.

use crate::answer::Answer;
use crate::free::Free;
use crate::said::Said;
use crate::setup::{Setup, Variant, changed};
use turns_aloft_analysis::caution::{Caution, of};

/// A step of a lesson. Texts may have figures in braces: see [`crate::figure`].
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    pub title: Said,
    /// What is flown; nothing in a step that only asks.
    pub setup: Option<Setup>,
    /// The same with some inputs changed, by their names.
    pub variants: Vec<Variant>,
    /// What the pupil may change; all else is locked.
    pub free: Vec<Free>,
    pub question: Said,
    pub answer: Answer,
    /// Whether a reason is asked for with the prediction.
    pub reason: bool,
    /// What has to be observed, as a question.
    pub observe: Option<Said>,
    pub explanation: Said,
}

impl Step {
    pub fn variant(&self, name: &str) -> Option<usize> {
        self.variants
            .iter()
            .position(|variant| variant.name == name)
    }

    /// Whether the pupil may change that.
    pub fn is_free(&self, free: Free) -> bool {
        self.free.contains(&free)
    }

    /// Whether somebody turns on a turntable, who has to be told of its dangers.
    pub const fn turns_on_turntable(&self) -> bool {
        matches!(self.setup, Some(Setup::Turntable(_)))
    }

    /// What has to stand beside a step that lets somebody jump higher, open later or take weights.
    pub fn cautions(&self) -> Vec<Caution> {
        let Some(Setup::Jump(now)) = &self.setup else {
            return Vec::new();
        };
        let free = self.free.iter().flat_map(|free| free.ends(now));
        let variants = self.variants.iter();
        let variants = variants.filter_map(|it| changed(now, &it.changes).ok());
        let mut cautions = Vec::new();
        for then in free.chain(variants) {
            for caution in of(now, &then) {
                if !cautions.contains(&caution) {
                    cautions.push(caution);
                }
            }
        }
        cautions
    }
}
