//! What was saved before the body was refined opens as it was, and says once that its turns may have
//! been others. The samples in `tests/version_1` were written by the last build before.

#[path = "support/aloft.rs"]
mod aloft;

use turns_aloft::scenario::link::{from_fragment, to_fragment};
use turns_aloft::scenario::{Scenario, file, starts};
use turns_aloft::session::compare::Which;
use turns_aloft::session::{Question, Session};

const FILE: &str = include_str!("version_1/scenario.aloft.json");
const COLLECTION: &str = include_str!("version_1/collection.aloft.json");
const LINK_OF_ONE: &str = include_str!("version_1/link.txt");
const LINK_OF_TWO: &str = include_str!("version_1/link-of-two.txt");
const VISIT: &str = include_str!("version_1/visit.json");
const KEPT_JUMPS: &str = include_str!("version_1/kept-jumps.json");

const OF_ONE: &str = "This jump was saved with an earlier model of the body. Its turns are computed again and may be different.";
const OF_SOME: &str = "These jumps were saved with an earlier model of the body. Their turns are computed again and may be different.";
const SINCE_THE_VISIT: &str = "The model of the body has become more exact since your last visit. The turns of your jumps are computed again and may be different.";

/// The jump in the samples of one.
fn monday() -> Scenario {
    let jump = Scenario::from_file(FILE).expect("it opens");
    assert_eq!(jump.name, "Triple on Monday");
    assert_eq!((jump.jump_height_m, jump.jump_turns), (0.46, 3));
    jump
}

/// What a page says at its start, of what the browser kept and of a link.
fn started(visit: &str, kept_jumps: &str, link: Option<&str>) -> Session {
    let mut session = Session::default();
    session.restore(visit);
    session.restore_kept_jumps(kept_jumps).expect("it is read");
    if let Some(link) = link {
        session.open_link(link.trim_end());
    }
    session.report_earlier_body();
    session
}

#[test]
fn a_file_opens_and_says_so_once() {
    let mut session = Session::default();
    session.open_text(FILE);
    assert_eq!(session.scenario(), &monday());
    assert_eq!(session.notice(), Some(OF_ONE));

    let saved = session.scenario().to_file();
    session.open_text(&saved);
    assert_eq!(session.scenario(), &monday());
    assert_eq!(session.notice(), None);
}

#[test]
fn links_open_and_say_so_once() {
    for (link, says) in [(LINK_OF_ONE, OF_ONE), (LINK_OF_TWO, OF_SOME)] {
        let mut session = Session::default();
        session.open_link(link.trim_end());
        assert_eq!(session.scenario().name, "Triple on Monday");
        assert_eq!(session.reference().is_some(), link == LINK_OF_TWO);
        assert_eq!(session.notice(), Some(says));

        let anew = session.link();
        session.open_link(&anew);
        assert_eq!(session.notice(), None);
    }
}

#[test]
fn a_collection_says_so_once_however_many_there_are() {
    let mut session = Session::default();
    session.open_text(COLLECTION);
    let names: Vec<_> = session.library().collection().entries().iter().collect();
    let names: Vec<_> = names.iter().map(|entry| &*entry.scenario.name).collect();
    assert_eq!(names, ["Attempt 1", "Attempt 2", "Attempt 3"]);
    let added = "3 jumps of this file are among the kept ones now.";
    assert_eq!(session.notice(), Some(&*format!("{added} {OF_SOME}")));

    let anew = session.kept_file();
    session.open_text(&anew);
    assert_eq!(session.notice(), Some(added));

    let fifty = vec![FILE; 50].join(",");
    session.open_text(&format!(
        "{{\"turns_aloft_collection\": 1, \"jumps\": [{fifty}]}}"
    ));
    let said = session.notice().expect("it is said");
    assert!(said.starts_with("50 jumps"), "{said}");
    assert_eq!(said.matches("an earlier model").count(), 1, "{said}");
}

#[test]
fn the_last_visit_and_the_kept_jumps_say_so_once_together() {
    let mut session = started(VISIT, KEPT_JUMPS, None);
    let (jump, base) = (session.scenario(), monday());
    assert_eq!((jump.arm_tuck, jump.name.as_str()), (0.8, &*base.name));
    assert_eq!(session.question(), Question::Compare);
    let reference = session.reference().expect("it was kept");
    assert_eq!(reference.which, Which::Start("four-turns".to_owned()));
    assert!(session.range().is_some() && !session.shows_greeting());
    assert_eq!(session.library().collection().entries().len(), 3);
    assert_eq!(session.notice(), Some(SINCE_THE_VISIT));
    let anew = Session::default().restore_kept_jumps(KEPT_JUMPS);
    assert_eq!(anew, Ok(true), "they are to be kept anew");
    session.dismiss();
    session.report_earlier_body();
    assert_eq!(session.notice(), None);

    let again = started(&session.keep(), &session.kept_jumps(), None);
    assert_eq!(again.notice(), None);
    let anew = Session::default().restore_kept_jumps(&session.kept_jumps());
    assert_eq!(anew, Ok(false));
    assert_eq!(again.keep(), session.keep());

    for (visit, kept_jumps) in [
        (VISIT, &*session.kept_jumps()),
        (&*session.keep(), KEPT_JUMPS),
    ] {
        let either = started(visit, kept_jumps, None);
        assert_eq!(either.notice(), Some(SINCE_THE_VISIT));
    }
}

