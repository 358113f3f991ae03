//! A fit on its way: worked out in pieces of a few milliseconds.

use crate::candidate::Candidate;
use crate::draws::Draws;
use crate::fit::Fit;
use crate::problem::{Problem, Unfit};
use crate::sample::Sample;
use crate::scan::{Place, scan};
use crate::solve::{Mode, Trial};
use crate::unknown::Point;
use crate::untold::{INSTANTS, Shown, Untold, instants_s};
use crate::walk::Walk;
use turns_aloft_attempt::{Attempt, Measured};
use turns_aloft_physics::order::by_number;
use turns_aloft_physics::plan::Turning;
use turns_aloft_scenario::Scenario;

/// Equally likely jumps that come of a fit.
pub const SAMPLES: usize = 300;

/// Where the random numbers begin: the same marks give the same answer.
const SEED: u64 = 20;

/// Candidates drawn in one piece, and samples flown in one.
const DRAWN: usize = 20;
const FLOWN: usize = 6;

/// How much less likely than the likeliest a jump may be to be drawn around: the logarithm.
const HOPELESS: f64 = 12.0;

/// How much likelier than any found a jump has to be that turned the other way, to be told of: the
/// logarithm.
const BETTER_TURNED: f64 = 5.0;

/// A fit that is not finished.
#[derive(Debug)]
pub struct Fitting {
    problem: Problem,
    named: Scenario,
    filmed: bool,
    modes: Vec<Mode>,
    likelier_turning: Option<Turning>,
    stage: Stage,
}

#[derive(Debug)]
enum Stage {
    /// From the likeliest jump of the marks before.
    Again(Point),
    Scan,
    /// From these places, the last one next.
    Solve(Vec<Place>),
    /// Whether a jump that turned the other way would suit the marks better.
    Turning,
    Draw(Box<Draws>),
    Walk(Box<Walk>),
    Fly(Box<Flying>),
    Done(Box<Fit>),
}

#[derive(Debug)]
struct Flying {
    best: Sample,
    instants_s: [f64; INSTANTS],
    moves_each: f64,
    /// Points that are still to be flown, the next one last.
    left: Vec<Point>,
    /// Which samples have the same count of turns.
    counts: Vec<usize>,
    samples: Vec<Sample>,
    shown: Vec<Shown>,
}

impl Fitting {
    /// Begins. `before` is what the last fit of an attempt with other marks found first.
    pub fn new(attempt: &Attempt, before: Option<Point>) -> Result<Self, Unfit> {
        Ok(Self {
            problem: Problem::new(attempt)?,
            named: attempt.scenario.clone(),
            filmed: matches!(attempt.measured, Measured::Film(_)),
            modes: Vec::new(),
            likelier_turning: None,
            stage: before.map_or(Stage::Scan, Stage::Again),
        })
    }

    /// Works it out at once.
    pub fn complete(mut self) -> Fit {
        loop {
            if let Stage::Done(fit) = self.stage {
                return *fit;
            }
            self.poll();
        }
    }

