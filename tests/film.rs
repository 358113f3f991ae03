//! What is read out of a film's file. The small films of `tests/films/small` were made by ffmpeg, and what is
//! true of each was said by ffprobe (`tests/films/make.py`); `tests/outside/test_film.py` has the others.

use std::fs;
use std::io::{Cursor, Read, Result as Io, Seek, SeekFrom};
use std::path::{Path, PathBuf};

use serde_json::Value;
use turns_aloft::describe::Sentence;
use turns_aloft::describe::film::not_played;
use turns_aloft::film::limits::{MOST_FRAMES, MOST_TABLE_BYTES};
use turns_aloft::film::{Codec, FilmFault, FilmTimes, Played, Progress, Reading};
use turns_aloft::words::{Language, set_language};

#[path = "support/film.rs"]
mod support;

/// Times are rounded to the last bit of a double, on both sides.
const TOLERANCE_S: f64 = 1e-12;

fn small() -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/films/small");
    let entries = fs::read_dir(folder).expect("the small films");
    let paths = entries.map(|entry| entry.expect("an entry").path());
    let films: Vec<PathBuf> = paths
        .filter(|path| path.extension().is_none_or(|end| end != "json"))
        .collect();
    assert_eq!(films.len(), 6);
    films
}

fn bytes(name: &str) -> Vec<u8> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/films/small");
    fs::read(folder.join(name)).expect("a small film")
}

fn read(bytes: &[u8]) -> Result<FilmTimes, FilmFault> {
    support::read(Cursor::new(bytes)).0
}

fn times(name: &str) -> FilmTimes {
    read(&bytes(name)).expect("it can be read")
}

/// Where a box of this kind begins.
fn place(bytes: &[u8], kind: &[u8]) -> usize {
    let found = bytes.windows(kind.len()).position(|at| at == kind);
    found.expect("there is one") - 4
}

fn put(bytes: &mut [u8], at: usize, value: u32) {
    bytes[at..at + 4].copy_from_slice(&value.to_be_bytes());
}

#[test]
fn frames_are_where_ffprobe_finds_them() {
    for path in small() {
        let truth = fs::read_to_string(path.with_extension("json")).expect("what is true of it");
        let truth: Value = serde_json::from_str(&truth).expect("JSON");
        let numbers = |of: &Value| -> Vec<Option<f64>> {
            of.as_array()
                .expect("a list")
                .iter()
                .map(Value::as_f64)
                .collect()
        };
        let read = read(&fs::read(&path).expect("a film")).expect("it can be read");
        let starts_s = numbers(&truth["times_s"]);
        assert_eq!(read.frames(), starts_s.len(), "{path:?}");
        let edited_s = numbers(&truth["edited_s"]);
        for (i, start_s) in starts_s.into_iter().enumerate() {
            let own_s = read.starts_s()[i];
            let start_s = start_s.expect("a time");
            assert!(
                (own_s - start_s).abs() <= TOLERANCE_S,
                "{path:?} {i}: {own_s}"
            );
            assert_eq!(
                read.keys().contains(&i),
                truth["key"][i].as_bool().expect("yes or no")
            );
            assert_eq!(read.is_in_edit(i), edited_s[i].is_some(), "{path:?} {i}");
            if let Some(edited_s) = edited_s[i] {
                let own_s = own_s + read.edit().offset_s;
                assert!(
                    (own_s - edited_s).abs() <= TOLERANCE_S,
                    "{path:?} {i}: {own_s}"
                );
            }
        }
        let size = ["width", "height"].map(|side| truth[side].as_u64().expect("a size"));
        assert_eq!(read.size_px().map(u64::from), size, "{path:?}");
        assert_eq!(
            read.capture_rate_hz(),
            truth["capture_rate"].as_f64(),
            "{path:?}"
        );
        let codec = truth["codec"].as_str().expect("a name");
        let own: String = read.codec().name().replace('.', "").to_lowercase();
        assert_eq!(own, codec, "{path:?}");
    }
}

