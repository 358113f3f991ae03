//! Another language is spoken: a session tells everything in it, as if it had been from the start.

use turns_aloft::session::compare::Which;
use turns_aloft::session::readings::{Reading, readings};
use turns_aloft::session::{Question, Session};
use turns_aloft::words::{Language, speak};

/// A session with a range, and with an attempt beside it where that is asked about.
fn asked(question: Question, beside: &Which) -> Session {
    let mut session = Session::default();
    session.show_range(true);
    session.ask(question);
    if question == Question::Compare {
        session.lay_beside(beside.clone());
    }
    session
}

/// All that a session tells, once its answer is complete.
fn told(session: &mut Session) -> (Vec<Reading>, Option<String>) {
    session.think(|| true);
    let mut lines = readings(session);
    lines.extend(session.answers());
    let beside = session.beside().map(|beside| beside.name.clone());
    (lines, beside)
}

#[test]
fn what_has_been_told_is_told_in_the_other_language() {
    let start = Which::Start("child-single".to_owned());
    for beside in [Which::AsOpened, start] {
        for question in Question::ALL {
            speak(Language::English);
            let mut session = asked(question, &beside);
            let english = told(&mut session);

            speak(Language::German);
            session.tell_anew();
            let german = told(&mut session);
            assert_eq!(german, told(&mut asked(question, &beside)), "{question:?}");
            assert_ne!(german, english, "{question:?}");

            speak(Language::English);
            session.tell_anew();
            assert_eq!(told(&mut session), english, "{question:?}");
        }
    }
}

#[test]
fn another_language_changes_nothing_of_the_jump() {
    let mut session = asked(Question::Win, &Which::AsOpened);
    session.scrub(0.1);
    let (kept, playback) = (session.keep(), session.playback);
    speak(Language::German);
    session.tell_anew();
    assert_eq!(session.keep(), kept);
    assert_eq!(session.playback, playback);
}

#[test]
fn a_message_in_the_language_before_does_not_stay() {
    let mut session = Session::default();
    session.open_text("rubbish");
    assert!(session.notice().is_some());
    speak(Language::German);
    session.tell_anew();
    assert_eq!(session.notice(), None);
}
