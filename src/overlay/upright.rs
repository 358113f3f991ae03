//! How large the figure is in the picture and how it stands: from marks of one frame against each other,
//! whatever the jumper and the camera do between the frames.

use crate::marks::Mark;

/// From metres across the line of sight to pixels: (right, up) to (x, y) by
/// `[along, -across; -across, -along]`, a scale with a turn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Upright {
    /// The scale times cosine and sine of the roll, pixels a metre.
    pub along: f64,
    pub across: f64,
    /// Standard deviation of the scale, as a share of it.
    pub sigma: f64,
}

/// Standard deviation of a mark, as a share of stature: some 3 cm. Our estimate: no published error of
/// points that are touched in a film of a jump was found.
pub const MARK_SIGMA: f64 = 0.02;

/// Marks of one frame have to be so far apart in all, as a share of stature, that the scale can be told.
const APART: f64 = 0.2;

impl Upright {
    /// From all frames with two marks or more; none where there are too few.
    pub fn of(marks: &[Mark], stature_m: f64) -> Option<Self> {
        let (mut along, mut across, mut square) = (0.0, 0.0, 0.0);
        for frame in marks.chunk_by(|one, other| one.since_s == other.since_s) {
            let count = frame.len() as f64;
            let mean = |value: fn(&Mark) -> f64| frame.iter().map(value).sum::<f64>() / count;
            let own = [mean(|mark| mark.own_m[0]), mean(|mark| mark.own_m[1])];
            let at = [mean(|mark| mark.at_px[0]), mean(|mark| mark.at_px[1])];
            for mark in frame {
                let [right, up] = [0, 1].map(|i| mark.own_m[i] - own[i]);
                let [x, y] = [0, 1].map(|i| mark.at_px[i] - at[i]);
                along += right * x - up * y;
                across += up * x + right * y;
                square += right * right + up * up;
            }
        }
        let least = APART * stature_m;
        if square < least * least {
            return None;
        }
        let upright = Self {
            along: along / square,
            across: across / square,
            sigma: MARK_SIGMA * stature_m / square.sqrt(),
        };
        (upright.scale_px_m() > 0.0).then_some(upright)
    }

    pub fn scale_px_m(&self) -> f64 {
        libm::hypot(self.along, self.across)
    }

    /// How far a way in the picture leads up, m.
    pub fn up_m(&self, [x, y]: [f64; 2]) -> f64 {
        (self.across * x - self.along * y) / (self.along * self.along + self.across * self.across)
    }
}
