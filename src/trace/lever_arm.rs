//! Rigid-body motion about the centre of mass: in flight nothing but gravity acts, so what an
//! accelerometer reads is a x r + w x (w x r), with the rate w, its change a and the lever arm r from the
//! centre of mass to the sensor. One r explains a flight; on the ice there is the ice's push as well.
//!
//! The push is mostly along the axis of the turning, where the turning gives no reading: there little is
//! let pass. Across it the reading is large, and the body is not rigid: arms that come in move the centre
//! of mass by a few centimetres, so there more is.

use glam::{DMat3, DVec3};

use crate::saturation::Ends;
use crate::signals::Signals;

/// A lever arm and how well it explains the readings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeverArm {
    /// From the centre of mass to the sensor, sensor axes.
    pub r_m: DVec3,
    /// Mean square of what is left over, as a part of what is let pass.
    pub misfit: f64,
}

/// Left over that is let pass along the axis, m/s2. Our choice: a fifth of gravity, where the ice's push
/// is all of it and more.
const ALONG_M_S2: f64 = 2.0;

/// Across the axis so much more for each (rad/s)2 of turning, m: how far the centre of mass moves in the
/// trunk as arms and legs come in. Our choice.
const WANDERS_M: f64 = 0.03;

/// Below this rate no axis is told apart, rad/s; our choice.
const TURNING_RAD_S: f64 = 2.0;

/// A sensor on the trunk is about so far from the centre of mass, m; our choice, wide.
const FAR_M: f64 = 0.3;

/// Sums over readings, from which the lever arm of any stretch follows.
#[derive(Debug, Clone, Copy, Default)]
struct Sums {
    /// Upper triangle of A' W A: xx, xy, xz, yy, yz, zz.
    normal: [f64; 6],
    /// A' W f.
    right: DVec3,
    /// f' W f.
    square: f64,
    count: f64,
}

/// The sums up to each reading of a stretch.
#[derive(Debug, Clone)]
pub struct LeverArms {
    /// Index of the first reading.
    first: usize,
    up_to: Vec<Sums>,
}

/// What the angular acceleration is at each reading of a stretch, rad/s2: the slope of a line through
/// five readings, fewer at the ends of the trace.
pub fn angular_accelerations(t_s: &[f64], rate_rad_s: &[DVec3]) -> Vec<DVec3> {
    let last = t_s.len() - 1;
    let slope = |i: usize| {
        let (from, to) = (i.saturating_sub(2), (i + 2).min(last));
        let count = (to - from + 1) as f64;
        let mean_s = t_s[from..=to].iter().sum::<f64>() / count;
        let (mut sum, mut square) = (DVec3::ZERO, 0.0);
        for j in from..=to {
            let from_mean_s = t_s[j] - mean_s;
            sum += rate_rad_s[j] * from_mean_s;
            square += from_mean_s * from_mean_s;
        }
        sum / square
    };
    (0..=last).map(slope).collect()
}

/// The matrix that takes a lever arm to the acceleration: `[a]x + [w]x [w]x`.
pub fn of_lever_arm(rate_rad_s: DVec3, change_rad_s2: DVec3) -> DMat3 {
    let (w, a) = (rate_rad_s, change_rad_s2);
    let column = |e: DVec3| a.cross(e) + w * w.dot(e) - e * w.length_squared();
    DMat3::from_cols(column(DVec3::X), column(DVec3::Y), column(DVec3::Z))
}

/// The axis of the turning, or none where there is hardly any.
pub fn axis_of(rate_rad_s: DVec3) -> Option<DVec3> {
    (rate_rad_s.length() > TURNING_RAD_S).then(|| rate_rad_s.normalize())
}

