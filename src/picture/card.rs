//! Where everything stands on the picture.

use svg::Document;
use svg::node::element::{Definitions, Group, Rectangle, Text};

use crate::lettering::Type;
use crate::subject::Picture;
use crate::{fonts, qr, strip};
use turns_aloft_analysis::caution::Caution;
use turns_aloft_analysis::turn_try::TurnTry;
use turns_aloft_appearance::{DAY, Rgb};
use turns_aloft_describe::call::{Standing, short_verdict_text, shortfall_text};
use turns_aloft_describe::jump::notation;
use turns_aloft_describe::start::shown_name;
use turns_aloft_describe::turns::{owed_text, turns_in_all, turns_text};
use turns_aloft_describe::unit::{INERTIA, SECONDS, UnitText as _};
use turns_aloft_describe::{Text as _, beyond, turn_try};
use turns_aloft_physics::segments::SegmentTable;
use turns_aloft_scenario::parameter::{Kind, Parameter};
use turns_aloft_scenario::starts;
use turns_aloft_words::{say, text};

/// Size of the picture.
pub const WIDTH_PX: f32 = 1080.0;
pub const HEIGHT_PX: f32 = 1350.0;

const MARGIN_PX: f32 = 60.0;
const INNER_PX: f32 = WIDTH_PX - 2.0 * MARGIN_PX;

/// Top and bottom of the strip of figures.
const STRIP_PX: [f32; 2] = [450.0, 950.0];

/// Side of the square with the QR code.
const CODE_PX: f32 = 250.0;

pub fn draw(picture: &Picture<'_>) -> Document {
    let mut document = Document::new()
        .set("width", WIDTH_PX)
        .set("height", HEIGHT_PX)
        .set("viewBox", (0, 0, WIDTH_PX, HEIGHT_PX))
        .set("role", "img")
        .set("aria-label", described(picture))
        .add(Definitions::new().add(fonts::style()))
        .add(panel(
            [0.0, 0.0],
            [WIDTH_PX, HEIGHT_PX],
            DAY.background,
            0.0,
        ));
    for line in heading(picture).into_iter().chain(answer(picture)) {
        document = document.add(line);
    }
    let [mut top_px, bottom_px] = STRIP_PX;
    if let Some(tried) = picture.tried {
        let (lines, below_px) = limits(picture, tried);
        top_px = top_px.max(below_px);
        for line in lines {
            document = document.add(line);
        }
    }
    let corner_px = [MARGIN_PX - 24.0, top_px];
    let size_px = [INNER_PX + 48.0, bottom_px - top_px];
    document = document
        .add(panel(corner_px, size_px, DAY.card, 24.0))
        .add(strip::draw(
            picture,
            [MARGIN_PX, top_px + 24.0],
            [INNER_PX, size_px[1] - 48.0],
        ));
    document.add(facts(picture)).add(foot(picture))
}

fn panel(corner_px: [f32; 2], size_px: [f32; 2], colour: Rgb, round_px: f32) -> Rectangle {
    Rectangle::new()
        .set("x", corner_px[0])
        .set("y", corner_px[1])
        .set("width", size_px[0])
        .set("height", size_px[1])
        .set("rx", round_px)
        .set("fill", colour.hex())
}

/// The jump's name, and whose it is.
fn heading(picture: &Picture<'_>) -> Vec<Text> {
    let scenario = picture.scenario;
    let name = shown_name(&scenario.name);
    let big = Type::bold(46.0);
    let mut lines = big.wrapped(name, INNER_PX);
    // A name may be long; two lines of it are enough to know the jump by.
    if lines.len() > 2 {
        lines = vec![lines[0].clone(), format!("{}…", lines[1])];
    }
    let several = lines.len() > 1;
    let size = if several { Type::bold(38.0) } else { big };
    let step_px = size.size_px * 1.22;
    let mut said: Vec<Text> = lines
        .into_iter()
        .enumerate()
        .map(|(i, line)| size.line(line, [MARGIN_PX, 84.0 + step_px * i as f32], DAY.text))
        .collect();
    let who = jumper(picture);
    let small = Type::usual(26.0).fitting(&who, INNER_PX);
    let y = if several { 166.0 } else { 128.0 };
    said.push(small.line(who, [MARGIN_PX, y], DAY.weak_text));
    said
}

