//! What a visit brings up, in the language spoken.

use serde_json::{Value, json};
use turns_aloft::describe::About;
use turns_aloft::describe::Inline;
use turns_aloft::describe::Label;
use turns_aloft::describe::Sentence;
use turns_aloft::describe::Text;
use turns_aloft::describe::unit::UnitText;

use turns_aloft::analysis::budget::Cause;
use turns_aloft::analysis::caution::Caution;
use turns_aloft::analysis::lever::{Lever, Season};
use turns_aloft::analysis::limits::{Limits, Verdict};
use turns_aloft::analysis::map::{Axis, TurnMap};
use turns_aloft::analysis::uncertainty::{UncertainInput, Uncertainty};
use turns_aloft::analysis::weights::KEEPS;
use turns_aloft::describe::jump::notation;
use turns_aloft::scenario::call::Call;
use turns_aloft::scenario::ground::Ground;
use turns_aloft::scenario::jump::JumpName;
use turns_aloft::scenario::link;
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::reading::NotText;
use turns_aloft::scenario::units::{LengthUnit, MassUnit, RateUnit, Units};
use turns_aloft::scenario::{HandsKeep, Scenario, starts};
use turns_aloft::session::compare::{Which, describe};
use turns_aloft::session::goal::{GoalTurns, words as goal};
use turns_aloft::session::readings::{
    Group, call_text, change_text, facing_text, mark, phase, picture, readings,
    shortfall_range_text, shortfall_text, summary, uncalled_text,
};
use turns_aloft::session::{Question, Session, weights, why};

/// A text, and where it came from.
#[derive(Debug, Clone, PartialEq)]
pub struct Heard {
    pub place: String,
    pub text: String,
}

/// Collects what is heard.
#[derive(Default)]
struct Ear(Vec<Heard>);

impl Ear {
    fn hear(&mut self, place: impl Into<String>, text: impl Into<String>) {
        let (place, text) = (place.into(), text.into());
        if !text.is_empty() {
            self.0.push(Heard { place, text });
        }
    }

    fn notice(&mut self, place: &str, session: &mut Session) {
        let notice = session.notice().map(str::to_owned);
        self.hear(
            place,
            notice.unwrap_or_else(|| panic!("{place}: nothing is said")),
        );
        session.dismiss();
    }

    fn readings(&mut self, place: &str, session: &Session) {
        for line in readings(session).into_iter().chain(session.answers()) {
            let place = format!("{place}, {}", line.quantity);
            self.hear(place.clone() + ", label", line.label);
            self.hear(place.clone() + ", text", line.text);
            self.hear(place + ", about", line.about);
        }
    }
}

/// Whether the word stands in a text by itself.
pub fn has_word(text: &str, word: &str) -> bool {
    text.match_indices(word).any(|(place, _)| {
        let part = |c: Option<char>| c.is_some_and(|c| c.is_alphanumeric() || "-_".contains(c));
        !part(text[..place].chars().next_back()) && !part(text[place + word.len()..].chars().next())
    })
}

/// All there is to hear.
pub fn everything() -> Vec<Heard> {
    let mut ear = Ear::default();
    tables(&mut ear);
    refusals(&mut ear);
    for start in starts::all() {
        visit(&mut ear, start.name, &start.scenario);
    }
    for (name, jump) in others() {
        visit(&mut ear, name, &jump);
    }
    let first = &starts::all()[0].scenario;
    win_answers(&mut ear, first, 2.0);
    win_answers(&mut ear, first, 9.0);
    map_answers(&mut ear);
    compare_answers(&mut ear);
    notices(&mut ear);
    broken_files(&mut ear);
    ear.0
}

/// The answers of one visit to every question, told after a change without being worked out anew.
pub fn everything_kept(change: impl Fn(&mut Session)) -> Vec<Heard> {
    let mut ear = Ear::default();
    let four = starts::named("four-turns").expect("a start");
    let mut session = Session::default();
    session.open(four.scenario.clone());
    session.show_range(true);
    session.set_goal(GoalTurns::Turns(4.5));
    session.set_reference(Which::AsOpened);
    session.try_change(Parameter::ALL[0], 18.0);
    for question in Question::ALL {
        session.ask(question);
        session.poll(|| true);
    }
    change(&mut session);
    for question in Question::ALL {
        session.ask(question);
        if question == Question::Compare {
            session.poll(|| true);
        }
        ear.readings(question.name(), &session);
    }
    for (place, text) in ["win"; 9].into_iter().zip(session.goal_cautions()) {
        ear.hear(place, text);
    }
    session.set_reference(Which::Start("trampoline".to_owned()));
    change(&mut session);
    session.poll(|| true);
    ear.readings("beside a start", &session);
    ear.0
}

