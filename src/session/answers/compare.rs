//! How the jump differs from another attempt, and what the kept jumps come to.

use std::mem;

use crate::answers::basis::{Answer, Basis};
use crate::answers::kept_results::KeptResults;
use crate::state::reference::Reference;
use turns_aloft_describe::comparison::Compared;
use turns_aloft_scenario::Scenario;

#[derive(Debug, Default)]
pub(crate) struct Compare {
    pub compared: Option<Compared>,
    due: bool,
    pub kept: KeptResults,
}

impl Answer for Compare {
    /// The flight, and what it is compared with, by its name. The kept jumps are looked at one by one.
    type Depends = (u64, Option<(String, Scenario)>);

    fn depends(on: &Basis) -> Self::Depends {
        let reference = on
            .reference
            .map(|it| (it.name.clone(), it.scenario.clone()));
        (on.generation, reference)
    }

    fn ask(&mut self, _: &Basis, _: Option<&Self::Depends>) {
        self.due = true;
    }

    fn poll(&mut self, on: &Basis) -> bool {
        if let Some(Reference { name, scenario, .. }) = on.reference
            && mem::take(&mut self.due)
        {
            self.compared = Some(Compared::new(name, scenario, on.scenario));
            return true;
        }
        self.kept.fly_next(on.kept)
    }
}
