//! Collects the texts that a visit shows, in the current language.

use serde_json::{Value, json};

use turns_aloft::analysis::budget::Cause;
use turns_aloft::analysis::caution::Caution;
use turns_aloft::analysis::lever::{Lever, Season};
use turns_aloft::analysis::limits::{Limits, Verdict};
use turns_aloft::analysis::map::{Axis, TurnMap};
use turns_aloft::analysis::uncertainty::{UncertainInput, Uncertainty};
use turns_aloft::analysis::weights::KEEPS;
use turns_aloft::describe::budget::budget_sentence;
use turns_aloft::describe::call::{
    call_text, facing_text, mark, shortfall_range_text, shortfall_text, uncalled_text,
};
use turns_aloft::describe::comparison::ORDER;
use turns_aloft::describe::goal as of_goal;
use turns_aloft::describe::jump::notation;
use turns_aloft::describe::range::change_text;
use turns_aloft::describe::unit::UnitText;
use turns_aloft::describe::weights;
use turns_aloft::describe::{About, Inline, Label, Sentence, Text};
use turns_aloft::scenario::call::Call;
use turns_aloft::scenario::ground::Ground;
use turns_aloft::scenario::jump::JumpName;
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::reading::NotText;
use turns_aloft::scenario::units::{LengthUnit, MassUnit, RateUnit, Units};
use turns_aloft::scenario::{HandsKeep, Scenario, link, starts};
use turns_aloft::session::compare::Which;
use turns_aloft::session::goal::{GoalTurns, words as goal};
use turns_aloft::session::readings::{Group, phase, picture, readings, summary};
use turns_aloft::session::{Question, Session, why};

/// A text, and where it is shown.
#[derive(Debug, Clone, PartialEq)]
pub struct ShownText {
    pub place: String,
    pub text: String,
}

/// Collects the texts that are shown.
#[derive(Default)]
struct Collector(Vec<ShownText>);

impl Collector {
    fn add(&mut self, place: impl Into<String>, text: impl Into<String>) {
        let (place, text) = (place.into(), text.into());
        if !text.is_empty() {
            self.0.push(ShownText { place, text });
        }
    }

    fn notice(&mut self, place: &str, session: &mut Session) {
        let notice = session.notice().map(str::to_owned);
        self.add(
            place,
            notice.unwrap_or_else(|| panic!("{place}: nothing is said")),
        );
        session.dismiss();
    }

    fn readings(&mut self, place: &str, session: &Session) {
        for line in readings(session).into_iter().chain(session.answers()) {
            let place = format!("{place}, {}", line.quantity);
            self.add(place.clone() + ", label", line.label);
            self.add(place.clone() + ", text", line.text);
            self.add(place + ", about", line.about);
        }
    }
}

/// Whether a text has `word` as a whole word.
pub fn has_word(text: &str, word: &str) -> bool {
    text.match_indices(word).any(|(place, _)| {
        let part = |c: Option<char>| c.is_some_and(|c| c.is_alphanumeric() || "-_".contains(c));
        !part(text[..place].chars().next_back()) && !part(text[place + word.len()..].chars().next())
    })
}

/// Texts of tables, errors, answers and notices, from one visit with each starting point.
pub fn all_texts() -> Vec<ShownText> {
    let mut collected = Collector::default();
    tables(&mut collected);
    refusals(&mut collected);
    for start in starts::all() {
        visit(&mut collected, start.name, &start.scenario);
    }
    for (name, jump) in others() {
        visit(&mut collected, name, &jump);
    }
    let first = &starts::all()[0].scenario;
    goal_answers(&mut collected, first, 2.0);
    goal_answers(&mut collected, first, 9.0);
    map_answers(&mut collected);
    compare_answers(&mut collected);
    notices(&mut collected);
    broken_files(&mut collected);
    collected.0
}

/// The answers of one visit to every question, shown again after a change without being computed
/// again.
pub fn texts_after(change: impl Fn(&mut Session)) -> Vec<ShownText> {
    let mut collected = Collector::default();
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
        collected.readings(question.name(), &session);
    }
    for (place, text) in ["win"; 9].into_iter().zip(session.goal_cautions()) {
        collected.add(place, text);
    }
    session.set_reference(Which::Start("trampoline".to_owned()));
    change(&mut session);
    session.poll(|| true);
    collected.readings("beside a start", &session);
    collected.0
}

