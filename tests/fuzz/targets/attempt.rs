//! An attempt's file.

#![no_main]

use libfuzzer_sys::{Corpus, fuzz_target};
use turns_aloft::attempt::Attempt;
use turns_aloft::fit::Fitting;
use turns_aloft_fuzz::{good, said};

fuzz_target!(|data: &[u8]| -> Corpus {
    let Ok(text) = std::str::from_utf8(data) else {
        return Corpus::Reject;
    };
    match Attempt::open_file(text) {
        Ok(opened) => {
            let attempt = opened.read;
            good(&attempt.scenario);
            let again = Attempt::open_file(&attempt.to_file()).expect("a file is read back");
            assert_eq!(again.read, attempt);
            // Begun, the fit says why it cannot go on, or finds a jump; all of it would take too long here.
            match Fitting::new(&attempt, None) {
                Ok(mut fitting) => {
                    while fitting.first().is_none() {
                        assert!(fitting.poll());
                    }
                    let found = fitting.first().expect("it has just been found");
                    assert!(found.air_turns.is_finite() && found.rise_m.is_finite());
                }
                Err(why) => said(&why),
            }
        }
        Err(why) => said(&why),
    }
    Corpus::Keep
});
