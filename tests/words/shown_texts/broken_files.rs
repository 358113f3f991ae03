//! Files that cannot be opened.

use serde_json::{Value, json};
use turns_aloft::session::Session;

use super::{Collector, collection, own};

/// Everything that can be wrong with JSON itself.
pub const BROKEN_JSON: [&str; 23] = [
    "",
    "[",
    "[1",
    "{",
    "{\"a\":",
    "\"a",
    "{\"a\" 1}",
    "[1 2]",
    "{\"a\":1 \"b\":2}",
    "nul",
    "x",
    "{1:2}",
    "\"\\x\"",
    "-",
    "1e999",
    "\"\\ud800\"",
    "\"\\ud8",
    "[1,]",
    "{\"a\":1,}",
    "1 2",
    "\"\u{1}\"",
    "\"\\ud800\\u0041\"",
    "{\"turns_aloft_collection\": 1,",
];

/// A description of a change to a file, and the change.
type Change<'a> = (&'a str, &'a dyn Fn(&mut Value));

/// Files of one jump and of several that cannot be opened.
pub fn broken_files(collected: &mut Collector) {
    let good = own();
    let file: Value = serde_json::from_str(&good.to_file()).expect("JSON");
    let changes: [Change; 16] = [
        ("newer", &|file| file["turns_aloft_scenario"] = json!(9)),
        ("of no version", &|file| {
            file["turns_aloft_scenario"] = json!("x")
        }),
        ("an entry too many", &|file| {
            file["scenario"]["wind_m_s"] = json!(1)
        }),
        ("another entry too many", &|file| {
            file["wind_m_s"] = json!(1)
        }),
        ("an entry missing", &|file| {
            file["scenario"]
                .as_object_mut()
                .expect("an object")
                .remove("note");
        }),
        ("out of range", &|file| {
            file["scenario"]["jump_height_m"] = json!(7.5)
        }),
        ("turns out of range", &|file| {
            file["scenario"]["jump_turns"] = json!(9)
        }),
        ("too many turns", &|file| {
            file["scenario"]["jump_turns"] = json!(300)
        }),
        ("half a turn", &|file| {
            file["scenario"]["jump_turns"] = json!(1.5)
        }),
        ("a text for a number", &|file| {
            file["scenario"]["arm_tuck"] = json!("high")
        }),
        ("nothing for a number", &|file| {
            file["scenario"]["arm_tuck"] = json!(null)
        }),
        ("truth for a text", &|file| {
            file["scenario"]["note"] = json!(true)
        }),
        ("a list for a word", &|file| {
            file["scenario"]["ground"] = json!([true])
        }),
        ("a number for a text", &|file| {
            file["scenario"]["name"] = json!(1.5)
        }),
        ("an unknown word", &|file| {
            file["scenario"]["ground"] = json!("sand")
        }),
        ("a list for a jump", &|file| {
            file["scenario"] = json!("jump")
        }),
    ];
    let mut texts: Vec<(String, String)> = Vec::new();
    for (place, change) in changes {
        let mut changed = file.clone();
        change(&mut changed);
        texts.push((place.to_owned(), changed.to_string()));
        let mut jumps = collection(&[&good, &good]);
        jumps["jumps"][1] = changed;
        texts.push((format!("{place}, among others"), jumps.to_string()));
    }
    let many: [Change; 6] = [
        ("a newer collection", &|file| {
            file["turns_aloft_collection"] = json!(9)
        }),
        ("no collection", &|file| {
            file["turns_aloft_collection"] = json!(1.5)
        }),
        ("no list", &|file| file["jumps"] = json!({})),
        ("an entry too many", &|file| file["wind_m_s"] = json!(1)),
        ("no jump", &|file| file["jumps"] = json!([null])),
        ("no name", &|file| {
            file["jumps"][0]["scenario"]["name"] = json!("")
        }),
    ];
    for (place, change) in many {
        let mut changed = collection(&[&good]);
        change(&mut changed);
        texts.push((place.to_owned(), changed.to_string()));
    }
    texts.push(("too large".to_owned(), " ".repeat(200_000)));
    let mark = "{\"turns_aloft_collection\"";
    texts.push((
        "too many".to_owned(),
        mark.to_owned() + &" ".repeat(2_000_001),
    ));
    for json in BROKEN_JSON {
        texts.push((format!("JSON {json}"), json.to_owned()));
    }
    texts.push(("no entries".to_owned(), "{}".to_owned()));
    texts.push(("a list".to_owned(), "[]".to_owned()));
    texts.push(("deep".to_owned(), "[".repeat(500)));
    let twice = good
        .to_file()
        .replacen("\"note\"", "\"note\": \"\", \"note\"", 1);
    texts.push(("an entry twice".to_owned(), twice));
    let mut session = Session::default();
    for (place, text) in texts {
        session.open_text(&text);
        collected.notice(&place, &mut session);
    }
}
