//! Loads over a flight: torques and powers of the joints, forces on the hands.
//!
//! By inverse dynamics of the flown motion at the flight's own steps; worked out only on
//! request.

use glam::DVec3;
use wide::f64x2;

use crate::body::model::Segment;
use crate::dynamics::inverse::{JointLoad, Loads, NewtonEuler};
use crate::flight::planned::Flight;
use crate::flight::sample::FlightSample;
use crate::math::peak::{self, Height};
use crate::motion::joint_motion::{JointMotion, JointState};

/// Joints that are reported together: the left and the right one; of the spine the waist and the chest.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[repr(usize)]
pub enum JointGroup {
    Shoulder,
    Elbow,
    Hip,
    Knee,
    Spine,
}

/// How many groups there are.
pub const GROUPS: usize = 5;

impl JointGroup {
    pub const ALL: [Self; GROUPS] = [
        Self::Shoulder,
        Self::Elbow,
        Self::Hip,
        Self::Knee,
        Self::Spine,
    ];

    /// The segments whose joints towards the pelvis these are.
    pub const fn segments(self) -> [Segment; 2] {
        match self {
            Self::Shoulder => [Segment::LeftUpperArm, Segment::RightUpperArm],
            Self::Elbow => [Segment::LeftForearm, Segment::RightForearm],
            Self::Hip => [Segment::LeftThigh, Segment::RightThigh],
            Self::Knee => [Segment::LeftShank, Segment::RightShank],
            Self::Spine => [Segment::MiddleTrunk, Segment::UpperTrunk],
        }
    }
}

/// One instant of the curves; vectors in pelvis axes.
#[derive(Debug, Clone, Copy)]
pub struct EffortSample {
    pub t_s: f64,
    /// A movement begins or ends: the curves may have a corner.
    corner: bool,
    /// Net torque on both joints of each group, N m.
    torque_n_m: [[DVec3; 2]; GROUPS],
    /// Power of these torques, W.
    joint_power_w: [[f64; 2]; GROUPS],
    /// Power of all joints of the body together, W.
    pub power_w: f64,
    /// Force of the left and the right forearm on its hand with what it holds, N.
    hand_n: [DVec3; 2],
    /// Acceleration of what the left and the right hand hold relative to free fall, m/s².
    grip_m_s2: [DVec3; 2],
}

/// The largest or the least of a curve.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Peak {
    pub value: f64,
    pub t_s: f64,
}

/// The same of one of the joints of a group.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct JointPeak {
    pub value: f64,
    pub t_s: f64,
    /// Whose joint towards the pelvis it is.
    pub segment: Segment,
}

/// Loads of a part of the flight on a group of joints: on the one with the largest.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Demand {
    /// N m.
    pub torque: JointPeak,
    /// Largest power, of muscles that shorten, W.
    pub power: JointPeak,
    /// Least power, below zero where muscles give way, W.
    pub least_power: JointPeak,
}

/// Loads of a whole flight.
#[derive(Debug, Clone)]
pub struct Efforts {
    pub samples: Vec<EffortSample>,
    /// From take-off until the opening begins, by group.
    pub closing: [Demand; GROUPS],
    /// From there to touch-down.
    pub opening: [Demand; GROUPS],
    /// Of all joints together, W.
    pub power: Peak,
    pub least_power: Peak,
    /// Force of a forearm on its hand with what it holds, the larger of both hands, N.
    pub hand_force: Peak,
    /// Force of a hand on the weight alone that it holds, the larger of both hands, N; 0 when it holds
    /// none.
    pub grip_force: Peak,
    /// The same for each kilogram held, whether anything is or not, m/s².
    pub grip_m_s2: f64,
}

/// Of so many steps of the flight one is sampled: a blend has at least 28.
const STRIDE: usize = 2;

/// The same where a posture is held: only the body's wobble changes anything there.
const HELD_STRIDE: usize = 4;

/// Spans with fewer steps are sampled at each: else there would not be as many samples in them as the
/// polynomial for a peak takes.
const FEW_STEPS: usize = STRIDE * (peak::POINTS - 1);

/// A side whose largest sample has a square of less than this part of the other side's is the smaller
/// one between the samples, too.
const CLEARLY_LESS: f64 = 0.9;

/// Times that are no further apart are the same, s.
const SAME_S: f64 = 1e-9;

impl Flight {
    /// How the joints move at a time in flight.
    pub fn joint_state_at(&self, t_s: f64) -> JointState {
        self.motion().state_at(t_s)
    }

    /// The loads on the joints at any time, held at the flight's ends.
    pub fn loads_at(&self, t_s: f64) -> Loads {
        let at = self.at(t_s);
        let motion = self.joint_state_at(at.t_s);
        Loads::new(&self.table.tree, &motion, at.own_rate_rad_s)
    }
}

