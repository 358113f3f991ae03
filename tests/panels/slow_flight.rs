//! A jump is flown slowly by hand: by a finger on the pad or on the picture, and by AccessKit as a keyboard does.

use egui::accesskit::{ActionData, Role};
use egui::{Pos2, TouchPhase, pos2, vec2};

use crate::finger::finger;
use crate::harness::*;
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::session::slow_flight::PACES;
use turns_aloft::session::{Question, Session};
use turns_aloft::words::{Language, set_language};

/// A frame of the page, s.
const FRAME_S: f64 = 1.0 / 60.0;

/// Longer than any flight takes at the slowest pace.
const MOST_FRAMES: usize = 2000;

/// Opens a page on which the first starting point is about to be flown by hand.
pub fn begin(size: [f32; 2], language: Language, still: bool) -> Page {
    set_language(language);
    let mut session = Session::default();
    if still {
        session.reduce_motion();
    }
    let mut page = show(size, session);
    press_target(&mut page, "starts");
    press_target(&mut page, "slow flight");
    page.run_steps(10);
    page
}

/// Time passes as on the page: the flight moves on, then the panels are shown.
fn pass(page: &mut Page) {
    page.state_mut().session.advance(FRAME_S);
    page.step();
}

/// Flies until the landing with arms and legs as they are led to now.
pub fn land(page: &mut Page) {
    for _ in 0..MOST_FRAMES {
        if page
            .state()
            .session
            .slow_flight()
            .is_none_or(|it| !it.is_in_air())
        {
            settle(page);
            return;
        }
        pass(page);
    }
    panic!("it lands");
}

fn wanted(page: &Page) -> f64 {
    page.state()
        .session
        .slow_flight()
        .expect("it is flown by hand")
        .wanted()
}

fn landed_turns(page: &Page) -> f64 {
    let slow = page
        .state()
        .session
        .slow_flight()
        .expect("it is flown by hand");
    slow.landed().expect("it has landed").jump.turns
}

/// A place on the pad: `aside` of the way from its middle to its right edge.
fn on_pad(aside: f32) -> Pos2 {
    let pad = targets()["pad"];
    pos2(pad.center().x + aside * 0.5 * pad.width(), pad.center().y)
}

/// What a finger does: the frame it begins in, and where it is by then; none when it is lifted.
type Script = &'static [(usize, Option<f32>)];

const SCRIPTS: [Script; 3] = [
    &[(6, Some(0.0)), (150, None)],
    &[
        (0, Some(0.7)),
        (20, Some(0.4)),
        (35, Some(-0.1)),
        (120, Some(-0.6)),
        (170, None),
    ],
    &[
        (10, Some(0.0)),
        (60, None),
        (75, Some(0.2)),
        (110, Some(0.0)),
        (190, Some(1.0)),
    ],
];

/// The knots that are kept fly the jump that the finger flew. The same finger leads a flight of the mechanics beside
/// the page, which has no knots left out; half a hundredth of a turn is what a reader can't see.
#[test]
fn a_script_of_touches_equals_its_replay_from_knots() {
    for script in SCRIPTS {
        for pace in PACES {
            let mut page = begin(TABLET, Language::English, true);
            page.state_mut().session.set_pace(pace);
            settle(&mut page);
            press_target(&mut page, "take off");
            let scenario = page.state().session.scenario().clone();
            let mut beside = scenario.lead(pace);
            let mut is_down = false;
            for i in 0..MOST_FRAMES {
                if let Some((_, to)) = script.iter().find(|(frame, _)| *frame == i) {
                    let phase = match to {
                        Some(_) if is_down => TouchPhase::Move,
                        Some(_) => TouchPhase::Start,
                        None => TouchPhase::End,
                    };
                    is_down = to.is_some();
                    finger(&mut page, phase, on_pad(to.unwrap_or_default()));
                }
                if !page.state().session.moves() {
                    break;
                }
                let wanted = wanted(&page);
                beside.lead(wanted, wanted);
                beside.step(FRAME_S);
                pass(&mut page);
            }
            let flown = beside.air_turns() + scenario.pre_rotation_turns;
            let kept = landed_turns(&page);
            assert!(beside.has_landed(), "{script:?}");
            assert!(
                (kept - flown).abs() < 0.005,
                "{script:?} {pace}: {kept} from {flown}"
            );
            // The finger did something.
            let alone = led_by_nobody(pace);
            assert!(kept > alone + 0.02, "{script:?} {pace}: {kept}, {alone}");
        }
    }
}

