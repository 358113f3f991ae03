//! What lies on the picture leaves the figure free, and the answer beside it stays in sight.

use egui::accesskit::Role;
use egui::{Event, Rect, pos2, vec2};

use crate::harness::{
    LANGUAGES, PHONE_ON_ITS_SIDE, Page, SIZES, SMALL_PHONE, centre, control, open, pointer, press,
    press_target, settle, show, targets, texts,
};
use turns_aloft::appearance;
use turns_aloft::describe::Label;
use turns_aloft::describe::call::shortfall_text;
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::session::{Question, Session};
use turns_aloft::words::{Language, decimal, set_language, text};

fn every_size() -> impl Iterator<Item = [f32; 2]> {
    SIZES.into_iter().chain([SMALL_PHONE, PHONE_ON_ITS_SIDE])
}

/// Where the figure is, CSS pixels, once it has come to rest.
fn figure(page: &mut Page) -> Rect {
    page.run_steps(20);
    page.state().frame.expect("a frame").figure * page.ctx.zoom_factor()
}

/// Nothing that can be touched, and no letter, lies on the figure; which keeps `share` of the height
/// of the picture.
fn check_free(page: &mut Page, share: f32, state: &str) {
    let figure = figure(page);
    let stage = page.state().frame.expect("a frame").stage * page.ctx.zoom_factor();
    assert!(stage.contains_rect(figure), "{state}: {figure:?}");
    let least = share * stage.height();
    assert!(
        figure.width() >= least && figure.height() >= least,
        "{state}: {figure:?} of {stage:?}"
    );
    for (name, rect) in targets() {
        let common = rect.intersect(figure);
        assert!(
            !common.is_positive(),
            "{state}: {name} at {rect:?} lies on the figure at {figure:?}"
        );
    }
    for text in texts(page) {
        let letters = text.letters * page.ctx.zoom_factor();
        assert!(!letters.intersects(figure), "{state}: {text:?}");
    }
}

#[test]
fn nothing_lies_on_the_figure() {
    for size in every_size() {
        for language in LANGUAGES {
            for large in [false, true] {
                let mut choice = appearance::chosen();
                choice.large = large;
                appearance::choose(choice);
                let state = format!("{size:?} {language:?} large {large}");
                let mut page = open(size, language, Question::Jump);
                settle(&mut page);
                assert!(targets().contains_key("greeting"));
                check_free(&mut page, 0.5, &format!("{state} greeting"));
                let session = &mut page.state_mut().session;
                session.set(Parameter::JumpHeight, 9.0);
                assert!(session.notice().is_some(), "held at the limit");
                settle(&mut page);
                assert!(targets().contains_key("notice"));
                check_free(&mut page, 0.4, &format!("{state} notice"));
                press_target(&mut page, "notice");
                assert!(!targets().contains_key("notice"));
                check_free(&mut page, 0.6, &format!("{state} nothing else"));
            }
        }
    }
}

/// Whether a text with that beginning is wholly on the screen.
fn in_sight(page: &Page, size: [f32; 2], start: &str) -> bool {
    let screen = Rect::from_min_size(pos2(0.0, 0.0), vec2(size[0], size[1]));
    texts(page).iter().any(|text| {
        let seen = text.clip.intersect(screen);
        text.text.contains(start) && seen.contains_rect(text.letters)
    })
}

fn check_answer(page: &Page, size: [f32; 2], state: &str) {
    let jump = page.state().session.jump();
    let owed = jump.owed.expect("a counted jump");
    for said in [decimal(jump.turns, 2), shortfall_text(owed.shortfall_deg)] {
        assert!(in_sight(page, size, &said), "{state}: {said}");
    }
}

/// The turns and what is missing are shown under every question, however far the rest is scrolled, and
/// while a slider is dragged.
#[test]
fn the_answer_stays_in_sight() {
    for size in every_size() {
        for language in LANGUAGES {
            let mut page = open(size, language, Question::Jump);
            for question in Question::ALL {
                page.state_mut().session.ask(question);
                settle(&mut page);
                check_answer(&page, size, &format!("{size:?} {question:?}"));
            }
            page.state_mut().session.ask(Question::Jump);
            settle(&mut page);
            for parameter in [Parameter::JumpHeight, Parameter::HandMass] {
                let name = parameter.label();
                control(&page, Role::Slider, name).scroll_to_me();
                settle(&mut page);
                let slider = format!("slider:{}", parameter.key());
                let from = centre(&slider) + vec2(0.0, 8.0);
                pointer(&mut page, from, true);
                let before = page.state().session.jump().turns;
                for step in [10.0, 25.0, 40.0] {
                    page.event(Event::PointerMoved(from + vec2(step, 0.0)));
                    // The slider is drawn after the answer, which follows in the next frame.
                    page.run_steps(2);
                    check_answer(&page, size, &format!("{size:?} {name} dragged by {step}"));
                }
                assert_ne!(
                    page.state().session.jump().turns,
                    before,
                    "{name} is dragged"
                );
                pointer(&mut page, from + vec2(40.0, 0.0), false);
            }
        }
    }
}

/// On a tablet the figures of the turns can be read from three metres: they are at least 1/200 of that
/// high, 15 mm, at the usual 264 pixels of the screen in an inch, two to a CSS pixel. Common practice
/// for signs, no source.
#[test]
fn on_a_tablet_the_turns_are_legible_from_three_metres() {
    const MM_PER_PX: f32 = 25.4 / 132.0;
    for size in &SIZES[..3] {
        let page = open(*size, Language::English, Question::Jump);
        let turns = decimal(page.state().session.jump().turns, 2);
        let height = texts(&page)
            .into_iter()
            .filter(|text| text.text == turns)
            .map(|text| text.letters.height())
            .fold(0.0, f32::max);
        assert!(height * MM_PER_PX >= 15.0, "{size:?}: {height} px");
    }
}

#[test]
fn the_greeting_goes_when_it_is_obeyed_and_stays_away() {
    let mut page = open(SIZES[3], Language::English, Question::Jump);
    control(&page, Role::Slider, Parameter::JumpHeight.label()).scroll_to_me();
    settle(&mut page);
    let from = centre("slider:jump_height_m") + vec2(0.0, 8.0);
    assert!(targets().contains_key("greeting"));
    pointer(&mut page, from, true);
    page.event(Event::PointerMoved(from + vec2(30.0, 0.0)));
    page.step();
    page.step();
    assert!(!targets().contains_key("greeting"), "while it is dragged");
    pointer(&mut page, from + vec2(30.0, 0.0), false);
    let mut later = Session::default();
    later.restore(&page.state().session.keep());
    show(SIZES[3], later);
    assert!(!targets().contains_key("greeting"), "after a reload");
}

/// Opening a jump is not what the greeting asks for.
#[test]
fn the_greeting_stays_until_then() {
    let mut page = open(SIZES[3], Language::English, Question::Jump);
    press(&mut page, text("panel-view-above"));
    page.state_mut().session.ask(Question::Map);
    settle(&mut page);
    assert!(targets().contains_key("greeting"));
    set_language(Language::German);
    settle(&mut page);
    assert!(targets().contains_key("greeting"));
}
