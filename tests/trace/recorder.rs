//! A sensor on the hips of a flown figure: what it would read, from the real mechanics.

use std::fmt::Write as _;

use glam::{DQuat, DVec3};
use rand::{RngExt, SeedableRng, rngs::StdRng};
use rand_distr::StandardNormal;

use turns_aloft::physics::GRAVITY_M_S2;
use turns_aloft::physics::body::Segment;
use turns_aloft::physics::flight::Flight;
use turns_aloft::physics::rotation::about;
use turns_aloft::scenario::Scenario;

/// On which it is worn.
const SEGMENT: Segment = Segment::LowerTrunk;

/// Stretches before and after the flight, s: standing, turning in, and coming to rest. Made up.
const STANDS_S: f64 = 1.5;
const TURNS_IN_S: f64 = 0.5;
const PUSHES_S: f64 = 0.25;
const COMES_DOWN_S: f64 = 0.15;
const STOPS_S: f64 = 0.35;
const RESTS_S: f64 = 1.0;

/// What kind of sensor it is and how it is worn.
#[derive(Debug, Clone)]
pub struct Sensor {
    pub rate_hz: f64,
    /// In the axes of the hips, from their joint with the waist.
    pub place_m: DVec3,
    /// From the sensor's axes to those of the hips.
    pub mounted: DQuat,
    pub drift_rad_s: DVec3,
    pub noise_rad_s: f64,
    pub noise_m_s2: f64,
    /// It reads no more than these.
    pub end_rad_s: f64,
    pub end_m_s2: f64,
}

impl Default for Sensor {
    /// A good one, worn at the back.
    fn default() -> Self {
        Self {
            rate_hz: 240.0,
            place_m: DVec3::new(-0.11, 0.02, 0.02),
            mounted: about(DVec3::new(1.0, -2.0, 2.0) / 3.0, 1.1),
            drift_rad_s: DVec3::new(0.01, -0.02, 0.015),
            noise_rad_s: 0.003,
            noise_m_s2: 0.05,
            end_rad_s: f64::INFINITY,
            end_m_s2: f64::INFINITY,
        }
    }
}

/// What it recorded.
#[derive(Debug, Clone)]
pub struct Recording {
    pub t_s: Vec<f64>,
    pub rate_rad_s: Vec<DVec3>,
    pub acceleration_m_s2: Vec<DVec3>,
    /// True times of take-off and touch-down.
    pub flight_s: [f64; 2],
    /// Truly turned in between, anticlockwise from above.
    pub turned_rad: f64,
    pub peak_rate_rad_s: f64,
}

/// World rate, acceleration of the sensor without gravity, and attitude of the hips.
type State = (DVec3, DVec3, DQuat);

/// From 0 to 1 and its slope, at rest at both ends (the minimum-jerk curve).
fn eased(x: f64) -> (f64, f64) {
    let x = x.clamp(0.0, 1.0);
    (
        x * x * x * (10.0 - x * (15.0 - 6.0 * x)),
        30.0 * x * x * (1.0 - x) * (1.0 - x),
    )
}

/// The area below that curve, from 0 to x.
fn eased_area(x: f64) -> f64 {
    let x = x.clamp(0.0, 1.0);
    x.powi(4) * (2.5 - x * (3.0 - x))
}

fn in_flight(flight: &Flight, t_s: f64, place_m: DVec3) -> State {
    let pose = flight.pose_at(t_s);
    let step_s = 1e-4;
    let [before_s, after_s] =
        [t_s - step_s, t_s + step_s].map(|t_s| t_s.clamp(0.0, flight.touchdown_s));
    let velocity = |t_s: f64| flight.pose_at(t_s).velocity_m_s(SEGMENT, place_m);
    let acceleration = (velocity(after_s) - velocity(before_s)) / (after_s - before_s);
    (
        pose.segment_rate_rad_s(SEGMENT),
        acceleration + DVec3::Y * GRAVITY_M_S2,
        pose.orientation(SEGMENT),
    )
}

/// On the ice the body turns about the vertical alone, and the ice pushes upwards.
fn on_ice(attitude: DQuat, from_axis_m: DVec3, [rate, change]: [f64; 2], push_m_s2: f64) -> State {
    let rate_rad_s = DVec3::Y * rate;
    let turning = DVec3::Y * change;
    let acceleration = turning.cross(from_axis_m) + rate_rad_s.cross(rate_rad_s.cross(from_axis_m));
    (rate_rad_s, acceleration + DVec3::Y * push_m_s2, attitude)
}

