//! Texts of a visit with one jump.

use turns_aloft::analysis::budget::Cause;
use turns_aloft::describe::budget::budget_sentence;
use turns_aloft::describe::call::mark;
use turns_aloft::describe::weights;
use turns_aloft::scenario::ground::Ground;
use turns_aloft::scenario::jump::JumpName;
use turns_aloft::scenario::units::{LengthUnit, RateUnit, Units};
use turns_aloft::scenario::{HandsKeep, Scenario, starts};
use turns_aloft::session::readings::{phase, picture, summary};
use turns_aloft::session::{Question, Session, why};

use super::Collector;

/// Jumps with readings that no starting point has.
pub fn others() -> Vec<(&'static str, Scenario)> {
    let changed = |change: &dyn Fn(&mut Scenario)| {
        let mut jump = starts::named("weighted-hands")
            .expect("a start")
            .scenario
            .clone();
        change(&mut jump);
        jump
    };
    vec![
        ("free", changed(&|jump| jump.jump = JumpName::Free)),
        (
            "off the ice",
            changed(&|jump| {
                jump.jump = JumpName::OffIce;
                jump.ground = Ground::Floor;
            }),
        ),
        ("a turn too far", changed(&|jump| jump.jump_turns = 2)),
        (
            "turns too far",
            changed(&|jump| {
                (jump.jump_turns, jump.pre_rotation_turns) = (1, 0.3);
            }),
        ),
        ("too far off the ice", {
            let mut jump = starts::named("trampoline")
                .expect("a start")
                .scenario
                .clone();
            jump.jump_turns = 1;
            jump
        }),
        (
            "axel",
            changed(&|jump| {
                jump.jump = JumpName::Axel;
                jump.jump_turns = 2;
            }),
        ),
        (
            "rate kept",
            changed(&|jump| jump.hands_keep = HandsKeep::Rate),
        ),
        (
            "energy kept",
            changed(&|jump| jump.hands_keep = HandsKeep::Energy),
        ),
        ("late", changed(&|jump| jump.close_delay_s = 0.3)),
        ("slow", changed(&|jump| jump.close_time_s = 0.8)),
        (
            "one arm late",
            changed(&|jump| {
                (jump.close_time_s, jump.arm_lag_s) = (0.05, 0.3);
            }),
        ),
        ("arms out", changed(&|jump| jump.arm_tuck = 0.2)),
        (
            "legs out",
            changed(&|jump| (jump.arm_tuck, jump.leg_tuck) = (1.0, 0.0)),
        ),
        (
            "opens early",
            changed(&|jump| {
                (jump.open_lead_s, jump.open_time_s) = (0.5, 0.1);
            }),
        ),
        (
            "leans",
            changed(&|jump| {
                (jump.lean_rad, jump.arm_tuck, jump.leg_tuck) = (0.35, 1.0, 1.0);
            }),
        ),
        (
            "as good as it gets",
            changed(&|jump| {
                (jump.arm_tuck, jump.leg_tuck) = (1.0, 1.0);
                (jump.close_delay_s, jump.close_time_s, jump.arm_lag_s) = (0.0, 0.05, 0.0);
                (jump.open_lead_s, jump.lean_rad, jump.arm_asymmetry) = (0.0, 0.0, 0.0);
            }),
        ),
    ]
}

/// A jump's readings at several times, and the answer to "Why".
pub fn visit(collected: &mut Collector, place: &str, jump: &Scenario) {
    let mut session = Session::default();
    session.open(jump.clone());
    collected.readings(place, &session);
    collected.add("summary", summary(&session));
    let owed = session.jump().owed;
    if owed.is_some_and(|owed| owed.over_rotated_deg.is_some()) {
        // The others are signs of the sport.
        collected.add("mark", mark(owed));
    }
    session.show_range(true);
    session.set_units(Units {
        length: LengthUnit::In,
        rate: RateUnit::DegPerS,
        ..*session.units()
    });
    let touchdown_s = session.flight().touchdown_s;
    for part in [0.0, 0.05, 0.3, 0.6, 0.95, 1.0] {
        session.scrub(part * touchdown_s);
        collected.add("phase", phase(&session));
        collected.add("picture", picture(&session));
    }
    collected.readings(place, &session);
    collected.add("summary", summary(&session));
    session.ask(Question::Why);
    session.poll(|| true);
    collected.readings(place, &session);
    let budget_answer = session.budget_answer().expect("it has been worked out");
    for cause in Cause::ORDER {
        collected.add("cause", why::words::cause(&session, cause));
    }
    collected.add(
        "one change",
        budget_sentence(session.scenario(), &budget_answer.budget),
    );
    for said in why::words::of_change(&session, budget_answer) {
        collected.add("change", said);
    }
    for said in why::words::of_steps(&session) {
        collected.add("steps", said);
    }
    if let Some(held) = session.weights_held() {
        collected.add("weights", weights::held(session.units(), held));
    }
    for said in session
        .step_cautions()
        .into_iter()
        .chain(session.map_cautions())
    {
        collected.add("caution", said);
    }
}
