//! What would win the missing turns.

use serde::Serialize;

use crate::Text;
use crate::report::{LeverReport, keys, texts};
use turns_aloft_analysis::combination::{Change, Combination};
use turns_aloft_analysis::goal::{Proof, Proposal, Single};
use turns_aloft_analysis::limits::{Judgement, Limit, Verdict};

#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct JudgementReport {
    pub verdict: Verdict,
    pub limit: Option<Limit>,
    pub source: &'static str,
    pub known_for_size: bool,
}

impl JudgementReport {
    fn new(judgement: &Judgement) -> Self {
        Self {
            verdict: judgement.verdict,
            limit: judgement.limit.clone(),
            source: judgement.source.text(),
            known_for_size: judgement.known_for_size,
        }
    }
}

/// Values are in the lever's own unit.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ProposalReport {
    pub value: f64,
    pub change: f64,
    pub turns: f64,
    /// Estimate, lowest and highest, in body weights.
    pub landing_load_bw: [f64; 2],
    pub beyond_seen: Vec<&'static str>,
    pub cautions: Vec<&'static str>,
}

impl ProposalReport {
    fn new(proposal: &Proposal) -> Self {
        Self {
            value: proposal.value,
            change: proposal.change,
            turns: proposal.turns,
            landing_load_bw: proposal.landing_load_bw,
            beyond_seen: keys(&proposal.beyond_seen),
            cautions: texts(&proposal.cautions),
        }
    }
}

/// The answer for one lever.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SingleReport {
    #[serde(flatten)]
    pub lever: LeverReport,
    /// In the lever's own unit.
    pub now: f64,
    #[serde(flatten)]
    pub judgement: JudgementReport,
    pub proposal: Option<ProposalReport>,
    pub proof: Option<Proof>,
}

impl SingleReport {
    pub fn new(single: &Single) -> Self {
        Self {
            lever: LeverReport(single.lever),
            now: single.now,
            judgement: JudgementReport::new(&single.judgement),
            proposal: single.proposal.as_ref().map(ProposalReport::new),
            proof: single.proof.clone(),
        }
    }
}

/// What the mix changes of one lever, in the lever's own unit.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ChangeReport {
    #[serde(flatten)]
    pub lever: LeverReport,
    pub now: f64,
    pub value: f64,
    pub change: f64,
    pub seasons: f64,
    #[serde(flatten)]
    pub judgement: JudgementReport,
}

impl ChangeReport {
    fn new(change: &Change) -> Self {
        Self {
            lever: LeverReport(change.lever),
            now: change.now,
            value: change.value,
            change: change.change,
            seasons: change.seasons,
            judgement: JudgementReport::new(&change.judgement),
        }
    }
}

/// The smallest joint change.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct CombinationReport {
    pub changes: Vec<ChangeReport>,
    pub effort_seasons: f64,
    pub single_effort_seasons: Option<f64>,
    pub settled: bool,
    pub turns: f64,
    #[serde(flatten)]
    pub judgement: JudgementReport,
    /// Estimate, lowest and highest, in body weights.
    pub landing_load_bw: [f64; 2],
    pub beyond_seen: Vec<&'static str>,
    pub cautions: Vec<&'static str>,
}

impl CombinationReport {
    pub fn new(combination: &Combination) -> Self {
        Self {
            changes: combination.changes.iter().map(ChangeReport::new).collect(),
            effort_seasons: combination.effort_seasons,
            single_effort_seasons: combination.single_effort_seasons,
            settled: combination.settled,
            turns: combination.turns,
            judgement: JudgementReport::new(&combination.judgement),
            landing_load_bw: combination.landing_load_bw,
            beyond_seen: keys(&combination.beyond_seen),
            cautions: texts(&combination.cautions),
        }
    }
}
