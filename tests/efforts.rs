//! Torques, powers and forces of a flown motion: against Newton's and Euler's laws by hand, against
//! second differences of the exported motion, against the energy, and in closed form.

#[path = "support/space.rs"]
mod space;

use glam::{DMat3, DVec3};
use proptest::prelude::*;

use turns_aloft::describe::report::flight::Report;
use turns_aloft::physics::body::{SEGMENTS, Segment};
use turns_aloft::physics::efforts::{Efforts, JointGroup};
use turns_aloft::physics::flight::Flight;
use turns_aloft::physics::inverse::Loads;
use turns_aloft::physics::joint_motion::JointState;
use turns_aloft::physics::plan::Turning;
use turns_aloft::physics::posture::Posture;
use turns_aloft::physics::tree::Tree;
use turns_aloft::physics::{GRAVITY_M_S2, motion_table};
use turns_aloft::scenario::{Scenario, starts};
use turns_aloft::session::Session;
use turns_aloft::session::readings::readings;

/// A term of the equations of motion that a twin leaves out.
#[derive(Clone, Copy, PartialEq)]
enum Left {
    Nothing,
    /// The change of a joint's axes as its parent turns.
    Carried,
    /// The pull inwards of what circles.
    Circling,
    /// The pelvis's own angular acceleration.
    Pelvis,
}

/// One segment in pelvis axes; accelerations relative to free fall.
#[derive(Clone, Copy)]
struct Moved {
    turn: DMat3,
    joint: DVec3,
    rate: DVec3,
    change: DVec3,
    acceleration: DVec3,
}

/// Force and torque about its own joint that each segment with all beyond it takes; the pelvis's own is
/// the wrench on the root. Summed over the body's parts, each carried outwards joint by joint in
/// matrices (Newton's and Euler's laws; the product sums over links about one point).
fn by_hand(
    flight: &Flight,
    joints: &JointState,
    rate: DVec3,
    loads: &Loads,
    left: Left,
) -> [[DVec3; 2]; SEGMENTS] {
    let body = &flight.table.body;
    let (posture, rates) = &joints.moving;
    let mut moved: Vec<Moved> = Vec::new();
    let swing = |of: &Moved, arm: DVec3| {
        let circling = of.rate.cross(of.rate.cross(arm));
        let along = of.change.cross(arm);
        of.acceleration
            + along
            + if left == Left::Circling {
                DVec3::ZERO
            } else {
                circling
            }
    };
    for segment in Segment::ALL {
        let own = match segment.parent() {
            None => Moved {
                turn: DMat3::IDENTITY,
                joint: DVec3::ZERO,
                rate,
                change: if left == Left::Pelvis {
                    DVec3::ZERO
                } else {
                    loads.pelvis_rad_s2
                },
                acceleration: loads.pelvis_m_s2,
            },
            Some(parent) => {
                let parent = moved[parent as usize];
                let i = segment as usize;
                let arm = parent.turn * body.link(segment).joint_m;
                let turn = parent.turn * DMat3::from_quat(posture[segment]);
                let joint_rate = turn * rates[i];
                let carried = parent.rate.cross(joint_rate);
                Moved {
                    turn,
                    joint: parent.joint + arm,
                    rate: parent.rate + joint_rate,
                    change: parent.change
                        + turn * joints.accelerations[i]
                        + if left == Left::Carried {
                            DVec3::ZERO
                        } else {
                            carried
                        },
                    acceleration: swing(&parent, arm),
                }
            }
        };
        moved.push(own);
    }
    let mut sums = [[DVec3::ZERO; 2]; SEGMENTS];
    for part in &body.parts {
        let own = moved[part.segment as usize];
        let arm = own.turn * part.cm_m;
        let at = own.joint + arm;
        let force = swing(&own, arm) * part.mass_kg;
        let inertia = own.turn * DMat3::from_diagonal(part.moments_kg_m2) * own.turn.transpose();
        let spin = inertia * own.change + own.rate.cross(inertia * own.rate);
        let mut above = Some(part.segment);
        while let Some(segment) = above {
            let [sum, torque] = &mut sums[segment as usize];
            *sum += force;
            *torque += spin + (at - moved[segment as usize].joint).cross(force);
            above = segment.parent();
        }
    }
    sums
}

