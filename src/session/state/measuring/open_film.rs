//! The film that is open on the page: when its frames are shown.

use turns_aloft_physics::order::sorted;

/// What the page says of a film that it has opened.
#[derive(Debug, Clone, PartialEq)]
pub struct OpenFilm {
    pub file_name: String,
    /// When each frame is shown, s on the player's clock, in order; at least one.
    pub times_s: Vec<f64>,
    /// Width and height of the picture.
    pub size_px: [f64; 2],
    /// How many times slower than life it plays, as far as the file says; otherwise 1.
    pub slow_motion: f64,
}

impl OpenFilm {
    /// The frame shown at a time on the player's clock, or the one next to it.
    pub fn nearest(&self, t_s: f64) -> usize {
        let after = self.times_s.partition_point(|&time_s| time_s < t_s);
        let last = self.times_s.len().saturating_sub(1);
        let before = after.saturating_sub(1);
        let after = after.min(last);
        let off = |frame: usize| (self.times_s[frame] - t_s).abs();
        if off(before) <= off(after) {
            before
        } else {
            after
        }
    }

    /// The usual time from one frame to the next on the player's clock, s: their median. Of one frame alone
    /// a 30th of a second.
    pub fn frame_s(&self) -> f64 {
        let steps_s = self.times_s.windows(2).map(|two| two[1] - two[0]);
        let steps_s = sorted(steps_s.collect());
        steps_s
            .get(steps_s.len() / 2)
            .copied()
            .unwrap_or(1.0 / 30.0)
    }
}