/// "3S, female, 1.62 m, 50 kg", and that the jumper is invented where a starting point is flown as it is.
fn jumper(picture: &Picture<'_>) -> String {
    let (scenario, units) = (picture.scenario, picture.units);
    let table = match scenario.table {
        SegmentTable::Female => text("word-table-female"),
        SegmentTable::Male => text("word-table-male"),
    };
    let [stature, mass] = [Parameter::Stature, Parameter::BodyMass]
        .map(|parameter| units.of(parameter.kind()).text(parameter.get(scenario)));
    let mut said = vec![
        notation(scenario.jump, scenario.jump_turns),
        table.to_owned(),
        stature,
        mass,
    ];
    if starts::all()
        .iter()
        .any(|start| start.scenario == *scenario)
    {
        said.push(text("picture-invented").to_owned());
    }
    said.join(", ")
}

/// The turns in large figures, beside them what is missing and the call, below what is beyond what has
/// been seen.
fn answer(picture: &Picture<'_>) -> Vec<Text> {
    const FIGURES: Type = Type::bold(230.0);
    let figures = turns_text(turns_in_all(picture.jump));
    let left_px = MARGIN_PX + FIGURES.width_px(&figures) + 44.0;
    let room_px = WIDTH_PX - MARGIN_PX - left_px;
    let mut said = vec![FIGURES.line(figures, [MARGIN_PX - 8.0, 382.0], DAY.text)];
    let mut line = |size: Type, text: &str, y_px, colour| {
        said.push(
            size.fitting(text, room_px)
                .line(text, [left_px, y_px], colour),
        );
    };
    let beyond = picture.scenario.beyond_seen(picture.jump);
    match picture.jump.owed {
        Some(owed) => {
            let colour = match Standing::of([owed.shortfall_deg; 2], &beyond) {
                Standing::AllThere => DAY.accent,
                Standing::LetPass => DAY.text,
                Standing::Wanting | Standing::Beyond => DAY.warning,
            };
            let of = say!("picture-of", turns = owed_text(owed.turns));
            line(Type::bold(44.0), &of, 254.0, DAY.weak_text);
            line(
                Type::bold(56.0),
                &shortfall_text(owed.shortfall_deg),
                326.0,
                colour,
            );
            line(Type::usual(36.0), &short_verdict_text(owed), 378.0, colour);
        }
        None => line(
            Type::bold(44.0),
            text("picture-turns"),
            378.0,
            DAY.weak_text,
        ),
    }
    if picture.tried.is_none()
        && let Some(sentence) = beyond::sentence(&beyond, picture.units)
    {
        let size = Type::usual(24.0).fitting(&sentence, INNER_PX);
        said.push(size.line(sentence, [MARGIN_PX, 428.0], DAY.warning));
    }
    said
}

/// Which limits of people a try has passed, in a few lines, and where what is below them begins.
fn limits(picture: &Picture<'_>, tried: &TurnTry) -> (Vec<Text>, f32) {
    const FIRST_PX: f32 = 428.0;
    const SIZE: Type = Type::usual(24.0);
    const STEP_PX: f32 = 29.0;
    let colour = if tried.passed.is_empty() {
        DAY.accent
    } else {
        DAY.warning
    };
    let lines = SIZE.wrapped(&turn_try::passed(tried, picture.units), INNER_PX);
    let below_px = FIRST_PX + STEP_PX * lines.len() as f32;
    let said = lines
        .into_iter()
        .enumerate()
        .map(|(i, line)| SIZE.line(line, [MARGIN_PX, FIRST_PX + STEP_PX * i as f32], colour));
    (said.collect(), below_px)
}

