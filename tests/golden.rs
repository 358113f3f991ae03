//! Every answer of the command is what it was before the code was rearranged, for 300 made-up jumps.
//!
//! Source: the command itself, built before the first move; `tests/golden/answers.json.gz` holds what
//! it printed. So this compares the program with itself and says nothing about physics: the other
//! tests do that. Every fifth jump is compared in each run, all of them with
//! `cargo test --no-default-features --test golden -- --ignored all_300`. A change that is meant to
//! move a number writes the file again, with `-- --ignored write`, and says why in its commit.

use std::collections::BTreeMap;
use std::fs::{self, File};
use std::io::{Read as _, Write as _};
use std::path::{Path, PathBuf};
use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::thread;

use flate2::Compression;
use flate2::read::GzDecoder;
use flate2::write::GzEncoder;
use rand::rngs::StdRng;
use rand::{RngExt as _, SeedableRng as _};
use serde::{Deserialize, Serialize};
use serde_json::Value;

use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::{Scenario, starts};

#[path = "support/aloft.rs"]
mod support;

const JUMPS: usize = 300;

/// Room for another order of summing, and for nothing else.
const TOLERANCE: f64 = 1e-12;

/// What is asked about each jump, and whether the answer is long enough to keep only a digest of it.
/// `{}` stands for the scenario file.
const QUESTIONS: [(&[&str], bool); 9] = [
    (&["fly", "{}", "--range"], false),
    (&["budget", "{}"], false),
    (&["steps", "{}"], false),
    (&["reach", "{}"], false),
    (&["reach", "{}", "--turns", "3"], false),
    (&["compare", "{}", "junior-double"], false),
    (&["link", "{}"], false),
    (
        &[
            "map",
            "{}",
            "--x",
            "arm_tuck:0:1:3",
            "--y",
            "jump_height_m:0.2:0.8:3",
        ],
        false,
    ),
    (&["export", "{}"], true),
];

#[derive(Serialize, Deserialize)]
struct Golden {
    scenario: String,
    /// As printed, or a digest; by the arguments.
    answers: BTreeMap<String, String>,
}

fn path() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/golden/answers.json.gz")
}

/// Half of them anywhere in the admissible ranges, half near a starting point.
fn drawn() -> Vec<Scenario> {
    let mut rng = StdRng::seed_from_u64(1687);
    let starts = starts::all();
    (0..JUMPS)
        .map(|i| {
            let mut scenario = starts[i % starts.len()].scenario.clone();
            scenario.name = format!("Made-up jump {i}");
            let spread = if i % 2 == 0 { 1.0 } else { 0.15 };
            for key in Parameter::ALL {
                let anywhere = rng.random_range(key.least()..=key.most());
                let now = key.get(&scenario);
                let value = now + (anywhere - now) * spread;
                key.set(&mut scenario, value)
                    .expect("it lies between two admissible values");
            }
            let mut pick = |name: &str, words: &[&str]| {
                let word = words[rng.random_range(0..words.len())];
                scenario.set(name, word).expect("the word is known");
            };
            pick("jump", &["axel", "lutz", "salchow", "free"]);
            pick("jump_turns", &["1", "2", "3", "4", "5"]);
            pick("table", &["female", "male"]);
            pick("ground", &["ice", "floor", "trampoline"]);
            pick("turning", &["anticlockwise", "clockwise"]);
            pick("hands_keep", &["rate", "angular_momentum", "energy"]);
            scenario
        })
        .collect()
}

/// An answer without its sentences, whose wording may be improved. An answer that is not JSON has none.
fn without_sentences(answer: &str) -> String {
    fn strip(value: &mut Value) {
        match value {
            Value::String(text) if text.contains(' ') => text.clear(),
            Value::Array(values) => values.iter_mut().for_each(strip),
            Value::Object(entries) => entries.values_mut().for_each(strip),
            _ => {}
        }
    }
    let Ok(mut value) = serde_json::from_str(answer) else {
        return answer.to_owned();
    };
    strip(&mut value);
    value.to_string()
}

/// A text as what stands between its numbers, and the numbers.
fn taken_apart(text: &str) -> (String, Vec<f64>) {
    let (mut between, mut numbers) = (String::new(), Vec::new());
    let mut rest = text;
    while let Some(at) = rest.find(|c: char| c.is_ascii_digit()) {
        let start = if rest[..at].ends_with('-') {
            at - 1
        } else {
            at
        };
        between.push_str(&rest[..start]);
        between.push('#');
        let is_part = |i: usize, c: char| {
            c.is_ascii_digit()
                || c == '.'
                || c == 'e'
                || (c == '-' && (i == start || rest[..i].ends_with('e')))
        };
        let end = rest
            .char_indices()
            .find(|&(i, c)| i >= start && !is_part(i, c))
            .map_or(rest.len(), |(i, _)| i);
        match rest[start..end].parse() {
            Ok(number) => numbers.push(number),
            Err(_) => between.push_str(&rest[start..end]),
        }
        rest = &rest[end..];
    }
    between.push_str(rest);
    (between, numbers)
}

