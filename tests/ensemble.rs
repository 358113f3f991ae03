//! How much bodies differ in their ratio of inertia, open to tight, and what that makes of the turns:
//! the half-width that the range carries, computed again from bodies from outside.
//!
//! Sources: `outside/bodies/rows.json` (five measured people in the body model of yeadon 2.0.1, and
//! both tables of Dumas & Wojtusch 2018; `outside/ensemble.py` makes it and says what is from memory)
//! and both tables of de Leva 1996.

use serde::Deserialize;

use turns_aloft::analysis::uncertainty::{
    Range, UncertainInput, Uncertainty, bare, open_and_tight_kg_m2,
};
use turns_aloft::physics::body::{Body, BodySpec, Footwear, Segment};
use turns_aloft::physics::centroidal::CentroidalState;
use turns_aloft::physics::posture::{Arm, Leg, Posture, STILL};
use turns_aloft::physics::segments::{FEMALE, MALE, Row, Rows, SegmentTable};
use turns_aloft::physics::tree::Tree;
use turns_aloft::scenario::Scenario;
use turns_aloft::scenario::starts::{self, Start};

/// The 95 % limit of a normal distribution, in standard deviations.
const LIMIT: f64 = 1.96;

#[derive(Deserialize)]
struct KeptRow {
    length_mm: f64,
    mass_percent: f64,
    cm_percent: f64,
    radii_percent: [f64; 3],
}

#[derive(Deserialize)]
struct KeptRows {
    lower_trunk: KeptRow,
    middle_trunk: KeptRow,
    upper_trunk: KeptRow,
    head: KeptRow,
    upper_arm: KeptRow,
    forearm: KeptRow,
    hand: KeptRow,
    thigh: KeptRow,
    shank: KeptRow,
    foot: KeptRow,
}

#[derive(Deserialize)]
struct Kept {
    name: String,
    stature_mm: f64,
    body_mass_kg: f64,
    shoulder_per_stature: f64,
    hip_per_stature: f64,
    shoulder_above_hip_mm: f64,
    arms_down_kg_m2: Option<f64>,
    arms_out_kg_m2: Option<f64>,
    rows: KeptRows,
}

/// A body from outside, at its own stature and mass.
struct Outside {
    name: String,
    body_mass_kg: f64,
    rows: Rows,
    /// What its own model says of it, legs together, feet pointed: arms down and straight out.
    own_kg_m2: Option<[f64; 2]>,
}

impl KeptRow {
    fn row(&self) -> Row {
        let [sagittal_percent, transverse_percent, longitudinal_percent] = self.radii_percent;
        Row {
            length_mm: self.length_mm,
            mass_percent: self.mass_percent,
            cm_percent: self.cm_percent,
            sagittal_percent,
            transverse_percent,
            longitudinal_percent,
        }
    }
}

impl From<Kept> for Outside {
    fn from(kept: Kept) -> Self {
        let rows = Rows {
            stature_mm: kept.stature_mm,
            head: kept.rows.head.row(),
            upper_trunk: kept.rows.upper_trunk.row(),
            middle_trunk: kept.rows.middle_trunk.row(),
            lower_trunk: kept.rows.lower_trunk.row(),
            upper_arm: kept.rows.upper_arm.row(),
            forearm: kept.rows.forearm.row(),
            hand: kept.rows.hand.row(),
            thigh: kept.rows.thigh.row(),
            shank: kept.rows.shank.row(),
            foot: kept.rows.foot.row(),
            shoulder_above_hip_mm: kept.shoulder_above_hip_mm,
            shoulder_per_stature: kept.shoulder_per_stature,
            hip_per_stature: kept.hip_per_stature,
        };
        Self {
            name: kept.name,
            body_mass_kg: kept.body_mass_kg,
            rows,
            own_kg_m2: kept
                .arms_down_kg_m2
                .zip(kept.arms_out_kg_m2)
                .map(<[f64; 2]>::from),
        }
    }
}

impl Outside {
    /// All of them: the file's, and both tables of de Leva with the people they were measured of.
    fn all() -> Vec<Self> {
        let file = include_str!("outside/bodies/rows.json");
        let kept: Vec<Kept> = serde_json::from_str(file).expect("the file of rows");
        let de_leva = [
            ("de_leva_female", 61.9, FEMALE),
            ("de_leva_male", 73.0, MALE),
        ];
        kept.into_iter()
            .map(Self::from)
            .chain(de_leva.map(|(name, body_mass_kg, rows)| Self {
                name: name.to_owned(),
                body_mass_kg,
                rows,
                own_kg_m2: None,
            }))
            .collect()
    }

