//! How the camera turns after the jumper: what a fixed point of the background does in the picture.

use turns_aloft_attempt::film::{Point, PointOf};
use turns_aloft_physics::order::by_number;

/// The background's way across the picture since the first mark of it; none where it was not marked.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Pan {
    /// Times and places in their order.
    marks: Vec<(f64, [f64; 2])>,
}

impl Pan {
    pub fn of(points: &[Point]) -> Self {
        let background = points
            .iter()
            .filter(|point| point.of == PointOf::Background);
        let marks = background.map(|point| (point.t_s, point.at_px)).collect();
        let mut marks = by_number(marks, |(t_s, _)| *t_s);
        // Of two marks in one frame the later one made counts.
        marks.reverse();
        marks.dedup_by_key(|(t_s, _)| *t_s);
        marks.reverse();
        Self { marks }
    }

    /// On straight lines between the marks and beyond them.
    pub fn at_px(&self, t_s: f64) -> [f64; 2] {
        let [first, .., last] = &self.marks[..] else {
            return [0.0; 2];
        };
        let after = self
            .marks
            .partition_point(|(at_s, _)| *at_s <= t_s)
            .clamp(1, self.marks.len() - 1);
        let ((from_s, from), (to_s, to)) = (self.marks[after - 1], self.marks[after]);
        // Not for longer than the marks last: nobody knows what the camera does then.
        let lasts_s = last.0 - first.0;
        let t_s = t_s.clamp(first.0 - lasts_s, last.0 + lasts_s);
        let part = (t_s - from_s) / (to_s - from_s);
        [0, 1].map(|i| from[i] + part * (to[i] - from[i]) - first.1[i])
    }
}