/// How far the loads are from those by hand, and how large the wrench on the root by hand is, both in
/// parts of the largest load.
fn apart(flight: &Flight, t_s: f64, left: Left) -> [f64; 2] {
    let joints = flight.joint_state_at(t_s);
    let rate = flight.at(t_s).own_rate_rad_s;
    let loads = flight.loads_at(t_s);
    let sums = by_hand(flight, &joints, rate, &loads, left);
    let (mut off, mut size) = ([0.0_f64; 2], [f64::MIN_POSITIVE; 2]);
    for segment in &Segment::ALL[1..] {
        let load = loads.on(*segment);
        let found = [load.force_n, load.torque_n_m].map(DVec3::from);
        for which in [0, 1] {
            let expected = sums[*segment as usize][which];
            off[which] = off[which].max((found[which] - expected).length());
            size[which] = size[which].max(expected.length());
        }
    }
    let root = sums[0];
    [
        (off[0] / size[0]).max(off[1] / size[1]),
        (root[0].length() / size[0]).max(root[1].length() / size[1]),
    ]
}

proptest! {
    #![proptest_config(space::cases(200))]

    /// Every joint's force and torque, and nothing on the root: rounding only. The twins that leave a
    /// term out are seen, wherever the term counts.
    #[test]
    fn loads_are_newtons_and_eulers(scenario in space::scenario(), share in 0.0..=1.0_f64) {
        let flight = scenario.fly().flight;
        let [off, root] = apart(&flight, share * flight.touchdown_s, Left::Nothing);
        prop_assert!(off < 1e-10, "{off:e}");
        prop_assert!(root < 1e-10, "{root:e}");
    }

    /// A clockwise jumper has the mirror image of every force and torque: a torque is an axial vector,
    /// so the mirror turns round what lies in its own plane. To 1e-6: when a foot meets the ice is
    /// found to within a nanometre.
    #[test]
    fn a_clockwise_jumper_is_the_mirror_image(
        scenario in space::scenario(),
        share in 0.0..=1.0_f64,
    ) {
        let fly = |turning| Scenario { turning, ..scenario.clone() }.fly().flight;
        let (one, other) = (fly(Turning::Anticlockwise), fly(Turning::Clockwise));
        let t_s = share * one.touchdown_s;
        let (loads, mirrored) = (one.loads_at(t_s), other.loads_at(t_s));
        let size: f64 = Segment::ALL
            .iter()
            .map(|&segment| DVec3::from(loads.on(segment).torque_n_m).length())
            .fold(1.0, f64::max);
        for segment in Segment::ALL {
            let (a, b) = (loads.on(segment), mirrored.on(segment.mirrored()));
            let (force, torque) = (DVec3::from(b.force_n), DVec3::from(b.torque_n_m));
            let force = force * DVec3::new(1.0, 1.0, -1.0);
            let torque = torque * DVec3::new(-1.0, -1.0, 1.0);
            prop_assert!((DVec3::from(a.force_n) - force).length() < 1e-5 * size);
            prop_assert!((DVec3::from(a.torque_n_m) - torque).length() < 1e-5 * size);
            prop_assert!((a.power_w - b.power_w).abs() < 1e-4 * size);
        }
    }
}

#[test]
fn a_term_left_out_is_seen() {
    for start in starts::all() {
        let flight = start.scenario.fly().flight;
        let spec = &flight.table.plan.spec;
        // A third into the closing, where every joint that moves gains speed.
        let t_s = spec.close_delay_s + spec.close_time_s / 3.0;
        assert!(apart(&flight, t_s, Left::Nothing)[1] < 1e-10);
        for left in [Left::Carried, Left::Circling, Left::Pelvis] {
            let [off, root] = apart(&flight, t_s, left);
            assert!(
                off > 1e-3 && root > 1e-3,
                "{}: {off:e} {root:e}",
                start.name
            );
        }
    }
}