/// Texts of tables, independent of the jump.
fn tables(collected: &mut Collector) {
    for key in Parameter::ALL {
        collected.add(key.key(), key.label());
        collected.add(key.key(), key.inline());
        collected.add(key.key(), key.about());
    }
    for row in UncertainInput::ALL {
        collected.add(row.key(), row.label());
        collected.add(row.key(), row.inline());
        collected.add(row.key(), row.about());
    }
    for start in starts::all() {
        collected.add(start.name, start.label());
        let jump = start.scenario.fly();
        for key in Parameter::ALL {
            if let Some(marks) = start.scenario.marks(key, &jump) {
                collected.add(key.key(), marks.source.text());
            }
        }
    }
    for jump in JumpName::ALL {
        collected.add(jump.key(), jump.label());
        for turns in [1, 2] {
            let notation = notation(jump, turns);
            // The sport's own letters.
            if !notation.starts_with(char::is_numeric) || notation.contains(' ') {
                collected.add(jump.key(), notation);
            }
        }
    }
    for question in Question::ALL {
        collected.add(question.name(), question.label());
    }
    for group in Group::ALL {
        collected.add("group", group.label());
    }
    for cause in Cause::ORDER {
        collected.add("cause", cause.label());
    }
    let units = RateUnit::ALL.map(RateUnit::unit).into_iter();
    let units = units.chain(LengthUnit::ALL.map(LengthUnit::unit));
    for unit in units.chain(MassUnit::ALL.map(MassUnit::unit)) {
        collected.add("unit", unit.sign());
    }
    let calls = [
        Call::OverRotated,
        Call::Full,
        Call::Quarter,
        Call::Under,
        Call::Downgraded,
    ];
    for call in calls {
        collected.add("call", call_text(call));
    }
    for ends in [[0.0, 10.0], [-150.0, 10.0], [-200.0, -150.0]] {
        collected.add("no call", uncalled_text(ends));
    }
    for past_deg in [4.0, -92.0, 171.0] {
        collected.add("facing", facing_text(past_deg));
    }
    for degrees in [169.2, -12.0] {
        collected.add("shortfall", shortfall_text(degrees));
    }
    for ends in [[41.0, 148.0], [-12.0, 30.0], [-30.0, -12.0]] {
        collected.add("shortfall", shortfall_range_text(ends));
    }
    collected.add("change", change_text(0.25));
    for verdict in [
        Verdict::AlreadyReached,
        Verdict::WithinReach,
        Verdict::WithinMeasured,
        Verdict::AtEdge,
        Verdict::NotKnown,
        Verdict::BeyondMeasured,
        Verdict::CannotAlone,
        Verdict::NoPart,
    ] {
        collected.add("verdict", verdict.text());
    }
    for caution in [
        Caution::NoSafeNumber,
        Caution::Adults,
        Caution::Hands,
        Caution::Later,
        Caution::Ask,
    ] {
        collected.add("caution", caution.text());
    }
    collected.add("season", Season::SOURCE.text());
    for message in [
        goal::SEASON,
        goal::LIMITS,
        why::words::IDEAL,
        why::words::ICE,
        why::words::TURNS,
        why::words::ORDER,
        why::words::BACK,
        ORDER,
    ] {
        collected.add("table", message.text());
    }
}

