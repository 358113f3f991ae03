//! How far two legs are apart from each other, for keeping one out of the other.

use glam::DVec3;

use crate::forms::{Form, Forms, foot, shank};
use crate::leg::Leg;
use crate::pose::FigurePose;
use turns_aloft_physics::body::{Body, Segment};

/// A straight line with a radius at either end, m.
#[derive(Debug, Clone, Copy)]
struct Limb {
    ends_m: [DVec3; 2],
    radii_m: [f64; 2],
}

/// What shank and foot of a leg are drawn with.
#[derive(Debug)]
pub struct LegForms {
    /// In the frame of the shank, and of the foot.
    shank: Vec<Limb>,
    foot: Vec<Limb>,
}

impl LegForms {
    pub fn of(body: &Body) -> Self {
        Self {
            shank: limbs(&shank(body, Segment::LeftShank)).collect(),
            foot: limbs(&foot(body)).collect(),
        }
    }

    /// How deep the shank or the foot of one leg is inside that of the other, m; negative is a gap.
    pub fn overlap_m(&self, pose: &FigurePose, one: Leg, other: Leg) -> f64 {
        let mut deepest_m = f64::NEG_INFINITY;
        for a in self.limbs(pose, one) {
            for b in self.limbs(pose, other) {
                if a.overlap_at_most_m(&b) > deepest_m {
                    deepest_m = deepest_m.max(a.overlap_m(&b));
                }
            }
        }
        deepest_m
    }

    /// In the world.
    fn limbs<'a>(&'a self, pose: &'a FigurePose, leg: Leg) -> impl Iterator<Item = Limb> + 'a {
        let placed = move |segment: Segment, limb: &Limb| Limb {
            ends_m: limb.ends_m.map(|end_m| pose.point_m(segment, end_m)),
            radii_m: limb.radii_m,
        };
        let of_foot = self.foot.iter().map(move |limb| placed(leg.foot, limb));
        let of_shank = self.shank.iter().map(move |limb| placed(leg.shank, limb));
        of_foot.chain(of_shank)
    }
}

/// Forms as limbs: balls and blocks along their longest axis, as thick as their second longest.
fn limbs(forms: &Forms) -> impl Iterator<Item = Limb> + '_ {
    forms.iter().map(|(form, _)| {
        let (centre_m, half_m) = match *form {
            Form::Limb { ends_m, radii_m } => {
                return Limb {
                    ends_m: ends_m.map(|end_m| end_m.as_dvec3()),
                    radii_m: radii_m.map(f64::from),
                };
            }
            Form::Ball { centre_m, radii_m } => (centre_m.as_dvec3(), radii_m.as_dvec3()),
            Form::Block { centre_m, half_m } => (centre_m.as_dvec3(), half_m.as_dvec3()),
        };
        let longest = half_m.max_position();
        let mut others_m = half_m;
        others_m[longest] = 0.0;
        let thick = others_m.max_element();
        let along = DVec3::AXES[longest] * (half_m[longest] - thick);
        Limb {
            ends_m: [centre_m - along, centre_m + along],
            radii_m: [thick; 2],
        }
    })
}

impl Limb {
    /// By balls that hold both.
    fn overlap_at_most_m(&self, other: &Self) -> f64 {
        let [one, other] = [self, other].map(|limb| {
            let [from, to] = limb.ends_m;
            let radius_m = limb.radii_m[0].max(limb.radii_m[1]);
            (0.5 * (from + to), 0.5 * from.distance(to) + radius_m)
        });
        one.1 + other.1 - one.0.distance(other.0)
    }

    /// Looked at in even points along this one.
    fn overlap_m(&self, other: &Self) -> f64 {
        const POINTS: u32 = 16;
        let radius = |of: &Self, part: f64| of.radii_m[0] + part * (of.radii_m[1] - of.radii_m[0]);
        let [from, to] = other.ends_m;
        let along = to - from;
        let overlaps = (0..=POINTS).map(|i| {
            let part = f64::from(i) / f64::from(POINTS);
            let at = self.ends_m[0].lerp(self.ends_m[1], part);
            // A ball has no length.
            let across = (at - from).dot(along) / along.length_squared().max(f64::MIN_POSITIVE);
            let across = across.clamp(0.0, 1.0);
            radius(self, part) + radius(other, across) - at.distance(from + along * across)
        });
        overlaps.fold(f64::NEG_INFINITY, f64::max)
    }
}
