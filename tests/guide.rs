//! The contributors' guide names files that are there.

use std::fs;
use std::path::{Path, PathBuf};

const FOLDERS_NOT_OURS: [&str; 4] = [".git", "target", "dist", "dist-quick"];

/// Files and folders below a folder, by their paths from the top.
fn below(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).expect("a folder of the project") {
        let path = entry.expect("an entry").path();
        let name = path.file_name().expect("a name").to_string_lossy();
        if FOLDERS_NOT_OURS.contains(&&*name) {
            continue;
        }
        if path.is_dir() {
            below(&path, found);
        }
        found.push(path);
    }
}

/// What stands between backticks and looks like a path: it ends as a file does, or with a slash.
fn named(guide: &str) -> Vec<&str> {
    let quoted = guide.split('`').skip(1).step_by(2);
    quoted
        .filter(|word| {
            let is_path = |c: char| c.is_alphanumeric() || "/._-".contains(c);
            let ends = [
                ".rs", ".py", ".js", ".css", ".ftl", ".wgsl", ".md", ".json", "/",
            ];
            word.chars().all(is_path) && ends.iter().any(|end| word.ends_with(end))
        })
        .collect()
}

/// Whether one of the paths ends with the name's parts.
fn is_there(name: &str, paths: &[PathBuf]) -> bool {
    paths
        .iter()
        .any(|path| path.ends_with(name.trim_end_matches('/')))
}

#[test]
fn every_file_named_in_the_guide_is_there() {
    let top = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut paths = Vec::new();
    below(top, &mut paths);
    // Written by the build.
    paths.extend(["sw.js", "bench.md", "weigh.md", "endure.md", "publish"].map(PathBuf::from));
    let guide = fs::read_to_string(top.join("DEVELOPERS.md")).expect("the guide");
    let named = named(&guide);
    assert!(named.len() > 50, "{}", named.len());
    let missing: Vec<&&str> = named
        .iter()
        .filter(|name| !is_there(name, &paths))
        .collect();
    assert!(missing.is_empty(), "{missing:?}");
}

#[test]
fn a_file_that_is_not_there_would_be_seen() {
    assert_eq!(
        named("see `physics/flight/`, `a b.rs` and `gone.rs`"),
        ["physics/flight/", "gone.rs"]
    );
    let paths = [
        PathBuf::from("src/physics/flight"),
        PathBuf::from("src/begone.rs"),
    ];
    assert!(is_there("physics/flight/", &paths));
    assert!(!is_there("gone.rs", &paths));
}
