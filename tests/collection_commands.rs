//! The jumps kept on a device, whatever is done to them in whatever order.

#[path = "support/space.rs"]
mod space;

use proptest::prelude::*;

use turns_aloft::scenario::Scenario;
use turns_aloft::scenario::collection::{Collection, Id, Refusal};

fn scenarios(collection: &Collection) -> Vec<&Scenario> {
    let entries = collection.entries().iter();
    entries.map(|entry| &entry.scenario).collect()
}

/// What a user may do; places are counted round the list.
#[derive(Debug, Clone)]
enum UserAction {
    Add(Box<Scenario>),
    Rename(usize, String),
    Up(usize),
    Down(usize),
    Delete(usize),
    BringBack,
    Reload,
    ImportOwn,
}

fn action() -> impl Strategy<Value = UserAction> {
    let name = prop_oneof!["[AB]{1,2}", "A [23]", "\\PC{0,100}", Just(String::new())];
    let place = 0..8_usize;
    prop_oneof![
        4 => (space::scenario(), name.clone(), "\\PC{0,20}").prop_map(|(jump, name, note)| {
            UserAction::Add(Box::new(Scenario { name, note, ..jump }))
        }),
        2 => (place.clone(), name).prop_map(|(place, name)| UserAction::Rename(place, name)),
        2 => place.clone().prop_map(UserAction::Up),
        2 => place.clone().prop_map(UserAction::Down),
        3 => place.prop_map(UserAction::Delete),
        2 => Just(UserAction::BringBack),
        1 => Just(UserAction::Reload),
        1 => Just(UserAction::ImportOwn),
    ]
}

/// The same, done to a plain list.
#[derive(Debug, Default)]
struct Model {
    list: Vec<(Id, Scenario)>,
    deleted: Vec<(usize, (Id, Scenario))>,
    seen: Vec<Id>,
}

impl Model {
    /// A name is right if it is the one wanted, or that one with a number for which there is need.
    fn check_name(&self, goal: &str, given: &str, but: Option<Id>) {
        let tidy = goal.split(|c: char| c.is_whitespace() || c.is_control());
        let tidy: Vec<&str> = tidy.filter(|word| !word.is_empty()).collect();
        let tidy = tidy.join(" ");
        let taken = |name: &str| {
            let mut others = self.list.iter().filter(|(id, _)| Some(*id) != but);
            others.any(|(_, it)| it.name == name)
        };
        if !taken(&tidy) {
            assert_eq!(given, tidy);
            return;
        }
        assert!(!taken(given));
        let (stem, number) = given.rsplit_once(' ').expect("a number behind it");
        assert!(tidy.starts_with(stem));
        let number: usize = number.parse().expect("a number");
        for smaller in 2..number {
            assert!(taken(&format!("{stem} {smaller}")));
        }
    }

    fn add(&mut self, id: Id, goal: &Scenario, given: &Scenario) {
        assert!(!self.seen.contains(&id), "an id is given once");
        self.check_name(&goal.name, &given.name, None);
        let named = Scenario {
            name: given.name.clone(),
            ..goal.clone()
        };
        assert_eq!(&named, given);
        self.seen.push(id);
        self.list.push((id, named));
    }

    fn at(&self, place: usize) -> Option<(usize, Id)> {
        let place = place.checked_rem(self.list.len())?;
        Some((place, self.list[place].0))
    }
}

fn perform(collection: &mut Collection, model: &mut Model, action: UserAction) {
    match action {
        UserAction::Add(goal) => match collection.add((*goal).clone()) {
            Ok(id) => {
                let given = &collection.get(id).expect("just added").scenario;
                model.add(id, &goal, given);
            }
            Err(why) => assert!(matches!(why, Refusal::NoName | Refusal::LongName)),
        },
        UserAction::Rename(place, name) => {
            let Some((place, id)) = model.at(place) else {
                return;
            };
            if collection.rename(id, &name).is_ok() {
                let given = &collection.get(id).expect("just renamed").scenario.name;
                model.check_name(&name, given, Some(id));
                given.clone_into(&mut model.list[place].1.name);
            }
        }
        UserAction::Up(place) => {
            let Some((place, id)) = model.at(place) else {
                return;
            };
            assert_eq!(collection.move_up(id), place > 0);
            model.list.swap(place, place.saturating_sub(1));
        }
        UserAction::Down(place) => {
            let Some((place, id)) = model.at(place) else {
                return;
            };
            let below = (place + 1).min(model.list.len() - 1);
            assert_eq!(collection.move_down(id), below > place);
            model.list.swap(place, below);
        }
        UserAction::Delete(place) => {
            let Some((place, id)) = model.at(place) else {
                return;
            };
            // Taken back at once, it is as if nothing had been.
            let before = collection.clone();
            assert_eq!(collection.delete(id), Ok(()));
            assert_eq!(collection.restore_deleted(), Ok(id));
            assert_eq!(*collection, before);
            assert_eq!(collection.delete(id), Ok(()));
            model.deleted.push((place, model.list.remove(place)));
        }
        UserAction::BringBack => match (collection.restore_deleted(), model.deleted.pop()) {
            (Ok(id), Some((place, (same, mut jump)))) => {
                assert_eq!(id, same);
                let place = place.min(model.list.len());
                let given = &collection.get(id).expect("just brought back").scenario.name;
                model.check_name(&jump.name, given, None);
                given.clone_into(&mut jump.name);
                model.list.insert(place, (id, jump));
            }
            (Err(why), None) => assert_eq!(why, Refusal::NothingDeleted),
            other => panic!("{other:?}"),
        },
        UserAction::Reload => {
            let kept = Collection::from_kept(&collection.to_kept());
            *collection = kept.expect("it was kept").read;
            model.deleted.clear();
        }
        UserAction::ImportOwn => {
            let goal: Vec<Scenario> = scenarios(collection).into_iter().cloned().collect();
            let added = collection.import(&collection.export()).expect("its own");
            let ids = added.read;
            assert_eq!(ids.len(), goal.len());
            for (id, goal) in ids.into_iter().zip(&goal) {
                let given = &collection.get(id).expect("just added").scenario;
                model.add(id, goal, given);
            }
        }
    }
}

proptest! {
    #![proptest_config(space::cases(256))]

    #[test]
    fn whatever_is_done_is_what_a_plain_list_would_do(
        actions in prop::collection::vec(action(), 0..24),
    ) {
        let (mut collection, mut model) = (Collection::default(), Model::default());
        for action in actions {
            // Importing itself doubles it.
            if matches!(action, UserAction::ImportOwn) && model.list.len() > 20 {
                continue;
            }
            perform(&mut collection, &mut model, action);
            let entries = collection.entries().iter();
            let entries: Vec<_> = entries.map(|it| (it.id, it.scenario.clone())).collect();
            prop_assert_eq!(&entries, &model.list);
        }
        let mut other = Collection::default();
        other.import(&collection.export()).expect("what was saved opens");
        prop_assert_eq!(scenarios(&other), scenarios(&collection));
        let reloaded = Collection::from_kept(&collection.to_kept()).expect("it was kept");
        prop_assert_eq!(reloaded.read.entries(), collection.entries());
    }
}
