//! A motion that is known by the joints' rotations at some times, as a measurement gives them.
//!
//! Between two times the rotation vector from the first one is a cubic of time; angular rate and
//! acceleration are continuous (C2: Park & Ravani 1997, ACM Trans Graph 16:277-295). At both ends the
//! rate is the mean one of the first and of the last interval.

use std::fmt;

use glam::{DQuat, DVec3};

use crate::body::model::SEGMENTS;
use crate::body::posture::{JointAccelerations, JointRates, Posture, STILL};
use crate::math::rotation::{acceleration_of, exp, log, rate_of, vector_rate_of};
use crate::motion::joint_motion::{JointMotion, Sampling};
use crate::motion::resolution::Resolution;

/// Splines through the rotations of all joints. Before the first time and after the last one the
/// posture is held.
#[derive(Debug, Clone)]
pub struct MeasuredMotion {
    times_s: Vec<f64>,
    /// Of every joint between two times.
    intervals: Vec<[Cubic; SEGMENTS]>,
    last: Posture,
}

/// Why no motion can be made of samples.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SamplesError {
    /// There have to be two, and as many postures as times.
    Count,
    /// Times have to be finite, each a microsecond or more after the one before.
    Times,
    /// Every joint's rotation has to be a unit quaternion.
    NotARotation,
    /// From one time to the next no joint may turn by more than 2 rad: what it does in between is not
    /// known.
    TooFarApart,
}

impl fmt::Display for SamplesError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Count => "there have to be two samples or more, and as many postures as times",
            Self::Times => {
                "the times have to be finite, each a microsecond or more after the one before"
            }
            Self::NotARotation => "a joint's rotation is none; give unit quaternions",
            Self::TooFarApart => "a joint turns by more than 2 rad between two samples; give more",
        })
    }
}

impl std::error::Error for SamplesError {}

/// Most that a joint may turn between two times, rad.
const MOST_TURNED_RAD: f64 = 2.0;

/// Least time between two samples, s.
const LEAST_SPAN_S: f64 = 1e-6;

/// Steps of the flight between two samples at least.
const STEPS: f64 = 4.0;

/// The rates are found to this, rad/s.
const TOLERANCE_RAD_S: f64 = 1e-12;

/// Sweeps over the rates until they are found; each leaves less than a half of the error.
const MOST_SWEEPS: usize = 100;

/// u = `c[0] t + c[1] t² + c[2] t³` for the time t since the beginning, from a rotation on.
#[derive(Debug, Clone, Copy)]
struct Cubic {
    from: DQuat,
    c: [DVec3; 3],
}

impl MeasuredMotion {
    pub fn new(times_s: Vec<f64>, postures: &[Posture]) -> Result<Self, SamplesError> {
        let [.., last] = postures else {
            return Err(SamplesError::Count);
        };
        if times_s.len() < 2 || times_s.len() != postures.len() {
            return Err(SamplesError::Count);
        }
        let rises = times_s
            .windows(2)
            .all(|pair| pair[1] - pair[0] >= LEAST_SPAN_S);
        if !rises || !times_s.iter().all(|t_s| t_s.is_finite()) {
            return Err(SamplesError::Times);
        }
        let spans_s: Vec<f64> = times_s.windows(2).map(|pair| pair[1] - pair[0]).collect();
        let still = Cubic {
            from: DQuat::IDENTITY,
            c: [DVec3::ZERO; 3],
        };
        let mut intervals = vec![[still; SEGMENTS]; spans_s.len()];
        // The pelvis has no joint.
        for joint in 1..SEGMENTS {
            let rotations = postures.iter().map(|posture| posture.joints[joint]);
            let rotations: Vec<DQuat> = rotations.collect();
            if !rotations.iter().all(|rotation| rotation.is_normalized()) {
                return Err(SamplesError::NotARotation);
            }
            let spline = spline(&rotations, &spans_s)?;
            for (interval, cubic) in intervals.iter_mut().zip(spline) {
                interval[joint] = cubic;
            }
        }
        Ok(Self {
            times_s,
            intervals,
            last: *last,
        })
    }

    /// The interval that a time falls in, and the time since its beginning; none outside of all.
    fn interval(&self, t_s: f64) -> Option<(&[Cubic; SEGMENTS], f64)> {
        let begun = self.times_s.partition_point(|&begin_s| begin_s <= t_s);
        let i = begun.checked_sub(1)?;
        Some((self.intervals.get(i)?, t_s - self.times_s[i]))
    }
}

