//! Where to look for likely jumps: at other take-off rates the same facings are met by other counts of
//! whole turns.

use crate::candidate::Candidate;
use crate::mark::Mark;
use crate::problem::Problem;
use crate::solve::of_marks;
use crate::unknown::{Point, Unknown};
use turns_aloft_physics::order::by_number;
use turns_aloft_scenario::parameter::Parameter;

/// Take-off rates that are looked at, in standard deviations of what is known before, and how far arms and
/// legs come in with each.
const RATES: usize = 36;
const FURTHEST: f64 = 2.7;
const TUCKS: [f64; 2] = [-0.7, 0.7];

/// How many places a search is begun from, at most.
const MOST: usize = 4;

/// Two places whose turns differ by less than this are one.
const APART_TURNS: f64 = 0.3;

/// A place to begin a search from.
#[derive(Debug, Clone)]
pub struct Place {
    pub point: Point,
    air_turns: f64,
    pub lost: f64,
}

/// The likeliest places, the likeliest first.
pub fn scan(problem: &Problem) -> Vec<Place> {
    let mut found: Vec<Place> = Vec::new();
    let mut earlier: Option<Candidate> = None;
    for tuck in TUCKS {
        let mut along = Vec::with_capacity(RATES);
        for i in 0..RATES {
            let rate = FURTHEST * (2.0 * i as f64 / (RATES - 1) as f64 - 1.0);
            let (place, candidate) = at(problem, rate, tuck, earlier.as_ref());
            along.push(place);
            earlier = Some(candidate);
        }
        found.extend(lowest(&along).cloned());
    }
    let mut apart: Vec<Place> = Vec::new();
    for place in by_number(found, |place| place.lost) {
        let is_new = |kept: &Place| (kept.air_turns - place.air_turns).abs() > APART_TURNS;
        if apart.iter().all(is_new) {
            apart.push(place);
        }
    }
    apart.truncate(MOST);
    apart
}

/// Those with no better neighbour.
fn lowest(along: &[Place]) -> impl Iterator<Item = &Place> {
    (0..along.len()).filter_map(|i| {
        let lost = |i: Option<usize>| {
            i.and_then(|i| along.get(i))
                .map_or(f64::INFINITY, |it| it.lost)
        };
        let here = along[i].lost;
        (here <= lost(i.checked_sub(1)) && here <= lost(Some(i + 1))).then(|| &along[i])
    })
}

/// At one take-off rate, with the first facing that suits the marks best.
fn at(problem: &Problem, rate: f64, tuck: f64, earlier: Option<&Candidate>) -> (Place, Candidate) {
    let mut point = Point::zeros();
    point[Unknown::Number(Parameter::TakeoffRate).place()] = rate;
    for parameter in [Parameter::ArmTuck, Parameter::LegTuck] {
        point[Unknown::Number(parameter).place()] = tuck;
    }
    let mut candidate = Candidate::fly(problem, &point, earlier);
    let facings: Vec<f64> = problem
        .marks
        .iter()
        .filter_map(|mark| match *mark {
            Mark::Facing { t_s, angle_rad, .. } | Mark::Turned { t_s, angle_rad, .. } => {
                Some(angle_rad - candidate.facing_rad(t_s))
            }
            _ => None,
        })
        .collect();
    let mut lost_with = |first_rad: f64| {
        candidate.setting.first_facing_rad = first_rad;
        0.5 * of_marks(problem, &candidate)
            .map(|off| off * off)
            .sum::<f64>()
    };
    let tried = facings.iter().chain(facings.is_empty().then_some(&0.0));
    let best = tried
        .map(|&first_rad| (first_rad, lost_with(first_rad)))
        .min_by(|one, other| one.1.total_cmp(&other.1));
    let (first_rad, lost_by_marks) = best.unwrap_or((0.0, 0.0));
    candidate.setting.first_facing_rad = first_rad;
    point[Unknown::FirstFacing.place()] = first_rad;
    let prior = problem.prior_residuals(&point).map(|off| off * off);
    let place = Place {
        point,
        air_turns: candidate.air_turns(),
        lost: lost_by_marks + 0.5 * prior.sum::<f64>(),
    };
    (place, candidate)
}
