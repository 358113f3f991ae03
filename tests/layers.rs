//! What is known stands below, what is said above: scenarios and analysis give facts, and know no
//! language and no screen.

use std::fs;
use std::path::{Path, PathBuf};

/// What a file of the lower layers must not name.
const ABOVE: [&str; 9] = [
    "crate::words",
    "crate::describe",
    "crate::session",
    "crate::panel",
    "crate::stage",
    "crate::page",
    "say!",
    "Message",
    "fluent",
];

fn sources(folder: &Path) -> Vec<PathBuf> {
    let entries = fs::read_dir(folder).expect("a folder of sources");
    let paths = entries.map(|entry| entry.expect("an entry").path());
    paths
        .flat_map(|path| {
            if path.is_dir() {
                sources(&path)
            } else {
                vec![path]
            }
        })
        .collect()
}

/// What a source names of the layers above; comments do not count.
fn named_above(source: &str) -> Vec<&'static str> {
    let code = source.lines().filter_map(|line| line.split("//").next());
    let code: Vec<&str> = code.collect();
    let named = |name: &&&str| code.iter().any(|line| line.contains(**name));
    ABOVE.iter().filter(named).copied().collect()
}

#[test]
fn scenarios_and_analysis_know_no_words() {
    let src = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut seen = 0;
    for layer in ["physics", "scenario", "analysis"] {
        for path in sources(&src.join(layer)) {
            if path.extension().is_none_or(|end| end != "rs") {
                continue;
            }
            let source = fs::read_to_string(&path).expect("a source file");
            let named = named_above(&source);
            assert!(named.is_empty(), "{}: {named:?}", path.display());
            seen += 1;
        }
    }
    assert!(seen > 50, "{seen}");
}

#[test]
fn a_word_is_seen() {
    assert_eq!(named_above("use crate::words::text;"), ["crate::words"]);
    assert_eq!(named_above("let said = say!(\"x\", y = 1);"), ["say!"]);
    assert!(named_above("// crate::words put it into words").is_empty());
}
