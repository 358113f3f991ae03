//! A jump that is led by hand: how the body follows, that no hand makes a joint faster, and that the jump that
//! is kept is the one that was flown.

#[path = "support/space.rs"]
mod space;

use glam::DVec3;
use proptest::prelude::*;

use serde_json::json;
use turns_aloft::describe::Sentence;
use turns_aloft::physics::body::Segment;
use turns_aloft::physics::flight::Flight;
use turns_aloft::physics::led_flight::LedFlight;
use turns_aloft::physics::led_tucks::{Knot, KnotsError, LATEST_S, LedTucks, MOST_KNOTS};
use turns_aloft::physics::plan::Plan;
use turns_aloft::physics::rotation::log;
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::{Scenario, starts};

fn start(name: &str) -> Scenario {
    starts::named(name).expect("a start").scenario.clone()
}

fn knot(time_s: f64, tuck: f64) -> Knot {
    Knot {
        time_s,
        arms: tuck,
        legs: tuck,
    }
}

fn led(scenario: &Scenario, knots: &[Knot]) -> Scenario {
    Scenario {
        led: Some(LedTucks::new(knots).expect("knots in order")),
        ..scenario.clone()
    }
}

/// What one finger does, frame by frame.
#[derive(Debug, Clone)]
enum Finger {
    /// Anywhere at any frame.
    Jerks(Vec<f64>),
    /// Back and forth, this often a second of the flight, between these.
    Swings(f64, [f64; 2]),
    /// Drawn in and let out at these shares of a second.
    InAndOut([f64; 4]),
}

impl Finger {
    fn at(&self, frame: usize, t_s: f64) -> f64 {
        match self {
            Self::Jerks(at) => at[frame % at.len()],
            Self::Swings(often, [from, to]) => {
                let part = 0.5 - 0.5 * libm::cos(std::f64::consts::TAU * often * t_s);
                from + part * (to - from)
            }
            Self::InAndOut([wait_s, in_s, hold_s, out_s]) => {
                let ramp = |from_s: f64, time_s: f64| ((t_s - from_s) / time_s).clamp(0.0, 1.0);
                let out_at_s = wait_s + in_s + hold_s;
                ramp(*wait_s, *in_s) - ramp(out_at_s, *out_s)
            }
        }
    }
}

fn finger() -> impl Strategy<Value = Finger> {
    prop_oneof![
        prop::collection::vec(0.0..=1.0_f64, 2..90).prop_map(Finger::Jerks),
        prop::collection::vec(prop::sample::select(vec![0.0, 1.0]), 2..90).prop_map(Finger::Jerks),
        (0.2..30.0_f64, prop::array::uniform2(0.0..=1.0_f64))
            .prop_map(|(often, ends)| Finger::Swings(often, ends)),
        (0.0..0.2_f64, 0.01..0.4_f64, 0.0..0.6_f64, 0.01..0.3_f64)
            .prop_map(|(a, b, c, d)| Finger::InAndOut([a, b, c, d])),
    ]
}

/// Flies a jump by hand to its landing.
fn fly(scenario: &Scenario, finger: &Finger, pace: f64, frame_s: f64) -> LedFlight {
    let mut flight = scenario.lead(pace);
    for frame in 0.. {
        let at = finger.at(frame, flight.time_s());
        flight.lead(at, at);
        flight.step(frame_s);
        if flight.has_landed() {
            break;
        }
    }
    flight
}