    /// Does the next piece; whether there was one.
    pub fn poll(&mut self) -> bool {
        match &mut self.stage {
            Stage::Done(_) => return false,
            Stage::Again(point) => {
                let mode = Trial::new(&self.problem, *point).solve();
                self.modes.push(mode);
                self.stage = Stage::Scan;
            }
            Stage::Scan => {
                let mut places = scan(&self.problem);
                places.reverse();
                self.stage = Stage::Solve(places);
            }
            Stage::Solve(places) => match places.pop() {
                Some(place) => {
                    let mode = Trial::new(&self.problem, place.point).solve();
                    keep(&mut self.modes, mode);
                }
                None => self.stage = Stage::Turning,
            },
            Stage::Turning => {
                let least = self.modes[0].lost;
                self.likelier_turning = likelier_turning(&self.problem, least);
                self.modes.retain(|mode| mode.lost < least + HOPELESS);
                let draws = Draws::new(&self.problem, &self.modes, SEED);
                self.stage = Stage::Draw(Box::new(draws));
            }
            Stage::Draw(draws) => {
                if draws.go_on(&self.problem, DRAWN)
                    && let Stage::Draw(draws) = std::mem::replace(&mut self.stage, Stage::Scan)
                {
                    self.stage = Stage::Walk(Box::new(Walk::new(*draws, SAMPLES)));
                }
            }
            Stage::Walk(walk) => {
                if walk.go_on(&self.problem, DRAWN) {
                    let best = sample(&self.problem, &self.modes[0].point, &self.named);
                    self.stage = Stage::Fly(Box::new(Flying {
                        instants_s: instants_s(&best),
                        best,
                        moves_each: walk.taken_each(),
                        left: walk.walkers.iter().rev().map(|it| it.point).collect(),
                        counts: walk.counts(),
                        samples: Vec::with_capacity(SAMPLES),
                        shown: Vec::with_capacity(SAMPLES),
                    }));
                }
            }
            Stage::Fly(flying) => {
                if flying.go_on(&self.problem, &self.named) {
                    let untold = Untold::new(
                        &flying.samples,
                        &flying.shown,
                        &flying.instants_s,
                        self.filmed,
                    );
                    let fit = Fit::new(
                        flying.best.clone(),
                        (std::mem::take(&mut flying.samples), &flying.counts),
                        untold,
                        flying.moves_each,
                        self.likelier_turning,
                    );
                    self.stage = Stage::Done(Box::new(fit));
                }
            }
        }
        true
    }

    /// The likeliest jump that has been found so far.
    pub fn first(&self) -> Option<Sample> {
        let mode = self.modes.first()?;
        Some(sample(&self.problem, &mode.point, &self.named))
    }

    /// Where the next fit may begin.
    pub fn point(&self) -> Option<Point> {
        self.modes.first().map(|mode| mode.point)
    }

    /// The whole answer, once it has been worked out.
    pub fn finished(&self) -> Option<&Fit> {
        match &self.stage {
            Stage::Done(fit) => Some(fit),
            _ => None,
        }
    }
}

/// The other direction of turning, if the marks are met so much better by it.
fn likelier_turning(problem: &Problem, lost: f64) -> Option<Turning> {
    let turning = problem.scenario.turning.opposite();
    let other = problem.turning(turning)?;
    let place = scan(&other).into_iter().next()?;
    // A search is only worth while near a place that is hardly worse.
    if place.lost > lost + HOPELESS {
        return None;
    }
    let mode = Trial::new(&other, place.point).solve();
    (mode.lost < lost - BETTER_TURNED).then_some(turning)
}

fn sample(problem: &Problem, point: &Point, named: &Scenario) -> Sample {
    Sample::new(&Candidate::fly(problem, point, None), named)
}

/// Adds a likely jump, unless it is one that has been found already; the likeliest comes first.
fn keep(modes: &mut Vec<Mode>, mode: Mode) {
    const SAME_TURNS: f64 = 0.15;
    let same = |one: &Mode| (one.air_turns - mode.air_turns).abs() < SAME_TURNS;
    match modes.iter_mut().find(|one| same(one)) {
        Some(one) if one.lost <= mode.lost => {}
        Some(one) => *one = mode,
        None => modes.push(mode),
    }
    *modes = by_number(std::mem::take(modes), |mode| mode.lost);
}

impl Flying {
    /// Flies a few more; whether those were all.
    fn go_on(&mut self, problem: &Problem, named: &Scenario) -> bool {
        for _ in 0..FLOWN {
            let Some(point) = self.left.pop() else {
                return true;
            };
            let candidate = Candidate::fly(problem, &point, None);
            self.samples.push(Sample::new(&candidate, named));
            self.shown.push(Shown::new(&candidate, &self.instants_s));
        }
        false
    }
}
