//! No file imports from a file that, by whatever detour, imports from it: each can be read knowing
//! only what stands below it. Between packages the compiler sees to that; here it is held inside each.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

#[path = "support/packages.rs"]
mod packages;

use packages::packages;

/// Texts of source files by their paths below the package, without `.rs`.
type Files = BTreeMap<String, String>;

/// The files that each file imports from.
type Imports = BTreeMap<String, BTreeSet<String>>;

/// All source files of a folder, without comments.
fn sources(folder: &Path, below: &str, found: &mut Files) {
    for entry in fs::read_dir(folder).expect("a folder of sources") {
        let path = entry.expect("an entry of a folder").path();
        let name = path.file_stem().expect("a name").to_string_lossy();
        let own = format!("{below}{name}");
        if path.is_dir() {
            sources(&path, &format!("{own}/"), found);
        } else if path.extension().is_some_and(|end| end == "rs") {
            let text = fs::read_to_string(&path).expect("a source file");
            let code = text.lines().filter_map(|line| line.split("//").next());
            found.insert(own, code.collect::<Vec<_>>().join("\n"));
        }
    }
}

const fn in_a_name(c: char) -> bool {
    c.is_ascii_alphanumeric() || c == '_'
}

/// The paths that a text begins with, without the first name: several where it is a list in braces.
fn paths(text: &str) -> Vec<String> {
    let end = text.find(|c: char| !in_a_name(c) && c != ':');
    let (start, rest) = text.split_at(end.unwrap_or(text.len()));
    let Some(list) = rest
        .strip_prefix('{')
        .filter(|_| start.ends_with("::") || start.is_empty())
    else {
        return vec![start.to_owned()];
    };
    let (mut depth, mut item, mut items) = (0, String::new(), Vec::new());
    for c in list.chars() {
        match c {
            '}' if depth == 0 => break,
            '{' => depth += 1,
            '}' => depth -= 1,
            _ => {}
        }
        if c == ',' && depth == 0 {
            items.push(std::mem::take(&mut item));
        } else {
            item.push(c);
        }
    }
    items.push(item);
    // A trailing comma leaves an empty item.
    let items = items.iter().map(|item| item.trim());
    let paths = items.filter(|item| !item.is_empty()).flat_map(paths);
    paths.map(|path| format!("{start}{path}")).collect()
}

/// The paths behind every place where a text has `start` as a name of its own.
fn paths_after(text: &str, start: &str) -> Vec<String> {
    let places = text.match_indices(start).filter(|(at, _)| {
        let before = text[..*at].chars().next_back();
        !before.is_some_and(|c| in_a_name(c) || c == ':' || c == '$')
    });
    places
        .flat_map(|(at, _)| paths(&text[at + start.len()..]))
        .collect()
}

/// The file that a path within the package leads to: the longest beginning that is one.
fn file(path: &str, files: &Files) -> String {
    let parts: Vec<&str> = path.split("::").filter(|part| !part.is_empty()).collect();
    (1..=parts.len())
        .rev()
        .map(|length| parts[..length].join("/"))
        .flat_map(|name| [name.clone(), format!("{name}/mod")])
        .find(|name| files.contains_key(name))
        .unwrap_or_else(|| "lib".to_owned())
}

fn imports(files: &Files) -> Imports {
    let of = |(name, text): (&String, &String)| {
        assert!(
            paths_after(text, "super::").is_empty() || text.contains("mod tests {"),
            "{name}: start the path at `crate`"
        );
        let from_root = paths_after(text, "crate::").into_iter();
        // What a file declares it may also name without the way from the root.
        let own = name.trim_end_matches("mod").trim_end_matches('/');
        let own = if own == "lib" { "" } else { own };
        let children = files.keys().filter_map(|other| {
            let child = other.trim_end_matches("/mod");
            let child = child.strip_prefix(own)?.trim_start_matches('/');
            (!child.is_empty() && !child.contains('/')).then_some(child)
        });
        let declared = children.filter(|child| text.contains(&format!("mod {child};")));
        let by_name = declared.flat_map(|child| {
            let used = paths_after(text, &format!("{child}::")).into_iter();
            let own = own.replace('/', "::");
            used.map(move |path| format!("{own}::{child}::{path}"))
        });
        let from = from_root.chain(by_name).map(|path| file(&path, files));
        (name.clone(), from.filter(|other| other != name).collect())
    };
    files.iter().map(of).collect()
}

/// The files along a way round, if there is one that starts here.
fn round<'a>(
    name: &'a str,
    imports: &'a Imports,
    way: &mut Vec<&'a str>,
    done: &mut BTreeSet<&'a str>,
) -> Option<Vec<&'a str>> {
    if let Some(at) = way.iter().position(|&before| before == name) {
        return Some(way[at..].to_vec());
    }
    if done.contains(name) {
        return None;
    }
    way.push(name);
    let found = imports[name]
        .iter()
        .find_map(|next| round(next, imports, way, done));
    way.pop();
    done.insert(name);
    found
}

fn cycle(imports: &Imports) -> Option<Vec<&str>> {
    let mut done = BTreeSet::new();
    imports
        .keys()
        .find_map(|name| round(name, imports, &mut Vec::new(), &mut done))
}

#[test]
fn no_package_has_an_import_cycle() {
    let src = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut count = 0;
    for package in packages(&src) {
        let mut files = BTreeMap::new();
        sources(&src.join(&package), "", &mut files);
        let imports = imports(&files);
        count += imports.values().map(BTreeSet::len).sum::<usize>();
        assert_eq!(cycle(&imports), None, "in {package}");
    }
    assert!(count > 400, "{count}");
}

#[test]
fn the_page_and_the_command_have_no_import_cycle() {
    let src = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    for (folder, root) in [("page", "page/"), ("bin/aloft", "")] {
        let mut files = BTreeMap::new();
        sources(&src.join(folder), root, &mut files);
        // What stands outside the folder belongs to other packages.
        files.insert("lib".to_owned(), String::new());
        assert_eq!(cycle(&imports(&files)), None, "in {folder}");
    }
}

/// Three files in a ring are found, however a path goes on behind them, and in a list.
#[test]
fn a_cycle_would_be_seen() {
    let text = |text: &str| text.to_owned();
    let mut files = BTreeMap::from([
        (
            text("body/model"),
            text("use crate::{GRAVITY, motion::{plan::Plan}};"),
        ),
        (text("motion/plan"), text("fn f() { crate::flight::fly() }")),
        (
            text("flight/mod"),
            text("mod inner; fn f() { inner::of() }"),
        ),
        (
            text("flight/inner"),
            text("use crate::body::model::{A, B};"),
        ),
        (text("lib"), text("")),
    ]);
    let ring = imports(&files);
    assert_eq!(cycle(&ring).map(|ring| ring.len()), Some(4));
    files.insert(text("flight/inner"), text("use crate::GRAVITY;"));
    assert_eq!(cycle(&imports(&files)), None);
}
