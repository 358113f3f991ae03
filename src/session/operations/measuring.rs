//! Measuring an attempt: begun, opened as a file, and left.

use crate::operations::action::Action;
use crate::session::Session;
use crate::state::measuring::Measuring;
use turns_aloft_attempt::{Attempt, Measured};
use turns_aloft_describe::Sentence;
use turns_aloft_scenario::jump::JumpName;
use turns_aloft_words::say;

/// Turns that a jump without a name is taken to have.
const TURNS_OF_A_FREE_JUMP: f64 = 2.0;

impl Session {
    /// The attempt that is being measured, if one is.
    pub const fn measuring(&self) -> Option<&Measuring> {
        self.measuring.as_ref()
    }

    pub const fn is_measuring(&self) -> bool {
        self.measuring.is_some()
    }

    /// The attempt that is being measured, as far as it is.
    pub fn attempt(&self) -> Option<&Attempt> {
        self.measuring.as_ref().map(|measuring| &measuring.attempt)
    }

    /// The attempt at hand: the one that is measured, or that the jump was found from. None of a film that
    /// is still to be opened.
    pub fn attempt_at_hand(&self) -> Option<&Attempt> {
        let attempt = self.attempt().or_else(|| self.fitted_attempt())?;
        match &attempt.measured {
            Measured::Film(film) if film.file_name.is_empty() => None,
            _ => Some(attempt),
        }
    }

    /// The same as a file, with the file's name.
    pub fn attempt_file(&self) -> Option<[String; 2]> {
        let attempt = self.attempt_at_hand()?;
        Some([attempt.file_name(), attempt.to_file()])
    }

    /// Opens an attempt's file, to measure on.
    pub(crate) fn open_attempt(&mut self, file: &str) {
        match Attempt::open_file(file) {
            Ok(opened) => {
                let attempt = opened.read;
                self.apply(Action::Open(attempt.scenario.clone(), None));
                self.playback.playing = false;
                self.measuring = Some(Measuring::new(attempt));
                if opened.earlier_body {
                    self.append_notice(&say!("earlier-body", jumps = 1));
                }
            }
            Err(why) => self.say(say!("not-opened", why = why.sentence())),
        }
    }

    pub(crate) fn begin_measuring(&mut self, measured: Measured) {
        self.playback.playing = false;
        self.leave_modes();
        self.measuring = Some(Measuring::new(Attempt {
            scenario: self.scenario().clone(),
            measured,
        }));
    }

    /// Leaves whatever has the place of the jump at hand: what has it next begins with this.
    pub(crate) fn leave_modes(&mut self) {
        self.stop_measuring();
        self.leave_turntable();
        self.stop_flying_by_hand();
        self.leave_lesson();
        self.setting_up = false;
        self.notice = None;
    }

    /// Leaves what has been measured.
    pub fn stop_measuring(&mut self) {
        self.measuring = None;
    }

    /// The turns that the jump's name asks for.
    pub(crate) fn turns_to_find(&self) -> f64 {
        match self.scenario().jump {
            JumpName::Free => TURNS_OF_A_FREE_JUMP,
            _ => f64::from(self.scenario().jump_turns),
        }
    }
}