#[test]
fn it_stands_beside_what_else_is_said() {
    // What was changed on the last visit is kept when a link is opened.
    let kept =
        "The jump that you changed is kept: see “Triple on Monday, arm tuck 80 %” under Compare.";
    let both = format!("{kept} {SINCE_THE_VISIT}");
    for link in [LINK_OF_ONE, &to_fragment(&starts::all()[0].scenario, None)] {
        let session = started(VISIT, KEPT_JUMPS, Some(link));
        assert_eq!(session.notice(), Some(&*both));
    }
    let mut session = started(VISIT, KEPT_JUMPS, None);
    session.open_link(LINK_OF_ONE.trim_end());
    assert_eq!(session.notice(), Some(&*format!("{kept} {OF_ONE}")));

    let session = started(VISIT, KEPT_JUMPS, Some("jump.rubbish"));
    let said = session.notice().expect("it is said");
    assert!(
        said.starts_with("Not opened: this link is damaged"),
        "{said}"
    );
    assert!(said.ends_with(SINCE_THE_VISIT), "{said}");

    let mut session = Session::default();
    session.restore(&VISIT.replace("\"units\"", "\"unites\""));
    session.report_earlier_body();
    let said = session.notice().expect("it is said");
    assert!(
        said.starts_with("The jump of the last visit is here"),
        "{said}"
    );
    assert!(said.ends_with(SINCE_THE_VISIT), "{said}");
}

/// Where nothing is opened nothing is to be said of its age.
#[test]
fn what_is_broken_says_that_alone() {
    let mut session = Session::default();
    for broken in [
        FILE.replace("\"note\"", "\"knot\""),
        COLLECTION.replacen("\"arm_tuck\": 0", "\"arm_tuck\": 9", 1),
    ] {
        session.open_text(&broken);
        let said = session.notice().expect("it is said");
        assert!(said.starts_with("Not opened: "), "{said}");
        assert!(!said.contains("refined"), "{said}");
    }
    session.restore("rubbish");
    session.report_earlier_body();
    let said = session.notice().expect("it is said");
    assert!(!said.contains("refined"), "{said}");
    assert_eq!(
        Scenario::from_file(&FILE.replacen(": 1,", ": 0,", 1)),
        Err(file::Unreadable::NotAScenario)
    );
}

/// Status, answer and what is said beside it.
fn ran(arguments: &[&str]) -> (Option<i32>, String, String) {
    let output = aloft::aloft(arguments);
    let text = |bytes| String::from_utf8(bytes).expect("text");
    (
        output.status.code(),
        text(output.stdout),
        text(output.stderr),
    )
}

#[test]
fn the_command_says_so_in_one_line_beside_the_answer() {
    let old = concat!(
        env!("CARGO_MANIFEST_DIR"),
        "/tests/version_1/scenario.aloft.json"
    );
    let old_link = format!("#{}", LINK_OF_TWO.trim_end());
    let link = from_fragment(LINK_OF_TWO.trim_end())
        .expect("ours")
        .expect("it opens");
    let [anew, of_link] = [&monday(), &link.jump]
        .map(|jump| format!("https://example.org/#{}", to_fragment(jump, None)));
    let one = format!("aloft: {OF_ONE}\n");
    let two = format!("aloft: {OF_SOME}\n");
    for (with_old, with_new, says) in [
        (&["fly", old][..], &["fly", &anew][..], &one),
        (&["fly", &old_link], &["fly", &of_link], &one),
        (&["fly", old, "--range"], &["fly", &anew, "--range"], &one),
        (&["link", old], &["link", &anew], &one),
        (&["budget", old], &["budget", &anew], &one),
        (
            &["compare", "four-turns", old],
            &["compare", "four-turns", &anew],
            &one,
        ),
        (
            &["compare", &old_link, old],
            &["compare", &of_link, &anew],
            &two,
        ),
        (
            &["link", old, "--beside", old],
            &["link", &anew, "--beside", &anew],
            &two,
        ),
    ] {
        let answer = ran(with_new);
        assert_eq!((answer.0, &*answer.2), (Some(0), ""), "{with_new:?}");
        assert_eq!(
            ran(with_old),
            (Some(0), answer.1, says.clone()),
            "{with_old:?}"
        );
    }
    // What is wrong is the only thing said.
    let (status, answer, said) = ran(&["fly", old, "--set", "arm_tuck=9"]);
    assert_eq!((status, &*answer), (Some(2), ""));
    assert!(
        said.contains("arm_tuck = 9") && !said.contains("refined"),
        "{said}"
    );
}