    fn bare(&self) -> BodySpec {
        BodySpec {
            table: SegmentTable::Male,
            stature_m: self.rows.stature_mm / 1000.0,
            body_mass_kg: self.body_mass_kg,
            hand_mass_kg: 0.0,
            boot_mass_kg: 0.0,
            footwear: Footwear::BAREFOOT,
            core_inertia: 1.0,
        }
    }

    /// This body with somebody else's stature and mass: lengths go with the stature, breadths and
    /// depths with the root of mass over stature, so that its density stays. (Mass that only became
    /// more or less would leave a stout person's breadths to a slim jumper.)
    fn as_jumper(&self, stature_m: f64, body_mass_kg: f64) -> Rows {
        let longer = 1000.0 * stature_m / self.rows.stature_mm;
        // Of a breadth against its length.
        let square = body_mass_kg / self.body_mass_kg / longer.powi(3);
        let row = |row: &Row| {
            let [sagittal, transverse, longitudinal] = [
                row.sagittal_percent,
                row.transverse_percent,
                row.longitudinal_percent,
            ]
            .map(|radius| radius * radius);
            // Mean squares of the distances along the segment, and across it to the front and side.
            let along = 0.5 * (sagittal + transverse - longitudinal);
            let front = 0.5 * (transverse + longitudinal - sagittal) * square;
            let side = 0.5 * (sagittal + longitudinal - transverse) * square;
            Row {
                sagittal_percent: (along + side).sqrt(),
                transverse_percent: (along + front).sqrt(),
                longitudinal_percent: (front + side).sqrt(),
                ..*row
            }
        };
        let rows = &self.rows;
        Rows {
            stature_mm: rows.stature_mm,
            head: row(&rows.head),
            upper_trunk: row(&rows.upper_trunk),
            middle_trunk: row(&rows.middle_trunk),
            lower_trunk: row(&rows.lower_trunk),
            upper_arm: row(&rows.upper_arm),
            forearm: row(&rows.forearm),
            hand: row(&rows.hand),
            thigh: row(&rows.thigh),
            shank: row(&rows.shank),
            foot: row(&rows.foot),
            shoulder_above_hip_mm: rows.shoulder_above_hip_mm,
            shoulder_per_stature: rows.shoulder_per_stature * square.sqrt(),
            hip_per_stature: rows.hip_per_stature * square.sqrt(),
        }
    }
}

fn long_kg_m2(body: &Body, posture: &Posture) -> f64 {
    let state = CentroidalState::new(&Tree::new(body), posture, &STILL);
    state.inertia_kg_m2.y_axis.y
}

/// Ratio of inertia, open to tight.
fn ratio(body: &Body) -> f64 {
    let [open, tight] = open_and_tight_kg_m2(body);
    open / tight
}

/// Every outside body as this jumper: by which share its ratio and the turns of the flight differ
/// from the jumper's own table's.
struct Differences {
    ratio: Vec<f64>,
    turns: Vec<f64>,
}

impl Differences {
    fn of(scenario: &Scenario, bodies: &[Outside]) -> Self {
        let own = scenario.table.rows();
        let own_ratio = ratio(&Body::new(bare(scenario)));
        let own_turns = scenario.fly_with_rows(own).air_turns;
        let (ratio, turns) = bodies
            .iter()
            .map(|body| {
                let rows = body.as_jumper(scenario.stature_m, scenario.body_mass_kg);
                let theirs = ratio(&Body::with_rows(bare(scenario), &rows));
                let turns = scenario.fly_with_rows(&rows).air_turns;
                (theirs / own_ratio - 1.0, turns - own_turns)
            })
            .unzip();
        Self { ratio, turns }
    }
}

/// Root of the mean square: how far off, bias included.
fn rms(values: &[f64]) -> f64 {
    (values.iter().map(|v| v * v).sum::<f64>() / values.len() as f64).sqrt()
}

fn grown(start: &Start) -> bool {
    start.scenario.stature_m >= 1.55
}

