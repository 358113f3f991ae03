//! The lessons that come with the program.

use std::f64::consts::TAU;
use std::fs;
use std::path::Path;

use turns_aloft::describe::quantity::filled;
use turns_aloft::lesson::figure::Figure;
use turns_aloft::lesson::names::NAMES;
use turns_aloft::lesson::{Answer, Choice, Flights, Lesson, Said, Setup, Step};
use turns_aloft::scenario::starts;
use turns_aloft::scenario::units::Units;
use turns_aloft::words::{Language, set_language};

fn lesson(name: &str) -> Lesson {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("assets/lessons");
    let text = fs::read_to_string(folder.join(format!("{name}.lesson.json")));
    Lesson::open_file(&text.expect("a file of ours")).expect("a lesson in order")
}

fn value(step: &Step, flights: &Flights, figure: &str) -> f64 {
    let figure = Figure::read(figure, &step.variants).expect("a figure");
    flights.value(&figure).expect("it is flown")
}

fn texts(lesson: &Lesson) -> Vec<&Said> {
    let plan = &lesson.plan;
    let mut texts = vec![&lesson.title, &lesson.for_whom];
    texts.extend(plan.parts.iter().map(|part| &part.doing));
    texts.extend(
        plan.fetch
            .iter()
            .chain(&plan.goes_wrong)
            .chain(&plan.curricula),
    );
    for answer in &plan.classroom_answers {
        texts.extend([&answer.said, &answer.reply]);
    }
    for step in &lesson.steps {
        texts.extend([&step.title, &step.question, &step.explanation]);
        texts.extend(&step.observe);
        if let Answer::Choice(choice) = &step.answer {
            texts.extend(choice.texts());
        }
    }
    texts
}

#[test]
fn all_are_in_order_and_written_back() {
    for name in NAMES {
        let lesson = lesson(name);
        let again = Lesson::open_file(&lesson.to_file()).expect("it is read back");
        assert!(again == lesson, "{name}");
        for (i, step) in lesson.steps.iter().enumerate() {
            let truth = step.truth(&Flights::of(step));
            assert!(truth.is_ok(), "{name}, step {}: {truth:?}", i + 1);
        }
    }
}

/// In both languages, with a plan that says what a teacher needs.
#[test]
fn all_are_whole() {
    for name in NAMES {
        let lesson = lesson(name);
        for said in texts(&lesson) {
            let Said::Each(each) = said else {
                panic!("{name}: {said:?} has one language");
            };
            assert!(each.iter().all(Option::is_some), "{name}: {said:?}");
        }
        let plan = &lesson.plan;
        assert!(
            !plan.fetch.is_empty() && plan.goes_wrong.len() >= 2,
            "{name}"
        );
        assert!(plan.classroom_answers.len() >= 2, "{name}");
        assert!(!plan.curricula.is_empty(), "{name}");
        let minutes = if lesson.pictures { 15 } else { 45 };
        assert_eq!(lesson.minutes, minutes, "{name}");
    }
}

/// Four or five steps of choices by picture, and hardly a word.
#[test]
fn the_lesson_for_children_has_hardly_a_word() {
    let lesson = lesson("arms-in");
    assert!(lesson.pictures && (4..=5).contains(&lesson.steps.len()));
    for step in &lesson.steps {
        let Answer::Choice(choice) = &step.answer else {
            panic!("{step:?} is no choice");
        };
        assert!(!matches!(choice, Choice::Open { .. }));
        for said in [&step.question, &step.explanation] {
            for text in said.all() {
                assert!(text.split_whitespace().count() <= 12, "{text}");
            }
        }
        for text in choice.texts().iter().flat_map(|said| said.all()) {
            assert!(text.split_whitespace().count() <= 2, "{text}");
        }
        assert!(!step.reason && step.observe.is_none());
    }
}

/// OpenStax, College Physics 2e, Example 10.14: 2.34 to 0.363 kg m² from 0.800 rev/s; printed 5.16 rev/s, 29.6 J
/// and 191 J, each to three figures.
#[test]
fn the_textbook_example_agrees_with_what_is_printed() {
    let lesson = lesson("what-stays-the-same");
    let step = (lesson.steps.iter())
        .find(|step| matches!(step.setup, Some(Setup::WorkedExample(_))))
        .expect("a worked example");
    let Some(Setup::WorkedExample(example)) = &step.setup else {
        unreachable!("it has just been found");
    };
    assert!(
        example
            .source
            .text()
            .contains("College Physics 2e, Example 10.14")
    );
    let flights = Flights::of(step);
    let near = |figure: &str, printed: f64, half: f64| {
        let found = value(step, &flights, figure);
        assert!((found - printed).abs() <= half, "{figure}: {found}");
    };
    near("first_inertia_kg_m2", 2.34, 1e-12);
    near("last_inertia_kg_m2", 0.363, 1e-12);
    near("first_rate_rad_s", 0.8 * TAU, 1e-12);
    near("last_rate_rad_s", 5.16 * TAU, 0.005 * TAU);
    near("first_energy_j", 29.6, 0.05);
    near("last_energy_j", 191.0, 0.5);
}

