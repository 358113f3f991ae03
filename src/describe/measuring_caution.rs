//! What has to be known of whatever is measured of somebody.

use crate::Text;
use turns_aloft_words::text;

/// What stands beside an attempt that is measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum MeasuringCaution {
    /// Filming needs consent.
    Consent,
    /// The film stays where it is.
    Stays,
    /// It is an estimate and no verdict.
    NoVerdict,
}

impl MeasuringCaution {
    pub const ALL: [Self; 3] = [Self::Consent, Self::Stays, Self::NoVerdict];
}

impl Text for MeasuringCaution {
    fn text(self) -> &'static str {
        match self {
            Self::Consent => text("caution-consent"),
            Self::Stays => text("caution-film-stays"),
            Self::NoVerdict => text("caution-no-verdict"),
        }
    }
}
