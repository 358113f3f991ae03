//! Where the turns may lie.

use crate::answers::basis::{Answer, Basis};
use crate::state::uncertainty::UncertaintyInputs;
use turns_aloft_analysis::hang_time::{self, half_width_s};
use turns_aloft_analysis::uncertainty::Range;
use turns_aloft_fit::Fit;
use turns_aloft_physics::body::BodySpec;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::parameter::Parameter;

/// Where the turns may lie, and the half-width of the height as one of the hang time; none when that is
/// not shown.
#[derive(Debug, Default)]
pub(crate) struct RangeAnswer {
    pub range: Option<Range>,
    pub hang_time_half_width_s: Option<f64>,
}

impl Answer for RangeAnswer {
    /// The flight, the half-widths, and whether the jump's marks say how sure it is.
    type Depends = (u64, UncertaintyInputs, bool);

    fn depends(on: &Basis) -> Self::Depends {
        (on.generation, on.uncertainty.clone(), on.fit.is_some())
    }

    fn ask(&mut self, on: &Basis, _: Option<&Self::Depends>) {
        let Basis { scenario, jump, .. } = on;
        let shown = on.uncertainty.shown;
        let half_widths = on.uncertainty.half_widths(scenario);
        self.range = shown.then(|| match on.fit {
            Some(fit) => range_of_samples(fit, scenario, jump),
            None => Range::new(scenario, jump, &half_widths),
        });
        self.hang_time_half_width_s =
            shown.then(|| half_width_s(scenario, jump, half_widths.get(hang_time::UNCERTAIN)));
    }

    /// It is one piece.
    fn poll(&mut self, _: &Basis) -> bool {
        false
    }
}

/// How many of the equally likely jumps are flown for the range of a changed jump: as many as a picture has
/// time for.
const FLOWN: usize = 100;

/// The range of a jump that was found from marks, or changed since: each of the jumps that are as likely,
/// changed alike.
fn range_of_samples(fit: &Fit, scenario: &Scenario, jump: &Jump) -> Range {
    let every = fit.samples.len().div_ceil(FLOWN).max(1);
    let turns = fit.samples.iter().step_by(every).map(|sample| {
        let mut changed = Scenario {
            jump: scenario.jump,
            jump_turns: scenario.jump_turns,
            ground: scenario.ground,
            turning: scenario.turning,
            hands_keep: scenario.hands_keep,
            ..sample.scenario.clone()
        };
        for parameter in Parameter::ALL {
            let by = parameter.get(scenario) - parameter.get(&fit.best.scenario);
            if by != 0.0 {
                parameter.hold(&mut changed, parameter.get(&sample.scenario) + by);
            }
        }
        // The body of the sample, with what has been changed of it.
        let body = BodySpec {
            core_inertia: sample.body.core_inertia,
            ..changed.body_spec()
        };
        changed.fly_as(body, None).turns
    });
    Range::of_turns(turns.collect(), jump)
}
