//! What can be wrong with a link.

use crate::setting::Refused;

/// Why a link was not opened.
#[derive(Debug, Clone, PartialEq)]
pub enum Unreadable {
    TooLong,
    Damaged,
    /// Of a version that is newer than the newest one `known`.
    Newer {
        version: u64,
        known: u64,
    },
    OutOfRange(Refused),
}
