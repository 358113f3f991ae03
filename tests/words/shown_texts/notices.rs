//! Notices.

use serde_json::{Value, json};
use turns_aloft::describe::Sentence;
use turns_aloft::scenario::link;
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::session::Session;

use super::{Collector, collection, own};

/// Notices of errors.
pub fn notices(collected: &mut Collector) {
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
