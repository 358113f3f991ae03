//! Weights in the hands are compared by what is kept, every figure by a plain flight; no ranking has
//! them.

#[path = "support/space.rs"]
mod space;

use proptest::prelude::*;

use turns_aloft::analysis::caution;
use turns_aloft::analysis::goal::{Goal, MET_TURNS};
use turns_aloft::analysis::lever::{Lever, Season};
use turns_aloft::analysis::limits::Limits;
use turns_aloft::analysis::steps::ranked;
use turns_aloft::analysis::weights::{KEEPS, OBSERVED, Weights, WeightsNeeded};
use turns_aloft::describe::Text;
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::{HandsKeep, Scenario, starts};
use turns_aloft::session::{Question, Session};

const HANDS: &str = "hand_mass_kg";

fn start(name: &str) -> Scenario {
    starts::named(name).expect("a start").scenario.clone()
}

fn flown(scenario: &Scenario, hand_mass_kg: f64, hands_keep: HandsKeep) -> f64 {
    let other = Scenario {
        hand_mass_kg,
        hands_keep,
        ..scenario.clone()
    };
    other.fly().turns
}

/// Both comparisons of a scenario are differences of plain flights.
#[track_caller]
fn holds(scenario: &Scenario) {
    let now = scenario.fly();
    let held_kg = scenario.hand_mass_kg;
    let more = Weights::more(scenario, &now);
    let held = Weights::held(scenario, &now);
    assert_eq!(more.is_some(), held_kg < 2.5);
    assert_eq!(held.is_some(), held_kg > 0.0);
    if let Some(more) = &more {
        assert_eq!(more.from_kg, held_kg);
        assert_eq!(more.hand_mass_kg, (held_kg + 0.1).min(2.5));
    }
    if let Some(held) = &held {
        assert_eq!((held.from_kg, held.hand_mass_kg), (0.0, held_kg));
        let chosen = held
            .outcomes
            .iter()
            .find(|it| it.hands_keep == scenario.hands_keep);
        assert_eq!(chosen.expect("it is one of them").turns, now.turns);
    }
    for weights in more.into_iter().chain(held) {
        assert_eq!(weights.outcomes.map(|it| it.hands_keep), KEEPS);
        for outcome in weights.outcomes {
            let [before, then] = [weights.from_kg, weights.hand_mass_kg]
                .map(|kg| flown(scenario, kg, outcome.hands_keep));
            assert_eq!(outcome.turns, then);
            assert_eq!(outcome.turns_gained, then - before);
        }
    }
}

#[test]
fn comparisons_are_differences_of_flights_on_every_starting_point() {
    for start in starts::all() {
        for kg in [0.0, 0.25, 2.45, 2.5] {
            holds(&Scenario {
                hand_mass_kg: kg,
                ..start.scenario.clone()
            });
        }
        holds(&start.scenario);
    }
}

/// A quarter of a kilogram wins this jump a third of a turn or costs it a tenth, by what is kept.
/// The figures are those of plain flights, to the hundredth that is shown.
#[test]
fn the_same_mass_wins_or_costs_by_what_is_kept() {
    let scenario = start("four-turns");
    let heavy = Scenario {
        hand_mass_kg: 0.25,
        ..scenario.clone()
    };
    let held = Weights::held(&heavy, &heavy.fly()).expect("not bare");
    let shown = held.outcomes.map(|it| format!("{:.2}", it.turns));
    assert_eq!(shown, ["4.38", "4.15", "3.94"]);
    let [rate, energy, momentum] = KEEPS.map(|keep| flown(&scenario, 0.25, keep));
    assert_eq!(held.outcomes.map(|it| it.turns), [rate, energy, momentum]);
    let bare = scenario.fly().turns;
    assert!(rate > energy && energy > bare && bare > momentum);
}

/// No ranking, no mix, no season and no limit has the hand mass, on the page or in the analysis.
#[track_caller]
fn is_in_no_ranking(scenario: &Scenario, goal_turns: f64) {
    let now = scenario.fly();
    assert!(
        ranked(scenario, &now)
            .iter()
            .all(|gain| gain.lever.key() != HANDS)
    );
    let (limits, season) = (Limits::default(), Season::default());
    let goal = Goal::new(scenario, &now, goal_turns, &limits, &season);
    let singles = goal.singles();
    assert!(singles.iter().all(|single| single.lever.key() != HANDS));
    let joint = goal.combination(&singles);
    let mut changes = joint.iter().flat_map(|joint| &joint.changes);
    assert!(changes.all(|change| change.lever.key() != HANDS));
}

#[test]
fn no_ranking_has_the_hand_mass() {
    assert!(Lever::ALL.iter().all(|lever| lever.key() != HANDS));
    assert!(Lever::named(HANDS).is_err());
    for start in starts::all() {
        for keep in KEEPS {
            let scenario = Scenario {
                hands_keep: keep,
                ..start.scenario.clone()
            };
            is_in_no_ranking(&scenario, scenario.fly().turns + 0.4);
            let mut session = Session::default();
            session.open(scenario);
            for question in [Question::Why, Question::Goal] {
                session.ask(question);
                session.poll(|| true);
                let lines = session.answers();
                assert!(!lines.is_empty());
                assert!(lines.iter().all(|line| !line.quantity.ends_with(HANDS)));
            }
        }
    }
}

