//! Made-up attempts: drawn from what is known before, flown by the mechanics, marked with the stated
//! errors.

use rand::rngs::StdRng;
use rand::{RngExt as _, SeedableRng as _};
use rand_distr::{Distribution as _, StandardNormal};

use turns_aloft::analysis::budget::{Cause, Losses};
use turns_aloft::analysis::hang_time;
use turns_aloft::analysis::uncertainty::{UncertainInput, Uncertainty, with_ratio_off};
use turns_aloft::attempt::film::{
    Contacts, Facing, Film, PostureMark, USUAL_FACING_SIGMA_RAD, USUAL_POSTURE_SIGMA,
};
use turns_aloft::attempt::{Attempt, Measured};
use turns_aloft::fit::contact::WRONG_FRAME;
use turns_aloft::fit::problem::LINE_OF_SIGHT_SIGMA_RAD;
use turns_aloft::fit::untold::MarkOf;
use turns_aloft::scenario::fly::Jump;
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::{Scenario, starts};

/// What was so.
pub struct Truth {
    pub jump: Jump,
    pub scenario: Scenario,
    pub losses: [f64; 4],
    /// On the film's clock.
    pub takeoff_s: f64,
    first_rad: f64,
}

impl Truth {
    pub fn landing_s(&self) -> f64 {
        self.takeoff_s + self.jump.readout.hang_time_s
    }

    /// As a camera that turns with the jumper's way sees it.
    fn facing_rad(&self, t_s: f64) -> f64 {
        let turned_rad = self.jump.flight.at(t_s - self.takeoff_s).turned_rad;
        self.first_rad + self.scenario.turning.sign() * turned_rad
    }

    /// How far in arms and legs are.
    fn tucks(&self, t_s: f64) -> [f64; 2] {
        let flight = &self.jump.flight;
        (flight.table.plan).tucks_at(t_s - self.takeoff_s, flight.open_s)
    }

    pub fn lost(&self, cause: Cause) -> f64 {
        let place = Cause::ORDER.iter().position(|&one| one == cause);
        self.losses[place.expect("it is one of them")]
    }
}

/// How it is filmed and marked.
#[derive(Debug, Clone, Copy)]
pub struct Marking {
    pub frames_per_s: f64,
    pub facings: usize,
    pub postures: usize,
    /// Chance of a mark to be grossly wrong.
    pub wrong: f64,
}

const STARTS: [&str; 6] = [
    "child-single",
    "half-a-turn-short",
    "junior-double",
    "senior-triple",
    "four-turns",
    "floor-turn",
];

pub struct Maker {
    random: StdRng,
}

impl Maker {
    pub fn new(seed: u64) -> Self {
        Self {
            random: StdRng::seed_from_u64(seed),
        }
    }

    pub fn normal(&mut self) -> f64 {
        StandardNormal.sample(&mut self.random)
    }

    pub fn uniform(&mut self) -> f64 {
        self.random.random()
    }

    /// A jump drawn from what is known before of one of the starting points' jumpers.
    pub fn truth(&mut self) -> (Scenario, Truth) {
        loop {
            let name = STARTS[self.random.random_range(0..STARTS.len())];
            let meant = &starts::named(name).expect("a start").scenario;
            let mut scenario = meant.clone();
            for parameter in Parameter::ALL {
                if let Some(prior) = parameter.row().prior {
                    let value = prior.at(parameter.get(meant), self.normal());
                    parameter.hold(&mut scenario, value);
                }
            }
            let ratio = Uncertainty::usual(meant).get(UncertainInput::InertiaRatio) / 1.96;
            let (_, body) = with_ratio_off(&scenario, ratio * self.normal());
            let hang_s = meant.fly().readout.hang_time_s * libm::exp(0.15 * self.normal());
            let Ok(height_m) = hang_time::height_m(&scenario, &scenario.fly(), hang_s) else {
                continue;
            };
            scenario.jump_height_m = height_m;
            let jump = scenario.fly_as(body, None);
            let losses = Losses::new(&scenario, &jump.flight).losses;
            let truth = Truth {
                jump,
                scenario,
                losses,
                takeoff_s: 0.0,
                first_rad: 0.0,
            };
            return (meant.clone(), truth);
        }
    }