/// Turns of the jump when no finger is put down.
fn led_by_nobody(pace: f64) -> f64 {
    let mut session = Session::default();
    session.reduce_motion();
    session.fly_by_hand();
    session.set_pace(pace);
    session.take_off();
    while session.moves() {
        session.advance(FRAME_S);
    }
    let landed = session.slow_flight().and_then(|it| it.landed());
    landed.expect("it has landed").jump.turns
}

/// In the middle all in, at either edge all out, lifted all out; and the column stays where it is.
#[test]
fn a_finger_leads_by_how_far_from_the_middle_it_is() {
    for size in SIZES {
        let mut page = begin(size, Language::English, true);
        press_target(&mut page, "take off");
        let before = targets()["pad"];
        finger(&mut page, TouchPhase::Start, on_pad(0.0));
        assert_eq!(wanted(&page), 1.0, "{size:?}");
        let mut last = 1.0;
        for aside in [0.3, 0.5, 0.7, 0.95] {
            finger(&mut page, TouchPhase::Move, on_pad(aside));
            assert!(wanted(&page) < last, "{size:?} {aside}");
            last = wanted(&page);
            finger(&mut page, TouchPhase::Move, on_pad(-aside));
            assert!((wanted(&page) - last).abs() < 1e-4, "{size:?} {aside}");
        }
        assert_eq!(last, 0.0);
        finger(&mut page, TouchPhase::Move, on_pad(0.0) - vec2(0.0, 60.0));
        assert_eq!(wanted(&page), 1.0, "up and down makes no difference");
        finger(&mut page, TouchPhase::End, on_pad(0.0));
        assert_eq!(wanted(&page), 0.0, "lifted");
        assert_eq!(targets()["pad"], before, "{size:?}");
    }
}

#[test]
fn a_finger_on_the_picture_leads_as_well_while_it_is_in_the_air() {
    let mut page = begin(TABLET, Language::English, true);
    let stage = page.state().frame.expect("a frame").stage;
    let middle = pos2(stage.center().x, stage.center().y);
    finger(&mut page, TouchPhase::Start, middle);
    assert_eq!(
        wanted(&page),
        0.0,
        "before the take-off it turns the camera"
    );
    finger(&mut page, TouchPhase::End, middle);
    press_target(&mut page, "take off");
    finger(&mut page, TouchPhase::Start, middle);
    assert_eq!(wanted(&page), 1.0);
    finger(&mut page, TouchPhase::End, middle);
    assert_eq!(wanted(&page), 0.0);
}

/// As a keyboard does it: every control by its name, the pad as a slider.
#[test]
fn by_keyboard_it_is_flown_landed_taken_and_undone() {
    let mut page = open(TABLET, Language::English, Question::Jump);
    let planned = page.state().session.scenario().clone();
    press(&mut page, "Fly it by hand");
    assert!(
        !page.state().session.moves(),
        "nothing moves until it is asked for"
    );
    press(&mut page, "Leave the ground");
    assert!(page.state().session.moves());
    for _ in 0..5 {
        pass(&mut page);
    }
    set(
        &mut page,
        Role::Slider,
        "How far in",
        ActionData::NumericValue(100.0),
    );
    let said = control(&page, Role::Slider, "How far in").value();
    assert_eq!(said.as_deref(), Some("100 % in"));
    for _ in 0..300 {
        pass(&mut page);
    }
    assert!(page.state().session.moves(), "it is still in the air");
    set(
        &mut page,
        Role::Slider,
        "How far in",
        ActionData::NumericValue(0.0),
    );
    land(&mut page);
    let flown = landed_turns(&page);
    assert!(flown > led_by_nobody(PACES[2]) + 0.3, "{flown}");
    press(&mut page, "Take this jump");
    let session = &page.state().session;
    assert!(!session.is_flown_by_hand());
    assert!(session.scenario().led.is_some());
    assert!((session.jump().turns - flown).abs() < 1e-12);
    press_target(&mut page, "undo");
    assert_eq!(*page.state().session.scenario(), planned);
    press_target(&mut page, "redo");
    assert!(page.state().session.scenario().led.is_some());
}

