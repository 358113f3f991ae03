//! What the marks of an attempt say of it, and how far that can be trusted.

#[path = "support/made_up_attempt.rs"]
mod made_up_attempt;

use std::sync::atomic::{AtomicUsize, Ordering};
use std::thread;

use made_up_attempt::{Maker, Marking};
use turns_aloft::analysis::uncertainty::with_ratio_off;
use turns_aloft::attempt::film::USUAL_FACING_SIGMA_RAD;
use turns_aloft::attempt::sensor::{Sensor, Turned};
use turns_aloft::attempt::stop_watch::StopWatch;
use turns_aloft::attempt::{Attempt, Measured};
use turns_aloft::fit::problem::Unfit;
use turns_aloft::fit::quantity::Quantity;
use turns_aloft::fit::untold::MarkOf;
use turns_aloft::fit::{Fit, Fitting};
use turns_aloft::physics::fixed_time::{FixedTimeFlight, height_for_m};
use turns_aloft::physics::table::Resolution;
use turns_aloft::scenario::{Scenario, starts};

fn fitted(attempt: &Attempt) -> Fit {
    Fitting::new(attempt, None)
        .expect("it can be fitted")
        .complete()
}

fn start(name: &str) -> Scenario {
    starts::named(name).expect("a start").scenario.clone()
}

/// A made-up attempt that has been fitted: whether its ranges hold what was so.
struct Checked {
    /// Of [`NAMES`].
    held: [bool; 4],
    turns_off: f64,
    turns_sigma: f64,
}

/// The largest loss is the one of the cause that most samples lost most by.
const NAMES: [&str; 4] = ["air turns", "peak rate", "hang time", "largest loss"];

fn sigma(values: &[f64]) -> f64 {
    let mean = values.iter().sum::<f64>() / values.len() as f64;
    (values.iter().map(|it| (it - mean).powi(2)).sum::<f64>() / values.len() as f64).sqrt()
}

fn check(seed: u64, marking: Marking) -> Checked {
    let (attempt, truth) = Maker::new(seed).attempt(marking);
    let fit = fitted(&attempt);
    let readout = &truth.jump.readout;
    let cause = fit.most_likely_largest_loss();
    let so = [
        (Quantity::AirTurns, readout.air_turns),
        (Quantity::PeakRate, readout.peak_rate_rad_s),
        (Quantity::HangTime, readout.hang_time_s),
        (Quantity::Lost(cause), truth.lost(cause)),
    ];
    Checked {
        held: so.map(|(quantity, so)| fit.range(quantity).has(so)),
        turns_off: fit.range(Quantity::AirTurns).middle - readout.air_turns,
        turns_sigma: sigma(&fit.values(Quantity::AirTurns)),
    }
}

/// So many attempts, every one marked another way.
fn check_all(count: usize, seed: u64, marking: impl Fn(usize) -> Marking + Sync) -> Vec<Checked> {
    let next = AtomicUsize::new(0);
    let work = || {
        let mut checked = Vec::new();
        loop {
            let i = next.fetch_add(1, Ordering::Relaxed);
            if i >= count {
                return checked;
            }
            checked.push(check(seed + i as u64, marking(i)));
        }
    };
    thread::scope(|scope| {
        let workers = thread::available_parallelism().map_or(1, usize::from);
        let working: Vec<_> = (0..workers).map(|_| scope.spawn(work)).collect();
        let checked = working
            .into_iter()
            .map(|it| it.join().expect("it is fitted"));
        checked.flatten().collect()
    })
}

/// The share of attempts whose ranges hold what was so, printed.
fn shares(all: &[Checked]) -> [f64; 4] {
    let count = all.len() as f64;
    let shares: [f64; 4] =
        std::array::from_fn(|i| all.iter().filter(|it| it.held[i]).count() as f64 / count);
    for (name, share) in NAMES.iter().zip(shares) {
        println!("{name}: {share:.3} of {count} ranges hold what was so");
    }
    shares
}

/// 30 to 240 frames a second, 6 to 20 facings, with and without marks of posture.
fn marking(i: usize, wrong: f64) -> Marking {
    Marking {
        frames_per_s: [30.0, 60.0, 120.0, 240.0][i % 4],
        facings: 6 + i / 4 % 15,
        postures: [0, 3][i / 2 % 2],
        wrong,
    }
}

