//! What a sensor on a real chair reads, in words.

use crate::session::Session;
use crate::state::measured_rate::MeasuredRate;
use turns_aloft_describe::unit::{SECONDS, UnitText};
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_trace::CountedAbout;
use turns_aloft_words::{say, text};

/// The rate now while it is recorded, else for how long and how fast at most.
pub fn measured(session: &Session, measured: &MeasuredRate) -> String {
    // Which way round is the figure's: it stands beside that.
    let rate = |rate_rad_s: f64| session.units().of(Kind::Rate).text(rate_rad_s.abs());
    match measured.now_rad_s() {
        None => text("turntable-sensor-waits").to_owned(),
        Some(now_rad_s) if measured.is_recording() => {
            say!("turntable-measured-now", rate = rate(now_rad_s))
        }
        Some(_) => say!(
            "turntable-measured",
            time = SECONDS.text(measured.span_s()),
            rate = rate(measured.most_rad_s())
        ),
    }
}

/// What its rate is counted about.
pub fn measured_about(measured: &MeasuredRate) -> &'static str {
    text(match measured.counted_about() {
        CountedAbout::Vertical => "turntable-about-vertical",
        CountedAbout::AnyAxis => "turntable-about-any-axis",
    })
}
