//! The jumps kept on a device: what is done to them, and the files they go into and come out of.

#[path = "support/space.rs"]
mod space;

use std::collections::HashSet;

use proptest::prelude::*;
use serde_json::{Value, json};

use turns_aloft::describe::Sentence;
use turns_aloft::scenario::collection::saved::{FileKind, Unreadable, VERSION};
use turns_aloft::scenario::collection::{
    Collection, Id, LARGEST_BYTES, LONGEST_NAME, MOST, Refusal, kept,
};
use turns_aloft::scenario::{Scenario, file, starts};

fn jump(name: &str) -> Scenario {
    let mut jump = starts::all()[0].scenario.clone();
    name.clone_into(&mut jump.name);
    jump
}

fn names(collection: &Collection) -> Vec<&str> {
    let entries = collection.entries().iter();
    entries.map(|entry| &*entry.scenario.name).collect()
}

fn scenarios(collection: &Collection) -> Vec<&Scenario> {
    let entries = collection.entries().iter();
    entries.map(|entry| &entry.scenario).collect()
}

/// A collection of these, and their ids.
fn kept_jumps(names: &[&str]) -> (Collection, Vec<Id>) {
    let mut collection = Collection::default();
    let add = |name: &&str| collection.add(jump(name)).expect("a good name");
    let ids = names.iter().map(add).collect();
    (collection, ids)
}

fn taken_up(kept: &str) -> Collection {
    Collection::from_kept(kept).expect("it was kept").read
}

fn one_sentence(why: &dyn Sentence) -> String {
    let said = why.sentence();
    assert!(!said.trim().is_empty() && !said.contains('\n'), "{said:?}");
    said
}

#[test]
fn a_name_that_is_taken_gets_a_number() {
    let (mut collection, ids) = kept_jumps(&["Axel", "Axel", "  Axel \n", "Axel 2", "Lutz"]);
    assert_eq!(
        names(&collection),
        ["Axel", "Axel 2", "Axel 3", "Axel 2 2", "Lutz"]
    );
    collection.rename(ids[4], "Axel").expect("a good name");
    collection.rename(ids[0], " Axel").expect("its own name");
    assert_eq!(names(&collection)[0], "Axel");
    assert_eq!(names(&collection)[4], "Axel 4");

    // A number finds room behind the longest name.
    let longest = "ä".repeat(LONGEST_NAME);
    let (collection, _) = kept_jumps(&[&longest, &longest]);
    let shortened = format!("{} 2", "ä".repeat(LONGEST_NAME - 2));
    assert_eq!(names(&collection), [longest, shortened]);
}

#[test]
fn a_bad_name_is_said_and_changes_nothing() {
    let (mut collection, ids) = kept_jumps(&["Axel"]);
    let before = collection.clone();
    for bad in ["", " ", "\n\t", "\u{0}"] {
        assert_eq!(collection.add(jump(bad)), Err(Refusal::NoName));
        assert_eq!(collection.rename(ids[0], bad), Err(Refusal::NoName));
    }
    let long = "x".repeat(LONGEST_NAME + 1);
    assert_eq!(collection.add(jump(&long)), Err(Refusal::LongName));
    assert_eq!(collection.rename(ids[0], &long), Err(Refusal::LongName));
    assert_eq!(collection, before);
    assert!(one_sentence(&Refusal::LongName).contains(&LONGEST_NAME.to_string()));
}

#[test]
fn what_is_moved_or_deleted_can_be_put_back() {
    let (mut collection, ids) = kept_jumps(&["A", "B", "C", "D"]);
    assert!(collection.move_up(ids[2]));
    assert_eq!(names(&collection), ["A", "C", "B", "D"]);
    assert!(collection.move_down(ids[0]));
    assert_eq!(names(&collection), ["C", "A", "B", "D"]);
    assert!(!collection.move_up(ids[2]) && !collection.move_down(ids[3]));

    collection.delete(ids[0]).expect("it is there");
    collection.delete(ids[2]).expect("it is there");
    assert_eq!(names(&collection), ["B", "D"]);
    assert_eq!(collection.last_deleted(), Some("C"));
    assert_eq!(collection.delete(ids[2]), Err(Refusal::Gone));
    assert_eq!(collection.rename(ids[2], "E"), Err(Refusal::Gone));
    assert!(!collection.move_up(ids[2]) && !collection.move_down(ids[2]));

    assert_eq!(collection.restore_deleted(), Ok(ids[2]));
    assert_eq!(collection.restore_deleted(), Ok(ids[0]));
    assert_eq!(names(&collection), ["C", "A", "B", "D"]);
    assert_eq!(collection.restore_deleted(), Err(Refusal::NothingDeleted));

    // Its name and its place may be gone.
    collection.delete(ids[3]).expect("it is there");
    for id in [ids[0], ids[1]] {
        collection.rename(id, "D").expect("a good name");
    }
    collection.restore_deleted().expect("there was one");
    assert_eq!(names(&collection), ["C", "D", "D 2", "D 3"]);
}