/// A body and a motion of any kind, the trunk and the wrists included, in which no plan moves them.
#[test]
fn any_joint_may_move() {
    let flight = starts::all()[0].scenario.fly().flight;
    let mut joints = flight.joint_state_at(0.15);
    let mut posture = Posture::STANDING;
    for segment in &Segment::ALL[1..] {
        let i = *segment as usize;
        let x = i as f64;
        let vector = DVec3::new(libm::sin(2.0 * x), libm::cos(3.0 * x), libm::sin(5.0 * x));
        posture[*segment] = turns_aloft::physics::rotation::exp(vector);
        joints.moving.1[i] =
            DVec3::new(libm::sin(7.0 * x), libm::sin(11.0 * x), libm::cos(x)) * 9.0;
        joints.accelerations[i] =
            DVec3::new(libm::cos(13.0 * x), libm::sin(x), libm::sin(x * x)) * 90.0;
    }
    joints.moving.0 = posture;
    let rate = DVec3::new(3.0, 25.0, -4.0);
    let loads = Loads::new(&flight.table.tree, &joints, rate);
    let sums = by_hand(&flight, &joints, rate, &loads, Left::Nothing);
    for segment in &Segment::ALL[1..] {
        let load = loads.on(*segment);
        let [force, torque] = sums[*segment as usize];
        assert!((DVec3::from(load.force_n) - force).length() < 1e-9 * force.length());
        assert!((DVec3::from(load.torque_n_m) - torque).length() < 1e-9 * torque.length());
    }
    assert!(sums[0][0].length() < 1e-9 && sums[0][1].length() < 1e-9);
}

/// The work of all joints is the change of the kinetic energy relative to the CM. Simpson's rule over
/// each span between corners, and steps an eighth as long as usual: 1e-6.
#[test]
fn work_is_the_change_of_energy() {
    const PARTS: usize = 400;
    for start in starts::all() {
        let scenario = &start.scenario;
        let flight = finer(scenario);
        let spec = &flight.table.plan.spec;
        let closed_s = spec.close_delay_s + spec.close_time_s;
        let mut knots = vec![
            0.0,
            spec.close_delay_s,
            spec.close_delay_s + spec.arm_lag_s,
            closed_s,
            closed_s + spec.arm_lag_s,
            flight.open_s,
            flight.open_s + spec.open_time_s,
            flight.touchdown_s,
        ];
        knots.retain(|&t_s| t_s <= flight.touchdown_s);
        knots.sort_by(f64::total_cmp);
        let mut work_j = 0.0;
        for span in knots.windows(2) {
            let step_s = (span[1] - span[0]) / PARTS as f64;
            for i in 0..PARTS {
                let power = |part: f64| {
                    let t_s = span[0] + step_s * (i as f64 + part);
                    flight.loads_at(t_s).power_w()
                };
                work_j += step_s / 6.0 * (power(0.0) + 4.0 * power(0.5) + power(1.0));
            }
        }
        let gained_j = flight.touchdown().energy_j - flight.takeoff().energy_j;
        let size_j = scenario.fly().readout.energy_peak_j;
        assert!(
            (work_j - gained_j).abs() < 1e-6 * size_j,
            "{}: {work_j} {gained_j}",
            start.name
        );
    }
}

/// The same flight with steps an eighth as long.
fn finer(scenario: &Scenario) -> Flight {
    let jump = scenario.fly();
    let table = jump.flight.table.finer().finer().finer();
    Flight::new(table, jump.flight.launch)
}

/// Positions of the hands' parts out of the exported motion, by time and part.
fn exported(flight: &Flight, step_s: f64) -> Vec<(f64, String, f64, DVec3)> {
    motion_table::table(flight, step_s)
        .lines()
        .skip(1)
        .map(|line| {
            let mut cells = line.split(',');
            let mut number = || cells.next().expect("a cell").to_owned();
            let t_s = number().parse().expect("a time");
            let name = number();
            let mut next = || number().parse::<f64>().expect("a number");
            let (mass, x, y, z) = (next(), next(), next(), next());
            (t_s, name, mass, DVec3::new(x, y, z))
        })
        .filter(|(_, name, ..)| name.contains("hand"))
        .collect()
}

