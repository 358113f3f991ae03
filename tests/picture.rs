//! The still picture of a jump, as another library draws it (resvg): nothing lies outside or on something
//! else, and its QR code, as another library reads it (rqrr), opens the jump.

use std::sync::{Arc, LazyLock};

use proptest::prelude::*;
use resvg::tiny_skia::{Pixmap, Transform};
use resvg::usvg::{self, Node, Rect, Tree, fontdb};
use turns_aloft::analysis::turn_try::TurnTry;
use turns_aloft::picture::{HEIGHT_PX, Picture, WIDTH_PX, to_svg};
use turns_aloft::scenario::link::from_fragment;
use turns_aloft::scenario::units::{LengthUnit, MassUnit, RateUnit, Units};
use turns_aloft::scenario::{Scenario, starts};
use turns_aloft::words::{Language, set_language};

#[path = "support/space.rs"]
mod space;

const ADDRESS: &str = "https://example.org/turns-aloft/";

static FONTS: LazyLock<Arc<fontdb::Database>> = LazyLock::new(|| {
    let mut fonts = fontdb::Database::new();
    fonts.load_font_data(include_bytes!("../assets/fonts/barlow-500.ttf").to_vec());
    fonts.load_font_data(include_bytes!("../assets/fonts/barlow-600.ttf").to_vec());
    Arc::new(fonts)
});

fn svg(scenario: &Scenario, units: &Units) -> String {
    svg_tried(scenario, units, None)
}

/// As a try at so many turns.
fn svg_tried(scenario: &Scenario, units: &Units, step: Option<u8>) -> String {
    let jump = scenario.fly();
    let tried = step.map(|step| TurnTry::new(scenario, &jump, step));
    to_svg(&Picture {
        scenario,
        jump: &jump,
        units,
        tried: tried.as_ref(),
        address: Some(ADDRESS),
    })
}

/// The fonts by weight: the library does not read those inside the file, as a browser does.
fn select_font(font: &usvg::Font, fonts: &mut Arc<fontdb::Database>) -> Option<fontdb::ID> {
    let face = fonts.faces().find(|face| face.weight.0 == font.weight());
    face.map(|face| face.id)
}

fn tree(svg: &str) -> Tree {
    let options = usvg::Options {
        fontdb: Arc::clone(&FONTS),
        font_resolver: usvg::FontResolver {
            select_font: Box::new(select_font),
            ..usvg::FontResolver::default()
        },
        ..usvg::Options::default()
    };
    Tree::from_str(svg, &options).expect("an SVG file")
}

fn drawn(tree: &Tree) -> Pixmap {
    let mut pixmap = Pixmap::new(WIDTH_PX as u32, HEIGHT_PX as u32).expect("a size");
    resvg::render(tree, Transform::identity(), &mut pixmap.as_mut());
    pixmap
}

/// What the QR code on a drawn picture says.
fn read_code(pixmap: &Pixmap) -> Option<String> {
    let grey = |x: usize, y: usize| {
        let pixel = pixmap.pixel(x as u32, y as u32).expect("on the picture");
        ((u32::from(pixel.red()) + u32::from(pixel.green()) + u32::from(pixel.blue())) / 3) as u8
    };
    let (width, height) = (WIDTH_PX as usize, HEIGHT_PX as usize);
    let mut image = rqrr::PreparedImage::prepare_from_greyscale(width, height, grey);
    let grids = image.detect_grids();
    let (_, said) = grids.first()?.decode().ok()?;
    Some(said)
}

/// Each text and where its letters are.
fn texts(group: &usvg::Group, found: &mut Vec<(String, Rect)>) {
    for node in group.children() {
        match node {
            Node::Group(group) => texts(group, found),
            Node::Text(text) => {
                let said = text.chunks().iter().map(usvg::TextChunk::text).collect();
                found.push((said, text.flattened().abs_bounding_box()));
            }
            _ => {}
        }
    }
}

fn check_texts(tree: &Tree, least: usize) {
    let mut found = Vec::new();
    texts(tree.root(), &mut found);
    assert!(found.len() >= least, "{} texts", found.len());
    for (i, (said, rect)) in found.iter().enumerate() {
        assert!(
            rect.left() >= 0.0
                && rect.top() >= 0.0
                && rect.right() <= WIDTH_PX
                && rect.bottom() <= HEIGHT_PX,
            "“{said}” lies outside: {rect:?}"
        );
        for (other, beside) in &found[i + 1..] {
            let apart = rect.right() <= beside.left()
                || beside.right() <= rect.left()
                || rect.bottom() <= beside.top()
                || beside.bottom() <= rect.top();
            assert!(apart, "“{said}” lies on “{other}”: {rect:?}, {beside:?}");
        }
    }
}

const UNITS: [Units; 2] = [
    Units {
        rate: RateUnit::Rpm,
        length: LengthUnit::Cm,
        mass: MassUnit::Kg,
    },
    Units {
        rate: RateUnit::DegPerS,
        length: LengthUnit::In,
        mass: MassUnit::Lb,
    },
];

#[test]
fn all_text_is_on_the_picture_and_beside_other_text() {
    for language in Language::ALL {
        set_language(language);
        for start in starts::all() {
            for units in UNITS {
                check_texts(&tree(&svg(&start.scenario, &units)), 25);
            }
        }
    }
}

#[test]
fn a_long_name_has_room() {
    let mut scenario = starts::named("four-turns")
        .expect("a starting point")
        .scenario
        .clone();
    for name in [
        "A name ".repeat(12),
        "W".repeat(80),
        "<&\"'> ジャンプ".to_owned(),
    ] {
        scenario.name = name;
        check_texts(&tree(&svg(&scenario, &UNITS[0])), 20);
    }
}

#[test]
fn the_code_opens_the_jump() {
    for start in starts::all() {
        let said = read_code(&drawn(&tree(&svg(&start.scenario, &UNITS[0])))).expect("a code");
        let fragment = said
            .strip_prefix(ADDRESS)
            .and_then(|rest| rest.strip_prefix('#'));
        let opened = from_fragment(fragment.expect("the page's address"));
        let opened = opened.expect("a link").expect("one that opens").jump;
        let sent = Scenario {
            note: String::new(),
            ..start.scenario.clone()
        };
        assert_eq!(opened, sent);
    }
}

#[test]
fn without_an_address_there_is_no_code() {
    let scenario = &starts::named("four-turns")
        .expect("a starting point")
        .scenario;
    let picture = Picture {
        scenario,
        jump: &scenario.fly(),
        units: &UNITS[0],
        tried: None,
        address: None,
    };
    assert_eq!(read_code(&drawn(&tree(&to_svg(&picture)))), None);
}

proptest! {
    #![proptest_config(space::cases(24))]

    /// Whatever is flown, the file is read by another library and all of its text has room.
    #[test]
    fn any_jump_has_a_picture(scenario in space::scenario()) {
        check_texts(&tree(&svg(&scenario, &UNITS[0])), 15);
        check_texts(&tree(&svg_tried(&scenario, &UNITS[0], Some(5))), 15);
    }
}
