//! The map in the user's session: made piece by piece, kept while the jump moves on it, made anew
//! when it no longer fits.

use turns_aloft::analysis::lever::Lever;
use turns_aloft::analysis::map::TurnMap;
use turns_aloft::analysis::weights::{KEEPS, OBSERVED};
use turns_aloft::describe::Text;
use turns_aloft::describe::weights::keeps;
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::starts;
use turns_aloft::scenario::units::RateUnit;
use turns_aloft::session::map::{Levers, NODES, Picture};
use turns_aloft::session::{Question, Session};

const RATE: &str = "takeoff_rate_rad_s";
const HEIGHT: &str = "jump_height_m";

fn key(name: &str) -> Parameter {
    Parameter::named(name).expect("a key")
}

fn asked() -> Session {
    let mut session = Session::default();
    session.ask(Question::Map);
    session
}

/// Thinks until there is nothing left to do.
fn complete(session: &mut Session) {
    while {
        session.poll(|| true);
        session.is_computing()
    } {}
}

fn picture(session: &Session) -> &Picture {
    session.map_picture().expect("a picture")
}

fn describe(session: &Session, quantity: &str) -> Option<String> {
    let lines = session.answers();
    let line = lines.into_iter().find(|line| line.quantity == quantity);
    line.map(|line| line.text)
}

/// Rate and height of the jump.
fn numbers(session: &Session) -> [f64; 2] {
    [RATE, HEIGHT].map(|name| key(name).get(session.scenario()))
}

#[test]
fn nothing_is_flown_before_it_is_asked_for() {
    let mut session = Session::default();
    complete(&mut session);
    assert!(session.map_picture().is_none());
}

/// The first piece of work gives a picture; the last one the map that stands by itself.
#[test]
fn a_picture_at_once_and_the_whole_map_in_the_end() {
    let mut session = asked();
    session.poll(|| false);
    assert!(session.map_picture().is_some() && session.is_computing());
    assert_eq!(
        describe(&session, "map:done").as_deref(),
        Some("25 of 3721 flown")
    );
    complete(&mut session);
    assert_eq!(
        describe(&session, "map:done").as_deref(),
        Some("61 x 61 flown")
    );

    let [across, up] = session.map_sides();
    let mut map = TurnMap::new(session.scenario(), across, up).expect("two levers");
    map.complete();
    let own = picture(&session);
    for j in 0..NODES {
        for i in 0..NODES {
            assert_eq!(Some(own.turns.node(i, j)), map.turns(i, j));
            assert_eq!(Some(own.seen.node(i, j)), map.seen_margin(i, j));
        }
    }
    let owed = session.jump().owed.expect("a named jump").turns;
    assert_eq!(own.owed, own.turns.lines(owed));
    assert!(own.whole.iter().all(|line| line.level != owed));
    assert_eq!(
        own.whole.len() + own.owed.len(),
        own.turns.whole_lines().len()
    );
}

/// Moving the jump on the map flies it once, at the very place, and leaves the map as it is.
#[test]
fn the_jump_moves_on_the_map() {
    let mut session = asked();
    complete(&mut session);
    let before = picture(&session).clone();
    let generation = session.generation();
    session.put_on_map([0.25, 0.75]);
    assert_eq!(session.generation(), generation + 1, "one flight");
    let [rate, height] = numbers(&session);
    let rpm = RateUnit::Rpm.unit();
    assert!(
        (rpm.from_si(rate) - 87.5).abs() < 1e-9,
        "a quarter of 50 to 200 rpm"
    );
    assert!((height - 0.7).abs() < 1e-9, "three quarters of 10 to 90 cm");
    assert_eq!(session.jump().turns, session.scenario().fly().turns);
    let place = session.map_point();
    assert!((place[0] - 0.25).abs() < 1e-12 && (place[1] - 0.75).abs() < 1e-12);

    // The marks on the sliders are another jump's.
    session.poll(|| true);
    assert_eq!(*picture(&session), before);
    session.poll(|| true);
    assert!(!session.is_computing(), "no more to do");

    // The same place again is no flight.
    session.put_on_map(place);
    let [again, _] = numbers(&session);
    assert!((again - rate).abs() < 1e-12);
}

/// A finger that leaves the picture holds the jump at its border.
#[test]
fn the_jump_is_held_on_the_map() {
    let mut session = asked();
    session.put_on_map([-3.0, 1.2]);
    let [from, to] = [
        session.map_sides()[0].at(0.0),
        session.map_sides()[1].at(1.0),
    ];
    assert_eq!(numbers(&session), [from, to]);
}

/// A jump outside of the map leaves its ends where they are, and is told to be outside.
#[test]
fn a_jump_outside_widens_nothing() {
    let mut session = asked();
    let sides = session.map_sides();
    session.set(key(HEIGHT), 1.7);
    session.set(key(RATE), 1.0);
    assert_eq!(session.map_sides(), sides);
    let [u, v] = session.map_point();
    assert!(u < 0.0 && v > 1.0);
}