/// What a ratio that is off by this share makes of the turns, by the range's own rule.
fn carried_turns(scenario: &Scenario, inertia_ratio_share: f64) -> f64 {
    let mut half_widths = Uncertainty::NONE;
    half_widths.hold(UncertainInput::InertiaRatio, inertia_ratio_share);
    Range::new(scenario, &scenario.fly(), &half_widths).changes[3]
}

/// The half-width of the ratio that makes of a jump's turns what the bodies flown through its plan
/// make of them. About the spread of their ratios, 1.96 times its root of the mean square; not quite,
/// because one error in trunk and head stands for all that bodies differ in.
fn needed_share(scenario: &Scenario, differences: &Differences) -> f64 {
    let spread = LIMIT * rms(&differences.ratio);
    let needed = spread * LIMIT * rms(&differences.turns) / carried_turns(scenario, spread);
    // The turns bend over the ratio: once more from there.
    needed * LIMIT * rms(&differences.turns) / carried_turns(scenario, needed)
}

/// The half-widths that stand in `scenario/uncertainty.rs` are the mean of what the starting points
/// of grown jumpers with that table need, to a whole percent.
#[test]
fn the_half_widths_are_the_ensembles() {
    let bodies = Outside::all();
    assert_eq!(bodies.len(), 9);
    let mut wrong = Vec::new();
    for (table, name) in [
        (SegmentTable::Female, "FEMALE_RATIO"),
        (SegmentTable::Male, "MALE_RATIO"),
    ] {
        let of_table = |start: &&Start| grown(start) && start.scenario.table == table;
        let mut needed = Vec::new();
        for start in starts::all().iter().filter(of_table) {
            let differences = Differences::of(&start.scenario, &bodies);
            needed.push(needed_share(&start.scenario, &differences));
            println!(
                "{}: ratio ± {:.3}, turns ± {:.3}; needs {:.3}",
                start.name,
                LIMIT * rms(&differences.ratio),
                LIMIT * rms(&differences.turns),
                needed[needed.len() - 1]
            );
            for (i, body) in bodies.iter().enumerate() {
                let (ratio, turns) = (differences.ratio[i], differences.turns[i]);
                println!("    {:18} ratio {ratio:+.3}, turns {turns:+.3}", body.name);
            }
        }
        let mean = needed.iter().sum::<f64>() / needed.len() as f64;
        let start = starts::all().iter().find(of_table).expect("a grown jumper");
        let stated = Uncertainty::usual(&start.scenario).get(UncertainInput::InertiaRatio);
        if (stated - mean).abs() > 0.005 + 1e-9 {
            wrong.push(format!("const {name}: f64 = {mean:.2};"));
        }
    }
    assert!(
        wrong.is_empty(),
        "put into src/analysis/uncertainty.rs, and the percentages into the README:\n{}",
        wrong.join("\n")
    );
}

/// For each starting point, what the range carries is what the bodies, flown through its plan, make of
/// its turns: 1.96 times the root of the mean square. Tolerance 20 %: jumpers are not equally slim, and
/// a trunk's error weighs less than that of limbs where a plan closes by half only. For children it is
/// not less, and more by no more than the half that is added for them, and that tolerance.
#[test]
fn the_range_is_the_ensembles() {
    let bodies = Outside::all();
    for start in starts::all() {
        let scenario = &start.scenario;
        let flown = LIMIT * rms(&Differences::of(scenario, &bodies).turns);
        let stated = carried_turns(
            scenario,
            Uncertainty::usual(scenario).get(UncertainInput::InertiaRatio),
        );
        println!("{:20} flown {flown:.3} stated {stated:.3}", start.name);
        let admissible = if grown(start) { 0.8..=1.2 } else { 1.0..=1.8 };
        assert!(
            admissible.contains(&(stated / flown)),
            "{}: {stated} turns are carried, {flown} are flown",
            start.name
        );
    }
}

/// Arms this far out to the side, legs this far apart, feet pointed or not.
fn spread_out(arms_deg: f64, legs_deg: f64, plantarflexion_deg: f64) -> Posture {
    let arm = Arm {
        plane_rad: 0.0,
        elevation_rad: arms_deg.to_radians(),
        axial_rad: 0.0,
        elbow_flexion_rad: 0.0,
    };
    let leg = Leg {
        hip_flexion_rad: 0.0,
        hip_abduction_rad: legs_deg.to_radians(),
        knee_flexion_rad: 0.0,
        plantarflexion_rad: plantarflexion_deg.to_radians(),
    };
    Posture::new(arm, arm, leg, leg)
}

