//! What a step of a draft sets up, asks for and leaves free.

use crate::session::Session;
use crate::state::asked::{
    AnswerKind, change_input, changed_input, compared, forget_changed, number,
};
use turns_aloft_describe::Label;
use turns_aloft_describe::typed::Admissible;
use turns_aloft_lesson::answer::{MOST_OPTIONS, Meaning, OfCurve};
use turns_aloft_lesson::free::Free;
use turns_aloft_lesson::{Answer, Choice, Said, Setup, Step};
use turns_aloft_scenario::parameter::Parameter;
use turns_aloft_words::{say, text};

/// Asks for an answer of another kind. What the step has of it already stays.
pub fn ask(step: &mut Step, kind: AnswerKind) {
    if !kind.is_for(step) || AnswerKind::of(step) == Some(kind) {
        return;
    }
    let said = |name| Said::Alike(text(name).to_owned());
    let answer = match kind {
        AnswerKind::Number => number(step),
        AnswerKind::Change => {
            let Some(figures) = compared(step) else {
                return;
            };
            let options = vec![
                (said("draft-more"), Meaning::Rises),
                (said("draft-the-same"), Meaning::Stays),
                (said("draft-less"), Meaning::Falls),
            ];
            Answer::Choice(Choice::Change { figures, options })
        }
        AnswerKind::Curve => {
            let curves = step.setup.as_ref().map(Setup::curves).unwrap_or_default();
            let Some(curve) = curves.first() else {
                return;
            };
            Answer::Curve(OfCurve {
                curve: (*curve).to_owned(),
                variant: None,
            })
        }
        AnswerKind::Words => Answer::Words,
        AnswerKind::Opinion => {
            let options = vec![Said::Alike(String::new()); 2];
            Answer::Choice(Choice::Open { options })
        }
    };
    step.answer = answer;
    forget_changed(step);
}

/// Sets something else up. What the step has asked of another kind of setup is asked no longer.
pub fn set_up(step: &mut Step, setup: Setup) {
    let is_jump = |setup: &Option<Setup>| matches!(setup, Some(Setup::Jump(_)));
    let was_jump = is_jump(&step.setup);
    step.setup = Some(setup);
    if let Some(setup) = &step.setup {
        let all = Free::all(setup);
        step.free.retain(|free| all.contains(free));
    }
    if !was_jump {
        step.variants.clear();
        step.answer = Answer::Words;
        ask(step, AnswerKind::Number);
    }
}

impl Session {
    /// Asks for an answer of another kind in the step that is shown.
    pub fn ask_in_draft(&mut self, kind: AnswerKind) {
        self.edit_draft_step(|step| ask(step, kind));
    }

    /// Leaves something free in the step that is shown, or locks it.
    pub fn free_in_draft(&mut self, free: Free) {
        self.edit_draft_step(|step| {
            let before = step.free.len();
            step.free.retain(|it| *it != free);
            if step.free.len() == before {
                step.free.push(free);
            }
        });
    }

    /// Changes another input in the step that is shown; at first it has the value that it has in the jump.
    pub fn change_in_draft(&mut self, parameter: Parameter) {
        self.edit_draft_step(|step| {
            if let Some(Setup::Jump(jump)) = &step.setup {
                let value = parameter.get(jump);
                change_input(step, parameter, value);
            }
        });
    }

    /// Sets the value that the input is changed to, from what somebody has typed.
    pub fn type_change_in_draft(&mut self, typed: &str) {
        let step = self.lesson_draft().and_then(|draft| draft.step());
        let Some((parameter, _)) = step.and_then(changed_input) else {
            return;
        };
        let admissible = Admissible::of(parameter);
        let Some(value) = admissible
            .typed(typed, self.units())
            .filter(|it| it.is_finite())
        else {
            self.say(say!("number-needed", what = parameter.label()));
            return;
        };
        if self.asks_back(parameter.label(), admissible, typed, value) {
            return;
        }
        let held = value.clamp(parameter.least(), parameter.most());
        self.edit_draft_step(|step| change_input(step, parameter, held));
        self.say_held(parameter, value, held);
    }

    /// Adds an option to an opinion, or takes the last one away.
    pub fn add_option_in_draft(&mut self, more: bool) {
        self.edit_draft_step(|step| {
            if let Answer::Choice(Choice::Open { options }) = &mut step.answer {
                if more && options.len() < MOST_OPTIONS {
                    options.push(Said::Alike(String::new()));
                } else if !more && options.len() > 2 {
                    options.pop();
                }
            }
        });
    }
}