/// The numbers behind the turns, each with its name.
fn facts(picture: &Picture<'_>) -> Group {
    let (readout, units) = (&picture.jump.readout, picture.units);
    let (rate, length) = (units.of(Kind::Rate), units.of(Kind::Length));
    let from_to = |from: String, to: String| say!("from-to", from = from, to = to);
    let facts = [
        (
            text("reading-hang-time-s"),
            SECONDS.set_text(readout.hang_time_s),
        ),
        (
            text("reading-jump-height-m"),
            length.set_text(readout.jump_height_m),
        ),
        (
            text("picture-rate"),
            from_to(
                rate.number(readout.takeoff_rate_rad_s),
                rate.text(readout.peak_rate_rad_s),
            ),
        ),
        (
            text("picture-inertia"),
            from_to(
                INERTIA.number(readout.inertia_takeoff_kg_m2),
                INERTIA.text(readout.inertia_least_kg_m2),
            ),
        ),
    ];
    let column_px = 0.5 * (INNER_PX - CODE_PX - 40.0);
    let mut group = Group::new();
    for (i, (name, value)) in facts.into_iter().enumerate() {
        let x = MARGIN_PX + column_px * (i % 2) as f32;
        let y = 1000.0 + 92.0 * (i / 2) as f32;
        let small = Type::usual(24.0).fitting(name, column_px - 20.0);
        let large = Type::bold(34.0).fitting(&value, column_px - 20.0);
        group = group
            .add(small.line(name, [x, y], DAY.weak_text))
            .add(large.line(value, [x, y + 38.0], DAY.text));
    }
    group
}

/// The cautions, the name of the page and the QR code; with a try, before them who knows what of five turns.
fn foot(picture: &Picture<'_>) -> Group {
    let cautions = [
        text("panel-simulation"),
        Caution::Adults.text(),
        Caution::NoSafeNumber.text(),
        Caution::Ask.text(),
    ];
    let known = turn_try::KNOWN.map(|message| message.text());
    let known = known.into_iter().filter(|_| picture.tried.is_some());
    let said: Vec<&str> = known.chain(cautions).collect();
    let (small, first_px, step_px) = match picture.tried {
        Some(_) => (Type::usual(16.5), 1184.0, 20.5),
        None => (Type::usual(19.0), 1196.0, 24.0),
    };
    let width_px = INNER_PX - CODE_PX - 60.0;
    let mut group = Group::new();
    for (i, line) in (small.wrapped(&said.join(" "), width_px).into_iter()).enumerate() {
        let y = first_px + step_px * i as f32;
        group = group.add(small.line(line, [MARGIN_PX, y], DAY.weak_text));
    }
    let left_px = WIDTH_PX - MARGIN_PX - CODE_PX;
    let code = qr::address(picture);
    let code = code.and_then(|address| qr::draw(&address, [left_px, 980.0], CODE_PX));
    if let Some(code) = code {
        let caption = text("picture-open-it");
        let size = Type::usual(22.0).fitting(caption, CODE_PX);
        group = group
            .add(panel(
                [left_px, 980.0],
                [CODE_PX, CODE_PX],
                DAY.raised,
                12.0,
            ))
            .add(code)
            .add(size.line(caption, [left_px, 1262.0], DAY.weak_text));
    }
    group.add(Type::bold(28.0).line("Turns Aloft", [left_px, 1304.0], DAY.text))
}

/// The picture in words, for who cannot see it.
fn described(picture: &Picture<'_>) -> String {
    let owed = picture.jump.owed;
    let turns = turns_text(turns_in_all(picture.jump));
    let name = shown_name(&picture.scenario.name);
    match owed {
        Some(owed) => say!(
            "picture-of-named",
            name = name,
            turns = turns,
            owed = owed_text(owed.turns),
            missing = shortfall_text(owed.shortfall_deg)
        ),
        None => say!("picture-of-free", name = name, turns = turns),
    }
}
