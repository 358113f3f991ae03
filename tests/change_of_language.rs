//! Another language is spoken: a session tells everything in it, as if it had been from the start.

use turns_aloft::session::compare::Which;
use turns_aloft::session::readings::{Reading, readings};
use turns_aloft::session::{Question, Session};
use turns_aloft::words::{Language, set_language};

/// A session with a range, and with an attempt beside it where that is asked about.
fn asked(question: Question, reference: &Which) -> Session {
    let mut session = Session::default();
    session.show_range(true);
    session.ask(question);
    if question == Question::Compare {
        session.set_reference(reference.clone());
    }
    session
}

/// All that a session tells, once its answer is complete.
fn describe(session: &mut Session) -> (Vec<Reading>, Option<String>) {
    session.poll(|| true);
    let mut lines = readings(session);
    lines.extend(session.answers());
    let reference = session.reference().map(|reference| reference.name.clone());
    (lines, reference)
}

#[test]
fn what_has_been_told_is_told_in_the_other_language() {
    let start = Which::Start("child-single".to_owned());
    for reference in [Which::AsOpened, start] {
        for question in Question::ALL {
            set_language(Language::English);
            let mut session = asked(question, &reference);
            let english = describe(&mut session);

            set_language(Language::German);
            session.retranslate();
            let german = describe(&mut session);
            assert_eq!(
                german,
                describe(&mut asked(question, &reference)),
                "{question:?}"
            );
            assert_ne!(german, english, "{question:?}");

            set_language(Language::English);
            session.retranslate();
            assert_eq!(describe(&mut session), english, "{question:?}");
        }
    }
}

#[test]
fn another_language_changes_nothing_of_the_jump() {
    let mut session = asked(Question::Goal, &Which::AsOpened);
    session.scrub(0.1);
    let (kept, playback) = (session.keep(), session.playback);
    set_language(Language::German);
    session.retranslate();
    assert_eq!(session.keep(), kept);
    assert_eq!(session.playback, playback);
}

#[test]
fn a_message_in_the_language_before_does_not_stay() {
    let mut session = Session::default();
    session.open_text("rubbish");
    assert!(session.notice().is_some());
    set_language(Language::German);
    session.retranslate();
    assert_eq!(session.notice(), None);
}
