//! A film's file, read from wherever it lies.

use std::io::{Read, Seek, SeekFrom};

use turns_aloft::film::{FilmFault, FilmTimes, Progress, Reading};

/// The times of a film's frames, how many pieces were read, and how many bytes all of them had.
pub fn read(mut file: impl Read + Seek) -> (Result<FilmTimes, FilmFault>, usize, u64) {
    let length = file.seek(SeekFrom::End(0)).expect("a file has a length");
    let mut reading = Reading::new(length);
    let (mut pieces, mut total, mut before) = (0, 0, (0, 0));
    loop {
        let range = match reading.go_on() {
            Ok(Progress::Needs(range)) => range,
            Ok(Progress::Read(times)) => return (Ok(times), pieces, total),
            Err(fault) => return (Err(fault), pieces, total),
        };
        assert!(range.start < range.end && range.end <= length, "{range:?}");
        // Each piece lies further on, or goes further: so reading comes to an end.
        assert!(
            (range.start, range.end) > before,
            "{range:?} after {before:?}"
        );
        before = (range.start, range.end);
        file.seek(SeekFrom::Start(range.start))
            .expect("it is in the file");
        let mut bytes = Vec::new();
        let count = range.end - range.start;
        (&mut file)
            .take(count)
            .read_to_end(&mut bytes)
            .expect("it can be read");
        pieces += 1;
        total += count;
        reading.supply(bytes);
    }
}
