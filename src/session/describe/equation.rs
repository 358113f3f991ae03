//! L = I · ω with its numbers at the playhead.

use crate::session::Session;
use turns_aloft_describe::unit::{MOMENTUM, UnitText, fixed};
use turns_aloft_physics::flight::MomentumParts;
use turns_aloft_scenario::units::{Unit, UnitSign};

/// Finer than the readouts, so that the product has all the digits of the momentum.
const INERTIA: Unit = fixed(UnitSign::KgM2, 3);
const RATE: Unit = fixed(UnitSign::RadPerS, 2);

/// Less than this, kg m²/s, is no rest worth a term.
const LEAST_REST: f64 = 0.05;

/// The terms of the equation as they are shown, each with its unit.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Equation {
    pub momentum: String,
    /// "=" where the numbers shown give one another exactly; "≈" where a rest too small to be shown
    /// moves the last digit.
    pub relation: &'static str,
    pub inertia: String,
    pub rate: String,
    /// What the limbs' own motion and the tilt add, with its sign.
    pub rest: Option<[String; 2]>,
}

impl Equation {
    /// At the playhead.
    pub fn now(session: &Session) -> Self {
        Self::of(&session.flight().momentum_at(session.playhead_s()))
    }

    pub fn of(parts: &MomentumParts) -> Self {
        // As shown: in whole tenths.
        let tenths = |value: f64| (value * 10.0).round();
        let shown = |unit: &Unit, value: f64| {
            let digits = 10.0_f64.powi(unit.decimals as i32);
            (value * digits).round() / digits
        };
        let momentum = tenths(parts.momentum_kg_m2_s);
        let product = tenths(shown(&INERTIA, parts.inertia_kg_m2) * shown(&RATE, parts.rate_rad_s));
        let apart = momentum - product;
        let has_rest = parts.rest_kg_m2_s.abs() >= LEAST_REST && apart != 0.0;
        Self {
            momentum: MOMENTUM.text(parts.momentum_kg_m2_s),
            relation: if has_rest || apart == 0.0 { "=" } else { "≈" },
            inertia: INERTIA.text(parts.inertia_kg_m2),
            rate: RATE.text(parts.rate_rad_s),
            rest: has_rest.then(|| {
                let sign = if apart < 0.0 { "−" } else { "+" };
                [sign.to_owned(), MOMENTUM.text(apart.abs() / 10.0)]
            }),
        }
    }
}