/// Grown by the same hands, the take-off's inertia leaves most angular momentum to who keeps the rate,
/// some to who keeps the energy, none more to who keeps the angular momentum: L_rate = w I,
/// L_energy = w sqrt(I I0), L = w I0. More angular momentum in the same body turns it further, to what
/// a wobble and the moment of the first foot's touch can take.
#[track_caller]
fn is_in_order(scenario: &Scenario, hand_mass_kg: f64) {
    let turns = KEEPS.map(|keep| flown(scenario, hand_mass_kg, keep));
    assert!(
        turns[0] >= turns[1] && turns[1] >= turns[2],
        "{turns:?} {scenario:?}"
    );
}

proptest! {
    #![proptest_config(space::cases(48))]

    #[test]
    fn comparisons_are_differences_of_flights_anywhere(scenario in space::scenario()) {
        holds(&scenario);
    }

    #[test]
    fn who_keeps_the_rate_turns_most(scenario in space::scenario(), kg in 0.001..2.5f64) {
        is_in_order(&scenario, kg);
    }
}

proptest! {
    #![proptest_config(space::cases(6))]

    #[test]
    fn no_ranking_anywhere_has_the_hand_mass(scenario in space::scenario(), more in 0.01..2.0) {
        is_in_no_ranking(&scenario, scenario.fly().turns + more);
    }
}

/// The least mass that does it has the turns when flown; on a grid of its own no smaller one has, and
/// none at all where none is named.
#[test]
fn what_is_needed_is_the_least() {
    for start in starts::all() {
        let scenario = &start.scenario;
        let now = scenario.fly();
        let (limits, season) = (Limits::default(), Season::default());
        for goal_turns in [now.turns - 0.5, now.turns + 0.05, now.turns + 0.3, 9.5] {
            let goal = Goal::new(scenario, &now, goal_turns, &limits, &season);
            for needed in WeightsNeeded::new(&goal).outcomes {
                let turns = |kg: f64| flown(scenario, kg, needed.hands_keep);
                let most_kg = needed.hand_mass_kg.unwrap_or(2.5 + 1e-9);
                let smaller = (0..=100).map(|i| 0.025 * f64::from(i));
                for kg in smaller.filter(|kg| *kg < most_kg - 1e-9) {
                    assert!(turns(kg) < goal_turns, "{kg} kg {}", start.name);
                }
                if let Some(kg) = needed.hand_mass_kg {
                    let there = turns(kg);
                    assert_eq!(needed.turns, Some(there));
                    // Bare hands may have more than is asked for.
                    assert!(there > goal_turns - MET_TURNS);
                    assert!(kg == 0.0 || there < goal_turns + MET_TURNS);
                    assert_eq!(needed.proof, None);
                } else {
                    let proof = needed.proof.expect("a proof");
                    assert_eq!(turns(proof.most_turns_at), proof.most_turns);
                    assert_eq!(needed.turns, None);
                }
            }
        }
    }
}

/// What the comparison always carries is what more in the hands calls for.
#[test]
fn cautions_stand_beside_it() {
    let scenario = start("senior-triple");
    let mut heavy = scenario.clone();
    Parameter::named(HANDS)
        .expect("a key")
        .set(&mut heavy, 0.1)
        .expect("admissible");
    assert_eq!(caution::of(&scenario, &heavy), caution::OF_WEIGHTS);
    let more = Weights::more(&scenario, &scenario.fly()).expect("more can be set");
    assert_eq!(more.cautions, caution::OF_WEIGHTS);
    // The figures of the abstract.
    let observed = OBSERVED.text();
    assert!(observed.contains("13.6 %") && observed.contains("12.1 %"));
    assert!(observed.contains("Ridge et al. 2022"));
}

/// The page's own comparison follows the jump, and is there for no bare hand.
#[test]
fn what_the_hands_hold_is_compared_while_it_is_dragged() {
    let mut session = Session::default();
    // The marks on the sliders, and no more.
    session.poll(|| true);
    session.poll(|| true);
    assert!(!session.is_computing());
    assert!(session.weights_held().is_none());
    let hands = Parameter::named(HANDS).expect("a key");
    session.set_dragging(true);
    for kg in [0.3, 0.4] {
        session.set(hands, kg);
        session.poll(|| false);
        let expected = Weights::held(session.scenario(), session.jump());
        assert_eq!(session.weights_held(), expected.as_ref());
    }
    session.poll(|| true);
    assert!(!session.is_computing(), "it is worked out once");
    let lines = turns_aloft::session::readings::readings(&session);
    let said = |kept: &str| {
        let quantity = format!("turns_keeping:{kept}");
        let line = lines.iter().find(|line| line.quantity == quantity);
        line.expect("a line").text.clone()
    };
    let turns = session.jump().turns;
    assert!(said("rate").starts_with(&format!("{turns:.2} (+")));
    assert!(said("angular_momentum").contains("(−"));
    session.set(hands, 0.0);
    assert!(session.weights_held().is_none());
}