/// The middle of a frame's interval is in it and in no other, and the frames follow each other.
#[test]
fn the_middle_of_a_frame_is_its_own() {
    for path in small() {
        let film = read(&fs::read(&path).expect("a film")).expect("it can be read");
        for frame in 0..film.frames() {
            let middle_s = film.middle_s(frame);
            assert!(
                film.starts_s()[frame] < middle_s && middle_s < film.ends_s(frame),
                "{path:?}"
            );
            assert_eq!(film.frame_at(middle_s), frame, "{path:?}");
            assert_eq!(film.frame_at(film.starts_s()[frame]), frame, "{path:?}");
        }
        assert_eq!(film.frame_at(-1.0), 0);
        assert_eq!(film.frame_at(film.end_s() + 1.0), film.frames() - 1);
        assert!(film.middle_s(film.frames() + 5) < film.end_s());
        assert_eq!(film.frame_at(f64::NAN), 0);
    }
}

/// 240 frames a second that are stored as 30 show everything eight times as slow; without a tag nothing
/// is known, and a tag of the stored rate changes nothing.
#[test]
fn slow_motion_is_the_rate_taken_over_the_rate_stored() {
    let film = times("slowed.mov");
    assert!((film.stored_rate_hz() - 30.0).abs() < 1e-6);
    assert_eq!(
        (film.capture_rate_hz(), film.slow_motion()),
        (Some(240.0), 8.0)
    );
    assert_eq!(times("b_frames.mp4").slow_motion(), 1.0);
    let mut tagged = bytes("slowed.mov");
    let tag = place(&tagged, b"data") + 16;
    assert_eq!(tagged[tag..tag + 4], 240_f32.to_be_bytes());
    for (tag_hz, known_hz, slower) in [
        (29.97, Some(f64::from(29.97_f32)), 1.0),
        (f32::NAN, None, 1.0),
        (0.0, None, 1.0),
        (f32::INFINITY, None, 1.0),
    ] {
        tagged[tag..tag + 4].copy_from_slice(&tag_hz.to_be_bytes());
        let film = read(&tagged).expect("it can be read");
        assert_eq!(
            (film.capture_rate_hz(), film.slow_motion()),
            (known_hz, slower),
            "{tag_hz}"
        );
    }
}

/// However short a film is cut, it is not taken for a whole one.
#[test]
fn a_film_cut_off_anywhere_is_refused() {
    for path in small() {
        let whole = fs::read(&path).expect("a film");
        for length in 0..whole.len() {
            let fault = read(&whole[..length]).err();
            let fault = fault.unwrap_or_else(|| {
                // A film that was written while it was taken says nowhere how long it is: what follows its
                // last whole block or fragment may be missing.
                let is_live =
                    ["live", "fragmented"].map(|name| path.file_stem() == Some(name.as_ref()));
                assert!(is_live.contains(&true), "{path:?} as far as {length}");
                FilmFault::CutOff
            });
            let expected: &[FilmFault] = match length {
                0 => &[FilmFault::Empty],
                1..8 => &[FilmFault::UnknownContainer, FilmFault::CutOff],
                _ => &[
                    FilmFault::CutOff,
                    FilmFault::NoFilmTrack,
                    FilmFault::StillPicture,
                ],
            };
            assert!(
                expected.contains(&fault),
                "{path:?} as far as {length}: {fault:?}"
            );
        }
    }
}

/// A file that becomes shorter while it is read is cut off.
#[test]
fn fewer_bytes_than_there_were_are_a_cut_off_film() {
    let whole = bytes("b_frames.mp4");
    let mut reading = Reading::new(whole.len() as u64);
    let Ok(Progress::Needs(range)) = reading.go_on() else {
        panic!("nothing is at hand");
    };
    assert_eq!(range.start, 0);
    reading.supply(whole[..whole.len() / 2].to_vec());
    assert_eq!(reading.go_on(), Err(FilmFault::CutOff));
}

