//! What is written on the 3D picture.

use egui::{pos2, vec2};

use crate::harness::{SIZES, TABLET, open, press_target, says, settle, texts};
use turns_aloft::appearance::{Figure, chosen};
use turns_aloft::panel::HandDistance;
use turns_aloft::scenario::units::LengthUnit;
use turns_aloft::session::Question;
use turns_aloft::words::Language;

/// After touch-down, on every screen, and only then.
#[test]
fn a_landing_is_said_not_to_be_computed() {
    for size in SIZES {
        for (language, said) in [
            (Language::English, "Landing shown, not computed"),
            (Language::German, "Landung nur gezeigt, nicht berechnet"),
        ] {
            let mut page = open(size, language, Question::Jump);
            let all = texts(&page);
            let caption = all.iter().find(|text| text.text == said);
            let caption = caption.unwrap_or_else(|| panic!("{size:?} {language:?}"));
            let stage = page.state().frame.expect("a picture").stage;
            assert!(
                stage.contains_rect(caption.letters),
                "{size:?} {language:?}"
            );
            page.state_mut().session.scrub(0.2);
            settle(&mut page);
            assert!(!says(&page, said), "{size:?} {language:?}: in the air");
        }
    }
}

/// What is read out at the landing is the touch-down, however far the landing has been shown.
#[test]
fn a_landing_changes_no_readout() {
    let mut page = open(TABLET, Language::English, Question::Jump);
    let session = &mut page.state_mut().session;
    let touchdown = *session.flight().touchdown();
    let at_the_end = session.now();
    assert!(session.playhead_s() > session.flight().touchdown_s);
    assert_eq!(at_the_end.turned_rad, touchdown.turned_rad);
    assert_eq!(at_the_end.t_s, touchdown.t_s);
}

/// By choice in the settings.
#[test]
fn the_jumper_can_be_drawn_as_sticks() {
    let mut page = open(TABLET, Language::English, Question::Jump);
    for (target, figure) in [
        ("figure:sticks", Figure::Sticks),
        ("figure:body", Figure::Body),
    ] {
        press_target(&mut page, "Units");
        press_target(&mut page, target);
        assert_eq!(chosen().figure, figure);
        press_target(&mut page, "Units");
    }
}

/// In the user's unit, beside the hands, and never one over the other.
#[test]
fn the_hands_distances_are_written_beside_them() {
    let mut page = open(TABLET, Language::English, Question::Jump);
    let stage = page.state().frame.expect("a picture").stage;
    let hand = |distance_m: f64, aside: f32| HandDistance {
        distance_m,
        at: stage.center() + vec2(aside, 0.0),
        axis_at: stage.center(),
    };
    page.state_mut().hands = vec![hand(0.324, -60.0), hand(0.417, 60.0)];
    settle(&mut page);
    let letters = |page: &crate::harness::Page, number: &str| {
        let all = texts(page);
        let text = all.iter().find(|text| text.text == number);
        let text = text.unwrap_or_else(|| panic!("{number}"));
        text.letters
    };
    assert!(letters(&page, "32 cm").right() < stage.center().x - 60.0);
    assert!(letters(&page, "42 cm").left() > stage.center().x + 60.0);
    // Both hands in front of the axis.
    page.state_mut().hands = vec![hand(0.1, 5.0), hand(0.12, 8.0)];
    let mut units = *page.state().session.units();
    units.length = LengthUnit::In;
    page.state_mut().session.set_units(units);
    settle(&mut page);
    let (one, other) = (letters(&page, "3.9 in"), letters(&page, "4.7 in"));
    assert!(!one.intersects(other), "{one:?} {other:?}");
    assert!(stage.contains(pos2(one.left(), other.bottom())));
}