/// What stands in tables, whatever is flown.
fn tables(ear: &mut Ear) {
    for key in Parameter::ALL {
        ear.hear(key.key(), key.label());
        ear.hear(key.key(), key.inline());
        ear.hear(key.key(), key.about());
    }
    for row in UncertainInput::ALL {
        ear.hear(row.key(), row.label());
        ear.hear(row.key(), row.inline());
        ear.hear(row.key(), row.about());
    }
    for start in starts::all() {
        ear.hear(start.name, start.label());
        let jump = start.scenario.fly();
        for key in Parameter::ALL {
            if let Some(marks) = start.scenario.marks(key, &jump) {
                ear.hear(key.key(), marks.source.text());
            }
        }
    }
    for jump in JumpName::ALL {
        ear.hear(jump.key(), jump.label());
        for turns in [1, 2] {
            let notation = notation(jump, turns);
            // The sport's own letters.
            if !notation.starts_with(char::is_numeric) || notation.contains(' ') {
                ear.hear(jump.key(), notation);
            }
        }
    }
    for question in Question::ALL {
        ear.hear(question.name(), question.label());
    }
    for group in Group::ALL {
        ear.hear("group", group.label());
    }
    for cause in Cause::ORDER {
        ear.hear("cause", cause.label());
    }
    let units = RateUnit::ALL.map(RateUnit::unit).into_iter();
    let units = units.chain(LengthUnit::ALL.map(LengthUnit::unit));
    for unit in units.chain(MassUnit::ALL.map(MassUnit::unit)) {
        ear.hear("unit", unit.sign());
    }
    let calls = [
        Call::OverRotated,
        Call::Full,
        Call::Quarter,
        Call::Under,
        Call::Downgraded,
    ];
    for call in calls {
        ear.hear("call", call_text(call));
    }
    for ends in [[0.0, 10.0], [-150.0, 10.0], [-200.0, -150.0]] {
        ear.hear("no call", uncalled_text(ends));
    }
    for past_deg in [4.0, -92.0, 171.0] {
        ear.hear("facing", facing_text(past_deg));
    }
    for degrees in [169.2, -12.0] {
        ear.hear("shortfall", shortfall_text(degrees));
    }
    for ends in [[41.0, 148.0], [-12.0, 30.0], [-30.0, -12.0]] {
        ear.hear("shortfall", shortfall_range_text(ends));
    }
    ear.hear("change", change_text(0.25));
    for verdict in [
        Verdict::AlreadyReached,
        Verdict::WithinReach,
        Verdict::WithinMeasured,
        Verdict::AtEdge,
        Verdict::NotKnown,
        Verdict::BeyondMeasured,
        Verdict::CannotAlone,
    ] {
        ear.hear("verdict", goal::verdict(verdict));
    }
    for caution in [
        Caution::NoSafeNumber,
        Caution::Adults,
        Caution::Hands,
        Caution::Later,
        Caution::Ask,
    ] {
        ear.hear("caution", caution.text());
    }
    ear.hear("season", Season::SOURCE.text());
    for message in [
        goal::SEASON,
        goal::LIMITS,
        why::words::IDEAL,
        why::words::ICE,
        why::words::TURNS,
        why::words::ORDER,
        why::words::BACK,
        describe::ORDER,
    ] {
        ear.hear("table", message.text());
    }
}

