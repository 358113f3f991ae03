//! Which messages the source says, and with which values.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

/// A message that is named where it is said.
pub struct Use {
    /// The file.
    pub at: String,
    pub id: String,
    pub values: BTreeSet<String>,
}

/// Every id behind one of the ways to say something.
pub fn uses() -> Vec<Use> {
    let mut uses = Vec::new();
    for (at, code) in files("src", &["rs"]) {
        for way in ["text(", "Message(", "say!("] {
            for (place, _) in code.match_indices(way) {
                let before = code[..place].chars().next_back();
                if before.is_some_and(|c| c.is_alphanumeric() || "_.".contains(c)) {
                    continue;
                }
                let behind = &code[place + way.len()..];
                let Some((id, rest)) = literal(behind) else {
                    continue;
                };
                uses.push(Use {
                    at: at.clone(),
                    id: id.to_owned(),
                    values: if way == "say!(" {
                        names(rest)
                    } else {
                        BTreeSet::new()
                    },
                });
            }
        }
    }
    uses
}

/// Everything in quotation marks that may be an id, in the source and in the page around it.
pub fn quoted() -> BTreeSet<String> {
    let mut all = BTreeSet::new();
    let page = files("web", &["js", "html", "py", "mjs"]);
    for (_, code) in files("src", &["rs"]).into_iter().chain(page) {
        let quotes = ['"', '\'', '`'];
        all.extend(
            code.split(quotes)
                .filter(|part| !part.is_empty())
                .filter(|part| part.chars().all(|c| c.is_ascii_alphanumeric() || c == '-'))
                .map(str::to_owned),
        );
    }
    all
}

/// The text of all files under a folder that end so, without lines of comment.
fn files(folder: &str, ends: &[&str]) -> Vec<(String, String)> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join(folder);
    let mut folders = vec![root];
    let mut files = Vec::new();
    while let Some(folder) = folders.pop() {
        for entry in fs::read_dir(&folder).expect("a folder of the source") {
            let path = entry.expect("an entry").path();
            if path.is_dir() {
                folders.push(path);
            } else if path
                .extension()
                .is_some_and(|end| ends.iter().any(|it| end == *it))
            {
                let text = fs::read_to_string(&path).expect("a file of the source");
                let code: Vec<&str> = text
                    .lines()
                    .filter(|line| !line.trim_start().starts_with("//"))
                    .collect();
                files.push((path.display().to_string(), code.join("\n")));
            }
        }
    }
    files
}

/// The text literal that comes next, and what is behind it.
fn literal(code: &str) -> Option<(&str, &str)> {
    code.trim_start().strip_prefix('"')?.split_once('"')
}

/// The names of the values up to the end of `say!`.
fn names(code: &str) -> BTreeSet<String> {
    let mut names = BTreeSet::new();
    let mut depth = 0;
    let mut inside_text = false;
    let mut before = ' ';
    for (place, c) in code.char_indices() {
        match c {
            '"' if before != '\\' => inside_text = !inside_text,
            _ if inside_text => {}
            '(' | '[' | '{' => depth += 1,
            ')' if depth == 0 => break,
            ')' | ']' | '}' => depth -= 1,
            ',' if depth == 0 => {
                let next = code[place + 1..].trim_start();
                if let Some((name, _)) = next.split_once(" =") {
                    let word = |c: char| c.is_ascii_alphanumeric() || c == '_';
                    if !name.is_empty() && name.chars().all(word) {
                        names.insert(name.to_owned());
                    }
                }
            }
            _ => {}
        }
        before = c;
    }
    names
}
