//! What the marks leave open, and the one further mark that would tell most of it.

use std::f64::consts::TAU;
use turns_aloft_physics::order::by_number;

use crate::candidate::Candidate;
use crate::quantity::{correlation, covariance};
use crate::sample::Sample;
use turns_aloft_analysis::budget::Cause;
use turns_aloft_attempt::film::{USUAL_FACING_SIGMA_RAD, USUAL_POSTURE_SIGMA};

/// As likely as this is called told.
const SURE: f64 = 0.95;

/// Two losses of which one makes up for the other trade: their coefficient of correlation.
const TRADES: f64 = -0.5;

/// A loss whose standard deviation is less, turns, is known whatever it trades with.
const KNOWN_TURNS: f64 = 0.02;

/// Instants of the flight at which a further mark is looked at.
pub const INSTANTS: usize = 16;

/// How well a contact is known on frames as close as a tablet films, s: 1/240 s between two events, over the
/// root of 6.
const FINER_CONTACTS_SIGMA_S: f64 = 1.0 / 240.0 / 2.449_489_742_783_178;

/// What is not told.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Untold {
    /// How likely each cause is the one that lost most, in the order of [`Cause::ORDER`].
    pub largest: [f64; 4],
    /// Pairs of losses of which one makes up for the other, the coefficient of correlation with them.
    pub trade: Vec<(Cause, Cause, f64)>,
    /// The mark that would tell most; none where everything is told.
    pub further: Option<FurtherMark>,
}

/// A mark that has not been made.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FurtherMark {
    pub of: MarkOf,
    /// Part of the variance of what is contested that it would take away.
    pub takes_away: f64,
}

#[derive(Debug, Clone, Copy, PartialEq)]
pub enum MarkOf {
    /// At a time of the attempt's clock, s.
    Facing(f64),
    Arms(f64),
    Legs(f64),
    /// Take-off and landing on frames that are closer together.
    Contacts,
}

/// What further marks would show of one sample.
#[derive(Debug, Clone)]
pub struct Shown {
    facings_rad: [f64; INSTANTS],
    arms: [f64; INSTANTS],
    legs: [f64; INSTANTS],
    hang_s: f64,
}

impl Shown {
    pub fn new(candidate: &Candidate, instants_s: &[f64; INSTANTS]) -> Self {
        let tucks = instants_s.map(|t_s| candidate.tucks(t_s));
        Self {
            facings_rad: instants_s.map(|t_s| candidate.facing_rad(t_s)),
            arms: tucks.map(|tucks| tucks[0]),
            legs: tucks.map(|tucks| tucks[1]),
            hang_s: candidate.setting.hang_s(),
        }
    }
}

/// Evenly over the flight.
pub fn instants_s(best: &Sample) -> [f64; INSTANTS] {
    let hang_s = best.landing_s - best.takeoff_s;
    std::array::from_fn(|i| best.takeoff_s + hang_s * (i as f64 + 0.5) / INSTANTS as f64)
}

impl Untold {
    /// Whether it is told which cause lost most.
    pub fn tells_largest(&self) -> bool {
        self.largest.iter().any(|chance| *chance >= SURE)
    }

    /// The causes that may have lost most, the likeliest first; one where that is told.
    pub fn may_be_largest(&self) -> Vec<Cause> {
        let likely: Vec<(Cause, f64)> = Cause::ORDER
            .into_iter()
            .zip(self.largest)
            .filter(|(_, chance)| *chance > 1.0 - SURE)
            .collect();
        let mut likely = by_number(likely, |(_, chance)| -chance);
        if self.tells_largest() {
            likely.truncate(1);
        }
        likely.into_iter().map(|(cause, _)| cause).collect()
    }