/// Settings that are refused.
fn refusals(ear: &mut Ear) {
    let mut jump = starts::all()[0].scenario.clone();
    for (key, value) in [
        ("jump_height_m", "7.5"),
        ("jump_height_m", "1e300"),
        ("jump_height_m", "high"),
        ("pre_rotation_turns", "1.5"),
        ("arm_tuck", "1.5"),
        ("jump_turns", "9"),
        ("jump_turns", "two"),
        ("jump", "twirl"),
        ("table", "child"),
        ("wind_m_s", "1"),
    ] {
        let why = jump.set(key, value).expect_err("it cannot be");
        ear.hear(
            format!("{key} = {value}"),
            why.sentence().replace(value, ""),
        );
    }
    let why = jump.set("note", &"x".repeat(200_000)).expect_err("long");
    ear.hear("a long note", why.sentence());
    for why in [NotText::Utf16, NotText::Other] {
        ear.hear("no text", why.sentence());
    }
    let mut half_widths = Uncertainty::usual(&jump);
    for (key, value) in [
        ("jump_height_m", "7.5"),
        ("jump_height_m", "high"),
        ("arm_tuck", "1"),
    ] {
        let why = half_widths.set(key, value).expect_err("it cannot be");
        ear.hear(key, why.sentence().replace(value, ""));
    }
    let (mut limits, mut season) = (Limits::default(), Season::default());
    let lever = Lever::ALL[0];
    ear.hear(
        "limits",
        limits.set(lever, [0.5, 9.5]).expect_err("no").sentence(),
    );
    ear.hear(
        "limits",
        Lever::named("wind_m_s").expect_err("no").sentence(),
    );
    ear.hear("season", season.set(lever, 9.5).expect_err("no").sentence());
    for (name, ends, nodes) in [
        ("wind_m_s", [0.0, 1.0], 3),
        (lever.key(), [0.5, 9.5], 3),
        (lever.key(), [0.5, 0.5], 3),
        (lever.key(), [0.5, 0.6], 1),
    ] {
        let why = Axis::named(name, ends[0], ends[1], nodes).expect_err("no");
        ear.hear("axis", why.sentence());
    }
    let axis = Axis::new(lever.parameter(), 0.5, 0.6, 3).expect("an axis");
    ear.hear(
        "axes",
        TurnMap::new(&jump, axis, axis).expect_err("no").sentence(),
    );
}

/// Jumps that say what no starting point says.
fn others() -> Vec<(&'static str, Scenario)> {
    let changed = |change: &dyn Fn(&mut Scenario)| {
        let mut jump = starts::named("weighted-hands")
            .expect("a start")
            .scenario
            .clone();
        change(&mut jump);
        jump
    };
    vec![
        ("free", changed(&|jump| jump.jump = JumpName::Free)),
        (
            "off the ice",
            changed(&|jump| {
                jump.jump = JumpName::OffIce;
                jump.ground = Ground::Floor;
            }),
        ),
        ("a turn too far", changed(&|jump| jump.jump_turns = 2)),
        (
            "turns too far",
            changed(&|jump| {
                (jump.jump_turns, jump.pre_rotation_turns) = (1, 0.3);
            }),
        ),
        ("too far off the ice", {
            let mut jump = starts::named("trampoline")
                .expect("a start")
                .scenario
                .clone();
            jump.jump_turns = 1;
            jump
        }),
        (
            "axel",
            changed(&|jump| {
                jump.jump = JumpName::Axel;
                jump.jump_turns = 2;
            }),
        ),
        (
            "rate kept",
            changed(&|jump| jump.hands_keep = HandsKeep::Rate),
        ),
        (
            "energy kept",
            changed(&|jump| jump.hands_keep = HandsKeep::Energy),
        ),
        ("late", changed(&|jump| jump.close_delay_s = 0.3)),
        ("slow", changed(&|jump| jump.close_time_s = 0.8)),
        (
            "one arm late",
            changed(&|jump| {
                (jump.close_time_s, jump.arm_lag_s) = (0.05, 0.3);
            }),
        ),
        ("arms out", changed(&|jump| jump.arm_tuck = 0.2)),
        (
            "legs out",
            changed(&|jump| (jump.arm_tuck, jump.leg_tuck) = (1.0, 0.0)),
        ),
        (
            "opens early",
            changed(&|jump| {
                (jump.open_lead_s, jump.open_time_s) = (0.5, 0.1);
            }),
        ),
        (
            "leans",
            changed(&|jump| {
                (jump.lean_rad, jump.arm_tuck, jump.leg_tuck) = (0.35, 1.0, 1.0);
            }),
        ),
        (
            "as good as it gets",
            changed(&|jump| {
                (jump.arm_tuck, jump.leg_tuck) = (1.0, 1.0);
                (jump.close_delay_s, jump.close_time_s, jump.arm_lag_s) = (0.0, 0.05, 0.0);
                (jump.open_lead_s, jump.lean_rad, jump.arm_asymmetry) = (0.0, 0.0, 0.0);
            }),
        ),
    ]
}

