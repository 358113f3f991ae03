//! From a scenario into the mechanics, and the flown jump with what the sport says of it.

use std::sync::{Arc, OnceLock};

use crate::call::{Call, over_rotated_deg};
use crate::facing::past_deg;
use crate::jump::JumpName;
use crate::parameter::Parameter;
use crate::scenario::{HandsKeep, Scenario};
use turns_aloft_physics::body::{Body, BodySpec};
use turns_aloft_physics::centroidal::CentroidalState;
use turns_aloft_physics::efforts::Efforts;
use turns_aloft_physics::flight::{Flight, Launch, Spin};
use turns_aloft_physics::flight_summary::FlightSummary;
use turns_aloft_physics::led_tucks::LedTucks;
use turns_aloft_physics::mass_properties::MassProperties;
use turns_aloft_physics::plan::{Plan, PlanSpec, Turning};
use turns_aloft_physics::readout::Readout;
use turns_aloft_physics::segments::Rows;
use turns_aloft_physics::table::{PlanTable, Resolution};
use turns_aloft_physics::tight_posture::TightPosture;
use turns_aloft_physics::tree::Tree;

/// A scenario that has been flown.
#[derive(Debug, Clone)]
pub struct Jump {
    /// The plan at the usual steps, whatever the flight took: the next flight starts from it, too.
    table: Arc<PlanTable>,
    pub flight: Arc<Flight>,
    pub readout: Readout,
    /// Once somebody has asked for them.
    efforts: OnceLock<Arc<Efforts>>,
    /// In the air and on the ice before it.
    pub turns: f64,
    /// None for a free jump.
    pub owed: Option<Owed>,
}

/// What the jump's name asks for, and what came of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Owed {
    pub turns: f64,
    /// Missing rotation, degrees; negative when turned further.
    pub shortfall_deg: f64,
    /// How far beyond the turns owed, degrees; none up to a quarter turn.
    pub over_rotated_deg: Option<f64>,
    /// Heading of the hips at touch-down against the one that the landing owes, degrees in
    /// (-180, 180], positive turned further.
    pub landing_facing_deg: f64,
    /// None off the ice, where the rule does not reach.
    pub call: Option<Call>,
}

impl Jump {
    /// What the flight asks of the body; worked out when it is asked for first.
    pub fn efforts(&self) -> &Efforts {
        self.efforts
            .get_or_init(|| Arc::new(Efforts::new(&self.flight)))
    }
}

impl Scenario {
    pub fn body_spec(&self) -> BodySpec {
        BodySpec {
            table: self.table,
            stature_m: self.stature_m,
            body_mass_kg: self.body_mass_kg,
            hand_mass_kg: self.hand_mass_kg,
            boot_mass_kg: self.boot_mass_kg,
            footwear: self.ground.footwear(),
            core_inertia: 1.0,
        }
    }

    pub fn plan_spec(&self) -> PlanSpec {
        PlanSpec {
            turning: self.turning,
            tight: TightPosture::of(self.table, self.stature_m, self.body_mass_kg),
            takeoff_openness: self.takeoff_openness,
            arm_tuck: self.arm_tuck,
            leg_tuck: self.leg_tuck,
            arm_asymmetry: self.arm_asymmetry,
            close_delay_s: self.close_delay_s,
            close_time_s: self.close_time_s,
            arm_lag_s: self.arm_lag_s,
            open_lead_s: self.open_lead_s,
            open_time_s: self.open_time_s,
            led: self.led.clone(),
        }
    }

    pub fn launch(&self) -> Launch {
        self.launch_of(self.body_spec(), self.table.rows())
    }

    /// The launch of another body in this scenario.
    fn launch_of(&self, body: BodySpec, rows: &Rows) -> Launch {
        let heading_rad = self.jump.entry_heading_rad()
            + self.turning.sign() * std::f64::consts::TAU * self.pre_rotation_turns;
        let launch = Launch {
            spin: Spin::Rate(self.takeoff_rate_rad_s),
            jump_height_m: self.jump_height_m,
            lean_rad: self.lean_rad,
            heading_rad,
        };
        if self.hand_mass_kg == 0.0 || self.hands_keep == HandsKeep::Rate {
            return launch;
        }
        let bare = BodySpec {
            hand_mass_kg: 0.0,
            ..body
        };
        let bare = Body::with_rows(bare, rows);
        let (posture, rates) = Plan::new(self.plan_spec()).at(0.0, f64::INFINITY);
        let bare = MassProperties::from(CentroidalState::new(&Tree::new(&bare), &posture, &rates));
        let (momentum, energy) = launch.same_momentum_and_energy(&bare, self.turning);
        let spin = match self.hands_keep {
            HandsKeep::Rate => launch.spin,
            HandsKeep::AngularMomentum => momentum,
            HandsKeep::Energy => energy,
        };
        Launch { spin, ..launch }
    }

    /// Whether nothing moves while arms and legs close: they stay as at take-off.
    pub fn closes_nothing(&self) -> bool {
        self.most_in() == [0.0; 2]
    }