proptest! {
    #![proptest_config(space::cases(300))]

    /// The jump that is kept has the turns that were flown, to 0.005, and takes as long to 2 ms, whatever the
    /// finger did.
    #[test]
    fn what_is_kept_is_what_was_flown(
        scenario in space::planned(),
        finger in finger(),
        pace in prop::sample::select(vec![0.0625, 0.125, 0.25, 0.5, 1.0]),
        frame_s in prop::sample::select(vec![1.0 / 120.0, 1.0 / 60.0, 1.0 / 30.0]),
    ) {
        let flight = fly(&scenario, &finger, pace, frame_s);
        let kept = Scenario { led: Some(flight.knots()), ..scenario };
        let jump = kept.fly();
        let off = jump.readout.air_turns - flight.air_turns();
        prop_assert!(off.abs() < 0.005, "{off} turns with {:?}", kept.led);
        let off_s = jump.flight.touchdown_s - flight.time_s();
        prop_assert!(off_s.abs() < 0.002, "{off_s} s");
    }

    /// No finger makes a joint faster than the stated limit, and none ever leaves the range; arms and legs are
    /// where they are led to when the movement is over. Rounding only.
    #[test]
    fn no_finger_is_too_fast(
        scenario in space::led_by_hand(),
        times_s in prop::collection::vec(0.0..2.0_f64, 20),
    ) {
        let plan = Plan::new(scenario.plan_spec());
        for t_s in times_s {
            let (_, rates) = plan.at(t_s, f64::INFINITY);
            for segment in Segment::ALL {
                let rate_rad_s = rates[segment as usize].length();
                let limit_rad_s = plan.led_rate_limit_rad_s(segment);
                prop_assert!(rate_rad_s <= limit_rad_s * (1.0 + 1e-12), "{rate_rad_s} {limit_rad_s}");
            }
            let tucks = plan.tucks_at(t_s, f64::INFINITY);
            prop_assert!(tucks.iter().all(|tuck| (-1e-12..=1.0 + 1e-12).contains(tuck)), "{tucks:?}");
        }
        let last = scenario.led.as_ref().and_then(|led| led.knots().last()).expect("a knot");
        let [arms, legs] = plan.tucks_at(last.time_s + scenario.close_time_s, f64::INFINITY);
        prop_assert!((arms - last.arms).abs() < 1e-12 && (legs - last.legs).abs() < 1e-12);
    }

    /// Rates are the derivatives of angles, and accelerations those of rates, by differences over 2e-6 s; nothing
    /// jumps. Bounds from minimum-jerk movements of 0.05 s over pi, several at once.
    #[test]
    fn joints_that_are_led_move_smoothly(scenario in space::led_by_hand(), t_s in 0.0..1.5_f64) {
        const E: f64 = 1e-6;
        let plan = Plan::new(scenario.plan_spec());
        let knots = scenario.led.as_ref().map(|led| led.knots().to_vec()).expect("it is led");
        let corners = knots.iter().flat_map(|knot| plan.corners_of_knot_s(knot.time_s));
        for t_s in corners.chain([t_s]) {
            let at = |t_s: f64| plan.at(t_s, f64::INFINITY);
            let ((before, slower), (after, faster)) = (at(t_s - E), at(t_s + E));
            let (rates, changes) = (at(t_s).1, plan.accelerations_at(t_s, f64::INFINITY));
            for segment in Segment::ALL {
                let i = segment as usize;
                let turned = log(before[segment].conjugate() * after[segment]);
                prop_assert!((turned / (2.0 * E) - rates[i]).length() < 0.05);
                let change = (faster[i] - slower[i]) / (2.0 * E);
                prop_assert!((change - changes[i]).length() < 3.0, "{}", (change - changes[i]).length());
            }
        }
    }

    /// Steps half as long change the turns by less than 1e-5, as of any jump.
    #[test]
    fn finer_steps_change_nothing(scenario in space::led_by_hand()) {
        let jump = scenario.fly();
        let finer = Flight::new(jump.flight.table.finer(), jump.flight.launch);
        let off = finer.touchdown().air_turns() - jump.readout.air_turns;
        prop_assert!(off.abs() < 1e-5, "{off:e}");
    }

    /// What a hand has taken the place of changes nothing: not the turns, nor what is said to turn alike.
    #[test]
    fn what_has_no_part_changes_nothing(scenario in space::led_by_hand(), other in space::scenario()) {
        let turns = scenario.fly().turns;
        let mut changed = scenario.clone();
        for parameter in Parameter::ALL.into_iter().filter(|it| !scenario.has_part(*it)) {
            parameter.hold(&mut changed, parameter.get(&other));
        }
        prop_assert!(changed.turns_like(&scenario));
        prop_assert_eq!(changed.fly().turns, turns);
        let as_planned = Scenario { led: None, ..changed };
        prop_assert!(!as_planned.turns_like(&scenario));
    }

    /// Any knots are answered: led by, or refused by name; what is let in is read back.
    #[test]
    fn any_knots_are_answered(
        numbers in prop::collection::vec(
            prop_oneof![-1.0..3.0_f64, any::<f64>(), Just(0.0), Just(1.0)], 0..30),
    ) {
        let knots: Vec<Knot> = numbers
            .chunks_exact(3)
            .map(|of| Knot { time_s: of[0], arms: of[1], legs: of[2] })
            .collect();
        let mut file = json!(start("senior-triple").saved());
        file["scenario"]["led"] = json!(knots);
        match (LedTucks::new(&knots), Scenario::from_file(&file.to_string())) {
            (Ok(led), Ok(read)) => {
                prop_assert_eq!(read.led, Some(led));
            }
            (Err(_), Err(why)) => prop_assert!(why.sentence().contains("led"), "{}", why.sentence()),
            (one, other) => prop_assert!(false, "{one:?} {other:?}"),
        }
    }
}