/// 95 % ranges hold what was so 95 times out of 100. Of 300 attempts the share is itself known to 1.3 %
/// (standard error).
#[test]
fn ranges_hold_what_was_so() {
    let shares = shares(&check_all(300, 1_000, |i| marking(i, 0.0)));
    for (name, share) in NAMES.iter().zip(shares) {
        assert!((0.92..=0.975).contains(&share), "{name}: {share}");
    }
}

/// With one mark in ten grossly wrong they still do 90 times out of 100.
#[test]
fn ranges_bear_wrong_marks() {
    let shares = shares(&check_all(150, 2_000, |i| marking(i, 0.1)));
    for (name, share) in NAMES.iter().zip(shares) {
        assert!(share >= 0.9, "{name}: {share}");
    }
}

/// Marked at 60 frames a second with 8 facings and the posture three times, turns are known to 0.065
/// (standard deviation).
#[test]
fn eight_facings_tell_the_turns() {
    let all = check_all(200, 3_000, |_| Marking {
        frames_per_s: 60.0,
        facings: 8,
        postures: 3,
        wrong: 0.0,
    });
    let count = all.len() as f64;
    let said = all.iter().map(|it| it.turns_sigma).sum::<f64>() / count;
    let off = (all.iter().map(|it| it.turns_off.powi(2)).sum::<f64>() / count).sqrt();
    println!("turns are known to {said:.3} and were off by {off:.3}");
    assert!(said <= 0.065, "{said}");
    // Of 200 attempts known to a twentieth; of 400 it was 0.064.
    assert!(off <= 0.065 * 1.1, "{off}");
}

/// A plan flown for the hang time of its jump is that jump: as far turned, and as high. Tolerance: the
/// five-turn attempt takes finer steps than the table's by itself.
#[test]
fn a_given_hang_time_has_the_height_that_hangs_so_long() {
    for start in starts::all() {
        let scenario = &start.scenario;
        let jump = scenario.fly();
        let (table, launch) =
            scenario.tabulated_as(scenario.body_spec(), Resolution::STANDARD, &[]);
        let flown = FixedTimeFlight::of_plan(&table, jump.readout.hang_time_s);
        let samples = flown.fly_in_steps(&table, &launch);
        let turns = samples[samples.len() - 1].air_turns();
        assert!(
            (turns - jump.readout.air_turns).abs() < 1e-5,
            "{}",
            start.name
        );
        let other = turns_aloft::physics::launch::Launch {
            jump_height_m: 0.3,
            ..launch
        };
        let samples = flown.fly_in_steps(&table, &other);
        let height_m = height_for_m(&samples, &other).expect("it leaves the ice upwards");
        assert!(
            (height_m - scenario.jump_height_m).abs() < 1e-8,
            "{}",
            start.name
        );
    }
}

/// Every sample is a jump that can be set, and flown it is what it is said to be.
#[test]
fn samples_are_jumps_like_any_other() {
    let (attempt, _) = Maker::new(11).attempt(marking(1, 0.0));
    let fit = fitted(&attempt);
    assert_eq!(fit.samples.len(), 300);
    for sample in fit.samples.iter().step_by(10).chain([&fit.best]) {
        sample
            .scenario
            .check()
            .expect("every number is in its range");
        let (_, body) = with_ratio_off(&sample.scenario, sample.inertia_ratio_share);
        let jump = sample.scenario.fly_as(body, None);
        // Its height is that of a flight in longer steps, so it hangs as long but for those.
        assert!((jump.readout.air_turns - sample.air_turns).abs() < 1e-3);
        let hang_s = sample.landing_s - sample.takeoff_s;
        assert!((jump.readout.hang_time_s - hang_s).abs() < 1e-3);
        assert_eq!(sample.scenario.name, attempt.scenario.name);
    }
}

/// The same marks give the same answer, and the last likeliest jump is where the next search begins.
#[test]
fn the_same_marks_give_the_same_answer() {
    let (attempt, _) = Maker::new(12).attempt(marking(2, 0.0));
    let [one, other] = [fitted(&attempt), fitted(&attempt)];
    let turns = |fit: &Fit| fit.values(Quantity::Turns);
    assert_eq!(turns(&one), turns(&other));
    let mut fitting = Fitting::new(&attempt, None).expect("it can be fitted");
    while fitting.point().is_none() {
        fitting.poll();
    }
    let mut again = Fitting::new(&attempt, fitting.point()).expect("it can be fitted");
    assert!(again.first().is_none());
    again.poll();
    let first = again.first().expect("one piece is enough");
    assert!((first.air_turns - one.best.air_turns).abs() < 0.05);
}

