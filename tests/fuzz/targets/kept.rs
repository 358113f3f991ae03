//! What stands in the browser's storage where the kept jumps should be.

#![no_main]

use libfuzzer_sys::{Corpus, fuzz_target};
use turns_aloft::scenario::collection::Collection;
use turns_aloft::scenario::starts;
use turns_aloft_fuzz::{in_order, said};

fuzz_target!(|data: &[u8]| -> Corpus {
    let Ok(text) = std::str::from_utf8(data) else {
        return Corpus::Reject;
    };
    match Collection::from_kept(text) {
        Ok(opened) => {
            let mut collection = opened.read;
            in_order(&collection);
            let entries = collection.entries().to_vec();
            for entry in &entries {
                collection.delete(entry.id).expect("it is there");
            }
            let start = starts::all()[0].scenario.clone();
            let new = collection.add(start).expect("a start can be kept");
            assert!(entries.iter().all(|entry| entry.id != new));
            collection.delete(new).expect("it is there");
            while collection.restore_deleted().is_ok() {}
            assert_eq!(collection.entries()[..entries.len()], entries);
        }
        Err(why) => said(&why),
    }
    Corpus::Keep
});
