//! A jump as a link: what is written is read back to the last bit, and nothing else ever is.

#[path = "support/aloft.rs"]
mod aloft;
#[path = "support/space.rs"]
mod space;

use proptest::prelude::*;

use turns_aloft::describe::Sentence;
use turns_aloft::scenario::file::LARGEST_BYTES;
use turns_aloft::scenario::link::{LONGEST, Link, Unreadable, from_fragment, to_fragment};
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::{Scenario, starts};

fn start(name: &str) -> Scenario {
    starts::named(name).expect("a start").scenario.clone()
}

/// A jump none of whose fields is the blank one's, with numbers short and long.
const PECULIAR: &str = r#"{
  "turns_aloft_scenario": 1,
  "scenario": {
    "name": "Übung 3 ⛸",
    "note": "Zeile 1\nZeile 2: \"Ä\" 氷",
    "jump": "off_ice",
    "jump_turns": 3,
    "table": "male",
    "stature_m": 1.3666666666666667,
    "body_mass_kg": 59.72,
    "ground": "trampoline",
    "boot_mass_kg": 1.1111111111111112,
    "turning": "clockwise",
    "takeoff_rate_rad_s": 1.8611111111111112,
    "takeoff_openness": 0.5,
    "jump_height_m": 0.7666666666666666,
    "lean_rad": -0.042,
    "pre_rotation_turns": 0.6111111111111112,
    "arm_tuck": 0.1,
    "leg_tuck": 0.16666666666666666,
    "arm_asymmetry": 0.67,
    "hand_mass_kg": 0.56,
    "hands_keep": "energy",
    "close_delay_s": 0.3611111111111111,
    "close_time_s": 0.63,
    "arm_lag_s": 0.25,
    "open_lead_s": 0.53,
    "open_time_s": 0.7583333333333333
  }
}"#;

fn peculiar() -> Scenario {
    Scenario::from_file(PECULIAR).expect("an admissible jump")
}

/// Every number by its bits: that 0 equals -0 is not enough.
fn bits(jump: &Scenario) -> Vec<u64> {
    Parameter::ALL.map(|key| key.get(jump).to_bits()).to_vec()
}

fn jumps(link: &Link) -> Vec<&Scenario> {
    [&link.jump].into_iter().chain(&link.reference).collect()
}

#[track_caller]
fn assert_comes_back(jump: &Scenario, reference: Option<&Scenario>) {
    let fragment = to_fragment(jump, reference);
    let link = from_fragment(&fragment)
        .expect("a link of ours")
        .expect("it opens");
    assert_eq!((&link.jump, link.reference.as_ref()), (jump, reference));
    assert!(!link.earlier_body);
    for (read, written) in jumps(&link).into_iter().zip([Some(jump), reference]) {
        assert_eq!(Some(bits(read)), written.map(bits));
    }
    let plain = |c: char| c.is_ascii_alphanumeric() || "-._".contains(c);
    assert!(fragment.chars().all(plain), "{fragment}");
    // Only what is new in a link needs a new version.
    let is_led = [Some(jump), reference]
        .into_iter()
        .flatten()
        .any(|it| it.led.is_some());
    assert!(fragment.ends_with(if is_led { ".3" } else { ".2" }));
}

#[track_caller]
fn refused(fragment: &str) -> Unreadable {
    let why = from_fragment(fragment)
        .expect("a link of ours")
        .expect_err("not to be opened");
    let said = why.sentence();
    assert!(!said.trim().is_empty() && !said.contains('\n'), "{said:?}");
    why
}

