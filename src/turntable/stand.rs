//! On what somebody turns, and how the legs are held there. Shapes are common practice, no source.

use turns_aloft_physics::angles::rad;
use turns_aloft_physics::posture::Leg;
use turns_aloft_physics::tight_posture::TightPosture;

use crate::friction::Friction;

/// On what somebody turns, and how.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Stand {
    /// Stands on a turning platform.
    Platform,
    /// Sits on a turning platform, the legs in front.
    PlatformSitting,
    /// Sits on a swivel chair, the feet off the ground.
    Chair,
    /// Spins on one blade, the right leg free.
    Ice,
}

impl Stand {
    pub const ALL: [Self; 4] = [
        Self::Platform,
        Self::PlatformSitting,
        Self::Chair,
        Self::Ice,
    ];

    /// The word for it in files and on the command line.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Platform => "platform",
            Self::PlatformSitting => "platform_sitting",
            Self::Chair => "chair",
            Self::Ice => "ice",
        }
    }

    pub fn named(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|stand| stand.key() == key)
    }

    pub const fn sits(self) -> bool {
        matches!(self, Self::PlatformSitting | Self::Chair)
    }

    /// Whether a leg can move: on a platform somebody stands on both.
    pub const fn legs_move(self) -> bool {
        !matches!(self, Self::Platform)
    }

    /// Moment of inertia of what turns with the person, kg m². Our choice: a disc of 4 kg, 0.4 m across; a
    /// seat with its back of 8 kg, 0.25 m from the axis in the root mean square; nothing on the ice.
    pub const fn inertia_kg_m2(self) -> f64 {
        match self {
            Self::Platform | Self::PlatformSitting => 0.08,
            Self::Chair => 0.5,
            Self::Ice => 0.0,
        }
    }

    /// On the ice the friction of a worked example, which slows a skater of 0.400 kg m² from 6.00 to 3.00
    /// rev/s in 15.0 s (OpenStax, College Physics 2e, 10.5). Of platforms and chairs our choice: each is to be
    /// calibrated ([`crate::calibrate`]).
    pub const fn friction(self) -> Friction {
        let (torque_n_m, viscous_n_m_s) = match self {
            Self::Platform | Self::PlatformSitting => (0.1, 0.01),
            Self::Chair => (0.3, 0.02),
            Self::Ice => (0.503, 0.0),
        };
        Friction {
            torque_n_m,
            viscous_n_m_s,
        }
    }

    /// The left and the right leg, in and out.
    pub(crate) fn legs(self, tight: &TightPosture) -> [[Leg; 2]; 2] {
        match self {
            Self::Platform => {
                // Feet under the hips, or as far apart as the thighs need.
                let leg = Leg {
                    hip_abduction_rad: tight.legs_apart_rad(),
                    ..leg(0.0, 0.0, 0.0)
                };
                [[leg; 2]; 2]
            }
            Self::PlatformSitting => [[leg(125.0, 135.0, 0.0); 2], [leg(88.0, 0.0, 0.0); 2]],
            Self::Chair => [[leg(90.0, 100.0, 0.0); 2], [leg(88.0, 5.0, 0.0); 2]],
            Self::Ice => {
                let [left, right] = tight.legs();
                let free = Leg {
                    hip_abduction_rad: rad(25.0),
                    ..leg(25.0, 10.0, 25.0)
                };
                [[left, right], [left, free]]
            }
        }
    }
}

/// A leg straight ahead, by its angles in degrees.
const fn leg(hip_flexion: f64, knee_flexion: f64, plantarflexion: f64) -> Leg {
    Leg {
        hip_flexion_rad: rad(hip_flexion),
        hip_abduction_rad: 0.0,
        knee_flexion_rad: rad(knee_flexion),
        plantarflexion_rad: rad(plantarflexion),
    }
}