/// A hand that does what a plan does flies the plan's jump: in at once, all the way, out in time. Two flights
/// of the same motion in steps that fall elsewhere: 1e-5.
#[test]
fn a_hand_that_keeps_to_the_plan_flies_the_plan() {
    for start in starts::all() {
        let planned = Scenario {
            arm_tuck: 1.0,
            leg_tuck: 1.0,
            arm_lag_s: 0.0,
            close_time_s: 0.15,
            open_time_s: 0.15,
            open_lead_s: 0.1,
            ..start.scenario.clone()
        };
        let jump = planned.fly();
        let knots = [
            knot(planned.close_delay_s, 1.0),
            knot(jump.flight.open_s, 0.0),
        ];
        let by_hand = led(&planned, &knots).fly();
        let off = by_hand.turns - jump.turns;
        assert!(off.abs() < 1e-5, "{}: {off:e}", start.name);
        assert_eq!(by_hand.flight.open_s, jump.flight.open_s);
        let off_s = by_hand.flight.touchdown_s - jump.flight.touchdown_s;
        assert!(off_s.abs() < 1e-6, "{}: {off_s:e}", start.name);
    }
}

/// The hand is out, in, out: the flight is slow, fast, slow; and its readouts say when.
#[test]
fn in_is_fast_and_out_is_slow() {
    let scenario = led(&start("senior-triple"), &[knot(0.05, 1.0), knot(0.4, 0.0)]);
    let jump = scenario.fly();
    let rate = |t_s: f64| jump.flight.at(t_s).spin_rad_s.abs();
    assert!(
        rate(0.35) > 2.0 * rate(0.03),
        "{} {}",
        rate(0.35),
        rate(0.03)
    );
    assert!(rate(jump.flight.touchdown_s) < 0.8 * rate(0.35));
    assert_eq!(jump.flight.open_s, 0.4);
    assert!(jump.readout.closing_work_j > 0.0);
    let never = led(&scenario, &[knot(0.05, 1.0)]).fly();
    assert_eq!(never.flight.open_s, never.flight.touchdown_s);
    assert!(never.turns > jump.turns);
}

