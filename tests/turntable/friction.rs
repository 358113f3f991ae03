//! The friction of a real bearing, from rates at known times.

use proptest::prelude::*;

use turns_aloft::turntable::calibrate::{
    CalibrationFault, Reading, both, torque_alone, viscous_alone,
};
use turns_aloft::turntable::run::turned_to;
use turns_aloft::turntable::{Friction, Given, OnBearing, Turning};

use crate::textbook::assert_near;

fn readings<const N: usize>(of: [(f64, f64); N]) -> [Reading; N] {
    of.map(|(t_s, rate_rad_s)| Reading { t_s, rate_rad_s })
}

/// OpenStax, College Physics 2e, 10.5: 0.400 kg m², from 6.00 to 3.00 rev/s in 15.0 s, 0.503 N m.
#[test]
fn the_skater_of_a_worked_example() {
    let tau = std::f64::consts::TAU;
    let found =
        torque_alone(&readings([(0.0, 6.0 * tau), (15.0, 3.0 * tau)]), 0.4).expect("it slows down");
    assert_near(found.torque_n_m, 0.502_655);
    assert_eq!(found.viscous_n_m_s, 0.0);
}

/// Half the rate in 10 s takes I ln 2 / 10 s.
#[test]
fn half_the_rate() {
    let found = viscous_alone(&readings([(2.0, -3.0), (12.0, -1.5)]), 2.0).expect("it slows down");
    assert_near(found.viscous_n_m_s, 0.138_629);
}

proptest! {
    /// Three rates of a turntable that slows down give back its friction.
    #[test]
    fn what_slowed_it_down_is_found(
        torque_n_m in 0.0..0.3,
        viscous_n_m_s in 0.001..0.2,
        inertia_kg_m2 in 1.0..8.0,
        times_s in [1.0..5.0, 1.0..5.0],
        sense in prop::sample::select(vec![1.0, -1.0]),
    ) {
        let friction = Friction { torque_n_m, viscous_n_m_s };
        let given = Given::inertia(&[(0.0, inertia_kg_m2)]).expect("a knot");
        let mut turning = Turning::at_rate(0.0, &given.at(0.0), 6.0 * sense);
        let mut found = vec![Reading { t_s: 0.0, rate_rad_s: 6.0 * sense }];
        for after_s in times_s {
            turning = turned_to(turning, &given, &friction, turning.t_s + after_s);
            found.push(Reading { t_s: turning.t_s, rate_rad_s: turning.rate_rad_s(&given.at(turning.t_s)) });
        }
        let three = [found[0], found[1], found[2]];
        let found = both(&three, inertia_kg_m2).expect("it slows down");
        prop_assert!((found.torque_n_m - torque_n_m).abs() < 1e-6, "{found:?}");
        prop_assert!((found.viscous_n_m_s - viscous_n_m_s).abs() < 1e-6, "{found:?}");
    }

    /// Whatever the readings, there is a friction that is none below zero, or a reason.
    #[test]
    fn no_readings_give_nonsense(rates in prop::array::uniform3(-1e3..1e3_f64), times in prop::array::uniform3(-1e3..1e3_f64)) {
        let readings = std::array::from_fn(|i| Reading { t_s: times[i], rate_rad_s: rates[i] });
        let two = [readings[0], readings[1]];
        for found in [torque_alone(&two, 2.0), viscous_alone(&two, 2.0), both(&readings, 2.0)].into_iter().flatten() {
            prop_assert!(found.torque_n_m >= 0.0 && found.torque_n_m.is_finite());
            prop_assert!(found.viscous_n_m_s >= 0.0 && found.viscous_n_m_s.is_finite());
        }
    }
}

/// Pure torque and pure viscous friction are the two ends.
#[test]
fn one_kind_alone_is_found_among_both() {
    let even = both(&readings([(0.0, 3.0), (1.0, 2.5), (2.0, 2.0)]), 2.0).expect("it slows down");
    assert_near(even.torque_n_m, 1.0);
    assert!(even.viscous_n_m_s < 1e-6, "{even:?}");
    let (half, quarter) = (1.5, 0.75);
    let halving =
        both(&readings([(0.0, 3.0), (1.0, half), (2.0, quarter)]), 2.0).expect("it slows down");
    assert_near(halving.viscous_n_m_s, 2.0 * libm::log(2.0));
    assert!(halving.torque_n_m < 1e-6, "{halving:?}");
}

#[test]
fn readings_of_something_else_are_refused() {
    let two = |from, to| torque_alone(&readings([from, to]), 1.0);
    assert_eq!(
        two((0.0, 2.0), (0.0, 1.0)),
        Err(CalibrationFault::OutOfOrder)
    );
    assert_eq!(
        two((0.0, 2.0), (1.0, 2.0)),
        Err(CalibrationFault::NotSlower)
    );
    assert_eq!(
        two((0.0, 2.0), (1.0, -1.0)),
        Err(CalibrationFault::NotSlower)
    );
    assert_eq!(two((0.0, 2.0), (1.0, 0.0)), Err(CalibrationFault::AtRest));
    assert_eq!(
        two((0.0, f64::NAN), (1.0, 0.0)),
        Err(CalibrationFault::NotNumbers)
    );
    assert_eq!(
        torque_alone(&readings([(0.0, 2.0), (1.0, 1.0)]), 0.0),
        Err(CalibrationFault::NotNumbers)
    );
    let three = |rates: [f64; 3]| {
        both(
            &readings([(0.0, rates[0]), (1.0, rates[1]), (2.0, rates[2])]),
            1.0,
        )
    };
    assert_eq!(three([3.0, 2.5, 1.0]), Err(CalibrationFault::HarderAtEnd));
    assert_eq!(
        three([3.0, 1.0, 0.9]),
        Err(CalibrationFault::HarderAtBeginning)
    );
}