pub fn record(scenario: &Scenario, sensor: &Sensor, seed: u64) -> Recording {
    let flight = scenario.fly().flight;
    let takeoff_s = STANDS_S + TURNS_IN_S;
    let touchdown_s = takeoff_s + flight.touchdown_s;
    let ends = [0.0, flight.touchdown_s].map(|t_s| flight.pose_at(t_s));
    let arms_m = ends.each_ref().map(|pose| {
        let arm_m = pose.point_m(SEGMENT, sensor.place_m) - pose.sample.cm_m();
        DVec3::new(arm_m.x, 0.0, arm_m.z)
    });
    let rates = ends
        .each_ref()
        .map(|pose| pose.segment_rate_rad_s(SEGMENT).y);
    let highest_m_s2 = (flight.takeoff_speed_m_s / PUSHES_S + GRAVITY_M_S2 / 5.0) * 12.0 / 6.75;
    let state = |t_s: f64| -> State {
        if t_s < takeoff_s {
            let x = (t_s - STANDS_S) / TURNS_IN_S;
            let (part, slope) = eased(x);
            let left_rad = rates[0] * TURNS_IN_S * (eased_area(1.0) - eased_area(x));
            let back = about(DVec3::Y, -left_rad);
            let push = ((t_s - takeoff_s) / PUSHES_S + 1.0).max(0.0);
            let push_m_s2 = GRAVITY_M_S2 * (1.0 - push.powi(4))
                + highest_m_s2 * 6.75 * push * push * (1.0 - push);
            on_ice(
                back * ends[0].orientation(SEGMENT),
                back * arms_m[0],
                [part * rates[0], slope * rates[0] / TURNS_IN_S],
                push_m_s2,
            )
        } else if t_s <= touchdown_s {
            in_flight(&flight, t_s - takeoff_s, sensor.place_m)
        } else {
            let x = (t_s - touchdown_s) / STOPS_S;
            let (part, slope) = eased(x);
            let on_rad = rates[1] * STOPS_S * (x.min(1.0) - eased_area(x));
            let on = about(DVec3::Y, on_rad);
            let push = (t_s - touchdown_s) / COMES_DOWN_S;
            let push_m_s2 = if push < 1.0 {
                4.0 * GRAVITY_M_S2 * libm::sin(std::f64::consts::PI * push)
            } else {
                GRAVITY_M_S2
            };
            on_ice(
                on * ends[1].orientation(SEGMENT),
                on * arms_m[1],
                [(1.0 - part) * rates[1], -slope * rates[1] / STOPS_S],
                push_m_s2,
            )
        }
    };
    let mut random = StdRng::seed_from_u64(seed);
    let mut scatter = |size: f64| {
        DVec3::from_array([0; 3].map(|_| size * random.sample::<f64, _>(StandardNormal)))
    };
    let mut recording = Recording {
        t_s: Vec::new(),
        rate_rad_s: Vec::new(),
        acceleration_m_s2: Vec::new(),
        flight_s: [takeoff_s, touchdown_s],
        turned_rad: flight.table.plan.spec.turning.sign() * flight.touchdown().turned_rad,
        peak_rate_rad_s: flight
            .samples
            .iter()
            .map(|at| at.spin_rad_s.abs())
            .fold(0.0, f64::max),
    };
    let last_s = touchdown_s + STOPS_S + RESTS_S;
    for i in 0.. {
        let t_s = f64::from(i) / sensor.rate_hz;
        if t_s > last_s {
            break;
        }
        let (rate, acceleration, attitude) = state(t_s);
        let own = (attitude * sensor.mounted).conjugate();
        let most = DVec3::splat(sensor.end_rad_s);
        let most_m_s2 = DVec3::splat(sensor.end_m_s2);
        let rate = own * rate + sensor.drift_rad_s + scatter(sensor.noise_rad_s);
        let acceleration = own * acceleration + scatter(sensor.noise_m_s2);
        recording.t_s.push(t_s);
        recording.rate_rad_s.push(rate.clamp(-most, most));
        recording
            .acceleration_m_s2
            .push(acceleration.clamp(-most_m_s2, most_m_s2));
    }
    recording
}

impl Recording {
    /// A file as many programs write it.
    pub fn csv(&self) -> String {
        let mut csv = String::from(
            "Time (s),Gyroscope x (rad/s),Gyroscope y (rad/s),Gyroscope z (rad/s),\
             Acceleration x (m/s^2),Acceleration y (m/s^2),Acceleration z (m/s^2)\n",
        );
        for (i, t_s) in self.t_s.iter().enumerate() {
            let ([a, b, c], [d, e, f]) = (
                self.rate_rad_s[i].to_array(),
                self.acceleration_m_s2[i].to_array(),
            );
            writeln!(csv, "{t_s:.6},{a:.6},{b:.6},{c:.6},{d:.5},{e:.5},{f:.5}")
                .expect("a text takes all");
        }
        csv
    }

    /// The same of the gyroscope alone.
    pub fn csv_of_rates(&self) -> String {
        let mut csv = String::from("time_s,gyro_x,gyro_y,gyro_z\n");
        for (t_s, rate) in self.t_s.iter().zip(&self.rate_rad_s) {
            let [x, y, z] = rate.to_array();
            writeln!(csv, "{t_s:.6},{x:.6},{y:.6},{z:.6}").expect("a text takes all");
        }
        csv
    }
}