/// Another lever, another jumper, another ground: a new map, with a picture after its first piece.
#[test]
fn what_no_longer_fits_is_made_anew() {
    let mut session = asked();
    complete(&mut session);
    let mut last = picture(&session).clone();
    for change in [
        |session: &mut Session| session.set(key("arm_tuck"), 0.2),
        |session: &mut Session| session.change(|scenario| scenario.jump_turns = 3),
        |session: &mut Session| session.choose_map_lever(0, key("leg_tuck")),
        |session: &mut Session| session.open(starts::all()[3].scenario.clone()),
    ] {
        change(&mut session);
        session.poll(|| false);
        assert!(session.is_computing());
        assert_ne!(*picture(&session), last, "the new one at once");
        complete(&mut session);
        last = picture(&session).clone();
    }
}

/// On a trampoline heights go on where nobody gets on the ice.
#[test]
fn heights_go_as_far_as_the_ground_lets_them() {
    let mut session = asked();
    let highest = |session: &Session| session.map_sides()[1].at(1.0);
    assert_eq!(highest(&session), 0.9);
    session.change(|scenario| scenario.ground = turns_aloft::scenario::ground::Ground::Trampoline);
    assert_eq!(highest(&session), 2.5);
}

/// Every lever, and the hand mass, which is none.
#[test]
fn the_hand_mass_can_be_looked_at() {
    let offered: Vec<_> = Levers::offered().map(|key| key.key()).collect();
    assert_eq!(offered.len(), Lever::COUNT + 1);
    assert_eq!(offered.last(), Some(&"hand_mass_kg"));
    let mut session = asked();
    session.choose_map_lever(0, key("hand_mass_kg"));
    let mut other = Session::default();
    other.restore(&session.keep());
    assert_eq!(other.notice(), None);
    assert_eq!(other.map_levers(), session.map_levers());
}

#[test]
fn levers_change_places() {
    let mut session = asked();
    let names = |session: &Session| session.map_sides().map(|side| side.parameter().key());
    assert_eq!(names(&session), [RATE, HEIGHT]);
    session.choose_map_lever(0, key(HEIGHT));
    assert_eq!(names(&session), [HEIGHT, RATE]);
    session.choose_map_lever(0, key("arm_tuck"));
    assert_eq!(names(&session), ["arm_tuck", RATE]);
}

/// Kept and taken up again; two that are not two levers are refused as a whole.
#[test]
fn levers_are_kept() {
    let mut session = asked();
    session.choose_map_lever(1, key("open_lead_s"));
    let kept = session.keep();
    let mut other = Session::default();
    other.restore(&kept);
    assert_eq!(other.map_levers(), session.map_levers());
    assert_eq!(other.question(), Question::Map);
    for bad in ["open_lead", "stature_m", RATE] {
        let mut other = Session::default();
        other.restore(&kept.replace("\"open_lead_s\"", &format!("\"{bad}\"")));
        assert!(other.notice().is_some(), "{bad}");
        assert_eq!(other.map_levers(), Session::default().map_levers());
    }
}

/// What is said of the lines is where a jump has so many turns, to what the nodes leave between
/// them.
#[test]
fn the_lines_are_told_where_they_pass_the_jump() {
    let mut session = asked();
    complete(&mut session);
    let text = describe(&session, "map:x_for_2").expect("two turns are on the map");
    let rpm: f64 = text.trim_end_matches(" rpm").parse().expect("one number");
    session.set(key(RATE), RateUnit::Rpm.unit().to_si(rpm));
    assert!(
        (session.jump().turns - 2.0).abs() < 0.01,
        "rounded to a whole rpm"
    );
    assert_eq!(
        describe(&session, "map:x").as_deref(),
        Some("Take-off rate from 50 to 200 rpm")
    );
    assert_eq!(
        describe(&session, "map:y").as_deref(),
        Some("Jump height from 10 to 90 cm")
    );
    // Five turns are not to be had at this height.
    assert!(describe(&session, "map:x_for_5").is_none());
}

/// A map that offers more height or more in the hands says what goes with it; one of tucks does not.
#[test]
fn more_height_or_mass_is_cautioned() {
    let mut session = asked();
    let about_hands = |session: &Session| {
        let said = session.map_cautions();
        said.iter()
            .any(|sentence| sentence.contains("Weights in the hands"))
    };
    assert!(!session.map_cautions().is_empty() && !about_hands(&session));
    session.choose_map_lever(1, key("hand_mass_kg"));
    assert!(about_hands(&session));
    // What is kept decides what that map shows, and people do not keep their arms there.
    for keep in KEEPS {
        session.change(|scenario| scenario.hands_keep = keep);
        let said = session.map_cautions().join(" ");
        let kept = keeps(keep).replace("keeps", "keep");
        assert!(
            said.contains(&kept) && said.contains(OBSERVED.text()),
            "{said}"
        );
    }
    session.choose_map_lever(1, key("arm_tuck"));
    assert!(session.map_cautions().is_empty());
    // Already as high as the map goes: it offers no more.
    session.choose_map_lever(0, key(HEIGHT));
    assert!(!session.map_cautions().is_empty());
    session.put_on_map([1.0, 0.5]);
    assert!(session.map_cautions().is_empty());
}
