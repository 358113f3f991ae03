//! The project's side of `web/bench`.
//!
//!     compare postures START TABLE ANSWERS BATCHES CALLS
//!     compare flights START BATCHES CALLS
//!     compare fits BATCHES
//!
//! The first reads the postures that `pinocchio/table.py` has written, computes inertia and
//! momentum of each for the body of START, writes them to ANSWERS and prints the time per posture;
//! the second prints the times of the flights of work.rs, the third those of the fits of fits.rs. One line per number: its name and the
//! median of the batches in ns.

mod fits;
mod work;

use std::error::Error;
use std::fmt::Write as _;
use std::hint::black_box;
use std::time::Instant;

use fits::Fits;
use glam::{DQuat, DVec3};
use work::{Call, Work};

use turns_aloft::physics::body::{Body, SEGMENTS};
use turns_aloft::physics::centroidal::inertia_and_momentum;
use turns_aloft::physics::posture::{JointRates, Posture, STILL};
use turns_aloft::physics::tree::Tree;
use turns_aloft::scenario::starts;

const NO_START: &str = "there is no starting point of that name";

struct Posed {
    posture: Posture,
    rates: JointRates,
}

/// Number of batches, and of calls in each.
#[derive(Clone, Copy)]
struct Batches {
    batches: usize,
    calls: usize,
}

impl Batches {
    fn parse(batches: &str, calls: &str) -> Result<Self, Box<dyn Error>> {
        Ok(Self {
            batches: batches.parse()?,
            calls: calls.parse()?,
        })
    }

    /// Median over the batches of the mean time of a call, ns.
    fn median_ns(self, mut call: impl FnMut()) -> f64 {
        let mut ns: Vec<f64> = (0..self.batches)
            .map(|_| {
                let start = Instant::now();
                for _ in 0..self.calls {
                    call();
                }
                start.elapsed().as_secs_f64() * 1e9 / self.calls as f64
            })
            .collect();
        ns.sort_by(f64::total_cmp);
        ns[self.batches / 2]
    }
}

fn main() -> Result<(), Box<dyn Error>> {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let arguments: Vec<&str> = arguments.iter().map(String::as_str).collect();
    match arguments[..] {
        ["postures", start, table, answers, batches, calls] => {
            postures(start, table, answers, Batches::parse(batches, calls)?)
        }
        ["flights", start, batches, calls] => flights(start, Batches::parse(batches, calls)?),
        ["fits", batches] => fits(Batches::parse(batches, "1")?),
        _ => Err("see the head of tests/bench/compare.rs for the arguments".into()),
    }
}

fn postures(
    start: &str,
    table: &str,
    answers: &str,
    batches: Batches,
) -> Result<(), Box<dyn Error>> {
    let start = starts::named(start).ok_or(NO_START)?;
    let tree = Tree::new(&Body::new(start.scenario.body_spec()));
    let text = std::fs::read_to_string(table)?;
    let mut written = String::new();
    for set in ["plan", "all"] {
        let posed = read(&text, set)?;
        for Posed { posture, rates } in &posed {
            let (inertia, momentum) = inertia_and_momentum(&tree, posture, rates);
            let momentum = momentum.to_array();
            for number in inertia.to_cols_array().iter().chain(&momentum) {
                write!(written, "{number:e} ")?;
            }
            writeln!(written)?;
        }
        let mut next = posed.iter().cycle();
        let ns = batches.median_ns(|| {
            let Some(Posed { posture, rates }) = next.next() else {
                return;
            };
            black_box(inertia_and_momentum(
                black_box(&tree),
                black_box(posture),
                black_box(rates),
            ));
        });
        println!("{set}\t{ns}");
    }
    std::fs::write(answers, written)?;
    Ok(())
}

/// Reads the postures of a set; the table has no entry for the pelvis.
fn read(table: &str, set: &str) -> Result<Vec<Posed>, Box<dyn Error>> {
    let prefix = format!("posture {set} ");
    let rows = table.lines().filter_map(|line| line.strip_prefix(&prefix));
    let posed: Vec<Posed> = rows.map(posed).collect::<Result<_, _>>()?;
    if posed.is_empty() {
        return Err(format!("no postures of the set {set}").into());
    }
    Ok(posed)
}

fn posed(row: &str) -> Result<Posed, Box<dyn Error>> {
    let numbers: Vec<f64> = row
        .split_whitespace()
        .map(str::parse)
        .collect::<Result<_, _>>()?;
    if numbers.len() != 7 * (SEGMENTS - 1) {
        return Err("a posture has 7 numbers a joint".into());
    }
    let mut posed = Posed {
        posture: Posture::STANDING,
        rates: STILL,
    };
    for (i, joint) in numbers.chunks_exact(7).enumerate() {
        posed.posture.joints[i + 1] = DQuat::from_xyzw(joint[1], joint[2], joint[3], joint[0]);
        posed.rates[i + 1] = DVec3::from_slice(&joint[4..]);
    }
    Ok(posed)
}

fn flights(start: &str, batches: Batches) -> Result<(), Box<dyn Error>> {
    let start = starts::named(start).ok_or(NO_START)?;
    for call in Call::ALL {
        let mut work = Work::new(start.name).ok_or(NO_START)?;
        let ns = batches.median_ns(|| {
            black_box(work.call(black_box(call)));
        });
        println!("{}\t{ns}", name(call));
    }
    let jump = start.scenario.fly();
    println!("posture evaluations\t{}", jump.flight.table.postures());
    Ok(())
}

fn fits(batches: Batches) -> Result<(), Box<dyn Error>> {
    let fits = Fits::new();
    let whole = batches.median_ns(|| drop(black_box(black_box(&fits).whole())));
    println!("fit with its ranges\t{whole}");
    let first = batches.median_ns(|| {
        black_box(black_box(&fits).first());
    });
    println!("likeliest jump after a mark has moved\t{first}");
    Ok(())
}

const fn name(call: Call) -> &'static str {
    match call {
        Call::Whole => "whole jump",
        Call::AtAnotherRate => "at another rate",
        Call::AtAnotherHeight => "at another height",
    }
}