/// Facings that go round the other way than the attempt was said to are told of; in most films, even of marks
/// that are partly wrong, nothing is said where they do not.
#[test]
fn the_other_direction_of_turning_is_told() {
    let mut told = [0, 0];
    let count = 40;
    for i in 0..count {
        let (mut attempt, _) = Maker::new(4_000 + i as u64).attempt(marking(i, 0.1));
        told[0] += usize::from(fitted(&attempt).likelier_turning.is_some());
        let so = attempt.scenario.turning;
        attempt.scenario.turning = so.opposite();
        told[1] += usize::from(fitted(&attempt).likelier_turning == Some(so));
    }
    println!("of {count}: told falsely {}, rightly {}", told[0], told[1]);
    assert!(told[0] == 0 && told[1] > count * 3 / 4, "{told:?}");
}

/// The facings of both ends alone allow other counts of turns, which are told with how likely they are.
#[test]
fn other_counts_of_turns_are_told() {
    let scenario = start("four-turns");
    let jump = scenario.fly();
    let (attempt, truth) = Maker::new(13).attempt_of(
        scenario,
        jump,
        Marking {
            frames_per_s: 60.0,
            facings: 2,
            postures: 0,
            wrong: 0.0,
        },
    );
    let fit = fitted(&attempt);
    assert!(fit.answers.len() > 1, "{:?}", fit.answers);
    let chances: f64 = fit.answers.iter().map(|it| it.chance).sum();
    assert!((0.8..=1.0 + 1e-9).contains(&chances));
    let so = truth.jump.readout.air_turns;
    assert!(fit.answers.iter().any(|it| it.air_turns.has(so)));
}

/// Where it is not told which cause lost most, the mark that is named tells more of it than a facing in
/// the middle of the flight does.
#[test]
fn the_mark_that_is_named_tells_most() {
    let (mut seen, mut told_more) = (0, 0);
    for seed in 20..32 {
        let mut maker = Maker::new(seed);
        let (attempt, truth) = maker.attempt(Marking {
            frames_per_s: 120.0,
            facings: 10,
            postures: 0,
            wrong: 0.0,
        });
        let fit = fitted(&attempt);
        let Some(further) = fit.untold.further else {
            continue;
        };
        let contested = |fit: &Fit, of: &Fit| -> f64 {
            let causes = of.untold.may_be_largest();
            let of_both = |i: usize| fit.values(Quantity::Lost(causes[i]));
            let values: Vec<f64> = match causes.len() {
                1 => fit.values(Quantity::Lost(of.untold.trade[0].0)),
                _ => of_both(0)
                    .iter()
                    .zip(of_both(1))
                    .map(|(a, b)| a - b)
                    .collect(),
            };
            sigma(&values)
        };
        let with = |of: MarkOf| {
            let mut attempt = attempt.clone();
            maker_of(seed).add(&mut attempt, &truth, of);
            contested(&fitted(&attempt), &fit)
        };
        seen += 1;
        let middle_s = 0.5 * (fit.best.takeoff_s + fit.best.landing_s);
        let (named, other) = (with(further.of), with(MarkOf::Facing(middle_s)));
        println!(
            "{further:?}: {:.3} -> {named:.3}, or {other:.3}",
            contested(&fit, &fit)
        );
        told_more += usize::from(named < other);
    }
    assert!(seen >= 4, "{seen}");
    assert!(4 * told_more >= 3 * seen, "{told_more} of {seen}");
}

fn maker_of(seed: u64) -> Maker {
    Maker::new(seed + 1_000_000)
}

