//! A plan whose arms and legs are led by hand: where every joint is, and how it moves.

use glam::DVec3;

use crate::body::model::Segment;
use crate::body::posture::{JointAccelerations, JointRates, Posture, STILL};
use crate::math::rotation::{acceleration_of, exp, rate_of};
use crate::motion::led_tucks::{Knot, Limb, shares_at, tuck_at};
use crate::motion::minimum_jerk::PEAK_RATE;
use crate::motion::plan::Plan;

impl Plan {
    /// Posture and joint rates of a body that is led by these knots.
    ///
    /// From its tightest rotation a joint turns by `-a c + l o`, with the rotation vectors c and o of closing
    /// and opening and the shares a and l of the postures at take-off and landing.
    pub fn led_at(&self, knots: &[Knot], t_s: f64) -> (Posture, JointRates) {
        let mut moving = (Posture::STANDING, STILL);
        let (posture, rates) = &mut moving;
        self.each_led(knots, t_s, |i, [u, u_rate, _]| {
            posture.joints[i] = self.air.joints[i] * exp(u);
            rates[i] = rate_of(u, u_rate);
        });
        moving
    }

    /// How these rates change.
    pub fn led_accelerations_at(&self, knots: &[Knot], t_s: f64) -> JointAccelerations {
        let mut accelerations = STILL;
        self.each_led(knots, t_s, |i, [u, u_rate, u_change]| {
            accelerations[i] = acceleration_of(u, u_rate, u_change);
        });
        accelerations
    }

    /// How far in arms and legs are that are led by these knots.
    pub fn led_tucks_at(&self, knots: &[Knot], t_s: f64) -> [f64; 2] {
        Limb::ALL.map(|limb| tuck_at(knots, limb, t_s, self.spec.close_time_s)[0])
    }

    /// The rotation vector of every joint that is not straight from its tightest rotation, with its first
    /// two derivatives.
    fn each_led(&self, knots: &[Knot], t_s: f64, mut each: impl FnMut(usize, [DVec3; 3])) {
        let (time_s, lag_s) = (self.spec.close_time_s, self.spec.arm_lag_s);
        let [arms, legs] = Limb::ALL.map(|limb| shares_at(knots, limb, t_s, time_s));
        let late = if lag_s == 0.0 {
            arms
        } else {
            shares_at(knots, Limb::Arms, t_s - lag_s, time_s)
        };
        for (i, joint) in self.blends.iter().enumerate() {
            if joint.straight {
                continue;
            }
            let shares = match (joint.limb, joint.late) {
                (Limb::Arms, false) => arms,
                (Limb::Arms, true) => late,
                (Limb::Legs, _) => legs,
            };
            let (closing, opening) = (joint.closing.vector_rad(), joint.opening.vector_rad());
            let vector = |[takeoff, landing]: [f64; 2]| opening * landing - closing * takeoff;
            each(i, shares.map(vector));
        }
    }

    /// What these knots make a joint do, one movement after the other: when each begins, s, and how much farther in
    /// it leads, as a share of the whole way.
    pub fn led_steps(&self, segment: Segment, knots: &[Knot]) -> impl Iterator<Item = (f64, f64)> {
        let joint = &self.blends[segment as usize];
        let lag_s = if joint.late { self.spec.arm_lag_s } else { 0.0 };
        let (limb, mut before) = (joint.limb, 0.0);
        knots.iter().map(move |knot| {
            let way = limb.of(knot) - before;
            before += way;
            (knot.time_s + lag_s, way)
        })
    }

    /// The fastest that a joint of a led body can turn, whatever the hand does, rad/s: the longer of its ways in
    /// and out, and the way from where it is at take-off to where it is at landing, both at the peak rate of a
    /// minimum-jerk movement that takes the closing time.
    pub fn led_rate_limit_rad_s(&self, segment: Segment) -> f64 {
        let joint = &self.blends[segment as usize];
        let (closing, opening) = (joint.closing.vector_rad(), joint.opening.vector_rad());
        let in_or_out_rad = closing.length().max(opening.length());
        let over_rad = (closing + opening).length();
        (in_or_out_rad + over_rad) * PEAK_RATE / self.spec.close_time_s
    }
}