impl EffortSample {
    fn new(t_s: f64, corner: bool, loads: &Loads) -> Self {
        let [hand, elbow, shoulder] = &loads.arms;
        let [_, knee, hip] = &loads.legs;
        let [_, chest, waist] = &loads.trunk;
        let sides = |pair: &JointLoad<f64x2>| pair.torque_n_m.apart().map(DVec3::from);
        let spine = [waist, chest];
        Self {
            t_s,
            corner,
            torque_n_m: [
                sides(shoulder),
                sides(elbow),
                sides(hip),
                sides(knee),
                spine.map(|load| load.torque_n_m.into()),
            ],
            joint_power_w: [
                shoulder.power_w.to_array(),
                elbow.power_w.to_array(),
                hip.power_w.to_array(),
                knee.power_w.to_array(),
                spine.map(|load| load.power_w),
            ],
            power_w: loads.power_w(),
            hand_n: hand.force_n.apart().map(DVec3::from),
            grip_m_s2: loads.grip_m_s2.apart().map(DVec3::from),
        }
    }

    /// The larger net torque on the joints of a group, N m.
    pub fn torque_n_m(&self, group: JointGroup) -> f64 {
        let [one, other] = self.torque_n_m[group as usize];
        one.length().max(other.length())
    }
}

impl Efforts {
    pub fn new(flight: &Flight) -> Self {
        let samples = samples(flight);
        let opens = samples
            .iter()
            .position(|sample| sample.t_s >= flight.open_s - SAME_S)
            .unwrap_or(samples.len() - 1);
        let (closing, opening) = (&samples[..=opens], &samples[opens..]);
        let all = &samples[..];
        let size = |of: fn(&EffortSample) -> [DVec3; 2]| largest_of_two(all, of).0;
        let grip = size(|sample| sample.grip_m_s2);
        let held_kg = flight.table.body.spec.hand_mass_kg;
        Self {
            closing: JointGroup::ALL.map(|group| Demand::of(closing, group)),
            opening: JointGroup::ALL.map(|group| Demand::of(opening, group)),
            power: highest(all, |sample| sample.power_w),
            least_power: lowest(all, |sample| sample.power_w),
            hand_force: size(|sample| sample.hand_n),
            grip_force: Peak {
                value: held_kg * grip.value,
                ..grip
            },
            grip_m_s2: grip.value,
            samples,
        }
    }
}

impl Demand {
    fn of(samples: &[EffortSample], group: JointGroup) -> Self {
        let i = group as usize;
        let joint = |(Peak { value, t_s }, side): (Peak, usize)| JointPeak {
            value,
            t_s,
            segment: group.segments()[side],
        };
        let power = |sign: f64| {
            let of =
                |side: usize| move |sample: &EffortSample| sign * sample.joint_power_w[i][side];
            let most = |side| samples.iter().map(of(side)).fold(f64::MIN, f64::max);
            let side = usize::from(most(1) > most(0));
            let Peak { value, t_s } = highest(samples, of(side));
            let value = sign * value;
            joint((Peak { value, t_s }, side))
        };
        Self {
            torque: joint(largest_of_two(samples, |sample| sample.torque_n_m[i])),
            power: power(1.0),
            least_power: power(-1.0),
        }
    }
}

/// The samples of a flight: at every other of its steps, and wherever a movement begins or ends.
fn samples(flight: &Flight) -> Vec<EffortSample> {
    let flown = &flight.samples;
    let corners_s: Vec<f64> = corners_s(flight).collect();
    let mut samples = Vec::with_capacity(flown.len() + corners_s.len());
    let loads = |at: &FlightSample| {
        let motion = flight.joint_state_at(at.t_s);
        Loads::new(&flight.table.tree, &motion, at.own_rate_rad_s)
    };
    let start = flight.takeoff();
    samples.push(EffortSample::new(0.0, true, &loads(start)));
    let (mut next, mut begun_s) = (1, 0.0);
    for corner_s in corners_s {
        // Every movement begins and ends at a corner: what is still half-way is held all along.
        let motion = flight.joint_state_at(0.5 * (begun_s + corner_s));
        begun_s = corner_s;
        let end = flown.partition_point(|at| at.t_s < corner_s - SAME_S);
        let steps = end.saturating_sub(next) + 1;
        let stride = match (steps < FEW_STEPS, motion.is_still()) {
            (true, _) => 1,
            (false, true) => HELD_STRIDE,
            (false, false) => STRIDE,
        };
        // The steps next to the corners count among them: a polynomial strays most at its ends.
        let inside = flown[next.min(end)..end].iter().enumerate();
        let inside = inside.filter(|(i, _)| *i == 0 || (i + 1) % stride == 0 || i + 2 == steps);
        let inside = inside.map(|(_, at)| at);
        if motion.is_still() {
            let posture = NewtonEuler::new(&flight.table.tree, &motion, DVec3::ZERO);
            for at in inside {
                let loads = posture.held(at.own_rate_rad_s).loads();
                samples.push(EffortSample::new(at.t_s, false, &loads));
            }
        } else {
            for at in inside {
                samples.push(EffortSample::new(at.t_s, false, &loads(at)));
            }
        }
        let at = match flown.get(end) {
            Some(at) if at.t_s < corner_s + SAME_S => {
                next = end + 1;
                *at
            }
            _ => {
                next = end;
                flight.at(corner_s)
            }
        };
        samples.push(EffortSample::new(at.t_s, true, &loads(&at)));
    }
    samples
}

