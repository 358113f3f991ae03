//! All that a sensor's trace tells of a flight.

use turns_aloft_attempt::sensor::{self, Sensor};
use turns_aloft_physics::GRAVITY_M_S2;
use turns_aloft_physics::plan::Turning;

use crate::bridge::{self, Filled};
use crate::fault::TraceFault;
use crate::flight_window::{self, FlightWindow, FoundBy};
use crate::rest::Rest;
use crate::saturation::Ends;
use crate::signals::Signals;
use crate::turned::{Turned, TurnedAbout, TurnedAngle};

/// The stretches of time that the user has set; what is not set is found.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Windows {
    pub rest_s: Option<[f64; 2]>,
    pub flight_s: Option<[f64; 2]>,
}

/// What has to be said of a trace beside its numbers: what was corrected, and what makes it weaker.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Remark {
    /// The drift at rest was taken out.
    Drift { size_rad_s: f64 },
    /// There is no rest, so the drift is not known.
    NoRest,
    /// The accelerometer's gravity has been taken out before, so that it is of no use.
    NoGravity,
    /// There is no accelerometer: the flight is a guess from the rate.
    RateOnly,
    /// No stretch is rigid-body motion about an axis: the flight is a guess from the rate.
    NotRigid,
    /// Readings at the gyroscope's end that the accelerometer bridges.
    Bridged { end_rad_s: f64, readings: usize },
    /// Readings at the gyroscope's end of which nobody knows how far beyond it went.
    Beyond { end_rad_s: f64, readings: usize },
    /// The vertical is not known: turned about the mean axis.
    MeanAxis,
    /// And nor is the direction.
    EitherWay,
}

/// A flight in a sensor's trace.
#[derive(Debug, Clone)]
pub struct Trace {
    pub rest: Option<Rest>,
    pub flight: FlightWindow,
    /// How far the trunk has turned since the beginning, at evenly spread readings and both ends.
    pub turned: Vec<TurnedAngle>,
    /// Standard deviation of the scale that these angles have in common, as a share of them.
    pub scale_sigma: f64,
    /// Standard deviation of the last of these angles, all that is known of included.
    pub turned_sigma_rad: f64,
    pub about: TurnedAbout,
    /// Largest rate about the axis, in the direction of the turning.
    pub peak_rate_rad_s: f64,
    pub remarks: Vec<Remark>,
}

/// Angles that are given at most.
pub const MOST_ANGLES: usize = 60;

/// Readings beside the flight that are filled as well, so that curves go on from them.
const BESIDE: usize = 3;

/// How far the sensor turns otherwise than the hips: it shakes with what it is strapped to, and the trunk
/// turns in itself. Standard deviation, rad; our estimate of 2 degrees.
const TRUNK_SIGMA_RAD: f64 = 0.035;

/// About how long a flight is, s; our choice.
const USUAL_S: f64 = 0.5;

/// At rest an accelerometer reads gravity, to within these parts of it; our choice.
const AT_REST: [f64; 2] = [0.85, 1.15];

/// What is found in a trace before anything is chosen: once for a file, whatever the user then moves.
#[derive(Debug, Clone)]
pub struct Survey {
    /// Without the accelerometer where it is of no use.
    pub signals: Signals,
    /// All stretches of rest, in their order.
    pub rests: Vec<Rest>,
    /// All flights with turning, those with most of it first.
    pub flights: Vec<FlightWindow>,
    rate_ends: Ends,
    acceleration_ends: Ends,
    no_gravity: bool,
}

impl Survey {
    pub fn of(signals: Signals) -> Self {
        let rests = Rest::find_all(&signals);
        let no_gravity = signals.has_acceleration() && !has_gravity(&signals, quietest(&rests));
        let signals = if no_gravity {
            signals.without_acceleration()
        } else {
            signals
        };
        let rate_ends = Ends::of_rates(&signals.rate_rad_s);
        let acceleration_ends = Ends::of_accelerations(&signals.acceleration_m_s2);
        let mut flights = flight_window::by_lever_arm(&signals, &rate_ends, &acceleration_ends);
        if flights.is_empty() {
            flights.extend(flight_window::by_rate_curve(&signals));
        }
        Self {
            signals,
            rests,
            flights,
            rate_ends,
            acceleration_ends,
            no_gravity,
        }
    }

    /// What is told of a flight: of the one with most turning, where the user has set none.
    pub fn trace(&self, windows: &Windows) -> Result<Trace, TraceFault> {
        let signals = &self.signals;
        let rest = match windows.rest_s {
            Some(rest_s) => Some(Rest::over(signals, rest_s)?),
            None => quietest(&self.rests).copied(),
        };
        let flight = match windows.flight_s {
            Some(flight_s) => self.set_flight(flight_s)?,
            None => *self.flights.first().ok_or(TraceFault::NoFlight)?,
        };
        let of_flight = signals.range([flight.from_s, flight.to_s]);
        let range =
            of_flight.start.saturating_sub(BESIDE)..(of_flight.end + BESIDE).min(signals.t_s.len());
        let ends = (&self.rate_ends, &self.acceleration_ends);
        let filled = bridge::fill(signals, range.clone(), ends);
        let turned = Turned::of(signals, (range, &filled), &flight, rest.as_ref());
        let turned = turned.ok_or(TraceFault::NoFlight)?;
        Ok(Trace {
            rest,
            scale_sigma: turned.scale_sigma,
            turned_sigma_rad: turned.sigma_rad(&flight),
            about: turned.about,
            peak_rate_rad_s: turned.peak_rate_rad_s,
            turned: evenly(&turned.angles),
            flight,
            remarks: self.remarks(rest.as_ref(), &flight, &filled, turned.about),
        })
    }