/// Version 1 as it was first sent: these have to open for ever.
const GOLDEN: &str = "jump.____DwdyHMdxHMf9PxEHVVVVVVVVxT-CBweIiIiIiIjoPwfe3d3d3d31P8LqBQdyHMdxHMfxP1GrBQfkOI7jOI7jP7IIB8dxHMdxHNc_8geSA9IGB0REREREROg_BgMBAgECDMOcYnVuZyAzIOKbuBlaZWlsZSAxClplaWxlIDI6ICLDhCIg5rC3XK5X6w.1";
const GOLDEN_PAIR: &str = "jump.____DwdyHMdxHMf9PxEHVVVVVVVVxT-CBweIiIiIiIjoPwfe3d3d3d31P8LqBQdyHMdxHMfxP1GrBQfkOI7jOI7jP7IIB8dxHMdxHNc_8geSA9IGB0REREREROg_BgMBAgECDMOcYnVuZyAzIOKbuBlaZWlsZSAxClplaWxlIDI6ICLDhCIg5rC3goCABNMPBUxhdGVys6QHhw.1";

/// The same for every word there was: jump, turns, table, ground, turning, what the hands keep.
const GOLDEN_WORDS: [(&str, &str); 8] = [
    (
        "jump.8cAEwAFB8QGgBiEhp3B34Q.1",
        "toe_loop 1 female ice anticlockwise rate",
    ),
    (
        "jump.8cB8wAFB8QGgBiEhAQIBAYC0aB4.1",
        "salchow 2 male floor anticlockwise rate",
    ),
    (
        "jump.8cDcAcABQfEBoAYhIQIDAgED_H4S.1",
        "loop 3 female trampoline clockwise rate",
    ),
    (
        "jump.8cC8A8ABQfEBoAYhIQMEAQEBG2MoDw.1",
        "flip 4 male ice clockwise angular_momentum",
    ),
    (
        "jump.8cDcAsABQfEBoAYhIQQFAQF1qdRk.1",
        "lutz 5 female floor anticlockwise angular_momentum",
    ),
    (
        "jump.8cDsAsABQfEBoAYhIQUBAgHelOs8.1",
        "axel 1 male trampoline anticlockwise angular_momentum",
    ),
    (
        "jump.8cCcA8ABQfEBoAYhIQYCAQLKvG8F.1",
        "off_ice 2 female ice clockwise energy",
    ),
    (
        "jump.8cD8A8ABQfEBoAYhIQcDAQEBAtyUkcI.1",
        "free 3 male floor clockwise energy",
    ),
];

#[test]
fn links_already_sent_still_open() {
    let link = |fragment| from_fragment(fragment).expect("ours").expect("it opens");
    let one = link(GOLDEN);
    assert_eq!(one.jump, peculiar());
    assert_eq!(bits(&one.jump), bits(&peculiar()));
    assert_eq!(one.reference, None);
    assert!(one.earlier_body);
    let two = link(GOLDEN_PAIR);
    assert_eq!(two.jump, peculiar());
    assert_eq!(
        two.reference.as_ref().map(|jump| &*jump.name),
        Some("Later")
    );
    assert_eq!(two.reference.map(|jump| jump.arm_tuck), Some(0.125));

    for (fragment, words) in GOLDEN_WORDS {
        let jump = link(fragment).jump;
        let file = serde_json::to_value(&jump).expect("it is plain");
        let of = |key: &str| file[key].to_string().replace('"', "");
        let read = [
            "jump",
            "jump_turns",
            "table",
            "ground",
            "turning",
            "hands_keep",
        ]
        .map(of);
        assert_eq!(read.join(" "), words, "{fragment}");
        assert!(link(fragment).earlier_body);
        assert_eq!((jump.stature_m, jump.takeoff_rate_rad_s), (1.5, 12.0));
    }
}

#[test]
fn links_are_short() {
    for start in starts::all() {
        let jump = &start.scenario;
        let mut changed = jump.clone();
        changed.name += " 2";
        changed.arm_tuck = 0.771;
        let (alone, two) = (
            to_fragment(jump, None).len(),
            to_fragment(jump, Some(&changed)).len(),
        );
        println!("{}: {alone}, {two} with another", start.name);
        // Our choice: what still looks like an address in a message.
        assert!(alone < 400 && two < alone + 60, "{}", start.name);
    }
}