/// A film with so many bytes in front of its tables; those are read as zeros.
struct Stretched {
    before: Vec<u8>,
    tables: Vec<u8>,
    length: u64,
    at: u64,
}

impl Stretched {
    fn new(film: &[u8], length: u64) -> Self {
        let tables = place(film, b"moov");
        let (before, tables) = film.split_at(tables);
        let gap = length - film.len() as u64;
        let mut before = before.to_vec();
        before.extend(1_u32.to_be_bytes());
        before.extend(b"free");
        before.extend(gap.to_be_bytes());
        Self {
            before,
            tables: tables.to_vec(),
            length,
            at: 0,
        }
    }
}

impl Read for Stretched {
    fn read(&mut self, into: &mut [u8]) -> Io<usize> {
        let first_of_tables = self.length - self.tables.len() as u64;
        let byte = |at: u64| {
            let behind = at.checked_sub(first_of_tables);
            let within = behind.map_or(self.before.get(at as usize), |at| {
                self.tables.get(at as usize)
            });
            within.copied().unwrap_or(0)
        };
        let count = (self.length - self.at).min(into.len() as u64) as usize;
        for (into, at) in into[..count].iter_mut().zip(self.at..) {
            *into = byte(at);
        }
        self.at += count as u64;
        Ok(count)
    }
}

impl Seek for Stretched {
    fn seek(&mut self, to: SeekFrom) -> Io<u64> {
        self.at = match to {
            SeekFrom::Start(at) => at,
            SeekFrom::End(_) => self.length,
            SeekFrom::Current(by) => self.at.saturating_add_signed(by),
        };
        Ok(self.at)
    }
}

/// Of two gigabytes a few pieces are read: what is the same in a small film and a large one.
#[test]
fn of_a_large_film_little_is_read() {
    let small = bytes("b_frames.mp4");
    let (film, pieces, total) = support::read(Stretched::new(&small, 2_000_000_000));
    assert_eq!(film, read(&small));
    assert!(
        pieces <= 4 && total < 200_000,
        "{pieces} pieces, {total} bytes"
    );
}

/// Tables that are longer than what is read at first are read in one piece.
#[test]
fn long_tables_are_read() {
    let mut film = bytes("b_frames.mp4");
    let tables = place(&film, b"moov");
    let added = 300_000;
    let length = film.len() - tables + added;
    put(&mut film, tables, length as u32);
    film.extend((added as u32).to_be_bytes());
    film.extend(b"free");
    film.resize(tables + length, 0);
    let (long, pieces, _) = support::read(Cursor::new(&film));
    assert_eq!(long, read(&bytes("b_frames.mp4")));
    assert!(pieces <= 2, "{pieces}");
    // The same of a WebM: what it says of itself has a void in it (EBML, RFC 8794, 11.3.2).
    let webm = bytes("live.webm");
    let void_bytes = 0x30_0000;
    let id = [0x15, 0x49, 0xa9, 0x66];
    // What finds it in the file names it before.
    let info = webm
        .windows(4)
        .rposition(|at| at == id)
        .expect("there is one");
    let size = webm[info + 4];
    assert_eq!(size & 0x80, 0x80, "a size of one byte");
    let mut long = webm[..info + 4].to_vec();
    // A size of eight bytes.
    long.extend((1 << 56 | (u64::from(size & 0x7f) + 5 + void_bytes)).to_be_bytes());
    long.extend([0xec, 0x10, 0x30, 0, 0]);
    long.resize(long.len() + void_bytes as usize, 0);
    long.extend(&webm[info + 5..]);
    let (film, pieces, _) = support::read(Cursor::new(&long));
    assert_eq!(film, read(&webm));
    assert!(pieces <= 3, "{pieces}");
}

