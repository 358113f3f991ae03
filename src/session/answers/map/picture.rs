//! What there is to draw of a map, worked out once for each state of it.

use turns_aloft_analysis::contour::Line;
use turns_aloft_analysis::field::Field;
use turns_aloft_analysis::map::TurnMap;

#[derive(Debug, Clone, PartialEq)]
pub struct Picture {
    /// Turns in all.
    pub turns: Field,
    /// How far inside what has been seen of people; negative outside.
    pub seen: Field,
    /// The lines of whole turns, but for the turns owed.
    pub whole: Vec<Line>,
    /// The lines of the turns owed.
    pub owed: Vec<Line>,
    /// Around what has been seen of people.
    pub outline: Vec<Line>,
}

impl Picture {
    /// Of a map as far as it has been flown; none before its coarsest nodes have been.
    pub(crate) fn of(map: &TurnMap, owed: Option<f64>) -> Option<Self> {
        let (turns, seen) = (map.turns_so_far()?, map.seen_so_far()?);
        let mut whole = turns.whole_lines();
        whole.retain(|line| Some(line.level) != owed);
        Some(Self {
            whole,
            owed: owed.map_or_else(Vec::new, |owed| turns.lines(owed)),
            outline: seen.lines(0.0),
            turns,
            seen,
        })
    }

    /// Where the turns are so many along a row of the map, 0 to 1 in order.
    pub fn crossings(&self, up: f64, level: f64) -> Vec<f64> {
        let nodes = self.turns.columns();
        let part = |i: usize| i as f64 / (nodes - 1) as f64;
        let turns: Vec<f64> = (0..nodes).map(|i| self.turns.at(part(i), up)).collect();
        let pairs = turns.windows(2).enumerate();
        pairs
            .filter(|(_, pair)| (pair[0] < level) != (pair[1] < level))
            .map(|(i, pair)| {
                let within = (level - pair[0]) / (pair[1] - pair[0]);
                part(i) * (1.0 - within) + part(i + 1) * within
            })
            .collect()
    }
}
