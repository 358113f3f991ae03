//! Sources in words.

use crate::Text;
use turns_aloft_scenario::source::Source;
use turns_aloft_words::text;

/// What it is, and how far it goes.
impl Text for Source {
    fn text(self) -> &'static str {
        match self {
            Self::MarksHandMassNotKnown => text("marks-hand-mass-not-known"),
            Self::MarksHandMass => text("marks-hand-mass"),
            Self::MarksTakeoffRateNotKnown => text("marks-takeoff-rate-not-known"),
            Self::MarksTakeoffRate => text("marks-takeoff-rate"),
            Self::MarksTrampoline => text("marks-trampoline"),
            Self::MarksTrampolineNotKnown => text("marks-trampoline-not-known"),
            Self::MarksJumpHeightNotKnown => text("marks-jump-height-not-known"),
            Self::MarksJumpHeightGirl => text("marks-jump-height-girl"),
            Self::MarksJumpHeightBoy => text("marks-jump-height-boy"),
            Self::MarksJumpHeightWoman => text("marks-jump-height-woman"),
            Self::MarksJumpHeightMan => text("marks-jump-height-man"),
            Self::SeenPeakRate => text("seen-peak-rate"),
            Self::SeenPeakRateNotKnown => text("seen-peak-rate-not-known"),
            Self::StrengthShoulderWoman => text("strength-shoulder-woman"),
            Self::StrengthShoulderMan => text("strength-shoulder-man"),
            Self::StrengthElbowWoman => text("strength-elbow-woman"),
            Self::StrengthElbowMan => text("strength-elbow-man"),
            Self::StrengthHipWoman => text("strength-hip-woman"),
            Self::StrengthHipMan => text("strength-hip-man"),
            Self::StrengthKneeWoman => text("strength-knee-woman"),
            Self::StrengthKneeMan => text("strength-knee-man"),
            Self::StrengthSpineWoman => text("strength-spine-woman"),
            Self::StrengthSpineMan => text("strength-spine-man"),
            Self::StrengthElbowChild => text("strength-elbow-child"),
            Self::StrengthKneeChild => text("strength-knee-child"),
            Self::StrengthSpineChild => text("strength-spine-child"),
            Self::StrengthNotKnown => text("strength-not-known"),
            Self::MarksTuck => text("marks-tuck"),
            Self::MarksCloseDelay => text("marks-close-delay"),
            Self::MarksCloseDelayNotKnown => text("marks-close-delay-not-known"),
            Self::MarksCloseTime => text("marks-close-time"),
            Self::MarksOpenLead => text("marks-open-lead"),
            Self::MarksOpenLeadNotKnown => text("marks-open-lead-not-known"),
            Self::MarksOpenTime => text("marks-open-time"),
            Self::LimitOwn => text("limit-own"),
            Self::LimitSeason => text("limit-season"),
            Self::LimitSeasonNotKnown => text("limit-season-not-known"),
            Self::LimitAlready => text("limit-already"),
            Self::LimitFlown => text("limit-flown"),
            Self::LimitNoPart => text("limit-no-part"),
            Self::MarksEffortNotKnown => text("marks-effort-not-known"),
            Self::OurAssumption => text("season-source"),
            Self::WeightedGloves => text("weights-observed"),
        }
    }
}
