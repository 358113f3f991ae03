//! What stands behind the `#` of an address. Most are made with a checksum that is right.

#![no_main]

use libfuzzer_sys::{Corpus, fuzz_mutator, fuzz_target, fuzzer_mutate};
use turns_aloft::scenario::link::{VERSION, from_fragment, to_fragment};
use turns_aloft_fuzz::{framed, good, said, same};

fuzz_target!(|data: &[u8]| -> Corpus {
    let Ok(text) = std::str::from_utf8(data) else {
        return Corpus::Reject;
    };
    match from_fragment(text) {
        None => assert!(!text.starts_with("jump.")),
        Some(Err(why)) => said(&why),
        Some(Ok(link)) => {
            good(&link.jump);
            if let Some(reference) = &link.reference {
                good(reference);
                let both = to_fragment(&link.jump, link.reference.as_ref());
                let again = from_fragment(&both)
                    .expect("ours")
                    .expect("it is read back");
                same(&again.jump, &link.jump);
                same(&again.reference.expect("there were two"), reference);
            }
        }
    }
    Corpus::Keep
});

fuzz_mutator!(|data: &mut [u8], size: usize, max_size: usize, seed: u32| {
    let plain = seed.is_multiple_of(8);
    let Some(mut fields) = framed::fields(&data[..size]).filter(|_| !plain) else {
        return fuzzer_mutate(data, size, max_size);
    };
    let length = fields.len();
    // So many bytes still fit, with checksum and frame.
    let room = (max_size.saturating_sub(16) / 4 * 3).max(length);
    fields.resize(room, 0);
    let length = fuzzer_mutate(&mut fields, length, room);
    let version = 1 + u64::from(seed / 8) % VERSION;
    let link = framed::link(version, &fields[..length]);
    if link.len() > max_size {
        return size;
    }
    data[..link.len()].copy_from_slice(link.as_bytes());
    link.len()
});
