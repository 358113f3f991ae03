//! A film's file.

#![no_main]

use std::io::Cursor;

use libfuzzer_sys::fuzz_target;
use turns_aloft::describe::film::not_played;
use turns_aloft::film::FilmTimes;
use turns_aloft_fuzz::{one_line, said};

#[path = "../../support/film.rs"]
mod support;

fuzz_target!(|data: &[u8]| {
    let (film, pieces, _) = support::read(Cursor::new(data));
    // So small a file is in one piece.
    assert!(pieces <= 1, "{pieces} pieces");
    match film {
        Err(fault) => said(&fault),
        Ok(film) => in_order(&film, data.len()),
    }
});

/// Frames follow each other, each can be sought, and nothing said of the film is no number.
fn in_order(film: &FilmTimes, length: usize) {
    let starts_s = film.starts_s();
    assert!((2..=length).contains(&film.frames()));
    for (frame, &start_s) in starts_s.iter().enumerate() {
        let (middle_s, end_s) = (film.middle_s(frame), film.ends_s(frame));
        assert!(start_s < middle_s && middle_s < end_s && end_s.is_finite());
        assert_eq!(film.frame_at(start_s), frame);
        assert_eq!(film.frame_at(middle_s), frame);
    }
    assert!(!film.keys().is_empty());
    assert!(film.keys().windows(2).all(|two| two[0] < two[1]));
    assert!(film.keys().iter().all(|&key| key < film.frames()));
    for rate in [film.stored_rate_hz(), film.slow_motion()] {
        assert!(rate > 0.0 && rate.is_finite(), "{rate}");
    }
    let edit = film.edit();
    assert!(edit.offset_s.is_finite() && edit.from_s <= edit.to_s);
    one_line(&not_played(film.codec()));
}