/// Of a long answer: how much there is, its sums with eight sets of weights, and every 101st number.
fn digest(text: &str) -> String {
    let (between, numbers) = taken_apart(text);
    let mut kept = vec![between.len() as f64, numbers.len() as f64];
    kept.extend((1..=8).map(|wave| {
        let weight = |i: usize| libm::cos(f64::from(wave) * 0.1 * i as f64) / numbers.len() as f64;
        let weighed = numbers.iter().enumerate().map(|(i, n)| n * weight(i));
        weighed.sum::<f64>()
    }));
    kept.extend(numbers.iter().step_by(101));
    let kept: Vec<String> = kept.iter().map(f64::to_string).collect();
    kept.join(" ")
}

fn asked(scenario: &str, file: &Path) -> BTreeMap<String, String> {
    fs::write(file, scenario).expect("the folder for tests can be written to");
    let name = file.to_str().expect("the path is UTF-8");
    QUESTIONS
        .iter()
        .map(|(question, long)| {
            let arguments: Vec<&str> = question
                .iter()
                .map(|argument| if *argument == "{}" { name } else { argument })
                .collect();
            let output = support::aloft(&arguments);
            let all = [output.stdout, output.stderr].concat();
            let text = String::from_utf8(all).expect("the command prints UTF-8");
            let text = text.replace(name, "{}");
            let answer = if *long { digest(&text) } else { text };
            (question.join(" "), answer)
        })
        .collect()
}

/// Answers for all of them, on every core.
fn answers(scenarios: &[String]) -> Vec<BTreeMap<String, String>> {
    let next = AtomicUsize::new(0);
    let all = Mutex::new(vec![BTreeMap::new(); scenarios.len()]);
    thread::scope(|scope| {
        for worker in 0..thread::available_parallelism().map_or(2, usize::from) {
            let (next, all) = (&next, &all);
            scope.spawn(move || {
                let file = PathBuf::from(env!("CARGO_TARGET_TMPDIR"))
                    .join(format!("golden-{}-{worker}.json", std::process::id()));
                while let Some((i, scenario)) = {
                    let i = next.fetch_add(1, Ordering::Relaxed);
                    scenarios.get(i).map(|scenario| (i, scenario))
                } {
                    let answered = asked(scenario, &file);
                    all.lock().expect("no worker panics while it holds it")[i] = answered;
                }
                fs::remove_file(&file).expect("the worker wrote it");
            });
        }
    });
    all.into_inner().expect("no worker panicked")
}

#[test]
fn every_answer_is_what_it_was_before() {
    compare(5);
}

#[test]
#[ignore = "takes minutes"]
fn every_answer_is_what_it_was_before_for_all_300() {
    compare(1);
}

/// Compares the answers for every so many jumps.
fn compare(every: usize) {
    let mut text = String::new();
    GzDecoder::new(File::open(path()).expect("the golden file is there"))
        .read_to_string(&mut text)
        .expect("the golden file is gzip");
    let golden: Vec<Golden> = serde_json::from_str(&text).expect("the golden file is JSON");
    assert_eq!(golden.len(), JUMPS);
    let golden: Vec<Golden> = golden.into_iter().step_by(every).collect();
    let scenarios: Vec<String> = golden.iter().map(|one| one.scenario.clone()).collect();
    let mut numbers_compared = 0;
    for (jump, (golden, answers)) in golden.iter().zip(answers(&scenarios)).enumerate() {
        for (question, before) in &golden.answers {
            let now = &answers[question];
            let (words, numbers) = taken_apart(&without_sentences(now));
            let (words_before, numbers_before) = taken_apart(&without_sentences(before));
            assert_eq!(words, words_before, "jump {jump}: {question}");
            assert_eq!(
                numbers.len(),
                numbers_before.len(),
                "jump {jump}: {question}"
            );
            for (number, before) in numbers.iter().zip(&numbers_before) {
                let near = TOLERANCE * before.abs().max(1.0);
                assert!(
                    (number - before).abs() <= near,
                    "jump {jump}: {question}: {before} before, {number} now"
                );
            }
            numbers_compared += numbers.len();
        }
    }
    assert!(
        numbers_compared > 400 * golden.len(),
        "{numbers_compared} numbers compared"
    );
}

#[test]
#[ignore = "writes the golden file again"]
fn write_the_golden_file() {
    let scenarios: Vec<String> = drawn().iter().map(Scenario::to_file).collect();
    let golden: Vec<Golden> = scenarios
        .iter()
        .zip(answers(&scenarios))
        .map(|(scenario, answers)| Golden {
            scenario: scenario.clone(),
            answers,
        })
        .collect();
    let json = serde_json::to_string(&golden).expect("texts are JSON");
    let file = File::create(path()).expect("the folder is there");
    let mut packed = GzEncoder::new(file, Compression::best());
    packed
        .write_all(json.as_bytes())
        .expect("the disk has room");
    packed.finish().expect("the disk has room");
}

#[test]
fn numbers_and_words_are_told_apart() {
    let (words, numbers) = taken_apart(r#"{"a_m": -1.5e-7, "b": 12, "c-3x"}"#);
    assert_eq!(words, r##"{"a_m": #, "b": #, "c#x"}"##);
    assert_eq!(numbers, [-1.5e-7, 12.0, -3.0]);
}