/// What a hand has taken the place of has no slider, on any page; without the hand all are there again.
#[test]
fn a_jump_that_was_led_by_hand_has_no_sliders_without_a_part() {
    for size in SIZES {
        let mut page = begin(size, Language::English, true);
        press_target(&mut page, "take off");
        land(&mut page);
        press_target(&mut page, "take this jump");
        press_target(&mut page, "fold:Take-off, closing, opening");
        let sliders = || -> Vec<Parameter> {
            let shown = targets();
            let all = Parameter::ALL.into_iter();
            all.filter(|it| shown.contains_key(&format!("slider:{}", it.key())))
                .collect()
        };
        let led = sliders();
        let scenario = page.state().session.scenario().clone();
        assert!(led.iter().all(|it| scenario.has_part(*it)), "{led:?}");
        assert!(led.contains(&Parameter::JumpHeight) && led.contains(&Parameter::CloseTime));
        assert!(says(&page, "led by hand"), "{size:?}");
        for question in [
            Question::Why,
            Question::Compare,
            Question::Map,
            Question::Goal,
        ] {
            page.state_mut().session.ask(question);
            page.state_mut().session.poll(|| true);
            settle(&mut page);
        }
        page.state_mut().session.ask(Question::Jump);
        settle(&mut page);
        press_target(&mut page, "as planned");
        assert_eq!(page.state().session.scenario().led, None);
        let planned = sliders();
        assert!(planned.len() > led.len(), "{planned:?}");
        assert!(planned.contains(&Parameter::ArmTuck) && planned.contains(&Parameter::OpenLead));
        page.state_mut().session.undo();
        settle(&mut page);
        assert_eq!(sliders(), led);
    }
}

/// Until it is taken, the jump at hand and its history stay as they are.
#[test]
fn again_stop_and_leave_change_nothing_of_the_jump() {
    let mut page = begin(TABLET, Language::English, true);
    let before = page.state().session.document().clone();
    press_target(&mut page, "take off");
    pass(&mut page);
    press_target(&mut page, "stop");
    assert!(!page.state().session.moves());
    press_target(&mut page, "take off");
    land(&mut page);
    press_target(&mut page, "again");
    assert!(targets().contains_key("take off"));
    press_target(&mut page, "leave slow flight");
    let session = &page.state().session;
    assert!(!session.is_flown_by_hand() && !session.moves());
    assert_eq!(*session.document(), before);
    assert_eq!(session.history().steps(), [0, 0]);
    // So does a try, somebody on a turntable, and another jump that is opened.
    page.state_mut().session.fly_by_hand();
    page.state_mut().session.begin_try();
    assert!(!page.state().session.is_flown_by_hand());
    page.state_mut().session.leave_try();
    page.state_mut().session.fly_by_hand();
    page.state_mut().session.begin_turntable();
    assert!(!page.state().session.is_flown_by_hand());
    page.state_mut().session.fly_by_hand();
    assert!(!page.state().session.is_on_turntable());
    settle(&mut page);
    press_target(&mut page, "starts");
    press_target(&mut page, "slow flight");
    page.state_mut().session.begin_jump();
    assert!(!page.state().session.is_flown_by_hand());
}

/// Where nothing is to move unasked it is flown at the slowest pace, and the landing stands still.
#[test]
fn reduced_motion_is_respected() {
    for still in [false, true] {
        let mut page = begin(TABLET, Language::English, still);
        let slow = page.state().session.slow_flight().expect("it has begun");
        let slowest = PACES.into_iter().fold(f64::INFINITY, f64::min);
        assert_eq!(slow.pace() == slowest, still);
        assert!(!page.state().session.moves());
        press_target(&mut page, "take off");
        while page
            .state()
            .session
            .slow_flight()
            .is_some_and(|it| it.is_in_air())
        {
            pass(&mut page);
        }
        let session = &page.state().session;
        assert_eq!(session.moves(), !still);
        let down_s = session.pictured().flight.touchdown_s;
        assert_eq!(session.playhead_s() > down_s + 0.1, still);
    }
}