/// A body put together from the rows has the mass and the inertia that its own model gives it, arms
/// down and straight out. Tolerance 0.5 %: our feet stand out from the line of the shanks a little.
#[test]
fn measured_bodies_keep_their_own_inertia() {
    let mut seen = 0;
    for outside in Outside::all() {
        let Some([down, out]) = outside.own_kg_m2 else {
            continue;
        };
        let body = Body::with_rows(outside.bare(), &outside.rows);
        assert!((body.mass_kg - outside.body_mass_kg).abs() < 1e-9);
        assert!((outside.rows.mass_sum_percent() - 100.0).abs() < 1e-3);
        for (arms_deg, expected) in [(0.0, down), (90.0, out)] {
            let found = long_kg_m2(&body, &spread_out(arms_deg, 0.0, 90.0));
            assert!(
                (found - expected).abs() < 0.005 * expected,
                "{}, arms at {arms_deg}°: {found}, not {expected}",
                outside.name
            );
        }
        seen += 1;
    }
    assert_eq!(seen, 5);
}

/// A body as somebody of its own stature and mass is itself; made half as heavy, it is thinner, and
/// its density stays: a trunk's moment about the long axis goes with the square of its mass.
#[test]
fn another_mass_keeps_the_density() {
    for outside in Outside::all() {
        let stature_m = outside.rows.stature_mm / 1000.0;
        let moment = |body_mass_kg: f64| {
            let spec = BodySpec {
                body_mass_kg,
                ..outside.bare()
            };
            let rows = outside.as_jumper(stature_m, body_mass_kg);
            let body = Body::with_rows(spec, &rows);
            body.parts[Segment::UpperTrunk as usize].moments_kg_m2.y
        };
        let itself = Body::with_rows(outside.bare(), &outside.rows);
        let own = itself.parts[Segment::UpperTrunk as usize].moments_kg_m2.y;
        assert!((moment(outside.body_mass_kg) / own - 1.0).abs() < 1e-12);
        assert!((moment(0.5 * outside.body_mass_kg) / own - 0.25).abs() < 1e-12);
    }
}

/// Of three measured men (textbook appendix A.2.1; Tözeren 2000, from memory): standing and spread
/// eagle, kg m².
const MEN: [(f64, f64); 3] = [(1.480, 4.734), (1.164, 3.390), (1.604, 5.785)];

/// Standard deviation as a share of the mean.
fn scatter(values: &[f64]) -> f64 {
    let mean = values.iter().sum::<f64>() / values.len() as f64;
    let squares: f64 = values.iter().map(|v| (v / mean - 1.0).powi(2)).sum();
    (squares / (values.len() - 1) as f64).sqrt()
}

/// Measured men differ from each other in their ratio of inertia, spread out to standing, about as much
/// as the bodies do. How far their arms and legs were out is not known, so the ratio itself (2.9 to 3.6;
/// the bodies', arms level and legs 20° out, 3.3 to 4.7) is not compared, and the mean of 66 more
/// (Santschi et al. 1963), of whom no scatter was read, not used. Tolerance a factor of 2: the scatter
/// of three is known no better.
#[test]
fn measured_men_differ_as_much() {
    let men = scatter(&MEN.map(|(standing, spread)| spread / standing));
    let ratios: Vec<f64> = Outside::all()
        .iter()
        .map(|outside| {
            // The men's mean stature and mass.
            let (stature_m, body_mass_kg) = (1.803, 79.2);
            let spec = BodySpec {
                stature_m,
                body_mass_kg,
                ..outside.bare()
            };
            let body = Body::with_rows(spec, &outside.as_jumper(stature_m, body_mass_kg));
            long_kg_m2(&body, &spread_out(90.0, 20.0, 0.0)) / long_kg_m2(&body, &Posture::STANDING)
        })
        .collect();
    let bodies = scatter(&ratios);
    println!("men {men:.3}, bodies {bodies:.3}: {ratios:.2?}");
    assert!((0.5..=2.0).contains(&(bodies / men)), "{bodies} {men}");
}