#[test]
fn the_starts_and_the_peculiar_come_back() {
    let other = peculiar();
    for start in starts::all() {
        assert_comes_back(&start.scenario, None);
        assert_comes_back(&start.scenario, Some(&start.scenario));
        assert_comes_back(&start.scenario, Some(&other));
        assert_comes_back(&other, Some(&start.scenario));
    }
}

#[test]
fn numbers_keep_every_bit() {
    // Neighbours of short decimals, the smallest there are, and the zero with a sign.
    let mut jump = peculiar();
    for (number, height) in [
        (0.0, 0.5_f64.next_up()),
        (-0.0, 0.1_f64.next_up()),
        (5e-324, 0.3_f64.next_down()),
        (1e-7, 0.123_456_7),
        (0.35, 0.1 + 0.2),
        (-0.35, 2.5),
    ] {
        (jump.lean_rad, jump.jump_height_m) = (number, height);
        assert_comes_back(&jump, None);
    }
}

#[test]
fn what_a_file_may_hold_has_a_link_and_no_more() {
    let mut jump = peculiar();
    jump.note = "n".repeat(LARGEST_BYTES);
    while Scenario::from_file(&jump.to_file()).is_err() {
        jump.note.pop();
    }
    assert!(jump.note.len() > LARGEST_BYTES - 2_500);
    let mut reference = jump.clone();
    reference.note = "m".repeat(jump.note.len());
    assert_comes_back(&jump, Some(&reference));

    // Escaped in a file, this one grows.
    reference.note = "\u{1}".repeat(jump.note.len());
    assert_eq!(
        refused(&to_fragment(&jump, Some(&reference))),
        Unreadable::TooLong
    );
    assert_eq!(
        refused(&format!("jump.{}", "A".repeat(LONGEST + 1))),
        Unreadable::TooLong
    );
}

#[test]
fn what_is_not_ours_is_told_from_what_is_broken() {
    for other in ["", "foo", "jump", "section-2", "Jump.AAAA.1", "#"] {
        assert_eq!(from_fragment(other), None, "{other}");
    }
    for damaged in [
        "jump.",
        "jump..",
        "jump..1",
        "jump.1",
        "jump.AAAA.1",
        "jump.AAAA.2",
        "jump.AAAAAAAA.1",
        "jump.AAAAAAAA.2",
        "jump.AAAAAAAA.0",
        "jump.AAAAAAAA.+1",
        "jump.AAAAAAAA.01",
        "jump.AAAAAAAA.99999999999999999999999",
        "jump.AAAA AAAA.1",
        "jump.äöü.1",
    ] {
        assert_eq!(refused(damaged), Unreadable::Damaged, "{damaged}");
    }
}

#[test]
fn a_newer_link_says_so() {
    let fragment = to_fragment(&peculiar(), None);
    let newer = format!("{}12", fragment.strip_suffix('2').expect("version 2"));
    let why = refused(&newer);
    assert_eq!(why, Unreadable::Newer(12));
    assert!(why.sentence().contains("newer Turns Aloft"));
    assert_eq!(refused("jump.not even ours.4"), Unreadable::Newer(4));
    // What is of one version is not of another: its checksum is over the version too.
    let other = fragment.strip_suffix('2').expect("version 2");
    assert_eq!(refused(&format!("{other}1")), Unreadable::Damaged);
}

#[test]
fn a_value_out_of_range_is_named() {
    let mut jump = peculiar();
    jump.jump_height_m = 40.0;
    let why = refused(&to_fragment(&jump, None)).sentence();
    assert!(why.contains("jump_height_m = 40"), "{why:?}");
    // Nor beside a good one, nor for what is no slider's.
    let mut jump = peculiar();
    jump.jump_turns = 200;
    let why = refused(&to_fragment(&peculiar(), Some(&jump))).sentence();
    assert!(why.contains("jump_turns = 200"), "{why:?}");
    for broken in [f64::NAN, f64::INFINITY, f64::MAX] {
        let mut jump = peculiar();
        jump.stature_m = broken;
        let why = refused(&to_fragment(&jump, None));
        assert!(matches!(why, Unreadable::OutOfRange(_)), "{why:?}");
    }
}