/// Error sentences of settings that are refused.
fn refusals(collected: &mut Collector) {
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
        collected.add(
            format!("{key} = {value}"),
            why.sentence().replace(value, ""),
        );
    }
    let why = jump.set("note", &"x".repeat(200_000)).expect_err("long");
    collected.add("a long note", why.sentence());
    for why in [NotText::Utf16, NotText::Other] {
        collected.add("no text", why.sentence());
    }
    let mut half_widths = Uncertainty::usual(&jump);
    for (key, value) in [
        ("jump_height_m", "7.5"),
        ("jump_height_m", "high"),
        ("arm_tuck", "1"),
    ] {
        let why = half_widths.set(key, value).expect_err("it cannot be");
        collected.add(key, why.sentence().replace(value, ""));
    }
    let (mut limits, mut season) = (Limits::default(), Season::default());
    let lever = Lever::ALL[0];
    collected.add(
        "limits",
        limits.set(lever, [0.5, 9.5]).expect_err("no").sentence(),
    );
    collected.add(
        "limits",
        Lever::named("wind_m_s").expect_err("no").sentence(),
    );
    collected.add("season", season.set(lever, 9.5).expect_err("no").sentence());
    for (name, ends, nodes) in [
        ("wind_m_s", [0.0, 1.0], 3),
        (lever.key(), [0.5, 9.5], 3),
        (lever.key(), [0.5, 0.5], 3),
        (lever.key(), [0.5, 0.6], 1),
    ] {
        let why = Axis::named(name, ends[0], ends[1], nodes).expect_err("no");
        collected.add("axis", why.sentence());
    }
    let axis = Axis::new(lever.parameter(), 0.5, 0.6, 3).expect("an axis");
    collected.add(
        "axes",
        TurnMap::new(&jump, axis, axis).expect_err("no").sentence(),
    );
}

/// Jumps with readings that no starting point has.
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

/// A jump's readings at several times, and the answer to "Why".
fn visit(collected: &mut Collector, place: &str, jump: &Scenario) {
    let mut session = Session::default();
    session.open(jump.clone());
    collected.readings(place, &session);
    collected.add("summary", summary(&session));
    let owed = session.jump().owed;
    if owed.is_some_and(|owed| owed.over_rotated_deg.is_some()) {
        // The others are signs of the sport.
        collected.add("mark", mark(owed));
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
        collected.add("phase", phase(&session));
        collected.add("picture", picture(&session));
    }
    collected.readings(place, &session);
    collected.add("summary", summary(&session));
    session.ask(Question::Why);
    session.poll(|| true);
    collected.readings(place, &session);
    let budget_answer = session.budget_answer().expect("it has been worked out");
    for cause in Cause::ORDER {
        collected.add("cause", why::words::cause(&session, cause));
    }
    collected.add(
        "one change",
        budget_sentence(session.scenario(), &budget_answer.budget),
    );
    for said in why::words::of_change(&session, budget_answer) {
        collected.add("change", said);
    }
    for said in why::words::of_steps(&session) {
        collected.add("steps", said);
    }
    if let Some(held) = session.weights_held() {
        collected.add("weights", weights::held(session.units(), held));
    }
    for said in session
        .step_cautions()
        .into_iter()
        .chain(session.map_cautions())
    {
        collected.add("caution", said);
    }
}

fn goal_answers(collected: &mut Collector, jump: &Scenario, turns: f64) {
    let mut session = Session::default();
    session.open(jump.clone());
    session.set_goal(GoalTurns::Turns(turns));
    session.step_limit(Lever::ALL[2], 1, 1.0);
    session.step_season(Lever::ALL[1], -1e6);
    session.ask(Question::Goal);
    session.poll(|| true);
    collected.readings("win", &session);
    for (single, _) in session.singles() {
        collected.add("win", single.lever.parameter().label());
        collected.add("win", of_goal::basis(session.units(), single));
        collected.add("win", of_goal::most(session.units(), single));
        if let Some(proposal) = &single.proposal {
            collected.add(
                "win",
                of_goal::landing(session.jump(), proposal.landing_load_bw),
            );
        }
    }
    if let (Some(joint), _) = session.combination() {
        collected.add("win", of_goal::effort(joint));
        collected.add("win", joint.judgement.source.text());
        for change in of_goal::parts(session.units(), joint) {
            collected.add("win", of_goal::part(session.units(), change));
        }
    }
    for lever in Lever::ALL {
        // A number and its unit alone may be the same.
        collected.add(lever.key(), format!("{}!", goal::limit(&session, lever)));
        collected.add(lever.key(), format!("{}!", goal::season(&session, lever)));
    }
    for said in session.goal_cautions() {
        collected.add("win", said);
    }
    collected.add("win", goal::question(&session));
    session.set_goal(GoalTurns::Turns(1.0));
    collected.add("win", goal::question(&session));
}

