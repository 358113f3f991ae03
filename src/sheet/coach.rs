//! A jump for the coach: what happened, where the turns went, what would win those that are missing, and the
//! cautions that belong to it.

use crate::html::{Page, classed_table, escaped, list, paragraph, table};
use turns_aloft_analysis::budget::{Budget, Cause};
use turns_aloft_analysis::caution::Caution;
use turns_aloft_analysis::goal::{Goal, Single};
use turns_aloft_analysis::lever::Season;
use turns_aloft_analysis::limits::Limits;
use turns_aloft_describe::budget::budget_sentence;
use turns_aloft_describe::call::verdict_text;
use turns_aloft_describe::name::name_of;
use turns_aloft_describe::rounded_budget::Shown;
use turns_aloft_describe::turns::{owed_text, turns_in_all, turns_text};
use turns_aloft_describe::unit::{INERTIA, SECONDS, UnitText};
use turns_aloft_describe::{Label, Text, beyond, call, goal, jump};
use turns_aloft_picture::{Picture, jump_code_svg, strip_svg};
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::parameter::{Kind, Parameter};
use turns_aloft_words::{say, text};

/// A jump, and what has been found of it.
struct Coached<'a> {
    picture: &'a Picture<'a>,
    budget: Budget,
    /// What each lever alone would need for the turns that are missing; none where none are, or where nothing
    /// is owed.
    singles: Vec<Single>,
}

/// The sheet in the language spoken.
pub fn coach(picture: &Picture<'_>) -> String {
    let coached = &Coached {
        picture,
        budget: Budget::new(picture.scenario, picture.jump),
        singles: singles(picture.scenario, picture.jump),
    };
    let mut page = Page::new(&name_of(picture.scenario));
    let code = jump_code_svg(picture, text("picture-open-it"));
    page.header(text("sheet-coach"), &jumper(picture), code);
    page.section(text("sheet-what-happened"), &what_happened(picture));
    page.section(text("sheet-where-they-went"), &where_they_went(coached));
    if !coached.singles.is_empty() {
        page.section(text("sheet-what-would-win"), &what_would_win(coached));
    }
    page.section(
        text("sheet-cautions"),
        &list(cautions(coached).into_iter().map(Text::text)),
    );
    page.finished()
}

fn singles(scenario: &Scenario, jump: &Jump) -> Vec<Single> {
    let Some(owed) = jump.owed else {
        return Vec::new();
    };
    let (limits, season) = (Limits::default(), Season::default());
    let goal = Goal::new(scenario, jump, owed.turns, &limits, &season);
    if goal.reached() {
        return Vec::new();
    }
    goal.singles()
}

fn jumper(picture: &Picture<'_>) -> String {
    let (scenario, units) = (picture.scenario, picture.units);
    let [stature, mass] = [Parameter::Stature, Parameter::BodyMass]
        .map(|parameter| units.of(parameter.kind()).text(parameter.get(scenario)));
    let notation = jump::notation(scenario.jump, scenario.jump_turns);
    paragraph(&[notation, stature, mass].join(", "))
}

fn what_happened(picture: &Picture<'_>) -> String {
    let (scenario, jump, units) = (picture.scenario, picture.jump, picture.units);
    let turns = turns_text(turns_in_all(jump));
    let all = jump.owed.map_or_else(
        || turns.clone(),
        |owed| {
            format!(
                "{turns} {}",
                say!("picture-of", turns = owed_text(owed.turns))
            )
        },
    );
    let mut html = format!("<p class=\"turns\">{}</p>", escaped(&all));
    let verdict = jump.owed.map(|owed| {
        let missing = call::shortfall_text(owed.shortfall_deg);
        format!("{missing}, {}", verdict_text(Some(owed)))
    });
    html += &verdict.map_or_else(String::new, |said| paragraph(&said));
    if let Some(beyond) = beyond::sentence(&scenario.beyond_seen(jump), units) {
        html += &paragraph(&beyond);
    }
    let label = text("sheet-strip");
    html += &format!(
        "<figure class=\"strip\">{}</figure>",
        strip_svg(picture, label)
    );
    html + &facts(picture)
}

fn facts(picture: &Picture<'_>) -> String {
    let (readout, units) = (&picture.jump.readout, picture.units);
    let (rate, length) = (units.of(Kind::Rate), units.of(Kind::Length));
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
            text("quantity-takeoff-rate-rad-s"),
            rate.text(readout.takeoff_rate_rad_s),
        ),
        (
            text("quantity-peak-rate-rad-s"),
            rate.text(readout.peak_rate_rad_s),
        ),
        (
            text("quantity-inertia-takeoff-kg-m2"),
            INERTIA.text(readout.inertia_takeoff_kg_m2),
        ),
        (
            text("quantity-inertia-least-kg-m2"),
            INERTIA.text(readout.inertia_least_kg_m2),
        ),
    ];
    let names: Vec<&str> = facts.iter().map(|(name, _)| *name).collect();
    let values = facts.iter().map(|(_, value)| escaped(value)).collect();
    table(&names, [values])
}

/// The budget, as it adds up.
fn where_they_went(coached: &Coached<'_>) -> String {
    let (scenario, jump) = (coached.picture.scenario, coached.picture.jump);
    let shown = Shown::new(&coached.budget, jump.owed.map(|owed| owed.turns));
    let mut html = paragraph(&budget_sentence(scenario, &coached.budget));
    let mut names = vec![text("sheet-ideal")];
    names.extend(Cause::ORDER.map(Label::label));
    names.extend([text("reading-pre-rotation-turns"), text("reading-turns")]);
    let mut values = vec![turns_text(shown.ideal)];
    values.extend(shown.losses.map(|loss| turns_text(-loss)));
    values.extend([turns_text(shown.ice), turns_text(shown.turns)]);
    let values = values.iter().map(|value| escaped(value)).collect();
    html += &table(&names, [values]);
    html
}

fn what_would_win(coached: &Coached<'_>) -> String {
    let units = coached.picture.units;
    let rows = coached.singles.iter().map(|single| {
        let (needed, beyond) = match &single.proposal {
            Some(proposal) => (
                goal::value_and_change(units, single, proposal),
                proposal.beyond_seen.as_slice(),
            ),
            None => (goal::most(units, single), [].as_slice()),
        };
        let lever = single.lever.parameter().label();
        let judged = goal::judgement(units, &single.judgement, beyond);
        [lever, &needed, &judged].map(escaped).to_vec()
    });
    let heading = [
        text("sheet-lever"),
        text("sheet-needed"),
        text("sheet-judged"),
    ];
    classed_table("needed", &heading, rows)
}

/// Those that its proposals call for; on paper the usual ones in any case.
fn cautions(coached: &Coached<'_>) -> Vec<Caution> {
    let mut cautions = vec![Caution::NoSafeNumber, Caution::Adults];
    let proposed = coached.singles.iter().filter_map(|it| it.proposal.as_ref());
    for caution in proposed.flat_map(|proposal| &proposal.cautions) {
        if !cautions.contains(caution) && *caution != Caution::Ask {
            cautions.push(*caution);
        }
    }
    cautions.push(Caution::Ask);
    cautions
}
