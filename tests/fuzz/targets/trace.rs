//! What is made of a sensor's file: a trace of a flight, or a sentence.

#![no_main]

use libfuzzer_sys::{Corpus, fuzz_target};
use turns_aloft::describe::Sentence;
use turns_aloft::trace::{Signals, Survey, Table, Trace, TraceFault, Windows, find_columns};
use turns_aloft_fuzz::{one_line, said, sensor_table};

fuzz_target!(|data: &[u8]| -> Corpus {
    // The first byte is for `table.rs`, whose inputs these are, too.
    let Some((_, text)) = data.split_first() else {
        return Corpus::Reject;
    };
    let Ok(table) = sensor_table(&[text]) else {
        return Corpus::Reject;
    };
    match traced(&table) {
        Ok((survey, trace)) => {
            good(&trace);
            // Whatever is moved, there is a trace or a sentence.
            let [from_s, to_s] = [trace.flight.from_s, trace.flight.to_s];
            let third_s = (to_s - from_s) / 3.0;
            for flight_s in [
                [from_s + third_s, to_s - third_s],
                [from_s - third_s, to_s],
                [to_s, from_s],
            ] {
                let windows = Windows {
                    rest_s: Some([0.0, from_s]),
                    flight_s: Some(flight_s),
                };
                match survey.trace(&windows) {
                    Ok(trace) => good(&trace),
                    Err(why) => said(&why),
                }
            }
        }
        Err(why) => said(&why),
    }
    Corpus::Keep
});

fn traced(table: &Table) -> Result<(Survey, Trace), TraceFault> {
    let columns = find_columns(table)?;
    let survey = Survey::of(Signals::of(table, &columns)?);
    let trace = survey.trace(&Windows::default())?;
    Ok((survey, trace))
}

fn good(trace: &Trace) {
    assert!(trace.turned.len() >= 2);
    assert!(
        trace
            .turned
            .iter()
            .all(|at| at.t_s.is_finite() && at.turned_rad.is_finite() && at.sigma_rad.is_finite())
    );
    assert!(trace.turned_sigma_rad.is_finite() && trace.peak_rate_rad_s.is_finite());
    for remark in &trace.remarks {
        one_line(&remark.sentence());
    }
}
