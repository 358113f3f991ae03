//! Values over a square, known at the nodes of an even grid.

/// Values at the nodes of a grid over a square with sides from 0 to 1.
#[derive(Debug, Clone, PartialEq)]
pub struct Field {
    columns: usize,
    /// Row by row, along the first coordinate.
    values: Vec<f64>,
}

impl Field {
    /// So many columns of nodes, two at least; as many rows as the values fill, two at least. All
    /// values finite.
    pub(crate) fn new(columns: usize, values: Vec<f64>) -> Self {
        debug_assert!(columns >= 2 && values.len() >= 2 * columns);
        debug_assert!(values.len().is_multiple_of(columns));
        Self { columns, values }
    }

    /// Of a function of both coordinates, each from 0 to 1; at least two columns and two rows.
    pub fn of(columns: usize, rows: usize, value: impl Fn(f64, f64) -> f64) -> Self {
        let part = |i: usize, nodes: usize| i as f64 / (nodes - 1) as f64;
        let nodes = (0..rows).flat_map(|j| (0..columns).map(move |i| (i, j)));
        let values = nodes.map(|(i, j)| value(part(i, columns), part(j, rows)));
        Self::new(columns, values.collect())
    }

    pub const fn columns(&self) -> usize {
        self.columns
    }

    pub const fn rows(&self) -> usize {
        self.values.len() / self.columns
    }

    pub fn node(&self, column: usize, row: usize) -> f64 {
        self.values[row * self.columns + column]
    }

    /// The least and the most of all nodes.
    pub fn range(&self) -> [f64; 2] {
        let ends = [f64::INFINITY, f64::NEG_INFINITY];
        self.values.iter().fold(ends, |[least, most], &value| {
            [least.min(value), most.max(value)]
        })
    }

    /// Between the nodes, bilinear; both coordinates are held inside 0 to 1. The node's own value at
    /// a node.
    pub fn at(&self, u: f64, v: f64) -> f64 {
        let (i, x) = cell(u, self.columns);
        let (j, y) = cell(v, self.rows());
        let along = |j| between(self.node(i, j), self.node(i + 1, j), x);
        between(along(j), along(j + 1), y)
    }
}

/// The cell of a coordinate and how far across the cell it is, 0 to 1.
fn cell(part: f64, nodes: usize) -> (usize, f64) {
    let place = part.clamp(0.0, 1.0) * (nodes - 1) as f64;
    let i = (place as usize).min(nodes - 2);
    (i, place - i as f64)
}

/// Exact at both ends.
pub(super) fn between(from: f64, to: f64, part: f64) -> f64 {
    from * (1.0 - part) + to * part
}
