//! The layers are packages, so that none can reach what it must not know. Which packages each may
//! reach is stated here; the compiler holds the rest.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

#[path = "support/packages.rs"]
mod packages;

use packages::packages;

/// Each layer, the lowest first, and the other layers that it may reach.
const LAYERS: [(&str, &[&str]); 21] = [
    ("physics", &[]),
    ("film", &[]),
    ("scenario", &["physics"]),
    ("attempt", &["scenario"]),
    ("figure", &["physics", "scenario"]),
    ("analysis", &["physics", "scenario"]),
    ("fit", &["physics", "scenario", "attempt", "analysis"]),
    ("trace", &["physics", "attempt"]),
    ("overlay", &["physics", "attempt"]),
    ("turntable", &["physics", "scenario"]),
    ("words", &[]),
    ("lesson", &["scenario", "analysis", "turntable", "words"]),
    (
        "describe",
        &[
            "physics",
            "film",
            "scenario",
            "attempt",
            "analysis",
            "fit",
            "trace",
            "overlay",
            "turntable",
            "words",
            "lesson",
        ],
    ),
    (
        "session",
        &[
            "physics",
            "scenario",
            "attempt",
            "analysis",
            "fit",
            "trace",
            "overlay",
            "turntable",
            "words",
            "describe",
            "lesson",
        ],
    ),
    ("appearance", &[]),
    (
        "picture",
        &[
            "physics",
            "scenario",
            "analysis",
            "words",
            "describe",
            "appearance",
        ],
    ),
    (
        "sheet",
        &[
            "scenario", "analysis", "words", "lesson", "describe", "picture",
        ],
    ),
    (
        "documents",
        &[
            "scenario", "analysis", "lesson", "words", "describe", "picture", "sheet",
        ],
    ),
    (
        "panel",
        &[
            "physics",
            "scenario",
            "attempt",
            "analysis",
            "fit",
            "trace",
            "overlay",
            "turntable",
            "words",
            "describe",
            "lesson",
            "session",
            "appearance",
        ],
    ),
    ("player", &["film"]),
    (
        "stage",
        &[
            "physics",
            "scenario",
            "figure",
            "turntable",
            "session",
            "appearance",
        ],
    ),
];

/// What draws, and what is the browser's, by the beginnings of the packages' names.
const SCREEN: [&str; 6] = ["bevy", "egui", "wasm-bindgen", "js-sys", "web-sys", "wgpu"];

/// The packages that a manifest names.
fn dependencies(manifest: &str) -> BTreeSet<&str> {
    let behind = manifest
        .split_once("[dependencies]")
        .expect("there are some")
        .1;
    behind
        .lines()
        .take_while(|line| !line.starts_with('['))
        .filter_map(|line| line.split_once(" = "))
        .map(|(name, _)| name)
        .collect()
}

#[test]
fn each_layer_reaches_only_what_it_may() {
    let src = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    assert_eq!(
        packages(&src),
        LAYERS.map(|(layer, _)| layer.to_owned()).into()
    );
    for (layer, may) in LAYERS {
        let manifest = fs::read_to_string(src.join(layer).join("Cargo.toml")).expect("a manifest");
        for name in dependencies(&manifest) {
            if let Some(other) = name.strip_prefix("turns-aloft-") {
                assert!(may.contains(&other), "{layer} reaches {other}");
            }
            let on_screen = SCREEN.iter().any(|start| name.starts_with(start));
            let may_draw = match layer {
                "panel" => name.starts_with("egui"),
                "player" => ["wasm-bindgen", "js-sys", "web-sys"].contains(&name),
                "stage" => name.starts_with("bevy"),
                _ => false,
            };
            assert!(!on_screen || may_draw, "{layer} reaches {name}");
        }
    }
}

#[test]
fn a_dependency_too_many_is_seen() {
    let manifest =
        "[lib]\npath = \"lib.rs\"\n[dependencies]\n# Why.\negui = \"1\"\n[features]\na = []\n";
    assert_eq!(dependencies(manifest), BTreeSet::from(["egui"]));
}