/// A jump with its readings at several moments, and why it has its turns.
fn visit(ear: &mut Ear, place: &str, jump: &Scenario) {
    let mut session = Session::default();
    session.open(jump.clone());
    ear.readings(place, &session);
    ear.hear("summary", summary(&session));
    let owed = session.jump().owed;
    if owed.is_some_and(|owed| owed.over_rotated_deg.is_some()) {
        // The others are signs of the sport.
        ear.hear("mark", mark(owed));
    }
    session.show_range(true);
    session.set_units(Units {
        length: LengthUnit::In,
        rate: RateUnit::DegPerS,
        ..*session.units()
    });
    let touchdown_s = session.flight().touchdown_s;
    for part in [0.0, 0.05, 0.3, 0.6, 0.95, 1.0] {
        session.scrub(part * touchdown_s);
        ear.hear("phase", phase(&session));
        ear.hear("picture", picture(&session));
    }
    ear.readings(place, &session);
    ear.hear("summary", summary(&session));
    session.ask(Question::Why);
    session.poll(|| true);
    ear.readings(place, &session);
    let went = session.went().expect("it has been worked out");
    for cause in Cause::ORDER {
        ear.hear("cause", why::words::cause(&session, cause));
    }
    ear.hear("one change", went.budget.sentence());
    for said in why::words::of_change(&session, went) {
        ear.hear("change", said);
    }
    for said in why::words::of_steps(&session) {
        ear.hear("steps", said);
    }
    if let Some(held) = session.weights_held() {
        ear.hear("weights", weights::held(&session, held));
    }
    for said in session
        .step_cautions()
        .into_iter()
        .chain(session.map_cautions())
    {
        ear.hear("caution", said);
    }
}

fn win_answers(ear: &mut Ear, jump: &Scenario, turns: f64) {
    let mut session = Session::default();
    session.open(jump.clone());
    session.set_goal(GoalTurns::Turns(turns));
    session.step_limit(Lever::ALL[2], 1, 1.0);
    session.step_season(Lever::ALL[1], -1e6);
    session.ask(Question::Goal);
    session.poll(|| true);
    ear.readings("win", &session);
    for (single, _) in session.singles() {
        ear.hear("win", single.lever.parameter().label());
        ear.hear("win", goal::basis(&session, single));
        ear.hear("win", goal::most(&session, single));
        if let Some(proposal) = &single.proposal {
            ear.hear("win", goal::landing(&session, proposal.landing_load_bw));
        }
    }
    if let (Some(joint), _) = session.combination() {
        ear.hear("win", goal::effort(joint));
        ear.hear("win", joint.judgement.source.text());
        for change in goal::parts(&session, joint) {
            ear.hear("win", goal::part(&session, change));
        }
    }
    for lever in Lever::ALL {
        // A number and its unit alone may be the same.
        ear.hear(lever.key(), format!("{}!", goal::limit(&session, lever)));
        ear.hear(lever.key(), format!("{}!", goal::season(&session, lever)));
    }
    for said in session.goal_cautions() {
        ear.hear("win", said);
    }
    ear.hear("win", goal::question(&session));
    session.set_goal(GoalTurns::Turns(1.0));
    ear.hear("win", goal::question(&session));
}

fn map_answers(ear: &mut Ear) {
    let mut session = Session::default();
    session.ask(Question::Map);
    session.poll(|| false);
    ear.readings("map under way", &session);
    session.poll(|| true);
    ear.readings("map", &session);
    let hands = Parameter::named("hand_mass_kg").expect("a key");
    session.choose_map_lever(0, hands);
    session.poll(|| true);
    ear.readings("map of the hands", &session);
    for keep in KEEPS {
        session.change(|jump| jump.hands_keep = keep);
        for said in session.map_cautions() {
            ear.hear("map of the hands", said);
        }
    }
}

fn compare_answers(ear: &mut Ear) {
    let mut session = Session::default();
    session.ask(Question::Compare);
    session.keep_jump();
    for reference in ["trampoline", "crooked-takeoff", "half-a-turn-short"] {
        session.set_reference(Which::Start(reference.to_owned()));
        session.poll(|| true);
        ear.readings(reference, &session);
    }
    session.set_reference(Which::AsOpened);
    for (key, value) in [(0, 12.0), (0, 5.0), (1, 0.5), (13, 0.6), (4, 0.5)] {
        session.set(Parameter::ALL[key], value);
        session.poll(|| true);
        ear.readings(Parameter::ALL[key].key(), &session);
    }
    session.reset_all();
    session.change(|jump| jump.boot_mass_kg += 1e-6);
    session.poll(|| true);
    ear.readings("hardly changed", &session);
}

/// A jump with somebody's own name, which is quoted as it is.
fn own() -> Scenario {
    Scenario {
        name: "Monday".to_owned(),
        ..starts::all()[1].scenario.clone()
    }
}

