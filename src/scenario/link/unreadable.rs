//! What can be wrong with a link.

use crate::setting::Refused;

/// Why a link was not opened.
#[derive(Debug, Clone, PartialEq)]
pub enum Unreadable {
    TooLong,
    Damaged,
    Newer(u64),
    OutOfRange(Refused),
}