    /// The same, marked in a film.
    fn film(&mut self, truth: &mut Truth, marking: Marking) -> Film {
        let frame_s = 1.0 / marking.frames_per_s;
        let takeoff_s = 1.0 + self.uniform();
        let hang_s = truth.jump.readout.hang_time_s;
        let landing_s = takeoff_s + hang_s;
        let before = |t_s: f64| (t_s / frame_s).floor();
        let mut contact = |t_s: f64| {
            let chance = marking.wrong.max(2.0 * WRONG_FRAME);
            let off = if self.uniform() < chance {
                let by = 1.0 + (-libm::log(self.uniform())).floor().min(2.0);
                if self.uniform() < 0.5 { by } else { -by }
            } else {
                0.0
            };
            let first = before(t_s) + off;
            [first * frame_s, (first + 1.0) * frame_s]
        };
        let ([a, b], [c, d]) = (contact(takeoff_s), contact(landing_s));
        let first_rad = std::f64::consts::TAU * self.uniform();
        (truth.takeoff_s, truth.first_rad) = (takeoff_s, first_rad);
        let drift_rad = LINE_OF_SIGHT_SIGMA_RAD * self.normal();
        let in_air = [(takeoff_s / frame_s).ceil(), (landing_s / frame_s).floor()];
        let on_frame = |t_s: f64| (t_s / frame_s).round().clamp(in_air[0], in_air[1]) * frame_s;
        let facings = (0..marking.facings)
            .map(|i| {
                let share = i as f64 / (marking.facings - 1) as f64;
                let t_s = on_frame(takeoff_s + share * hang_s);
                let exact = truth.facing_rad(t_s) + drift_rad * (t_s - takeoff_s) / hang_s;
                let angle_rad = if self.uniform() < marking.wrong {
                    std::f64::consts::TAU * self.uniform()
                } else {
                    exact + USUAL_FACING_SIGMA_RAD * self.normal()
                };
                Facing {
                    t_s,
                    angle_rad: angle_rad.rem_euclid(std::f64::consts::TAU),
                    sigma_rad: USUAL_FACING_SIGMA_RAD,
                }
            })
            .collect();
        let postures = (0..marking.postures)
            .map(|i| {
                let share = [0.25, 0.5, 0.85][i % 3];
                let t_s = on_frame(takeoff_s + share * hang_s);
                let tucks = truth.tucks(t_s);
                let mut read = |tuck: f64| {
                    if self.uniform() < marking.wrong {
                        self.uniform()
                    } else {
                        tuck + USUAL_POSTURE_SIGMA * self.normal()
                    }
                };
                PostureMark {
                    t_s,
                    arms: Some(read(tucks[0])),
                    legs: Some(read(tucks[1])),
                    sigma: USUAL_POSTURE_SIGMA,
                }
            })
            .collect();
        Film {
            file_name: String::new(),
            size_px: [1920.0, 1080.0],
            frame_s,
            slow_motion: 1.0,
            contacts: Contacts {
                last_on_ice_s: Some(a),
                first_in_air_s: Some(b),
                last_in_air_s: Some(c),
                first_on_ice_s: Some(d),
            },
            facings,
            postures,
            points: Vec::new(),
        }
    }

    /// An attempt at a given jump, and what was so.
    pub fn attempt_of(
        &mut self,
        scenario: Scenario,
        jump: Jump,
        marking: Marking,
    ) -> (Attempt, Truth) {
        let truth = Truth {
            losses: Losses::new(&scenario, &jump.flight).losses,
            scenario: scenario.clone(),
            jump,
            takeoff_s: 0.0,
            first_rad: 0.0,
        };
        self.marked(scenario, truth, marking)
    }

    fn marked(
        &mut self,
        scenario: Scenario,
        mut truth: Truth,
        marking: Marking,
    ) -> (Attempt, Truth) {
        let film = self.film(&mut truth, marking);
        let measured = Measured::Film(film);
        (Attempt { scenario, measured }, truth)
    }

    /// Marks something more of it, as well as it can be marked.
    pub fn add(&mut self, attempt: &mut Attempt, truth: &Truth, of: MarkOf) {
        let Measured::Film(film) = &mut attempt.measured else {
            unreachable!("it is filmed")
        };
        let posture = |t_s: f64, arms: Option<f64>, legs: Option<f64>| PostureMark {
            t_s,
            arms,
            legs,
            sigma: USUAL_POSTURE_SIGMA,
        };
        match of {
            MarkOf::Facing(t_s) => film.facings.push(Facing {
                t_s,
                angle_rad: truth.facing_rad(t_s) + USUAL_FACING_SIGMA_RAD * self.normal(),
                sigma_rad: USUAL_FACING_SIGMA_RAD,
            }),
            MarkOf::Arms(t_s) => {
                let arms = truth.tucks(t_s)[0] + USUAL_POSTURE_SIGMA * self.normal();
                film.postures.push(posture(t_s, Some(arms), None));
            }
            MarkOf::Legs(t_s) => {
                let legs = truth.tucks(t_s)[1] + USUAL_POSTURE_SIGMA * self.normal();
                film.postures.push(posture(t_s, None, Some(legs)));
            }
            MarkOf::Contacts => {
                film.contacts = Contacts {
                    last_on_ice_s: Some(truth.takeoff_s - 0.002),
                    first_in_air_s: Some(truth.takeoff_s + 0.002),
                    last_in_air_s: Some(truth.landing_s() - 0.002),
                    first_on_ice_s: Some(truth.landing_s() + 0.002),
                };
                film.frame_s = 0.004;
            }
        }
    }

    /// An attempt and what was so.
    pub fn attempt(&mut self, marking: Marking) -> (Attempt, Truth) {
        let (scenario, truth) = self.truth();
        self.marked(scenario, truth, marking)
    }
}
