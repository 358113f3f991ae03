//! An attempt as what has to be found out: what was marked, and what is known before.

use crate::contact::Contact;
use crate::mark::Mark;
use crate::unknown::{Point, Unknown};
use turns_aloft_analysis::hang_time;
use turns_aloft_analysis::uncertainty::{UncertainInput, Uncertainty};
use turns_aloft_attempt::film::{Contacts, Film};
use turns_aloft_attempt::sensor::Sensor;
use turns_aloft_attempt::stop_watch::StopWatch;
use turns_aloft_attempt::{Attempt, Measured};
use turns_aloft_physics::plan::Turning;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::parameter::Parameter;

/// The line of sight turns as the jumper passes: 2 m of travel at 10 m distance, in any direction to it, are
/// 0.2 rad over the flight times the root of the mean square of a cosine (derived; travel and distance are
/// our choice). A standard deviation.
pub const LINE_OF_SIGHT_SIGMA_RAD: f64 = 0.2 * std::f64::consts::FRAC_1_SQRT_2;

/// How much lower or higher than the model's the body lands, m, standard deviation. On a force plate bodies
/// landed 0.053 m lower than they left (Yamashita 2020, doi 10.3390/app10030776), heights from flight times
/// came out 0.017 to 0.025 m too high (Baumgart 2017, doi 10.5812/asjsm.12921; Yamashita 2020), and 18 % at
/// 0.3 m with ankles bent on purpose (Goncalves 2024, doi 10.7717/peerj.17704). The model lands with legs
/// bent; on ice nothing was found: a wide choice of our own.
const LANDING_OFFSET_SIGMA_M: f64 = 0.03;

/// How far the hang time is off from the scenario's where no contact tells it: the standard deviation of
/// its logarithm, our choice.
const HANG_LOG_SIGMA: f64 = 0.15;

/// How far off the middle of the flight is from the middle of the marks where neither contact is told, s,
/// standard deviation: our choice.
const MIDDLE_SIGMA_S: f64 = 0.1;

/// Marks further outside the flight than this, s, are not of the flight.
const OUTSIDE_S: f64 = 0.06;

/// Turns counted by eye, and a landing's facing told by the quarter turn, are off by this, turns, standard
/// deviation: an eighth of a turn, from rounding and the eye. Our choice.
const COUNTED_SIGMA_TURNS: f64 = 0.125;

/// Angles of a sensor that are looked at, at most, evenly spread; and how far a real body's turning is from
/// any that the plan can give, rad, standard deviation, which a sensor is fine enough to see. Our choice.
const ANGLES: usize = 16;
const UNLIKE_PLAN_RAD: f64 = 0.05;

/// Shortest time in the air that is looked at, s.
const SHORTEST_S: f64 = 0.1;

/// When the flight began and ended.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Times {
    Both(Contact, Contact),
    /// Only when it began, only when it ended, and the hang time is about this, s.
    Takeoff(Contact, f64),
    Landing(Contact, f64),
    /// Only about when its middle was.
    Neither(Contact, f64),
}

/// What has to be found out.
#[derive(Debug, Clone)]
pub struct Problem {
    /// What was not measured.
    pub scenario: Scenario,
    times: Times,
    pub marks: Vec<Mark>,
    /// By how much the facings turn more than the jumper, rad over the flight and as a share, standard
    /// deviations.
    pub drift_sigma_rad: f64,
    pub drift_sigma_share: f64,
    /// Of the ratio of inertia, as a share, standard deviation.
    pub ratio_sigma: f64,
    pub landing_offset_sigma_m: f64,
}

/// Why nothing can be found out.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Unfit {
    /// A contact was marked after one that comes later.
    ContactsInDisorder,
    /// No jump that can be set is in the air for so long.
    HangTime { hang_s: f64, range_s: [f64; 2] },
    /// Nothing was marked.
    NoMarks,
}

/// The 95 % limit of a normal distribution, in standard deviations.
const LIMIT: f64 = 1.96;

