//! The text for screen readers is at most a second behind what is on the screen, however long
//! something moves.

use std::time::Duration;

use turns_aloft::session::readings::Pace;

const FRAME: Duration = Duration::from_millis(16);
const SECOND: Duration = Duration::from_secs(1);

#[test]
fn it_is_written_at_rest_at_once() {
    let mut pace = Pace::default();
    for frame in 0..3 {
        assert!(pace.is_due(frame * FRAME, false));
    }
}

#[test]
fn it_is_never_more_than_a_second_behind() {
    let mut pace = Pace::default();
    assert!(pace.is_due(Duration::ZERO, false));
    let mut written = Duration::ZERO;
    let mut times = 0;
    for frame in 1..1000 {
        let now = frame * FRAME;
        if pace.is_due(now, true) {
            written = now;
            times += 1;
        }
        assert!(now - written <= SECOND, "{now:?}: written at {written:?}");
    }
    // Nor much more often, which nobody could follow.
    assert!((16..=20).contains(&times), "{times} times in 16 s");
}

/// What ends sooner is written once, when it has ended.
#[test]
fn a_short_movement_is_written_when_it_ends() {
    let mut pace = Pace::default();
    for start in [0, 100, 200] {
        for frame in 0..20 {
            assert!(!pace.is_due((start + frame) * FRAME, true));
        }
        assert!(pace.is_due((start + 20) * FRAME, false));
    }
}
