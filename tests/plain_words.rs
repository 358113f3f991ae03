//! The texts are plain: short sentences, and one word for one thing, for people of twelve and for people
//! to whom the language is foreign.

use turns_aloft::words::Language;

/// Most words of a sentence, or of a part of one that ends with a colon or semicolon; what stands in
/// brackets is not counted. Our own limit.
const MOST_WORDS: usize = 30;

/// Every message: its name, and its text with values left out.
fn messages(language: Language) -> Vec<(String, String)> {
    let sources = language.sources();
    let lines = sources.iter().flat_map(|source| source.lines());
    lines
        .filter_map(|line| {
            let (name, text) = line.split_once(" = ")?;
            let is_name = !name.is_empty()
                && (name.chars()).all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-');
            is_name.then(|| (name.to_owned(), without(text, '{', '}')))
        })
        .collect()
}

fn without(text: &str, open: char, close: char) -> String {
    let mut depth = 0;
    let outside = text.chars().filter(|&c| {
        if c == open {
            depth += 1;
        }
        let is_outside = depth == 0;
        if c == close {
            depth -= 1;
        }
        is_outside
    });
    outside.collect()
}

fn has_word(text: &str, word: &str) -> bool {
    let letters = |c: char| !c.is_alphabetic();
    text.split(letters).any(|it| it.eq_ignore_ascii_case(word))
}

#[test]
fn sentences_are_short() {
    for language in Language::ALL {
        let messages = messages(language);
        assert!(messages.len() > 500, "{}", messages.len());
        for (name, text) in messages {
            let outside = without(&text, '(', ')');
            let ends = [". ", "? ", "! ", "; ", ": "];
            let sentences = ends
                .iter()
                .fold(outside, |text, end| text.replace(end, "\n"));
            for sentence in sentences.lines() {
                let words = sentence.split_whitespace().count();
                assert!(words <= MOST_WORDS, "{language:?} {name}: {sentence}");
            }
        }
    }
}

/// Words that were used for what has another word, or that take a fluent reader.
#[test]
fn one_thing_has_one_word() {
    let english = [
        ("owed", "turns are needed"),
        ("lever", "it is a change or an input"),
        ("playhead", "it is the time shown"),
        ("anew", "it is again"),
    ];
    let german = [
        ("Springer", "not everybody who jumps is a man"),
        ("Springers", "not everybody who jumps is a man"),
        ("Gewinn", "the question is called Ziel"),
    ];
    for (language, hard) in [
        (Language::English, &english[..]),
        (Language::German, &german),
    ] {
        for (name, text) in messages(language) {
            // The command speaks to programs.
            if name == "lever-unknown" {
                continue;
            }
            for (word, instead) in hard {
                assert!(!has_word(&text, word), "{name}, {word}: {instead}: {text}");
            }
        }
    }
    for (name, text) in messages(Language::English) {
        let others = text.to_lowercase().replace("angular momentum", "");
        assert!(!others.contains("momentum"), "{name}: {text}");
        for idiom in [
            "had it",
            "by nobody",
            "seen there",
            "put away",
            "as the ice is",
        ] {
            assert!(!text.contains(idiom), "{name}, {idiom}: {text}");
        }
    }
}

/// What is said of any jump holds on a floor and on a trampoline, too.
#[test]
fn ice_is_said_of_ice_alone() {
    let of_ice = ["marks-", "seen-", "start-", "off-ice", "ground-ice"];
    for (language, ices) in [
        (Language::English, &["ice"][..]),
        (Language::German, &["Eis", "Eises"]),
    ] {
        let mut found = 0;
        for (name, text) in messages(language) {
            if ices.iter().any(|ice| has_word(&text, ice)) {
                let own = of_ice.iter().any(|part| name.contains(part));
                assert!(own, "{name}: {text}");
                found += 1;
            }
        }
        assert!(found > 3, "the look finds what it looks for: {found}");
    }
}

#[test]
fn the_checks_can_fail() {
    assert!(has_word("The turns owed.", "owed") && !has_word("followed", "owed"));
    assert_eq!(without("a (b) c { $d }", '(', ')'), "a  c { $d }");
}
