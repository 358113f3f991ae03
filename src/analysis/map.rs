//! The turn map: turns at landing over two numbers of a jump, every node a real flight.
//!
//! Coarse first, then finer, a piece at a time, so that whoever shows it need not wait. What a node's
//! plan has in common with its neighbours' is tabulated once.

use std::sync::Arc;

use crate::field::{Field, between};
use crate::seen;
use turns_aloft_physics::order::by_number;
use turns_aloft_physics::table::PlanTable;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::parameter::Parameter;
use turns_aloft_scenario::setting::Refused;

/// Fewest and most nodes along an axis.
pub const NODES: [usize; 2] = [2, 201];

/// Spacing of the coarsest nodes flown first, in nodes.
const COARSEST: usize = 16;

/// Why an axis was refused, or two together.
#[derive(Debug, Clone, PartialEq)]
pub enum RefusedAxis {
    /// There is no such number.
    Unknown(String),
    /// One of its ends cannot be set.
    Value(Refused),
    /// Both ends are the same.
    OneValue { parameter: Parameter, value: f64 },
    /// Too few nodes, or too many.
    Nodes { parameter: Parameter, nodes: usize },
    /// The same number lies along both.
    Twice(Parameter),
    /// It has no part in a jump that was led by hand.
    NoPart(Parameter),
}

/// One of the two numbers: from where to where, at how many even nodes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Axis {
    parameter: Parameter,
    from: f64,
    to: f64,
    nodes: usize,
}

impl Axis {
    /// The number with a key, from the one to the other value.
    pub fn named(key: &str, from: f64, to: f64, nodes: usize) -> Result<Self, RefusedAxis> {
        let parameter = Parameter::named(key);
        let parameter = parameter.ok_or_else(|| RefusedAxis::Unknown(key.to_owned()))?;
        Self::new(parameter, from, to, nodes)
    }

    /// Two different values of a number's admissible range, in SI units.
    pub fn new(
        parameter: Parameter,
        from: f64,
        to: f64,
        nodes: usize,
    ) -> Result<Self, RefusedAxis> {
        for value in [from, to] {
            parameter.check(value).map_err(RefusedAxis::Value)?;
        }
        if from == to {
            return Err(RefusedAxis::OneValue {
                parameter,
                value: from,
            });
        }
        if !(NODES[0]..=NODES[1]).contains(&nodes) {
            return Err(RefusedAxis::Nodes { parameter, nodes });
        }
        Ok(Self {
            parameter,
            from,
            to,
            nodes,
        })
    }

    pub const fn parameter(&self) -> Parameter {
        self.parameter
    }

    pub const fn nodes(&self) -> usize {
        self.nodes
    }

    /// Whether the number has a part in a jump; if not, the turns are the same all along the axis.
    pub fn check(&self, scenario: &Scenario) -> Result<(), RefusedAxis> {
        if scenario.has_part(self.parameter) {
            return Ok(());
        }
        Err(RefusedAxis::NoPart(self.parameter))
    }

    /// The number at a node.
    pub fn value(&self, node: usize) -> f64 {
        self.at(node as f64 / (self.nodes - 1) as f64)
    }

    /// The number at a part of the way along the axis, 0 to 1.
    pub fn at(&self, part: f64) -> f64 {
        between(self.from, self.to, part)
    }

    /// How far along the axis a number is: 0 to 1, or outside of that if the axis leaves it out.
    pub fn part(&self, value: f64) -> f64 {
        (value - self.from) / (self.to - self.from)
    }

    /// Spacing of the coarsest nodes that this one is among. Both ends are among the coarsest.
    const fn spacing(&self, node: usize) -> usize {
        let mut spacing = COARSEST;
        while node + 1 < self.nodes && !node.is_multiple_of(spacing) {
            spacing /= 2;
        }
        spacing
    }

    /// The two nodes of a spacing around a node, and how far it is from the one to the other, 0 to
    /// 1; itself twice where it is one of them.
    fn around(&self, node: usize, spacing: usize) -> ([usize; 2], f64) {
        if self.spacing(node) >= spacing {
            return ([node; 2], 0.0);
        }
        let before = node - node % spacing;
        let after = (before + spacing).min(self.nodes - 1);
        let part = (node - before) as f64 / (after - before) as f64;
        ([before, after], part)
    }
}

/// What has been flown at a node.
#[derive(Debug, Clone, Copy)]
struct Node {
    turns: f64,
    seen_margin: f64,
}

/// A map on its way.
#[derive(Debug, Clone)]
pub struct TurnMap {
    scenario: Scenario,
    x: Axis,
    y: Axis,
    nodes: Vec<Option<Node>>,
    /// All nodes in the order in which they are flown: their numbers.
    order: Vec<usize>,
    /// How many of them have been flown.
    done: usize,
    /// The table of the last flight of every column and of every row.
    columns: Vec<Option<Arc<PlanTable>>>,
    rows: Vec<Option<Arc<PlanTable>>>,
}