fn map_answers(collected: &mut Collector) {
    let mut session = Session::default();
    session.ask(Question::Map);
    session.poll(|| false);
    collected.readings("map under way", &session);
    session.poll(|| true);
    collected.readings("map", &session);
    let hands = Parameter::named("hand_mass_kg").expect("a key");
    session.choose_map_lever(0, hands);
    session.poll(|| true);
    collected.readings("map of the hands", &session);
    for keep in KEEPS {
        session.change(|jump| jump.hands_keep = keep);
        for said in session.map_cautions() {
            collected.add("map of the hands", said);
        }
    }
}

fn compare_answers(collected: &mut Collector) {
    let mut session = Session::default();
    session.ask(Question::Compare);
    session.keep_jump();
    for reference in ["trampoline", "crooked-takeoff", "half-a-turn-short"] {
        session.set_reference(Which::Start(reference.to_owned()));
        session.poll(|| true);
        collected.readings(reference, &session);
    }
    session.set_reference(Which::AsOpened);
    for (key, value) in [(0, 12.0), (0, 5.0), (1, 0.5), (13, 0.6), (4, 0.5)] {
        session.set(Parameter::ALL[key], value);
        session.poll(|| true);
        collected.readings(Parameter::ALL[key].key(), &session);
    }
    session.reset_all();
    session.change(|jump| jump.boot_mass_kg += 1e-6);
    session.poll(|| true);
    collected.readings("hardly changed", &session);
}

/// A jump with a user's own name, which is not translated.
fn own() -> Scenario {
    Scenario {
        name: "Monday".to_owned(),
        ..starts::all()[1].scenario.clone()
    }
}

/// Notices of errors.
fn notices(collected: &mut Collector) {
    let mut session = Session::default();
    for key in Parameter::ALL {
        session.set(key, 1e9);
        collected.notice(key.key(), &mut session);
        session.set(key, f64::NAN);
        collected.notice(key.key(), &mut session);
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
        collected.notice(place, &mut session);
    }
    session.set(Parameter::ALL[4], 0.5);
    session.open_link(&fragment);
    collected.notice("a link to somebody with another jump", &mut session);
    session.restore("rubbish");
    collected.notice("the last visit", &mut session);
    earlier_bodies(collected, &mut session);

    session.restore_deleted();
    collected.notice("nothing to bring back", &mut session);
    session.keep_jump();
    let kept: Vec<_> = session.library().collection().entries().to_vec();
    let id = kept.last().expect("it was kept").id;
    session.rename_kept(id, " ");
    collected.notice("no name", &mut session);
    session.rename_kept(id, &"x".repeat(100));
    collected.notice("a long name", &mut session);
    session.delete_kept(id);
    session.delete_kept(id);
    collected.notice("deleted twice", &mut session);
    session.change(|jump| jump.note = "x".repeat(200_000));
    session.keep_jump();
    collected.notice("a long note", &mut session);
    for (place, jumps) in [
        ("no jump", vec![]),
        ("one jump", vec![&good]),
        ("two jumps", vec![&good; 2]),
        ("many jumps", vec![&good; 501]),
    ] {
        session.open_text(&collection(&jumps).to_string());
        collected.notice(place, &mut session);
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
        collected.add(place, why.sentence());
    }
}

/// Notices on data saved before the body was refined.
fn earlier_bodies(collected: &mut Collector, session: &mut Session) {
    let one = own().to_file().replacen(": 2,", ": 1,", 1);
    session.open_text(&one);
    collected.notice("a jump of version 1", session);
    session.open_text(&format!(
        "{{\"turns_aloft_collection\": 1, \"jumps\": [{one}, {one}]}}"
    ));
    collected.notice("jumps of version 1", session);
    let visit = session
        .keep()
        .replace("_scenario\\\": 2", "_scenario\\\": 1");
    session.restore(&visit);
    session.report_earlier_body();
    collected.notice("a visit of version 1", session);
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

/// A description of a change to a file, and the change.
type Change<'a> = (&'a str, &'a dyn Fn(&mut Value));

/// Files of one jump and of several that cannot be opened.
fn broken_files(collected: &mut Collector) {
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
        collected.notice(&place, &mut session);
    }
}