/// When movements begin or end in flight, and the touch-down, in their order, s.
fn corners_s(flight: &Flight) -> impl Iterator<Item = f64> {
    let end_s = flight.touchdown_s;
    let mut corners = vec![end_s];
    corners.extend(flight.motion().corners_s());
    for i in 1..corners.len() {
        for j in (1..=i).rev() {
            if corners[j] < corners[j - 1] {
                corners.swap(j, j - 1);
            }
        }
    }
    let mut last_s = 0.0;
    corners.into_iter().filter(move |&corner_s| {
        let is_end = corner_s == end_s;
        let new = corner_s > last_s + SAME_S && (is_end || corner_s < end_s - SAME_S);
        if new {
            last_s = corner_s;
        }
        new
    })
}

/// The largest of two vectors, and which of both it is.
fn largest_of_two(
    samples: &[EffortSample],
    of: impl Fn(&EffortSample) -> [DVec3; 2],
) -> (Peak, usize) {
    let size = |sample: &EffortSample| of(sample).map(DVec3::length_squared);
    let mut largest = [0; 2];
    let mut sizes = size(&samples[0]);
    for (i, sample) in samples.iter().enumerate().skip(1) {
        let own = size(sample);
        for side in [0, 1] {
            if own[side] > sizes[side] {
                (largest[side], sizes[side]) = (i, own[side]);
            }
        }
    }
    let top = |side: usize| {
        let of = |sample: &EffortSample| of(sample)[side];
        let (t_s, v) = about(samples, of, largest[side], peak::half_square);
        let value = v.length();
        (Peak { value, t_s }, side)
    };
    let first = usize::from(sizes[1] > sizes[0]);
    let best = top(first);
    if sizes[1 - first] < CLEARLY_LESS * sizes[first] {
        return best;
    }
    let other = top(1 - first);
    if other.0.value > best.0.value {
        other
    } else {
        best
    }
}

/// The highest point of a curve.
fn highest(samples: &[EffortSample], of: impl Fn(&EffortSample) -> f64) -> Peak {
    let mut largest = 0;
    let mut value = of(&samples[0]);
    for (i, sample) in samples.iter().enumerate().skip(1) {
        let own = of(sample);
        if own > value {
            (largest, value) = (i, own);
        }
    }
    let of = |sample: &EffortSample| DVec3::X * of(sample);
    let (t_s, v) = about(samples, of, largest, peak::first);
    Peak { value: v.x, t_s }
}

/// The lowest one.
fn lowest(samples: &[EffortSample], of: impl Fn(&EffortSample) -> f64) -> Peak {
    let Peak { value, t_s } = highest(samples, |sample| -of(sample));
    Peak { value: -value, t_s }
}

/// The top of a curve about its largest sample.
fn about(
    samples: &[EffortSample],
    of: impl Fn(&EffortSample) -> DVec3,
    largest: usize,
    height: Height,
) -> (f64, DVec3) {
    let top = |first: usize, last: usize| {
        let point = |i: usize| (samples[first + i].t_s, of(&samples[first + i]));
        peak::top(point, last - first + 1, largest - first, height)
    };
    let before = samples[..largest].iter().rposition(|sample| sample.corner);
    let after = samples[largest..]
        .iter()
        .skip(1)
        .position(|sample| sample.corner);
    let before = before.unwrap_or(largest);
    let after = after.map_or(largest, |i| largest + 1 + i);
    if !samples[largest].corner {
        return top(before, after);
    }
    // At a corner the curve goes on otherwise on its other side.
    let [one, other] = [top(before, largest), top(largest, after)];
    let high = |v: DVec3| height([v, DVec3::ZERO, DVec3::ZERO])[0];
    if high(other.1) > high(one.1) {
        other
    } else {
        one
    }
}
