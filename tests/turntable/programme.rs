//! Programmes: read, refused, and run.

use turns_aloft::describe::Sentence;
use turns_aloft::turntable::planned::{PlanFault, Planned};
use turns_aloft::turntable::position::Limbs;
use turns_aloft::turntable::programme::{EXAMPLE, ProgrammeFault};
use turns_aloft::turntable::{Friction, Person, Programme, Run, Setup, Stand, Turntable};

fn read(text: &str) -> Programme {
    Programme::read(text).unwrap_or_else(|why| panic!("{}", why.sentence()))
}

fn run(setup: &Setup, text: &str) -> Result<Run, PlanFault> {
    let person = Person::new(setup).expect("in range");
    Ok(Planned::new(&person, &read(text))?.run(0.02))
}

#[test]
fn a_programme_is_read_however_it_is_written() {
    let plain = read("time_s,hand_distance_m,legs\n0,0.5,0\n1,0.25,1\n");
    for text in [
        "\u{feff}time_s;hand_distance_m;legs\r\n0;0,5;0\r\n1;0,25;1\r\n",
        "time_s\thand_distance_m\tlegs\n0\t0.5\t0\n1\t2.5e-1\t1",
        "Time_s, hand_distance_m , legs, note\n0,0.5,0,begin\n1,0.25,1,end\n",
        "time_s,hand_distance_m,legs,twist_rad\n0,0.5,0,0\n1,0.25,1,0\n",
    ] {
        assert_eq!(read(text), plain, "{text}");
    }
    let commented = read("# mine\n\nhand_distance_m,time_s\n# out\n0.5,0\n\n0.25,1\n");
    assert_eq!(commented.rows.len(), 2);
    assert_eq!(commented.rows[1].line, 7);
    assert_eq!(commented.rows[1].position.hand_distance_m, 0.25);
}

#[test]
fn what_is_wrong_with_a_programme_is_told() {
    use ProgrammeFault::{Empty, NoColumn, NotANumber, OutOfOrder, TooLong, TooShort, TwiceColumn};
    let column = "hand_distance_m";
    for (text, fault) in [
        ("", Empty),
        ("# nothing\n", Empty),
        ("time_s,legs\n0,1\n", NoColumn { column }),
        ("0,0.5\n1,0.5\n", NoColumn { column: "time_s" }),
        (
            "time_s,hand_distance_m,hand_distance_m\n",
            TwiceColumn { column },
        ),
        ("time_s,hand_distance_m\n0,0.5\n", TooShort),
        (
            "time_s,hand_distance_m\n0,0.5\n1,out\n",
            NotANumber {
                line: 3,
                column,
                written: "out".to_owned(),
            },
        ),
        (
            "time_s,hand_distance_m\n0,0.5\n1\n",
            NotANumber {
                line: 3,
                column,
                written: String::new(),
            },
        ),
        (
            "time_s,hand_distance_m\n0,0.5\n1,inf\n",
            NotANumber {
                line: 3,
                column,
                written: "inf".to_owned(),
            },
        ),
        (
            "time_s,hand_distance_m\n0,0.5\n0,0.5\n",
            OutOfOrder { line: 3 },
        ),
        ("time_s,hand_distance_m\n0,0.5\n3601,0.5\n", TooLong),
    ] {
        assert_eq!(Programme::read(text), Err(fault.clone()), "{text}");
        assert!(!fault.sentence().contains('\n'));
    }
}

