//! What a film may have at most. Our own limits, so that the largest takes well under 100 MB of memory.

/// Frames: half an hour at 240 a second.
pub const MOST_FRAMES: usize = 450_000;

/// Length of a film's tables, in one piece. Those of half an hour at 240 a second take 4 MB.
pub const MOST_TABLE_BYTES: u64 = 32_000_000;

/// Parts of a file that are looked at, one after the other.
pub(crate) const MOST_PARTS: u32 = 4_000_000;
