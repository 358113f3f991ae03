//! A programme for a turntable; the first byte says on what somebody turns.

#![no_main]

use libfuzzer_sys::{Corpus, fuzz_target};
use turns_aloft::turntable::planned::Planned;
use turns_aloft::turntable::{Person, Programme, Run, Setup, Stand};
use turns_aloft_fuzz::said;

/// Rows that a run is written down in, so that an hour takes no longer than a second.
const ROWS: f64 = 50.0;

/// Longest programme that is run, s.
const LONGEST_RUN_S: f64 = 20.0;

fuzz_target!(|data: &[u8]| -> Corpus {
    let Some((&on, text)) = data.split_first() else {
        return Corpus::Reject;
    };
    let programme = match Programme::of_file(text) {
        Ok(programme) => programme,
        Err(why) => {
            said(&why);
            return Corpus::Keep;
        }
    };
    let rises = |pair: &[f64]| pair[0] < pair[1];
    let times: Vec<f64> = programme.rows.iter().map(|row| row.t_s).collect();
    assert!(times.len() >= 2 && times.windows(2).all(rises));
    let setup = Setup {
        rate_rad_s: 3.0,
        ..Setup::on(Stand::ALL[usize::from(on) % Stand::ALL.len()])
    };
    let person = Person::new(&setup).expect("a setup of ours");
    match Planned::new(&person, &programme) {
        Ok(planned) => {
            let [from_s, to_s] = planned.span_s();
            if to_s - from_s <= LONGEST_RUN_S {
                good(&planned.run((to_s - from_s) / ROWS));
            }
        }
        Err(why) => said(&why),
    }
    Corpus::Keep
});

/// No number that is none, energy where it came from, and a text that is read again.
fn good(run: &Run) {
    let (first, last) = (run.samples[0], run.samples[run.samples.len() - 1]);
    let left_over_j = last.kinetic_j - first.kinetic_j - last.work_j + last.heat_j;
    assert!(left_over_j.abs() < 1e-3, "{left_over_j}");
    let text = run.to_csv();
    assert!(!text.contains("NaN") && !text.contains("inf"), "{text}");
    let again = Programme::read(&text).expect("a run is a programme");
    assert_eq!(again.rows.len(), run.samples.len());
}
