//! The lessons that come with the program.

/// Their files are `assets/lessons/<name>.lesson.json`, in the order in which they are offered.
pub const NAMES: [&str; 4] = [
    "what-stays-the-same",
    "higher-or-tighter",
    "can-anybody-do-five",
    "arms-in",
];