    /// How far in arms and legs are meant to come: 0 not at all, 1 as tight as this body can get.
    pub fn most_in(&self) -> [f64; 2] {
        let planned = || [self.arm_tuck, self.leg_tuck];
        self.led.as_ref().map_or_else(planned, LedTucks::most_in)
    }

    /// Whether two jumps differ in nothing that could turn the one further than the other. Flown,
    /// they may still differ: by rounding, or because their steps fall elsewhere.
    pub fn turns_like(&self, other: &Self) -> bool {
        self.what_turns() == other.what_turns()
    }

    /// The jump with all that has no part in its turns left out.
    fn what_turns(&self) -> Self {
        let mut jump = Self {
            name: String::new(),
            note: String::new(),
            // Headings and what is owed.
            jump: JumpName::Free,
            jump_turns: 1,
            // The mirrored body turns as far.
            turning: Turning::Anticlockwise,
            ..self.clone()
        };
        for parameter in Parameter::ALL {
            if !self.has_part(parameter) {
                parameter.put(&mut jump, parameter.least());
            }
        }
        if self.led.is_none() && self.arm_tuck == 0.0 {
            (jump.arm_asymmetry, jump.arm_lag_s) = (0.0, 0.0);
        }
        if self.led.is_none() && self.closes_nothing() {
            (jump.close_delay_s, jump.close_time_s) = (0.0, 0.0);
        }
        if self.hand_mass_kg == 0.0 {
            jump.hands_keep = HandsKeep::Rate;
        }
        jump
    }

    /// Flies the scenario.
    pub fn fly(&self) -> Jump {
        self.fly_after(None)
    }

    /// Flies the scenario; what the last flight tabulated is used again where the body and the
    /// plan are the same.
    pub fn fly_after(&self, last: Option<&Jump>) -> Jump {
        self.fly_as(self.body_spec(), last)
    }

    /// The table and the launch of another body in this scenario; what earlier tables have in common with
    /// it is used again.
    pub fn tabulated_as(
        &self,
        body: BodySpec,
        resolution: Resolution,
        earlier: &[&Arc<PlanTable>],
    ) -> (Arc<PlanTable>, Launch) {
        let table = PlanTable::after(earlier, body, self.plan_spec(), resolution);
        (table, self.launch_of(body, self.table.rows()))
    }

    /// Flies the scenario and keeps no more than [`FlightSummary`] says; what earlier tables have in common with its table is used again.
    pub fn fly_summary(&self, earlier: &[&Arc<PlanTable>]) -> (FlightSummary, Arc<PlanTable>) {
        let (body, plan) = (self.body_spec(), self.plan_spec());
        let table = PlanTable::after(earlier, body, plan, Resolution::STANDARD);
        (
            FlightSummary::new(&table, self.launch_of(body, self.table.rows())),
            table,
        )
    }

    /// Flies the scenario with a body of its jumper's stature and mass that somebody else's rows
    /// make, and says what the readouts are then.
    pub fn fly_with_rows(&self, rows: &Rows) -> Readout {
        let spec = self.body_spec();
        let (body, plan) = (Body::with_rows(spec, rows), Plan::new(self.plan_spec()));
        let table = Arc::new(PlanTable::new(body, plan, Resolution::STANDARD));
        let flight = Flight::new(table, self.launch_of(spec, rows));
        Readout::new(&flight, self.ground.stopping_time_s())
    }

    /// The largest acceleration of what the hands hold, or would hold, in this scenario's flight on its
    /// own table, relative to free fall, m/s².
    pub fn grip_m_s2(&self, table: &Arc<PlanTable>) -> f64 {
        let flight = Flight::new(Arc::clone(table), self.launch());
        Efforts::new(&flight).grip_m_s2
    }

    /// Flies the scenario with another body than the published tables make of its jumper.
    pub fn fly_as(&self, body: BodySpec, last: Option<&Jump>) -> Jump {
        let plan = self.plan_spec();
        let last: Option<&Arc<_>> = last.map(|last| &last.table);
        let table = PlanTable::after(last.as_slice(), body, plan, Resolution::STANDARD);
        let launch = self.launch_of(body, self.table.rows());
        let flight = Arc::new(Flight::new(Arc::clone(&table), launch));
        let readout = Readout::new(&flight, self.ground.stopping_time_s());
        let turns = readout.air_turns + self.pre_rotation_turns;
        let heading_rad = (self.jump).landing_heading_rad(self.jump_turns, self.turning);
        let owed =
            (self.jump.turns_owed(self.jump_turns).zip(heading_rad)).map(|(owed, heading_rad)| {
                let shortfall_deg = 360.0 * (owed - turns);
                Owed {
                    turns: owed,
                    shortfall_deg,
                    over_rotated_deg: over_rotated_deg(shortfall_deg),
                    landing_facing_deg: past_deg(flight.touchdown(), heading_rad, self.turning),
                    call: self.jump.is_called().then(|| Call::of(shortfall_deg)),
                }
            });
        Jump {
            table,
            flight,
            readout,
            efforts: OnceLock::new(),
            turns,
            owed,
        }
    }
}