impl Sums {
    fn of(rate_rad_s: DVec3, change_rad_s2: DVec3, reading_m_s2: DVec3) -> Self {
        let of_arm = of_lever_arm(rate_rad_s, change_rad_s2);
        let along = 1.0 / (ALONG_M_S2 * ALONG_M_S2);
        let passed_m_s2 = ALONG_M_S2 + WANDERS_M * rate_rad_s.length_squared();
        let across = 1.0 / (passed_m_s2 * passed_m_s2);
        let weighed = |v: DVec3| match axis_of(rate_rad_s) {
            Some(axis) => v * across + axis * (axis.dot(v) * (along - across)),
            None => v * along,
        };
        let [x, y, z] = [of_arm.x_axis, of_arm.y_axis, of_arm.z_axis];
        let [wx, wy, wz] = [x, y, z].map(weighed);
        let force = weighed(reading_m_s2);
        Self {
            normal: [
                x.dot(wx),
                x.dot(wy),
                x.dot(wz),
                y.dot(wy),
                y.dot(wz),
                z.dot(wz),
            ],
            right: DVec3::new(x.dot(force), y.dot(force), z.dot(force)),
            square: reading_m_s2.dot(force),
            count: 1.0,
        }
    }

    fn plus(&self, other: &Self, sign: f64) -> Self {
        let mut normal = self.normal;
        for (mine, more) in normal.iter_mut().zip(other.normal) {
            *mine += sign * more;
        }
        Self {
            normal,
            right: self.right + other.right * sign,
            square: self.square + sign * other.square,
            count: self.count + sign * other.count,
        }
    }

    fn matrix(&self) -> DMat3 {
        let [xx, xy, xz, yy, yz, zz] = self.normal;
        DMat3::from_cols(
            DVec3::new(xx, xy, xz),
            DVec3::new(xy, yy, yz),
            DVec3::new(xz, yz, zz),
        )
    }

    /// The lever arm that explains most.
    fn arm_m(&self) -> DVec3 {
        let known = 1.0 / (FAR_M * FAR_M);
        (self.matrix() + DMat3::from_diagonal(DVec3::splat(known))).inverse() * self.right
    }

    /// What an arm leaves over.
    fn misfit(&self, r_m: DVec3) -> f64 {
        let left = self.square - 2.0 * r_m.dot(self.right) + r_m.dot(self.matrix() * r_m);
        left.max(0.0) / (3.0 * self.count.max(1.0))
    }
}

impl LeverArms {
    /// Of a stretch of readings. Those at an end of either sensor say nothing.
    pub fn new(
        signals: &Signals,
        (first, end): (usize, usize),
        rate_ends: &Ends,
        acceleration_ends: &Ends,
    ) -> Self {
        let range = first..end;
        let changes = angular_accelerations(
            &signals.t_s[range.clone()],
            &signals.rate_rad_s[range.clone()],
        );
        let mut sum = Sums::default();
        let mut up_to = vec![sum];
        for (i, change_rad_s2) in range.zip(changes) {
            let (rate_rad_s, reading_m_s2) = (signals.rate_rad_s[i], signals.acceleration_m_s2[i]);
            if !rate_ends.is_reached(rate_rad_s) && !acceleration_ends.is_reached(reading_m_s2) {
                sum = sum.plus(&Sums::of(rate_rad_s, change_rad_s2, reading_m_s2), 1.0);
            }
            up_to.push(sum);
        }
        Self { first, up_to }
    }

    fn between(&self, from: usize, to: usize) -> Sums {
        self.up_to[to - self.first].plus(&self.up_to[from - self.first], -1.0)
    }

    /// The lever arm that explains most of these readings.
    pub fn over(&self, from: usize, to: usize) -> LeverArm {
        let sums = self.between(from, to);
        let r_m = sums.arm_m();
        LeverArm {
            r_m,
            misfit: sums.misfit(r_m),
        }
    }

    /// What an arm leaves over in other readings.
    pub fn misfit(&self, from: usize, to: usize, r_m: DVec3) -> f64 {
        self.between(from, to).misfit(r_m)
    }

    /// How many of these readings say something.
    pub fn count(&self, from: usize, to: usize) -> f64 {
        self.between(from, to).count
    }
}