/// Whatever a finger or a page does: no number, no time, a long pause, a touch after the landing.
#[test]
fn a_live_flight_takes_anything() {
    let mut flight = start("four-turns").lead(f64::NAN);
    flight.lead(f64::NAN, 0.5);
    flight.lead(f64::INFINITY, f64::NEG_INFINITY);
    assert_eq!((flight.led().arms, flight.led().legs), (1.0, 0.0));
    for frame_s in [f64::NAN, -1.0, 0.0] {
        flight.step(frame_s);
        assert_eq!(flight.time_s(), 0.0);
    }
    // A page that was hidden for an hour flies on from where it was.
    let mut flight = start("four-turns").lead(0.125);
    assert!(flight.step(3600.0) <= 0.1 * 0.125 + 1e-12);
    let mut before_s = flight.landing_in_s();
    while !flight.has_landed() {
        flight.lead(1.0, 1.0);
        flight.step(1.0 / 60.0);
        let now_s = flight.landing_in_s();
        assert!(now_s < before_s + 0.01, "{now_s} {before_s}");
        before_s = now_s;
    }
    assert_eq!(flight.landing_in_s(), 0.0);
    let (turns, knots) = (flight.air_turns(), flight.knots());
    flight.lead(0.0, 0.0);
    flight.step(0.1);
    assert_eq!((flight.air_turns(), flight.knots()), (turns, knots));
    assert!(flight.rate_rad_s() > 0.0);
}

/// Few movements are few knots: a finger that draws in, holds and lets go.
#[test]
fn few_movements_are_few_knots() {
    let finger = Finger::InAndOut([0.05, 0.1, 0.25, 0.08]);
    for name in ["senior-triple", "four-turns", "half-a-turn-short"] {
        let flight = fly(&start(name), &finger, 0.125, 1.0 / 60.0);
        let knots = flight.knots();
        assert!(knots.knots().len() <= 12, "{name}: {knots:?}");
    }
    // A hand that does nothing is one knot that leads nowhere.
    let mut idle = start("four-turns").lead(0.125);
    while !idle.has_landed() {
        idle.lead(0.0, 0.0);
        idle.step(1.0 / 60.0);
    }
    assert_eq!(idle.knots(), LedTucks::nothing());
    let kept = led(&start("four-turns"), idle.knots().knots()).fly();
    assert!((kept.readout.air_turns - idle.air_turns()).abs() < 1e-5);
}

/// What cannot be is refused with what it is.
#[test]
fn knots_that_cannot_be_are_refused() {
    let refused = |knots: &[Knot]| LedTucks::new(knots).expect_err("they cannot be");
    assert_eq!(refused(&[]), KnotsError::Count(0));
    let many: Vec<Knot> = (0..=MOST_KNOTS)
        .map(|i| knot(0.001 * i as f64, 0.5))
        .collect();
    assert_eq!(refused(&many), KnotsError::Count(MOST_KNOTS + 1));
    assert!(LedTucks::new(&many[1..]).is_ok());
    let twice = [knot(0.1, 1.0), knot(0.1, 0.0)];
    let place_and_time = KnotsError::OutOfOrder {
        place: 2,
        time_s: 0.1,
    };
    assert_eq!(refused(&twice), place_and_time);
    for bad in [
        knot(-0.1, 1.0),
        knot(LATEST_S + 0.1, 1.0),
        knot(0.1, 1.1),
        knot(0.1, f64::NAN),
    ] {
        assert!(matches!(
            refused(&[bad]),
            KnotsError::OutOfRange { place: 1, .. }
        ));
    }
}

/// The body is the jumper's: a hand leads all the way to the tightest posture, whatever the plan's tuck is.
#[test]
fn all_the_way_in_is_as_tight_as_the_body_gets() {
    let scenario = led(&start("senior-triple"), &[knot(0.0, 1.0)]);
    let plan = Plan::new(scenario.plan_spec());
    let (posture, rates) = plan.at(1.0, f64::INFINITY);
    let tight = scenario.plan_spec().tight.posture();
    for segment in Segment::ALL {
        let off: DVec3 = log(posture[segment].conjugate() * tight[segment]);
        assert!(off.length() < 1e-12);
        assert_eq!(rates[segment as usize], DVec3::ZERO);
    }
}