/// What is said when something does not work.
fn notices(ear: &mut Ear) {
    let mut session = Session::default();
    for key in Parameter::ALL {
        session.set(key, 1e9);
        ear.notice(key.key(), &mut session);
        session.set(key, f64::NAN);
        ear.notice(key.key(), &mut session);
        session.reset(key);
    }
    let good = own();
    let fragment = link::to_fragment(&good, None);
    let cut = &fragment[..fragment.len() - 4];
    let (stem, _) = fragment.rsplit_once('.').expect("a version");
    for (place, fragment) in [
        ("a link cut short", cut.to_owned()),
        ("a newer link", format!("{stem}.9")),
        (
            "a long link",
            format!("jump.{}.1", "A".repeat(link::LONGEST)),
        ),
    ] {
        session.open_link(&fragment);
        ear.notice(place, &mut session);
    }
    session.set(Parameter::ALL[4], 0.5);
    session.open_link(&fragment);
    ear.notice("a link to somebody with another jump", &mut session);
    session.restore("rubbish");
    ear.notice("the last visit", &mut session);
    earlier_bodies(ear, &mut session);

    session.bring_back_kept();
    ear.notice("nothing to bring back", &mut session);
    session.keep_jump();
    let kept: Vec<_> = session.library().collection().entries().to_vec();
    let id = kept.last().expect("it was kept").id;
    session.rename_kept(id, " ");
    ear.notice("no name", &mut session);
    session.rename_kept(id, &"x".repeat(100));
    ear.notice("a long name", &mut session);
    session.delete_kept(id);
    session.delete_kept(id);
    ear.notice("deleted twice", &mut session);
    session.change(|jump| jump.note = "x".repeat(200_000));
    session.keep_jump();
    ear.notice("a long note", &mut session);
    for (place, jumps) in [
        ("no jump", vec![]),
        ("one jump", vec![&good]),
        ("two jumps", vec![&good; 2]),
        ("many jumps", vec![&good; 501]),
    ] {
        session.open_text(&collection(&jumps).to_string());
        ear.notice(place, &mut session);
    }
    let kept = session.kept_jumps();
    let kept: Value = serde_json::from_str(&kept).expect("JSON");
    let changed = |change: &dyn Fn(&mut Value)| {
        let mut kept = kept.clone();
        change(&mut kept);
        kept.to_string()
    };
    for (place, text) in [
        (
            "newer",
            changed(&|kept| kept["turns_aloft_kept_jumps"] = json!(9)),
        ),
        (
            "of no version",
            changed(&|kept| kept["turns_aloft_kept_jumps"] = json!(null)),
        ),
        (
            "too many",
            changed(&|kept| kept["next_id"] = json!(1_u64 << 60)),
        ),
        ("one twice", changed(&|kept| kept["next_id"] = json!(0))),
        ("a number", changed(&|kept| kept["jumps"] = json!(1.5))),
        (
            "an odd name",
            changed(&|kept| {
                kept["jumps"][0]["jump"]["scenario"]["name"] = json!("x  x");
            }),
        ),
        ("long", " ".repeat(2_000_001)),
        ("rubbish", "rubbish".to_owned()),
    ] {
        let why = session.restore_kept_jumps(&text).expect_err("it is broken");
        ear.hear(place, why.sentence());
    }
}

/// What was saved before the body was refined.
fn earlier_bodies(ear: &mut Ear, session: &mut Session) {
    let one = own().to_file().replacen(": 2,", ": 1,", 1);
    session.open_text(&one);
    ear.notice("a jump of version 1", session);
    session.open_text(&format!(
        "{{\"turns_aloft_collection\": 1, \"jumps\": [{one}, {one}]}}"
    ));
    ear.notice("jumps of version 1", session);
    let visit = session
        .keep()
        .replace("_scenario\\\": 2", "_scenario\\\": 1");
    session.restore(&visit);
    session.report_earlier_body();
    ear.notice("a visit of version 1", session);
}

fn collection(jumps: &[&Scenario]) -> Value {
    let jumps: Vec<Value> = jumps
        .iter()
        .map(|jump| serde_json::from_str(&jump.to_file()).expect("JSON"))
        .collect();
    json!({"turns_aloft_collection": 1, "jumps": jumps})
}

