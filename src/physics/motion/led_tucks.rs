//! How far in arms and legs are led by hand while the body is in the air, and how the body follows.
//!
//! A hand says how far in arms and legs are to be, and from when on; every joint then follows by
//! minimum-jerk movements that all take the same time. Where the hand goes on before a movement is over, the
//! next one is added to it: the superposition scheme that was found for reaching to a target that jumps
//! (Henis & Flash 1991, NIPS 4:619; abstract read). So the way is what the hand did, averaged over the time
//! of one movement: it never leaves the range, its acceleration is continuous, and however fast the hand is,
//! no joint is faster than in one such movement over its whole way.

use std::fmt;
use std::sync::Arc;

use serde::{Deserialize, Serialize, Serializer};

use crate::motion::minimum_jerk::{minimum_jerk, minimum_jerk_acceleration};

/// From a time on arms and legs are to be as far in as that: 0 all out, 1 as tight as this body can get.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Knot {
    /// After take-off.
    pub time_s: f64,
    pub arms: f64,
    pub legs: f64,
}

/// All of it, in the order of time.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(try_from = "Vec<Knot>")]
pub struct LedTucks(Arc<[Knot]>);

/// What is led on its own.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Limb {
    Arms,
    Legs,
}

/// Most knots that may be.
pub const MOST_KNOTS: usize = 200;

/// Latest knot, s after take-off: no jump that can be set is in the air for longer.
pub const LATEST_S: f64 = 2.0;

/// Why knots are none that a body can be led by; places count from 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum KnotsError {
    /// None at all, or too many.
    Count(usize),
    OutOfRange {
        place: usize,
        key: &'static str,
        value: f64,
        most: f64,
    },
    /// A time that is not after the one before.
    OutOfOrder { place: usize, time_s: f64 },
}

impl fmt::Display for KnotsError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Count(count) => write!(f, "{count} knots: there have to be 1 to {MOST_KNOTS}"),
            Self::OutOfRange {
                place,
                key,
                value,
                most,
            } => write!(f, "{key} = {value} of knot {place} is not from 0 to {most}"),
            Self::OutOfOrder { place, time_s } => {
                write!(
                    f,
                    "time_s = {time_s} of knot {place} is not after the one before"
                )
            }
        }
    }
}

impl std::error::Error for KnotsError {}

impl Limb {
    pub const ALL: [Self; 2] = [Self::Arms, Self::Legs];

    pub(super) const fn of(self, knot: &Knot) -> f64 {
        match self {
            Self::Arms => knot.arms,
            Self::Legs => knot.legs,
        }
    }
}

impl Knot {
    /// Nothing is led yet.
    pub const OUT: Self = Self {
        time_s: 0.0,
        arms: 0.0,
        legs: 0.0,
    };

    /// Whether it leads to the same as another one.
    pub fn leads_like(&self, other: &Self) -> bool {
        (self.arms, self.legs) == (other.arms, other.legs)
    }

    fn pulls_in_from(&self, before: &Self) -> bool {
        self.arms > before.arms || self.legs > before.legs
    }
}

impl LedTucks {
    pub fn new(knots: &[Knot]) -> Result<Self, KnotsError> {
        if !(1..=MOST_KNOTS).contains(&knots.len()) {
            return Err(KnotsError::Count(knots.len()));
        }
        for (i, knot) in knots.iter().enumerate() {
            let place = i + 1;
            for (key, value, most) in [
                ("time_s", knot.time_s, LATEST_S),
                ("arms", knot.arms, 1.0),
                ("legs", knot.legs, 1.0),
            ] {
                if !(0.0..=most).contains(&value) {
                    return Err(KnotsError::OutOfRange {
                        place,
                        key,
                        value,
                        most,
                    });
                }
            }
            if i > 0 && knot.time_s <= knots[i - 1].time_s {
                let time_s = knot.time_s;
                return Err(KnotsError::OutOfOrder { place, time_s });
            }
        }
        // Zero has one sign.
        let plain = |knot: &Knot| Knot {
            time_s: knot.time_s + 0.0,
            arms: knot.arms + 0.0,
            legs: knot.legs + 0.0,
        };
        Ok(Self(knots.iter().map(plain).collect()))
    }

    /// Nothing is ever led: the body stays as it left the ice.
    pub fn nothing() -> Self {
        Self([Knot::OUT].into())
    }

    pub fn knots(&self) -> &[Knot] {
        &self.0
    }