/// A stop-watch alone tells the hang time, and next to nothing of the turns; counted turns tell those.
#[test]
fn a_stop_watch_tells_the_hang_time() {
    let scenario = start("senior-triple");
    let jump = scenario.fly();
    let timed = |half_width_s, turns_counted, landing_facing_rad| {
        fitted(&Attempt {
            scenario: scenario.clone(),
            measured: Measured::StopWatch(StopWatch {
                hang_time_s: jump.readout.hang_time_s,
                half_width_s,
                turns_counted,
                landing_facing_rad,
            }),
        })
    };
    let alone = timed(0.05, None, None);
    let hang = alone.range(Quantity::HangTime);
    // 1.96 standard deviations of 300 draws.
    assert!((hang.half_width() - 0.05).abs() < 0.008, "{hang:?}");
    assert!(alone.range(Quantity::Turns).half_width() > 0.8);
    let exact = timed(0.01, None, None);
    assert!(exact.range(Quantity::HangTime).half_width() < 0.012);
    assert!(exact.range(Quantity::Rise).half_width() < alone.range(Quantity::Rise).half_width());
    let counted = timed(0.05, Some(3.0), None);
    let turns = counted.range(Quantity::Turns);
    assert!(turns.has(3.0) && turns.half_width() < 0.35, "{turns:?}");
    // Facing as it has to, of any whole count.
    let faced = timed(0.05, None, Some(0.0));
    assert!(faced.answers.len() > 1, "{:?}", faced.answers);
    for answer in &faced.answers {
        assert!(
            (answer.turns.middle - answer.turns.middle.round()).abs() < 0.15,
            "{answer:?}"
        );
    }
}

/// A gyroscope tells the turns about as well as its scale.
#[test]
fn a_sensor_tells_the_turns() {
    let scenario = start("junior-double");
    let jump = scenario.fly();
    let hang_s = jump.readout.hang_time_s;
    let turned = (0..12)
        .map(|i| {
            let t_s = hang_s * f64::from(i) / 11.0;
            Turned {
                t_s: 5.0 + t_s,
                angle_rad: 0.7 + 1.01 * jump.flight.at(t_s).turned_rad,
                sigma_rad: 0.03,
            }
        })
        .collect();
    let fit = fitted(&Attempt {
        scenario,
        measured: Measured::Sensor(Sensor {
            file_name: String::new(),
            takeoff_s: 5.0,
            takeoff_sigma_s: 0.008,
            landing_s: 5.0 + hang_s,
            landing_sigma_s: 0.008,
            turned,
            scale_sigma: 0.01,
        }),
    });
    let turns = fit.range(Quantity::AirTurns);
    assert!(turns.has(jump.readout.air_turns), "{turns:?}");
    assert!(turns.half_width() < 0.08, "{turns:?}");
    assert_eq!(fit.answers.len(), 1);
}

/// Facings count as much as their errors say: half as sure, the turns are less sure.
#[test]
fn surer_facings_make_surer_turns() {
    let (mut attempt, _) = Maker::new(14).attempt(marking(3, 0.0));
    let before = fitted(&attempt).range(Quantity::AirTurns).half_width();
    let Measured::Film(film) = &mut attempt.measured else {
        unreachable!("it is filmed")
    };
    for facing in &mut film.facings {
        facing.sigma_rad = 2.0 * USUAL_FACING_SIGMA_RAD;
    }
    assert!(fitted(&attempt).range(Quantity::AirTurns).half_width() > 1.2 * before);
}

/// What cannot be fitted is said.
#[test]
fn what_cannot_be_is_refused() {
    let (attempt, _) = Maker::new(15).attempt(marking(1, 0.0));
    let refused = |change: fn(&mut turns_aloft::attempt::film::Film)| {
        let mut attempt = attempt.clone();
        if let Measured::Film(film) = &mut attempt.measured {
            change(film);
        }
        Fitting::new(&attempt, None)
            .map(|_| ())
            .expect_err("it is refused")
    };
    let disorder = refused(|film| {
        let contacts = &mut film.contacts;
        std::mem::swap(&mut contacts.last_on_ice_s, &mut contacts.first_on_ice_s);
    });
    assert_eq!(disorder, Unfit::ContactsInDisorder);
    let long = refused(|film| {
        film.contacts.last_in_air_s = film.contacts.last_in_air_s.map(|t_s| t_s + 9.0);
        film.contacts.first_on_ice_s = film.contacts.first_on_ice_s.map(|t_s| t_s + 9.0);
    });
    assert!(
        matches!(long, Unfit::HangTime { hang_s, .. } if hang_s > 9.0),
        "{long:?}"
    );
    let nothing = refused(|film| {
        film.contacts = Default::default();
        film.facings.clear();
        film.postures.clear();
    });
    assert_eq!(nothing, Unfit::NoMarks);
}
