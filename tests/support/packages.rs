//! The packages of the layers.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

/// By their folders below `src`; what is left of `src` is the page and the command.
pub fn packages(src: &Path) -> BTreeSet<String> {
    let entries = fs::read_dir(src).expect("the sources");
    let folders = entries.map(|entry| entry.expect("an entry of a folder").path());
    folders
        .filter(|folder| folder.join("Cargo.toml").exists())
        .map(|folder| {
            folder
                .file_name()
                .expect("a name")
                .to_string_lossy()
                .into_owned()
        })
        .collect()
}