/// The force on a hand and on what it holds, by second differences of where the exported motion has
/// them, gravity taken off: 1e-3 of the largest (the differences' own error: steps of 0.2 ms, and the
/// flight's steps an eighth of the usual ones).
#[test]
fn forces_are_second_differences_of_the_motion() {
    const STEP_S: f64 = 2e-4;
    for name in ["four-turns", "senior-triple", "weighted-hands"] {
        let start = starts::named(name).expect("a start");
        let flight = finer(&start.scenario);
        let rows = exported(&flight, STEP_S);
        let held_kg = start.scenario.hand_mass_kg;
        let efforts = Efforts::new(&flight);
        for (side, left) in ["left", "right"].into_iter().enumerate() {
            let parts: Vec<Vec<_>> = [format!("{left}_hand"), format!("{left}_hand_mass")]
                .into_iter()
                .map(|part| rows.iter().filter(|row| row.1 == part).collect())
                .filter(|rows: &Vec<_>| !rows.is_empty())
                .collect();
            assert_eq!(parts.len(), if held_kg > 0.0 { 2 } else { 1 });
            let count = parts[0].len();
            let (mut most, mut most_held) = (0.0_f64, 0.0_f64);
            for i in 1..count - 2 {
                let t_s = parts[0][i].0;
                let forces: Vec<DVec3> = parts
                    .iter()
                    .map(|rows| {
                        let [a, b, c] = [-1, 0, 1].map(|d| rows[i.wrapping_add_signed(d)].3);
                        let acceleration = (a - 2.0 * b + c) / (STEP_S * STEP_S);
                        (acceleration + DVec3::Y * GRAVITY_M_S2) * rows[i].2
                    })
                    .collect();
                let expected = forces.iter().sum::<DVec3>().length();
                let loads = flight.loads_at(t_s);
                let off = loads.hand_n()[side] - expected;
                assert!(
                    off.abs() < 1e-3 * efforts.hand_force.value,
                    "{name} {t_s}: {off}, {expected}"
                );
                most = most.max(expected);
                if let Some(held) = forces.get(1) {
                    let found = held_kg * loads.grip_m_s2()[side];
                    assert!((found - held.length()).abs() < 1e-3 * efforts.grip_force.value);
                    most_held = most_held.max(held.length());
                }
            }
            assert!(most <= efforts.hand_force.value * 1.001);
            assert!(most_held <= efforts.grip_force.value * 1.001);
        }
    }
}

/// Largest torques, forces and powers found at every `1/count` of a flight: by group in the closing,
/// then in the opening, then the force on a hand, the acceleration of what it holds, and both ends of
/// the power.
fn looked_at(flight: &Flight, count: usize) -> Vec<f64> {
    let mut most = vec![0.0_f64; 12];
    most.extend([f64::MIN, f64::MIN]);
    // The opening's beginning itself is part of both.
    let times = (0..=count).map(|i| flight.touchdown_s * i as f64 / count as f64);
    for t_s in times.chain([flight.open_s]) {
        let loads = flight.loads_at(t_s);
        let mut see = |i: usize, value: f64| most[i] = most[i].max(value);
        for group in JointGroup::ALL {
            for segment in group.segments() {
                let torque = DVec3::from(loads.on(segment).torque_n_m).length();
                if t_s <= flight.open_s {
                    see(group as usize, torque);
                }
                if t_s >= flight.open_s {
                    see(5 + group as usize, torque);
                }
            }
        }
        for side in [0, 1] {
            see(10, loads.hand_n()[side]);
            see(11, loads.grip_m_s2()[side]);
        }
        see(12, loads.power_w());
        see(13, -loads.power_w());
    }
    most
}

/// The same as the efforts have them.
fn describe(efforts: &Efforts) -> Vec<f64> {
    let torques = efforts.closing.iter().chain(&efforts.opening);
    let mut describe: Vec<f64> = torques.map(|demand| demand.torque.value).collect();
    describe.extend([
        efforts.hand_force.value,
        efforts.grip_m_s2,
        efforts.power.value,
        -efforts.least_power.value,
    ]);
    describe
}

/// How far the told torques and forces, and the told powers, are from those of a fine look, in parts of
/// the largest of their kind.
fn missed(scenario: &Scenario) -> [f64; 2] {
    let jump = scenario.fly();
    let fine = looked_at(&jump.flight, 3000);
    let describe = describe(jump.efforts());
    let power_w = fine[12].max(fine[13]);
    let size = |i: usize| match i {
        0..10 => fine[i % 5].max(fine[5 + i % 5]),
        10 | 11 => fine[i],
        _ => power_w,
    };
    let off = |i: usize| (describe[i] - fine[i]).abs() / size(i).max(1e-9);
    [0..12, 12..14].map(|which| which.map(off).fold(0.0, f64::max))
}