/// The cubics through these rotations.
///
/// With the rates w at the ends of an interval of length T, the rotation vector r to its end and the
/// right Jacobian J of r, u' is w at the beginning and J⁻¹ w at the end. That the acceleration before
/// every time is the one after it are as many equations as there are unknown rates, linear but for the
/// term by which J changes; they are solved by sweeps (Gauss-Seidel).
fn spline(
    rotations: &[DQuat],
    spans_s: &[f64],
) -> Result<impl Iterator<Item = Cubic>, SamplesError> {
    let turns: Vec<DVec3> = rotations
        .windows(2)
        .map(|pair| log(pair[0].conjugate() * pair[1]))
        .collect();
    if turns.iter().any(|turn| turn.length() > MOST_TURNED_RAD) {
        return Err(SamplesError::TooFarApart);
    }
    let mean = |i: usize| turns[i] * (1.0 / spans_s[i]);
    let last = turns.len() - 1;
    let mut rates: Vec<DVec3> = (0..=last).map(mean).collect();
    rates.push(mean(last));
    for _ in 0..MOST_SWEEPS {
        let mut moved: f64 = 0.0;
        for i in 1..=last {
            let (before_s, after_s) = (spans_s[i - 1], spans_s[i]);
            let (before, after) = (turns[i - 1], turns[i]);
            let ends = vector_rate_of(before, rates[i]);
            let known = (before * (3.0 / before_s) - rate_of(before, rates[i - 1])) / before_s
                + (after * (3.0 / after_s) - vector_rate_of(after, rates[i + 1])) / after_s
                - acceleration_of(before, ends, DVec3::ZERO) * 0.5;
            let rate = known / (2.0 / before_s + 2.0 / after_s);
            moved = moved.max((rate - rates[i]).length());
            rates[i] = rate;
        }
        if moved < TOLERANCE_RAD_S {
            break;
        }
    }
    let cubics: Vec<Cubic> = (0..=last)
        .map(|i| {
            let (turn, span_s) = (turns[i], spans_s[i]);
            let (begins, ends) = (rates[i], vector_rate_of(turn, rates[i + 1]));
            let mean = turn / span_s;
            Cubic {
                from: rotations[i],
                c: [
                    begins,
                    (mean * 3.0 - begins * 2.0 - ends) / span_s,
                    (begins + ends - mean * 2.0) / (span_s * span_s),
                ],
            }
        })
        .collect();
    Ok(cubics.into_iter())
}

impl Cubic {
    /// The rotation vector after a time, and its first two derivatives.
    fn vector_at(&self, t_s: f64) -> [DVec3; 3] {
        let [a, b, c] = self.c;
        [
            (a + (b + c * t_s) * t_s) * t_s,
            a + (b * 2.0 + c * (3.0 * t_s)) * t_s,
            b * 2.0 + c * (6.0 * t_s),
        ]
    }
}

impl JointMotion for MeasuredMotion {
    fn at(&self, t_s: f64) -> (Posture, JointRates) {
        let Some((joints, since_s)) = self.interval(t_s) else {
            if t_s < self.times_s[0] {
                let joints = self.intervals[0].map(|cubic| cubic.from);
                return (Posture { joints }, STILL);
            }
            return (self.last, STILL);
        };
        let mut moving = (Posture::STANDING, STILL);
        for (i, joint) in joints.iter().enumerate() {
            let [u, u_rate, _] = joint.vector_at(since_s);
            (moving.0.joints[i], moving.1[i]) = (joint.from * exp(u), rate_of(u, u_rate));
        }
        moving
    }

    fn accelerations_at(&self, t_s: f64) -> JointAccelerations {
        let Some((joints, since_s)) = self.interval(t_s) else {
            return STILL;
        };
        joints.each_ref().map(|joint| {
            let [u, u_rate, u_change] = joint.vector_at(since_s);
            acceleration_of(u, u_rate, u_change)
        })
    }

    fn sampling_from(&self, t_s: f64) -> Sampling {
        let next = self.times_s.partition_point(|&begin_s| begin_s <= t_s);
        let span_s = match next {
            0 => f64::INFINITY,
            i => self
                .times_s
                .get(i)
                .map_or(f64::INFINITY, |end_s| end_s - self.times_s[i - 1]),
        };
        Sampling {
            longest_step_s: Resolution::STANDARD.longest_step_s.min(span_s / STEPS),
            smooth_until_s: self.times_s.get(next).copied().unwrap_or(f64::INFINITY),
        }
    }
}