/// What a map over two numbers depends on: all of a scenario but these two, and what it is called.
pub fn depends_on(scenario: &Scenario, axes: &[Axis; 2]) -> Scenario {
    let mut rest = Scenario {
        name: String::new(),
        note: String::new(),
        ..scenario.clone()
    };
    for axis in axes {
        axis.parameter.hold(&mut rest, axis.from);
    }
    rest
}

impl TurnMap {
    /// Of this jump, nothing flown yet. Two different numbers.
    pub fn new(scenario: &Scenario, x: Axis, y: Axis) -> Result<Self, RefusedAxis> {
        if x.parameter == y.parameter {
            return Err(RefusedAxis::Twice(x.parameter));
        }
        Ok(Self {
            scenario: scenario.clone(),
            x,
            y,
            nodes: vec![None; x.nodes * y.nodes],
            order: order(&x, &y),
            done: 0,
            columns: vec![None; x.nodes],
            rows: vec![None; y.nodes],
        })
    }

    pub const fn x(&self) -> &Axis {
        &self.x
    }

    pub const fn y(&self) -> &Axis {
        &self.y
    }

    /// Whether every node has been flown.
    pub const fn is_done(&self) -> bool {
        self.done == self.order.len()
    }

    /// Across, and upwards.
    pub const fn axes(&self) -> [&Axis; 2] {
        [&self.x, &self.y]
    }

    /// Flies up to so many nodes more; how many there were.
    pub fn refine(&mut self, nodes: usize) -> usize {
        let from = self.done;
        self.done = self.order.len().min(from.saturating_add(nodes));
        for i in from..self.done {
            let node = self.order[i];
            self.nodes[node] = Some(self.fly(node));
        }
        self.done - from
    }

    /// Flies all that is left.
    pub fn complete(&mut self) {
        self.refine(self.order.len());
    }

    /// Turns in all at a node, once it has been flown.
    pub fn turns(&self, x: usize, y: usize) -> Option<f64> {
        self.node(x, y).map(|node| node.turns)
    }

    /// How far a node, once it has been flown, is inside what has been seen of people; negative
    /// outside ([`seen::margin`]).
    pub fn seen_margin(&self, x: usize, y: usize) -> Option<f64> {
        self.node(x, y).map(|node| node.seen_margin)
    }

    /// The turns over the whole map as far as they are known, for colours and lines between the
    /// nodes; none before the coarsest nodes have been flown. What has been flown is exact; a node
    /// that has not is estimated from the coarser ones around it, bilinearly.
    pub fn turns_so_far(&self) -> Option<Field> {
        self.so_far(|node| node.turns)
    }

    /// The margin to what has been seen of people, in the same way: the outline is its line at 0.
    pub fn seen_so_far(&self) -> Option<Field> {
        self.so_far(|node| node.seen_margin)
    }

    fn node(&self, x: usize, y: usize) -> Option<Node> {
        self.nodes[y * self.x.nodes + x]
    }

    fn so_far(&self, of: impl Fn(Node) -> f64) -> Option<Field> {
        let columns = self.x.nodes;
        let mut values = vec![0.0; self.nodes.len()];
        // Coarse ones first: what a finer one is estimated from is there.
        for &node in &self.order {
            values[node] = if let Some(flown) = self.nodes[node] {
                of(flown)
            } else {
                let (i, j) = (node % columns, node / columns);
                let coarser = 2 * self.x.spacing(i).min(self.y.spacing(j));
                if coarser > COARSEST {
                    return None;
                }
                let ([left, right], x) = self.x.around(i, coarser);
                let ([under, over], y) = self.y.around(j, coarser);
                let along = |j| between(values[j * columns + left], values[j * columns + right], x);
                between(along(under), along(over), y)
            };
        }
        Some(Field::new(columns, values))
    }

    fn fly(&mut self, node: usize) -> Node {
        let (x, y) = (node % self.x.nodes, node / self.x.nodes);
        for (axis, i) in [(&self.x, x), (&self.y, y)] {
            // Both ends were checked: nothing is held back.
            axis.parameter.hold(&mut self.scenario, axis.value(i));
        }
        let (column, row) = (&mut self.columns[x], &mut self.rows[y]);
        let earlier: Vec<_> = [&*column, &*row].into_iter().flatten().collect();
        let (summary, table) = self.scenario.fly_summary(&earlier);
        let scenario = &self.scenario;
        let grip_m_s2 = || scenario.grip_m_s2(&table);
        let node = Node {
            turns: summary.air_turns + scenario.pre_rotation_turns,
            seen_margin: seen::margin(
                scenario,
                [self.x.parameter, self.y.parameter],
                &summary,
                grip_m_s2,
            ),
        };
        *column = Some(Arc::clone(&table));
        *row = Some(table);
        node
    }
}

/// Coarse nodes first, then those between them; within a spacing row by row.
fn order(x: &Axis, y: &Axis) -> Vec<usize> {
    by_number((0..x.nodes * y.nodes).collect(), |&node| {
        let (i, j) = (node % x.nodes, node / x.nodes);
        -(x.spacing(i).min(y.spacing(j)) as f64)
    })
}
