//! No file of the mechanics imports from a file that, by whatever detour, imports from it: each can
//! be read knowing only what stands below it.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

/// The files that each file imports from, by their paths below the package.
type Imports = BTreeMap<String, Vec<String>>;

/// All source files of a folder by their paths below it, without `.rs`.
fn sources(folder: &Path, below: &str, found: &mut BTreeMap<String, String>) {
    for entry in fs::read_dir(folder).expect("a folder of sources") {
        let path = entry.expect("an entry of a folder").path();
        let name = path.file_stem().expect("a name").to_string_lossy();
        let own = format!("{below}{name}");
        if path.is_dir() {
            sources(&path, &format!("{own}/"), found);
        } else if path.extension().is_some_and(|end| end == "rs") {
            found.insert(own, fs::read_to_string(&path).expect("a source file"));
        }
    }
}

/// The paths after `start` in the code, comments left out.
fn paths_after<'a>(text: &'a str, start: &'a str) -> impl Iterator<Item = &'a str> {
    let code = text.lines().filter_map(|line| line.split("//").next());
    code.flat_map(move |line| line.split(start).skip(1))
        .map(|path| {
            let end = path.find(|c: char| !c.is_alphanumeric() && c != '_' && c != ':');
            &path[..end.unwrap_or(path.len())]
        })
}

/// The file that a path within the package leads to: the longest beginning that is one.
fn file(path: &str, files: &BTreeMap<String, String>) -> String {
    let parts: Vec<&str> = path.split("::").filter(|part| !part.is_empty()).collect();
    (1..=parts.len())
        .rev()
        .map(|length| parts[..length].join("/"))
        .flat_map(|name| [name.clone(), format!("{name}/mod")])
        .find(|name| files.contains_key(name))
        .unwrap_or_else(|| "lib".to_string())
}

fn imports(files: &BTreeMap<String, String>) -> Imports {
    files
        .iter()
        .map(|(name, text)| {
            assert_eq!(
                paths_after(text, "super::").count(),
                0,
                "{name}: start the path at `crate`"
            );
            let from = paths_after(text, "crate::").map(|path| file(path, files));
            (name.clone(), from.filter(|other| other != name).collect())
        })
        .collect()
}

/// The files along a way round, if there is one that starts here.
fn round<'a>(
    name: &'a str,
    imports: &'a Imports,
    way: &mut Vec<&'a str>,
    done: &mut Vec<&'a str>,
) -> Option<Vec<&'a str>> {
    if let Some(at) = way.iter().position(|&before| before == name) {
        return Some(way[at..].to_vec());
    }
    if done.contains(&name) {
        return None;
    }
    way.push(name);
    let found = imports[name]
        .iter()
        .find_map(|next| round(next, imports, way, done));
    way.pop();
    done.push(name);
    found
}

fn cycle(imports: &Imports) -> Option<Vec<&str>> {
    let mut done = Vec::new();
    imports
        .keys()
        .find_map(|name| round(name, imports, &mut Vec::new(), &mut done))
}

#[test]
fn the_mechanics_have_no_import_cycle() {
    let mut files = BTreeMap::new();
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("src/physics");
    sources(&folder, "", &mut files);
    let imports = imports(&files);
    assert!(imports.values().map(Vec::len).sum::<usize>() > 100);
    assert_eq!(cycle(&imports), None);
}

/// Three files in a ring are found, however a path goes on behind them.
#[test]
fn a_cycle_would_be_seen() {
    let text = |text: &str| text.to_string();
    let mut files = BTreeMap::from([
        (text("body/model"), text("use crate::motion::plan::Plan;")),
        (text("motion/plan"), text("fn f() { crate::flight::fly() }")),
        (text("flight/mod"), text("use crate::body::model::{A, B};")),
        (text("lib"), text("// use crate::body::model::A;")),
    ]);
    let ring = imports(&files);
    assert_eq!(cycle(&ring).map(|ring| ring.len()), Some(3));
    files.insert(text("flight/mod"), text("use crate::GRAVITY;"));
    assert_eq!(cycle(&imports(&files)), None);
}