/// What the explanations say in words besides the figures.
#[test]
fn what_is_said_in_words_is_so() {
    let higher = lesson("higher-or-tighter");
    let step = |title: &str| {
        let found = higher
            .steps
            .iter()
            .find(|step| step.title.all().any(|it| it == title));
        found.unwrap_or_else(|| panic!("a step {title}"))
    };
    // The gains together are more than the three gains added up.
    let small = step("Three small steps");
    let flights = Flights::of(small);
    let turns = |figure: &str| value(small, &flights, figure);
    let gain = |variant: &str| turns(&format!("{variant}.turns")) - turns("turns");
    let alone = gain("higher") + gain("tighter") + gain("faster");
    assert!(gain("together") > alone + 0.01 && gain("together") < 1.3 * alone);
    // Height alone does not win all turns, and a higher jump turns no faster.
    let most = step("What wins most?");
    let flights = Flights::of(most);
    let of = |figure: &str| value(most, &flights, figure);
    assert!(of("highest.turns_missing") > 0.1);
    assert!((of("highest.peak_rate_rad_s") - of("peak_rate_rad_s")).abs() < 1e-3);
    let five = lesson("can-anybody-do-five");
    let limits = five
        .steps
        .iter()
        .find(|step| step.title.all().any(|it| it == "Limits"));
    let limits = limits.expect("a step about limits");
    let start = starts::named("five-turn-attempt").expect("a start");
    let beyond = start.scenario.beyond_seen(&start.scenario.fly());
    let keys: Vec<&str> = beyond.iter().map(|respect| respect.of.key()).collect();
    let expected = [
        "peak_rate_rad_s",
        "closing_torque_n_m_per_kg",
        "opening_torque_n_m_per_kg",
    ];
    assert_eq!(keys, expected);
    assert_eq!(value(limits, &Flights::of(limits), "limits_passed"), 3.0);
}

/// Figures stand in the texts of both languages, none of them left open.
#[test]
fn texts_are_filled_in() {
    let mut filled_in = 0;
    for name in NAMES {
        for step in &lesson(name).steps {
            let flights = Flights::of(step);
            for language in Language::ALL {
                set_language(language);
                for said in [&step.question, &step.explanation] {
                    let text = filled(said.text(), step, &flights, &Units::default());
                    assert!(!text.contains(['{', '}', '…']), "{text}");
                    filled_in += usize::from(text != said.text());
                }
            }
        }
    }
    assert!(filled_in > 30, "{filled_in}");
}

/// Most words of a sentence, or of a part of one that ends with a colon or semicolon, as of the program's own
/// texts (`tests/plain_words.rs`).
const MOST_WORDS: usize = 30;

#[test]
fn texts_are_plain() {
    let mut seen = 0;
    for name in NAMES {
        for text in texts(&lesson(name)).into_iter().flat_map(Said::all) {
            let ends = [". ", "? ", "! ", "; ", ": "];
            let sentences = ends
                .iter()
                .fold(text.to_owned(), |it, end| it.replace(end, "\n"));
            for sentence in sentences.lines() {
                assert!(
                    sentence.split_whitespace().count() <= MOST_WORDS,
                    "{sentence}"
                );
                seen += 1;
            }
            // One thing has one word; quantities in braces have their own.
            let words: String = text
                .split('{')
                .map(|it| it.split('}').next_back().unwrap_or(it))
                .collect();
            let others = words.to_lowercase().replace("angular momentum", "");
            assert!(!others.contains("momentum"), "{text}");
        }
    }
    assert!(seen > 300, "{seen}");
}

/// Where a step lets somebody jump higher or turn on a chair, cautions stand beside it.
#[test]
fn cautions_stand_where_they_have_to() {
    let all: Vec<Step> = NAMES.iter().flat_map(|name| lesson(name).steps).collect();
    let cautioned = |step: &Step| !step.cautions().is_empty();
    let heights = all.iter().filter(|step| {
        let free = step.free.iter().any(|free| free.key() == "jump_height_m");
        let variants = step.variants.iter().flat_map(|it| &it.changes.0);
        free || variants.into_iter().any(|[key, _]| key == "jump_height_m")
    });
    assert!(heights.clone().count() >= 5 && heights.into_iter().all(cautioned));
    assert!(all.iter().any(Step::turns_on_turntable));
    assert!(!all.iter().all(cautioned));
}