#[test]
fn what_nobody_can_do_is_told() {
    let setup = Setup::on(Stand::Platform);
    let of = |rows: &str| {
        run(
            &setup,
            &format!("time_s,hand_distance_m,legs,twist_rad\n{rows}"),
        )
    };
    assert!(matches!(
        of("0,0.5,0,0\n1,2,0,0\n"),
        Err(PlanFault::Reach { line: 3, .. })
    ));
    assert!(matches!(
        of("0,0.01,0,0\n1,0.5,0,0\n"),
        Err(PlanFault::Reach { line: 2, .. })
    ));
    assert_eq!(
        of("0,0.5,0,0\n1,0.5,0.5,0\n"),
        Err(PlanFault::LegsStand { line: 3 })
    );
    assert_eq!(
        of("0,0.5,0,0\n1,0.5,2,0\n"),
        Err(PlanFault::Legs {
            line: 3,
            asked: 2.0
        })
    );
    assert!(matches!(
        of("0,0.5,0,0\n1,0.5,0,1\n"),
        Err(PlanFault::Twist { line: 3, .. })
    ));
    assert!(matches!(
        of("0,0.7,0,0\n0.1,0.2,0,0\n"),
        Err(PlanFault::TooFast {
            line: 3,
            limbs: Limbs::Arms,
            ..
        })
    ));
    assert!(of("0,0.7,0,0\n0.5,0.3,0,0\n").is_ok());
}

/// Without friction the energy and the momentum of the example are where they were, and the rate goes up and
/// comes back.
#[test]
fn the_example_turns_faster_with_the_hands_in() {
    let setup = Setup {
        friction: Friction::NONE,
        rate_rad_s: 2.0,
        ..Setup::on(Stand::Platform)
    };
    let run = run(&setup, EXAMPLE).expect("anybody can");
    let [first, last] = [run.samples[0], run.samples[run.samples.len() - 1]];
    let within = run.at(3.0).expect("a run");
    assert_eq!((first.t_s, last.t_s), (0.0, 6.0));
    assert!(within.rate_rad_s > 1.8 * first.rate_rad_s, "{within:?}");
    let left_over_j = within.kinetic_j - first.kinetic_j - within.work_j;
    assert!(left_over_j.abs() < 1e-7 * within.work_j);
    assert!(within.work_j > 1.0 && last.work_j.abs() < 1e-9);
    assert!((last.rate_rad_s - first.rate_rad_s).abs() < 1e-12);
    for sample in &run.samples {
        assert_eq!(sample.momentum_kg_m2_s, first.momentum_kg_m2_s);
    }
}

/// A recorded run is a programme: run again it comes to the same, within what its samples leave open.
#[test]
fn a_recorded_run_can_be_run_again() {
    let setup = Setup {
        rate_rad_s: 3.0,
        ..Setup::on(Stand::Chair)
    };
    let position = |hand_distance_m, legs, twist_rad| turns_aloft::turntable::Position {
        hand_distance_m,
        legs,
        twist_rad,
    };
    let mut turntable = Turntable::new(&setup, &position(0.6, 1.0, 0.0)).expect("in range");
    for (hands_m, legs, twist_rad) in [(0.2, 0.0, 0.3), (0.5, 0.4, -0.3), (0.7, 1.0, 0.0)] {
        turntable.lead(&position(hands_m, legs, twist_rad));
        for _ in 0..24 {
            turntable.step(1.0 / 60.0);
        }
    }
    let led = turntable.run();
    let again = run(&setup, &led.to_csv()).expect("somebody did");
    let [one, other] = [led, &again].map(|run| run.samples[run.samples.len() - 1]);
    assert_eq!(one.t_s, other.t_s);
    assert!(
        (one.turns() - other.turns()).abs() < 1e-3,
        "{} {}",
        one.turns(),
        other.turns()
    );
    assert!((one.rate_rad_s - other.rate_rad_s).abs() < 1e-3);
}

/// The columns that a run has as CSV.
#[test]
fn a_run_is_written_in_columns() {
    let run = run(
        &Setup::on(Stand::Ice),
        "time_s,hand_distance_m,legs\n2,0.6,0\n3,0.6,1\n",
    )
    .expect("anybody can");
    let text = run.to_csv();
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let header = reader.headers().expect("a first line").clone();
    assert_eq!(header.len(), 12);
    assert_eq!(&header[0], "time_s");
    let rows: Vec<csv::StringRecord> = reader.records().map(|row| row.expect("a row")).collect();
    assert_eq!(rows.len(), 51);
    assert_eq!((&rows[0][0], &rows[50][0]), ("2", "3"));
    assert_eq!(&rows[50][2], "1");
}
