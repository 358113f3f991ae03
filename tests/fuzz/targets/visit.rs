//! What stands in the browser's storage where the last visit's jump should be.

#![no_main]

use std::cell::RefCell;

use libfuzzer_sys::{Corpus, fuzz_target};
use turns_aloft::session::Session;
use turns_aloft::session::readings::readings;
use turns_aloft::words;
use turns_aloft_fuzz::{good, one_line};

thread_local! {
    /// The usual start, flown once for all that is not taken up.
    static USUAL: RefCell<Session> = RefCell::default();
}

fuzz_target!(|data: &[u8]| -> Corpus {
    let Ok(text) = std::str::from_utf8(data) else {
        return Corpus::Reject;
    };
    USUAL.with_borrow_mut(|session| {
        let before = session.keep();
        session.restore(text);
        let notice = session.notice().map(str::to_owned);
        session.dismiss();
        if let Some(notice) = &notice {
            one_line(notice);
        }
        session.report_earlier_body();
        if let Some(earlier) = session.notice() {
            one_line(earlier);
        }
        session.dismiss();
        if notice.is_none_or(|notice| notice == words::text("last-visit-jump-only")) {
            taken_up(session);
            *session = Session::default();
        } else {
            assert_eq!(session.keep(), before);
        }
    });
    Corpus::Keep
});

fn taken_up(session: &Session) {
    good(session.scenario());
    for reading in readings(session) {
        assert!(!reading.text.contains("NaN"), "{reading:?}");
    }
    if let Some(range) = session.range() {
        assert!(range.low.is_finite() && range.high.is_finite());
    }
    let mut again = Session::default();
    again.restore(&session.keep());
    assert_eq!(again.keep(), session.keep());
    again.report_earlier_body();
    assert_eq!(again.notice(), None);
}
