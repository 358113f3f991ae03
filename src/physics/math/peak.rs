//! The top of a curve that is known at some instants.

use glam::DVec3;

/// Instants that the polynomial goes through.
pub const POINTS: usize = 7;

/// Steps of Newton's towards the top; the first starts within a step of it.
const STEPS: usize = 3;

/// How high a curve is, and its first two derivatives by time, from those of the vector behind it.
pub type Height = fn([DVec3; 3]) -> [f64; 3];

/// The vector's first component.
pub const fn first([v, rate, change]: [DVec3; 3]) -> [f64; 3] {
    [v.x, rate.x, change.x]
}

/// Half the square of the vector's length.
pub fn half_square([v, rate, change]: [DVec3; 3]) -> [f64; 3] {
    [
        0.5 * v.length_squared(),
        v.dot(rate),
        rate.length_squared() + v.dot(change),
    ]
}

/// Time and vector where a curve through these points, in the order of time, is highest near the
/// `largest` of them: the top of the polynomial through the seven about it, or the point itself.
///
/// The vector has to be smooth over all of the points. It is what the polynomial follows: its length
/// has corners where the vector passes zero.
pub fn top(
    points: impl Fn(usize) -> (f64, DVec3),
    count: usize,
    largest: usize,
    height: Height,
) -> (f64, DVec3) {
    let used = count.min(POINTS);
    let from = largest.saturating_sub(POINTS / 2).min(count - used);
    let mut times = [0.0; POINTS];
    let mut parts = [DVec3::ZERO; POINTS];
    for i in 0..used {
        (times[i], parts[i]) = points(from + i);
    }
    let centre = largest - from;
    let best = (times[centre], parts[centre]);
    let near = [
        times[centre.saturating_sub(1)],
        times[(centre + 1).min(used - 1)],
    ];
    // Divided differences (Newton's form).
    for order in 1..used {
        for i in (order..used).rev() {
            parts[i] = (parts[i] - parts[i - 1]) * (1.0 / (times[i] - times[i - order]));
        }
    }
    let at = |t: f64| {
        let [mut v, mut rate, mut half_change] = [DVec3::ZERO; 3];
        for i in (0..used).rev() {
            let x = t - times[i];
            half_change = half_change * x + rate;
            rate = rate * x + v;
            v = v * x + parts[i];
        }
        [v, rate, 2.0 * half_change]
    };
    let mut t = best.0;
    for _ in 0..STEPS {
        let [_, slope, bend] = height(at(t));
        if bend >= 0.0 {
            return best;
        }
        t = (t - slope / bend).clamp(near[0], near[1]);
    }
    let found = at(t);
    let least = height([best.1, DVec3::ZERO, DVec3::ZERO])[0];
    if height(found)[0] > least {
        (t, found[0])
    } else {
        best
    }
}
