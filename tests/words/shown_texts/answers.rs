//! Texts of answers that take more than a jump.

use turns_aloft::analysis::lever::Lever;
use turns_aloft::analysis::weights::KEEPS;
use turns_aloft::describe::goal as of_goal;
use turns_aloft::describe::{Label, Text};
use turns_aloft::scenario::Scenario;
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::session::compare::Which;
use turns_aloft::session::goal::{GoalTurns, words as goal};
use turns_aloft::session::{Question, Session};

use super::Collector;

pub fn goal_answers(collected: &mut Collector, jump: &Scenario, turns: f64) {
    let mut session = Session::default();
    session.open(jump.clone());
    session.set_goal(GoalTurns::Turns(turns));
    session.step_limit(Lever::ALL[2], 1, 1.0);
    session.step_season(Lever::ALL[1], -1e6);
    session.ask(Question::Goal);
    session.poll(|| true);
    collected.readings("win", &session);
    for (single, _) in session.singles() {
        collected.add("win", single.lever.parameter().label());
        collected.add("win", of_goal::basis(session.units(), single));
        collected.add("win", of_goal::most(session.units(), single));
        if let Some(proposal) = &single.proposal {
            collected.add(
                "win",
                of_goal::landing(session.jump(), proposal.landing_load_bw),
            );
        }
    }
    if let (Some(joint), _) = session.combination() {
        collected.add("win", of_goal::effort(joint));
        collected.add("win", joint.judgement.source.text());
        for change in of_goal::parts(session.units(), joint) {
            collected.add("win", of_goal::part(session.units(), change));
        }
    }
    for lever in Lever::ALL {
        // A number and its unit alone may be the same.
        collected.add(lever.key(), format!("{}!", goal::limit(&session, lever)));
        collected.add(lever.key(), format!("{}!", goal::season(&session, lever)));
    }
    for said in session.goal_cautions() {
        collected.add("win", said);
    }
    collected.add("win", goal::question(&session));
    session.set_goal(GoalTurns::Turns(1.0));
    collected.add("win", goal::question(&session));
}

pub fn map_answers(collected: &mut Collector) {
    let mut session = Session::default();
    session.ask(Question::Map);
    session.poll(|| false);
    collected.readings("map under way", &session);
    session.poll(|| true);
    collected.readings("map", &session);
    let hands = Parameter::named("hand_mass_kg").expect("a key");
    session.choose_map_lever(0, hands);
    session.poll(|| true);
    collected.readings("map of the hands", &session);
    for keep in KEEPS {
        session.change(|jump| jump.hands_keep = keep);
        for said in session.map_cautions() {
            collected.add("map of the hands", said);
        }
    }
}

pub fn compare_answers(collected: &mut Collector) {
    let mut session = Session::default();
    session.ask(Question::Compare);
    session.keep_jump();
    for reference in ["trampoline", "crooked-takeoff", "half-a-turn-short"] {
        session.set_reference(Which::Start(reference.to_owned()));
        session.poll(|| true);
        collected.readings(reference, &session);
    }
    session.set_reference(Which::AsOpened);
    for (key, value) in [(0, 12.0), (0, 5.0), (1, 0.5), (13, 0.6), (4, 0.5)] {
        session.set(Parameter::ALL[key], value);
        session.poll(|| true);
        collected.readings(Parameter::ALL[key].key(), &session);
    }
    session.reset_all();
    session.change(|jump| jump.boot_mass_kg += 1e-6);
    session.poll(|| true);
    collected.readings("hardly changed", &session);
}
