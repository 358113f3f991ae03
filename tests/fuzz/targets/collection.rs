//! A file opened into the kept jumps.

#![no_main]

use libfuzzer_sys::{Corpus, fuzz_target};
use turns_aloft::scenario::collection::Collection;
use turns_aloft::scenario::collection::saved::FileKind;
use turns_aloft::scenario::starts;
use turns_aloft_fuzz::{in_order, said};

fuzz_target!(|data: &[u8]| -> Corpus {
    let Ok(text) = std::str::from_utf8(data) else {
        return Corpus::Reject;
    };
    FileKind::of(text);
    let mut collection = Collection::default();
    let start = starts::all()[0].scenario.clone();
    collection.add(start).expect("a start can be kept");
    let before = collection.clone();
    match collection.import(text) {
        Ok(added) => {
            assert_eq!(collection.entries().len(), 1 + added.read.len());
            assert_eq!(collection.entries()[0], before.entries()[0]);
            in_order(&collection);
        }
        Err(why) => {
            said(&why);
            assert_eq!(collection, before);
        }
    }
    Corpus::Keep
});