    /// Where to begin looking by hand where no flight was found: around the fastest turning.
    pub fn around_peak_s(&self) -> [f64; 2] {
        let signals = &self.signals;
        let size = |i: &usize| signals.rate_rad_s[*i].length();
        let all = 0..signals.t_s.len();
        let peak = all.max_by(|one, other| size(one).total_cmp(&size(other)));
        let last_s = signals.t_s[signals.t_s.len() - 1];
        let from_s = signals.t_s[peak.unwrap_or(0)] - 0.5 * USUAL_S;
        let from_s = from_s.min(last_s - USUAL_S).max(0.0);
        [from_s, (from_s + USUAL_S).min(last_s)]
    }

    /// A flight as the user has set it.
    fn set_flight(&self, [from_s, to_s]: [f64; 2]) -> Result<FlightWindow, TraceFault> {
        let signals = &self.signals;
        let is_inside = from_s >= signals.t_s[0] && to_s <= signals.t_s[signals.t_s.len() - 1];
        if !is_inside || signals.range([from_s, to_s]).len() < 3 {
            return Err(TraceFault::Window { from_s, to_s });
        }
        if let Some([from_s, to_s]) = signals.gap_in([from_s, to_s]) {
            return Err(TraceFault::Gap { from_s, to_s });
        }
        let ends = (&self.rate_ends, &self.acceleration_ends);
        Ok(FlightWindow {
            from_s,
            to_s,
            end_sigma_s: flight_window::LEVER_ARM_SIGMA_S,
            found_by: FoundBy::User,
            lever_arm: flight_window::lever_arm_over(signals, [from_s, to_s], ends),
        })
    }

    fn remarks(
        &self,
        rest: Option<&Rest>,
        flight: &FlightWindow,
        filled: &Filled,
        about: TurnedAbout,
    ) -> Vec<Remark> {
        let mut remarks = Vec::new();
        if self.no_gravity {
            remarks.push(Remark::NoGravity);
        }
        if flight.found_by == FoundBy::RateCurve {
            let has_both = self.signals.has_acceleration();
            remarks.push(if has_both {
                Remark::NotRigid
            } else {
                Remark::RateOnly
            });
        }
        remarks.push(rest.map_or(Remark::NoRest, |rest| Remark::Drift {
            size_rad_s: rest.drift_rad_s.length(),
        }));
        if let Some(end_rad_s) = self.rate_ends.least() {
            let beyond = filled.at_end - filled.bridged;
            if filled.bridged > 0 {
                remarks.push(Remark::Bridged {
                    end_rad_s,
                    readings: filled.bridged,
                });
            }
            if beyond > 0 {
                remarks.push(Remark::Beyond {
                    end_rad_s,
                    readings: beyond,
                });
            }
        }
        match about {
            TurnedAbout::Vertical => {}
            TurnedAbout::MeanAxis => remarks.push(Remark::MeanAxis),
            TurnedAbout::MeanAxisEitherWay => remarks.push(Remark::EitherWay),
        }
        remarks
    }
}

impl Trace {
    /// Turned in the whole flight, anticlockwise seen from above, rad.
    pub fn turned_rad(&self) -> f64 {
        self.turned[self.turned.len() - 1].turned_rad
    }

    pub fn hang_s(&self) -> f64 {
        self.flight.to_s - self.flight.from_s
    }

    /// Which way round it went, where that is known.
    pub fn turning(&self) -> Option<Turning> {
        let is_known = self.about != TurnedAbout::MeanAxisEitherWay;
        is_known.then_some(if self.turned_rad() < 0.0 {
            Turning::Clockwise
        } else {
            Turning::Anticlockwise
        })
    }

    /// What an attempt of a jumper who turns this way keeps of it.
    pub fn sensor(&self, file_name: &str, turning: Turning) -> Sensor {
        let sign = match self.turning() {
            Some(_) => 1.0,
            None => turning.sign() * self.turned_rad().signum(),
        };
        let angle = |at: &TurnedAngle| sensor::Turned {
            t_s: at.t_s,
            angle_rad: sign * at.turned_rad,
            sigma_rad: libm::hypot(at.sigma_rad, TRUNK_SIGMA_RAD),
        };
        Sensor {
            file_name: file_name.to_owned(),
            takeoff_s: self.flight.from_s,
            takeoff_sigma_s: self.flight.end_sigma_s,
            landing_s: self.flight.to_s,
            landing_sigma_s: self.flight.end_sigma_s,
            turned: self.turned.iter().map(angle).collect(),
            scale_sigma: self.scale_sigma,
        }
    }
}

fn quietest(rests: &[Rest]) -> Option<&Rest> {
    let sigma = |rest: &&Rest| rest.drift_sigma_rad_s;
    rests
        .iter()
        .min_by(|one, other| sigma(one).total_cmp(&sigma(other)))
}

fn has_gravity(signals: &Signals, rest: Option<&Rest>) -> bool {
    let size_m_s2 = match rest {
        Some(rest) => rest.acceleration_m_s2.length(),
        None => return signals.middle_acceleration_m_s2() > 0.5 * GRAVITY_M_S2,
    };
    (AT_REST[0]..AT_REST[1]).contains(&(size_m_s2 / GRAVITY_M_S2))
}

/// So many of them that are evenly spread, the first and the last included.
fn evenly(angles: &[TurnedAngle]) -> Vec<TurnedAngle> {
    let last = angles.len() - 1;
    let count = angles.len().min(MOST_ANGLES);
    (0..count).map(|i| angles[i * last / (count - 1)]).collect()
}