/// What it came to is worked out over several frames, each with a flight or two, so that none waits; until it is
/// there the figure stays as it came down, and the page goes on drawing.
#[test]
fn the_answer_comes_over_several_frames() {
    let mut session = Session::default();
    session.fly_by_hand();
    session.take_off();
    let mut frames = 0;
    let mut down_s = 0.0;
    while session
        .slow_flight()
        .is_some_and(|it| it.landed().is_none())
    {
        assert!(session.moves() && session.slow_flight().is_some_and(|it| it.is_in_air()));
        // Quick enough for many knots.
        session.lead(0.5 + 0.5 * libm::sin(0.01 * f64::from(frames).powi(2)));
        session.advance(FRAME_S);
        let led = session.slow_flight().and_then(|it| it.led());
        if led.is_some_and(|led| led.has_landed()) {
            frames += 1;
            let held_s = std::mem::replace(&mut down_s, session.playhead_s());
            assert!(frames == 1 || held_s == down_s, "{held_s} {down_s}");
        }
    }
    // Knots, the flight with them, what it is beyond, and four causes of two jumps.
    assert!((11..40).contains(&frames), "{frames}");
    // Left while it is worked out, nothing comes of it.
    session.fly_again();
    session.take_off();
    while !session
        .slow_flight()
        .and_then(|it| it.led())
        .is_some_and(|led| led.has_landed())
    {
        session.advance(FRAME_S);
    }
    session.stop_flying_by_hand();
    session.advance(FRAME_S);
    assert!(!session.is_flown_by_hand());
}

/// Both figures are shown after the landing, and only then.
#[test]
fn the_jump_as_it_was_is_the_pale_figure() {
    let mut page = begin(TABLET, Language::English, true);
    assert!(page.state().session.pictured_beside().is_none());
    press_target(&mut page, "take off");
    assert!(page.state().session.pictured_beside().is_none());
    land(&mut page);
    let session = &page.state().session;
    let (beside, _) = session.pictured_beside().expect("a second figure");
    assert!(std::sync::Arc::ptr_eq(beside, session.flight()));
    assert!(!std::sync::Arc::ptr_eq(
        &session.pictured().flight,
        session.flight()
    ));
}

/// The two budgets add up to the turns shown, and name what a screen reader gets.
#[test]
fn where_the_turns_went_is_told_of_both() {
    for language in LANGUAGES {
        let mut page = begin(TABLET, language, true);
        press_target(&mut page, "take off");
        land(&mut page);
        let session = &page.state().session;
        let landed = session
            .slow_flight()
            .and_then(|it| it.landed())
            .expect("it has landed");
        for shown in landed.budgets {
            let sum = shown.ideal - shown.losses.iter().sum::<i64>() + shown.ice;
            assert_eq!(sum, shown.turns);
        }
        assert_eq!(
            landed.budgets[0].turns as f64,
            (100.0 * session.jump().turns).round()
        );
        let lines = session.answers();
        let of = |key: &str| lines.iter().find(|line| line.quantity == key);
        for key in [
            "slow:state",
            "slow:turns",
            "slow:opening_turns",
            "slow:turns_in_all",
        ] {
            assert!(of(key).is_some_and(|line| !line.text.is_empty()), "{key}");
        }
    }
}

/// What could push somebody to jump more is never without the cautions.
#[test]
fn the_cautions_stand_below_it() {
    for size in SIZES {
        let mut page = begin(size, Language::English, true);
        for state in ["ready", "in the air", "landed"] {
            let simulated = "A simulation, not advice.";
            let leave = at_target(&page, "leave slow flight").expect("it can be left");
            leave.scroll_to_me();
            settle(&mut page);
            assert!(says(&page, simulated), "{size:?} {state}");
            match state {
                "ready" => press_target(&mut page, "take off"),
                _ => land(&mut page),
            }
        }
    }
}
