//! How strong joints have been measured to be, against what a flight asks of them.
//!
//! Largest torque of one joint in its strongest direction, N m for each kilogram of body mass; of the
//! spine the whole trunk's. Machines measure one joint at a time, people sitting or lying; the weakest
//! figures are those of the spine, where devices differ by a factor of two to four. Abstracts were read
//! unless said otherwise; "secondary" is quoted from a public data set or calculator; "derived" is our
//! arithmetic, where a source prints no body mass with 60 kg for women, 70 kg for both and 75 kg for men.

use crate::jumper::{Jumper, Size};
use crate::seen::Mark;
use crate::source::Source;
use turns_aloft_physics::efforts::{Demand, GROUPS, JointGroup};
use turns_aloft_physics::segments::SegmentTable::{self, Female, Male};

/// Held against a pull people have been measured at up to so many times the strongest that they can
/// push: 1.10 to 1.39 (torque-speed curves of a gymnast, secondary) and 1.29 (30 footballers, knee,
/// J Sports Sci Med 2010;9:364).
pub const HELD: f64 = 1.4;

/// What is known of a group of joints.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Strength {
    /// Mean and two deviations of the strongest people found, or the strongest person.
    most_n_m_per_kg: f64,
    source: Source,
}

const fn strength(most_n_m_per_kg: f64, source: Source) -> Strength {
    Strength {
        most_n_m_per_kg,
        source,
    }
}

/// Of grown jumpers. Typical values are 0.85 and 1.1 (shoulder), 0.55 and 0.75 (elbow), 2.8 and 2.75
/// (hip), 2.5 and 3.1 (knee), 2.6 and 3.5 (spine), women and men; they stand in the texts.
const fn grown(table: SegmentTable, group: JointGroup) -> Strength {
    match (group, table) {
        // 0.91 (Harbo et al. 2012, secondary) by 1.4 to 1.6: no deviation was read.
        (JointGroup::Shoulder, Female) => strength(1.4, Source::StrengthShoulderWoman),
        // A gymnast's horizontal adduction (secondary, scaled); 1.1 by 1.4 to 1.6 agrees.
        (JointGroup::Shoulder, Male) => strength(1.85, Source::StrengthShoulderMan),
        // Trained women: 41.8 N m and twice 7.5 N m (Gentil et al.), by 60 kg.
        (JointGroup::Elbow, Female) => strength(0.95, Source::StrengthElbowWoman),
        // 0.78 and twice 0.12 (Lategan & Kruger 2003) to 1.46 (gymnast, secondary).
        (JointGroup::Elbow, Male) => strength(1.3, Source::StrengthElbowMan),
        // 3.70 and twice 0.42: elite sprinters (Li 2016).
        (JointGroup::Hip, Female) => strength(4.5, Source::StrengthHipWoman),
        // 2.78 and two deviations, 4.47 (Anderson et al. 2007, secondary).
        (JointGroup::Hip, Male) => strength(4.5, Source::StrengthHipMan),
        // The strongest woman of 39, 3.74 (doi 10.1016/j.asmr.2023.100861); sprinters agree (Li 2016).
        (JointGroup::Knee, Female) => strength(3.75, Source::StrengthKneeWoman),
        // 2.81 and two deviations, 4.20 (Anderson et al. 2007, secondary); the strongest man read 4.08.
        (JointGroup::Knee, Male) => strength(4.2, Source::StrengthKneeMan),
        // 2.8 and twice 0.6: young athletes (Mueller et al. 2014).
        (JointGroup::Spine, Female) => strength(4.0, Source::StrengthSpineWoman),
        // 364 N m and twice 43 N m after training (Pollock et al. 1989), by 70 kg; sex not shown.
        (JointGroup::Spine, Male) => strength(6.4, Source::StrengthSpineMan),
    }
}

/// Of children, both sexes: between them no difference was found at 10 to 13 (knee). Typical values are
/// 0.63, 2.3 and 2.8. None for shoulder and hip: no child's torque was found.
const fn child(group: JointGroup) -> Option<Strength> {
    match group {
        JointGroup::Shoulder | JointGroup::Hip => None,
        // 15 boys of 10: 19.5 N m and twice 5.8 N m (Falk et al. 2009), by the median 31 kg.
        JointGroup::Elbow => Some(strength(1.0, Source::StrengthElbowChild)),
        // Men's 2.92 to 3.45 (Sarabon et al. 2021) by 0.74 (boys and men, Dotan et al. 2013) by 1.4.
        JointGroup::Knee => Some(strength(3.2, Source::StrengthKneeChild)),
        // 377 athletes of 13: 2.8 and twice 0.6 (Mueller et al. 2014).
        JointGroup::Spine => Some(strength(4.0, Source::StrengthSpineChild)),
    }
}

/// How strong a jumper's joints have been seen to be, N m for each kilogram of body mass.
pub fn mark(jumper: Jumper, group: JointGroup) -> Mark {
    let own = match jumper.size {
        Size::Grown => Some(grown(jumper.table, group)),
        Size::Child => child(group),
        Size::Small => None,
    };
    let known = own.is_some();
    let Strength {
        most_n_m_per_kg,
        source,
    } = own.unwrap_or_else(|| Strength {
        source: Source::StrengthNotKnown,
        ..grown(jumper.table, group)
    });
    Mark {
        edge_from: most_n_m_per_kg,
        up_to: HELD * most_n_m_per_kg,
        known,
        source,
    }
}

/// The joint that comes nearest to its strength, or goes farthest beyond it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Asked {
    pub group: JointGroup,
    pub torque_n_m_per_kg: f64,
    pub mark: Mark,
}

impl Asked {
    /// How many times the most that has been measured is asked.
    pub fn share(&self) -> f64 {
        self.torque_n_m_per_kg / self.mark.edge_from
    }

    /// Of all joints in a part of a flight: beyond counts more than not known, that more than seen,
    /// and then the larger share.
    pub fn most(jumper: Jumper, body_mass_kg: f64, demands: &[Demand; GROUPS]) -> Self {
        let asked = JointGroup::ALL.map(|group| Self {
            group,
            torque_n_m_per_kg: demands[group as usize].torque.value / body_mass_kg,
            mark: mark(jumper, group),
        });
        let rank = |asked: &Self| (asked.mark.stand(asked.torque_n_m_per_kg), asked.share());
        let [first, rest @ ..] = asked;
        rest.into_iter().fold(first, |most, next| {
            if rank(&next) > rank(&most) {
                next
            } else {
                most
            }
        })
    }
}

/// The largest share of the most that has been measured, over all joints; where a child's isn't known,
/// of the grown people's of the same sex.
pub fn share(jumper: Jumper, body_mass_kg: f64, demands: &[Demand; GROUPS]) -> f64 {
    let shares = JointGroup::ALL.map(|group| {
        let torque_n_m_per_kg = demands[group as usize].torque.value / body_mass_kg;
        torque_n_m_per_kg / mark(jumper, group).edge_from
    });
    shares.into_iter().fold(0.0, f64::max)
}

/// Whether every joint's strength is known for a jumper of this size.
pub fn is_known(jumper: Jumper) -> bool {
    JointGroup::ALL
        .iter()
        .all(|&group| mark(jumper, group).known)
}

/// A group of joints as it is published.
pub const fn key(group: JointGroup) -> &'static str {
    match group {
        JointGroup::Shoulder => "shoulder",
        JointGroup::Elbow => "elbow",
        JointGroup::Hip => "hip",
        JointGroup::Knee => "knee",
        JointGroup::Spine => "spine",
    }
}