impl Problem {
    pub fn new(attempt: &Attempt) -> Result<Self, Unfit> {
        let scenario = Scenario {
            name: String::new(),
            note: String::new(),
            // Its plan is what is to be found.
            led: None,
            ..attempt.scenario.clone()
        };
        let ratio = Uncertainty::usual(&scenario).get(UncertainInput::InertiaRatio);
        let jump = scenario.fly();
        let hang_s = jump.readout.hang_time_s;
        let mut problem = Self {
            times: Times::Neither(
                Contact::About {
                    t_s: 0.0,
                    sigma_s: MIDDLE_SIGMA_S,
                },
                hang_s,
            ),
            marks: Vec::new(),
            drift_sigma_rad: LINE_OF_SIGHT_SIGMA_RAD,
            drift_sigma_share: 0.0,
            ratio_sigma: ratio / LIMIT,
            landing_offset_sigma_m: LANDING_OFFSET_SIGMA_M,
            scenario,
        };
        match &attempt.measured {
            Measured::StopWatch(watch) => problem.timed(watch),
            Measured::Film(film) => problem.filmed(film, hang_s)?,
            Measured::Sensor(sensor) => problem.sensed(sensor),
        }
        let [takeoff_s, landing_s] = problem.times_s(0.0, 0.0);
        let range_s = hang_time::range_s(&problem.scenario, &jump);
        let found_s = landing_s - takeoff_s;
        if !(range_s[0]..=range_s[1]).contains(&found_s) {
            return Err(Unfit::HangTime {
                hang_s: found_s,
                range_s,
            });
        }
        Ok(problem)
    }

    fn timed(&mut self, watch: &StopWatch) {
        let takeoff = Contact::About {
            t_s: 0.0,
            sigma_s: 0.0,
        };
        let landing = Contact::About {
            t_s: watch.hang_time_s,
            sigma_s: watch.half_width_s / LIMIT,
        };
        self.times = Times::Both(takeoff, landing);
        if let Some(turns) = watch.turns_counted {
            self.marks.push(Mark::TurnsCounted {
                turns,
                sigma: COUNTED_SIGMA_TURNS,
            });
        }
        let owed = self.scenario.jump.turns_owed(self.scenario.jump_turns);
        if let (Some(past_rad), Some(owed_turns)) = (watch.landing_facing_rad, owed) {
            self.marks.push(Mark::LandingFacing {
                turns: owed_turns + past_rad / std::f64::consts::TAU,
                sigma: COUNTED_SIGMA_TURNS,
            });
        }
    }

    fn filmed(&mut self, film: &Film, hang_s: f64) -> Result<(), Unfit> {
        let [takeoff, landing] = contacts(&film.contacts, film.frame_s)?;
        let facings = film.facings.iter().map(|mark| mark.t_s);
        let marked: Vec<f64> = facings
            .chain(film.postures.iter().map(|mark| mark.t_s))
            .collect();
        self.times = match (takeoff, landing) {
            (Some(takeoff), Some(landing)) => Times::Both(takeoff, landing),
            (Some(takeoff), None) => Times::Takeoff(takeoff, hang_s),
            (None, Some(landing)) => Times::Landing(landing, hang_s),
            (None, None) => {
                let first_s = marked.iter().copied().fold(f64::INFINITY, f64::min);
                let last_s = marked.iter().copied().fold(f64::NEG_INFINITY, f64::max);
                if first_s > last_s {
                    return Err(Unfit::NoMarks);
                }
                let middle = Contact::About {
                    t_s: 0.5 * (first_s + last_s),
                    sigma_s: MIDDLE_SIGMA_S,
                };
                Times::Neither(middle, hang_s.max(last_s - first_s))
            }
        };
        let [takeoff_s, landing_s] = self.times_s(0.0, 0.0);
        let of_flight = |t_s: f64| (takeoff_s - OUTSIDE_S..=landing_s + OUTSIDE_S).contains(&t_s);
        for mark in film.facings.iter().filter(|mark| of_flight(mark.t_s)) {
            self.marks.push(Mark::Facing {
                t_s: mark.t_s,
                angle_rad: mark.angle_rad,
                sigma_rad: mark.sigma_rad,
            });
        }
        for mark in film.postures.iter().filter(|mark| of_flight(mark.t_s)) {
            let (t_s, sigma) = (mark.t_s, mark.sigma);
            let arms = mark.arms.map(|arms| Mark::Arms { t_s, arms, sigma });
            let legs = mark.legs.map(|legs| Mark::Legs { t_s, legs, sigma });
            self.marks.extend(arms.into_iter().chain(legs));
        }
        Ok(())
    }

