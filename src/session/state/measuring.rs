//! An attempt while it is measured: what has been marked so far, and where in the film the user is.

mod asked;
pub mod mark;
pub mod open_film;
pub mod trace_file;

use crate::state::measuring::mark::Mark;
use crate::state::measuring::open_film::OpenFilm;
use crate::state::measuring::trace_file::TraceFile;
use turns_aloft_attempt::film::Film;
use turns_aloft_attempt::{Attempt, Measured};

/// Most steps that can be taken back.
const MOST_PAST: usize = 100;

#[derive(Debug, Clone)]
pub struct Measuring {
    /// What it was meant to be, and what was measured of it.
    pub(crate) attempt: Attempt,
    /// The film that is open; none until it is, also after a reload: the page keeps marks, not films.
    pub(crate) film: Option<OpenFilm>,
    /// The same of a sensor's file.
    pub(crate) trace: Option<TraceFile>,
    /// The frame to be seen; the page follows it, and moves it on while the film plays.
    pub(crate) frame: usize,
    pub(crate) playing: bool,
    /// What the user has chosen to mark; none to go on with what is next.
    pub(crate) chosen: Option<Mark>,
    pub(crate) skipped: Vec<Mark>,
    /// Whether the figure of the attempt with the change that would win most is shown as well.
    pub(crate) proposes: bool,
    /// How the figure over the film is turned at present, rad; what a facing is marked as.
    pub(crate) facing_rad: f64,
    /// How far in its arms and legs are at present, 0 to 1.
    pub(crate) posture: [f64; 2],
    /// How many times larger the film is seen than as a whole.
    pub(crate) closer: f64,
    /// Where the cross is that a point is marked with, px from the left and the top of the film's picture.
    pub(crate) cross_px: [f64; 2],
    /// What was marked before each step, the last one last.
    past: Vec<Past>,
}

/// What there was before a mark was made, and the frame in sight then.
#[derive(Debug, Clone, PartialEq)]
struct Past {
    measured: Measured,
    skipped: Vec<Mark>,
    frame: usize,
}

impl Measuring {
    pub fn new(attempt: Attempt) -> Self {
        Self {
            attempt,
            film: None,
            trace: None,
            frame: 0,
            playing: false,
            chosen: None,
            skipped: Vec::new(),
            proposes: false,
            facing_rad: 0.0,
            posture: [0.5, 0.5],
            closer: 1.0,
            cross_px: [0.0, 0.0],
            past: Vec::new(),
        }
    }

    pub const fn measured(&self) -> &Measured {
        &self.attempt.measured
    }

    /// The marks in a film, if it is measured by one.
    pub const fn marks(&self) -> Option<&Film> {
        match &self.attempt.measured {
            Measured::Film(film) => Some(film),
            Measured::StopWatch(_) | Measured::Sensor(_) => None,
        }
    }

    pub const fn film(&self) -> Option<&OpenFilm> {
        self.film.as_ref()
    }

    pub const fn trace(&self) -> Option<&TraceFile> {
        self.trace.as_ref()
    }

    pub const fn frame(&self) -> usize {
        self.frame
    }

    pub const fn is_playing(&self) -> bool {
        self.playing
    }

    pub const fn proposes(&self) -> bool {
        self.proposes
    }

    pub const fn facing_rad(&self) -> f64 {
        self.facing_rad
    }

    pub const fn posture(&self) -> [f64; 2] {
        self.posture
    }

    pub const fn cross_px(&self) -> [f64; 2] {
        self.cross_px
    }

    pub const fn closer(&self) -> f64 {
        self.closer
    }

    /// Real time of the frame to be seen, s.
    pub fn frame_s(&self) -> Option<f64> {
        let (film, marks) = (self.film.as_ref()?, self.marks()?);
        Some(film.times_s.get(self.frame)? / marks.slow_motion)
    }

    /// About when the ice was left, real time, s: half-way between the two frames.
    pub fn takeoff_s(&self) -> Option<f64> {
        let contacts = self.marks()?.contacts;
        Some(0.5 * (contacts.last_on_ice_s? + contacts.first_in_air_s?))
    }

    /// The frame that was at a real time, or next to it.
    pub fn frame_at(&self, t_s: f64) -> Option<usize> {
        let (film, marks) = (self.film.as_ref()?, self.marks()?);
        Some(film.nearest(t_s * marks.slow_motion))
    }

    /// Changes what is marked, so that it can be taken back.
    pub(crate) fn change(&mut self, change: impl FnOnce(&mut Measured, &mut Vec<Mark>)) {
        let before = Past {
            measured: self.attempt.measured.clone(),
            skipped: self.skipped.clone(),
            frame: self.frame,
        };
        change(&mut self.attempt.measured, &mut self.skipped);
        if before.measured != self.attempt.measured || before.skipped != self.skipped {
            self.past.push(before);
            if self.past.len() > MOST_PAST {
                self.past.remove(0);
            }
        }
    }

    /// Whether there is anything to take back.
    pub fn has_past(&self) -> bool {
        !self.past.is_empty()
    }

    pub(crate) fn take_back(&mut self) {
        if let Some(past) = self.past.pop() {
            (self.attempt.measured, self.skipped) = (past.measured, past.skipped);
            (self.frame, self.chosen) = (past.frame, None);
        }
    }
}