    /// From the first knot to the last one, s.
    pub fn span_s(&self) -> [f64; 2] {
        [self.0[0].time_s, self.0[self.0.len() - 1].time_s]
    }

    /// When something is led in for the first time, s; none where nothing ever is.
    pub fn first_pull_s(&self) -> Option<f64> {
        self.pulls().next().map(|i| self.0[i].time_s)
    }

    /// The same for the last time.
    pub fn last_pull_s(&self) -> Option<f64> {
        self.pulls().last().map(|i| self.0[i].time_s)
    }

    /// When arms or legs begin to be let out for the landing, s: from then on nothing is led in any more. None
    /// where nothing is let out.
    pub fn open_s(&self) -> Option<f64> {
        self.letting_out().first().map(|knot| knot.time_s)
    }

    /// The farthest in that arms and legs are led.
    pub fn most_in(&self) -> [f64; 2] {
        Limb::ALL.map(|limb| self.0.iter().map(|knot| limb.of(knot)).fold(0.0, f64::max))
    }

    /// Arms and legs are led in as far as that at a time, which may lie before take-off, and held there; then,
    /// if wanted, let out for the landing as here.
    pub fn held_in(&self, from_s: f64, [arms, legs]: [f64; 2], opens: bool) -> Self {
        let held = Knot {
            time_s: from_s,
            arms,
            legs,
        };
        let after = if opens { self.letting_out() } else { &[] };
        Self([&[held], after].concat().into())
    }

    fn before(&self, i: usize) -> Knot {
        i.checked_sub(1).map_or(Knot::OUT, |before| self.0[before])
    }

    /// The knots that lead something in.
    fn pulls(&self) -> impl Iterator<Item = usize> {
        (0..self.0.len()).filter(|&i| self.0[i].pulls_in_from(&self.before(i)))
    }

    /// The knots that let out for the landing.
    fn letting_out(&self) -> &[Knot] {
        let after = self.pulls().last().map_or(0, |i| i + 1);
        let first = (after..self.0.len()).find(|&i| !self.0[i].leads_like(&self.before(i)));
        &self.0[first.unwrap_or(self.0.len())..]
    }
}

impl TryFrom<Vec<Knot>> for LedTucks {
    type Error = KnotsError;

    fn try_from(knots: Vec<Knot>) -> Result<Self, KnotsError> {
        Self::new(&knots)
    }
}

impl Serialize for LedTucks {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_seq(self.knots())
    }
}

/// How far in a limb is that follows these knots by movements of this time, with its first two derivatives.
pub fn tuck_at(knots: &[Knot], limb: Limb, t_s: f64, movement_s: f64) -> [f64; 3] {
    let (mut tuck, mut before) = ([0.0; 3], 0.0);
    for knot in knots.iter().take_while(|knot| knot.time_s < t_s) {
        let way = limb.of(knot) - before;
        for (sum, part) in tuck.iter_mut().zip(blend(t_s, knot.time_s, movement_s)) {
            *sum += way * part;
        }
        before = limb.of(knot);
    }
    tuck
}

/// The shares of the postures at take-off and at landing in a limb, with their first two derivatives; the rest
/// is the tightest posture.
///
/// Led in for the first time a limb comes from where it was at take-off. When that movement is over, what is
/// still out, or is let out again, goes over to where it has to be at the landing, by one movement more.
pub fn shares_at(knots: &[Knot], limb: Limb, t_s: f64, movement_s: f64) -> [[f64; 2]; 3] {
    let [tuck, rate, change] = tuck_at(knots, limb, t_s, movement_s);
    let out = [1.0 - tuck, -rate, -change];
    let first = knots
        .iter()
        .find(|knot| !knot.leads_like(&Knot::OUT))
        .map_or(f64::INFINITY, |knot| knot.time_s);
    let over = if t_s > first + movement_s {
        blend(t_s, first + movement_s, movement_s)
    } else {
        [0.0; 3]
    };
    let landing = [
        out[0] * over[0],
        out[1] * over[0] + out[0] * over[1],
        out[2] * over[0] + 2.0 * out[1] * over[1] + out[0] * over[2],
    ];
    std::array::from_fn(|i| [out[i] - landing[i], landing[i]])
}

/// Progress of a movement, with its first two derivatives.
fn blend(t_s: f64, start_s: f64, time_s: f64) -> [f64; 3] {
    let (progress, rate) = minimum_jerk(t_s, start_s, time_s);
    let change = minimum_jerk_acceleration(t_s, start_s, time_s);
    [progress, rate, change]
}
