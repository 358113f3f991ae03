//! Lines of one value: of fields whose lines are known in closed form, and of maps.

use rand::rngs::StdRng;
use rand::{RngExt, SeedableRng};

use turns_aloft::analysis::contour::Line;
use turns_aloft::analysis::field::Field;

fn is_closed(line: &Line) -> bool {
    line.points.first() == line.points.last()
}

fn on_border([u, v]: [f64; 2]) -> bool {
    [u, v].iter().any(|&part| part == 0.0 || part == 1.0)
}

fn length(line: &Line) -> f64 {
    let steps = line.points.windows(2);
    steps
        .map(|pair| libm::hypot(pair[1][0] - pair[0][0], pair[1][1] - pair[0][1]))
        .sum()
}

/// A bilinear field is its own interpolation: between the nodes it is met to rounding.
#[test]
fn between_nodes() {
    let plane = |u: f64, v: f64| 1.0 + 2.0 * u - 3.0 * v + 5.0 * u * v;
    let field = Field::of(4, 7, plane);
    for (u, v) in [
        (0.0, 0.0),
        (1.0, 1.0),
        (0.31, 0.77),
        (0.5, 1.0),
        (0.99, 0.01),
    ] {
        assert!((field.at(u, v) - plane(u, v)).abs() < 1e-14);
    }
    // Outside, as at the border.
    assert_eq!(field.at(-3.0, 2.0), plane(0.0, 1.0));
    assert_eq!(field.range(), [-2.0, 5.0]);
}

/// A slope has one straight line at each height, from border to border.
#[test]
fn a_slope_has_straight_lines() {
    let field = Field::of(9, 6, |u, v| 3.0 * u + v);
    for level in [0.1, 0.7, 1.0, 2.5, 3.9] {
        let lines = field.lines(level);
        let [line] = &lines[..] else {
            panic!("one line at {level}, not {}", lines.len());
        };
        for &[u, v] in &line.points {
            assert!((3.0 * u + v - level).abs() < 1e-14);
        }
        let ends = [line.points[0], line.points[line.points.len() - 1]];
        assert!(ends.into_iter().all(on_border) && !is_closed(line));
        let straight = libm::hypot(ends[1][0] - ends[0][0], ends[1][1] - ends[0][1]);
        assert!((length(line) - straight).abs() < 1e-14);
    }
    assert_eq!(field.lines(-0.1), []);
    assert_eq!(field.lines(4.1), []);
}

/// Whole numbers only, each once, and the highest and the lowest node need no line of their own.
#[test]
fn whole_lines() {
    let field = Field::of(5, 5, |u, v| 0.5 + 3.0 * u + 0.1 * v);
    let levels: Vec<f64> = field.whole_lines().iter().map(|line| line.level).collect();
    assert_eq!(levels, [1.0, 2.0, 3.0]);
    assert_eq!(Field::of(5, 5, |_, _| 2.0).whole_lines(), []);
}

/// A cone's line is a circle: closed, at the radius to second order of the cell, as long as 2 pi r.
#[test]
fn a_cone_has_circles() {
    let nodes = 61;
    let cell = 1.0 / 60.0;
    let radius = |u: f64, v: f64| libm::hypot(u - 0.45, v - 0.52);
    let lines = Field::of(nodes, nodes, radius).lines(0.3);
    let [circle] = &lines[..] else {
        panic!("one circle, not {}", lines.len());
    };
    assert!(is_closed(circle));
    // The sagitta of a cell's chord, c² / 8 r; the polygon is shorter by about c² / 24 r² of it.
    for &[u, v] in &circle.points {
        assert!((radius(u, v) - 0.3).abs() < cell * cell / (8.0 * 0.3));
    }
    let around = std::f64::consts::TAU * 0.3;
    assert!((length(circle) / around - 1.0).abs() < 1e-3);
}

/// A circle that leaves the square is one open arc for each part inside.
#[test]
fn lines_end_at_the_border() {
    let field = Field::of(41, 41, |u, v| libm::hypot(u - 0.5, v - 0.5));
    let arcs = field.lines(0.6);
    assert_eq!(arcs.len(), 4);
    for arc in arcs {
        assert!(!is_closed(&arc));
        assert!(on_border(arc.points[0]) && on_border(arc.points[arc.points.len() - 1]));
    }
}

/// In a saddle the lines go round the corners that the bilinear field itself parts: x y = c is a
/// hyperbola, and lies on the other side for the other sign of c.
#[test]
fn saddles() {
    let field = Field::of(2, 2, |u, v| (u - 0.4) * (v - 0.4));
    for (level, same_side) in [(0.02, true), (-0.02, false)] {
        let lines = field.lines(level);
        assert_eq!(lines.len(), 2);
        for line in lines {
            let [a, b] = [line.points[0], line.points[1]];
            // The middle of a chord of the hyperbola's branch stays in the branch's quadrant.
            let middle = [0, 1].map(|k| 0.5 * (a[k] + b[k]) - 0.4);
            assert_eq!(middle[0] * middle[1] > 0.0, same_side, "{a:?} {b:?}");
        }
    }
}

/// A line through nodes themselves is drawn once, without points on top of each other.
#[test]
fn lines_through_nodes() {
    let lines = Field::of(5, 5, |u, v| u + v).lines(1.0);
    let [line] = &lines[..] else {
        panic!("one line, not {}", lines.len());
    };
    assert!(line.points.windows(2).all(|pair| pair[0] != pair[1]));
    assert!((length(line) - std::f64::consts::SQRT_2).abs() < 1e-14);
    // A single highest node that is as high as the level is a point, not a line.
    let peak = Field::of(3, 3, |u, v| if (u, v) == (0.5, 0.5) { 1.0 } else { 0.0 });
    assert_eq!(peak.lines(1.0), []);
    assert_eq!(peak.lines(0.5).len(), 1);
}

/// Whatever the values: every side that is crossed is met exactly once, every point has the level,
/// and a line is closed or ends at the border.
#[test]
fn nothing_is_lost() {
    let mut random = StdRng::seed_from_u64(1987);
    for _ in 0..500 {
        let (columns, rows) = (random.random_range(2..7), random.random_range(2..7));
        let drawn: [f64; 36] = std::array::from_fn(|_| random.random_range(-1.0..1.0));
        let level = random.random_range(-0.9..0.9);
        let place = |part: f64, nodes: usize| (part * (nodes - 1) as f64).round() as usize;
        let field = Field::of(columns, rows, |u, v| {
            drawn[place(v, rows) * columns + place(u, columns)]
        });
        let inside = |i, j| field.node(i, j) >= level;
        let mut crossed = 0;
        for j in 0..rows {
            for i in 0..columns {
                crossed += usize::from(i > 0 && inside(i, j) != inside(i - 1, j));
                crossed += usize::from(j > 0 && inside(i, j) != inside(i, j - 1));
            }
        }
        let mut met = 0;
        for line in field.lines(level) {
            let (first, last) = (line.points[0], line.points[line.points.len() - 1]);
            assert!(first == last || on_border(first) && on_border(last));
            met += line.points.len() - usize::from(first == last);
            for &[u, v] in &line.points {
                assert!((field.at(u, v) - level).abs() < 1e-12);
            }
        }
        assert_eq!(met, crossed);
    }
}
