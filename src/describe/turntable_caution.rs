//! What has to be known by whoever gets on a turntable.

use crate::Text;
use turns_aloft_words::text;

/// What stands beside a turntable. Common practice, no source.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TurntableCaution {
    /// Room and a helper.
    Room,
    /// A low rate, because of dizziness.
    Slow,
    Weights,
    /// None of it is measured.
    Source,
}

impl TurntableCaution {
    pub const ALL: [Self; 4] = [Self::Room, Self::Slow, Self::Weights, Self::Source];
}

impl Text for TurntableCaution {
    fn text(self) -> &'static str {
        match self {
            Self::Room => text("turntable-caution-room"),
            Self::Slow => text("turntable-caution-slow"),
            Self::Weights => text("turntable-caution-weights"),
            Self::Source => text("turntable-caution-source"),
        }
    }
}
