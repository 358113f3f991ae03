//! What is to be marked, and what of it comes next.
//!
//! First when the jumper leaves the ice and comes down; then where head and feet are, which say how large the
//! figure is over the film; then which way the hips face, often enough that no whole turn can be lost; then
//! arms and legs, which tell a slow take-off from a body that is not tight.

use crate::state::measuring::Measuring;
use crate::state::measuring::mark::Mark;
use turns_aloft_attempt::film::PointOf;

/// Facings for each turn: two that are more than half a turn apart lose a whole one.
const FACINGS_PER_TURN: f64 = 2.7;
/// Fewest facings in a flight, our choice.
const FEWEST_FACINGS: usize = 5;
/// Where in the flight arms and legs are asked for: while they close, closed, and as they open.
const POSTURES_AT: [f64; 3] = [0.3, 0.6, 0.9];

/// The flight's frames: the first and the last one in the air.
fn frames_in_air(measuring: &Measuring) -> Option<[usize; 2]> {
    let contacts = measuring.marks()?.contacts;
    let first = measuring.frame_at(contacts.first_in_air_s?)?;
    let last = measuring.frame_at(contacts.last_in_air_s?)?;
    (first < last).then_some([first, last])
}

/// A frame at a share of the flight.
fn at([first, last]: [usize; 2], share: f64) -> usize {
    first + (share * (last - first) as f64).round() as usize
}

impl Measuring {
    /// All that is worth marking in the film, in order; `turns` are those that the jump's name asks for.
    pub fn worth_marking(&self, turns: f64) -> Vec<Mark> {
        let mut marks = vec![Mark::TakeOff, Mark::Landing];
        let Some(in_air) = frames_in_air(self) else {
            return marks;
        };
        let [first, last] = in_air;
        marks.extend([
            Mark::Point(PointOf::Head, first),
            Mark::Point(PointOf::Feet, first),
            Mark::Point(PointOf::Head, last),
        ]);
        let facings = ((FACINGS_PER_TURN * turns).ceil() as usize + 1).max(FEWEST_FACINGS);
        let facings = facings.min(last - first + 1);
        let shares = (0..facings).map(|i| i as f64 / (facings - 1).max(1) as f64);
        marks.extend(shares.map(|share| Mark::Facing(at(in_air, share))));
        marks.extend(POSTURES_AT.map(|share| Mark::Posture(at(in_air, share))));
        marks
    }

    /// Whether something has been marked already.
    pub fn is_marked(&self, mark: Mark) -> bool {
        let Some(film) = self.marks() else {
            return false;
        };
        let in_frame = |t_s: f64| self.frame_at(t_s) == mark.frame();
        match mark {
            Mark::TakeOff => film.contacts.last_on_ice_s.is_some(),
            Mark::Landing => film.contacts.last_in_air_s.is_some(),
            Mark::Point(of, _) => (film.points.iter()).any(|it| it.of == of && in_frame(it.t_s)),
            Mark::Facing(_) => film.facings.iter().any(|it| in_frame(it.t_s)),
            Mark::Posture(_) => film.postures.iter().any(|it| in_frame(it.t_s)),
        }
    }

    /// What is asked for now: what the user has chosen, else the first that is neither marked nor skipped.
    pub fn asked(&self, turns: f64) -> Option<Mark> {
        self.film.as_ref()?;
        self.chosen.or_else(|| {
            (self.worth_marking(turns).into_iter())
                .find(|&mark| !self.is_marked(mark) && !self.skipped.contains(&mark))
        })
    }
}