    pub(crate) fn new(
        samples: &[Sample],
        shown: &[Shown],
        instants_s: &[f64; INSTANTS],
        filmed: bool,
    ) -> Self {
        let count = samples.len() as f64;
        let largest = Cause::ORDER.map(|cause| {
            let of_it = samples.iter().filter(|it| it.largest_loss() == cause);
            of_it.count() as f64 / count
        });
        let losses = Cause::ORDER
            .map(|cause| -> Vec<f64> { samples.iter().map(|sample| sample.lost(cause)).collect() });
        let mut untold = Self {
            largest,
            trade: trade(&losses),
            further: None,
        };
        let likely = untold.may_be_largest();
        let of = |cause: Cause| {
            let place = Cause::ORDER.iter().position(|&one| one == cause);
            &losses[place.expect("it is one of them")]
        };
        let contested: Vec<f64> = match likely[..] {
            // Which of both is larger.
            [first, second, ..] => {
                let both = of(first).iter().zip(of(second));
                both.map(|(one, other)| one - other).collect()
            }
            // How much the one of a pair that trades is.
            _ => match untold.trade.first() {
                Some(&(first, _, _)) => of(first).clone(),
                None => return untold,
            },
        };
        untold.further = further(&contested, shown, instants_s, filmed);
        untold
    }
}

fn trade(losses: &[Vec<f64>; 4]) -> Vec<(Cause, Cause, f64)> {
    let mut found = Vec::new();
    for (i, one) in losses.iter().enumerate() {
        for (j, other) in losses.iter().enumerate().skip(i + 1) {
            let is_wide = |of: &[f64]| covariance(of, of) > KNOWN_TURNS * KNOWN_TURNS;
            let together = correlation(one, other).filter(|it| *it < TRADES);
            if let Some(together) = together.filter(|_| is_wide(one) && is_wide(other)) {
                found.push((Cause::ORDER[i], Cause::ORDER[j], together));
            }
        }
    }
    by_number(found, |(_, _, together)| *together)
}

/// The mark that takes away most of the variance of what is contested: the square of its covariance
/// with that over its own variance, that of its error included.
fn further(
    contested: &[f64],
    shown: &[Shown],
    instants_s: &[f64; INSTANTS],
    filmed: bool,
) -> Option<FurtherMark> {
    let variance = covariance(contested, contested);
    let takes_away = |values: &[f64], sigma: f64| {
        let with = covariance(contested, values);
        with * with / (covariance(values, values) + sigma * sigma) / variance
    };
    let mut marks = Vec::new();
    for (i, &t_s) in instants_s.iter().enumerate() {
        let each = |of: fn(&Shown, usize) -> f64| -> Vec<f64> {
            shown.iter().map(|shown| of(shown, i)).collect()
        };
        // Of other counts of turns the facing is the same: as near to the first one's as can be.
        let facings = each(|shown, i| shown.facings_rad[i]);
        let first = facings[0];
        let near = facings
            .iter()
            .map(|it| it - TAU * libm::rint((it - first) / TAU));
        let facings: Vec<f64> = near.collect();
        marks.push((
            MarkOf::Facing(t_s),
            takes_away(&facings, USUAL_FACING_SIGMA_RAD),
        ));
        if filmed {
            let arms = takes_away(&each(|shown, i| shown.arms[i]), USUAL_POSTURE_SIGMA);
            let legs = takes_away(&each(|shown, i| shown.legs[i]), USUAL_POSTURE_SIGMA);
            marks.extend([(MarkOf::Arms(t_s), arms), (MarkOf::Legs(t_s), legs)]);
        }
    }
    let hang: Vec<f64> = shown.iter().map(|shown| shown.hang_s).collect();
    marks.push((MarkOf::Contacts, takes_away(&hang, FINER_CONTACTS_SIGMA_S)));
    marks
        .into_iter()
        .filter(|(_, takes_away)| takes_away.is_finite())
        .max_by(|one, other| one.1.total_cmp(&other.1))
        .map(|(of, takes_away)| FurtherMark { of, takes_away })
}