#[test]
fn tables_and_frames_have_a_limit() {
    let mut film = bytes("b_frames.mp4");
    let sizes = place(&film, b"stsz");
    put(&mut film, sizes + 16, MOST_FRAMES as u32 + 1);
    assert_eq!(read(&film), Err(FilmFault::TooManyFrames));
    // One that has as many frames in its tables, each as long as the other: not one too many.
    let mut head = bytes("b_frames.mp4");
    let tables = place(&head, b"moov");
    let length = MOST_TABLE_BYTES + 9;
    put(&mut head, tables, length as u32);
    head.resize(tables + length as usize, 0);
    assert_eq!(read(&head), Err(FilmFault::TablesTooLarge));
}

#[test]
fn tables_that_contradict_each_other_are_damage() {
    let whole = bytes("b_frames.mp4");
    let with = |kind: &[u8], at: usize, value: u32| {
        let mut film = whole.clone();
        let at = place(&film, kind) + at;
        put(&mut film, at, value);
        read(&film)
    };
    // More frames than have a time; units of no length; a box longer than what it stands in.
    assert_eq!(with(b"stsz", 16, 13), Err(FilmFault::Damaged));
    assert_eq!(with(b"mdhd", 20, 0), Err(FilmFault::Damaged));
    assert_eq!(with(b"stts", 0, 5000), Err(FilmFault::Damaged));
    // The clock stands still, and runs backwards.
    assert_eq!(with(b"stts", 20, 0), Err(FilmFault::TimesNotAscending));
    assert_eq!(
        with(b"stts", 20, u32::MAX),
        Err(FilmFault::TimesNotAscending)
    );
    // A fragment that begins later than any clock says.
    let mut late = bytes("fragmented.mp4");
    let at = place(&late, b"tfdt") + 12;
    assert_eq!(late[at - 4], 1, "a time of 64 bits");
    put(&mut late, at, 0x7fff_ffff);
    put(&mut late, at + 4, 0xffff_ffff);
    assert_eq!(read(&late), Err(FilmFault::Damaged));
    // No key frames; pictures that lie behind the end of the file.
    assert_eq!(with(b"stss", 16, 0), Err(FilmFault::NoKeyFrame));
    assert_eq!(with(b"stco", 16, 1 << 20), Err(FilmFault::CutOff));
    // An edit list that slows the film down.
    assert_eq!(with(b"elst", 24, 0x8000), Err(FilmFault::SeveralEdits));
}

#[test]
fn what_is_no_film_is_named() {
    for (head, fault) in [
        (&b"\x89PNG\r\n\x1a\n"[..], FilmFault::StillPicture),
        (b"\xff\xd8\xff\xe0\0\x10JFIF", FilmFault::StillPicture),
        (b"RIFF\0\0\0\0WEBPVP8 ", FilmFault::StillPicture),
        (b"\0\0\0\x14ftypheic\0\0\0\0mif1", FilmFault::StillPicture),
        (b"RIFF\0\0\0\0WAVEfmt ", FilmFault::NoFilmTrack),
        (b"ID3\x04\0\0\0\0", FilmFault::NoFilmTrack),
        (b"RIFF\0\0\0\0AVI LIST", FilmFault::UnknownContainer),
        (b"name,time\n1,2\n", FilmFault::UnknownContainer),
    ] {
        assert_eq!(read(head), Err(fault), "{head:?}");
    }
}

/// In both languages each fault is one line that is not another one's.
#[test]
fn every_fault_is_said() {
    for language in Language::ALL {
        set_language(language);
        let mut said: Vec<String> = FilmFault::ALL.map(|fault| fault.sentence()).into();
        said.push(not_played(&Codec::Hevc));
        assert!(
            said.iter()
                .all(|it| it.ends_with('.') && !it.contains('\n')),
            "{said:?}"
        );
        let count = said.len();
        said.sort();
        said.dedup();
        assert_eq!(said.len(), count);
    }
    assert!(not_played(&Codec::Hevc).contains("HEVC"));
    assert_eq!(Codec::Hevc.played(), Played::BySome);
    assert_eq!(times("b_frames.mp4").codec().played(), Played::Widely);
}