#[test]
fn an_id_lasts_over_a_reload_and_is_never_given_again() {
    let (mut collection, ids) = kept_jumps(&["A", "B", "C", "D"]);
    collection.move_up(ids[2]);
    collection.rename(ids[2], "Z").expect("a good name");
    collection.delete(ids[2]).expect("it is there");
    collection.restore_deleted().expect("it was deleted");
    for id in [ids[1], ids[3]] {
        collection.delete(id).expect("it is there");
    }
    let mut reloaded = taken_up(&collection.to_kept());
    assert_eq!(reloaded.entries(), collection.entries());
    assert_eq!(reloaded.get(ids[2]).map(|it| &*it.scenario.name), Some("Z"));
    assert_eq!(reloaded.get(ids[1]), None);
    assert_eq!(reloaded.last_deleted(), None);
    let new = reloaded.add(jump("New")).expect("a good name");
    assert!(!ids.contains(&new));
}

#[test]
fn there_is_an_end_of_room() {
    let mut collection = Collection::default();
    for _ in 0..MOST {
        collection.add(jump("Axel")).expect("there is room");
    }
    let unique: HashSet<_> = names(&collection).into_iter().collect();
    assert_eq!(unique.len(), MOST);
    let before = collection.clone();
    assert_eq!(collection.add(jump("Lutz")), Err(Refusal::TooMany));
    assert_eq!(
        collection.import(&jump("Lutz").to_file()),
        Err(Unreadable::Refused(Refusal::TooMany))
    );
    assert_eq!(collection, before);
    let mut other = Collection::default();
    other
        .import(&collection.export())
        .expect("as many as may be");
    assert_eq!(scenarios(&other), scenarios(&collection));
    assert_eq!(
        other.import(&kept_jumps(&["A"]).0.export()),
        Err(Unreadable::Refused(Refusal::TooMany))
    );
    let reloaded = taken_up(&collection.to_kept());
    assert_eq!(reloaded.entries(), collection.entries());

    // Every one of them can be deleted and brought back.
    let ids: Vec<Id> = collection.entries().iter().map(|entry| entry.id).collect();
    for &id in ids.iter().rev() {
        collection.delete(id).expect("it is there");
    }
    while collection.restore_deleted().is_ok() {}
    assert_eq!(collection, before);
    assert_eq!(collection.add(jump("Lutz")), Err(Refusal::TooMany));
}

#[test]
fn there_is_an_end_of_bytes() {
    let mut collection = Collection::default();
    let mut long = jump("Long");
    long.note = "\"".repeat(45_000);
    let refused = (0..MOST).find_map(|_| collection.add(long.clone()).err());
    assert_eq!(refused, Some(Refusal::TooLarge));
    let file = collection.export();
    assert!(file.len() <= LARGEST_BYTES && file.len() > LARGEST_BYTES - 100_000);
    assert!(collection.to_kept().len() <= LARGEST_BYTES);
    let mut other = Collection::default();
    other.import(&file).expect("what was saved opens");
    assert_eq!(scenarios(&other), scenarios(&collection));
    assert_eq!(
        other.import(&" ".repeat(LARGEST_BYTES + 1)),
        Err(Unreadable::TooLarge)
    );
}

/// The longest note that a file may have leaves no room for a longer name.
#[test]
fn what_is_kept_can_be_read_back_alone() {
    let mut long = jump("A");
    long.note = "n".repeat(file::LARGEST_BYTES);
    while Scenario::from_file(&long.to_file()).is_err() {
        long.note.pop();
    }
    let mut collection = Collection::default();
    let id = collection.add(long.clone()).expect("it fits a file");
    assert_eq!(collection.rename(id, "AB"), Err(Refusal::TooLarge));
    assert_eq!(collection.add(long), Err(Refusal::TooLarge), "the number");
    assert_eq!(names(&collection), ["A"]);
    let reloaded = taken_up(&collection.to_kept());
    assert_eq!(reloaded.entries(), collection.entries());
}

/// A good file of three with one thing changed.
fn changed(change: impl FnOnce(&mut Value)) -> String {
    let (collection, _) = kept_jumps(&["A", "B", "C"]);
    let mut value = serde_json::from_str(&collection.export()).expect("a file is JSON");
    change(&mut value);
    value.to_string()
}

#[track_caller]
fn assert_refused(text: &str, words: &[&str]) {
    let (mut collection, _) = kept_jumps(&["A"]);
    let before = collection.clone();
    let why = collection.import(text).expect_err("not to be opened");
    let said = one_sentence(&why);
    for word in words {
        assert!(said.contains(word), "{said:?} does not say {word:?}");
    }
    assert_eq!(collection, before);
}