/// Everything that can be wrong with JSON itself.
pub const BROKEN_JSON: [&str; 23] = [
    "",
    "[",
    "[1",
    "{",
    "{\"a\":",
    "\"a",
    "{\"a\" 1}",
    "[1 2]",
    "{\"a\":1 \"b\":2}",
    "nul",
    "x",
    "{1:2}",
    "\"\\x\"",
    "-",
    "1e999",
    "\"\\ud800\"",
    "\"\\ud8",
    "[1,]",
    "{\"a\":1,}",
    "1 2",
    "\"\u{1}\"",
    "\"\\ud800\\u0041\"",
    "{\"turns_aloft_collection\": 1,",
];

/// What is done to a file, and in a few words what.
type Change<'a> = (&'a str, &'a dyn Fn(&mut Value));

/// Files of one jump and of several that cannot be opened.
fn broken_files(ear: &mut Ear) {
    let good = own();
    let file: Value = serde_json::from_str(&good.to_file()).expect("JSON");
    let changes: [Change; 16] = [
        ("newer", &|file| file["turns_aloft_scenario"] = json!(9)),
        ("of no version", &|file| {
            file["turns_aloft_scenario"] = json!("x")
        }),
        ("an entry too many", &|file| {
            file["scenario"]["wind_m_s"] = json!(1)
        }),
        ("another entry too many", &|file| {
            file["wind_m_s"] = json!(1)
        }),
        ("an entry missing", &|file| {
            file["scenario"]
                .as_object_mut()
                .expect("an object")
                .remove("note");
        }),
        ("out of range", &|file| {
            file["scenario"]["jump_height_m"] = json!(7.5)
        }),
        ("turns out of range", &|file| {
            file["scenario"]["jump_turns"] = json!(9)
        }),
        ("too many turns", &|file| {
            file["scenario"]["jump_turns"] = json!(300)
        }),
        ("half a turn", &|file| {
            file["scenario"]["jump_turns"] = json!(1.5)
        }),
        ("a text for a number", &|file| {
            file["scenario"]["arm_tuck"] = json!("high")
        }),
        ("nothing for a number", &|file| {
            file["scenario"]["arm_tuck"] = json!(null)
        }),
        ("truth for a text", &|file| {
            file["scenario"]["note"] = json!(true)
        }),
        ("a list for a word", &|file| {
            file["scenario"]["ground"] = json!([true])
        }),
        ("a number for a text", &|file| {
            file["scenario"]["name"] = json!(1.5)
        }),
        ("an unknown word", &|file| {
            file["scenario"]["ground"] = json!("sand")
        }),
        ("a list for a jump", &|file| {
            file["scenario"] = json!("jump")
        }),
    ];
    let mut texts: Vec<(String, String)> = Vec::new();
    for (place, change) in changes {
        let mut changed = file.clone();
        change(&mut changed);
        texts.push((place.to_owned(), changed.to_string()));
        let mut jumps = collection(&[&good, &good]);
        jumps["jumps"][1] = changed;
        texts.push((format!("{place}, among others"), jumps.to_string()));
    }
    let many: [Change; 6] = [
        ("a newer collection", &|file| {
            file["turns_aloft_collection"] = json!(9)
        }),
        ("no collection", &|file| {
            file["turns_aloft_collection"] = json!(1.5)
        }),
        ("no list", &|file| file["jumps"] = json!({})),
        ("an entry too many", &|file| file["wind_m_s"] = json!(1)),
        ("no jump", &|file| file["jumps"] = json!([null])),
        ("no name", &|file| {
            file["jumps"][0]["scenario"]["name"] = json!("")
        }),
    ];
    for (place, change) in many {
        let mut changed = collection(&[&good]);
        change(&mut changed);
        texts.push((place.to_owned(), changed.to_string()));
    }
    texts.push(("too large".to_owned(), " ".repeat(200_000)));
    let mark = "{\"turns_aloft_collection\"";
    texts.push((
        "too many".to_owned(),
        mark.to_owned() + &" ".repeat(2_000_001),
    ));
    for json in BROKEN_JSON {
        texts.push((format!("JSON {json}"), json.to_owned()));
    }
    texts.push(("no entries".to_owned(), "{}".to_owned()));
    texts.push(("a list".to_owned(), "[]".to_owned()));
    texts.push(("deep".to_owned(), "[".repeat(500)));
    let twice = good
        .to_file()
        .replacen("\"note\"", "\"note\": \"\", \"note\"", 1);
    texts.push(("an entry twice".to_owned(), twice));
    let mut session = Session::default();
    for (place, text) in texts {
        session.open_text(&text);
        ear.notice(&place, &mut session);
    }
}
