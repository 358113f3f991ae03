//! Lines of one value in a field, by marching squares (Lorensen & Cline 1987, Computer Graphics
//! 21:163, in the plane).
//!
//! Written here because the crate for it (`contour`) closes every line along the border of the grid,
//! half a node outside, and these lines are to end at the border.

use crate::field::Field;

/// A line along which a field has one value.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    pub level: f64,
    /// Two or more, each from 0 to 1 along both sides of the field. The ends of an open line are on
    /// the border; a closed one ends where it begins.
    pub points: Vec<[f64; 2]>,
}

impl Field {
    /// All lines of a value. What is exactly as high counts as inside: a plateau has its line where
    /// it falls off.
    pub fn lines(&self, level: f64) -> Vec<Line> {
        let mut crossings = Crossings::of(self, level);
        let mut lines = Vec::new();
        // Open lines from their ends; what is left then is closed.
        for ends in [1, 2] {
            for edge in 0..crossings.next.len() {
                if crossings.left(edge) == ends {
                    lines.push(crossings.follow(edge));
                }
            }
        }
        let lines = lines.into_iter().map(|edges| {
            let mut points: Vec<_> = edges.iter().map(|&edge| point(self, level, edge)).collect();
            // Where the line passes through a node, several sides are crossed in one point.
            points.dedup();
            Line { level, points }
        });
        lines.filter(|line| line.points.len() > 1).collect()
    }

    /// The lines of every whole number.
    pub fn whole_lines(&self) -> Vec<Line> {
        let [least, most] = self.range();
        let whole = least.ceil() as i64..=most.floor() as i64;
        whole.flat_map(|level| self.lines(level as f64)).collect()
    }
}

/// The sides of the cells that a line crosses, and how it goes on from each. A side is twice the
/// number of the node at its beginning, one more if it runs along the second coordinate.
struct Crossings {
    next: Vec<[Option<usize>; 2]>,
}

impl Crossings {
    fn of(field: &Field, level: f64) -> Self {
        let (columns, rows) = (field.columns(), field.rows());
        let mut crossings = Self {
            next: vec![[None; 2]; 2 * columns * rows],
        };
        for j in 0..rows - 1 {
            for i in 0..columns - 1 {
                crossings.cross(field, level, i, j);
            }
        }
        crossings
    }

    fn cross(&mut self, field: &Field, level: f64, i: usize, j: usize) {
        // Round the cell: its corners, and the side from each to the next.
        let corners =
            [(i, j), (i + 1, j), (i + 1, j + 1), (i, j + 1)].map(|(i, j)| field.node(i, j));
        let inside = corners.map(|corner| corner >= level);
        let side = |i, j, up| 2 * (j * field.columns() + i) + usize::from(up);
        let sides = [
            side(i, j, false),
            side(i + 1, j, true),
            side(i, j + 1, false),
            side(i, j, true),
        ];
        let mut crossed = (0..4).filter(|&k| inside[k] != inside[(k + 1) % 4]);
        let Some(first) = crossed.next() else {
            return;
        };
        let Some(last) = crossed.next_back() else {
            return;
        };
        if crossed.next().is_none() {
            self.join(sides[first], sides[last]);
        } else {
            // A saddle: opposite corners belong together where the saddle point, at which the field
            // is level, lies on their side.
            let [a, b, c, d] = corners;
            let saddle = (a * c - b * d) / (a + c - b - d);
            let with_first = (saddle >= level) == inside[0];
            // Each of the two other corners is cut off on its own.
            let cut = if with_first { [1, 3] } else { [0, 2] };
            for corner in cut {
                self.join(sides[(corner + 3) % 4], sides[corner]);
            }
        }
    }

    fn join(&mut self, one: usize, other: usize) {
        for (from, to) in [(one, other), (other, one)] {
            let [first, second] = &mut self.next[from];
            let free = if first.is_none() { first } else { second };
            *free = Some(to);
        }
    }

    /// In how many directions a line leaves a side, as far as it has not been followed.
    fn left(&self, edge: usize) -> usize {
        self.next[edge].iter().flatten().count()
    }

    /// All sides of a line from one on, which is then forgotten.
    fn follow(&mut self, from: usize) -> Vec<usize> {
        let mut edges = vec![from];
        let mut edge = from;
        while let Some(to) = self.next[edge].iter_mut().find_map(Option::take) {
            let back = self.next[to].iter_mut().find(|next| **next == Some(edge));
            if let Some(back) = back {
                *back = None;
            }
            edges.push(to);
            edge = to;
        }
        edges
    }
}

/// Where a side is crossed.
fn point(field: &Field, level: f64, edge: usize) -> [f64; 2] {
    let (node, up) = (edge / 2, edge % 2);
    let (i, j) = (node % field.columns(), node / field.columns());
    let from = field.node(i, j);
    let to = field.node(i + 1 - up, j + up);
    let part = (level - from) / (to - from);
    let (x, y) = if up == 1 { (0.0, part) } else { (part, 0.0) };
    [
        (i as f64 + x) / (field.columns() - 1) as f64,
        (j as f64 + y) / (field.rows() - 1) as f64,
    ]
}