#[test]
fn a_file_is_added_to_what_is_there() {
    let (mut collection, old) = kept_jumps(&["C", "D"]);
    let new = collection
        .import(&changed(|_| ()))
        .expect("a good file")
        .read;
    assert_eq!(names(&collection), ["C", "D", "A", "B", "C 2"]);
    assert_eq!(new.len(), 3);
    assert!(new.iter().all(|id| !old.contains(id)));

    let one = collection.import(&jump("Lutz").to_file());
    assert_eq!(one.map(|added| added.read.len()), Ok(1));
    assert_eq!(names(&collection).last(), Some(&"Lutz"));
    let none = collection.import(&Collection::default().export());
    assert_eq!(none.map(|added| added.read), Ok(Vec::new()));
}

#[test]
fn a_broken_file_says_what_is_broken_and_adds_nothing() {
    let good = changed(|_| ());
    assert_refused(&good[..good.len() / 2], &["damaged", "Turns Aloft"]);
    for other in ["{}", "[]", "null", "3", "\"turns_aloft_collection\""] {
        assert_refused(other, &["not a Turns Aloft collection"]);
    }
    for version in [json!("1"), json!(0), json!(-1), json!(null), json!(1.5)] {
        let text = changed(|file| file["turns_aloft_collection"] = version);
        assert_refused(&text, &["not a Turns Aloft collection"]);
    }
    assert_refused(
        &changed(|file| file["turns_aloft_collection"] = json!(VERSION + 1)),
        &["version 3", "update Turns Aloft"],
    );
    assert_refused(
        &changed(|file| file["jumps"] = json!({})),
        &["broken", "`jumps` is no list"],
    );
    assert_refused(
        &changed(|file| file["extra\nline"] = json!(1)),
        &["broken", "unknown field `extra line`"],
    );
    assert_refused(
        &changed(|file| file["jumps"][1]["scenario"]["stature_m"] = json!(7.0)),
        &["jump 2", "(B)", "stature_m = 7", "from 1 to 2.1"],
    );
    assert_refused(
        &changed(|file| file["jumps"][2]["turns_aloft_scenario"] = json!(9)),
        &["jump 3", "(C)", "version 9"],
    );
    assert_refused(
        &changed(|file| file["jumps"][0]["scenario"] = json!(null)),
        &["jump 1", "without a name", "broken"],
    );
    assert_refused(
        &changed(|file| file["jumps"][0]["scenario"]["name"] = json!(" ")),
        &["jump 1", "needs a name"],
    );
    assert_refused(
        &changed(|file| file["jumps"][2]["scenario"]["name"] = json!("x".repeat(900))),
        &["jump 3", "xxx", "at most 80 characters"],
    );
    assert_refused(
        &changed(|file| file["jumps"][2]["scenario"]["x".repeat(9000)] = json!(1)),
        &["jump 3", "unknown field", "\u{2026}"],
    );
    // A scenario's own file is told by its own reader.
    let scenario = jump("Lutz").to_file();
    assert_refused(
        &scenario.replace("_scenario\": 2,", "_scenario\": 4,"),
        &["this scenario is of version 4"],
    );
    assert_refused(&scenario.replace("\"note\"", "\"knot\""), &["knot"]);
}

#[test]
fn the_two_kinds_of_file_are_told_apart() {
    use FileKind::{Collection as Many, Scenario as One};
    let collection = kept_jumps(&["A", "B", "C"]).0.export();
    let mut odd = jump("turns_aloft_collection");
    odd.note = "{\"turns_aloft_collection\": 1}".to_owned();
    for (text, kind) in [
        (&*jump("Lutz").to_file(), One),
        (&odd.to_file(), One),
        ("", One),
        ("[1, 2]", One),
        ("not even JSON", One),
        (&collection, Many),
        (&Collection::default().export(), Many),
        (&collection[..200], Many),
        (
            &collection.replace("_collection\": 2", "_collection\": 7"),
            Many,
        ),
    ] {
        assert_eq!(FileKind::of(text), kind, "{text}");
    }
}

