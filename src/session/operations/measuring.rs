//! Measuring an attempt: by a stop-watch, or by marks in a film.

use std::f64::consts::{PI, TAU};

use crate::operations::action::Action;
use crate::session::Session;
use crate::state::measuring::Measuring;
use crate::state::measuring::mark::{Mark, unmark};
use crate::state::measuring::open_film::OpenFilm;
use turns_aloft_attempt::film::{
    Facing, Film, Point, PostureMark, USUAL_FACING_SIGMA_RAD, USUAL_POSTURE_SIGMA,
};
use turns_aloft_attempt::stop_watch::{StopWatch, USUAL_HALF_WIDTH_S};
use turns_aloft_attempt::{Attempt, Measured};
use turns_aloft_describe::Sentence;
use turns_aloft_describe::typed::Admissible;
use turns_aloft_describe::unit::UnitText;
use turns_aloft_scenario::jump::JumpName;
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_words::{say, text};

/// How long after the take-off the landing is looked for first, s: a usual hang time, our choice.
const USUAL_HANG_TIME_S: f64 = 0.5;

/// What a stop-watch may say of a jump, and its half-width, s: our limits, wider than any jump.
const HANG_TIMES_S: [f64; 2] = [0.1, 3.0];
const HALF_WIDTHS_S: [f64; 2] = [0.01, 0.3];

/// Most turns that can be counted; those in a jump's name are 5 and a half at most.
const MOST_COUNTED: f64 = 7.0;

