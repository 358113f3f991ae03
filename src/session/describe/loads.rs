//! What the hands carry and the landing asks of the body, as lines of text.

use crate::describe::reading::{Group, Reading, line};
use crate::session::Session;
use turns_aloft_describe::number::plain;
use turns_aloft_describe::unit::{MOMENTUM, NEWTON_METRES, NEWTONS, UnitText};
use turns_aloft_physics::flight::FlightSample;
use turns_aloft_scenario::HandsKeep;
use turns_aloft_words::{decimal, say, text};

pub(crate) fn hands(session: &Session, now: &FlightSample) -> Vec<Reading> {
    let efforts = session.jump().efforts();
    let [left, right] = session.flight().loads_at(now.t_s).hand_n();
    let holds = session.scenario().hand_mass_kg > 0.0;
    let largest = match (holds, session.scenario().hands_keep) {
        (false, _) => text("reading-hand-force-peak-n-about"),
        (true, HandsKeep::Rate) => text("reading-hand-force-peak-n-about-rate"),
        (true, HandsKeep::AngularMomentum) => text("reading-hand-force-peak-n-about-momentum"),
        (true, HandsKeep::Energy) => text("reading-hand-force-peak-n-about-energy"),
    };
    let line = |quantity: &'static str, label: &'static str, force_n, about: &str| {
        line(Group::Hands, quantity, label, NEWTONS.text(force_n), about)
    };
    let about = text("reading-hand-force-now-about");
    let mut lines = vec![
        line(
            "hand_force_left_now_n",
            text("reading-hand-force-left-now-n"),
            left,
            about,
        ),
        line(
            "hand_force_right_now_n",
            text("reading-hand-force-right-now-n"),
            right,
            about,
        ),
        line(
            "hand_force_peak_n",
            text("reading-hand-force-peak-n"),
            efforts.hand_force.value,
            largest,
        ),
    ];
    if holds {
        lines.push(line(
            "grip_force_peak_n",
            text("reading-grip-force-peak-n"),
            efforts.grip_force.value,
            text("reading-grip-force-peak-n-about"),
        ));
    }
    lines
}

pub(crate) fn landing(session: &Session) -> Vec<Reading> {
    let readout = &session.jump().readout;
    let [low, high] = readout.landing_load_bw;
    let [least, most] = readout.landing_torque_n_m;
    let [short_s, long_s] = session.scenario().ground.stopping_time_s().map(plain);
    vec![
        line(
            Group::Landing,
            "landing_load_bw",
            text("reading-landing-load-bw"),
            say!(
                "reading-landing-load-bw-value",
                low = decimal(low, 1),
                high = decimal(high, 1)
            ),
            say!(
                "reading-landing-load-bw-about",
                from = short_s.as_str(),
                to = long_s.as_str()
            ),
        ),
        line(
            Group::Landing,
            "landing_angular_momentum_kg_m2_s",
            text("reading-landing-angular-momentum-kg-m2-s"),
            MOMENTUM.text(readout.landing_angular_momentum_kg_m2_s),
            text("reading-landing-angular-momentum-kg-m2-s-about"),
        ),
        line(
            Group::Landing,
            "landing_torque_n_m",
            text("reading-landing-torque-n-m"),
            say!(
                "from-to",
                from = NEWTON_METRES.number(least),
                to = NEWTON_METRES.text(most)
            ),
            say!(
                "reading-landing-torque-n-m-about",
                from = short_s.as_str(),
                to = long_s.as_str()
            ),
        ),
    ]
}