/// A byte-order mark before either is passed over, and what stands twice in it is named.
#[test]
fn collections_are_read_as_strictly_as_scenarios() {
    let (collection, _) = kept_jumps(&["A", "B"]);
    let text = collection.export();
    let marked = format!("\u{feff}{text}");
    assert_eq!(FileKind::of(&marked), FileKind::Collection);
    let mut other = Collection::default();
    assert_eq!(other.import(&marked).map(|added| added.read.len()), Ok(2));
    let one = format!("\u{feff}{}", jump("C").to_file());
    assert_eq!(FileKind::of(&one), FileKind::Scenario);
    assert_eq!(other.import(&one).map(|added| added.read.len()), Ok(1));
    let kept = collection.to_kept();
    let read = taken_up(&format!("\u{feff}{kept}"));
    assert_eq!(read.entries(), collection.entries());

    let before = other.clone();
    for (name, at) in [
        ("jumps", "\"jumps\""),
        ("arm_tuck", "\"arm_tuck\""),
        ("turns_aloft_scenario", "\"scenario\""),
    ] {
        let says = format!("duplicate field `{name}`");
        let double = text.replacen(at, &format!("\"{name}\": 1, {at}"), 2);
        let double = double.replacen(at, &format!("\"{name}\": 1, {at}"), 1);
        let why = one_sentence(&other.import(&double).expect_err("it stands twice"));
        assert!(why.contains(&says), "{why}");
        assert_eq!(other, before);
        let double = kept.replacen(at, &format!("\"{name}\": 1, {at}"), 1);
        let double = double.replacen(at, &format!("\"{name}\": 1, {at}"), 1);
        let why = Collection::from_kept(&double)
            .expect_err("it stands twice")
            .sentence();
        assert!(why.contains(&says), "{why}");
    }
}

#[test]
fn rubbish_in_the_storage_is_said() {
    let (collection, _) = kept_jumps(&["A", "B"]);
    let good = collection.to_kept();
    let said = |text: &str| {
        let why = Collection::from_kept(text).expect_err("not to be read");
        one_sentence(&why);
        why
    };
    let change = |path: &str, to: Value| {
        let mut value: Value = serde_json::from_str(&good).expect("it is JSON");
        *value.pointer_mut(path).expect("a part of it") = to;
        said(&value.to_string())
    };
    for rubbish in ["", "{}", "null", "[]", &good[1..], &good[..good.len() - 1]] {
        assert!(!matches!(said(rubbish), kept::Unreadable::Newer(_)));
    }
    assert!(matches!(
        said(&jump("A").to_file()),
        kept::Unreadable::NoVersion
    ));
    let newer = change("/turns_aloft_kept_jumps", json!(kept::VERSION + 1));
    assert_eq!(newer, kept::Unreadable::Newer(3));
    for (path, to) in [
        ("/turns_aloft_kept_jumps", json!(0)),
        ("/next_id", json!(1)),
        ("/next_id", json!(u64::MAX)),
        ("/jumps/1/id", json!(0)),
        ("/jumps/0/jump/scenario/name", json!("B")),
        ("/jumps/0/jump/scenario/name", json!(" A")),
        ("/jumps/0/jump/scenario/name", json!("")),
        ("/jumps/0/jump/scenario/stature_m", json!(99.0)),
        ("/jumps/0", json!({"id": 0})),
    ] {
        let why = change(path, to);
        assert!(
            !matches!(why, kept::Unreadable::Newer(_)),
            "{path}: {why:?}"
        );
    }
    let many = said(&" ".repeat(LARGEST_BYTES + 1));
    assert!(many.sentence().contains("more than was ever kept"));
}

proptest! {
    #![proptest_config(space::cases(256))]

    #[test]
    fn deletions_come_back_in_turn(
        jumps in prop::collection::vec(space::scenario(), 1..12),
        order in prop::collection::vec(any::<prop::sample::Index>(), 12),
    ) {
        let mut collection = Collection::default();
        for jump in jumps {
            collection.add(jump).expect("a good name");
        }
        let mut states = vec![collection.clone()];
        while !collection.entries().is_empty() {
            let entries = collection.entries();
            let id = order[entries.len() - 1].get(entries).id;
            collection.delete(id).expect("it is there");
            states.push(collection.clone());
        }
        while let Some(state) = states.pop() {
            prop_assert_eq!(&collection, &state);
            prop_assert_eq!(collection.restore_deleted().is_err(), states.is_empty());
        }
    }

    /// A good file with a stretch of it replaced does not make it panic or half open.
    #[test]
    fn a_damaged_file_is_answered(
        from in any::<prop::sample::Index>(),
        length in 0..12_usize,
        instead in "[-0-9a-z\"{}:,.eE\\[\\] ]{0,6}",
    ) {
        let (mut collection, _) = kept_jumps(&["A", "B"]);
        for text in [collection.export(), collection.to_kept()] {
            let from = from.index(text.len());
            let to = (from + length).min(text.len());
            let damaged = format!("{}{instead}{}", &text[..from], &text[to..]);
            if let Err(why) = Collection::from_kept(&damaged) {
                one_sentence(&why);
            }
            let before = collection.clone();
            if let Err(why) = collection.import(&damaged) {
                one_sentence(&why);
                prop_assert_eq!(&collection, &before);
            }
        }
    }
}
