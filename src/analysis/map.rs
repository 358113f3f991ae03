//! The turn map: turns at landing over two numbers of a jump, every node a real flight.
//!
//! Coarse first, then finer, a piece at a time, so that whoever shows it need not wait. Where one of
//! the two changes only how the ice is left, its whole row is flown on one table of the plan.

use crate::scenario::Scenario;
use crate::scenario::fly::Jump;
use crate::scenario::keys::{self, Key, Refused};

/// Fewest and most nodes along an axis.
pub const NODES: [usize; 2] = [2, 201];

/// Spacing of the coarsest nodes flown first, in nodes.
const COARSEST: usize = 16;

/// One of the two numbers: from where to where, at how many even nodes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Axis {
    key: &'static Key,
    from: f64,
    to: f64,
    nodes: usize,
}

impl Axis {
    /// A key and two different values of its admissible range, in SI units.
    pub fn new(name: &str, from: f64, to: f64, nodes: usize) -> Result<Self, Refused> {
        let Some(key) = keys::key(name) else {
            let known = keys::KEYS.map(|key| key.key).join(", ");
            return Err(Refused::new(format!(
                "{name}: no such number; they are {known}"
            )));
        };
        for value in [from, to] {
            key.check(value)?;
        }
        if from == to {
            return Err(Refused::new(format!(
                "{name} from {from} to {to}: give two different values"
            )));
        }
        if !(NODES[0]..=NODES[1]).contains(&nodes) {
            return Err(Refused::new(format!(
                "{nodes} nodes of {name} are out of range: they go from {} to {}",
                NODES[0], NODES[1]
            )));
        }
        Ok(Self {
            key,
            from,
            to,
            nodes,
        })
    }

    pub const fn key(&self) -> &'static Key {
        self.key
    }

    pub const fn nodes(&self) -> usize {
        self.nodes
    }

    /// The number at a node.
    pub fn value(&self, node: usize) -> f64 {
        let part = node as f64 / (self.nodes - 1) as f64;
        self.from * (1.0 - part) + self.to * part
    }

    /// Whether it changes only how the ice is left, so that one plan's table serves all its values.
    /// (What heavier hands keep depends on the body, the rate and the height alike.)
    fn only_launch(&self) -> bool {
        [
            "takeoff_rate_rad_s",
            "jump_height_m",
            "lean_rad",
            "pre_rotation_turns",
        ]
        .contains(&self.key.key)
    }
}

/// A map on its way.
#[derive(Debug, Clone)]
pub struct TurnMap {
    scenario: Scenario,
    /// Along the inner axis, flown on one table where it can be.
    x: Axis,
    y: Axis,
    turns: Vec<Option<f64>>,
    /// Nodes still to be flown, the next one last: their numbers.
    left: Vec<usize>,
    /// The last flight of every row, for its table.
    flown: Vec<Option<Jump>>,
}

impl TurnMap {
    /// Of this jump, nothing flown yet. Two different numbers.
    pub fn new(scenario: &Scenario, x: Axis, y: Axis) -> Result<Self, Refused> {
        if x.key == y.key {
            return Err(Refused::new(format!(
                "{} on both axes: give two different numbers",
                x.key.key
            )));
        }
        let nodes = x.nodes * y.nodes;
        let rows = if x.only_launch() { y.nodes } else { x.nodes };
        Ok(Self {
            scenario: scenario.clone(),
            x,
            y,
            turns: vec![None; nodes],
            left: order(&x, &y),
            flown: vec![None; rows],
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
        self.left.is_empty()
    }

    /// Flies up to so many nodes more; how many there were.
    pub fn refine(&mut self, nodes: usize) -> usize {
        let from = self.left.len().saturating_sub(nodes);
        let now: Vec<usize> = self.left.drain(from..).collect();
        for &node in now.iter().rev() {
            self.turns[node] = Some(self.fly(node));
        }
        now.len()
    }

    /// Flies all that is left.
    pub fn complete(&mut self) {
        self.refine(self.left.len());
    }

    /// Turns in all at a node, once it has been flown.
    pub fn turns(&self, x: usize, y: usize) -> Option<f64> {
        self.turns[y * self.x.nodes + x]
    }

    fn fly(&mut self, node: usize) -> f64 {
        let (x, y) = (node % self.x.nodes, node / self.x.nodes);
        for (axis, i) in [(&self.x, x), (&self.y, y)] {
            // Both ends were checked: nothing is held back.
            axis.key.hold(&mut self.scenario, axis.value(i));
        }
        let row = &mut self.flown[if self.x.only_launch() { y } else { x }];
        let jump = self.scenario.fly_after(row.as_ref());
        let turns = jump.turns;
        *row = Some(jump);
        turns
    }
}

/// Coarse nodes first, then those between them; within a spacing row by row. The first one last.
fn order(x: &Axis, y: &Axis) -> Vec<usize> {
    let spacing = |node: usize| {
        let mut spacing = COARSEST;
        while !node.is_multiple_of(spacing) {
            spacing /= 2;
        }
        spacing
    };
    let mut nodes: Vec<usize> = (0..x.nodes * y.nodes).collect();
    nodes.sort_by_key(|&node| {
        let (x, y) = (node % x.nodes, node / x.nodes);
        spacing(x).min(spacing(y))
    });
    nodes
}