/// Turns that a jump without a name is taken to have when the facings are laid out.
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

    /// The attempt at hand as a file, with the file's name: the one that is measured, or that the jump was
    /// found from.
    pub fn attempt_file(&self) -> Option<[String; 2]> {
        let attempt = self.attempt().or_else(|| self.fitted_attempt())?;
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

    /// Whether it is measured in a film, which then is in place of the picture.
    pub fn is_measuring_in_film(&self) -> bool {
        (self.measuring.as_ref()).is_some_and(|measuring| measuring.marks().is_some())
    }

    /// Begins with the hang time of the jump at hand, to be set to what the watch says.
    pub fn measure_by_stop_watch(&mut self) {
        let hang_time_s = (100.0 * self.jump.readout.hang_time_s).round() / 100.0;
        self.begin_measuring(Measured::StopWatch(StopWatch {
            hang_time_s,
            half_width_s: USUAL_HALF_WIDTH_S,
            turns_counted: None,
            landing_facing_rad: None,
        }));
    }

    /// Begins with a film that is still to be opened.
    pub fn measure_in_film(&mut self) {
        let unopened = Film::unmarked(String::new(), [0.0, 0.0], 0.0, 1.0);
        self.begin_measuring(Measured::Film(unopened));
    }

    pub(crate) fn begin_measuring(&mut self, measured: Measured) {
        self.playback.playing = false;
        self.setting_up = false;
        self.notice = None;
        self.measuring = Some(Measuring::new(Attempt {
            scenario: self.scenario().clone(),
            measured,
        }));
    }

    /// Says why a film cannot be shown; its marks stay.
    pub fn film_refused(&mut self, why: String) {
        if let Some(measuring) = &mut self.measuring {
            measuring.film = None;
        }
        self.say(why);
    }

    /// Leaves what has been measured.
    pub fn stop_measuring(&mut self) {
        self.measuring = None;
    }

    /// Changes what the stop-watch says.
    pub fn set_stop_watch(&mut self, change: impl FnOnce(&mut StopWatch)) {
        let Some(measuring) = &mut self.measuring else {
            return;
        };
        measuring.change(|measured, _| {
            if let Measured::StopWatch(watch) = measured {
                change(watch);
            }
        });
    }

    /// Sets the hang time from what somebody has typed.
    pub fn set_typed_watch(&mut self, typed: &str) {
        let what = text("reading-hang-time-s");
        let admissible = Admissible {
            kind: Kind::Time,
            range: HANG_TIMES_S,
        };
        let Some(value_s) = admissible.typed(typed, self.units()) else {
            self.say(say!("number-needed", what = what));
            return;
        };
        let [least_s, most_s] = HANG_TIMES_S;
        let held_s = value_s.clamp(least_s, most_s);
        self.set_stop_watch(|watch| watch.hang_time_s = held_s);
        if held_s != value_s {
            let unit = self.units().of(Kind::Time);
            self.say(say!(
                "number-held",
                what = what,
                least = unit.text(least_s),
                most = unit.text(most_s),
                held = unit.text(held_s)
            ));
        }
    }

    /// Makes the half-width of the hang time larger or smaller.
    pub fn step_watch_half_width(&mut self, by_s: f64) {
        self.set_stop_watch(|watch| {
            let [least_s, most_s] = HALF_WIDTHS_S;
            watch.half_width_s = (watch.half_width_s + by_s).clamp(least_s, most_s);
        });
    }

    /// Counts quarter turns more or fewer; the first time from those that the jump's name asks for.
    pub fn step_turns_counted(&mut self, quarters: f64) {
        let named = self.turns_to_find();
        self.set_stop_watch(|watch| {
            let counted = watch.turns_counted.map_or(named, |it| it + 0.25 * quarters);
            watch.turns_counted = Some(counted.clamp(0.25, MOST_COUNTED));
        });
    }

    /// Takes up a film that the page has opened: the marks of the same film stay.
    pub fn film_opened(&mut self, film: OpenFilm) {
        let same = |marks: &&Film| marks.file_name == film.file_name;
        let known = self.measuring.as_ref().and_then(Measuring::marks);
        if known.filter(same).is_none() {
            let OpenFilm {
                size_px,
                slow_motion,
                ..
            } = film;
            let frame_s = film.frame_s() / slow_motion;
            let name = film.file_name.clone();
            let unmarked = Film::unmarked(name, size_px, frame_s, slow_motion);
            self.begin_measuring(Measured::Film(unmarked));
        }
        if let Some(measuring) = &mut self.measuring {
            measuring.film = Some(film);
            measuring.frame = 0;
        }
        self.show_asked_frame();
    }

    /// Shows a frame of the film, held inside it.
    pub fn show_frame(&mut self, frame: usize) {
        if let Some(measuring) = &mut self.measuring
            && let Some(film) = &measuring.film
        {
            measuring.frame = frame.min(film.times_s.len() - 1);
        }
    }

    pub fn is_film_playing(&self) -> bool {
        self.measuring.as_ref().is_some_and(Measuring::is_playing)
    }

    /// Plays the film, from its beginning where it is at its end; or stops it.
    pub fn play_or_pause_film(&mut self) {
        let Some(measuring) = &mut self.measuring else {
            return;
        };
        measuring.playing = !measuring.playing;
        let last = measuring.film.as_ref().map(|film| film.times_s.len() - 1);
        if measuring.playing && Some(measuring.frame) == last {
            measuring.frame = 0;
        }
    }

    /// What the page says of a film that plays: the frame to be seen, and none at its end.
    pub fn film_played(&mut self, frame: usize, ended: bool) {
        self.show_frame(frame);
        if let Some(measuring) = &mut self.measuring {
            measuring.playing &= !ended;
        }
    }

    /// Shows a frame so many further on, or back.
    pub fn step_frames(&mut self, by: isize) {
        if let Some(measuring) = &mut self.measuring {
            measuring.playing = false;
            let frame = measuring.frame;
            self.show_frame(frame.saturating_add_signed(by));
        }
    }

    /// What is to be marked now; none where nothing more is asked for.
    pub fn asked_mark(&self) -> Option<Mark> {
        self.measuring.as_ref()?.asked(self.turns_to_find())
    }

    /// How many of the marks that are asked for have been made or skipped, and how many there are.
    pub fn marks_done(&self) -> Option<[usize; 2]> {
        let measuring = self.measuring.as_ref()?;
        let all = measuring.worth_marking(self.turns_to_find());
        let done = |mark: &&Mark| measuring.is_marked(**mark) || measuring.skipped.contains(*mark);
        Some([all.iter().filter(done).count(), all.len()])
    }

    fn turns_to_find(&self) -> f64 {
        match self.scenario().jump {
            JumpName::Free => TURNS_OF_A_FREE_JUMP,
            _ => f64::from(self.scenario().jump_turns),
        }
    }

    /// Turns the figure over the film, rad.
    pub fn turn_figure(&mut self, by_rad: f64) {
        if let Some(measuring) = &mut self.measuring {
            measuring.facing_rad = wrapped(measuring.facing_rad + by_rad);
        }
    }

    /// Sets how far in the figure's arms and legs are over the film, 0 to 1.
    pub fn set_marked_posture(&mut self, posture: [f64; 2]) {
        if let Some(measuring) = &mut self.measuring {
            measuring.posture = posture.map(|part| part.clamp(0.0, 1.0));
        }
    }

    /// Makes the mark that is asked for, in the frame to be seen. Of a point, where it is in the picture
    /// has to be said ([`Self::mark_point`]).
    pub fn mark_frame(&mut self) {
        let Some(mark) = self.asked_mark() else {
            return;
        };
        let Some(measuring) = &mut self.measuring else {
            return;
        };
        let (Some(t_s), Some(next_s)) = (measuring.frame_s(), time_of_next_frame(measuring)) else {
            return;
        };
        let (angle_rad, [arms, legs]) = (measuring.facing_rad, measuring.posture);
        measuring.make(mark, |film| match mark {
            Mark::TakeOff => {
                film.contacts.last_on_ice_s = Some(t_s);
                film.contacts.first_in_air_s = Some(next_s);
            }
            Mark::Landing => {
                film.contacts.last_in_air_s = Some(t_s);
                film.contacts.first_on_ice_s = Some(next_s);
            }
            Mark::Facing(_) => film.facings.push(Facing {
                t_s,
                angle_rad,
                sigma_rad: USUAL_FACING_SIGMA_RAD,
            }),
            Mark::Posture(_) => film.postures.push(PostureMark {
                t_s,
                arms: Some(arms),
                legs: Some(legs),
                sigma: USUAL_POSTURE_SIGMA,
            }),
            Mark::Point(..) => {}
        });
        if mark == Mark::TakeOff {
            let landing = measuring.frame_at(t_s + USUAL_HANG_TIME_S);
            self.show_frame(landing.unwrap_or_default());
        }
        self.show_asked_frame();
    }

    /// Marks the point that is asked for, px from the left and the top of the film's picture.
    pub fn mark_point(&mut self, at_px: [f64; 2]) {
        let Some(mark @ Mark::Point(of, _)) = self.asked_mark() else {
            return;
        };
        let Some(measuring) = &mut self.measuring else {
            return;
        };
        let Some(t_s) = measuring.frame_s() else {
            return;
        };
        measuring.make(mark, |film| film.points.push(Point { of, t_s, at_px }));
        self.show_asked_frame();
    }

    /// Goes on without the mark that is asked for.
    pub fn skip_mark(&mut self) {
        let Some(mark) = self.asked_mark() else {
            return;
        };
        if let Some(measuring) = &mut self.measuring {
            measuring.chosen = None;
            measuring.change(|_, skipped| skipped.push(mark));
        }
        self.show_asked_frame();
    }

    /// Takes the last mark back.
    pub fn take_mark_back(&mut self) {
        if let Some(measuring) = &mut self.measuring {
            measuring.take_back();
        }
        self.show_asked_frame();
    }

    /// Asks for a mark again, to make it anew.
    pub fn choose_mark(&mut self, mark: Mark) {
        let Some(measuring) = &mut self.measuring else {
            return;
        };
        measuring.chosen = Some(mark);
        let contacts = measuring.marks().map(|film| film.contacts);
        let contact_s = contacts.and_then(|contacts| match mark {
            Mark::TakeOff => contacts.last_on_ice_s,
            Mark::Landing => contacts.last_in_air_s,
            _ => None,
        });
        if let Some(frame) = contact_s.and_then(|t_s| measuring.frame_at(t_s)) {
            measuring.frame = frame;
        }
        self.show_asked_frame();
    }

    /// Says how many times slower than life the film plays; real times of the marks follow.
    pub fn set_slow_motion(&mut self, slow_motion: f64) {
        let Some(measuring) = &mut self.measuring else {
            return;
        };
        measuring.change(|measured, _| {
            if let Measured::Film(film) = measured {
                film.play_slower_than_life(slow_motion);
            }
        });
    }

    /// Shows the frame that the next mark is made in. For a facing the figure is turned as it probably is.
    fn show_asked_frame(&mut self) {
        let mark = self.asked_mark();
        if let Some(frame) = mark.and_then(Mark::frame) {
            self.show_frame(frame);
        }
        if let Some(Mark::Facing(_)) = mark
            && let Some(facing_rad) = self.probable_facing_rad()
            && let Some(measuring) = &mut self.measuring
        {
            measuring.facing_rad = wrapped(facing_rad);
        }
    }

    /// How the hips probably face in the frame to be seen: turned as far from the last facing before it as
    /// the jump at hand turns in that time.
    fn probable_facing_rad(&self) -> Option<f64> {
        let measuring = self.measuring.as_ref()?;
        let (t_s, takeoff_s) = (measuring.frame_s()?, measuring.takeoff_s()?);
        let before = (measuring.marks()?.facings.iter())
            .filter(|it| it.t_s < t_s)
            .max_by(|one, other| one.t_s.total_cmp(&other.t_s))?;
        let turned = |t_s: f64| self.flight().at(t_s - takeoff_s).turned_rad;
        let sign = self.scenario().turning.sign();
        Some(before.angle_rad + sign * (turned(t_s) - turned(before.t_s)))
    }
}

impl Measuring {
    /// Makes a mark in the place of an earlier one of its frame.
    fn make(&mut self, mark: Mark, add: impl FnOnce(&mut Film)) {
        self.chosen = None;
        let frame = mark.frame();
        let measuring = self.clone();
        let same_frame = move |t_s: f64| measuring.frame_at(t_s) == frame;
        self.change(|measured, skipped| {
            skipped.retain(|it| *it != mark);
            if let Measured::Film(film) = measured {
                unmark(film, mark, same_frame);
                add(film);
            }
        });
    }
}

/// Real time of the frame after the one to be seen; after the last one, as far on as usual.
fn time_of_next_frame(measuring: &Measuring) -> Option<f64> {
    let (film, marks) = (measuring.film.as_ref()?, measuring.marks()?);
    let next_s = film.times_s.get(measuring.frame + 1);
    let next_s = next_s.map(|time_s| time_s / marks.slow_motion);
    next_s.or_else(|| Some(measuring.frame_s()? + marks.frame_s))
}

/// Into (-π, π].
fn wrapped(angle_rad: f64) -> f64 {
    let turned = (PI - angle_rad).rem_euclid(TAU);
    PI - turned
}