/// Every second step and a polynomial are enough: torques and forces within 0.1 %, powers within 0.2 % of a look at
/// 3000 instants.
#[test]
fn peaks_are_those_of_a_fine_look() {
    for start in starts::all() {
        let [torque, power] = missed(&start.scenario);
        let name = start.name;
        assert!(
            torque < 1e-3 && power < 2e-3,
            "{name}: {torque:e} {power:e}"
        );
    }
}

proptest! {
    #![proptest_config(space::cases(64))]

    /// The same of any jump; where closing and opening overlap in a hurry the steps are longest for
    /// what happens: 1 %.
    #[test]
    fn peaks_of_any_jump(scenario in space::planned()) {
        let missed = missed(&scenario);
        prop_assert!(missed[0] < 1e-2 && missed[1] < 1e-2, "{missed:?}");
    }

    /// And of any that a hand leads, which may do in a hurry what no plan does: 5 %.
    #[test]
    fn peaks_of_any_led_jump(scenario in space::led_by_hand()) {
        let missed = missed(&scenario);
        prop_assert!(missed[0] < 5e-2 && missed[1] < 5e-2, "{missed:?}");
    }
}

/// At one instant the torques are told in the parent's axes: turned back, they are those of the pelvis's.
#[test]
fn torques_in_the_parents_axes() {
    let flight = starts::all()[0].scenario.fly().flight;
    let pose = flight.pose_at(0.15);
    let loads = flight.loads_at(0.15);
    let (posture, _) = &flight.joint_state_at(0.15).moving;
    for segment in &Segment::ALL[1..] {
        let parent = segment.parent().expect("not the pelvis");
        let own = pose.orientation(Segment::LowerTrunk).conjugate() * pose.orientation(parent);
        let torque = own * loads.torque_in_parent_n_m(posture, *segment);
        let expected = DVec3::from(loads.on(*segment).torque_n_m);
        assert!((torque - expected).length() < 1e-10 * (1.0 + expected.length()));
    }
}

/// A body at rest in free fall takes no force at all.
#[test]
fn free_fall_takes_no_force() {
    let body = starts::all()[0].scenario.body_spec();
    let tree = Tree::new(&turns_aloft::physics::body::Body::new(body));
    let joints = JointState {
        moving: (Posture::STANDING, turns_aloft::physics::posture::STILL),
        accelerations: turns_aloft::physics::posture::STILL,
    };
    let loads = Loads::new(&tree, &joints, DVec3::ZERO);
    for segment in Segment::ALL {
        let load = loads.on(segment);
        assert_eq!(DVec3::from(load.force_n), DVec3::ZERO);
        assert_eq!(DVec3::from(load.torque_n_m), DVec3::ZERO);
    }
}

/// The page's lines tell what the command's report has, and at which joint.
#[test]
fn lines_tell_the_report() {
    let session = Session::default();
    let lines = readings(&session);
    let text = |quantity: &str| {
        let line = lines.iter().find(|line| line.quantity == quantity);
        line.expect("a line").text.clone()
    };
    let report = Report::new(session.scenario(), session.jump()).efforts;
    let [closing, opening] = [
        report.shoulder_torque_closing_peak_n_m,
        report.shoulder_torque_opening_peak_n_m,
    ];
    assert_eq!(
        text("shoulder_torque_peaks_n_m"),
        format!("{closing:.0} / {opening:.0} N m")
    );
    let hip = report.hip_torque_closing_peak_n_m;
    assert!(hip > closing);
    let largest = session.jump().efforts().closing[JointGroup::Hip as usize].torque;
    assert_eq!(largest.segment, Segment::RightThigh);
    assert_eq!(
        text("torque_closing_peak_n_m"),
        format!("{hip:.0} N m, right hip")
    );
    assert_eq!(
        text("joint_power_peak_w"),
        format!("{:.0} W", report.joint_power_peak_w)
    );
    assert_eq!(
        text("hand_force_peak_n"),
        format!("{:.0} N", report.hand_force_peak_n)
    );
}
