//! What the step of a draft asks for: the kinds of answer that are made on the page, and what they are about.

use turns_aloft_lesson::figure::Figure;
use turns_aloft_lesson::setup::MOST_VARIANTS;
use turns_aloft_lesson::{Answer, Changes, Choice, Quantity, Setup, Step, Variant};
use turns_aloft_scenario::parameter::Parameter;

/// The variant that has one input changed.
pub const CHANGED: &str = "changed";

/// How a question is answered.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum AnswerKind {
    Number,
    /// Whether a quantity is more, the same or less with one input changed.
    Change,
    Curve,
    Words,
    Opinion,
}

impl AnswerKind {
    pub const ALL: [Self; 5] = [
        Self::Number,
        Self::Change,
        Self::Curve,
        Self::Words,
        Self::Opinion,
    ];

    /// The kind that a step has; none for one that is made in files alone.
    pub fn of(step: &Step) -> Option<Self> {
        match &step.answer {
            Answer::Number(figure) => figure.variant.is_none().then_some(Self::Number),
            Answer::Choice(Choice::Change { .. }) => changed_input(step).map(|_| Self::Change),
            Answer::Curve(of) => of.variant.is_none().then_some(Self::Curve),
            Answer::Words => Some(Self::Words),
            Answer::Choice(Choice::Open { .. }) => Some(Self::Opinion),
            Answer::Choice(_) => None,
        }
    }

    /// Whether a step can ask for an answer of this kind.
    pub fn is_for(self, step: &Step) -> bool {
        let setup = step.setup.as_ref();
        match self {
            Self::Number => Quantity::all().any(|it| it.is_of(setup)),
            Self::Change => {
                let has_room =
                    place_of_changed(step).is_some() || step.variants.len() < MOST_VARIANTS;
                has_room && matches!(setup, Some(Setup::Jump(_)))
            }
            Self::Curve => setup.is_some_and(|setup| !setup.curves().is_empty()),
            Self::Words | Self::Opinion => true,
        }
    }
}

/// The input that is changed, and its value, where a step asks what comes of that.
pub fn changed_input(step: &Step) -> Option<(Parameter, f64)> {
    let Answer::Choice(Choice::Change { figures, .. }) = &step.answer else {
        return None;
    };
    let [from, to] = figures;
    let variant = step.variants.get(to.variant?)?;
    let [[key, value]] = variant.changes.0.as_slice() else {
        return None;
    };
    let is_same = from.variant.is_none() && from.quantity == to.quantity;
    let change = (Parameter::named(key)?, value.parse().ok()?);
    is_same.then_some(change)
}

/// Changes another input, or the same one to another value.
pub fn change_input(step: &mut Step, parameter: Parameter, value: f64) {
    let Answer::Choice(Choice::Change { figures, .. }) = &step.answer else {
        return;
    };
    if let Some(variant) = figures[1].variant.and_then(|it| step.variants.get_mut(it)) {
        variant.changes = one_change(parameter, value);
    }
}

fn one_change(parameter: Parameter, value: f64) -> Changes {
    Changes(vec![[parameter.key().to_owned(), value.to_string()]])
}

/// The quantity that is asked for.
pub fn asked_quantity(step: &Step) -> Option<Quantity> {
    match &step.answer {
        Answer::Number(figure) => Some(figure.quantity),
        Answer::Choice(Choice::Change { figures, .. }) => Some(figures[0].quantity),
        _ => None,
    }
}

pub fn ask_for_quantity(step: &mut Step, quantity: Quantity) {
    match &mut step.answer {
        Answer::Number(figure) => figure.quantity = quantity,
        Answer::Choice(Choice::Change { figures, .. }) => {
            figures.iter_mut().for_each(|it| it.quantity = quantity);
        }
        _ => {}
    }
}

fn place_of_changed(step: &Step) -> Option<usize> {
    step.variants.iter().position(|it| it.name == CHANGED)
}

/// The two figures that are compared: of the jump, and of the same with one input changed. At first that has the
/// value that it has in the jump. None where nothing can be changed.
pub fn compared(step: &mut Step) -> Option<[Figure; 2]> {
    let quantity = asked_quantity(step).unwrap_or_else(turns);
    let Some(Setup::Jump(jump)) = &step.setup else {
        return None;
    };
    let place = match place_of_changed(step) {
        Some(place) => place,
        None => {
            let parameter = Parameter::ALL.into_iter().find(|it| jump.has_part(*it))?;
            let changes = one_change(parameter, parameter.get(jump));
            let name = CHANGED.to_owned();
            step.variants.push(Variant { name, changes });
            step.variants.len() - 1
        }
    };
    Some([None, Some(place)].map(|variant| Figure { quantity, variant }))
}

/// Takes the jump with one input changed away, where it is compared no longer.
pub fn forget_changed(step: &mut Step) {
    let is_last = place_of_changed(step).is_some_and(|place| place + 1 == step.variants.len());
    if is_last && !step.answer.about().iter().any(Option::is_some) {
        step.variants.pop();
    }
}

/// What is asked for at first.
fn turns() -> Quantity {
    Quantity::all().next().expect("the turns stand first")
}

/// The number that is asked for at first.
pub fn number(step: &Step) -> Answer {
    let setup = step.setup.as_ref();
    let quantity = asked_quantity(step).filter(|it| it.is_of(setup));
    let quantity = quantity.or_else(|| Quantity::all().find(|it| it.is_of(setup)));
    Answer::Number(Figure {
        quantity: quantity.unwrap_or_else(turns),
        variant: None,
    })
}