    fn sensed(&mut self, sensor: &Sensor) {
        let about = |t_s, sigma_s| Contact::About { t_s, sigma_s };
        self.times = Times::Both(
            about(sensor.takeoff_s, sensor.takeoff_sigma_s),
            about(sensor.landing_s, sensor.landing_sigma_s),
        );
        (self.drift_sigma_rad, self.drift_sigma_share) = (0.0, sensor.scale_sigma);
        let last = sensor.turned.len().saturating_sub(1);
        let count = sensor.turned.len().min(ANGLES);
        let evenly = (0..count).map(|i| &sensor.turned[i * last / (count - 1).max(1)]);
        self.marks.extend(evenly.map(|mark| Mark::Turned {
            t_s: mark.t_s,
            angle_rad: mark.angle_rad,
            sigma_rad: libm::hypot(mark.sigma_rad, UNLIKE_PLAN_RAD),
        }));
    }

    /// The same of a jumper who turns the other way; none where nothing that was marked tells which way.
    pub fn turning(&self, turning: Turning) -> Option<Self> {
        self.marks.iter().any(Mark::is_of_facing).then(|| Self {
            scenario: Scenario {
                turning,
                ..self.scenario.clone()
            },
            ..self.clone()
        })
    }

    /// When the flight begins and ends, s, for so many standard deviations of each.
    pub fn times_s(&self, takeoff: f64, landing: f64) -> [f64; 2] {
        let hang_s = |about_s: f64, z: f64| about_s * libm::exp(HANG_LOG_SIGMA * z);
        let [takeoff_s, landing_s] = match self.times {
            Times::Both(from, to) => [from.at_s(takeoff), to.at_s(landing)],
            Times::Takeoff(from, about_s) => {
                let from_s = from.at_s(takeoff);
                [from_s, from_s + hang_s(about_s, landing)]
            }
            Times::Landing(to, about_s) => {
                let to_s = to.at_s(landing);
                [to_s - hang_s(about_s, takeoff), to_s]
            }
            Times::Neither(middle, about_s) => {
                let (middle_s, hang_s) = (middle.at_s(takeoff), hang_s(about_s, landing));
                [middle_s - 0.5 * hang_s, middle_s + 0.5 * hang_s]
            }
        };
        [takeoff_s, landing_s.max(takeoff_s + SHORTEST_S)]
    }

    /// Whether any mark hangs on it.
    pub fn is_told(&self, unknown: Unknown) -> bool {
        let any = |of: fn(&Mark) -> bool| self.marks.iter().any(of);
        match unknown {
            Unknown::LandingOffset => false,
            Unknown::FirstFacing => any(Mark::is_of_facing),
            Unknown::Drift => {
                any(Mark::is_of_facing) && self.drift_sigma_rad + self.drift_sigma_share > 0.0
            }
            // It comes before what is filmed.
            Unknown::Number(Parameter::PreRotation) => any(Mark::is_of_turns_in_all),
            Unknown::Takeoff | Unknown::Landing | Unknown::InertiaRatio | Unknown::Number(_) => {
                !self.marks.is_empty()
            }
        }
    }

    /// How far each unknown is off from what is known before; the first facing, of which every one is as
    /// likely, is nowhere off where it was seen.
    pub fn prior_residuals(&self, point: &Point) -> impl Iterator<Item = f64> {
        let flat = self.is_told(Unknown::FirstFacing);
        let each = Unknown::ALL.iter().zip(point);
        each.map(move |(&unknown, &z)| {
            if flat && unknown == Unknown::FirstFacing {
                0.0
            } else {
                z
            }
        })
    }
}

/// Take-off and landing, as far as they were marked. Where one of two frames was marked, the other is the
/// next one.
fn contacts(contacts: &Contacts, frame_s: f64) -> Result<[Option<Contact>; 2], Unfit> {
    let between = |before: Option<f64>, after: Option<f64>| {
        let (from_s, to_s) = match (before, after) {
            (None, None) => return None,
            (Some(from_s), None) => (from_s, from_s + frame_s),
            (None, Some(to_s)) => (to_s - frame_s, to_s),
            (Some(from_s), Some(to_s)) => (from_s, to_s),
        };
        Some((from_s, to_s))
    };
    let takeoff = between(contacts.last_on_ice_s, contacts.first_in_air_s);
    let landing = between(contacts.last_in_air_s, contacts.first_on_ice_s);
    let ends = [takeoff, landing].into_iter().flatten();
    let ordered: Vec<f64> = ends.flat_map(|(from_s, to_s)| [from_s, to_s]).collect();
    if !ordered.is_sorted() {
        return Err(Unfit::ContactsInDisorder);
    }
    Ok([takeoff, landing].map(|ends| {
        ends.map(|(from_s, to_s)| Contact::Between {
            from_s,
            to_s,
            frame_s,
        })
    }))
}
