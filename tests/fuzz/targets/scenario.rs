//! A scenario's file.

#![no_main]

use libfuzzer_sys::{Corpus, fuzz_target};
use turns_aloft::scenario::Scenario;
use turns_aloft_fuzz::{good, said};

fuzz_target!(|data: &[u8]| -> Corpus {
    let Ok(text) = std::str::from_utf8(data) else {
        return Corpus::Reject;
    };
    match Scenario::from_file(text) {
        Ok(jump) => good(&jump),
        Err(why) => said(&why),
    }
    Corpus::Keep
});