#[test]
fn every_truncation_and_every_single_change_is_noticed() {
    let (one, other) = (peculiar(), start("half-a-turn-short"));
    for fragment in [to_fragment(&one, None), to_fragment(&other, Some(&one))] {
        for end in 0..fragment.len() {
            let read = from_fragment(&fragment[..end]);
            assert!(!matches!(read, Some(Ok(_))), "cut to {end}");
        }
        for at in 0..fragment.len() {
            for byte in 0..128_u8 {
                let mut bytes = fragment.clone().into_bytes();
                if bytes[at] == byte {
                    continue;
                }
                bytes[at] = byte;
                let changed = String::from_utf8(bytes).expect("ASCII");
                let read = from_fragment(&changed);
                assert!(!matches!(read, Some(Ok(_))), "{at}: {changed}");
            }
            let without = format!("{}{}", &fragment[..at], &fragment[at + 1..]);
            assert!(!matches!(from_fragment(&without), Some(Ok(_))), "{without}");
        }
        for more in ["A", "AA", "AAAA", ".1", "1", " "] {
            let longer = format!("{fragment}{more}");
            assert!(!matches!(from_fragment(&longer), Some(Ok(_))), "{longer}");
        }
    }
}

proptest! {
    #![proptest_config(space::cases(512))]

    #[test]
    fn what_is_written_is_read_back(
        jump in space::scenario(),
        reference in prop::option::of(space::scenario()),
        names in prop::array::uniform2(".{0,40}"),
        notes in prop::array::uniform2("\\PC{0,200}"),
    ) {
        let [first, second] = names;
        let [first_note, second_note] = notes;
        let jump = Scenario { name: first, note: first_note, ..jump };
        let reference = reference.map(|reference| Scenario { name: second, note: second_note, ..reference });
        assert_comes_back(&jump, reference.as_ref());
    }

    #[test]
    fn any_text_is_answered(text in "\\PC{0,300}") {
        prop_assert!(!matches!(from_fragment(&text), Some(Ok(_))));
        for version in 1..=3 {
            let ours = format!("jump.{text}.{version}");
            prop_assert!(!matches!(from_fragment(&ours), Some(Ok(_))));
        }
    }
}

fn printed(arguments: &[&str]) -> String {
    let output = aloft::aloft(arguments);
    assert!(output.status.success(), "{arguments:?}");
    String::from_utf8(output.stdout).expect("text")
}

#[test]
fn the_command_prints_links_and_reads_them() {
    let text = printed(&["link", "four-turns", "--beside", "crooked-takeoff"]);
    let fragment = text.trim_end();
    let link = from_fragment(fragment.strip_prefix('#').expect("a fragment"))
        .expect("ours")
        .expect("it opens");
    assert_eq!(link.jump, start("four-turns"));
    assert_eq!(link.reference, Some(start("crooked-takeoff")));

    let flown = printed(&["fly", "four-turns"]);
    assert_eq!(printed(&["fly", fragment]), flown);
    let address = format!("https://example.org/aloft/{fragment}");
    assert_eq!(printed(&["fly", &address]), flown);
    assert_eq!(
        printed(&["link", &address, "--beside", "crooked-takeoff"]),
        text
    );

    let output = aloft::aloft(&["fly", &fragment[..fragment.len() - 3]]);
    assert_eq!(output.status.code(), Some(2));
    let said = String::from_utf8(output.stderr).expect("text");
    assert!(
        said.contains("damaged") && said.trim_end().lines().count() == 1,
        "{said}"
    );
}
