//! The marks in a film: what is asked for next, made, moved, skipped and taken back.

use std::f64::consts::{PI, TAU};

use crate::session::Session;
use crate::state::measuring::Measuring;
use crate::state::measuring::mark::{Mark, unmark};
use turns_aloft_attempt::Measured;
use turns_aloft_attempt::film::{
    Facing, Film, Point, PostureMark, USUAL_FACING_SIGMA_RAD, USUAL_POSTURE_SIGMA,
};

/// How long after the take-off the landing is looked for first, s: a usual hang time, our choice.
const USUAL_HANG_TIME_S: f64 = 0.5;

impl Session {
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

    /// Makes the mark that is asked for, in the frame to be seen: as the figure over the film is turned and
    /// closed, a point where the cross is.
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
        let cross_px = measuring.cross_px;
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
            Mark::Point(of, _) => film.points.push(Point {
                of,
                t_s,
                at_px: cross_px,
            }),
        });
        if mark == Mark::TakeOff {
            let landing = measuring.frame_at(t_s + USUAL_HANG_TIME_S);
            self.show_frame(landing.unwrap_or_default());
        }
        self.show_asked_frame();
    }

    /// Moves the cross that a point is marked with, px from the left and the top of the film's picture; held
    /// inside it.
    pub fn move_cross(&mut self, to_px: [f64; 2]) {
        if let Some(measuring) = &mut self.measuring
            && let Some(film) = &measuring.film
        {
            let [x_px, y_px] = to_px;
            let [width_px, height_px] = film.size_px;
            measuring.cross_px = [x_px.clamp(0.0, width_px), y_px.clamp(0.0, height_px)];
        }
    }

    /// Marks the point that is asked for, px from the left and the top of the film's picture; nothing if
    /// none is.
    pub fn mark_point(&mut self, at_px: [f64; 2]) {
        if let Some(Mark::Point(..)) = self.asked_mark() {
            self.move_cross(at_px);
            self.mark_frame();
        }
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

    /// Shows the frame that the next mark is made in. For a facing the figure is turned as it probably is, for
    /// a point the cross is where such a point was marked last.
    pub(crate) fn show_asked_frame(&mut self) {
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
        if let Some(Mark::Point(of, _)) = mark
            && let Some(measuring) = &mut self.measuring
            && let Some(film) = &measuring.film
        {
            let [width_px, height_px] = film.size_px;
            let marked = measuring.marks().map_or(&[][..], |film| &film.points);
            let last = marked.iter().rfind(|point| point.of == of);
            let middle_px = [0.5 * width_px, 0.5 * height_px];
            measuring.cross_px = last.map_or(middle_px, |point| point.at_px);
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
